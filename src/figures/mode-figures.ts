// What a mode comes to, cable by cable: amperes, volts lost on the way, volts left at its end against the guides' limits.
import type { ModeState } from "../analysis/analysis.ts";
import {
	type Amperes,
	amperes,
	type Ohms,
	type Percent,
	shareOf,
	type Volts,
	volts,
	type Watts,
	watts,
} from "../base/measures.ts";
import type { Cable, Circuit, Conductor, Load } from "../circuit/circuit.ts";
import type { Role } from "../kinds/kind.ts";
import { ohmsOf } from "./conductor-ohms.ts";
import type { Besides, Loading } from "./draws.ts";
import { directDropLimit, type Limit, mainsDropLimits } from "./drop-limits.ts";
import { type Energy, reckonEnergy } from "./energy.ts";
import { type FaultsAt, findFaultLoops } from "./fault-loops.ts";
import { findStarts, type Start } from "./starts.ts";
import {
	type ModeSetup,
	type SourceFlow,
	type State,
	type Steady,
	setUpMode,
	solveMode,
	type Unsettled,
} from "./steady-state.ts";

/** What flows in one conductor of a cable. */
export interface ConductorFigure {
	readonly conductor: Conductor;
	/** From its first end to its other one. */
	readonly amperes: Amperes;
	/** Undefined where its length is not known. */
	readonly ohms: Ohms | undefined;
	readonly lost: Volts;
}
/** What is left where a cable ends. */
export interface EndFigure {
	/** Volts there while nothing is drawn, and now. */
	readonly quiet: Volts;
	readonly across: Volts;
	/** What is lost since the source, and of that since the run began. */
	readonly lost: Volts;
	readonly percent: Percent;
	readonly ownPercent: Percent;
	readonly limits: readonly { readonly limit: Limit; readonly percent: Percent; readonly isOver: boolean }[];
}
/** One cable. */
export interface CableFigure {
	readonly cable: Cable;
	/** The most that one of its conductors carries, and what is on then. */
	readonly amperes: Amperes;
	readonly loading: Loading;
	readonly conductors: readonly ConductorFigure[];
	/** Volts lost in it, there and back. */
	readonly lost: Volts;
	readonly heat: Watts;
	/** Undefined where it brings no two poles, or none that are live. */
	readonly end: EndFigure | undefined;
}
/** What a device or a source carries of what it may. */
export interface Carried {
	readonly name: string;
	readonly amperes: Amperes;
	readonly rating: Amperes;
	readonly percent: Percent;
	readonly isOver: boolean;
}
/** The cables of a circuit or feed, in the order of the plan. */
export interface RunFigure {
	readonly name: string;
	readonly label: string;
	readonly sort: Cable["runSort"];
	/** The protective device it hangs on, where that has a rating. */
	readonly device: Carried | undefined;
	readonly cables: readonly CableFigure[];
}
/** All of a mode. */
export interface ModeFigures {
	readonly mode: string;
	readonly summary: string;
	readonly runs: readonly RunFigure[];
	/** What each source gives where all is on. */
	readonly sources: readonly SourceFlow[];
	/** What sources and protective devices carry that have a limit, by their names, each where it carries most. */
	readonly carried: ReadonlyMap<string, Carried>;
	/** The loadings that were solved; more than one where chargers make a difference. */
	readonly states: readonly State[];
	readonly unsettled: readonly Unsettled[];
	/** Loads that start with more than they run with. */
	readonly starts: readonly Start[];
	/** A day on the batteries; undefined where no load says how long it runs. */
	readonly energy: Energy | undefined;
	/** What a fault lets flow at the end of each cable; empty where that was not asked. */
	readonly faults: readonly FaultsAt[];
	/** What the figures leave out or take for granted, a sentence each. */
	readonly notes: readonly string[];
}

/** What is on, in the order in which it is solved. */
const loadings = ["all", "loads", "charging"] as const satisfies readonly Loading[];

/** The states of a mode: with all on, and where there are chargers without them and with them alone. */
export function solveLoadings(state: ModeState, besides: Besides = {}): readonly State[] {
	return solveAll(setUpMode(state), besides);
}

/** The same for a mode that was set up. */
export function solveAll(setup: ModeSetup, besides: Besides): readonly State[] {
	const [first, ...others] = loadings;
	const wanted = setup.supplies.chargers.length === 0 ? [first] : [first, ...others];
	return wanted.map((loading) => solveMode(setup, loading, besides));
}

/** What sources may give in place of what the plan says, and whether faults are reckoned too. */
export interface FigureOptions {
	readonly limits?: ReadonlyMap<string, number>;
	readonly withFaults?: boolean;
}

