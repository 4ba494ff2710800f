// Measures of wires and cables: their own way, no kinks, few bends and crossings, apart from each other, coded at their ends.
import { colourCode } from "../../handbook/colours.ts";
import { type Box, boxesMeet, boxHolds, growBox } from "../bounds.ts";
import type { BoxTemplate, JacketMark, RectangleMark, WireMark, XY } from "../scene.ts";
import { BoxIndex } from "./box-index.ts";
import { atLeast, atMost, countFaults, type Measure, type Placed } from "./measure.ts";
import { isNearGland, isStraight, lengthOf, type Segment, type SheetFacts, segmentsOf, tell } from "./sheet-facts.ts";
import { segmentMeets } from "./text-measures.ts";

/** All measures of wires and cables. */
export function wireMeasures(facts: SheetFacts): Measure[] {
	return [
		throughForeign(facts),
		overlaps(facts),
		oblique(facts),
		kinks(facts),
		...closest(facts),
		cableCrossings(facts),
		...boxCrossings(facts),
		boxBends(facts),
		cableBends(facts),
		codedEnds(facts),
	];
}

/** A wire or sheath may enter an enclosure or a device only where it ends there. */
function throughForeign(facts: SheetFacts): Measure {
	const where: string[] = [];
	const solids = facts.rectangles.filter(({ mark }) => mark.as === "enclosure" || mark.as === "item");
	const index = new BoxIndex<Placed<RectangleMark>>();
	for (const solid of solids) index.add(solid.mark, solid);
	for (const way of [...facts.wires, ...facts.jackets])
		for (const segment of segmentsOf(way))
			for (const solid of index.meeting(segment.box))
				if (segmentMeets(segment, growBox(solid.mark, -3)) && !endsIn(way, solid.mark))
					where.push(`${tell(way)} through ${tell(solid)}`);
	return countFaults("wire through a foreign box or device", [...new Set(where)]);
}

function endsIn({ mark }: Placed<WireMark | JacketMark>, box: Box): boolean {
	const near = growBox(box, 8);
	const holds = (point: XY | undefined): boolean =>
		point !== undefined && boxHolds(near, { x: point.x, y: point.y, width: 0, height: 0 });
	return holds(mark.points[0]) || holds(mark.points.at(-1));
}

/** Two different conductors on the same line, over more than a screw's width. */
function overlaps(facts: SheetFacts): Measure {
	const where: string[] = [];
	eachPair(facts.wires.flatMap(segmentsOf).filter(isStraight), 1, (one, other) => {
		const apart = gapBetween(one, other);
		if (apart !== undefined && apart.distance < 1 && apart.shared > 8)
			where.push(`${tell(one.of)} along ${tell(other.of)}`);
	});
	return countFaults("wires on one line", where);
}

/** Only where conductors fan out at a wall may a wire run obliquely. */
function oblique(facts: SheetFacts): Measure {
	const ways = [...facts.wires, ...facts.jackets].flatMap(segmentsOf);
	const found = ways.filter(
		(segment) =>
			!isStraight(segment) && !isNearGland(facts, segment.from, fanReach) && !isNearGland(facts, segment.to, fanReach),
	);
	return countFaults(
		"oblique wires outside fans",
		found.map((segment) => tell(segment.of)),
	);
}

/** Between two corners. Fans are exempt. */
function kinks(facts: SheetFacts): Measure {
	const found = [...facts.wires, ...facts.jackets].flatMap((way) => {
		const segments = segmentsOf(way);
		return segments
			.slice(1, -1)
			.filter((segment) => lengthOf(segment) < 8 && !isNearGland(facts, segment.from, fanReach));
	});
	return countFaults(
		"kinks",
		found.map((segment) => tell(segment.of)),
	);
}

