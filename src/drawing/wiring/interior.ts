// The inside of an enclosure as marks, in its own coordinates. Boxes of one shape are laid out once and told again by their names.
import type { Mark, XY } from "../scene.ts";
import { type BoxContent, namesOf } from "./box-content.ts";
import { boxMarks } from "./box-marks.ts";
import type { BoxPlan } from "./box-plan.ts";
import { shapeOf } from "./box-shape.ts";
import { headerHeight } from "./dimensions.ts";
import { headerOf } from "./header.ts";
import { layOutBox } from "./lay-out-box.ts";
import { TakenBoxes } from "./taken-boxes.ts";
import { placeCodes } from "./wire-codes.ts";

/** An enclosure ready to be placed. */
export interface Interior {
	readonly content: BoxContent;
	readonly width: number;
	readonly height: number;
	/** Where each entry passes the wall, left ones first, in the order of the content. */
	readonly glands: readonly XY[];
	readonly marks: readonly Mark[];
	/** What it is, in words. */
	readonly words: string;
	/** Where a finding's number belongs that marks a point, a conductor, a part or the enclosure. */
	readonly anchors: () => ReadonlyMap<string, Spot>;
}

/** Where a finding's number belongs; an end that is on nothing is where to look first. */
export interface Spot extends XY {
	readonly isFreeEnd?: boolean;
}

/** Boxes laid out so far, by their shape. */
export type ShapeMemo = Map<string, Core>;
/** A box without the words above it. */
interface Core {
	readonly content: BoxContent;
	readonly plan: BoxPlan;
	readonly marks: readonly Mark[];
	/** Which of the box's names each mark has; -1 where it has none of them. */
	readonly named: () => readonly number[];
}

/** Lays out and draws the inside of an enclosure. `lit` gives the finding whose path each conductor is on. */
export function drawInterior(content: BoxContent, lit: ReadonlyMap<string, number>, memo: ShapeMemo): Interior {
	const header = headerOf(content);
	// Widths go in steps, so that boxes whose labels differ a little are of one shape.
	const leastWidth = Math.max(usualWidth, Math.ceil(header.width / widthStep) * widthStep);
	const shape = shapeOf(content, leastWidth, lit);
	const known = shape === undefined ? undefined : memo.get(shape);
	const core = known ?? drawCore(content, leastWidth, lit);
	if (shape !== undefined && known === undefined) memo.set(shape, core);
	const names = known === undefined ? undefined : namesOf(content);
	const { plan } = core;
	return {
		content,
		width: plan.width,
		height: plan.height,
		glands: plan.glands.map(({ x, y }) => ({ x, y })),
		marks: [...(names === undefined ? core.marks : renameMarks(core, names)), ...header.marks],
		words: header.words,
		anchors: () => {
			const anchors = anchorsOf(core.content, plan);
			if (names === undefined) return anchors;
			const rename = new Map(namesOf(core.content).map((name, index) => [name, names[index] ?? name]));
			return new Map([...anchors].map(([name, at]) => [rename.get(name) ?? name, at]));
		},
	};
}

function drawCore(content: BoxContent, leastWidth: number, lit: ReadonlyMap<string, number>): Core {
	const plan = layOutBox(content, leastWidth);
	const marks = boxMarks(content, plan, lit);
	const taken = new TakenBoxes();
	taken.take({ x: 0, y: 0, width: plan.width, height: headerHeight });
	for (const mark of marks) taken.takeMark(mark);
	const all = [...marks, ...placeCodes(plan.routes, lit, taken)];
	let named: readonly number[] | undefined;
	return {
		content,
		plan,
		marks: all,
		named: () => {
			named ??= nameMarks(content, all);
			return named;
		},
	};
}

/** For each mark the place of its name among the names of its box. */
function nameMarks(content: BoxContent, marks: readonly Mark[]): number[] {
	const places = new Map(namesOf(content).map((name, index) => [name, index]));
	return marks.map(({ of }) => (of === undefined ? undefined : places.get(of)) ?? -1);
}

/** The marks of a box with the names of another of its shape. */
function renameMarks({ marks, named }: Core, names: readonly string[]): Mark[] {
	const places = named();
	return marks.map((mark, index): Mark => {
		const of = names[places[index] ?? -1];
		if (of === undefined) return mark;
		if (mark.kind !== "symbol" || mark.label === undefined) return { ...mark, of };
		return { ...mark, of, label: mark.label.replace(mark.of ?? "", () => of) };
	});
}

/** Where the number of a finding goes for each name in the box. The first place of a name counts. */
function anchorsOf(content: BoxContent, plan: BoxPlan): Map<string, Spot> {
	const anchors = new Map<string, Spot>();
	const put = (name: string | undefined, at: Spot | undefined): void => {
		if (name !== undefined && at !== undefined && !anchors.has(name)) anchors.set(name, at);
	};
	const { points } = content.circuit;
	for (const plate of plan.plates) {
		for (const { point, screws } of plate.terminals) put(points[point]?.name, screws[0]);
		// The corner of a plate that is farthest from its screws.
		const { x, y, width, height } = plate.box;
		const faces = plate.terminals.some(({ screws }) => screws.some((screw) => screw.y === y));
		put(plate.of, { x: x + width, y: faces ? y + height : y });
	}
	for (const { wire, at } of plan.stubs) put(wire.conductor.name, { ...at, isFreeEnd: true });
	for (const { point, columns, y } of plan.joints) put(points[point]?.name, { x: columns[0] ?? 0, y });
	for (const route of plan.routes) {
		const middle = route.points[Math.floor(route.points.length / 2)];
		for (const tie of [route.wire.to, route.wire.from])
			if (tie.at === "point")
				put(points[tie.point]?.name, tie === route.wire.to ? route.points.at(-1) : route.points[0]);
		put(route.wire.conductor.name, middle);
	}
	for (const { point, at } of plan.panel?.screws ?? []) put(points[point]?.name, at);
	for (const bar of plan.panel?.bars ?? []) put(bar.of, { x: bar.box.x + bar.box.width, y: bar.box.y });
	put(content.enclosure.name, { x: plan.width - 14, y: 16 });
	return anchors;
}

const widthStep = 24;
const usualWidth = 144;
