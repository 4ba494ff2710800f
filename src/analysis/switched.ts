// What each switch, dimmer and disconnect has to carry: the fixed loads whose hot leads through it, and the device ahead.
import type { Circuit, Load, Part, Protection } from "../circuit/circuit.ts";
import type { ModeState } from "./analysis.ts";
import type { DirectState } from "./direct.ts";
import type { Exposure } from "./protection.ts";
import { findSwitches } from "./switching.ts";
import { voltageAcross } from "./voltage.ts";

/** One switching part, on the contact that carries most. */
export interface Switched {
	readonly part: Part;
	/** Amperes of loads that run for three hours or more, and of the others. */
	readonly continuous: number;
	readonly other: number;
	/** The load that draws most, and how many there are. */
	readonly largest: Load | undefined;
	readonly count: number;
	/** The outlet of the largest rating, for something to be plugged in to; undefined where there is none. */
	readonly outlet: { readonly part: Part; readonly rating: number } | undefined;
	/** The device that limits what comes to it, and what that lets through. */
	readonly ahead: Protection | undefined;
	readonly amperes: number;
	/** A point of it that a hot reaches. */
	readonly point: number;
}

/** Loads that lead through a point, added up from the ends of the ways to their source. */
interface Sum {
	continuous: number;
	other: number;
	largest: Load | undefined;
	count: number;
	outlet: Switched["outlet"];
}

/** Every part that switches a hot in a mode. */
export function traceSwitched(state: ModeState): readonly Switched[] {
	const voltsOf = ({ between }: Load): number | undefined => voltageAcross(state, ...between)?.volts;
	return trace(state.network.circuit, () => state.exposure, voltsOf);
}

/** Every part that switches a positive. */
export function traceDirectSwitched(circuit: Circuit, direct: DirectState): readonly Switched[] {
	const voltsOf = ({ between }: Load): number => Math.abs(direct.potentials.between(...between) ?? 0);
	return trace(circuit, () => direct.exposure, voltsOf);
}

function trace(
	circuit: Circuit,
	exposureOf: () => ReadonlyMap<number, Exposure>,
	voltsOf: (load: Load) => number | undefined,
): readonly Switched[] {
	const transfers = circuit.links.filter((link) => link.contact !== undefined && link.modes !== undefined);
	const parts = new Set([...findSwitches(circuit), ...transfers].map(({ part }) => part));
	const found = new Map<string, Switched>();
	if (parts.size === 0) return [];
	const exposure = exposureOf();
	const sums = sumLoads(circuit, exposure, voltsOf);
	for (const [point, sum] of sums) carry(point, sum);
	return [...found.values()];

	function carry(point: number, { continuous, other, largest, count, outlet }: Sum): void {
		const by = exposure.get(point)?.by;
		if (by?.by.kind !== "link" || by.by.link.contact === undefined || !parts.has(by.by.link.part)) return;
		const part = circuit.partByName.get(by.by.link.part);
		const here = exposure.get(by.from);
		if (part === undefined || here === undefined) return;
		const known = found.get(part.name);
		const plugs = larger(known?.outlet, outlet);
		if (known !== undefined && known.continuous + known.other >= continuous + other) {
			if (plugs !== known.outlet) found.set(part.name, { ...known, outlet: plugs });
			return;
		}
		const { device: ahead, amperes } = here;
		found.set(part.name, { part, continuous, other, largest, count, outlet: plugs, ahead, amperes, point });
	}
}

function larger(one: Switched["outlet"], other: Switched["outlet"]): Switched["outlet"] {
	return one !== undefined && one.rating >= (other?.rating ?? 0) ? one : other;
}

/** What leads through each point that a hot reaches. */
function sumLoads(
	circuit: Circuit,
	exposure: ReadonlyMap<number, Exposure>,
	voltsOf: (load: Load) => number | undefined,
): ReadonlyMap<number, Sum> {
	const sums = new Map<number, Sum>();
	const sumAt = (point: number): Sum => {
		const known = sums.get(point) ?? { continuous: 0, other: 0, largest: undefined, count: 0, outlet: undefined };
		sums.set(point, known);
		return known;
	};
	for (const load of circuit.loads) {
		const part = load.outlet ? circuit.partByName.get(load.part) : undefined;
		if (part?.face.rating !== undefined) {
			const plug = { part, rating: part.face.rating };
			for (const point of load.between)
				if (exposure.has(point)) sumAt(point).outlet = larger(sumAt(point).outlet, plug);
		}
		if (load.watts === undefined) continue;
		const volts = voltsOf(load);
		if (volts === undefined || volts === 0) continue;
		for (const point of load.between) {
			if (!exposure.has(point)) continue;
			const amperes = load.watts / volts;
			add(sumAt(point), {
				continuous: load.continuous ? amperes : 0,
				other: load.continuous ? 0 : amperes,
				largest: load,
				count: 1,
				outlet: undefined,
			});
		}
	}
	// Points stand behind the point they were reached from: from the last on, each is complete when its turn comes.
	for (const [point, { by }] of [...exposure].reverse()) {
		const sum = sumAt(point);
		if (by !== undefined) add(sumAt(by.from), sum);
	}
	return sums;
}

function add(sum: Sum, { continuous, other, largest, count, outlet }: Sum): void {
	sum.continuous += continuous;
	sum.other += other;
	sum.count += count;
	if ((largest?.watts ?? 0) > (sum.largest?.watts ?? 0)) sum.largest = largest;
	sum.outlet = larger(sum.outlet, outlet);
}