/** The least distance of two wires side by side, in boxes of a template and in others; strands in a sheath are exempt. */
function closest(facts: SheetFacts): Measure[] {
	const ordinary = { least: 40, where: "" };
	const fallback = { least: 40, where: "" };
	const wires = facts.wires.filter(({ mark }) => mark.run !== "strand");
	const segments = wires
		.flatMap(segmentsOf)
		.filter(
			(segment) => isStraight(segment) && !(isNearGland(facts, segment.from, 3) || isNearGland(facts, segment.to, 3)),
		);
	const loose = new BoxIndex<Placed<RectangleMark>>();
	for (const box of facts.enclosures) if (box.mark.template === "fallback") loose.add(box.mark, box);
	eachPair(segments, 24, (one, other) => {
		const apart = gapBetween(one, other);
		if (apart === undefined || apart.shared < 12) return;
		const nearest = loose.meeting(one.box).length > 0 ? fallback : ordinary;
		if (apart.distance >= nearest.least) return;
		nearest.least = apart.distance;
		nearest.where = `${tell(one.of)} beside ${tell(other.of)}`;
	});
	return [
		atLeast("distance of wires side by side", ordinary.least, 20, [ordinary.where]),
		atLeast("distance of wires side by side, fallback boxes", fallback.least, 10, [fallback.where]),
	];
}

/** None, but on the direct-current sheet, where sheaths may have to cross: there each two of them once. */
function cableCrossings({ sheet, jackets }: SheetFacts): Measure {
	const where: string[] = [];
	eachPair(jackets.flatMap(segmentsOf), 2, (one, other) => {
		if (cross(one, other)) where.push(`${tell(one.of)} across ${tell(other.of)}`);
	});
	const cables = new Set(jackets.map(({ mark }) => mark.of)).size;
	return countFaults("cable crossings", where, sheet.name === "direct-current" ? (cables * (cables - 1)) / 2 : 0);
}

/**
 * The most crossings of conductors inside one box of each template: three splices above a device cross three times, what passes
 * a device in series twice. Where no template fits, three for each cable that leads on.
 */
function boxCrossings(facts: SheetFacts): Measure[] {
	const found = new Map<BoxTemplate, { most: number; where: string }>();
	for (const enclosure of facts.enclosures) {
		const inside = wiresIn(facts, enclosure.mark).flatMap(segmentsOf);
		let crossings = 0;
		eachPair(inside, 2, (one, other) => {
			if (cross(one, other)) crossings++;
		});
		const { template = "fallback" } = enclosure.mark;
		const cables = facts.glands.filter((gland) => boxesMeet(gland, enclosure.mark)).length;
		const counted = template === "fallback" ? crossings / Math.max(1, cables - 1) : crossings;
		if (counted > (found.get(template)?.most ?? 0)) found.set(template, { most: counted, where: tell(enclosure) });
	}
	return mostCrossings.map(([template, name, limit]) => {
		const { most, where } = found.get(template) ?? { most: 0, where: "" };
		return atMost(`crossings in ${name}`, most, limit, [where]);
	});
}

const mostCrossings: readonly (readonly [BoxTemplate, name: string, limit: number])[] = [
	["panel", "a panel", 0],
	["tap", "a box with its device beside the rows", 3],
	["series", "a box with its device in series", 2],
	["end", "an end box", 0],
	["fallback", "a fallback box, each onward cable", 3],
];

/** Corners for each conductor inside the boxes, fans left out. */
function boxBends(facts: SheetFacts): Measure {
	const wires = facts.enclosures.flatMap((enclosure) => wiresIn(facts, enclosure.mark));
	const bends = wires.reduce(
		(sum, { mark }) => sum + cornersOf(mark).filter((corner) => !isNearGland(facts, corner, fanReach)).length,
		0,
	);
	return atMost("bends a conductor in boxes", wires.length === 0 ? 0 : bends / wires.length, 0.35);
}

