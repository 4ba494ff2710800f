// The door of this room for the command: a plan's figures, mode by mode, and the working of one thing. Loaded only when asked for.
import { type Analysis, analyse, type ModeState } from "../analysis/analysis.ts";
import { didYouMean } from "../base/nearest.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Cable, Circuit, Load } from "../circuit/circuit.ts";
import type { Region } from "../kinds/kind.ts";
import { foldName } from "../plan/names.ts";
import { type CableFigure, figureMode, type ModeFigures, worstFor } from "./mode-figures.ts";
import { type CircuitSize, sizeCircuits } from "./sizing.ts";
import type { Steady } from "./steady-state.ts";
import { readChanges, type SaidChanges, withLengths } from "./wish.ts";
import { type LengthUnit, type WorkingLine, workOutConductor, workOutLimit, workOutLoad } from "./working.ts";

/** What is asked for; what is left out is not asked. */
export interface FigureWish extends SaidChanges {
	/** A load, an outlet, a cable, a circuit or a source. */
	readonly of?: string | undefined;
	readonly mode?: string | undefined;
	readonly units?: LengthUnit | undefined;
	/** Whether faults are reckoned too. */
	readonly faults?: boolean | undefined;
}

/** The sizes of circuits, with the names of all that there are. */
export interface SizeAnswer {
	readonly sizes: readonly CircuitSize[];
	readonly circuits: readonly string[];
	readonly units: LengthUnit;
}

/** The sizes of the circuits of an analysed plan, or of the one that is named. */
export function tellSizes(analysis: Analysis, name: string | undefined): SizeAnswer {
	const { runs, settings } = analysis.circuit.plan;
	return {
		sizes: sizeCircuits(analysis, name),
		circuits: runs.flatMap((run) => (run.sort === "circuit" ? [run.name] : [])),
		units: unitsOf(settings.region),
	};
}

function unitsOf(region: Region): LengthUnit {
	return region === "us" ? "feet" : "metres";
}

/** Figures of the modes asked for, with the working of one thing where that was asked; or why there are none. */
export type FigureAnswer =
	| {
			readonly kind: "figures";
			readonly units: LengthUnit;
			readonly modes: readonly ModeFigures[];
			readonly workings: readonly Working[];
	  }
	| { readonly kind: "refused"; readonly why: string };

/** The working of one thing in one mode; without lines where there is nothing to reckon. */
export interface Working {
	readonly mode: string;
	/** `h1, a load` */
	readonly thing: string;
	readonly lines: readonly WorkingLine[];
	/** Why there are no lines; empty where there are. */
	readonly why: string;
}

/** The figures of an analysed plan. */
export function tellFigures(analysis: Analysis, wish: FigureWish): FigureAnswer {
	const { circuit } = analysis;
	const changes = readChanges(circuit, wish);
	if (typeof changes === "string") return { kind: "refused", why: changes };
	const { states } = changes.lengths.size === 0 ? analysis : analyse(withLengths(circuit, changes.lengths));
	const wanted =
		wish.mode === undefined ? states : states.filter(({ mode }) => foldName(mode.name) === foldName(wish.mode ?? ""));
	if (wanted.length === 0 && wish.mode !== undefined) {
		const names = states.map(({ mode }) => mode.name);
		const near = didYouMean(wish.mode, names) || `Its modes are: ${names.join(", ") || "none"}.`;
		return { kind: "refused", why: `The plan has no mode \`${wish.mode}\`. ${near}` };
	}
	const units = wish.units ?? unitsOf(circuit.plan.settings.region);
	const modes = wanted.map((state) =>
		figureMode(state, changes, { limits: changes.limits, withFaults: wish.faults === true }),
	);
	if (wish.of === undefined) return { kind: "figures", units, modes, workings: [] };
	const thing = findThing(circuit, wish.of);
	if (thing === undefined) {
		const names = [...circuit.loads.map(({ part }) => part), ...circuit.cables.flatMap(({ tag, run }) => [tag, run])];
		const near = didYouMean(wish.of, [...new Set(names)]);
		return {
			kind: "refused",
			why: `There is nothing \`${wish.of}\` that figures are told of: a load, an outlet, a cable, a circuit or a source. ${near}`.trim(),
		};
	}
	const workings = wanted.map((state, at) => workOut(state, modes[at], thing, units));
	return { kind: "figures", units, modes, workings };
}

type Thing =
	| { readonly sort: "load"; readonly load: Load }
	| { readonly sort: "cable"; readonly cable: Cable }
	| { readonly sort: "run"; readonly run: string }
	| { readonly sort: "source"; readonly source: string };

