// Recognises a box whose one device sits on the rows themselves: at the end of a cable, in series, or as a source.
// Judged by how the conductors run, never by how the plan was written.
import type { Part } from "../../circuit/circuit.ts";
import type { Role } from "../../kinds/kind.ts";
import { type BoxContent, farTie, isCore, pointOf, type Wire } from "./box-content.ts";
import { type Pairing, pairBySplice, planRows, type RowPlan } from "./box-rows.ts";

/** A device on the rows: which terminal stands on which row, and what is on its lower edge. */
export interface LanePlan {
	readonly device: Part;
	readonly rows: RowPlan;
	readonly ports: readonly LanePort[];
	/** Terminals on the lower edge, left to right. */
	readonly bottom: readonly number[];
	readonly first: number;
	readonly last: number;
}
export interface LanePort {
	readonly point: number;
	readonly side: "left" | "right";
	readonly row: number;
	/** The splice it hangs on, where it does not take a core by itself. */
	readonly splice?: number;
	/** Its splice stands on another row and it is reached from there. */
	readonly riser: boolean;
}
interface Reach {
	readonly side: "left" | "right" | "riser" | "bottom";
	readonly core?: Wire;
	readonly splice?: number;
}

/** The lane plan of a box, or undefined where its shape is another. */
export function planLane(content: BoxContent): LanePlan | undefined {
	const [device, ...others] = content.devices;
	if (device === undefined || others.length > 0 || content.left.length > 1) return undefined;
	if (content.left.length + content.right.length === 0 || !onlyPlainInnerWires(content)) return undefined;
	const reaches = new Map<number, Reach>();
	for (const point of device.points) {
		const landings = content.landings.get(point);
		if (landings === undefined) continue;
		const [wire, ...more] = landings;
		const reach = wire === undefined || more.length > 0 ? undefined : reachOf(content, point, wire);
		if (reach === undefined) return undefined;
		reaches.set(point, reach);
	}
	const partners = polePartners(content, device);
	if (
		![...reaches].every(([point, reach]) => reach.side !== "riser" || endsRight(reaches.get(partners.get(point) ?? -1)))
	)
		return undefined;
	const rows = planRows(content, pairThrough(content, reaches, partners));
	const ports = placePorts(content, device, reaches, partners, rows);
	if (ports === undefined || ports.length === 0) return undefined;
	const onPorts = new Set(ports.map((port) => port.point));
	const bottom = device.points.filter((point) => !onPorts.has(point));
	// Names are wider than letters, and beside one another on the lower edge they have no room.
	if (device.face.named === true && bottom.length > 1) return undefined;
	const plan: LanePlan = {
		device,
		rows,
		ports,
		bottom,
		first: Math.min(...ports.map((port) => port.row)),
		last: Math.max(...ports.map((port) => port.row)),
	};
	return isClear(content, plan) ? plan : undefined;
}

/** Every inner wire joins a splice with a terminal or the case, and the case is reached at most once. */
function onlyPlainInnerWires(content: BoxContent): boolean {
	const kindAt = (point: number | undefined) => (point === undefined ? "none" : content.circuit.points[point]?.kind);
	let toBody = 0;
	for (const wire of content.wires) {
		const kinds = [kindAt(pointOf(wire.from)), kindAt(pointOf(wire.to))];
		if (kinds.includes("body")) toBody++;
		if (isCore(wire)) {
			if (kinds[1] === "body") return false;
			continue;
		}
		if (!kinds.includes("splice") || !(kinds.includes("terminal") || kinds.includes("body"))) return false;
	}
	return toBody <= 1;
}

function reachOf(content: BoxContent, point: number, wire: Wire): Reach | undefined {
	const left = content.left[0]?.wires ?? [];
	const right = content.right[0]?.wires ?? [];
	if (isCore(wire)) {
		if (left.includes(wire)) return { side: "left", core: wire };
		return right.includes(wire) ? { side: "right", core: wire } : undefined;
	}
	const splice = pointOf(farTie(wire, point));
	if (splice === undefined || content.circuit.points[splice]?.kind !== "splice") return undefined;
	const fromLeft = left.find((core) => pointOf(core.to) === splice);
	const fromRight = right.find((core) => pointOf(core.to) === splice);
	if (fromLeft !== undefined && fromRight !== undefined)
		return { side: roleOf(content, point) === "ground" ? "bottom" : "riser", splice };
	if (fromLeft !== undefined) return { side: "left", core: fromLeft, splice };
	return fromRight === undefined ? undefined : { side: "right", core: fromRight, splice };
}

