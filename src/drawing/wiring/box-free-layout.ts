// The inside of a box of any shape: conductors on rows, devices on one side of them, every wire with at most one bend or a jog.
import { certain } from "../../base/certain.ts";
import type { Box } from "../bounds.ts";
import { layOutBetween } from "./between-layout.ts";
import { type BoxContent, isCore, pointOf, type Wire } from "./box-content.ts";
import { codeRoom, glandsOf, hasFreeEnd, rowHeights, stubRoom, studAt } from "./box-frame.ts";
import { type FreePlan, freeChoices, planFree, usualSide } from "./box-free.ts";
import type { BoxPlan, Joint, Plate } from "./box-plan.ts";
import { countCrossings } from "./crossings.ts";
import { columnPitch, headerHeight, innerMargin, rowPitch, spliceReach } from "./dimensions.ts";
import {
	captionHeight,
	type FreePlateSize,
	namesPitch,
	placeFreePlate,
	type Screw,
	screwMargin,
	sizeFreePlate,
} from "./free-plate.ts";
import { packTracks } from "./pack-tracks.ts";
import { type Arrival, deepestFan, type Places, routeAll } from "./places.ts";

/** Lays out any box; of the orders worth trying the one with the fewest crossings. It is at least `leastWidth` wide. */
export function layOutFree(content: BoxContent, leastWidth: number): BoxPlan {
	const usual = usualSide(content);
	const unusual = usual === "above" ? "below" : "above";
	let best = bestOf(content, usual, leastWidth, false);
	// A box with more crossings than a tap has may do better the other way up, or with its device turned round.
	for (const [side, all] of [[unusual, false] as const, [usual, true] as const, [unusual, true] as const]) {
		if (best.crossings <= tapCrossings) break;
		const other = bestOf(content, side, leastWidth, all);
		if (other.crossings < best.crossings) best = other;
	}
	const between = best.crossings > mostCrossings(content) ? layOutBetween(content, leastWidth) : undefined;
	if (between === undefined || between.crossings >= best.crossings) return best.plan;
	return { ...between.plan, template: templateOf(content) };
}

/** How often wires may cross before the devices are better placed between the rows. */
function mostCrossings({ left, right }: BoxContent): number {
	return tapCrossings * Math.max(1, left.length + right.length - 1);
}

function bestOf(
	content: BoxContent,
	side: "above" | "below",
	leastWidth: number,
	all: boolean,
): { readonly plan: BoxPlan; readonly crossings: number } {
	const tried = freeChoices(content, side, all).map((choice) => {
		const plan =
			layOut(content, planFree(content, choice), leastWidth) ??
			certain(layOut(content, planFree(content, { ...choice, shared: false }), leastWidth), "a layout");
		return { plan, crossings: countCrossings(plan.routes) };
	});
	return tried.reduce((one, other) => (other.crossings < one.crossings ? other : one));
}

