// From chains to pieces: a line runs straight down, a bus spans what hangs from it, branches open to the right.
import { joinBoxes } from "../bounds.ts";
import type { XY } from "../scene.ts";
import { foldLine } from "./fold.ts";
import { directSideOf } from "./lead-in.ts";
import { leadAbove, leadBelow, leadBeside } from "./lead-in-pieces.ts";
import { busHead, busPiece, splitPiece } from "./parting-pieces.ts";
import { moveBoxes, type Piece, pack, stack } from "./piece.ts";
import { type Places, placeApart, shapeOf } from "./place-chains.ts";
import { cablePiece, devicePiece, type FindingsOf, flagPiece, jointPiece, sidePiece } from "./step-pieces.ts";
import type { Chain, PartingStep, Step } from "./steps.ts";

/** What a layout is made with. One setting serves several tries: pieces that do not change are kept. */
export interface Setting {
	readonly findingsOf: FindingsOf;
	readonly known: Map<Step | Chain, Piece>;
	/** How many times as low as the lowest branch of a bus the others may hang. */
	readonly slack: number;
}

/** All chains side by side; where they are many, and each long bus, in at most `rows` rows. */
export function layOutChains(chains: readonly Chain[], setting: Setting, rows: number): Piece {
	const pieces = piecesOf(chains, setting, rows);
	return together(pieces, sideBySide(pieces, rows).at);
}

/**
 * All chains, long buses in at most `rows` rows, side by side or packed: the largest at the upper left, the others where they
 * find room, in widths that are `shares` of that side by side. It is what `needs` least, and how much that is.
 */
export function layOutPacked(
	chains: readonly Chain[],
	setting: Setting,
	rows: number,
	shares: readonly number[],
	needs: (size: Size) => number,
): {
	readonly needs: number;
	readonly covers: number;
	readonly width: number;
	readonly height: number;
	readonly piece: () => Piece;
} {
	const pieces = piecesOf(chains, setting, rows);
	const side = sideBySide(pieces, rows);
	const shapes = shares.length === 0 ? [] : pieces.map(({ boxes }) => shapeOf(boxes, chainGap));
	const all = [side, ...shares.map((share) => placeApart(shapes, share * side.width))];
	const best = all.reduce((found, next) => (needs(next) < needs(found) ? next : found));
	const covers = pieces.reduce((sum, { boxes }) => boxes.reduce((all, box) => all + box.width * box.height, sum), 0);
	return { needs: needs(best), covers, width: side.width, height: side.height, piece: () => together(pieces, best.at) };
}

/** Width and height. */
export interface Size {
	readonly width: number;
	readonly height: number;
}

function piecesOf(chains: readonly Chain[], setting: Setting, rows: number): Piece[] {
	return chains.map((chain, index) => layOutChain(chain, { ...setting, rows, path: String(index + 1) }));
}

function sideBySide(pieces: readonly Piece[], rows: number): Places {
	const each = pieces.length < many ? pieces.length : Math.ceil(pieces.length / rows);
	const at: XY[] = [];
	let [top, width, height] = [0, 0, 0];
	for (let from = 0; from < pieces.length; from += each) {
		const row = pieces.slice(from, from + each);
		const boxes = row.map((piece) => joinBoxes(piece.boxes));
		const axes = pack(row, chainGap);
		const start = -(boxes[0]?.x ?? 0);
		for (const [index, box] of boxes.entries()) {
			const x = start + (axes[index] ?? 0);
			at.push({ x, y: top });
			width = Math.max(width, x + box.x + box.width);
			height = Math.max(height, top + box.y + box.height);
		}
		top = height + chainGap;
	}
	return { at, width, height };
}

function together(pieces: readonly Piece[], at: readonly XY[]): Piece {
	const placed = pieces.map((piece, index) => ({ piece, ...(at[index] ?? { x: 0, y: 0 }) }));
	return {
		boxes: placed.flatMap(({ piece, x, y }) => moveBoxes(piece.boxes, x, y)),
		height: 0,
		draw: (from) => placed.flatMap(({ piece, x, y }) => piece.draw({ x: from.x + x, y: from.y + y })),
	};
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

const chainGap = 34;
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
	const piece = layOutSteps(straighten(chain), context);
	if (isSteady(chain, context)) context.known.set(chain, piece);
	return piece;
}

/** Steps below one another; where a further line leads in, with that beside those above. */
function layOutSteps(steps: readonly Step[], context: Context): Piece {
	const at = steps.findIndex((step) => "further" in step && step.further !== undefined);
	const host = steps[at];
	if (host === undefined) return stack(steps.map((step) => layOutStep(step, context)));
	const above = stack(steps.slice(0, at).map((step) => layOutStep(step, context)));
	const pieces = [layOutHost(host, above, context)];
	if (at + 1 < steps.length) pieces.push(layOutSteps(steps.slice(at + 1), context));
	return stack(pieces);
}

/** A step with the line that leads into it, below what stands above it. */
function layOutHost(step: Step, above: Piece, context: Context): Piece {
	const chain = "further" in step ? step.further : undefined;
	if (chain === undefined) return stack([above, layOutStep(step, context)]);
	const further = layOutChain(chain, { ...context, path: `${context.path}.0` });
	const name = `further line ${context.path}`;
	if (step.kind === "bus") {
		const { piece, reach } = leadBeside(above, busHead(step), further, name);
		return stack([piece, layOutStep(step, context, reach)]);
	}
	if (step.kind !== "device") return stack([above, layOutStep(step, context)]);
	const side = directSideOf(step.symbol);
	if (side === undefined) return leadBelow(above, layOutStep(step, context), further, name);
	return leadAbove(above, sidePiece(step, context.findingsOf, side.y), further, side, name);
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

function layOutStep(step: Step, context: Context, reach = 0): Piece {
	if ("branches" in step) {
		const branches = step.branches.map((branch, index) =>
			layOutChain(branch, { ...context, path: `${context.path}.${index + 1}` }),
		);
		const findings = context.findingsOf(step.names);
		if (step.kind === "split") return splitPiece(step, branches, findings, `parting ${context.path}`);
		return busPiece(step, branches, findings, branches.length >= many ? context.rows : 1, context.slack, reach);
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
