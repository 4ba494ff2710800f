// The wiring sheets of a plan: every conductor on its terminal, one sheet a panel, findings under their numbers.
import type { Analysis } from "../../analysis/analysis.ts";
import type { NumberedFinding } from "../../base/finding.ts";
import { listNames } from "../../base/wording.ts";
import type { Circuit } from "../../circuit/circuit.ts";
import { composeSheet } from "../furniture/compose-sheet.ts";
import { type PlanFurniture, planFurniture } from "../furniture/plan-furniture.ts";
import type { Group, Sheet } from "../scene.ts";
import type { SystemPart } from "../system-parts.ts";
import { drawGroups } from "./draw-groups.ts";
import { type SheetShare, shareSheets } from "./feed-graph.ts";
import type { ShapeMemo } from "./interior.ts";
import { litConductors } from "./lit-conductors.ts";
import { layOutNet } from "./net-layout.ts";
import { type BoxDrawing, drawNode } from "./sheet-box.ts";
import { legendOf } from "./sheet-legend.ts";
import { wiringNotes } from "./sheet-notes.ts";
import { orderStrands } from "./strand-order.ts";
import { type LaneLayout, layOutTree, stackTrees } from "./tree-layout.ts";

/** Sheets of the set that stand before and after the wiring sheets. */
export interface SetPlace {
	readonly before: number;
	readonly after: number;
}

/** The wiring sheets of a plan before they are drawn. */
export interface WiringSet {
	readonly part: SystemPart;
	readonly shares: readonly SheetShare[];
	readonly names: readonly string[];
	/** The sheet an enclosure is drawn on; empty where on none. */
	readonly sheetOf: (enclosure: string) => string;
	/** What of these boxes is on the direct-current sheet, as a note. */
	readonly reference: (boxes: readonly string[]) => string[];
}

/** Shares the alternating-current part of a circuit out to sheets. `other`: the sheet that draws the rest. */
export function planWiring(part: SystemPart, other: string): WiringSet {
	const shares = shareSheets(part.circuit, part.shows);
	const names = shares.map((share) =>
		shares.length === 1 || share.suffix === "" ? "wiring" : `wiring-${share.suffix}`,
	);
	const found = sheetFinder(shares, names);
	const known = new Set(part.circuit.enclosures.map(({ name }) => name));
	return {
		part,
		shares,
		names,
		sheetOf: (enclosure) => (known.has(enclosure) ? found(enclosure) : other),
		reference: (boxes) => {
			const shared = boxes.filter((name) => part.shared.has(name));
			return shared.length === 0 ? [] : [`Direct-current side of ${listNames(shared, 12)}: sheet ${other}.`];
		},
	};
}

/** The wiring sheets one after the other, one a panel; more where a panel has more than about 12 circuits. */
export async function* drawWiring(
	analysis: Analysis,
	{ shares, names, part: { circuit }, sheetOf, reference }: WiringSet,
	findings: readonly NumberedFinding[],
	place: SetPlace,
): AsyncGenerator<Sheet> {
	const furniture = planFurniture(analysis.circuit, findings);
	const lit = litConductors(circuit, findings);
	const memo: ShapeMemo = new Map();
	const of = place.before + shares.length + place.after;
	for (const [index, share] of shares.entries()) {
		const strands = orderStrands(circuit, share.roots);
		const drawing: BoxDrawing = { circuit, strands, lit, memo, sheetOf };
		const layout = await layOutShare(drawing, share);
		const groups = drawGroups(drawing, layout, findings);
		const contents = layout.boxes.flatMap(({ box }) => box.interior?.content ?? []);
		const notes = [
			...reference(layout.boxes.map(({ box: { name } }) => name)),
			...otherParts(shares, names, index),
			...wiringNotes(analysis, contents),
		];
		yield composeShare(circuit, share, furniture, groups, notes, {
			name: names[index] ?? "wiring",
			number: place.before + index + 1,
			of,
			alone: shares.length === 1,
		});
	}
}

async function layOutShare(drawing: BoxDrawing, share: SheetShare): Promise<LaneLayout> {
	if (!share.isTree) return await layOutNet(drawing, share);
	return stackTrees(share.roots.map((root) => layOutTree(drawNode(drawing, root))));
}

/** Where each enclosure is drawn: flags name the sheet they lead to. */
function sheetFinder(shares: readonly SheetShare[], names: readonly string[]): (enclosure: string) => string {
	const sheetByBox = new Map<string, string>();
	for (const [index, share] of shares.entries()) {
		const waiting = [...share.roots];
		for (const node of waiting) {
			waiting.push(...node.left, ...node.right);
			const name = node.stock?.enclosure.name;
			if (name !== undefined && !sheetByBox.has(name)) sheetByBox.set(name, names[index] ?? "");
		}
	}
	return (enclosure) => sheetByBox.get(enclosure) ?? "";
}

/** On which sheets the other circuits of the same panel are. */
function otherParts(shares: readonly SheetShare[], names: readonly string[], own: number): string[] {
	const panel = shares[own]?.part?.panel;
	if (panel === undefined) return [];
	return shares.flatMap(({ part }, index) =>
		part?.panel === panel && index !== own
			? [`${panel}: circuits ${part.first} to ${part.last} are on sheet ${names[index] ?? ""}.`]
			: [],
	);
}

function composeShare(
	circuit: Circuit,
	share: SheetShare,
	furniture: PlanFurniture,
	groups: readonly Group[],
	notes: readonly string[],
	{ alone, ...place }: { readonly name: string; readonly number: number; readonly of: number; readonly alone: boolean },
): Sheet {
	const { part } = share;
	const panel = part?.panel ?? share.suffix;
	const of = alone ? "" : panel === "" ? ", no panel" : ` ${panel}`;
	const circuits = part === undefined ? "" : `, circuits ${part.first} to ${part.last} of ${part.total}`;
	return composeSheet({
		...furniture,
		...place,
		title: `Wiring diagram${of}${circuits}`,
		subtitle: "every conductor on its terminal · read from left to right, one lane for each home run",
		description: `Wiring diagram. ${furniture.description}`,
		groups,
		legend: legendOf(circuit, groups),
		notes: [...notes, ...furniture.notes],
	});
}