/** Undefined where two wires would lie on one another on a row they share. */
function layOut(content: BoxContent, free: FreePlan, leastWidth: number): BoxPlan | undefined {
	const room = codeRoom(content);
	const sizes = content.devices.map((device) => sizeFreePlate(content, device, content.devices.length > 1));
	const relative = rowHeights(free.rows.rows, 0);
	const relativeY = (wire: Wire): number => certain(relative[free.rows.rowOf.get(wire) ?? -1], "a core's row");
	const fans = { left: deepestFan(content.left, relativeY), right: deepestFan(content.right, relativeY) };
	const codes = room + (free.slots[0]?.splice === undefined ? 0 : spliceReach);
	const start =
		content.left.length === 0 ? innerMargin + 8 : fans.left + codes + (hasFreeEnd(content, "left") ? stubRoom : 0);
	const { xs, spans } = placeColumns(free, sizes, start, Math.max(columnPitch, room + 8, namesPitch(content)));
	const columnOf = wireColumns(free, xs);
	if (!rowsAreClear(free, columnOf)) return undefined;
	const tracks = packTracks(
		free.jogs.map((wire) => {
			const ends = [wire.from, wire.to].map((tie) => columnOf(certain(pointOf(tie), "a jog's end"), wire));
			return { item: wire, from: Math.min(...ends), to: Math.max(...ends) };
		}),
	);
	const trackCount = Math.max(0, ...[...tracks.values()].map((track) => track + 1));
	const band = bandDepth + trackCount * trackStep;
	const hasPlates = spans.size > 0;
	const above = free.side === "above";
	const reach = Math.max(
		0,
		...sizes.map((size) => size.depth + captionHeight(size)),
		spans.size > sizes.length ? studReach : 0,
	);
	const top = headerHeight + (above && hasPlates ? 12 + reach + band : 26);
	const heights = relative.map((y) => y + top);
	const lastRow = heights.at(-1) ?? top;
	const screwY = above ? top - band : lastRow + band;

	const right =
		Math.max(0, ...xs, start - columnPitch) +
		(content.right.length === 0
			? innerMargin + 12
			: 8 + room + fans.right + (hasFreeEnd(content, "right") ? stubRoom : 0));
	const plateEdge = Math.max(0, ...[...spans.values()].map((span) => span[1])) + innerMargin;
	const width = Math.ceil(Math.max(right, plateEdge, leastWidth));
	const plates = placePlates(content, free, sizes, xs, spans, screwY);
	const joints = placeJoints(free, xs, heights);
	const glands = glandsOf(content, free.rows, heights, width);
	const places: Places = {
		content,
		width,
		glands,
		rowY: (wire) => relativeY(wire) + top,
		arrivalOn: (point, wire) => {
			const joint = joints.get(point);
			if (joint === undefined) return { at: { x: columnOf(point, wire), y: screwY }, along: "column" };
			return onRow(free, joint, wire) ?? { at: { x: columnOf(point, wire), y: joint.y }, along: "column" };
		},
		trackOf: (wire) => {
			const track = tracks.get(wire);
			if (track === undefined) return undefined;
			return above ? top - rowClearance - track * trackStep : lastRow + rowClearance + track * trackStep;
		},
		stubDepth: { left: fans.left + room, right: fans.right + room },
		freeHeading: above ? "up" : "down",
	};
	const { routes, stubs } = routeAll(places);
	const height = Math.ceil(Math.max(lastRow + 26, above || !hasPlates ? 0 : screwY + reach + innerMargin));
	return {
		content,
		template: templateOf(content),
		width,
		height,
		glands,
		joints: [...joints.values()],
		plates,
		routes,
		stubs,
	};
}

/** A tap is one device beside the rows of one cable, which may go on: a wire to each of its terminals and none that ends on nothing. */
function templateOf({ devices, left, right, wires, landings }: BoxContent): "tap" | "fallback" {
	if (devices.length !== 1 || left.length !== 1 || right.length > 1) return "fallback";
	const own = devices.flatMap(({ points }) => points);
	const isTap =
		wires.every(({ to }) => to.at !== "free") && own.every((point) => (landings.get(point) ?? []).length <= 1);
	return isTap ? "tap" : "fallback";
}

/** Whether on every row that left and right share without a splice the left wire turns off before the right one does. */
function rowsAreClear(free: FreePlan, columnOf: (point: number, wire: Wire) => number): boolean {
	return free.rows.rows.every(({ left, right }) => {
		const [from, to] = [left, right].map((wire) => (wire === undefined ? undefined : pointOf(wire.to)));
		if (left === undefined || right === undefined || from === undefined || to === undefined) return true;
		if (free.rows.homeOf.has(from)) return from === to;
		return columnOf(from, left) + screwMargin <= columnOf(to, right);
	});
}

/** Columns from left to right, each device's plate clear of the one before. */
function placeColumns(
	free: FreePlan,
	sizes: readonly FreePlateSize[],
	start: number,
	pitch: number,
): { xs: number[]; spans: Map<number, [number, number]> } {
	const { slots } = free;
	const xs: number[] = [];
	const spans = new Map<number, [number, number]>();
	let edge = innerMargin;
	for (const [index, slot] of slots.entries()) {
		const before = slots[index - 1];
		const lastX = xs[index - 1];
		const oneSplice =
			before !== undefined && slot.splice !== undefined && before.splice === slot.splice && slot.terminal === undefined;
		xs.push(lastX === undefined ? start : lastX + (oneSplice ? rowPitch : pitch));
		const device = slot.device;
		if (device === undefined || slots.slice(index + 1).some((later) => later.device === device)) continue;
		const first = slots.findIndex((candidate) => candidate.device === device);
		const [left = 0, right = 0] = [xs[first], xs[index]];
		const size = sizes[device];
		const width = Math.max(size?.width ?? studWidth, right - left + 2 * (size?.margin ?? screwMargin));
		const shift = Math.max(0, edge - ((left + right) / 2 - width / 2));
		for (let moved = first; moved <= index; moved++) xs[moved] = (xs[moved] ?? 0) + shift;
		const middle = (left + right) / 2 + shift;
		spans.set(device, [middle - width / 2, middle + width / 2]);
		edge = middle + width / 2 + plateGap;
	}
	return { xs, spans };
}

