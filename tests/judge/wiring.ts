// A circuit in one mode, with every switch in one position, as a network of resistances: what the judge of the tests measures on.
import type { Circuit, Link, Load, Mode, Source } from "../../src/circuit/circuit.ts";
import type { Role } from "../../src/kinds/kind.ts";
import { type Eliminated, eliminate, solve, type Way } from "./nodal.ts";

/** A circuit in one state: its mode, and the position of each switch by the name of its contacts' group. */
export interface State {
	readonly mode: Mode;
	readonly positions: ReadonlyMap<string, number>;
}

/** What has opened: contacts by their group, sources by their name; and a conductor that is broken. */
export interface Opened {
	readonly groups: ReadonlySet<string>;
	readonly sources: ReadonlySet<string>;
	readonly broken?: number;
}

/** A way with what it is in the circuit. */
export interface Branch extends Way {
	readonly conductor?: number;
	readonly link?: number;
	readonly load?: number;
	/** A pole of a source, and the volts that drive current from `from` to `to`. */
	readonly source?: string;
	readonly volts?: number;
	/** The ground of the cord between an inlet and its pedestal. */
	readonly cordGround?: string;
}

/** The network of one state. */
export interface Wiring {
	readonly circuit: Circuit;
	readonly state: State;
	readonly opened: Opened;
	/** The node of each point: what solid links join is one. */
	readonly nodes: readonly number[];
	readonly branches: readonly Branch[];
	readonly eliminated: Eliminated;
	readonly volts: Float64Array;
}

/** Copper at 20 C, ohm mm2 for a metre (IACS, read). */
const resistivity = 0.017241;
/** Metres of a conductor whose length is not known, and ohms of a contact and of a source: guesses of a common order. */
const usualLength = 3;
const contactOhms = 0.001;
const sourceOhms = 0.05;
/** A cord of 7.5 m and 10 AWG, one of its conductors. */
const cordOhms = (resistivity * 7.5) / 5.26;
/** An electrode of one's own, and that of the supply, in ohms: a good one, and so the least of what a touch may show. */
const electrodeOhms = 50;
const supplyElectrodeOhms = 20;
/** Siemens by which everything leaks to earth. */
const leak = 1e-7;

/** What of a circuit is the same in all its states. */
export interface Frame {
	readonly circuit: Circuit;
	readonly nodes: readonly number[];
	readonly earth: number;
	/** Where the neutral and the ground of a pedestal are, at the far end of the cord to an inlet, by the source's name. */
	readonly pedestals: ReadonlyMap<string, { readonly neutral: number; readonly ground: number }>;
	readonly count: number;
	/** Links of each device that opens by itself, by the group of their contacts. */
	readonly devices: ReadonlySet<string>;
}

/** The nodes of a circuit; one more stands for the earth beyond an electrode. */
export function frameOf(circuit: Circuit): Frame {
	const net = circuit.points.map((_, index) => index);
	const find = (point: number): number => {
		for (let at = point; ; at = net[at] ?? at) if (net[at] === at) return at;
	};
	for (const { nature, modes, between } of circuit.links)
		if (nature === "solid" && modes === undefined) net[find(between[0])] = find(between[1]);
	const numbers = new Map<number, number>();
	const nodes = net.map((_, point) => {
		const root = find(point);
		const known = numbers.get(root) ?? numbers.size;
		numbers.set(root, known);
		return known;
	});
	const residual = new Set(circuit.groundFaults.map(({ part }) => part));
	const devices = new Set(
		circuit.links.flatMap(({ contact, protection, part }) =>
			contact !== undefined && (protection !== undefined || residual.has(part)) ? [contact.group] : [],
		),
	);
	const earth = numbers.size;
	const far = circuit.sources.filter(({ sort }) => sort === "shore");
	const pedestals = new Map(
		far.map(({ name }, index) => [name, { neutral: earth + 2 * index + 1, ground: earth + 2 * index + 2 }]),
	);
	return { circuit, nodes, earth, pedestals, count: earth + 2 * far.length + 1, devices };
}

/** Every state: each mode with each setting of the switches; too many to go through are undefined. */
export function statesOf({ circuit, devices }: Frame, most: number): readonly State[] | undefined {
	const groups = new Map<string, number>();
	for (const { contact } of circuit.links)
		if (contact !== undefined && !devices.has(contact.group)) groups.set(contact.group, contact.positions);
	let settings: ReadonlyMap<string, number>[] = [new Map()];
	for (const [group, positions] of groups) {
		settings = settings.flatMap((setting) =>
			Array.from({ length: positions }, (_, position) => new Map([...setting, [group, position]])),
		);
		if (settings.length * circuit.modes.length > most) return undefined;
	}
	return circuit.modes.flatMap((mode) => settings.map((positions) => ({ mode, positions })));
}

