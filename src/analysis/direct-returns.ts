// What comes back through negatives, and through leads inside a series: all that the fuses ahead of what leads there let through.
import type { Circuit, Conductor, Load, Protection, Source } from "../circuit/circuit.ts";
import { type BatteryBank, findBanks } from "./battery-banks.ts";
import type { DirectState } from "./direct.ts";
import { type Edge, liveSources, type Reach } from "./network.ts";
import type { Pole } from "./poles.ts";
import type { Exposure } from "./protection.ts";

/** What comes through one conductor on its way back to a source. */
export interface ComingBack {
	readonly amperes: number;
	/** The devices that let so much through, and no more. */
	readonly devices: readonly Protection[];
	/** What draws it. */
	readonly loads: readonly Load[];
	/** From the first load's negative to the source. */
	readonly way: readonly Edge[];
}

/** What comes back through some conductors of a mode, by their positions; those are left out through which no device limits it. */
export function traceComingBack(
	circuit: Circuit,
	direct: DirectState,
	conductors: ReadonlySet<number>,
): ReadonlyMap<number, ComingBack> {
	if (conductors.size === 0) return new Map();
	const tracer = new BackTracer(circuit, direct, conductors);
	return new Map(
		[...conductors].flatMap((conductor) => {
			const comes = tracer.comingThrough(conductor);
			return comes === undefined ? [] : [[conductor, comes] as const];
		}),
	);
}

/** A load with what comes to it, and its way back. */
interface Drawing {
	readonly load: Load;
	readonly comes: Exposure;
	readonly way: readonly Edge[];
	/** Whether only one of several batteries in parallel is at the end of that way. */
	readonly isLeg: boolean;
}

/** What may flow, and the devices that limit it. */
interface Flow {
	readonly amperes: number;
	readonly devices: readonly Protection[];
}

class BackTracer {
	private readonly direct: DirectState;
	private readonly asked: ReadonlySet<number>;
	private readonly sources: readonly Source[];
	private readonly banks: readonly BatteryBank[];
	/** By conductor. */
	private readonly drawings = new Map<number, Drawing[]>();
	/** The device before each, and what a device and those beside it let through. */
	private readonly before = new Map<Protection, Protection>();
	private readonly together = new Map<Protection, Exposure>();

	constructor(circuit: Circuit, direct: DirectState, asked: ReadonlySet<number>) {
		this.direct = direct;
		this.asked = asked;
		for (const comes of direct.exposure.values()) {
			if (comes.beside !== undefined && comes.device !== undefined) this.together.set(comes.device, comes);
			if (comes.by?.by.kind !== "link" || comes.by.by.link.protection === undefined) continue;
			const ahead = direct.exposure.get(comes.by.from)?.nearest?.device;
			if (ahead !== undefined && comes.nearest !== undefined) this.before.set(comes.nearest.device, ahead);
		}
		this.sources = liveSources(direct.network);
		this.banks = findBanks(circuit, direct).filter(({ joined }) => joined === "parallel");
		const links = [...asked].flatMap((index) => seriesLinkOf(direct, circuit.conductors[index], this.sources));
		for (const load of circuit.loads) this.followBack(load, links);
	}

	comingThrough(conductor: number): ComingBack | undefined {
		const drawings = this.drawings.get(conductor);
		const first = drawings?.[0];
		if (drawings === undefined || first === undefined) return undefined;
		const flow = this.flowOf(drawings);
		if (!Number.isFinite(flow.amperes)) return undefined;
		return { ...flow, loads: drawings.map(({ load }) => load), way: first.way };
	}

	/** Notes the way of what a load draws, back to the source that it comes from, and to those in parallel with that. */
	private followBack(load: Load, links: readonly SeriesLink[]): void {
		const [positive, negative] = load.between;
		const comes = this.direct.exposure.get(positive);
		if (comes?.device === undefined) return;
		const fellows = this.parallelWith(comes.source);
		const ways = [comes.source, ...fellows].flatMap((source) => {
			const reach = this.wayBack(negative, source);
			return reach === undefined ? [] : [reach.edgesTo(negative)];
		});
		const noted = new Set<number>();
		for (const way of ways)
			for (const edge of way) {
				if (edge.by.kind !== "conductor" || noted.has(edge.by.index) || !this.asked.has(edge.by.index)) continue;
				noted.add(edge.by.index);
				const isLeg = ways.length > 1 && !ways.every((other) => other.includes(edge));
				this.note(edge.by.index, { load, comes, way, isLeg });
			}
		for (const { conductor, above } of links)
			if (above.has(comes.source) && !noted.has(conductor))
				this.note(conductor, { load, comes, way: ways[0] ?? [], isLeg: false });
	}

