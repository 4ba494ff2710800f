// What each load asks for in a mode, and how that goes with the volts it gets.
import type { Circuit, Load, Mode } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";
import type { Supplies } from "./supplies.ts";

/** How what a load draws goes with its volts: a fixed power, a fixed current, or a resistance. */
export type Nature = "power" | "current" | "resistance";

/** What is on. `all`: every load, and every charger gives its rating; `loads`: every load, and batteries bear it alone; `charging`: chargers only. */
export type Loading = "all" | "loads" | "charging";

/** What is asked for otherwise than the plan has it. */
export interface Besides {
	/** Amperes that are drawn at parts, whatever these are. */
	readonly plugged?: ReadonlyMap<string, number> | undefined;
	/** The only loads that run, in place of those that the mode lists. */
	readonly running?: ReadonlySet<string> | undefined;
}

/** What a load asks for: so many watts, amperes or ohms. */
export interface Draw {
	readonly load: Load;
	readonly nature: Nature;
	readonly amount: number;
	/** Volts across it while nothing is drawn; undefined where no source's two poles reach it. */
	readonly quiet: number | undefined;
}

/** What every load asks for that is on and known. What a conversion draws is not among them: it follows from what it gives. */
export function findDraws(
	circuit: Circuit,
	mode: Mode,
	{ chargers, conversions, quiet }: Supplies,
	loading: Loading,
	{ plugged, running = mode.running }: Besides,
): readonly Draw[] {
	const charging = new Set(chargers.map(({ source }) => source.part));
	const outlets = new Set<string>();
	return circuit.loads.flatMap((load): Draw[] => {
		const extra = plugged?.get(load.part);
		if (extra !== undefined && !outlets.has(load.part)) {
			outlets.add(load.part);
			const across = quiet.between(...load.between);
			return across === undefined || across === 0 ? [] : [{ load, nature: "current", amount: extra, quiet: across }];
		}
		const isCharger = charging.has(load.part);
		if (load.watts === undefined || load.watts <= 0 || load.outlet) return [];
		if (!isCharger && (conversions.has(load.part) || loading === "charging")) return [];
		if (isCharger && loading === "loads") return [];
		if (running?.has(load.part) === false) return [];
		// An engine is cranked for seconds, and not with all else on; a mode that lists its starter means it.
		if (running === undefined && isStarter(circuit, load)) return [];
		const across = quiet.between(...load.between);
		const isFed = across !== undefined && across !== 0;
		// What hangs in a row with another load has no volts of its own: only as a resistance has it an answer.
		const nature = isFed ? natureOf(circuit, load) : "resistance";
		const nominal = load.volts ?? (isFed ? Math.abs(across) : usualVolts);
		const amount =
			nature === "power"
				? load.watts
				: nature === "current"
					? (saidAmperes(circuit, load) ?? load.watts / nominal)
					: nominal ** 2 / load.watts;
		return [{ load, nature, amount, quiet: isFed ? across : undefined }];
	});
}

/** Of a vehicle's direct-current side, where nothing else is known (common practice). */
const usualVolts = 12;

function isStarter(circuit: Circuit, { part }: Load): boolean {
	return circuit.partByName.get(part)?.face.traits.includes("starter") === true;
}

/** A heater is a resistance, what is said in amperes draws these, and all else takes its power whatever its volts. */
function natureOf(circuit: Circuit, load: Load): Nature {
	if (circuit.partByName.get(load.part)?.face.traits.includes("heater") === true) return "resistance";
	return saidAmperes(circuit, load) === undefined ? "power" : "current";
}

function saidAmperes({ plan }: Circuit, { part }: Load): number | undefined {
	const thing = plan.thingByName.get(foldName(part));
	if (thing?.kind.attributes.some(({ name }) => name === "current") !== true) return undefined;
	return thing.said.quantity("power") === undefined && thing.said.quantity("apparent power") === undefined
		? thing.said.quantity("current")?.value
		: undefined;
}