/** The figures of a mode. */
export function figureMode(
	state: ModeState,
	besides: Besides = {},
	{ limits = new Map<string, number>(), withFaults = false }: FigureOptions = {},
): ModeFigures {
	const { circuit } = state.network;
	const setup = setUpMode(state);
	const states = solveAll(setup, besides);
	const unsettled = states.flatMap((one) => (one.kind === "unsettled" ? [one] : []));
	const steadies = states.flatMap((one) => (one.kind === "steady" ? [one] : []));
	const [whole] = steadies;
	const runs = new Map<string, { cable: Cable; cables: CableFigure[] }>();
	if (unsettled.length === 0)
		for (const cable of circuit.cables) {
			if (cable.runSort === "bond") continue;
			const run = runs.get(`${cable.runSort} ${cable.run}`) ?? { cable, cables: [] };
			runs.set(`${cable.runSort} ${cable.run}`, run);
			run.cables.push(figureCable(circuit, steadies, cable, run.cable));
		}
	const carried = weighDevices(circuit, steadies, limits);
	return {
		mode: state.mode.name,
		summary: state.mode.summary,
		carried,
		runs: [...runs.values()].map(({ cable: { run, runSort }, cables }) => {
			const said = circuit.plan.runs.find(({ name, sort }) => name === run && sort === runSort);
			const device = carried.get(said?.protection ?? "");
			return { name: run, label: said?.label ?? "", sort: runSort, device, cables };
		}),
		sources: whole?.sources ?? [],
		states,
		unsettled,
		starts: unsettled.length > 0 ? [] : findStarts(setup, besides),
		energy: unsettled.length > 0 ? undefined : reckonEnergy(setup),
		faults: withFaults ? findFaultLoops(setup) : [],
		notes: tellAssumptions(circuit, whole),
	};
}

/** The state in which a load is left with least; undefined where nothing settles. */
export function worstFor(states: readonly State[], { between: [one, other] }: Load): Steady | undefined {
	let [least, worst]: [number, Steady | undefined] = [Number.POSITIVE_INFINITY, undefined];
	for (const state of states) {
		if (state.kind !== "steady") continue;
		const left = Math.abs(state.voltsAt(one) - state.voltsAt(other));
		if (left < least) [least, worst] = [left, state];
	}
	return worst;
}

/** What each source and device carries where it carries most; `limits` stand in for what sources may give. */
function weighDevices(
	circuit: Circuit,
	steadies: readonly Steady[],
	limits: ReadonlyMap<string, number>,
): ReadonlyMap<string, Carried> {
	const carried = new Map<string, Carried>();
	const weigh = (name: string, current: number, rating: number | undefined): void => {
		if (rating === undefined || rating <= 0 || current <= (carried.get(name)?.amperes ?? -1)) return;
		const [flowing, may] = [amperes(current), amperes(rating)];
		carried.set(name, {
			name,
			amperes: flowing,
			rating: may,
			percent: shareOf(flowing, may),
			isOver: current > rating * (1 + hair),
		});
	};
	for (const steady of steadies) {
		for (const { source, legs, charges } of steady.sources)
			if (!charges)
				for (const leg of legs) weigh(source.name, Math.max(0, leg), limits.get(source.name) ?? source.limit);
		for (const { part, links, rating } of circuit.protections)
			for (const link of links) weigh(part, Math.abs(steady.amperesThrough(link)), rating);
	}
	return carried;
}

/** One cable in what was solved of its mode; `first` is the cable its run begins with. */
export function figureCable(circuit: Circuit, steadies: readonly Steady[], cable: Cable, first: Cable): CableFigure {
	let [most, busiest] = [-1, steadies[0]];
	for (const steady of steadies)
		for (const index of cable.conductors) {
			const here = Math.abs(steady.amperesIn(index));
			if (here > most + 1e-9) [most, busiest] = [here, steady];
		}
	const conductors = cable.conductors.flatMap((index): ConductorFigure[] => {
		const conductor = circuit.conductors[index];
		if (conductor === undefined || busiest === undefined) return [];
		const current = busiest.amperesIn(index);
		const [from, to] = [conductor.ends[0].point, conductor.ends[1].point];
		const lost = from === undefined || to === undefined ? 0 : Math.abs(busiest.voltsAt(from) - busiest.voltsAt(to));
		return [{ conductor, amperes: current, ohms: ohmsOf(circuit, conductor), lost: volts(lost) }];
	});
	// What charges lifts the volts: what counts is where they are lowest.
	let end: EndFigure | undefined;
	for (const steady of steadies) {
		const here = figureEnd(steady, cable, first);
		if (here !== undefined && (end === undefined || here.lost > end.lost)) end = here;
	}
	return {
		cable,
		amperes: amperes(Math.max(0, most)),
		loading: busiest?.loading ?? "all",
		conductors,
		// What comes back in a neutral that both legs share is lost on the way too.
		lost: volts(conductors.reduce((sum, { lost }) => sum + lost, 0)),
		heat: watts(conductors.reduce((sum, { lost, amperes: current }) => sum + lost * Math.abs(current), 0)),
		end,
	};
}

