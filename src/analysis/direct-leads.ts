// Conductors for direct current to which more can come than they may have: which lead on to a device near by, and which do not.
import { certain } from "../base/certain.ts";
import type { Circuit, Conductor, Protection } from "../circuit/circuit.ts";
import type { ConductorLimit } from "./conductor-limit.ts";
import { findCrankingLeads } from "./cranking-leads.ts";
import type { DirectState } from "./direct.ts";
import { directLimit } from "./direct-limit.ts";
import type { Network } from "./network.ts";
import type { Exposure } from "./protection.ts";

/** Conductors that hang together behind too large a device, or behind none: the first is the one nearest the source. */
export interface ExposedLead {
	readonly conductors: readonly Conductor[];
	readonly first: Conductor;
	/** The first one's; undefined where no table knows it. */
	readonly limit: ConductorLimit | undefined;
	readonly exposure: Exposure;
	/** What it leads to with no smaller device before it: a load, another source. Empty where devices stand at all its ends. */
	readonly reaches: readonly string[];
	/** The device at its farthest end, and metres to it along the conductors; undefined length: one of them is not known. */
	readonly farthest: { readonly device: Protection; readonly metres: number | undefined } | undefined;
	/** Whether it begins at the device ahead of it, not at a bus or post behind that. */
	readonly atDevice: boolean;
	/** Devices at its ends, each with the point on its other side. */
	readonly devices: ReadonlyMap<Protection, number>;
	/** Amperes that the devices at all its ends let through together: each may hold to its own, and the lead still carry more than it may. */
	readonly together: number;
	/** A device on its ways that is itself larger than the lead may have. */
	readonly overrated: Protection | undefined;
	/** Whether it starts at a post of a battery. */
	readonly atBattery: boolean;
}

/**
 * Every such lead of a mode; worked out once, since several rules ask. Conductors between a battery and a starter are left out:
 * they have no device by custom and by rule.
 */
export function findExposedLeads(circuit: Circuit, direct: DirectState): readonly ExposedLead[] {
	const known = leadsOf.get(direct);
	if (known !== undefined) return known;
	const leads = gatherLeads(circuit, direct);
	leadsOf.set(direct, leads);
	return leads;
}

const leadsOf = new WeakMap<DirectState, readonly ExposedLead[]>();

function gatherLeads(circuit: Circuit, { network, exposure }: DirectState): readonly ExposedLead[] {
	const walk = new LeadWalk(network, exposure);
	const leads = new Map<number, Conductor[]>();
	for (const conductor of circuit.conductors) {
		const head = walk.headOf(conductor);
		if (head === undefined) continue;
		const known = leads.get(head);
		if (known === undefined) leads.set(head, [conductor]);
		else known.push(conductor);
	}
	return [...leads].map(([head, conductors]) => walk.tell(head, conductors));
}

class LeadWalk {
	private readonly circuit: Circuit;
	private readonly network: Network;
	private readonly exposure: ReadonlyMap<number, Exposure>;
	/** Points by the point they were reached from. */
	private readonly children = new Map<number, number[]>();
	private readonly uses: ReadonlyMap<number, string>;
	private readonly cranking: ReadonlySet<number>;

	constructor(network: Network, exposure: ReadonlyMap<number, Exposure>) {
		this.circuit = network.circuit;
		this.network = network;
		this.exposure = exposure;
		for (const [point, { by }] of exposure) {
			if (by === undefined) continue;
			const there = this.children.get(by.from);
			if (there === undefined) this.children.set(by.from, [point]);
			else there.push(point);
		}
		this.uses = usesOf(network.circuit);
		this.cranking = findCrankingLeads(network);
	}

	/** The conductor nearest the source of the exposed ones that this one hangs on; undefined for one that is not exposed. */
	headOf(conductor: Conductor): number | undefined {
		if (!this.isExposed(conductor)) return undefined;
		let head = conductor.index;
		for (let point = this.nearEnd(conductor); point !== undefined; ) {
			const by = this.exposure.get(point)?.by;
			if (by === undefined) return head;
			if (by.by.kind === "link" && by.by.link.protection !== undefined) return head;
			if (by.by.kind === "conductor") {
				const before = certain(this.circuit.conductors[by.by.index], "a conductor");
				if (!this.isExposed(before)) return head;
				head = before.index;
			}
			point = by.from;
		}
		return head;
	}

