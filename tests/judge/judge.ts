// The judge of the tests: by simulation alone it tells how a circuit can hurt, in any state of its switches and with at most one fault.
// It knows nothing of rules and analysis.
import type { Circuit, Part } from "../../src/circuit/circuit.ts";
import { devicesOf, neutralOpeners, settle } from "./devices.ts";
import { type Harm, type HarmSort, type Tell, touchLimit, touchVolts } from "./harms.ts";
import { pastDevice, underLoad } from "./loading.ts";
import { type Frame, frameOf, statesOf, type Wiring, wire } from "./wiring.ts";

const faultOhms = 0.01;
const mostStates = 512;

/** The harms of a circuit, each sort and place once; undefined where its switches have too many states to go through. */
export function judge(circuit: Circuit): readonly Harm[] | undefined {
	const frame = frameOf(circuit);
	const states = statesOf(frame, mostStates);
	if (states === undefined) return undefined;
	const harms = new Map<string, Harm>();
	const tell = (harm: Harm): void => {
		const key = `${harm.sort} ${harm.at}`;
		if (!harms.has(key)) harms.set(key, harm);
	};
	const served = new Set<number>();
	const idle: (() => void)[] = [];
	for (const state of states) {
		const start = wire(frame, state, { groups: new Set(), sources: new Set() });
		const quiet = settle(frame, start, "works");
		for (const at of quiet.shorted) tell({ sort: "short", at, state, figure: 0 });
		inService(frame, quiet.wiring, tell, served, idle);
		underFault(frame, quiet.wiring, tell);
		withBrokenNeutral(frame, quiet.wiring, tell);
		underLoad(frame, quiet.wiring, tell);
		for (const device of devicesOf(quiet.wiring)) pastDevice(frame, quiet.wiring, device, tell);
		for (const groups of neutralOpeners(quiet.wiring)) {
			const { opened } = quiet.wiring;
			const open = { sources: opened.sources, groups: new Set([...opened.groups, ...groups]) };
			underFault(frame, settle(frame, wire(frame, state, open), "works").wiring, tell);
		}
		if (!quiet.isResidual) continue;
		// That a ground-fault device fails is a fault like any other.
		const stuck = settle(frame, start, "stuck").wiring;
		inService(frame, stuck, tell, served, idle);
		underLoad(frame, stuck, tell);
	}
	for (const look of idle) look();
	return [...harms.values()];
}

/** With nothing wrong: cases, shells, pins and bare ends that are live, loads that are off and yet live. */
function inService(frame: Frame, wiring: Wiring, tell: Tell, served: Set<number>, idle: (() => void)[]): void {
	const { circuit, state, volts, nodes } = wiring;
	const touch = (sort: HarmSort, point: number): void => {
		const figure = touchVolts(wiring, nodes[point] ?? 0);
		if (figure > touchLimit) tell({ sort, at: circuit.points[point]?.name ?? "", state, figure });
	};
	for (const point of casesOf(circuit)) touch("case", point);
	for (const [index, { between }] of circuit.loads.entries()) {
		for (const point of between) if (circuit.points[point]?.role === "neutral") touch("shell", point);
		const across = Math.abs((volts[nodes[between[0]] ?? 0] ?? 0) - (volts[nodes[between[1]] ?? 0] ?? 0));
		if (across > touchLimit) served.add(index);
		else
			idle.push(() => {
				if (served.has(index) && !isPulled(frame, wiring)) for (const point of between) touch("live when off", point);
			});
	}
	for (const { name, sort, hot, neutral } of circuit.sources)
		if (sort === "shore" && !state.mode.live.includes(name))
			for (const point of [...hot, ...(neutral === undefined ? [] : [neutral])]) touch("pins", point);
	for (const { ends, name } of circuit.conductors)
		for (const [index, end] of ends.entries()) {
			const other = ends[1 - index]?.point;
			if (end.state !== "loose" || other === undefined) continue;
			const figure = touchVolts(wiring, nodes[other] ?? 0);
			if (figure > touchLimit) tell({ sort: "bare end", at: name, state, figure });
		}
}

/** Whether a protective device has opened: what is dead then was not switched off. */
function isPulled({ devices }: Frame, { opened }: Wiring): boolean {
	return opened.sources.size > 0 || [...opened.groups].some((group) => devices.has(group));
}

/** What is grounded so that it can be touched: frames of devices, and the metal of boxes. */
function casesOf(circuit: Circuit): readonly number[] {
	const bodies = circuit.enclosures.flatMap(({ body }) => body ?? []);
	return [...bodies, ...circuit.parts.flatMap((part) => framesOf(circuit, part))];
}

/** The ground terminals of a device; bars, and what a machine lands its grounds on, are inside. */
function framesOf({ points }: Circuit, part: Part): readonly number[] {
	return part.enclosure.sort === "box" ? part.points.filter((point) => points[point]?.role === "ground") : [];
}

/** With one neutral conductor broken: no case may hang on it. */
function withBrokenNeutral(frame: Frame, { circuit, state, opened }: Wiring, tell: Tell): void {
	const cases = casesOf(circuit);
	for (const { index, name, role, ends } of circuit.conductors) {
		if (role !== "neutral" || ends.some(({ point }) => point === undefined)) continue;
		const wiring = wire(frame, state, { ...opened, broken: index });
		for (const point of cases) {
			const figure = touchVolts(wiring, frame.nodes[point] ?? 0);
			if (figure <= touchLimit) continue;
			tell({ sort: "case", at: circuit.points[point]?.name ?? "", state, figure, fault: `${name} broken` });
		}
	}
}

/** With a live part touching the metal around it, here and there in turn. */
function underFault(frame: Frame, quiet: Wiring, tell: Tell): void {
	const { circuit, nodes, volts, state, opened } = quiet;
	const tried = new Set<string>();
	const fault = (live: number, metal: number): void => {
		const [from = 0, to = 0] = [nodes[live], nodes[metal]];
		const key = `${from} ${to}`;
		if (tried.has(key) || Math.abs((volts[from] ?? 0) - (volts[to] ?? 0)) <= touchLimit) return;
		tried.add(key);
		const ways = [{ from, to, siemens: 1 / faultOhms }];
		const { wiring } = settle(frame, wire(frame, state, opened, ways), "works", ways);
		const figure = touchVolts(wiring, to);
		if (figure <= touchLimit) return;
		const nameOf = (point: number): string => circuit.points[point]?.name ?? "";
		tell({ sort: "case", at: nameOf(metal), state, figure, fault: nameOf(live) });
	};
	for (const part of circuit.parts)
		for (const metal of framesOf(circuit, part)) for (const live of part.points) fault(live, metal);
	// On an electrode, what comes before the first residual-current device is in a case of plastic or shrouded (common practice).
	const hasOwnEarth = circuit.sources.some(({ name, ownEarth }) => ownEarth && state.mode.live.includes(name));
	for (const { body, name, sort } of circuit.enclosures)
		if (body !== undefined && !(hasOwnEarth && sort === "panel"))
			for (const point of circuit.points) if (point.enclosure.name === name) fault(point.index, body);
}
