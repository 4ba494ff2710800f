// A layout as groups in reading order: each box as power reaches it, each cable behind the two boxes it joins, then findings.
import type { NumberedFinding } from "../../base/finding.ts";
import { marksInPlace, placeGroup } from "../bounds.ts";
import type { Group } from "../scene.ts";
import { cableMarks } from "./cable-marks.ts";
import { headerHeight } from "./dimensions.ts";
import type { PlacedBox, PlacedCable } from "./lanes.ts";
import { type Anchor, placeBadges } from "./place-badges.ts";
import type { BoxDrawing, SheetBox } from "./sheet-box.ts";
import { placeTag, placeTagBeside } from "./tags.ts";
import { TakenBoxes } from "./taken-boxes.ts";
import type { LaneLayout } from "./tree-layout.ts";

/** The groups of a laid-out sheet. */
export function drawGroups(drawing: BoxDrawing, layout: LaneLayout, findings: readonly NumberedFinding[]): Group[] {
	const anchors = new Map<string, Anchor>();
	const cables = drawCables(drawing, layout, anchors);
	const groups: Group[] = [];
	const drawn = new Set<SheetBox>();
	const flags = new Map<string, number>();
	for (const placed of layout.boxes) {
		groups.push(boxGroup(placed, flags));
		drawn.add(placed.box);
		if (findings.length > 0) noteAnchors(placed, anchors);
		for (const { placed: cable, group } of cables.get(placed.box) ?? [])
			if (drawn.has(cable.from) && drawn.has(cable.to)) groups.push(group);
	}
	if (findings.length === 0) return groups;
	const taken = new TakenBoxes();
	for (const group of groups) for (const mark of marksInPlace(group)) taken.takeMark(mark);
	return [...groups, ...placeBadges(drawing.circuit, findings, anchors, taken)];
}

/** A box or a flag in its place; of several flags to one sheet each has a name of its own, by `flags` so far. */
function boxGroup({ box, x, y }: PlacedBox, flags: Map<string, number>): Group {
	const { interior } = box;
	const number = (flags.get(box.name) ?? 0) + 1;
	if (interior === undefined) flags.set(box.name, number);
	const flag = number === 1 ? `flag ${box.name}` : `flag ${box.name} ${number}`;
	const group: Group =
		interior === undefined
			? { name: flag, sort: "object", label: `${box.name} is on another sheet`, marks: box.marks }
			: {
					name: `box ${box.name}`,
					sort: "object",
					label: interior.words,
					span: interior.content.enclosure.span,
					marks: box.marks,
				};
	return placeGroup(group, { x, y, scale: 1 });
}

/** The group of each cable with its tag, under both boxes it joins. */
function drawCables(
	drawing: BoxDrawing,
	layout: LaneLayout,
	anchors: Map<string, Anchor>,
): Map<SheetBox, { placed: PlacedCable; group: Group }[]> {
	const taken = new TakenBoxes();
	for (const { box, x, y } of layout.boxes) taken.take({ x: x - 6, y, width: box.width + 12, height: box.height });
	const jackets = layout.cables.map((placed) => ({
		placed,
		marks: cableMarks(placed, drawing.circuit, drawing.strands, drawing.lit),
	}));
	for (const { marks } of jackets) for (const mark of marks) if (mark.kind === "jacket") taken.takeMark(mark);
	const groups = new Map<SheetBox, { placed: PlacedCable; group: Group }[]>();
	for (const { placed, marks } of jackets) {
		const { cable, points } = placed;
		const tag = placeTag(cable, points, taken) ?? placeTagBeside(cable, points, taken);
		for (const mark of tag?.marks ?? []) taken.takeMark(mark);
		if (tag !== undefined) anchors.set(cable.tag, { at: tag.at });
		const length = cable.lengthText === "" ? "length not known" : cable.lengthText;
		const group: Group = {
			name: `cable ${cable.tag}`,
			sort: "object",
			label: `${cable.make} cable ${cable.tag} from ${cable.from.name} to ${cable.to.name}, ${length}`,
			span: cable.span,
			marks: [...marks, ...(tag?.marks ?? [])],
		};
		for (const box of new Set([placed.from, placed.to])) {
			const there = groups.get(box);
			if (there === undefined) groups.set(box, [{ placed, group }]);
			else there.push({ placed, group });
		}
	}
	return groups;
}

/** The first place at which a name is drawn counts, for it is nearest to where power comes from; an end on nothing comes before all. */
function noteAnchors({ box, x, y }: PlacedBox, anchors: Map<string, Anchor>): void {
	for (const [name, spot] of box.interior?.anchors() ?? []) {
		if (anchors.has(name) && spot.isFreeEnd !== true) continue;
		// What is in a box is numbered in it, below its head.
		const head = spot.y < headerHeight ? 0 : headerHeight;
		const within = { x, y: y + head, width: box.width, height: box.height - head };
		anchors.set(name, { at: { x: spot.x + x, y: spot.y + y }, within });
	}
}
