// The thinnest cable with which a circuit keeps every limit at once, and the device it may have; the governing limit is named.
import type { Analysis } from "../analysis/analysis.ts";
import { type ConductorLimit, carefulLimit, conductorLimit } from "../analysis/conductor-limit.ts";
import { directLimit } from "../analysis/direct-limit.ts";
import { awg, type Gauge, squareMillimetres } from "../base/gauge.ts";
import { type Amperes, amperes, type Metres, metres, type Percent } from "../base/measures.ts";
import type { Cable, Circuit, Conductor, Protection } from "../circuit/circuit.ts";
import { continuousLoad } from "../handbook/branch-circuits.ts";
import { citation } from "../handbook/provenance.ts";
import { nextStandardRating } from "../handbook/standard-ratings.ts";
import { usualSizesOf } from "../handbook/usual-sizes.ts";
import { foldName } from "../plan/names.ts";
import type { Run } from "../plan/plan.ts";
import type { Besides } from "./draws.ts";
import { type EndFigure, figureCable, solveAll } from "./mode-figures.ts";
import { type ModeSetup, type Steady, setUpMode } from "./steady-state.ts";

/** A size as it would do for a circuit. */
export interface SizeTried {
	readonly gauge: Gauge;
	/** What its device may be at most, and by which table. */
	readonly largest: Amperes | undefined;
	readonly because: string;
	readonly source: string;
	readonly bearsDevice: boolean;
	/** The worst end of the circuit; undefined where nothing settles. */
	readonly worst: EndFigure | undefined;
	readonly keepsDrop: boolean;
	readonly fits: boolean;
}
/** What a circuit needs. */
export interface CircuitSize {
	readonly run: Run;
	readonly device: Protection;
	readonly rating: Amperes;
	/** What its fixed loads ask of the device, those of hours at 125 % where that is the rule; 0 where it has none. */
	readonly asked: Amperes;
	readonly askedBy: string;
	/** The smallest standard rating that is enough; undefined where nothing is asked. */
	readonly needed: Amperes | undefined;
	/** The outlet that was counted with a part of the device's rating, where there are outlets. */
	readonly plugged: { readonly part: string; readonly amperes: Amperes } | undefined;
	readonly now: SizeTried;
	/** From the thinnest on, up to the first that fits. */
	readonly tried: readonly SizeTried[];
	readonly chosen: SizeTried | undefined;
	/** What rules the next thinner size out; empty where there is none thinner. */
	readonly governing: string;
	/** How far the cable there is would do for its drop at this load, and how much it would carry that far; undefined where nothing flows. */
	readonly reach: { readonly share: number; readonly longest: Metres } | undefined;
	/** What to write for the cable, in place of what is written: `10-2`. */
	readonly write: { readonly from: string; readonly to: string } | undefined;
	readonly missing: readonly string[];
}

/** The sizes of every circuit of a plan, or of the one that `name` names; a circuit without a rated device is left out. */
export function sizeCircuits(analysis: Analysis, name?: string): readonly CircuitSize[] {
	const setups = analysis.states.map(setUpMode);
	return analysis.circuit.plan.runs.flatMap((run) => {
		if (run.sort !== "circuit" || (name !== undefined && foldName(run.name) !== foldName(name))) return [];
		return sizeCircuit(analysis, setups, run) ?? [];
	});
}