/** Corners for each cable between boxes. One that leaves a panel for a row of its own needs two; one that wraps is left out. */
function cableBends(facts: SheetFacts): Measure {
	const panels = facts.enclosures.filter(({ mark }) =>
		facts.rectangles.some((bar) => bar.mark.as === "bar" && boxHolds(mark, bar.mark)),
	);
	const between = facts.jackets.filter(
		(jacket) => !panels.some((panel) => endsIn(jacket, panel.mark)) && cornersOf(jacket.mark).length < 4,
	);
	const bends = between.reduce((sum, { mark }) => sum + cornersOf(mark).length, 0);
	return atMost("bends a cable between boxes", between.length === 0 ? 0 : bends / between.length, 0.5);
}

/** The share of conductors that carry their letter code in each box they are drawn in. */
function codedEnds(facts: SheetFacts): Measure {
	const coded = new Set(
		facts.texts
			.filter(({ of }) => of.mark.of !== undefined)
			.map(({ of }) => `${of.group.name}\n${of.mark.of}\n${of.mark.text.split(">")[0]}`),
	);
	const wires = facts.wires.filter(({ mark, group }) => mark.run !== "strand" && group.sort === "object");
	const bare = wires.filter(({ mark, group }) => {
		const code = colourCode(mark.colour) ?? mark.colour.slice(0, 4).toUpperCase();
		return !coded.has(`${group.name}\n${mark.of}\n${code}`);
	});
	const share = wires.length === 0 ? 1 : 1 - bare.length / wires.length;
	return atLeast("conductors with their letter code", share, 1, bare.slice(0, 10).map(tell));
}

function wiresIn(facts: SheetFacts, box: Box): Placed<WireMark>[] {
	return facts.wires.filter(
		({ mark }) =>
			mark.run !== "strand" &&
			mark.points.every((point) => boxHolds(growBox(box, 8), { x: point.x, y: point.y, width: 0, height: 0 })),
	);
}

/** The points where a way turns. */
function cornersOf(mark: WireMark | JacketMark): XY[] {
	return mark.points.slice(1, -1).filter((point, index) => {
		const [before, after] = [mark.points[index], mark.points[index + 2]];
		if (before === undefined || after === undefined) return false;
		const turn = (point.x - before.x) * (after.y - point.y) - (point.y - before.y) * (after.x - point.x);
		return Math.abs(turn) > 0.01;
	});
}

/** How far parallel pieces are apart, and over which length they run side by side. */
function gapBetween(one: Segment, other: Segment): { distance: number; shared: number } | undefined {
	const level = Math.abs(one.from.y - one.to.y) < 0.01;
	if (level !== Math.abs(other.from.y - other.to.y) < 0.01) return undefined;
	const along = (point: XY): number => (level ? point.x : point.y);
	const across = (point: XY): number => (level ? point.y : point.x);
	const start = Math.max(Math.min(along(one.from), along(one.to)), Math.min(along(other.from), along(other.to)));
	const end = Math.min(Math.max(along(one.from), along(one.to)), Math.max(along(other.from), along(other.to)));
	return { distance: Math.abs(across(one.from) - across(other.from)), shared: end - start };
}

/** Whether two pieces cross at a point inside both. */
function cross(one: Segment, other: Segment): boolean {
	const side = (from: XY, to: XY, point: XY): number =>
		(to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
	return (
		side(one.from, one.to, other.from) * side(one.from, one.to, other.to) < 0 &&
		side(other.from, other.to, one.from) * side(other.from, other.to, one.to) < 0
	);
}

/** Calls `look` once for each two pieces of different conductors that come within `reach`. */
function eachPair(segments: readonly Segment[], reach: number, look: (one: Segment, other: Segment) => void): void {
	const index = new BoxIndex<Segment>();
	for (const segment of segments) {
		for (const other of index.meeting(growBox(segment.box, reach)))
			if (other.of.mark.of !== segment.of.mark.of) look(segment, other);
		index.add(segment.box, segment);
	}
}

/** How far from a gland conductors may fan out. */
const fanReach = 60;
