// The inside of a box whose device sits on the rows: what feeds it on the left, what it feeds on the right, what passes below.
import { certain } from "../../base/certain.ts";
import { type BoxContent, farTie, isCore, pointOf, type Wire } from "./box-content.ts";
import { codeRoom, glandsOf, hasFreeEnd, rowHeights, stubRoom, studBelow } from "./box-frame.ts";
import type { LanePlan, LanePort } from "./box-lane.ts";
import type { BoxPlan, Joint } from "./box-plan.ts";
import { columnPitch, headerHeight, innerMargin, rowPitch, spliceReach } from "./dimensions.ts";
import { placeLanePlate, sizeLanePlate } from "./lane-plate.ts";
import { type Arrival, deepestFan, type Places, routeAll } from "./places.ts";
import { planSplicePorts, type SplicePorts } from "./splice-ports.ts";

/** Lays out a box by its lane plan; it is at least `leastWidth` wide. */
export function layOutLane(content: BoxContent, plan: LanePlan, leastWidth: number): BoxPlan {
	const portOf = new Map(plan.ports.map((port) => [port.point, port]));
	const ports = planSplicePorts(content, plan.rows, (wire, splice) => {
		const target = pointOf(farTie(wire, splice));
		if (target === undefined || content.circuit.points[target]?.kind === "body") return "down";
		const port = portOf.get(target);
		if (port === undefined) return "up";
		return port.riser ? "up" : undefined;
	});
	const size = sizeLanePlate(content, plan);
	const first = headerHeight + Math.max(26, size.above + 8 - plan.first * rowPitch);
	const heights = rowHeights(plan.rows.rows, first).map((y, row) => (row > plan.last ? y + size.drop : y));
	const rowY = (row: number): number => certain(heights[row], `row ${row}`);

	const room = codeRoom(content);
	const yOf = (wire: Wire): number => rowY(certain(plan.rows.rowOf.get(wire), "a core's row"));
	const fans = { left: deepestFan(content.left, yOf), right: deepestFan(content.right, yOf) };
	const joints = new Map<number, Joint>();
	const beside = (side: "left" | "right") => [
		...new Set(plan.ports.filter((port) => port.side === side).flatMap((port) => port.splice ?? [])),
	];
	const leftOnes = beside("left");
	const rightOnes = beside("right");
	let x = content.left.length === 0 ? 0 : fans.left + room + (hasFreeEnd(content, "left") ? stubRoom : 0);
	x = placeBeside(leftOnes, x, plan, ports, rowY, joints);
	const besideX = content.left.length === 0 ? innerMargin : leftOnes.length === 0 ? x + 8 : x + room + 6;
	// Splices below the plate that have many upright wires reach out to the left of it.
	const reaches = [...plan.rows.homeOf.keys()].map((splice) =>
		joints.has(splice) ? 0 : columnsOf(ports.get(splice)) - 1,
	);
	const overhang = Math.max(0, ...reaches) * rowPitch;
	const firstBottom = size.width / 2 - ((plan.bottom.length - 1) / 2) * size.bottomPitch;
	const plateX = overhang === 0 ? besideX : Math.max(besideX, x + overhang + spliceReach - firstBottom);
	const bottom = bottomColumns(plan, plateX + size.width / 2, size.bottomPitch);
	const plate = placeLanePlate(content, plan, size, plateX, rowY, bottom);
	x = plateX + size.width;
	if (rightOnes.length > 0) x = placeBeside(rightOnes, x + room + 6, plan, ports, rowY, joints);
	const passing = bottom.at(-1) ?? plateX + size.width / 2 - columnPitch;
	const passEdge = placePassing(content, plan, ports, bottom, rowY, joints, passing + columnPitch + 6);
	x = Math.max(x, passEdge);
	if (content.right.length > 0) x += 8 + room + fans.right + (hasFreeEnd(content, "right") ? stubRoom : 0);
	else x = Math.max(x, plateX + size.width) + innerMargin;
	const width = Math.max(Math.ceil(x), leastWidth);

	const glands = glandsOf(content, plan.rows, heights, width);
	const floor = Math.max(plate.box.y + plate.box.height, ...heights);
	const stud = studBelow(content, joints, ports, floor);
	const places: Places = {
		content,
		width,
		glands,
		rowY: yOf,
		arrivalOn: (point, wire) => {
			const spot = plate.terminals.find((terminal) => terminal.point === point);
			if (spot !== undefined)
				return { at: certain(spot.screws[0], "a screw"), along: portOf.has(point) ? "row" : "column" };
			if (stud?.terminals[0]?.point === point)
				return { at: certain(stud.terminals[0].screws[0], "the stud"), along: "column" };
			return onJoint(certain(joints.get(point), "a splice"), ports.get(point), wire, plan.ports);
		},
		trackOf: () => undefined,
		stubDepth: { left: fans.left + room, right: fans.right + room },
		freeHeading: "down",
	};
	const { routes, stubs } = routeAll(places);
	const plates = stud === undefined ? [plate] : [plate, stud];
	const lowest = Math.max(
		...plates.map(({ box }) => box.y + box.height),
		Math.max(...heights) + (plan.rows.rows.length > plan.last + 1 ? 6 : 0),
	);
	return {
		content,
		template: content.right.length > 1 ? "fallback" : passesThrough(content) ? "series" : "end",
		width,
		height: Math.ceil(lowest + innerMargin),
		glands,
		joints: [...joints.values()],
		plates,
		routes,
		stubs,
	};
}