/** The column on which a wire stands at a point. */
function wireColumns(free: FreePlan, xs: readonly number[]): (point: number, wire: Wire) => number {
	const columns = new Map<number, Map<Wire, number>>();
	const put = (point: number, wire: Wire, x: number): void => {
		const there = columns.get(point);
		if (there === undefined) columns.set(point, new Map([[wire, x]]));
		else if (!there.has(wire)) there.set(wire, x);
	};
	for (const [index, slot] of free.slots.entries())
		if (slot.terminal !== undefined && slot.wire !== undefined) put(slot.terminal, slot.wire, xs[index] ?? 0);
	const toward = free.side === "above" ? "up" : "down";
	for (const [splice, ports] of free.ports) {
		const own = free.slots.flatMap((slot, index) => (slot.splice === splice ? [{ slot, x: xs[index] ?? 0 }] : []));
		const straight = own.filter(({ slot }) => slot.wire !== undefined && ports[toward].includes(slot.wire));
		for (const { slot, x } of straight) if (slot.wire !== undefined) put(splice, slot.wire, x);
		const rest = own.filter((column) => !straight.includes(column));
		const waiting = ports[toward].filter((wire) => !straight.some(({ slot }) => slot.wire === wire));
		for (const [index, wire] of waiting.entries()) put(splice, wire, certain(rest[index], "a free column").x);
		for (const [index, wire] of ports[toward === "up" ? "down" : "up"].entries())
			put(splice, wire, certain(own[index], "a column").x);
	}
	return (point, wire) => certain(columns.get(point)?.get(wire), `the column of ${wire.conductor.name} at ${point}`);
}

function placePlates(
	content: BoxContent,
	free: FreePlan,
	sizes: readonly FreePlateSize[],
	xs: readonly number[],
	spans: ReadonlyMap<number, [number, number]>,
	y: number,
): Plate[] {
	const away = free.side === "above" ? -1 : 1;
	return [...spans].map(([device, span]) => {
		const screws = free.slots.flatMap((slot, index): Screw[] =>
			slot.device === device && slot.terminal !== undefined ? [{ terminal: slot.terminal, x: xs[index] ?? 0 }] : [],
		);
		const size = sizes[device];
		if (size !== undefined) return placeFreePlate(content, size, screws, span, y, away);
		const stud = studAt(content, certain(screws[0], "the stud's screw").terminal, (span[0] + span[1]) / 2, y);
		const box: Box = { ...stud.box, y: away === 1 ? y : y - stud.box.height };
		const terminals = stud.terminals.map((spot) => ({ ...spot, screws: screws.map(({ x }) => ({ x, y })) }));
		const texts = stud.texts.map((text) => ({ ...text, at: { x: text.at.x, y: away === 1 ? text.at.y : box.y + 14 } }));
		return { ...stud, box: { ...box, x: span[0], width: span[1] - span[0] }, terminals, texts };
	});
}

function placeJoints(free: FreePlan, xs: readonly number[], heights: readonly number[]): Map<number, Joint> {
	const joints = new Map<number, Joint>();
	for (const [splice, home] of free.rows.homeOf) {
		const columns = free.slots.flatMap((slot, index) => (slot.splice === splice ? [xs[index] ?? 0] : []));
		joints.set(splice, { point: splice, columns, y: certain(heights[home], "a splice's row") });
	}
	return joints;
}

/** A core that comes along the splice's own row meets it at its near end. */
function onRow(free: FreePlan, joint: Joint, wire: Wire): Arrival | undefined {
	if (!isCore(wire) || free.rows.rowOf.get(wire) !== free.rows.homeOf.get(joint.point)) return undefined;
	const column = wire.from.at === "wall" && wire.from.side === "left" ? joint.columns[0] : joint.columns.at(-1);
	return { at: { x: certain(column, "a column"), y: joint.y }, along: "row" };
}

/** A pigtail each of hot, neutral and ground cannot cross less. */
const tapCrossings = 3;
/** From the rows to the screws where no wire jogs; from the rows to the first track; between tracks. */
const bandDepth = 44;
const rowClearance = 24;
const trackStep = 20;
const plateGap = 16;
const studWidth = 40;
const studReach = 24;
