// Against the outside: polarity, isolation and supply of recreational vehicles, manufactured homes and caravans.
import { describe, expect, test } from "vitest";
import { checkRight } from "../check-plan.ts";
import { findingsOf, nameOf, type Published } from "./published.ts";

/** A wrong plan by what it does to a right one, and the rules that name it. */
interface Fact {
	readonly what: string;
	readonly right: string;
	readonly wrong: string;
	readonly code: string;
}

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";
const outlet = `${supply}circuit one from LC breaker 20 A by 12-2\n  14 ft to b1: receptacle\n`;
const switched = `${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to s1: switch\n  7 ft to l1: light 9 W\n`;
const loop = (marked: string) =>
	`${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to l1: light 9 W\n  7 ft loop${marked} to s1: switch\n`;
const pole = "inlet pole 50 A 120/240 V\npanel LC main 50 A, legs 2 from pole by 6-3, 12 ft\n";
const van = (bonds: string) => `inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A${bonds}
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
const twoSources = (middle: string) => `inlet shore 30 A 120 V
generator gen 30 A 120 V, bonds neutral to frame
${middle}circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
const changeover = (poles: string) => `transfer-switch TS 30 A${poles}
feed a from shore by 10-2
  6 ft to TS.1
feed b from gen by 10-2
  6 ft to TS.2
panel LC main 30 A from TS by 10-2, 6 ft
`;

const facts: readonly Published<Fact>[] = [
	{
		what: "the neutral bar of a vehicle's panel is insulated from the enclosure",
		right: outlet,
		wrong: outlet.replace("main 30 A from", "main 30 A bonded from"),
		code: "bond-doubled",
		source: "NFPA 70 551.54(C), as WAC 296-150C-1310(1)",
		known: "read",
	},
	{
		what: "neutral is insulated from grounding conductors everywhere in the coach",
		right: outlet,
		wrong: `${outlet}at b1\n  link b1.neutral, b1.ground by 12 AWG bare\n`,
		code: "neutral-not-isolated",
		source: "WAC 296-150C-1310(1)",
		known: "read",
	},
	{
		what: "neutral terminals of appliances are insulated from the case",
		right: `${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to h1: heater 900 W\n`,
		wrong: `${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to h1: heater 900 W\nat h1\n  link h1.neutral, h1.ground by 14 AWG bare\n`,
		code: "neutral-not-isolated",
		source: "WAC 296-150C-1310(1)",
		known: "read",
	},
	{
		what: "the ground bus is grounded through the green wire of the supply",
		right: outlet,
		wrong: `${outlet}at LC\n  LC-1.bare capped\n`,
		code: "ground-broken",
		source: "WAC 296-150C-1310",
		known: "read",
	},
	{
		what: "the grounded conductor is the unswitched wire",
		right: switched,
		wrong: `${switched}at s1\n  one-1.white on s1.line\n  one-2.white on s1.load\n  join one-1.black, one-2.black\n`,
		code: "switch-in-neutral",
		source: "24 CFR 3280.815(a)(1)",
		known: "read",
	},
	{
		what: "white is the neutral only, and goes to the white terminal",
		right: outlet,
		wrong: `${outlet}at b1\n  one-1.white on b1.hot\n  one-1.black on b1.neutral\n`,
		code: "polarity-reversed",
		source: "24 CFR 3280.815(a)(1)",
		known: "read",
	},
	{
		what: "in a switch loop white is the supply to the switch, re-marked at every visible end",
		right: loop(", white marked black at both ends"),
		wrong: loop(""),
		code: "colour-misleading",
		source: "24 CFR 3280.815(a)(2)",
		known: "read",
	},
	{
		what: "white used for a 240 V hot is re-coloured",
		right: `${pole}circuit one from LC breaker 20 A two-pole by 12-2\n  9 ft, white marked red at both ends to h1: heater 3000 W 240 V\n`,
		wrong: `${pole}circuit one from LC breaker 20 A two-pole by 12-2\n  9 ft to h1: heater 3000 W 240 V\nat LC\n  one-1.white on LC.1.load.2\nat h1\n  one-1.white on h1.hot2\n`,
		code: "colour-misleading",
		source: "24 CFR 3280.815(b)",
		known: "read",
	},
	{
		what: "green is for grounding only",
		right: outlet,
		wrong: outlet
			.replace("by 12-2", "by dark")
			.replace(
				"circuit one",
				"cable dark\n  black neutral 12 AWG\n  green hot 12 AWG\n  bare ground 12 AWG\ncircuit one",
			),
		code: "colour-misleading",
		source: "24 CFR 3280.815(c)",
		known: "read",
	},
	{
		what: "a 240 V circuit is opened by one two-pole breaker",
		right: `${pole}circuit one from LC breaker 20 A two-pole by 12-2\n  9 ft, white marked red at both ends to h1: heater 3000 W 240 V\n`,
		wrong: `${pole}  slot 1: breaker 20 A\n  slot 3: breaker 20 A\ncircuit one from LC.1 by 12-2\n  9 ft, white marked red at both ends to h1: heater 3000 W 240 V\nat LC\n  one-1.white on LC.3.load\n`,
		code: "leg-left-live",
		source: "NFPA 70 550.11",
		known: "read",
	},
	{
		what: "a branch device is not over its conductors",
		right: outlet,
		wrong: outlet.replace("20 A by 12-2", "25 A by 12-2"),
		code: "protection-too-large",
		source: "NFPA 70 550.11",
		known: "read",
	},
	{
		what: "two alternating sources are never on the vehicle's circuits at the same time",
		right: twoSources(changeover(", two-pole")),
		wrong: twoSources(
			"panel LC main 30 A from shore by 10-2, 12 ft\ncircuit back from LC breaker 30 A held down by 10-2\n  6 ft to gen\n",
		),
		code: "inlet-live",
		source: "NFPA 70 551.31 and 551.33",
		known: "recalled",
	},
	{
		what: "an inverter-charger bonds while it inverts, and not while shore is there",
		right: van(", bonds neutral when inverting"),
		wrong: van(", bonds neutral to frame"),
		code: "bond-doubled",
		source: "makers' manuals that agree",
		known: "read",
	},
	{
		what: "a generator that is bonded needs a transfer that breaks the neutral",
		right: twoSources(changeover(", two-pole")),
		wrong: twoSources(changeover(", single-pole")),
		code: "bond-doubled",
		source: "maker's page on separately derived sources",
		known: "read",
	},
];