function findThing(circuit: Circuit, word: string): Thing | undefined {
	const folded = foldName(word);
	const isIt = (name: string): boolean => foldName(name) === folded;
	const source = circuit.sources.find(({ name }) => isIt(name));
	if (source !== undefined) return { sort: "source", source: source.name };
	const load =
		circuit.loads.find(({ part }) => isIt(part)) ??
		circuit.loads.find(({ part }) => isIt(circuit.partByName.get(part)?.enclosure.name ?? ""));
	if (load !== undefined) return { sort: "load", load };
	const cable = circuit.cables.find(({ tag }) => isIt(tag));
	if (cable !== undefined) return { sort: "cable", cable };
	const run = circuit.cables.find((each) => isIt(each.run));
	return run === undefined ? undefined : { sort: "run", run: run.run };
}

function workOut({ network }: ModeState, figures: ModeFigures | undefined, thing: Thing, units: LengthUnit): Working {
	const { circuit, mode } = network;
	const told = (name: string, lines: readonly WorkingLine[] | undefined, otherwise: string): Working => ({
		mode: mode.name,
		thing: name,
		lines: lines ?? [],
		why: lines === undefined || lines.length === 0 ? otherwise : "",
	});
	const states = figures?.states ?? [];
	if (figures === undefined || figures.unsettled.length > 0)
		return told(nameOf(thing), undefined, "Nothing is reckoned: more is asked for than can come.");
	switch (thing.sort) {
		case "load":
			return told(nameOf(thing), workOutAt(circuit, worstFor(states, thing.load), thing.load, units), "It is not fed.");
		case "run": {
			const far = figures.runs
				.filter(({ name }) => name === thing.run)
				.flatMap(({ cables }) => cables)
				.filter(({ end }) => end !== undefined)
				.toSorted((one, other) => (other.end?.percent ?? 0) - (one.end?.percent ?? 0));
			const load = far.flatMap(({ cable }) => loadIn(circuit, cable) ?? [])[0];
			const lines = load === undefined ? undefined : workOutAt(circuit, worstFor(states, load), load, units);
			const name = load === undefined ? thing.run : `${thing.run}, at ${load.part} where most is lost`;
			return told(name, lines, "Nothing that is fed hangs on it.");
		}
		case "cable": {
			const figure = figures.runs
				.flatMap(({ cables }) => cables)
				.find(({ cable }) => cable === thing.cable || cable.tag === thing.cable.tag);
			const steady = states.find(
				(state): state is Steady => state.kind === "steady" && state.loading === figure?.loading,
			);
			const lines = figure === undefined || steady === undefined ? undefined : workOutCable(steady, figure, units);
			return told(thing.cable.tag, lines, "It carries no load.");
		}
		case "source": {
			const source = figures.sources.find((each) => each.source.name === thing.source);
			const lines = source?.legs.map(
				(leg, at): WorkingLine => ({
					what: `${thing.source}${source.legs.length > 1 ? `, leg ${at + 1}` : ""}`,
					formula: `P = V I = ${formatNumber(source.source.volts)} V x ${formatNumber(leg, 4)} A`,
					result: `${formatNumber(source.source.volts * leg, 2)} W`,
					source: undefined,
				}),
			);
			return told(thing.source, lines, "It is not live in this mode.");
		}
	}
}

/** What each conductor resists and loses; then, of each size once, what it may be protected at. */
function workOutCable(steady: Steady, { cable, conductors }: CableFigure, units: LengthUnit): readonly WorkingLine[] {
	const sizes = new Set<string>();
	const firsts = conductors.filter(({ conductor: { gauge, role } }) => {
		const isFirst = role !== "ground" && !sizes.has(gauge.label);
		if (isFirst) sizes.add(gauge.label);
		return isFirst;
	});
	return [
		...conductors.flatMap(({ conductor }) => workOutConductor(steady, conductor, units)),
		...firsts.flatMap(({ conductor }) => workOutLimit(steady, conductor, cable.system)),
	];
}

function workOutAt(
	circuit: Circuit,
	steady: Steady | undefined,
	{ part, between }: Load,
	units: LengthUnit,
): readonly WorkingLine[] | undefined {
	// A circuit with other lengths has its own loads, but their places are the same.
	const own = circuit.loads.find((load) => load.part === part && load.between[0] === between[0]);
	return steady === undefined || own === undefined ? undefined : workOutLoad(steady, own, units);
}

function nameOf(thing: Thing): string {
	switch (thing.sort) {
		case "load":
			return thing.load.part;
		case "cable":
			return thing.cable.tag;
		case "run":
			return thing.run;
		case "source":
			return thing.source;
	}
}

function loadIn(circuit: Circuit, { to }: Cable): Load | undefined {
	return circuit.loads.find(({ part }) => circuit.partByName.get(part)?.enclosure.name === to.name);
}
