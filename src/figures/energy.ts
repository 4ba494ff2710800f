// What a day takes from each battery, and for how many days it lasts when nothing charges it.
import { type Percent, percent, type Watts, watts } from "../base/measures.ts";
import type { Source } from "../circuit/circuit.ts";
import { batteryDepth } from "../handbook/battery-depth.ts";
import { citation } from "../handbook/provenance.ts";
import { foldName } from "../plan/names.ts";
import type { Thing } from "../plan/plan.ts";
import { type ModeSetup, solveMode } from "./steady-state.ts";

/** What one load takes from the batteries in a day. */
export interface DailyUse {
	readonly part: string;
	/** What the batteries give for it while it runs: its own power and what is lost on the way. */
	readonly power: Watts;
	readonly hours: number;
	readonly wattHours: number;
}
/** One battery's day. */
export interface BatteryDay {
	readonly source: Source;
	/** Taken in a day, and what may be taken until it must be charged; undefined where its capacity is not said. */
	readonly wattHours: number;
	readonly usable: number | undefined;
	readonly depth: Percent | undefined;
	readonly depthSource: string;
	readonly days: number | undefined;
}
/** A mode's day on its batteries. */
export interface Energy {
	readonly uses: readonly DailyUse[];
	readonly batteries: readonly BatteryDay[];
	/** Loads that draw from a battery, and of which it is not said how long they run in a day. */
	readonly unsaid: readonly string[];
}

/** The day of a mode; undefined where no load says how long it runs, or no battery is there. */
export function reckonEnergy(setup: ModeSetup): Energy | undefined {
	const { circuit } = setup.state.network;
	const batteries = setup.supplies.supplies
		.filter(({ source }) => source.sort === "battery")
		.map(({ source }) => source);
	const { mode } = setup.state;
	const uses: DailyUse[] = [];
	const unsaid: string[] = [];
	const taken = new Map<Source, number>();
	if (batteries.length === 0) return undefined;
	const things = new Map(
		circuit.loads.map((load) => [load, circuit.plan.thingByName.get(foldName(load.part))] as const),
	);
	if (![...things.values()].some((thing) => thing !== undefined && quantityOf(thing, "daily") !== undefined))
		return undefined;
	for (const [load, thing] of things) {
		if (thing === undefined || load.outlet || load.watts === undefined || mode.running?.has(load.part) === false)
			continue;
		if (setup.supplies.conversions.has(load.part) || setup.supplies.quiet.between(...load.between) === undefined)
			continue;
		const alone = solveMode(setup, "loads", { running: new Set([load.part]) });
		if (alone.kind !== "steady") continue;
		const given = alone.sources.filter(({ source }) => source.sort === "battery" && batteries.includes(source));
		const power = given.reduce((sum, each) => sum + each.power, 0);
		if (power <= 0) continue;
		const seconds = quantityOf(thing, "daily");
		if (seconds === undefined) {
			unsaid.push(load.part);
			continue;
		}
		const hours = (seconds / 3600) * (quantityOf(thing, "duty") ?? 1);
		uses.push({ part: load.part, power: watts(power), hours, wattHours: power * hours });
		for (const each of given) taken.set(each.source, (taken.get(each.source) ?? 0) + each.power * hours);
	}
	return {
		uses,
		unsaid,
		batteries: batteries.map((source) => {
			const thing = circuit.plan.thingByName.get(foldName(source.part));
			const capacity = thing === undefined ? undefined : quantityOf(thing, "capacity");
			const depth = batteryDepth(thing?.said.choice("chemistry"));
			const wattHours = taken.get(source) ?? 0;
			const usable =
				capacity === undefined || depth === undefined ? undefined : capacity * source.volts * (depth.percent / 100);
			return {
				source,
				wattHours,
				usable,
				depth: depth === undefined ? undefined : percent(depth.percent),
				depthSource: depth === undefined ? "" : citation(depth.provenance),
				days: usable === undefined || wattHours <= 0 ? undefined : usable / wattHours,
			};
		}),
	};
}

function quantityOf({ kind, said }: Thing, name: string): number | undefined {
	return kind.attributes.some((attribute) => attribute.name === name && attribute.takes === "quantity")
		? said.quantity(name)?.value
		: undefined;
}
