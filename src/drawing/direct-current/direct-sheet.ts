// The direct-current sheet of a plan: batteries on the left, what they feed on the right, every conductor on its terminal.

import type { Analysis } from "../../analysis/analysis.ts";
import type { NumberedFinding } from "../../base/finding.ts";
import { marksInPlace, placeGroup } from "../bounds.ts";
import { composeSheet } from "../furniture/compose-sheet.ts";
import { planFurniture } from "../furniture/plan-furniture.ts";
import type { Group, Sheet } from "../scene.ts";
import type { SystemPart } from "../system-parts.ts";
import { litConductors } from "../wiring/lit-conductors.ts";
import { type Anchor, placeBadges } from "../wiring/place-badges.ts";
import type { BoxDrawing } from "../wiring/sheet-box.ts";
import { type LegendWords, legendOf, symbolTexts } from "../wiring/sheet-legend.ts";
import { orderStrands } from "../wiring/strand-order.ts";
import { TakenBoxes } from "../wiring/taken-boxes.ts";
import { type NetOrder, orderNet, turnOrder } from "./columns.ts";
import type { BoxInk, DirectBox } from "./direct-box.ts";
import { drawBoxes } from "./draw-boxes.ts";
import { planStoreys, type Storey } from "./fold.ts";
import { type DirectLayout, layOutNet } from "./lay-out-net.ts";
import { type DirectNet, readNet } from "./net.ts";
import { runMarks } from "./run-marks.ts";
import { tagMarks } from "./run-tags.ts";

/** The name of the sheet, as references to it give it. */
export const directSheetName = "direct-current";

/** The sheet; `sheetOf` names the wiring sheet that draws a box too, `place` is its place in the set. */
export async function drawDirect(
	{ circuit }: Analysis,
	part: SystemPart,
	findings: readonly NumberedFinding[],
	sheetOf: (box: string) => string,
	place: { readonly number: number; readonly of: number },
): Promise<Sheet> {
	const { drawing, net, order, boxes, storeys } = prepareDirect(part, litConductors(circuit, findings), sheetOf);
	const layout = await layOutNet(net, order, boxes, storeys);
	const groups = drawGroups(drawing, layout, findings);
	const furniture = planFurniture(circuit, findings);
	return composeSheet({
		...furniture,
		...place,
		name: directSheetName,
		title: "Direct-current wiring diagram",
		subtitle: "every conductor on its terminal · read from the battery on the left",
		description: `Direct-current wiring diagram. ${furniture.description}`,
		groups,
		legend: legendOf(circuit, groups, legendWords),
		notes: [...furniture.notes],
	});
}

/** All that is laid out: the net, its order, and every box drawn but not yet placed. */
export function prepareDirect(
	part: SystemPart,
	lit: ReadonlyMap<string, number>,
	sheetOf: (box: string) => string,
): {
	readonly drawing: BoxDrawing;
	readonly net: DirectNet;
	readonly order: NetOrder;
	readonly boxes: ReadonlyMap<string, DirectBox>;
	readonly storeys: readonly Storey[];
} {
	const drawing: BoxDrawing = {
		circuit: part.circuit,
		strands: orderStrands(part.circuit, []),
		lit,
		memo: new Map(),
		sheetOf,
	};
	const net = readNet(part);
	const straight = orderNet(net);
	const elsewhere = (box: string): string =>
		part.shared.has(box) || !part.circuit.enclosureByName.has(box) ? sheetOf(box) : "";
	const boxes = drawBoxes(drawing, net, straight, elsewhere);
	const storeys = planStoreys(net, straight, boxes);
	const turned = new Set(storeys.flatMap((storey) => [...storey.turned]));
	const returns = new Set(storeys.flatMap((storey) => storey.returns));
	if (turned.size === 0 && returns.size === 0) return { drawing, net, order: straight, boxes, storeys };
	const order = turnOrder(straight, turned, returns);
	return { drawing, net, order, boxes: drawBoxes(drawing, net, order, elsewhere), storeys };
}

const legendWords: LegendWords = {
	bars: [
		["hot-bus", "positive bus"],
		["neutral-bar", "negative bus"],
		["ground-bar", "ground bus"],
		["dark", "bolted together, no conductor between"],
	],
	symbols: [
		["contact-fuse", "fuse"],
		["contact-breaker-us", "breaker"],
		["contact-breaker-iec", "breaker"],
		["contact-disconnect", "disconnect"],
		["contact-switch", "switch"],
		["shunt-face", "shunt, measures what flows"],
		["chassis-bond", "stud of a chassis, each where its conductor ends"],
		...symbolTexts,
	],
};

function drawGroups(drawing: BoxDrawing, layout: DirectLayout, findings: readonly NumberedFinding[]): Group[] {
	const { circuit, lit } = drawing;
	const anchors = new Map<string, Anchor>();
	const inks = layout.boxes.map((placed) => ({ placed, ink: placed.box.draw(placed.docks) }));
	const cases = inks.flatMap(({ placed: { box, x, y }, ink }): Group[] => {
		noteAnchors(anchors, ink, x, y);
		if (ink.marks.length === 0) return [];
		const { name, label, span } = box;
		return [
			placeGroup(
				{ name, sort: "object", label, ...(span === undefined ? {} : { span }), marks: ink.marks },
				{ x, y, scale: 1 },
			),
		];
	});
	const cables = new Map<string, Group>();
	for (const placed of layout.runs) {
		const { run, tag } = placed;
		const told = tag === undefined ? undefined : tagMarks(run, tag);
		const key = run.sort === "tail" ? (circuit.conductors[run.conductors[0]?.index ?? -1]?.cable ?? run.key) : run.key;
		if (told !== undefined && !anchors.has(run.key)) anchors.set(run.key, { at: told.at });
		const marks = [...runMarks(placed, circuit, lit), ...(told?.marks ?? [])];
		const known = cables.get(key);
		if (known !== undefined) {
			cables.set(key, { ...known, marks: [...marks, ...known.marks] });
			continue;
		}
		const { cable } = run;
		const length = cable === undefined || cable.lengthText === "" ? "length not known" : cable.lengthText;
		cables.set(key, {
			name: run.sort === "strap" ? run.key : `cable ${key}`,
			sort: "object",
			label:
				cable === undefined
					? `${run.ends.join(" bolted to ")}`
					: `${cable.make} cable ${key} from ${cable.from.name} to ${cable.to.name}, ${length}`,
			...(cable === undefined ? {} : { span: cable.span }),
			marks,
		});
	}
	const screws = inks.flatMap(({ placed: { box, x, y }, ink }): Group[] =>
		ink.over.length === 0
			? []
			: [placeGroup({ name: `terminals ${box.name}`, sort: "decoration", marks: ink.over }, { x, y, scale: 1 })],
	);
	const groups = [...cases, ...cables.values(), ...screws];
	if (findings.length === 0) return groups;
	const taken = new TakenBoxes();
	for (const group of groups) for (const mark of marksInPlace(group)) taken.takeMark(mark);
	return [...groups, ...placeBadges(circuit, findings, anchors, taken)];
}

function noteAnchors(anchors: Map<string, Anchor>, ink: BoxInk, x: number, y: number): void {
	for (const [name, { at, within }] of ink.anchors) {
		if (anchors.has(name)) continue;
		const moved = { x: at.x + x, y: at.y + y };
		anchors.set(
			name,
			within === undefined ? { at: moved } : { at: moved, within: { ...within, x: within.x + x, y: within.y + y } },
		);
	}
}
