// What a builder must be able to state: each matter with its natural words, as a plan in which every word has a meaning.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { planCodes } from "../../src/plan/codes.ts";
import { syntaxProblems } from "../../src/syntax/codes.ts";

const mains = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";
const twoLegs = "inlet shore 50 A 120/240 V\npanel LC main 50 A 120/240 V from shore by 6-3, 12 ft\n";
const bank = `battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 10 A
feed small from house.+, house.- by pair 8 AWG
  within 7 in to F9: fuse 60 A
  3 ft to FB
`;
const hops = (lines: readonly string[]) => lines.map((line) => `  ${line}\n`).join("");
const branch = (...lines: string[]) => `${mains}circuit c from LC breaker 20 A by 12-2\n${hops(lines)}`;
const direct = (...lines: string[]) => `${bank}circuit c from FB.1 by pair 14 AWG\n${hops(lines)}`;
const panel = (...lines: string[]) => `${mains}${hops(lines)}`;
const metric = (...lines: string[]) => `plan "x"\n  region iec\ninlet shore 16 A 230 V\n${lines.join("")}`;

const statable: Record<string, Record<string, string>> = {
	cable: {
		"material, stranding, insulation, jacket": branch("9 ft by 12-2 copper stranded 90 C metal-clad to b1: receptacle"),
		"singles with their colours": `${mains}cable loose singles 12 AWG stranded 75 C, black hot, white neutral, green ground\ncircuit c from LC breaker 20 A by loose\n  9 ft to b1: receptacle\n`,
		"own conductors line by line": `${mains}cable trio copper solid 75 C\n  brown hot 14 AWG\n  blue neutral 14 AWG\n  green-yellow ground 14 AWG\ncircuit c from LC breaker 15 A by trio\n  9 ft to r1: receptacle\n`,
		"thick ones": `plan "x"\n  rules building\ninlet pole 100 A 120/240 V\npanel LC main 100 A 120/240 V from pole by 1/0-3 aluminium, 12 ft\n`,
		"a spare core left capped": `${branch("9 ft by 12-3 to r1: receptacle")}at r1\n  c-1.red capped\n`,
		"two colours of one role": `${bank}cable trio stranded\n  red positive 10 AWG\n  yellow negative 10 AWG\n  black negative 10 AWG\ncircuit c from FB.1 by trio\n  9 ft to l1: light 6 W\n`,
		"re-marked at one end": branch("9 ft white marked red at r1 to r1: receptacle"),
		"partly through another place": `place bay engine-space\nplace attic\n${branch("12 ft, 2 ft through bay to r1: receptacle", "3 m through attic to r2: receptacle")}`,
		"bundled with others": branch("12 ft bundled 5 to r1: receptacle"),
		"in flexible cord": branch("12 ft by cord 12-3 to r1: receptacle"),
		"a length that is not known": branch("? to r1: receptacle", "to r2: receptacle", "? ft to r3: receptacle"),
	},
	ends: {
		"how each is made up": ["bare", "fork", "ring", "ferrule", "lug", "pin"].reduce(
			(text, end, index) =>
				`${text}circuit c${index} from LC breaker 20 A by 12-2 stranded\n  9 ft to x${index}: receptacle 20 A\nat x${index}\n  c${index}-1.black ${end} on x${index}.hot\n`,
			mains,
		),
		"which screw, two under one": `${branch("9 ft to r1: receptacle", "3 ft to r2: receptacle")}at r1\n  c-1.black, c-2.black on r1.brass\n`,
		"capped, loose, cut off": `${branch("9 ft by 12-3 to r1: receptacle", "9 ft to wall: end cut off")}at r1\n  c-1.red loose\nat LC\n  c-1.red capped\n`,
		"two in one bar port": `${branch("9 ft to r1: receptacle")}circuit d from LC breaker 15 A by 14-2\n  9 ft to r9: receptacle\nat LC\n  c-1.white, d-1.white on LC.neutral.3\n`,
		"what holds the wire": branch("9 ft to r1: receptacle terminals plate", "3 ft to r2: receptacle terminals port"),
	},
	joints: {
		"connector, ports, sizes, current": `${branch("9 ft to r1: receptacle", "3 ft to r2: receptacle")}at r1\n  join c-1.white, c-2.white, r1.neutral by lever 5, 24 AWG to 12 AWG, 32 A\n`,
		"two in one port": `${branch("9 ft to r1: receptacle", "3 ft to r2: receptacle")}at r1\n  join c-1.white, (c-2.white r1.neutral) by lever 3\n`,
		"jumpers, tabs": `${branch("9 ft by 12-3 to r1: receptacle no hot tab, no neutral tab")}at r1\n  link r1.neutral.lower, r1.neutral.upper by 12 AWG white\n`,
	},
	box: {
		"volume, metal, clamps, gangs, cover": branch("9 ft to j1: box 34 cuin metal clamps inside gangs 2 cover blank"),
		"of plastic, weatherproof": branch("9 ft to j1: box plastic cover weatherproof"),
		partition: branch("9 ft to j1: box partition\n    r1: receptacle\n    r2: receptacle"),
		"the usual one of a plan": `plan "x"\n  box metal 18 cuin\n${branch("9 ft to r1: receptacle")}`,
		"one in and many out": branch(
			"9 ft to j1: box",
			"from j1\n    4 ft to r2: receptacle",
			"from j1\n    4 ft to r3: receptacle",
		),
	},
	panel: {
		"main or lugs, legs": `${twoLegs}feed f from LC breaker two-pole 30 A by 10-3\n  9 ft to SP: panel lugs only, legs 2\n`,
		"bridged legs, halves, two-pole, tied": `inlet shore 30 A 120 V\npanel LC main 30 A, legs 2, bridged legs from shore by 10-2, 12 ft\n  slot 1A: breaker 15 A\n  slot 1B: breaker 15 A\n  slot 3: breaker 20 A tied LC.5\n  slot 5: breaker 20 A\n`,
		"ground-fault breaker": panel("slot 1: ground-fault-breaker 20 A trip 5 mA"),
		"interrupting ratings, terminal temperature": `inlet shore 30 A 120 V\npanel LC main 30 A interrupting 10 kA terminals 75 C from shore by 10-2, 12 ft\n  slot 1: breaker 20 A interrupting 10 kA\n`,
		"what a port takes, of which metal": panel("NB: neutral-bar 8 takes 2 copper only largest 1/0"),
		"bar bonded or isolated, screw or strap": panel("NB: neutral-bar 8 isolated", "no bonding screw"),
		"spare spaces": "panel LC main 30 A, 8 spaces\n",
	},
	"ground and bond": {
		"chassis, frame, rod, hull": `${mains}chassis van\nframe shell\nrod earth\nhull boat\nbond a from LC.ground by single 8 AWG green\n  6 ft to van\nbond b from LC.ground by single 8 AWG green\n  6 ft to shell\n`,
		"galvanic isolator":
			"inlet shore 30 A 120 V\npanel LC main 30 A\nfeed f from shore by 10-2\n  2 ft to GI: galvanic-isolator 30 A fail-safe\n  4 ft to LC\n",
		"joined by a wire":
			"generator gen 30 A 120 V floating\npanel LC main 30 A from gen by 10-2, 12 ft\nat LC\n  link LC.neutral.3, LC.ground.3 by 8 AWG white\n",
	},
	sources: {
		"shore and its earth": metric("panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3 m\n").replace(
			"230 V",
			"230 V TT",
		),
		"split-phase, floating": `${twoLegs}inlet dock 30 A 120 V floating\n`,
		generator: "generator gen 2 kW 120 V floating\n",
		"inverter-charger":
			"inverter-charger inv 2000 W 12 V / 120 V, surge 4 kW, efficiency 88 %, pass-through 30 A, cut-off 10.5 V, transfers hot alone, bonds neutral when inverting\n",
		"transfer by hand": "transfer-switch TS two-pole 30 A\n",
		"utility service": 'plan "x"\n  rules building\nutility grid 100 A 120/240 V\n',
	},
	"ground-fault protection": {
		"trip level": branch("9 ft to g1: gfci 20 A trip 5 mA"),
		"a whole board, with a delay": metric(
			"feed f from shore by 3G2.5\n  2 m to RC: residual-current-device two-pole 40 A trip 100 mA delay 40 ms\n  2 m to DB: panel main 16 A two-pole\n",
		),
		"in series": branch("9 ft to g1: gfci", "from g1.load\n    9 ft to g2: gfci"),
	},
	switching: {
		"three-way, four-way": branch(
			"9 ft to s1: switch three-way",
			"9 ft by 12-3 to s2: switch four-way",
			"9 ft to s3: switch three-way",
			"3 ft by 12-2 to l1: light 9 W",
		),
		loop: branch("9 ft to l1: light 9 W", "6 ft white marked black at both ends to s1: switch"),
		"two devices on one": branch("9 ft to s1: switch two-pole", "9 ft to l1..l2: light 9 W each"),
		"relay on two systems": `${mains}${bank}circuit h from LC breaker 15 A by 14-2\n  9 ft to K1: relay 16 A coil 12 V\n  3 ft to h1: heater 900 W\ncircuit q from FB.1 by pair 16 AWG\n  3 ft to th: thermostat 5 A\n  2 ft to K1.coil\n`,
		"dimmer in the negative": direct("9 ft to d1: dimmer 5 A negative", "3 ft to l1: light 6 W"),
		"float and thermostat": direct("9 ft to f1: float-switch 10 A", "3 ft to p1: pump 60 W"),
	},
	"direct current": {
		"battery by cells": bank.replace("lithium 12.8 V 100 Ah", "lithium 4 cells 280 Ah, resistance 2 mohm, limit 200 A"),
		"fuse: class, ratings, distance": bank.replace("fuse 60 A", "fuse class-T 60 A interrupting 20 kA 125 V"),
		"disconnect, shunt, bus": direct(
			"1 ft to D1: disconnect 30 A make 1 kA break 500 A resistance 1 mohm",
			"2 ft to SH: shunt 50 A 50 mV",
			"3 ft to l1: light 6 W",
		),
		"solar modules": "solar roof 200 W, open 22 V, short 11 A, coefficient -0.29 %, coldest -15 C, fuse 15 A\n",
		"alternator, converters":
			"alternator alt 120 A 12 V\ndc-dc-charger dd 30 A 12 V / 12 V\nconverter cv 20 A 24 V / 12 V\n",
		"chassis return": `${bank}chassis van\nfeed e from house.- by single 8 AWG black\n  2 ft to van\ncircuit c from FB.1 by single 16 AWG red\n  9 ft to l1: light 6 W\nfeed r from l1.- by single 16 AWG black\n  2 ft to van\n`,
		"starter cable":
			"battery house flooded 12 V 80 Ah\nfeed crank from house.+ by single 2/0 red\n  4 ft to motor: starter\n",
	},
	loads: {
		"amps, factor, efficiency, duty, surge, lowest volts": branch(
			"9 ft to p1: fridge 150 W motor, power-factor 0.8, efficiency 60 %, duty 50 %, surge 15 A, lowest 100 V",
		),
		"apparent power, surge in watts": branch("9 ft to p1: load 100 VA, surge 900 W"),
		"dedicated, hard-wired, own disconnect": branch(
			"9 ft to h1: heater 1500 W continuous dedicated hard-wired own disconnect",
		),
		"cord-and-plug, use in a day": branch("9 ft to h1: load 900 W cord-and-plug daily 4 h"),
		"240 V without a neutral": `${twoLegs}circuit c from LC breaker two-pole 20 A by 12-2\n  9 ft white marked red at both ends to h1: heater 240 V 3 kW no neutral\n`,
		"several alike": branch("9 ft to l1..l6: light 2 W each", "9 ft to k1..k3: light 6 W together"),
	},
	places: {
		"what they are like":
			"place a dry\nplace b damp\nplace c wet\nplace d outdoor\nplace e engine-space 60 C\nplace g sink 3 ft\nplace h bath\ninlet shore 30 A 120 V in d\n",
		"height of a receptacle": `place g\n${branch("9 ft to r1: receptacle height 18 in in g")}`,
	},
	"stages of the build": {
		"roughed in, slack, tags": `${mains}circuit c roughed in from LC breaker 15 A by 14-2\n  9 ft as c1 slack 8 in to r1: receptacle\n`,
		"a spare cable, coiled up": branch("9 ft as attic-spare to loft: end coiled 6 ft"),
	},
	modes: {
		"sources, loads, transfer": `${branch("9 ft to h1: heater 900 W")}mode winter: shore with h1\n`,
		"without a source": `generator gen 2 kW 120 V bonds neutral to frame\n${mains}mode winter: shore without gen\n`,
	},
};

/** Codes of what is wrong with the text, and not with what it describes. */
const ofTexts = new Set<string>([...planCodes, ...syntaxProblems].map(({ code }) => code));

describe.each(Object.entries(statable))("%s", (_, matters) => {
	test.each(Object.entries(matters))("%s", (_, text) => {
		const told = checkPlan(text, "plan").findings.filter(({ code, level }) => ofTexts.has(code) && level !== "note");
		expect(told.map(({ code, title }) => `${code}: ${title}`)).toEqual([]);
	});
});