function sizeCircuit(analysis: Analysis, setups: readonly ModeSetup[], run: Run): CircuitSize | undefined {
	const { circuit } = analysis;
	const cables = circuit.cables.filter((cable) => cable.runSort === "circuit" && cable.run === run.name);
	const device = circuit.protections.find(({ part }) => part === run.protection);
	const own = coreOf(circuit, cables);
	const [first] = cables;
	if (device?.rating === undefined || own === undefined || first === undefined) return undefined;
	const plugged = farthestOutlet(circuit, cables, device.rating);
	const besides: Besides = plugged === undefined ? {} : { plugged: new Map([[plugged.part, plugged.amperes]]) };
	const trySize = (gauge: Gauge): SizeTried => tryGauge(circuit, setups, { cables, own, device, besides }, gauge);
	const now = trySize(own.gauge);
	const tried: SizeTried[] = [];
	for (const gauge of sizesFor(circuit, first)) {
		tried.push(trySize(gauge));
		if (tried.at(-1)?.fits === true) break;
	}
	const chosen = tried.find(({ fits }) => fits);
	const ruledOut = chosen === undefined ? tried.at(-1) : tried[tried.indexOf(chosen) - 1];
	const asked = askedOf(analysis, device);
	const needed =
		asked === 0
			? undefined
			: nextStandardRating(asked, circuit.plan.settings.region, device.sort === "fuse" ? "fuse" : "breaker");
	const to = chosen === undefined ? undefined : withGauge(first.make, chosen.gauge);
	return {
		run,
		device,
		rating: amperes(device.rating),
		asked: amperes(asked),
		askedBy:
			circuit.plan.settings.region === "us" && first.system === "ac"
				? citation(continuousLoad.provenance)
				: "the sum of its loads",
		needed: needed === undefined ? undefined : amperes(needed.ampere),
		plugged,
		now,
		tried,
		chosen,
		governing: ruledOut === undefined ? "" : tellGoverning(ruledOut),
		reach: reachOf(now, cables),
		write: to === undefined || to === first.make ? undefined : { from: first.make, to },
		missing: cables.filter(({ length }) => length === undefined).map(({ tag }) => tag),
	};
}

/** What of a circuit is tried with other sizes. */
interface Subject {
	readonly cables: readonly Cable[];
	readonly own: Conductor;
	readonly device: Protection;
	readonly besides: Besides;
}

function tryGauge(circuit: Circuit, setups: readonly ModeSetup[], subject: Subject, gauge: Gauge): SizeTried {
	const { cables, own, device, besides } = subject;
	const tags = new Set(cables.map(({ tag }) => tag));
	const changed: Circuit = {
		...circuit,
		conductors: circuit.conductors.map((conductor) =>
			conductor.cable !== undefined && tags.has(conductor.cable) && conductor.role !== "ground"
				? { ...conductor, gauge }
				: conductor,
		),
	};
	const limit = limitOf(changed, { ...own, gauge }, cables[0]?.system ?? "ac", setups);
	const worst = worstEnd(changed, setups, cables, besides);
	const largest = limit === undefined || limit.beyondTable === true ? undefined : carefulLimit(limit);
	const bearsDevice = largest !== undefined && largest >= (device.rating ?? 0);
	const keepsDrop = worst?.limits.every(({ isOver }) => !isOver) === true;
	return {
		gauge,
		largest: largest === undefined ? undefined : amperes(largest),
		because: limit === undefined ? "no table has this size" : tellLimit(limit),
		source: limit?.source ?? "",
		bearsDevice,
		worst,
		keepsDrop,
		fits: bearsDevice && keepsDrop,
	};
}

function tellLimit({ because, enclosed }: ConductorLimit): string {
	return enclosed === undefined ? because : `${because}, and ${enclosed.largest} A ${enclosed.where}`;
}

function limitOf(
	circuit: Circuit,
	conductor: Conductor,
	system: Cable["system"],
	[setup]: readonly ModeSetup[],
): ConductorLimit | undefined {
	if (system === "ac") return conductorLimit(circuit, conductor);
	const source = setup?.supplies.supplies.find((supply) => supply.source.system === "dc");
	return directLimit(circuit, conductor, Math.abs(source?.volts ?? usualVolts));
}

/** Of a vehicle's direct-current side, where nothing else is known (common practice). */
const usualVolts = 12;

/** The end that loses most of what it may lose, in whichever mode. */
function worstEnd(
	circuit: Circuit,
	setups: readonly ModeSetup[],
	cables: readonly Cable[],
	besides: Besides,
): EndFigure | undefined {
	const [first] = cables;
	let worst: EndFigure | undefined;
	let most = -1;
	for (const setup of setups) {
		const states = solveAll({ ...setup, circuit }, besides);
		const steadies = states.flatMap((state): Steady[] => (state.kind === "steady" ? [state] : []));
		if (steadies.length < states.length || first === undefined) return undefined;
		for (const cable of cables) {
			const { end } = figureCable(circuit, steadies, cable, first);
			const share = Math.max(0, ...(end?.limits ?? []).map(({ limit, percent }) => percent / limit.percent));
			if (end !== undefined && share > most) [worst, most] = [end, share];
		}
	}
	return worst;
}

