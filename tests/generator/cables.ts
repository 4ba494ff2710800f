// The cables a careful builder pulls behind a breaker: thick enough, made for where they are used.
import type { Chance } from "./chance.ts";
import type { Wish } from "./wish.ts";

/** Cables of one size for one plan. */
export interface CableSet {
	/** Hot, neutral and ground. */
	readonly plain: string;
	/** With a second hot, for travellers, a shared neutral, two legs. */
	readonly withSecondHot: string;
	/** With a third hot; undefined where there is none. */
	readonly withThirdHot: string | undefined;
	/** Statements of own cables it rests on. */
	readonly statements: readonly string[];
}

/** Amperes of a breaker and the American size behind it (NFPA 70 240.4(D), and the 60 °C column above 30 A; common practice). */
const american: readonly (readonly [number, number])[] = [
	[15, 14],
	[20, 12],
	[30, 10],
	[40, 8],
	[50, 6],
];
/** The same in square millimetres, with room for cables that run in insulated walls (common practice). */
const metric: readonly (readonly [number, string])[] = [
	[10, "1.5"],
	[16, "2.5"],
	[20, "4"],
	[32, "6"],
	[63, "16"],
];

/** Cables that a breaker of so many amperes protects. */
export function cablesFor({ region, rules }: Wish, chance: Chance, amperes: number): CableSet {
	if (region === "iec") {
		// In an engine space a cable carries three quarters of what it carries elsewhere (33 CFR 183, as on boats).
		const size = sizeIn(metric, rules === "boat" ? amperes / 0.75 : amperes);
		const make = rules === "boat" || chance.maybe(0.5) ? " stranded" : "";
		return { plain: `3G${size}${make}`, withSecondHot: `4G${size}${make}`, withThirdHot: undefined, statements: [] };
	}
	const size = sizeIn(american, amperes);
	if (rules === "boat") {
		const own = `three-${size}`;
		return {
			plain: chance.pick([`triplex ${size} AWG`, `triplex #${size}`, `${size} AWG triplex`]),
			withSecondHot: own,
			withThirdHot: undefined,
			statements: [`cable ${own} ${size} AWG 105 C stranded black hot red hot white neutral green ground`],
		};
	}
	const make = chance.weigh([
		[3, ""],
		[1, " stranded"],
		[0.3, " copper"],
	]);
	return {
		plain: `${size}-2${make}`,
		withSecondHot: `${size}-3${make}`,
		withThirdHot: `${size}-4${make}`,
		statements: [],
	};
}

function sizeIn<Size>(rows: readonly (readonly [number, Size])[], amperes: number): Size {
	const row = rows.find(([rating]) => rating >= amperes);
	if (row === undefined) throw new Error(`no cable for ${amperes} A`);
	return row[1];
}