describe("what is right has no findings, what the pages warn of is found", () => {
	test.each(facts.map((fact) => [nameOf(fact, fact.what), fact] as const))("%s", (_, { right, wrong, code }) => {
		checkRight(right);
		expect(findingsOf(wrong, code, true).length).toBeGreaterThan(0);
	});

	test(
		nameOf(
			{ source: "neutral-bond pages that agree", known: "read" },
			"a portable generator with a floating neutral leaves the vehicle without a bond",
		),
		() => {
			const floating = outlet.replace("inlet shore 30 A 120 V", "generator shore 30 A 120 V, floating");
			expect(findingsOf(floating, "bond-missing", true).length).toBe(1);
			const bonded = outlet.replace("inlet shore 30 A 120 V", "generator shore 30 A 120 V, bonding plug");
			checkRight(bonded);
		},
	);

	test(
		nameOf(
			{ source: "NFPA 70 250.32(B) and 250.142(B)", known: "recalled" },
			"a cabin on a feeder from a house: its bars apart, bonded at the house only",
		),
		() => {
			const cabin = (bond: string) => `plan "p"
  rules building
inlet house 50 A 120/240 V
panel P main 50 A, legs 2${bond} from house by 6-3, 12 ft
circuit one from P breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
			checkRight(cabin(""));
			expect(findingsOf(cabin(", bonded"), "bond-doubled", true).length).toBeGreaterThan(0);
		},
	);
});
