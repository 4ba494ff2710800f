// More plans for the rules on boxes, joints, ends and supplies.
import { type MoreCases, varied, variedSecond } from "./variation.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";
const lit = `${supply}circuit lights from LC breaker 15 A by 14-2\n`;
const pushIn = "push-in 3, 24 AWG to 16 AWG";

export const workmanship: readonly MoreCases[] = [
	{
		code: "capped-end-live",
		fires: [
			`${supply}circuit attic roughed in from LC breaker 20 A by 12-2\n  20 ft to a1: light 9 W\n  9 ft to a2: light 9 W\n`,
			`${lit}  9 ft to b1: receptacle\n  9 ft to e1: end\n`,
		],
		silent: [
			`${lit}  9 ft to b1: receptacle\n  9 ft to b2: receptacle\n`,
			`${lit}  9 ft to b1: receptacle\n  9 ft to e1: end\nat b1\n  lights-2.black capped\n`,
		],
	},
	{
		code: "slack-too-short",
		fires: [varied("slack-too-short", ["4 in", "5.9 in"]), varied("slack-too-short", ["4 in", "14 cm"])],
		silent: [varied("slack-too-short", ["4 in", "6 in"]), varied("slack-too-short", [" slack 4 in", ""])],
	},
	{
		code: "joint-undersized",
		fires: [
			varied("joint-undersized", ["15 A", "19.9 A"]),
			`${lit}  9 ft to b1: light 9 W\n  9 ft to b2: light 9 W\nat b1\n  join lights-1.black, lights-2.black, b1.hot by lever 3, 10 A\n`,
		],
		silent: [
			varied("joint-undersized", ["15 A", "20 A"]),
			varied("joint-undersized", ["lever 3, 15 A", "lever 3"]),
			varied("joint-undersized", ["breaker 20 A by 12-2", "breaker 15 A by 12-2"]),
		],
	},
	{
		code: "joint-size-wrong",
		fires: [
			varied("joint-size-wrong", [pushIn, "lever 3, 12 AWG to 10 AWG"]),
			varied("joint-size-wrong", [pushIn, "lever 3, 24 AWG to 15 AWG"]),
		],
		silent: [
			varied("joint-size-wrong", [pushIn, "push-in 3, 24 AWG to 14 AWG"]),
			varied("joint-size-wrong", [pushIn, "lever 3, 14 AWG to 10 AWG"]),
			varied("joint-size-wrong", [pushIn, "push-in 3"]),
		],
	},
	{
		code: "joint-unboxed",
		fires: [
			varied("joint-unboxed", ["lever, ports 2", "crimp, ports 2"]),
			`${lit}  9 ft to b1: receptacle\n  9 ft to s1: splice lever, ports 3\n  9 ft to l1: light 9 W\n  from s1\n    6 ft to l2: light 9 W\n`,
		],
		silent: [
			`${lit}  9 ft to b1: receptacle\n  9 ft to e1: end\nat b1\n  lights-2.black capped\n`,
			// What runs on a battery needs no box for its joints.
			`battery house lithium 12.8 V 100 Ah\nfeed lamp from house.+, house.- by pair 14 AWG\n  bolted to F1: fuse 10 A\n  4 ft to s1: splice lever, ports 2\n  4 ft to l1: light 6 W\n`,
		],
	},
	{
		code: "gangs-too-few",
		fires: [
			varied("gangs-too-few", ["r2: receptacle", "s2: switch"]),
			varied("gangs-too-few", ["gangs 1", "gangs 2"], ["    r2: receptacle", "    r2: receptacle\n    r3: receptacle"]),
		],
		silent: [
			varied("gangs-too-few", ["gangs 1", "gangs 2"]),
			varied("gangs-too-few", ["gangs 1", "34 cuin"]),
			varied("gangs-too-few", ["\n    r2: receptacle", ""]),
		],
	},
	{
		code: "cover-wrong",
		fires: [`${lit}  9 ft to r1: receptacle, box cover blank\n`, `${lit}  9 ft to r1: receptacle, box no cover\n`],
		silent: [
			varied("cover-wrong", ["no cover", "cover blank"]),
			variedSecond("cover-wrong", ["cover metal", "metal, cover metal"]),
			variedSecond("cover-wrong", ["cover metal", "cover plastic"]),
		],
	},
	{
		code: "cable-unsuited",
		fires: [],
		silent: [
			varied("cable-unsuited", ["by pair 12 AWG", "by 12-2"]),
			variedSecond("cable-unsuited", ["duplex 12 AWG", "triplex 12 AWG"]),
		],
	},
	{
		code: "one-pole-opened",
		fires: [varied("one-pole-opened", ["breaker 10 A", "breaker 10 A single-pole"])],
		silent: [
			varied("one-pole-opened", ["breaker 10 A", "breaker 10 A two-pole"]),
			varied("one-pole-opened", ["breaker 10 A", "ground-fault-breaker 10 A"]),
		],
	},
	{
		code: "earth-fault-unopened",
		fires: [
			varied("earth-fault-unopened", ["TT", "TT"], ["breaker 6 A by", "breaker 10 A by"]),
			`${varied("earth-fault-unopened", ["breaker 6 A", "ground-fault-breaker 6 A"])}circuit sockets from DB breaker 10 A by 3G1.5\n  4 m to a1: light 9 W\n`,
		],
		silent: [
			varied("earth-fault-unopened", ["16 A two-pole", "16 A rcbo 30 mA"]),
			varied("earth-fault-unopened", ["breaker 6 A", "ground-fault-breaker 6 A"]),
			varied("earth-fault-unopened", [" TT", " TN-C-S"]),
		],
	},
	{
		code: "systems-mixed",
		fires: [varied("systems-mixed", ["supply-1.black on inv.+", "supply-1.white on inv.-"])],
		silent: [
			varied("systems-mixed", ["at inv\n  supply-1.black on inv.+\n", ""]),
			varied("systems-mixed", ["inv.+", "inv.in.hot"]),
		],
	},
	{
		code: "neutral-shared-unsafely",
		fires: [],
		silent: [
			varied("neutral-shared-unsafely", ["slot 3: breaker 20 A", "slot 3: breaker 20 A tied LC.1"]),
			variedSecond("neutral-shared-unsafely", ["two-pole by 12-3", "by 12-2"], ["receptacle split", "receptacle"]),
		],
	},
	{
		code: "ground-through-device",
		fires: [
			varied("ground-through-device", ["   9 ft to b2: receptacle\n", "   9 ft to b2: light 9 W\n"]),
			varied("ground-through-device", [
				"   9 ft to b2: receptacle\n",
				"   9 ft to b2: receptacle\n   9 ft to b3: receptacle\n",
			]),
		],
		silent: [
			varied("ground-through-device", [
				"bunks-1.bare, bunks-2.bare on b1.ground",
				"join bunks-1.bare, bunks-2.bare, b1.ground",
			]),
			varied("ground-through-device", ["at b1\n  bunks-1.bare, bunks-2.bare on b1.ground\n", ""]),
		],
	},
];
