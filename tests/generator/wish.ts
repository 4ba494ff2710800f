// What a generated plan is to be: its size and its mix, said by whoever asks or drawn from the seed.
import type { Region, RuleSet } from "../../src/kinds/kind.ts";
import { Chance } from "./chance.ts";

/** What feeds the mains side. */
export type Supply = "shore" | "two legs" | "generator" | "inverter" | "inverter-charger" | "transfer";

/** Which systems the plan has: mains, direct current, or both. */
export type Sides = "ac" | "dc" | "both";

/** Size and mix of a plan. The same wish gives the same text. */
export interface Wish {
	readonly seed: number;
	/** Devices on circuits, from 1 to 200. */
	readonly devices: number;
	readonly region: Region;
	readonly rules: RuleSet;
	readonly sides: Sides;
	/** What feeds the mains side, where there is one. */
	readonly supply: Supply;
	/** The share of circuits that are roughed in: their cables are there, their devices are not. */
	readonly roughedIn: number;
	/** What the builder's own parts and cables are comes in files that the plan uses; not where it is not asked for. */
	readonly usesFiles: boolean;
}

/** The wish of a seed; what is said in `said` is not drawn. Most plans are small, some are large. */
export function wishFor(seed: number, said: Partial<Wish> = {}): Wish {
	const chance = new Chance(seed);
	const devices = chance.weigh([
		[6, chance.count(1, 12)],
		[3, chance.count(13, 40)],
		[0.6, chance.count(41, 90)],
		[0.1, chance.count(91, 200)],
	]);
	const region =
		said.region ??
		chance.weigh<Region>([
			[3, "us"],
			[2, "iec"],
		]);
	const rules = said.rules ?? chance.pick<RuleSet>(["camper", "boat", "building"]);
	// Two hot legs come to North American sites only, and boat cable has but one hot.
	const supplies: readonly Supply[] = [
		"shore",
		"shore",
		...(region === "us" && rules !== "boat" ? (["two legs", "two legs", "two legs", "two legs"] as const) : []),
		"generator",
		"inverter",
		"inverter-charger",
		"transfer",
	];
	const sides = chance.weigh<Sides>([
		[4, "ac"],
		[2, "dc"],
		[4, "both"],
	]);
	const supply = chance.pick(supplies);
	const roughedIn = chance.maybe(0.1) ? 0.3 : 0;
	return { seed, devices, region, rules, sides, supply, roughedIn, usesFiles: false, ...said };
}