	private note(conductor: number, drawing: Drawing): void {
		const there = this.drawings.get(conductor);
		if (there === undefined) this.drawings.set(conductor, [drawing]);
		else there.push(drawing);
	}

	/** What comes from a source goes back to it, also where another's negative is nearer; of sources in series to the last one's. */
	private wayBack(negative: number, source: string): Reach | undefined {
		const { poles, reaches } = this.direct.poles;
		const isBack = (pole: Pole, index: number): boolean =>
			pole.role === "negative" && reaches[index]?.has(negative) === true;
		const own = poles.findIndex((pole, index) => pole.source === source && isBack(pole, index));
		if (own >= 0) return reaches[own];
		const sort = this.sortOf(source);
		return reaches[poles.findIndex((pole, index) => isBack(pole, index) && this.sortOf(pole.source) === sort)];
	}

	private sortOf(source: string): Source["sort"] | undefined {
		return this.sources.find(({ name }) => name === source)?.sort;
	}

	/** The other batteries of a battery's bank in parallel; banks that a handle or a coil ties give each their own. */
	private parallelWith(source: string): readonly string[] {
		const bank = this.banks.find(({ batteries }) => batteries.some(({ name }) => name === source));
		return bank?.batteries.flatMap(({ name }) => (name === source ? [] : [name])) ?? [];
	}

	/** What devices let through to some loads together: of devices in a row the smallest, of those side by side the sum. */
	private flowOf(drawings: readonly Drawing[]): Flow {
		const behind = new Map<Protection, Set<Protection>>();
		const direct = new Set<Protection>();
		const tops = new Set<Protection>();
		for (const { comes } of drawings) {
			let device = comes.nearest?.device;
			if (device === undefined) return { amperes: Number.POSITIVE_INFINITY, devices: [] };
			direct.add(device);
			for (let ahead = this.before.get(device); ahead !== undefined; ahead = this.before.get(device)) {
				const there = behind.get(ahead);
				const isKnown = there !== undefined;
				behind.set(ahead, (there ?? new Set()).add(device));
				device = ahead;
				// What is further ahead is noted already; a ring of devices has no top.
				if (isKnown) break;
			}
			if (this.before.get(device) === undefined) tops.add(device);
		}
		const through = (device: Protection): Flow => {
			const own = this.own(
				device,
				drawings.every(({ isLeg }) => isLeg),
			);
			if (direct.has(device)) return own;
			const parts = [...(behind.get(device) ?? [])].map(through);
			const sum = parts.reduce((total, { amperes }) => total + amperes, 0);
			return sum < own.amperes ? { amperes: sum, devices: parts.flatMap(({ devices }) => devices) } : own;
		};
		const flows = [...tops].map(through);
		return {
			amperes: flows.reduce((total, { amperes }) => total + amperes, 0),
			devices: flows.flatMap(({ devices }) => devices),
		};
	}

	/** What a device lets through, with those beside it but on the way of one battery alone. */
	private own(device: Protection, isLeg: boolean): Flow {
		const together = this.together.get(device);
		if (together?.beside === undefined || isLeg)
			return { amperes: device.rating ?? Number.POSITIVE_INFINITY, devices: [device] };
		return { amperes: together.amperes, devices: [device, ...together.beside] };
	}
}

/** A lead between two sources in series, and the sources above it: what they give comes through it. */
interface SeriesLink {
	readonly conductor: number;
	readonly above: ReadonlySet<string>;
}

function seriesLinkOf(
	{ potentials }: DirectState,
	conductor: Conductor | undefined,
	sources: readonly Source[],
): readonly SeriesLink[] {
	if (conductor === undefined || sources.length < 2) return [];
	const points = conductor.ends.map(({ point }) => point);
	const isOn = (point: number | undefined): boolean => point !== undefined && points.includes(point);
	const upper = sources.find(({ neutral }) => isOn(neutral));
	if (upper === undefined || !sources.some(({ hot }) => hot.some(isOn))) return [];
	const above = new Map([[upper.name, upper]]);
	// A map hands out what is added while it is walked.
	for (const { hot } of above.values())
		for (const source of sources)
			if (source.neutral !== undefined && hot.some((plus) => potentials.between(plus, source.neutral ?? plus) === 0))
				above.set(source.name, source);
	return [{ conductor: conductor.index, above: new Set(above.keys()) }];
}
