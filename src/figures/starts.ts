// What a load does while it starts, with all else on: the volts it is left with, and whether the machine behind it holds.
import { type Amperes, amperes, drawnAt, type Volts, volts, type Watts, watts } from "../base/measures.ts";
import type { Circuit, Load } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";
import type { Thing } from "../plan/plan.ts";
import type { Besides, Loading } from "./draws.ts";
import { type ModeSetup, type Steady, solveMode } from "./steady-state.ts";

/** One load's start. */
export interface Start {
	readonly load: Load;
	/** What it draws for that moment. */
	readonly amperes: Amperes;
	/** Undefined where nothing settles: it does not start. */
	readonly left: { readonly quiet: Volts; readonly across: Volts } | undefined;
	/** The lowest volts that it runs at, where that is said. */
	readonly lowest: Volts | undefined;
	/** What the machines behind it give for that moment, of what they may. */
	readonly machines: readonly Machine[];
}
/** An inverter behind a start. */
export interface Machine {
	readonly name: string;
	readonly power: Watts;
	/** What it gives for a moment; undefined where that is not said. */
	readonly most: Watts | undefined;
	/** What its battery side is left with, and the volts at which it stops, where that is said. */
	readonly input: Volts | undefined;
	readonly cutOff: Volts | undefined;
}

/** The start of every load of which it is said what it draws then, one at a time. */
export function findStarts(setup: ModeSetup, besides: Besides): readonly Start[] {
	const { circuit } = setup.state.network;
	const running = besides.running ?? setup.state.mode.running;
	const loading: Loading = setup.supplies.chargers.length > 0 ? "loads" : "all";
	return circuit.loads.flatMap((load): Start[] => {
		const thing = circuit.plan.thingByName.get(foldName(load.part));
		const quiet = setup.supplies.quiet.between(...load.between);
		if (thing === undefined || quiet === undefined || quiet === 0 || running?.has(load.part) === false) return [];
		const drawn =
			said(thing, "surge") ??
			(isStarter(circuit, load) ? said(thing, "current") : undefined) ??
			drawnAt(watts(said(thing, "surge power") ?? 0), volts(Math.abs(quiet)));
		if (drawn <= 0 || setup.supplies.conversions.has(load.part)) return [];
		const state = solveMode(setup, loading, {
			...besides,
			plugged: new Map([...(besides.plugged ?? []), [load.part, drawn]]),
		});
		const lowest = said(thing, "lowest");
		return [
			{
				load,
				amperes: amperes(drawn),
				left: state.kind === "steady" ? leftAt(state, load, quiet) : undefined,
				lowest: lowest === undefined ? undefined : volts(lowest),
				machines: state.kind === "steady" ? machinesOf(circuit, state, load) : [],
			},
		];
	});
}

/** A starter motor does nothing but start. */
function isStarter(circuit: Circuit, { part }: Load): boolean {
	return circuit.partByName.get(part)?.face.traits.includes("starter") === true;
}

function leftAt({ voltsAt }: Steady, { between: [one, other] }: Load, quiet: number) {
	return { quiet: volts(Math.abs(quiet)), across: volts(Math.abs(voltsAt(one) - voltsAt(other))) };
}

/** The inverters that give more than nothing while a load for mains starts. */
function machinesOf({ points, plan }: Circuit, steady: Steady, { between: [one] }: Load): readonly Machine[] {
	if (points[one]?.role === "positive" || points[one]?.role === "negative") return [];
	return steady.sources.flatMap(({ source, power }): Machine[] => {
		const conversion = steady.supplies.conversions.get(source.part);
		const thing = plan.thingByName.get(foldName(source.part));
		if (source.system !== "ac" || thing === undefined || !isInverter(source.sort) || power <= 0) return [];
		const input = steady.loads.find(({ load }) => load === conversion?.load)?.across;
		const [most, cutOff] = [said(thing, "surge"), said(thing, "cut-off")];
		return [
			{
				name: source.name,
				power,
				most: most === undefined ? undefined : watts(most),
				input,
				cutOff: cutOff === undefined ? undefined : volts(cutOff),
			},
		];
	});
}

function isInverter(sort: string): boolean {
	return sort === "inverter" || sort === "inverter-charger";
}

/** What is said of a thing, where its kind knows of it. */
function said({ kind, said: told }: Thing, name: string): number | undefined {
	return kind.attributes.some((attribute) => attribute.name === name && attribute.takes === "quantity")
		? told.quantity(name)?.value
		: undefined;
}
