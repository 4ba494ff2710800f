// More plans for the rules on the mains side: other boxes, other modes, other wires than in their own.
import type { MoreCases } from "./variation.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";
const chain = `${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to b1: receptacle\n  6 ft to b2: receptacle\n  6 ft to b3: receptacle\n`;
const lit = `${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to s1: switch\n  9 ft to l1: light 9 W\n`;
const legs = "inlet pole 50 A 120/240 V\npanel LC main 50 A, legs 2 from pole by 6-3, 12 ft\n";
const heat = `${legs}circuit heat from LC breaker 20 A two-pole by 12-2\n  9 ft, white marked red at both ends to h1: heater 3000 W 240 V\n`;
const van = (bonds: string) => `inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A${bonds}
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`;
const bonding = van(", bonds neutral when inverting");
const two = (first: number, second: number, joint: string) => `${supply}circuit one from LC breaker ${first} A by 12-2
  9 ft to j1: box
  6 ft to b1: receptacle
circuit two from LC breaker ${second} A by 12-2
  9 ft to j1
  6 ft to b2: receptacle
${joint}`;

export const mains: readonly MoreCases[] = [
	{
		code: "ground-broken",
		fires: [
			`${chain}at b2\n  one-2.bare, one-3.bare capped\n`,
			`${chain}at LC\n  one-1.bare capped\n`,
			`${chain}at LC\n  LC-1.bare loose\n`,
			`${chain}at b2\n  join one-2.bare, one-3.bare\n`,
			`${chain}at b2\n  one-2.bare capped\n  join one-3.bare, b2.ground\n`,
			`${bonding}at inv\n  LC-1.bare capped\n`,
			`${lit}at l1\n  one-2.bare loose\n`,
		],
		silent: [],
	},
	{
		code: "end-loose",
		fires: [
			`${chain}at b2\n  one-2.black loose\n`,
			`${chain}at b2\n  one-3.white capped\n`,
			`${chain}at LC\n  one-1.black loose\n`,
			`${lit}at s1\n  one-2.black loose\n`,
			`${lit}at l1\n  one-2.white loose\n`,
			`${heat}at h1\n  heat-1.white capped\n`,
			`${bonding}at inv\n  supply-1.black loose\n`,
		],
		silent: [],
	},
	{
		code: "polarity-reversed",
		fires: [
			`${chain}at LC\n  one-1.black on LC.neutral.2\n  one-1.white on LC.1.load\n`,
			`${chain}at b2\n  join one-2.black, one-3.white\n  join one-2.white, one-3.black\n`,
			`${lit}at l1\n  one-2.black on l1.ground\n  one-2.bare on l1.hot\n`,
			`${lit}at s1\n  one-1.bare on s1.line\n  one-1.black on s1.ground\n`,
			`${chain}at b3\n  one-3.bare on b3.hot\n  one-3.black capped\n`,
			`${bonding}at inv\n  supply-1.black on inv.in.neutral\n  supply-1.white on inv.in.hot\n`,
			`${bonding}at shore\n  supply-1.black on shore.neutral\n  supply-1.white on shore.hot\n`,
		],
		silent: [],
	},
	{
		code: "neutral-ground-exchanged",
		fires: [
			`${chain}at b2\n  join one-2.white, one-3.bare\n  join one-2.bare, one-3.white\n`,
			`${chain}at LC\n  one-1.white on LC.ground.2\n  one-1.bare on LC.neutral.2\n`,
			`${bonding}at inv\n  LC-1.white on inv.out.ground\n  LC-1.bare on inv.out.neutral\n`,
			`${lit}at l1\n  one-2.bare on l1.neutral\n  one-2.white capped\n`,
		],
		silent: [],
	},
	{
		code: "neutral-not-isolated",
		fires: [
			`${chain}at b2\n  join one-2.white, one-3.white, one-2.bare, one-3.bare\n`,
			`${bonding}at b1\n  link b1.neutral, b1.ground by 12 AWG bare\n`,
			`${lit}at l1\n  link l1.ground, l1.neutral by 14 AWG bare\n`,
		],
		silent: [],
	},
	{
		code: "poles-joined",
		fires: [
			`${chain}at b2\n  join one-2.black, one-3.black, one-2.white, one-3.white\n`,
			`${chain}at b1\n  link b1.hot, b1.neutral by 12 AWG black\n`,
			`${chain}at LC\n  link LC.1.load, LC.ground.4 by 12 AWG black\n`,
			`${lit}at s1\n  one-1.white on s1.load\n`,
			`${heat}at h1\n  link h1.hot, h1.hot2 by 12 AWG red\n`,
		],
		silent: [],
	},
	{
		code: "switch-in-neutral",
		fires: [
			`${lit}at s1\n  one-1.white on s1.line\n  one-2.white on s1.load\n  join one-1.black, one-2.black\n`,
			`${lit}  6 ft to l2: light 9 W\nat s1\n  one-1.white on s1.line\n  one-2.white on s1.load\n  join one-1.black, one-2.black\n`,
		],
		silent: [],
	},
	{
		code: "circuits-joined",
		fires: [
			two(15, 15, "at j1\n  join one-1.black, one-2.black, two-1.black, two-2.black\n"),
			two(20, 15, "at j1\n  join one-1.black, one-2.black, two-1.black, two-2.black\n"),
			two(20, 20, "at LC\n  link LC.1.load, LC.2.load by 12 AWG black\n"),
			`${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to b1: receptacle split\ncircuit two from LC breaker 15 A by 14-2\n  9 ft to b1.upper\nat b1\n  link b1.hot.lower, b1.hot.upper by 14 AWG black\n`,
			`${legs}circuit one from LC breaker 20 A by 12-2\n  9 ft to b1: receptacle\ncircuit two from LC breaker 20 A by 12-2\n  9 ft to b2: receptacle\nat LC\n  link LC.1.load, LC.2.load by 12 AWG black\n`,
		],
		silent: [],
	},
	{
		code: "colour-misleading",
		fires: [
			`${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to l1: light 9 W\n  7 ft loop to s1: switch\n`,
			`${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to l1: light 9 W\n  7 ft loop, white marked black at s1 to s1: switch\n`,
			`${chain}at b1\n  join one-1.black, one-2.white\n  join one-1.white, one-2.black\nat b2\n  join one-2.white, one-3.black, b2.hot\n  join one-2.black, one-3.white, b2.neutral\n`,
			`${chain}at LC\n  one-1.black on LC.neutral.2\n  one-1.white on LC.1.load\nat b1\n  join one-1.white, one-2.black, b1.hot\n  join one-1.black, one-2.white, b1.neutral\n`,
			`${legs}circuit one from LC breaker 20 A two-pole by 12-2\n  9 ft to h1: heater 3000 W 240 V\nat LC\n  one-1.white on LC.1.load.2\nat h1\n  one-1.white on h1.hot2\n`,
			`${chain}at b2\n  join one-2.bare, one-3.white\n  join one-2.white, one-3.bare\nat b3\n  one-3.bare on b3.neutral\n  one-3.white on b3.ground\n`,
		],
		silent: [],
	},
	{
		code: "conductors-too-few",
		fires: [
			`${supply}circuit one from LC breaker 15 A by 14-2\n  9 ft to s1: switch\n  6 ft to r1: receptacle split\n`,
			`${legs}circuit range from LC breaker 40 A two-pole by 8-2\n  20 ft to r1: receptacle 50 A 120/240 V\n`,
			`${legs}circuit heat from LC breaker 20 A two-pole by 12-2\n  9 ft to h1: heater 3000 W 240 V\n`,
			`${supply}cable bare-pair\n  black hot 14 AWG\n  white neutral 14 AWG\ncircuit one from LC breaker 15 A by bare-pair\n  9 ft to l1: light 9 W\n  6 ft to l2: light 9 W\n`,
			`${bonding.replace("by 10-2, 6 ft", "by two-wire, 6 ft")}cable two-wire\n  black hot 10 AWG\n  white neutral 10 AWG\n`,
		],
		silent: [],
	},
	{
		code: "circuit-overloaded",
		fires: [
			`${bonding}circuit two from LC breaker 20 A by 12-2\n  9 ft to h1: heater 1900 W continuous\ncircuit three from LC breaker 15 A by 14-2\n  9 ft to h2: heater 1300 W continuous\n`,
			`${legs}circuit heat from LC breaker 20 A two-pole by 12-2\n  9 ft, white marked red at both ends to h1: heater 5000 W 240 V\n`,
			`${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to h1: heater 1500 W continuous\n  6 ft to p1: pump 700 W\n  6 ft to p2: pump 100 W\n`,
			`plan "p"\n  region iec\n  rules building\ninlet pole 32 A 230 V\npanel P main 32 A rcbo 30 mA from pole by 3G6, 4 m\ncircuit one from P breaker 10 A by 3G1.5\n  4 m to h1: heater 2000 W continuous\n  4 m to h2: heater 1000 W\n`,
			`${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to h1: heater 1800 W continuous\ncircuit two from LC breaker 20 A by 12-2\n  9 ft to h2: heater 1800 W continuous\n`,
			`inlet shore 15 A 120 V\npanel LC main 15 A from shore by 14-2, 12 ft\n  slot 1: breaker 15 A\ncircuit one from LC.1 by 14-2\n  9 ft to h1: heater 2600 W\n`,
		],
		silent: [],
	},
	{
		code: "bond-missing",
		fires: [
			van(""),
			van(", bonds neutral never"),
			chain.replace("120 V\n", "120 V floating\n"),
			chain.replace("inlet shore 30 A 120 V", "generator shore 30 A 120 V, floating"),
			`generator gen 30 A 120 V\ninlet shore 30 A 120 V floating\ntransfer-switch TS 30 A\nfeed a from shore by 10-2\n  6 ft to TS.1\nfeed b from gen by 10-2\n  6 ft to TS.2\npanel LC main 30 A from TS by 10-2, 6 ft\ncircuit one from LC breaker 20 A by 12-2\n  9 ft to b1: receptacle\n`,
		],
		silent: [],
	},
	{
		code: "bond-doubled",
		fires: [
			van(", bonds neutral to frame"),
			chain.replace("main 30 A from", "main 30 A bonded from"),
			bonding.replace("main 30 A from", "main 30 A bonded from"),
		],
		silent: [],
	},
	{
		code: "back-feed-unfastened",
		fires: [
			`inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting\npanel LC lugs only\n  slot 1: breaker 20 A\n  slot 2: breaker 15 A\nfeed in from inv by 12-2\n  6 ft to LC.1\ncircuit one from LC.2 by 14-2\n  9 ft to b1: receptacle\n`,
		],
		silent: [],
	},
	{
		code: "line-load-reversed",
		fires: [
			`place sinkside sink 3 ft\n${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to g1: gfci in sinkside\n  6 ft to b1: receptacle in sinkside\nat g1\n  one-1.black on g1.load.hot\n  one-1.white on g1.load.neutral\n  one-2.black on g1.line.hot\n  one-2.white on g1.line.neutral\n`,
			`${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to g1: gfci\nat g1\n  one-1.black on g1.load.hot\n  one-1.white on g1.load.neutral\n`,
			`${supply}circuit one from LC breaker 20 A by 12-2\n  9 ft to g1: gfci\n  6 ft to b1: receptacle\nat g1\n  one-1.white on g1.load.neutral\n  one-2.white on g1.line.neutral\n`,
		],
		silent: [],
	},
	{
		code: "neutral-borrowed",
		fires: [
			two(20, 20, "at j1\n  join one-1.white, one-2.white, two-1.white, two-2.white\n"),
			two(20, 15, "at j1\n  two-1.white capped\n  join one-1.white, one-2.white, two-2.white\n"),
			`${supply}circuit one from LC ground-fault-breaker 20 A by 12-2\n  9 ft to j1: box\n  6 ft to b1: receptacle\ncircuit two from LC breaker 20 A by 12-2\n  9 ft to j1\n  6 ft to b2: receptacle\nat j1\n  one-1.white capped\n  join one-2.white, two-1.white, two-2.white\n`,
		],
		silent: [],
	},
	{
		code: "protection-too-large",
		fires: [
			chain.replace("by 12-2", "by 14-2"),
			chain.replace("breaker 20 A", "breaker 30 A"),
			chain.replace("  6 ft to b3", "  6 ft by 14-2 to b3"),
			chain.replace("by 10-2, 12 ft", "by 12-2, 12 ft"),
			`plan "p"\n  rules boat\n${chain.replaceAll("12-2", "triplex 16 AWG").replace("10-2", "triplex 10 AWG").replace("breaker 20 A", "breaker 30 A")}`,
			bonding.replace("by 10-2, 6 ft", "by 14-2, 6 ft"),
		],
		silent: [],
	},
];
