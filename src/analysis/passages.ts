// Conductors that go on through a device instead of a joint beside it: what loses them when the device is taken off.
import type { Circuit, Part, Terminal } from "../circuit/circuit.ts";
import type { ModeState } from "./analysis.ts";
import { bothEnds, type Landings } from "./landings.ts";
import { alwaysClosed, type Edge, type Reach, reachFrom } from "./network.ts";
import { notABond, type PoleSort } from "./poles.ts";

/** A device in a box by way of which others have their ground, or their neutral. */
export interface Passage {
	readonly part: Part;
	/** Its terminal with more than one wire on it, or the first of its terminals with one. */
	readonly terminal: Terminal;
	/** The wires on its terminals of that sort. */
	readonly conductors: readonly number[];
	/** Terminals and metal that lose it with the device, in the order in which they are reached. */
	readonly victims: readonly number[];
}

/** The devices that grounds pass through. */
export function findGroundPassages({ network, grounding }: ModeState, landings: Landings): readonly Passage[] {
	const { reach } = grounding;
	return findPassages(network.circuit, landings, "ground", reach, ({ from, to }) => reach.has(from) && reach.has(to));
}

/** The devices that neutrals which two hots share pass through. */
export function findSharedPassages({ network, returns }: ModeState, landings: Landings): readonly Passage[] {
	const { circuit } = network;
	const found: Passage[] = [];
	for (const { loads, home, conductors } of returns) {
		const hots = new Set(loads.map(({ feeder }) => feeder?.contact ?? feeder?.pole));
		if (hots.size < 2 || loads.some(({ feeder }) => feeder === undefined)) continue;
		const own = new Set(conductors.flatMap((index) => circuit.conductors[index]?.ends.map(({ point }) => point) ?? []));
		const starts = home.flatMap((index) => circuit.conductors[index]?.ends.flatMap(({ point }) => point ?? []) ?? []);
		const isOwn = (edge: Edge): boolean =>
			alwaysClosed(edge) && notABond(edge) && own.has(edge.from) && own.has(edge.to);
		const reach = reachFrom(
			network,
			starts.filter((point) => isBoard(circuit, point)),
			isOwn,
		);
		found.push(...findPassages(circuit, landings, "neutral", reach, isOwn));
	}
	return found;
}

function isBoard({ points }: Circuit, point: number): boolean {
	return points[point]?.enclosure.sort !== "box";
}

function findPassages(
	circuit: Circuit,
	landings: Landings,
	sort: PoleSort,
	reach: Reach,
	joins: (edge: Edge) => boolean,
): readonly Passage[] {
	const devices = devicesWithSeveral(circuit, landings, sort, reach);
	if (devices.size === 0) return [];
	const deviceAt = (point: number): Device | undefined => {
		const found = circuit.points[point];
		return found?.kind === "terminal" && landings.sortAt(point) === sort ? devices.get(found.part) : undefined;
	};
	const starts = reach.points.filter((point) => reach.cameBy(point) === undefined);
	const without = reachFrom(
		reach.network,
		starts,
		(edge) => alwaysClosed(edge) && notABond(edge) && joins(edge) && deviceAt(edge.from) === undefined,
	);
	// The first device on the way to each point.
	const firsts = new Map<number, Device>();
	for (const point of reach.points) {
		const from = reach.cameBy(point)?.from;
		const first = from === undefined ? undefined : (firsts.get(from) ?? deviceAt(from));
		if (first === undefined) continue;
		firsts.set(point, first);
		const found = circuit.points[point];
		if (found === undefined || found.kind === "splice" || without.has(point)) continue;
		const isOther = found.kind === "body" || (found.part !== first.part.name && landings.sortAt(point) === sort);
		if (isOther) first.victims.push(point);
	}
	return [...devices.values()].flatMap(({ part, terminals, conductors, victims }): Passage[] => {
		const terminal = terminals[0];
		return terminal === undefined || victims.length === 0 ? [] : [{ part, terminal, conductors, victims }];
	});
}

interface Device {
	readonly part: Part;
	readonly terminals: Terminal[];
	readonly conductors: number[];
	readonly victims: number[];
}

/** Devices in boxes with more than one wire on their terminals of a sort. */
function devicesWithSeveral(
	circuit: Circuit,
	landings: Landings,
	sort: PoleSort,
	reach: Reach,
): ReadonlyMap<string, Device> {
	const counts = new Uint16Array(circuit.points.length);
	const devices = new Map<string, Device>();
	for (const conductor of circuit.conductors)
		for (const which of bothEnds) {
			const { point } = conductor.ends[which];
			const found = point === undefined ? undefined : circuit.points[point];
			if (found?.kind !== "terminal" || found.enclosure.sort !== "box" || landings.sortAt(found.index) !== sort)
				continue;
			const part = circuit.partByName.get(found.part);
			if (
				part === undefined ||
				!reach.has(found.index) ||
				landings.carriedBy(conductor, which) !== sort ||
				part.face.traits.includes("junction")
			)
				continue;
			counts[found.index] = (counts[found.index] ?? 0) + 1;
			let device = devices.get(part.name);
			if (device === undefined) {
				device = { part, terminals: [], conductors: [], victims: [] };
				devices.set(part.name, device);
			}
			if (counts[found.index] === 2) device.terminals.unshift(found);
			else if (counts[found.index] === 1) device.terminals.push(found);
			device.conductors.push(conductor.index);
		}
	for (const [name, { conductors }] of devices) if (conductors.length < 2) devices.delete(name);
	return devices;
}
