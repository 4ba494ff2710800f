// The one-line sheet of a plan: every source on top, power running down to the loads, findings under their numbers.
import type { Analysis } from "../../analysis/analysis.ts";
import type { NumberedFinding } from "../../base/finding.ts";
import { findSymbol } from "../../symbols/index.ts";
import { joinBoxes } from "../bounds.ts";
import { composeSheet, type LegendEntry, type SheetContent } from "../furniture/compose-sheet.ts";
import { planFurniture } from "../furniture/plan-furniture.ts";
import type { Group, Sheet } from "../scene.ts";
import { findingsByName } from "./badging.ts";
import { followPower } from "./follow.ts";
import { groupAlike } from "./grouping.ts";
import { layOutChains, layOutInColumns, layOutPacked, type Setting, type Size } from "./lay-out.ts";
import { leadIn } from "./lead-in.ts";
import type { Piece } from "./piece.ts";
import type { FindingsOf } from "./step-pieces.ts";
import type { Chain } from "./steps.ts";

/** The one-line sheet; `place` is its place in the set of sheets. */
export function drawOneLine(
	{ circuit }: Analysis,
	findings: readonly NumberedFinding[],
	place: { readonly number: number; readonly of: number },
): Sheet {
	const byName = findingsByName(findings, circuit);
	const marked = new Set(byName.keys());
	const chains = followPower(circuit).map((chain) => groupAlike(chain, marked));
	const findingsOf: FindingsOf = (names) => [...new Set(names)].flatMap((name) => byName.get(name) ?? []);
	const furniture = planFurniture(circuit, findings);
	const content: Omit<SheetContent, "groups" | "legend"> = {
		...furniture,
		...place,
		name: "one-line",
		title: "One-line diagram",
		subtitle: "sources on top, power runs down · each line stands for all conductors of its cable",
		description: `One-line diagram. ${furniture.description}`,
	};
	const groups = bestShape(chains, findingsOf);
	return composeSheet({ ...content, groups, legend: legendOf(groups) });
}

/** The layout of several chains that takes the smallest sheet; of one, that whose shape is nearest to that of a sheet. */
function bestShape(chains: readonly Chain[], findingsOf: FindingsOf): Group[] {
	if (chains.length < 2 || chains.length > mostPacked)
		return nearest(chains, settingOf(findingsOf, 1))?.draw({ x: 0, y: 0 }) ?? [];
	const led = leadIn(chains);
	const joined = led === chains ? undefined : smallest(led, findingsOf);
	const best =
		joined !== undefined && joined.covers >= leastCovered * joined.needs ? joined : smallest(chains, findingsOf);
	return best?.piece().draw({ x: 0, y: 0 }) ?? [];
}

/** Few chains, tried in several widths, and their long buses in rows: what needs the smallest sheet. */
function smallest(chains: readonly Chain[], findingsOf: FindingsOf): ReturnType<typeof layOutPacked> | undefined {
	let best: ReturnType<typeof layOutPacked> | undefined;
	for (const slack of chains.length === 1 ? slacks : [1]) {
		const setting = settingOf(findingsOf, slack);
		for (let rows = 1; rows <= mostPackedRows; rows++) {
			const next = layOutPacked(chains, setting, rows, chains.length === 1 ? [] : packedShares, sheetFor);
			if (best === undefined || next.needs < best.needs) best = next;
			if (next.width <= goodShape * next.height) break;
		}
	}
	return best;
}

function settingOf(findingsOf: FindingsOf, slack: number): Setting {
	return { findingsOf, known: new Map(), slack };
}

/** The size of the sheet that holds a drawing: one too narrow or too wide for a sheet leaves the rest empty. */
function sheetFor({ width, height }: Size): number {
	return Math.max(width, height * narrowest) * Math.max(height, width / widest);
}

/** The layout whose shape is nearest to that of a sheet: long buses are set in rows where that helps. */
function nearest(chains: readonly Chain[], setting: Setting): Piece | undefined {
	let best: { piece: Piece; off: number } | undefined;
	for (let rows = 1; rows <= mostRows; rows++) {
		const piece = layOutChains(chains, setting, rows);
		const shape = shapeOf(piece);
		const off = Math.abs(Math.log(shape / goodShape));
		if (best !== undefined && off >= best.off) break;
		best = { piece, off };
		if (shape <= goodShape) break;
	}
	const [only] = chains;
	for (let columns = 2; columns <= mostColumns && only !== undefined && chains.length === 1; columns++) {
		if (best === undefined || best.off <= narrow) break;
		const piece = layOutInColumns(only, setting, columns);
		if (piece === undefined) break;
		const off = Math.abs(Math.log(shapeOf(piece) / goodShape));
		if (off >= best.off) break;
		best = { piece, off };
	}
	return best?.piece;
}

function shapeOf(piece: Piece): number {
	const box = joinBoxes(piece.boxes);
	return box.width / Math.max(1, box.height);
}

const mostRows = 24;
/** More chains than this stand side by side: to try where each finds room takes too long. */
const mostPacked = 12;
const mostPackedRows = 3;
/** How much lower than need be branches of a bus may hang, to go below their neighbours. */
const slacks = [1, 1.15];
/** Lines that lead into others are drawn so where symbols and words cover so much of the sheet; otherwise a flag tells where they go. */
const leastCovered = 0.155;
/** Widths to pack in, as parts of that of all chains side by side. */
const packedShares = [0.5, 0.57, 0.65, 0.73, 0.81, 0.9];
/** Limits of width to height of a drawing, its sheet's heading and lists about it. */
const narrowest = 1.35;
const widest = 2.05;
const mostColumns = 12;
/** Width to height of the space for a drawing on a landscape sheet. */
const goodShape = 1.7;
/** A single line this far from it, as a logarithm, is better set in columns. */
const narrow = Math.log(goodShape / 0.9);

/** Every symbol that occurs, once, with what it stands for. */
function legendOf(groups: readonly Group[]): LegendEntry[] {
	const names = new Set(
		groups.flatMap((group) => group.marks.flatMap((mark) => (mark.kind === "symbol" ? [mark.symbol] : []))),
	);
	return [...names].map((symbol) => ({
		sample: { kind: "symbol", symbol },
		code: "",
		text: findSymbol(symbol)?.title ?? symbol,
	}));
}