function passesThrough({ left, right }: BoxContent): boolean {
	return left.length > 0 && right.length > 0;
}

/** Splices left or right of the device. Those without upright wires share a column; each other has its own. */
function placeBeside(
	splices: readonly number[],
	from: number,
	plan: LanePlan,
	ports: ReadonlyMap<number, SplicePorts>,
	rowY: (row: number) => number,
	joints: Map<number, Joint>,
): number {
	let x = from;
	const flat = splices.filter((splice) => columnsOf(ports.get(splice)) === 0);
	for (const splice of flat)
		joints.set(splice, { point: splice, columns: [x + spliceReach], y: homeY(plan, splice, rowY) });
	if (flat.length > 0) x += 2 * spliceReach;
	for (const splice of splices) {
		const count = columnsOf(ports.get(splice));
		if (count === 0) continue;
		const first = x + (x === from ? 0 : columnPitch - 2 * spliceReach) + spliceReach;
		const columns = Array.from({ length: count }, (_, index) => first + index * rowPitch);
		joints.set(splice, { point: splice, columns, y: homeY(plan, splice, rowY) });
		x = first + (count - 1) * rowPitch + spliceReach;
	}
	return x;
}

/** Splices whose conductors pass the device: under its lower terminals where they serve one, else to the right of those. */
function placePassing(
	content: BoxContent,
	plan: LanePlan,
	ports: ReadonlyMap<number, SplicePorts>,
	bottom: readonly number[],
	rowY: (row: number) => number,
	joints: Map<number, Joint>,
	from: number,
): number {
	const passing = [...plan.rows.homeOf.keys()].filter((splice) => !joints.has(splice));
	let next = from;
	const anchored = (splice: number): number | undefined => {
		for (const wire of content.landings.get(splice) ?? []) {
			const target = isCore(wire) ? undefined : pointOf(farTie(wire, splice));
			const index = target === undefined ? -1 : plan.bottom.indexOf(target);
			if (index >= 0) return bottom[index];
		}
		return undefined;
	};
	let flatColumn: number | undefined;
	for (const splice of passing) {
		const count = columnsOf(ports.get(splice));
		const y = homeY(plan, splice, rowY);
		const anchor = anchored(splice);
		if (anchor !== undefined) {
			const columns = Array.from({ length: Math.max(1, count) }, (_, index) => anchor - index * rowPitch).reverse();
			joints.set(splice, { point: splice, columns, y });
			continue;
		}
		if (count === 0) {
			flatColumn ??= next;
			if (flatColumn === next) next += columnPitch;
			joints.set(splice, { point: splice, columns: [flatColumn], y });
			continue;
		}
		joints.set(splice, {
			point: splice,
			columns: Array.from({ length: count }, (_, index) => next + index * rowPitch),
			y,
		});
		next += (count - 1) * rowPitch + columnPitch;
	}
	return passing.some((splice) => anchored(splice) === undefined) ? next - columnPitch + spliceReach : 0;
}

/** Columns of the terminals on the lower edge, about its middle; with none, the middle itself is where passing splices begin. */
function bottomColumns(plan: LanePlan, middle: number, pitch: number): number[] {
	const count = plan.bottom.length;
	return plan.bottom.map((_, index) => middle + (index - (count - 1) / 2) * pitch);
}

function columnsOf(ports: SplicePorts | undefined): number {
	return ports === undefined ? 0 : Math.max(ports.up.length, ports.down.length);
}

function homeY(plan: LanePlan, splice: number, rowY: (row: number) => number): number {
	return rowY(certain(plan.rows.homeOf.get(splice), "a splice's row"));
}

/** Where a wire meets a splice: at the column of its port, or at the end of the splice that it comes along the row to. */
function onJoint(joint: Joint, ports: SplicePorts | undefined, wire: Wire, lane: readonly LanePort[]): Arrival {
	for (const list of [ports?.up, ports?.down]) {
		const index = list?.indexOf(wire) ?? -1;
		// Upright wires that go one way take the columns from the right, so that a lone one stands under the terminal it serves.
		const column =
			list === undefined || index < 0 ? undefined : joint.columns[joint.columns.length - list.length + index];
		if (column !== undefined) return { at: { x: column, y: joint.y }, along: "column" };
	}
	const first = certain(joint.columns[0], "a splice's column");
	const last = certain(joint.columns.at(-1), "a splice's column");
	const fromLeft =
		wire.from.at === "wall"
			? wire.from.side === "left"
			: lane.some((port) => port.splice === joint.point && port.side === "right");
	return { at: { x: fromLeft ? first : last, y: joint.y }, along: "row" };
}