/** The terminal at the other end of each terminal's contact or way through the device. */
function polePartners(content: BoxContent, device: Part): Map<number, number> {
	const own = new Set(device.points);
	const partners = new Map<number, number>();
	for (const link of content.links) {
		if (link.part !== device.name || link.nature === "bond") continue;
		const [one, other] = link.between;
		if (!own.has(one) || !own.has(other)) continue;
		// Of a contact's positions the first counts.
		if (!partners.has(one)) partners.set(one, other);
		if (!partners.has(other)) partners.set(other, one);
	}
	return partners;
}

function endsRight(reach: Reach | undefined): boolean {
	return reach?.side === "right";
}

/** Left and right also pair through the device, from one end of a pole to the other. */
function pairThrough(
	content: BoxContent,
	reaches: ReadonlyMap<number, Reach>,
	partners: ReadonlyMap<number, number>,
): Pairing {
	const bySplice = pairBySplice(content);
	const across = new Map<Wire, Wire>();
	for (const [point, reach] of reaches) {
		const mate = reaches.get(partners.get(point) ?? -1);
		if (reach.side === "left" && mate?.side === "right" && reach.core !== undefined && mate.core !== undefined)
			across.set(reach.core, mate.core);
	}
	return (left, right) => across.get(left) ?? bySplice(left, right);
}

function placePorts(
	content: BoxContent,
	device: Part,
	reaches: ReadonlyMap<number, Reach>,
	partners: ReadonlyMap<number, number>,
	rows: RowPlan,
): LanePort[] | undefined {
	const ports: LanePort[] = [];
	const taken = new Set<string>();
	const place = (port: LanePort): boolean => {
		const spot = `${port.side}${port.row}`;
		if (taken.has(spot)) return false;
		taken.add(spot);
		ports.push(port);
		return true;
	};
	const rowOfCore = (reach: Reach | undefined) => (reach?.core === undefined ? undefined : rows.rowOf.get(reach.core));
	for (const [point, reach] of reaches) {
		if (reach.side === "bottom") continue;
		const riser = reach.side === "riser";
		const row = rowOfCore(riser ? reaches.get(partners.get(point) ?? -1) : reach);
		if (row === undefined) return undefined;
		const side = reach.side === "right" ? "right" : "left";
		const splice = reach.splice === undefined ? {} : { splice: reach.splice };
		if (!place({ point, side, row, riser, ...splice })) return undefined;
	}
	if (ports.length === 0) return undefined;
	const main = ports.some((port) => port.side === "left") ? "left" : "right";
	for (const point of device.points) {
		if (reaches.has(point)) continue;
		const mate = ports.find((port) => port.point === partners.get(point));
		if (mate !== undefined) {
			place({ point, side: mate.side === "left" ? "right" : "left", row: mate.row, riser: false });
			continue;
		}
		// An empty terminal stands where the free conductor meant for it ends.
		const row = rows.rows.findIndex(
			({ [main]: wire }) => wire?.to.at === "free" && wire.conductor.role === roleOf(content, point),
		);
		if (row >= 0) place({ point, side: main, row, riser: false });
	}
	return inNaturalOrder(content, device, ports) ? ports : undefined;
}

/** Terminals keep their order on the device: hot, neutral, ground from top to bottom. */
function inNaturalOrder(content: BoxContent, device: Part, ports: readonly LanePort[]): boolean {
	const rank = (point: number): number => {
		const role = roleOf(content, point);
		return role === "ground" ? 2 : role === "neutral" || role === "negative" ? 1 : 0;
	};
	return (
		(["left", "right"] as const).every((side) => {
			const down = ports.filter((port) => port.side === side).sort((one, other) => one.row - other.row);
			return down.every((port, index) => {
				const above = down[index - 1];
				return above === undefined || rank(above.point) <= rank(port.point);
			});
		}) && device.points.length > 0
	);
}

/** Whether nothing but what belongs to the device runs where its plate stands. */
function isClear(content: BoxContent, plan: LanePlan): boolean {
	const own = new Set<Wire>();
	for (const port of plan.ports) {
		for (const wire of content.landings.get(port.point) ?? []) own.add(wire);
		if (port.splice !== undefined && !port.riser)
			for (const wire of content.landings.get(port.splice) ?? [])
				if (plan.rows.rowOf.get(wire) === port.row) own.add(wire);
	}
	const ends = (wire: Wire | undefined): boolean => wire === undefined || own.has(wire) || wire.to.at === "free";
	const oneSided = content.left.length === 0 || content.right.length === 0;
	return plan.rows.rows.every((row, index) => {
		if (index > plan.last) return true;
		if (index >= plan.first) return ends(row.left) && ends(row.right);
		return oneSided && (row.left ?? row.right)?.to.at === "free";
	});
}

function roleOf(content: BoxContent, point: number): Role | undefined {
	return content.circuit.points[point]?.role;
}