	tell(head: number, conductors: readonly Conductor[]): ExposedLead {
		const first = certain(this.circuit.conductors[head], "a conductor");
		const start = this.nearEnd(first);
		const exposure = certain(this.through(first), "an exposure");
		const ahead = start === undefined ? undefined : this.exposure.get(start)?.by?.by;
		const limit = this.limitOf(first);
		const reaches = new Set<string>();
		let farthest: ExposedLead["farthest"];
		let overrated: Protection | undefined;
		const met = new Map<Protection, number>();
		const waiting: { point: number; metres: number | undefined }[] = [];
		for (const point of this.beyond(first)) waiting.push({ point, metres: first.length ?? inBox(first) });
		for (const { point, metres } of waiting) {
			const use = this.uses.get(point);
			if (use !== undefined) reaches.add(use);
			const meet = (device: Protection, beyond: number): void => {
				met.set(device, beyond);
				if ((device.rating ?? 0) > (limit?.largest ?? Number.POSITIVE_INFINITY)) overrated ??= device;
				if (farthest === undefined || (metres ?? Number.POSITIVE_INFINITY) > (farthest.metres ?? 0))
					farthest = { device, metres };
			};
			// A device to whose other side as much comes by another way stands at this end all the same.
			for (const { by, to } of this.network.edges[point] ?? []) {
				const device = by.kind === "link" ? this.circuit.protections[by.link.protection ?? -1] : undefined;
				const back = this.exposure.get(point)?.by;
				const isBack = back?.by.kind === "link" && by.kind === "link" && back.by.link === by.link;
				if (device !== undefined && !isBack && this.exposure.get(to)?.by?.from !== point) meet(device, to);
			}
			for (const next of this.children.get(point) ?? []) {
				const by = this.exposure.get(next)?.by?.by;
				if (by === undefined) continue;
				if (by.kind === "conductor") {
					const conductor = certain(this.circuit.conductors[by.index], "a conductor");
					if (!this.isExposed(conductor)) continue;
					const more = conductor.length ?? inBox(conductor);
					waiting.push({ point: next, metres: metres === undefined || more === undefined ? undefined : metres + more });
					continue;
				}
				const device = by.link.protection === undefined ? undefined : this.circuit.protections[by.link.protection];
				if (device === undefined) {
					waiting.push({ point: next, metres });
					continue;
				}
				meet(device, next);
			}
		}
		const part = start === undefined ? undefined : this.circuit.points[start];
		const source = part?.kind === "terminal" ? this.circuit.sources.find((one) => one.part === part.part) : undefined;
		return {
			conductors,
			first,
			limit,
			exposure,
			reaches: [...reaches],
			farthest,
			atDevice: ahead?.kind === "link" && ahead.link.protection !== undefined,
			devices: met,
			together: [...met.keys()].reduce((sum, { rating }) => sum + (rating ?? 0), 0),
			overrated,
			atBattery: source?.sort === "battery",
		};
	}

	private isExposed(conductor: Conductor): boolean {
		if (conductor.sort === "pigtail" || conductor.role !== "positive" || this.cranking.has(conductor.index))
			return false;
		const comes = this.through(conductor);
		if (comes === undefined) return false;
		const limit = this.limitOf(conductor);
		return comes.amperes > (limit?.largest ?? 0);
	}

	/** What comes through a conductor: to its far end, where it is the way there; between fuses in parallel not all meet yet. */
	private through(conductor: Conductor): Exposure | undefined {
		const near = this.nearEnd(conductor);
		for (const { point } of conductor.ends) {
			const there = point === undefined || point === near ? undefined : this.exposure.get(point);
			if (there?.by?.by.kind === "conductor" && there.by.by.index === conductor.index) return there;
		}
		return near === undefined ? undefined : this.exposure.get(near);
	}

	private limitOf(conductor: Conductor): ConductorLimit | undefined {
		const start = this.nearEnd(conductor);
		const name = start === undefined ? undefined : this.exposure.get(start)?.source;
		const source = this.circuit.sources.find((candidate) => candidate.name === name);
		return directLimit(this.circuit, conductor, source?.volts ?? 12);
	}

	/** The end by which most comes; of equals the one that is reached first. */
	private nearEnd({ index, ends }: Conductor): number | undefined {
		const [one, other] = [ends[0].point, ends[1].point];
		if (one === undefined || other === undefined) return undefined;
		const by = this.exposure.get(one)?.by?.by;
		if (by?.kind === "conductor" && by.index === index) return other;
		const byOther = this.exposure.get(other)?.by?.by;
		if (byOther?.kind === "conductor" && byOther.index === index) return one;
		const [first, second] = [this.exposure.get(one)?.amperes ?? 0, this.exposure.get(other)?.amperes ?? 0];
		return second > first ? other : one;
	}

	private beyond(conductor: Conductor): number[] {
		const near = this.nearEnd(conductor);
		return conductor.ends.flatMap(({ point }) => (point === undefined || point === near ? [] : [point]));
	}
}

/** What never leaves its box has next to no length. */
function inBox({ sort }: Conductor): number | undefined {
	return sort === "core" ? undefined : 0;
}

/** Positive terminals of loads and of sources, with the name of the part. */
function usesOf(circuit: Circuit): ReadonlyMap<number, string> {
	const uses = new Map<number, string>();
	for (const { between, part } of circuit.loads) for (const point of between) uses.set(point, part);
	for (const { hot, part, system } of circuit.sources)
		if (system === "dc") for (const point of hot) uses.set(point, part);
	return uses;
}
