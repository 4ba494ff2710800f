// Ground-fault devices as stations on the way: on which side each is fed, and which one a point's current has to pass last.
import type { GroundFaultDevice, Link } from "../circuit/circuit.ts";
import { JoinedSets } from "./joined-sets.ts";
import type { Network } from "./network.ts";
import { type Pole, type PoleMap, sortOfRole } from "./poles.ts";

/** How one pole of a device is connected. `line`: fed on LINE, as it must be; `load`: fed on LOAD; `both`: joined past the device. */
export type FedSide = "line" | "load" | "both" | "dead";

/** What the ground-fault devices of a mode stand before. */
export interface Coverage {
	/** By device, in the circuit's order: how its hot and its neutral are fed. */
	readonly fed: readonly { readonly device: GroundFaultDevice; readonly hot: FedSide; readonly neutral: FedSide }[];
	/** The device a point's current passes last, the right way round; null where it passes none; undefined for a dead point. */
	deviceAt(point: number): GroundFaultDevice | null | undefined;
	/** All devices a point's current passes the right way round, the last first. */
	devicesBefore(point: number): readonly GroundFaultDevice[];
	/** The last device a point's current passes the wrong way round; undefined where there is none. */
	reversedBefore(point: number): GroundFaultDevice | undefined;
	/** Whether every way from any pole to a point leads through devices that trip at once, at no more than so many milliamperes. */
	isCovered(point: number, trip: number): boolean;
}

/** Traces the ground-fault devices of a mode. */
export function traceCoverage(network: Network, poles: PoleMap): Coverage {
	const { circuit } = network;
	const contacts = findContacts(network);
	const sets = joinWithout(network, (link) => contacts.has(link.index));
	const ways = new Map<number, { device: GroundFaultDevice; from: "line" | "load"; to: number }[]>();
	for (const device of circuit.groundFaults)
		for (const [onLine, onLoad] of polesOf(device)) {
			const [line, load] = [sets.find(onLine), sets.find(onLoad)];
			if (line === load) continue;
			addTo(ways, line, { device, from: "line", to: load });
			addTo(ways, load, { device, from: "load", to: line });
		}
	// From the poles outward, device by device: how many must be passed, and the last that was passed the right way round.
	const passed = new Map<number, Passed>();
	const queue: number[] = [];
	for (const pole of currentPoles(poles))
		for (const point of pole.points) {
			const set = sets.find(point);
			if (passed.has(set)) continue;
			passed.set(set, { depth: 0, last: null, reversed: undefined, before: undefined });
			queue.push(set);
		}
	for (const set of queue) {
		const here = passed.get(set);
		if (here === undefined) continue;
		for (const { device, from, to } of ways.get(set) ?? []) {
			if (passed.has(to)) continue;
			const depth = here.depth + 1;
			passed.set(
				to,
				from === "line" ? { ...here, depth, last: device, before: here } : { ...here, depth, reversed: device },
			);
			queue.push(to);
		}
	}
	const sideOf = (device: GroundFaultDevice, pole: "hot" | "neutral"): FedSide => {
		const [line, load] = [sets.find(device.line[pole]), sets.find(device.load[pole])];
		const [atLine, atLoad] = [passed.get(line), passed.get(load)];
		if (atLine === undefined || atLoad === undefined) return "dead";
		if (line === load) return "both";
		return atLine.depth <= atLoad.depth ? (atLine.depth === atLoad.depth ? "both" : "line") : "load";
	};
	const fed = circuit.groundFaults.map((device) => ({
		device,
		hot: sideOf(device, "hot"),
		neutral: sideOf(device, "neutral"),
	}));
	const reachedWithout = new Map<number, ReadonlySet<number>>();
	return {
		fed,
		deviceAt: (point) => passed.get(sets.find(point))?.last,
		devicesBefore: (point) => {
			const devices: GroundFaultDevice[] = [];
			for (let here = passed.get(sets.find(point)); here !== undefined; here = here.before)
				if (here.last !== null) devices.push(here.last);
			return devices;
		},
		reversedBefore: (point) => passed.get(sets.find(point))?.reversed,
		isCovered: (point, trip) => {
			let reached = reachedWithout.get(trip);
			if (reached === undefined) {
				// A device that is fed on its LOAD side protects nothing.
				const good = new Set(
					fed
						.filter(
							({ device, hot, neutral }) =>
								device.trip <= trip && !device.selective && hot !== "load" && neutral !== "load",
						)
						.map(({ device }) => device.part),
				);
				reached = reachWithout(network, poles, (link) => contacts.has(link.index) && good.has(link.part));
				reachedWithout.set(trip, reached);
			}
			return !reached.has(point);
		},
	};
}

/** Every conductor that a device compares: on its line side, and on its load side. */
function polesOf({ line, load }: GroundFaultDevice): readonly (readonly [number, number])[] {
	const second = line.hot2 === undefined || load.hot2 === undefined ? [] : [[line.hot2, load.hot2] as const];
	return [[line.hot, load.hot], ...second, [line.neutral, load.neutral]];
}

/** What lies between the poles and a set of joined points. */
interface Passed {
	/** How many devices. */
	readonly depth: number;
	/** The last that is passed from line to load, and the last that is passed from load to line. */
	readonly last: GroundFaultDevice | null;
	readonly reversed: GroundFaultDevice | undefined;
	/** What lay between before the last was passed the right way round. */
	readonly before: Passed | undefined;
}

/** The poles that carry current when all is right. */
function currentPoles({ poles }: PoleMap): readonly Pole[] {
	return poles.filter((pole) => sortOfRole(pole.role) !== "ground");
}

/** The links by which ground-fault devices open. */
function findContacts({ circuit }: Network): ReadonlySet<number> {
	const parts = new Map(circuit.groundFaults.map((device) => [device.part, device]));
	return new Set(
		circuit.links
			.filter(({ part, between, nature }) => {
				const device = parts.get(part);
				if (device === undefined || nature !== "contact") return false;
				const ends = polesOf(device).flat();
				return between.every((point) => ends.includes(point));
			})
			.map((link) => link.index),
	);
}

function joinWithout(network: Network, isOpen: (link: Link) => boolean): JoinedSets {
	const sets = new JoinedSets(network.circuit.points.length);
	for (const edges of network.edges)
		for (const { from, to, by } of edges)
			if (by.kind === "conductor" || (by.link.nature !== "bond" && !isOpen(by.link))) sets.join(from, to);
	return sets;
}

/** Every point that a pole reaches with some links open. */
function reachWithout(network: Network, poles: PoleMap, isOpen: (link: Link) => boolean): ReadonlySet<number> {
	const sets = joinWithout(network, isOpen);
	const fed = new Set(currentPoles(poles).flatMap((pole) => pole.points.map((point) => sets.find(point))));
	return new Set(network.circuit.points.map((point) => point.index).filter((point) => fed.has(sets.find(point))));
}

function addTo<Value>(lists: Map<number, Value[]>, key: number, value: Value): void {
	const here = lists.get(key);
	if (here === undefined) lists.set(key, [value]);
	else here.push(value);
}