/** The network of a state with something opened, and more ways put in: a fault. Loads may be left out. */
export function wire(
	frame: Frame,
	state: State,
	opened: Opened,
	faults: readonly Way[] = [],
	loads: "loaded" | "unloaded" = "loaded",
): Wiring {
	const { circuit, nodes, earth, pedestals, count } = frame;
	const at = (point: number): number => nodes[point] ?? 0;
	const sources = circuit.sources.filter(
		({ name, system }) => system === "ac" && state.mode.live.includes(name) && !opened.sources.has(name),
	);
	const branches: Branch[] = [...faults];
	for (const { index, ends, gauge, length, role } of circuit.conductors) {
		const [from, to] = [ends[0].point, ends[1].point];
		if (from === undefined || to === undefined || isDirect(role) || index === opened.broken) continue;
		const ohms = (resistivity * Math.max(length ?? usualLength, 0.05)) / gauge.mm2;
		branches.push({ from: at(from), to: at(to), siemens: 1 / ohms, conductor: index });
	}
	for (const link of circuit.links) {
		if (!isClosed(link, state, opened)) continue;
		const far = circuit.sources.find(({ part }) => part === link.part && link.nature === "bond");
		const pedestal = far === undefined ? undefined : pedestals.get(far.name);
		const [from, to] =
			pedestal === undefined ? [at(link.between[0]), at(link.between[1])] : [pedestal.neutral, pedestal.ground];
		const ohms = far?.ownEarth === true ? electrodeOhms + supplyElectrodeOhms : contactOhms;
		branches.push({ from, to, siemens: 1 / ohms, link: link.index });
	}
	for (const { name, hot, neutral, ground, volts } of sources) {
		if (neutral === undefined) continue;
		const pedestal = pedestals.get(name);
		const back = pedestal?.neutral ?? at(neutral);
		for (const [leg, pole] of hot.entries())
			branches.push({
				from: back,
				to: at(pole),
				siemens: 1 / (sourceOhms + (pedestal === undefined ? 0 : cordOhms)),
				source: name,
				volts: leg === 0 ? volts : -volts,
			});
		if (pedestal === undefined) continue;
		branches.push({ from: back, to: at(neutral), siemens: 1 / cordOhms });
		if (ground !== undefined)
			branches.push({ from: pedestal.ground, to: at(ground), siemens: 1 / cordOhms, cordGround: name });
	}
	if (loads === "loaded")
		for (const [index, load] of circuit.loads.entries())
			branches.push({
				from: at(load.between[0]),
				to: at(load.between[1]),
				siemens: siemensOf(circuit, load),
				load: index,
			});
	const far = sources.find(({ ownEarth }) => ownEarth);
	const supply = far === undefined ? undefined : pedestals.get(far.name);
	if (supply !== undefined) branches.push({ from: supply.neutral, to: earth, siemens: 1 / supplyElectrodeOhms });
	const reference = supply === undefined ? (standOf(frame, sources) ?? 0) : earth;
	const eliminated = eliminate(count, branches, reference, leak);
	const amperes = new Map<number, number>();
	for (const { from, to, siemens, volts = 0 } of branches) {
		if (volts === 0) continue;
		amperes.set(to, (amperes.get(to) ?? 0) + volts * siemens);
		amperes.set(from, (amperes.get(from) ?? 0) - volts * siemens);
	}
	return { circuit, state, opened, nodes, branches, eliminated, volts: solve(eliminated, amperes) };
}

/** Amperes in a way from `from` to `to`, under the volts of a solved network. */
export function amperesIn({ from, to, siemens, volts = 0 }: Branch, solved: Float64Array): number {
	return ((solved[from] ?? 0) - (solved[to] ?? 0) + volts) * siemens;
}

/** The earth that people stand on: the ground of the first live source, at the far end of its cord; else of any. */
function standOf({ circuit, nodes, pedestals }: Frame, live: readonly Source[]): number | undefined {
	const [first] = [...live, ...circuit.sources].filter(({ ground }) => ground !== undefined);
	return first?.ground === undefined ? undefined : (pedestals.get(first.name)?.ground ?? nodes[first.ground]);
}

function isDirect(role: Role): boolean {
	return role === "positive" || role === "negative";
}

function isClosed(link: Link, state: State, opened: Opened): boolean {
	if (link.modes !== undefined && !link.modes.has(state.mode.name)) return false;
	if (link.contact === undefined) return link.nature !== "contact";
	const position = state.positions.get(link.contact.group);
	return position === undefined ? !opened.groups.has(link.contact.group) : link.contact.closed.includes(position);
}

/** A load at its watts; where they are not said, and for what is plugged in to an outlet, those of a lamp. */
function siemensOf(circuit: Circuit, { watts = 100, volts }: Load): number {
	return watts / (volts ?? circuit.sources.find(({ system }) => system === "ac")?.volts ?? 120) ** 2;
}
