// From chains to pieces: a line runs straight down, a bus spans what hangs from it, branches open to the right.
import { joinBoxes } from "../bounds.ts";
import { foldLine } from "./fold.ts";
import { busPiece, splitPiece } from "./parting-pieces.ts";
import { moveBoxes, type Piece, pack, stack } from "./piece.ts";
import { cablePiece, devicePiece, type FindingsOf, flagPiece, jointPiece } from "./step-pieces.ts";
import type { Chain, PartingStep, Step } from "./steps.ts";

/** What a layout is made with. One setting serves several tries: pieces that do not change are kept. */
export interface Setting {
	readonly findingsOf: FindingsOf;
	readonly known: Map<Step | Chain, Piece>;
}

/** All chains side by side; where they are many, and each long bus, in at most `rows` rows. */
export function layOutChains(chains: readonly Chain[], setting: Setting, rows: number): Piece {
	const pieces = chains.map((chain, index) => layOutChain(chain, { ...setting, rows, path: String(index + 1) }));
	const each = pieces.length < many ? pieces.length : Math.ceil(pieces.length / rows);
	const placed: { readonly piece: Piece; readonly x: number; readonly y: number }[] = [];
	let top = 0;
	for (let from = 0; from < pieces.length; from += each) {
		const row = pieces.slice(from, from + each);
		const axes = pack(row, chainGap);
		const start = -joinBoxes(row[0]?.boxes ?? []).x;
		row.forEach((piece, index) => {
			placed.push({ piece, x: start + (axes[index] ?? 0), y: top });
		});
		top += Math.max(...row.map((piece) => bottomOf(piece))) + chainGap;
	}
	return {
		boxes: placed.flatMap(({ piece, x, y }) => moveBoxes(piece.boxes, x, y)),
		height: 0,
		draw: (at) => placed.flatMap(({ piece, x, y }) => piece.draw({ x: at.x + x, y: at.y + y })),
	};
}

function bottomOf(piece: Piece): number {
	const box = joinBoxes(piece.boxes);
	return box.y + box.height;
}

/** One chain without partings in several columns; undefined when it parts somewhere. */
export function layOutInColumns(chain: Chain, setting: Setting, columns: number): Piece | undefined {
	const steps = straighten(chain);
	if (steps.some((step) => (step.kind === "bus" || step.kind === "split") && step.branches.length > 0))
		return undefined;
	const context = { ...setting, rows: 1, path: "1" };
	return foldLine(
		steps.map((step) => layOutStep(step, context)),
		columns,
	);
}

const chainGap = 40;
/** From as many chains on, they are set in rows. */
const many = 6;

interface Context extends Setting {
	readonly rows: number;
	/** Which branch of which this is; names what has no name of its own. */
	readonly path: string;
}

function layOutChain(chain: Chain, context: Context): Piece {
	const known = context.known.get(chain);
	if (known !== undefined) return known;
	const piece = stack(straighten(chain).map((step) => layOutStep(step, context)));
	if (isSteady(chain, context)) context.known.set(chain, piece);
	return piece;
}

/** Whether a chain that was laid out comes out the same in any number of rows: no bus on it or behind it is set in rows. */
function isSteady(chain: Chain, { known }: Context): boolean {
	return chain.every(
		(step) =>
			!("branches" in step) || (step.branches.length < many && step.branches.every((branch) => known.has(branch))),
	);
}

/** A bus with one branch is passed on the way: the branch is part of the same line. */
function straighten(chain: Chain): Chain {
	return chain.flatMap((step) => {
		const only = step.kind === "bus" && step.branches.length === 1 ? step.branches[0] : undefined;
		return only === undefined || step.kind !== "bus" ? [step] : [{ ...step, branches: [] }, ...straighten(only)];
	});
}

function layOutStep(step: Step, context: Context): Piece {
	if ("branches" in step) {
		const branches = step.branches.map((branch, index) =>
			layOutChain(branch, { ...context, path: `${context.path}.${index + 1}` }),
		);
		const findings = context.findingsOf(step.names);
		if (step.kind === "split") return splitPiece(step, branches, findings, `parting ${context.path}`);
		return busPiece(step, branches, findings, branches.length >= many ? context.rows : 1);
	}
	const known = context.known.get(step);
	if (known !== undefined) return known;
	const piece = layOutPlain(step, context);
	context.known.set(step, piece);
	return piece;
}

function layOutPlain(step: Exclude<Step, PartingStep>, context: Context): Piece {
	switch (step.kind) {
		case "device":
			return devicePiece(step, context.findingsOf);
		case "cable":
			return cablePiece(step, context.findingsOf);
		case "joint":
			return jointPiece(step, context.findingsOf);
		case "flag":
			return flagPiece(step, `reference ${context.path} ${step.place}`);
	}
}
