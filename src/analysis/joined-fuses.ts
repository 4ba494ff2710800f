// Fuses and breakers for direct current that meet behind them: what hangs there is fed through both, and neither alone makes it dead.
import type { Protection } from "../circuit/circuit.ts";
import type { DirectState } from "./direct.ts";
import type { JoinedCircuits } from "./joined-circuits.ts";
import { type JoinedSets, joinWhere } from "./joined-sets.ts";
import { type Network, reachFrom } from "./network.ts";
import { isMeantToStay } from "./parallel-fuses.ts";

/** A device between two sets of points that no device parts. */
interface Pass {
	readonly device: Protection;
	/** Its terminal nearer the source, and the one beyond. */
	readonly line: number;
	readonly load: number;
}

/**
 * Every pair of devices of a mode that meet behind them. Batteries in parallel each have a device of their own, and so has what
 * charges them; yet between the positives of a right plan all devices together make no ring. Contacts count as open: a pump with
 * a float switch on one fuse and a handle on another is meant so.
 */
export function traceJoinedFuses({ network, poles }: DirectState): readonly JoinedCircuits[] {
	const { circuit } = network;
	if (circuit.protections.length < 2) return [];
	const sets = joinWhere(network, isMeantToStay);
	const passes = passesOf(network, (point) => poles.sortsAt(point).has("hot"));
	const grown = new JoinedFuses(sets);
	return passes.flatMap((pass): JoinedCircuits[] => {
		const ring = grown.close(pass);
		const met = ring === undefined ? undefined : meetingOf(ring, sets);
		if (met === undefined || met[0].device === met[1].device) return [];
		const [one, other] = met;
		const reach = reachFrom(network, [one.load], isMeantToStay);
		return [{ devices: [one.device, other.device], way: reach.edgesTo(other.load), points: reach.points }];
	});
}

/** The ways through devices, each from the side it calls line. */
function passesOf({ circuit, mode }: Network, isLive: (point: number) => boolean): readonly Pass[] {
	return circuit.protections.flatMap((device) =>
		device.links.flatMap((index): Pass[] => {
			const link = circuit.links[index];
			if (link === undefined || link.modes?.has(mode.name) === false) return [];
			const [one, other] = link.between;
			if (!isLive(one) || !isLive(other)) return [];
			const point = circuit.points[one];
			const isTurned = point?.kind === "terminal" && point.side === "load";
			return [{ device, line: isTurned ? other : one, load: isTurned ? one : other }];
		}),
	);
}

/** Sets with the devices between them, as far as these make no ring. */
class JoinedFuses {
	private readonly sets: JoinedSets;
	private readonly islands = new Map<number, number>();
	private readonly passesAt = new Map<number, Pass[]>();

	constructor(sets: JoinedSets) {
		this.sets = sets;
	}

	/** Adds a device; if it closes a ring, all devices of that, each next to the one before it. */
	close(pass: Pass): readonly Pass[] | undefined {
		const [line, load] = [this.sets.find(pass.line), this.sets.find(pass.load)];
		if (line === load) return undefined;
		const [from, to] = [this.islandOf(line), this.islandOf(load)];
		if (from === to) return [pass, ...this.wayBetween(load, line)];
		this.islands.set(to, from);
		for (const set of [line, load]) {
			const there = this.passesAt.get(set);
			if (there === undefined) this.passesAt.set(set, [pass]);
			else there.push(pass);
		}
		return undefined;
	}

	private islandOf(set: number): number {
		let top = set;
		for (let above = this.islands.get(top); above !== undefined; above = this.islands.get(top)) top = above;
		for (let here = set; here !== top; ) {
			const above = this.islands.get(here) ?? top;
			this.islands.set(here, top);
			here = above;
		}
		return top;
	}

	private wayBetween(start: number, end: number): readonly Pass[] {
		const cameBy = new Map<number, { readonly pass: Pass; readonly from: number } | undefined>([[start, undefined]]);
		// A map hands out what is added while it is walked.
		for (const set of cameBy.keys()) {
			if (set === end) break;
			for (const pass of this.passesAt.get(set) ?? []) {
				const [line, load] = [this.sets.find(pass.line), this.sets.find(pass.load)];
				const next = line === set ? load : line;
				if (!cameBy.has(next)) cameBy.set(next, { pass, from: set });
			}
		}
		const way: Pass[] = [];
		for (let step = cameBy.get(end); step !== undefined; step = cameBy.get(step.from)) way.push(step.pass);
		return way.reverse();
	}
}

/** The two devices of a ring that have their load sides in one set; where none have, the one that closed it and the next. */
function meetingOf(ring: readonly Pass[], sets: JoinedSets): readonly [Pass, Pass] | undefined {
	for (const [index, pass] of ring.entries()) {
		const next = ring[(index + 1) % ring.length];
		if (next !== undefined && next !== pass && sets.isJoined(pass.load, next.load)) return [next, pass];
	}
	const [first, second] = ring;
	return first === undefined || second === undefined ? undefined : [second, first];
}