function tellGoverning({ bearsDevice, keepsDrop, worst }: SizeTried): string {
	const over = worst?.limits.find(({ isOver }) => isOver);
	const drop =
		worst === undefined
			? "it brings too little to settle"
			: over === undefined
				? ""
				: `its drop, ${over.limit.percent} % for ${over.limit.applies}`;
	if (bearsDevice && keepsDrop) return "";
	if (bearsDevice) return drop;
	return keepsDrop ? "what its device may be" : `what its device may be, and ${drop}`;
}

/** Own drop grows with length and load: how many times as much of either the cable would do for. */
function reachOf({ worst }: SizeTried, cables: readonly Cable[]): CircuitSize["reach"] {
	if (worst === undefined || worst.ownPercent <= 0) return undefined;
	let share = Number.POSITIVE_INFINITY;
	const before: Percent | number = worst.percent - worst.ownPercent;
	for (const { limit, percent } of worst.limits) {
		const own = limit.circuit === "branch" ? percent : percent - before;
		const room = limit.circuit === "branch" ? limit.percent : limit.percent - before;
		if (own > 0) share = Math.min(share, Math.max(0, room) / own);
	}
	const length = cables.reduce((sum, cable) => sum + (cable.length ?? 0), 0);
	return Number.isFinite(share) ? { share, longest: metres(length * share) } : undefined;
}

/** What its fixed loads ask of a device, where they ask most. */
function askedOf({ states, circuit }: Analysis, { part }: Protection): number {
	const factor = circuit.plan.settings.region === "us" ? continuousLoad.factor : 1;
	let most = 0;
	for (const state of states)
		for (const demands of [state.demand, state.direct?.demand ?? new Map<string, never>()])
			for (const { device, continuous, other } of demands.values())
				if (device.part === part) most = Math.max(most, continuous * factor + other);
	return Math.round(most * 1e6) / 1e6;
}

/** Outlets are counted with four fifths of the device's rating, drawn where the way is longest (common practice). */
function farthestOutlet(circuit: Circuit, cables: readonly Cable[], rating: number): CircuitSize["plugged"] {
	const lengths = new Map<string, number>();
	let far: { part: string; length: number } | undefined;
	for (const { from, to, length = 0 } of cables) {
		const here = (lengths.get(from.name) ?? 0) + length;
		if (!lengths.has(to.name)) lengths.set(to.name, here);
		const outlet = circuit.loads.find(
			(load) => load.outlet && circuit.partByName.get(load.part)?.enclosure.name === to.name,
		);
		if (outlet !== undefined && here > (far?.length ?? -1)) far = { part: outlet.part, length: here };
	}
	return far === undefined ? undefined : { part: far.part, amperes: amperes(rating * continuousLoad.share) };
}

/** The thinnest conductor that carries the current of these cables. */
function coreOf(circuit: Circuit, cables: readonly Cable[]): Conductor | undefined {
	return cables
		.flatMap(({ conductors }) => conductors.flatMap((index) => circuit.conductors[index] ?? []))
		.filter(({ role }) => role !== "ground")
		.toSorted((one, other) => one.gauge.mm2 - other.gauge.mm2)[0];
}

/** Usual sizes, thinnest first; for direct current those besides that only it may have. */
function sizesFor({ plan }: Circuit, { system }: Cable): readonly Gauge[] {
	const { region } = plan.settings;
	const thin =
		system === "ac" ? [] : region === "us" ? [awg(18), awg(16)] : [squareMillimetres(0.75), squareMillimetres(1)];
	return [...thin, ...usualSizesOf(region).map(({ gauge }) => gauge)];
}

/** A make with another size: `14-2 stranded` as `10-2 stranded`, `3G2.5` as `3G4`, `pair 16 AWG` as `pair 12 AWG`. */
function withGauge(make: string, { label }: Gauge): string | undefined {
	for (const shape of [
		/^()\d+(?:\/0)?(-\d.*)$/,
		/^(.*?\b)\d+(?:\/0)?( AWG\b.*)$/,
		/^(\d+[GxX])[\d.]+(.*)$/,
		/^(.*?\b)[\d.]+( mm2\b.*)$/,
	]) {
		const [, before, behind] = shape.exec(make) ?? [];
		if (before !== undefined && behind !== undefined) return `${before}${label}${behind}`;
	}
	return undefined;
}