/** The two conductors between which a cable brings its volts; undefined where it brings no two. */
function pairOf({ conductors: all }: Circuit, cable: Cable): readonly [Conductor, Conductor] | undefined {
	const landed = cable.conductors.flatMap((index) => {
		const conductor = all[index];
		return conductor?.ends.every(({ point }) => point !== undefined) === true ? [conductor] : [];
	});
	const of = (...roles: readonly Role[]): Conductor | undefined => landed.find(({ role }) => roles.includes(role));
	const there = of("hot", "positive");
	const back = of("neutral", "negative") ?? of("hot2");
	return there === undefined || back === undefined ? undefined : [there, back];
}

function acrossAt(
	steady: Steady,
	cable: Cable,
	end: 0 | 1,
): { readonly quiet: number; readonly now: number } | undefined {
	const pair = pairOf(steady.circuit, cable);
	const [high, low] = [pair?.[0].ends[end].point, pair?.[1].ends[end].point];
	if (high === undefined || low === undefined) return undefined;
	const quiet = steady.supplies.quiet.between(high, low);
	if (quiet === undefined || quiet === 0) return undefined;
	const now = steady.voltsAt(high) - steady.voltsAt(low);
	return quiet < 0 ? { quiet: -quiet, now: -now } : { quiet, now };
}

function endsAtCharger({ circuit, supplies }: Steady, cable: Cable): boolean {
	const end = pairOf(circuit, cable)?.[0].ends[1].point;
	return supplies.chargers.some(({ plus, minus }) => plus === end || minus === end);
}

function figureEnd(steady: Steady, cable: Cable, first: Cable): EndFigure | undefined {
	const here = acrossAt(steady, cable, 1);
	// At a charger nothing is left for anybody: what is lost in its cable is told of the cable.
	if (here === undefined || endsAtCharger(steady, cable)) return undefined;
	const start = acrossAt(steady, first, 0);
	// What rounding leaves is no rise.
	const lost = Math.max(0, here.quiet - here.now);
	const before = start === undefined ? 0 : Math.max(0, start.quiet - start.now);
	const [quiet, whole, own] = [volts(here.quiet), volts(lost), volts(Math.max(0, lost - before))];
	const percent = shareOf(whole, quiet);
	const ownPercent = shareOf(own, quiet);
	const limits = limitsAt(steady.circuit, cable).flatMap((limit) => {
		if (limit.circuit === "branch" && cable.runSort !== "circuit") return [];
		const held = limit.circuit === "branch" ? ownPercent : percent;
		return [{ limit, percent: held, isOver: held > limit.percent + hair }];
	});
	return { quiet, across: volts(here.now), lost: whole, percent, ownPercent, limits };
}

/** A sum of products may pass a limit by a hair. */
const hair = 1e-6;

function limitsAt(circuit: Circuit, cable: Cable): readonly Limit[] {
	const { settings } = circuit.plan;
	if (cable.system === "dc") {
		const isBoard = circuit.cables.some(({ runSort, from }) => runSort === "circuit" && from === cable.to);
		return [directDropLimit(settings, cable.runSort === "feed" && isBoard)];
	}
	const parts = circuit.parts.filter(({ enclosure }) => enclosure === cable.to);
	return mainsDropLimits(settings, {
		isLight: parts.some(({ face }) => face.traits.includes("light")),
		isPublic: circuit.sources.some(({ sort }) => sort === "shore"),
	});
}

function tellAssumptions(circuit: Circuit, steady: Steady | undefined): readonly string[] {
	if (steady === undefined) return [];
	const { supplies, net } = steady;
	const unknown = circuit.loads
		.filter(({ outlet, watts: power }) => !outlet && power === undefined)
		.map(({ part }) => part);
	const bare = [...net.unmeasured].filter((tag) => circuit.cableByTag.get(tag) !== undefined);
	const list = (names: readonly string[]): string => [...new Set(names)].join(", ");
	return [
		...supplies.faults.map(({ source, why }) => `${source.name} gives nothing: ${why}.`),
		...(bare.length === 0 ? [] : [`Length missing, so nothing is counted as lost in: ${list(bare)}.`]),
		...(unknown.length === 0 ? [] : [`Power missing, so counted as drawing nothing: ${list(unknown)}.`]),
		...(supplies.leftOut.length === 0
			? []
			: [`What ${list(supplies.leftOut.map(({ name }) => name))} give hangs on the sun and is left out.`]),
		...[...supplies.conversions.values()].flatMap(({ source, load, efficiency }) =>
			efficiency === undefined && load.watts !== undefined
				? [`The rating of ${source.name} is missing, so what it takes is not counted.`]
				: [],
		),
		...(supplies.supplies.some(({ source, ohms }) => source.sort === "battery" && ohms === 0)
			? ["A battery of which neither `resistance` nor `fault` is said is taken to hold its volts."]
			: []),
	];
}
