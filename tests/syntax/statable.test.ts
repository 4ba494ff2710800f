// What a builder must be able to state: each matter with the words for it, read without a finding.
import { describe, expect, it } from "vitest";
import { readText } from "../../src/syntax/read.ts";
import { compact } from "./compact.ts";

const chain = (...hops: string[]) => `circuit c from LC.1 by 12-2\n${hops.map((hop) => `  ${hop}\n`).join("")}`;
const box = (...landings: string[]) => `at b1\n${landings.map((landing) => `  ${landing}\n`).join("")}`;
const thing = (head: string, ...parts: string[]) => `${head}\n${parts.map((part) => `  ${part}\n`).join("")}`;

const statable: Record<string, Record<string, string>> = {
	cable: {
		"count, size, material, stranding, insulation, jacket": chain(
			"9 ft by 3x2.5 copper stranded 90 C jacket rubber to b1",
		),
		"single conductors with their colours": chain(
			"9 ft by single 4/0 red to b1",
			"9 ft by single #6 green-yellow to b2",
		),
		"aluminium, and a metric gauge": chain("9 ft by single 35 mm2 aluminium to b1"),
		"own types with own colours": thing("cable trio copper solid 75 C", "brown hot 14 AWG", "blue neutral 14 AWG"),
		"own type with equal cores on one line": "cable trio 3 cores 14 AWG red red black",
		"a spare core left capped": box("c-1.red capped"),
		"re-marked at both ends, or at one": chain(
			"9 ft white marked red at both ends to b1",
			"9 ft white marked black at b1, black marked white at LC to b2",
		),
		"two colours of one role": thing(
			"cable pair",
			"red positive 10 AWG",
			"yellow negative 10 AWG",
			"black negative 10 AWG",
		),
		"partly through another place": chain("12 ft, 2 ft through engine-bay to b1", "3 m through attic to b2"),
		"bundled with others": chain("12 ft bundled 5 to b1"),
		"in flexible cord": chain("12 ft by cord 10-3 to b1"),
		"boat cable and pairs": chain(
			"1 m by triplex 14 AWG to b1",
			"1 m by duplex 14 AWG to b2",
			"1 m by pair 6 AWG to b3",
		),
		"not known": chain("? by ? to b1", "? ft to b2", "to b3"),
	},
	ends: {
		"how an end is made up": box(
			...["bare", "solid", "fork", "ring", "ferrule", "lug", "pin"].map((end) => `c-1.black ${end} on b1.hot`),
		),
		"which screw, plate, cage, stud, port": box(
			"c-1.black on b1.hot.plate",
			"c-1.white on b1.neutral.screw",
			"c-1.bare on GB.3",
		),
		"two conductors under one terminal": box("c-1.black, c-2.black ring on b1.hot"),
		"capped, loose": box("c-1.black capped", "c-1.white, c-1.bare loose"),
		"cut off in a wall with no box": chain("9 ft to wall: end"),
		"several neutrals or grounds in one port": box("c-1.white, c-2.white on NB.3"),
		"the second core of a colour, an end of a cable that meets a box twice": box(
			"c-1.black(2) on b1.hot",
			"c-1@LC.black on b1.hot",
		),
	},
	joints: {
		"by connector with ports, sizes and rated current": box(
			"join c-1.white, c-2.white, b1.neutral by lever 3 ports 24 AWG 12 AWG 32 A",
			"join c-1.black c-2.black by push-in 4",
			"join c-1.bare c-2.bare by twist-on",
			"join c-1.red c-2.red by crimp",
		),
		"spare ports": box("join c-1.white, c-2.white by lever 5"),
		"two conductors in one port": box("join c-1.white, (c-2.white c-3.white) by lever 3"),
		"jumpers between terminals": box("link b1.hot, b2.hot by 12 AWG black"),
		"break-off tab removed": chain("9 ft to b1: receptacle no hot tab", "9 ft to b2: receptacle no neutral tab"),
	},
	box: {
		"volume, metal, clamps, gangs": chain(
			"9 ft to j1: box 34 cuin metal clamps inside gangs 2",
			"9 ft to j2: box 500 cm3 plastic",
		),
		"several devices in it": "box j1 34 cuin\n  r1: receptacle\n  s1..s3: switch\n",
		"blank cover, partition, weatherproof": thing(
			"box j1 weatherproof no partition",
			"cover blank metal",
			"partition metal",
		),
		"cover and frame that must be bonded": thing("box j1 metal", "cover metal", "frame metal"),
		"one cable in and many out":
			"circuit c from LC.1 by 12-2\n  9 ft to j1: box\n  from j1\n    3 ft to b1\n  from j1\n    4 ft to b2\n",
	},
	panel: {
		"main or lugs only, legs": "panel LC main 50 A 120/240 V\npanel SP lugs only, legs 1\n",
		"which slot is on which leg, bridged legs": thing("panel LC main 30 A", "slot 1: breaker 20 A", "bridged legs"),
		"tandem halves": thing("panel LC", "slot 1A: breaker 15 A", "slot 1B: breaker 20 A"),
		"two-pole and handle-tied": thing("panel LC", "slot 3-5: breaker two-pole 30 A", "slot 7: breaker 20 A tied LC.9"),
		"ground-fault breaker with its neutral lead": thing(
			"panel LC",
			"slot 1: ground-fault-breaker 20 A trip 5 mA neutral lead",
		),
		"interrupting rating": thing("panel LC", "slot 1: breaker 20 A interrupting 10 kA"),
		"how many conductors a screw takes, of what metal, how tight": thing(
			"panel LC",
			"neutral: neutral-bar 8 takes 2 copper only largest 1/0",
		),
		"neutral bar bonded or isolated": thing("panel LC", "neutral: neutral-bar 8 isolated", "bonding screw"),
		"no bonding screw or strap": thing("panel LC", "no bonding screw", "no strap"),
		"ground bar on the enclosure": thing("panel LC", "ground: ground-bar 6 on enclosure"),
		"spare spaces": thing("panel LC spaces 8", "slot 5..8: spare"),
		"subpanel and several panels in a row":
			"feed f from LC.1 by 10-3\n  12 ft to SP: panel lugs only\n  9 ft to TP: panel lugs only\n",
		"terminal temperature": "panel LC main 30 A terminals 75 C",
	},
	"ground and bond": {
		"chassis stud, rod, hull, frame": "chassis frame\n  S1: stud M8\nrod earth\nhull shell\n",
		"bonding conductors with sizes": "bond board from LC.ground by single 8 AWG green\n  6 ft to frame.S1\n",
		"galvanic isolator":
			"bond shore-ground from shore.ground by single 10 AWG green\n  2 ft to GI: galvanic-isolator 30 A\n  4 ft to LC.ground\n",
		"joined by a part, in each source mode":
			"inverter inv 2000 W bonds neutral when inverting\ngenerator gen 2 kW bonds neutral to frame\n",
		"joined by a wire": box("link LC.neutral, LC.ground by 8 AWG white"),
	},
	sources: {
		"shore with its bond and earth arrangement": "inlet shore 16 A 230 V earth TT\ninlet dock 30 A 120 V floating\n",
		"split-phase shore": "inlet shore 50 A 120/240 V",
		"generator bonded or floating": "generator gen 2 kW 120 V floating",
		"inverter: rating, surge, efficiency, pass-through, cut-off": thing(
			"inverter-charger inv 2000 W 12 V / 120 V, surge 4 kW, efficiency 88 %, pass-through 30 A, cut-off 10.5 V",
			"supply: breaker 30 A",
			"relay bonds neutral when inverting",
		),
		"transfer of hot alone or of hot and neutral":
			"inverter-charger inv 2 kW transfers hot\ninverter-charger inv2 2 kW transfers hot and neutral\n",
		"manual transfer with one or two poles": "transfer-switch TS two-pole 30 A",
		"utility service": "utility grid 100 A 120/240 V bonds neutral",
	},
	"ground-fault protection": {
		"receptacle, breaker": chain("9 ft to g1: gfci trip 5 mA", "9 ft to g2: receptacle ground-fault"),
		"device for a whole board, trip level, delay":
			"feed f from shore by 3G2.5\n  2 m to RC: residual-current-device two-pole 40 A trip 30 mA delay 40 ms\n",
		"which are in series": "circuit c from LC.1 by 12-2\n  9 ft to g1: gfci\n  from g1.load\n    3 ft to g2: gfci\n",
	},
	switching: {
		"three-way with four-way between": chain(
			"9 ft to s1: switch three-way",
			"9 ft by 12-3 to s2: switch four-way",
			"9 ft to s3: switch three-way",
		),
		"switch loop, power at the light":
			"circuit c from LC.1 by 14-2\n  9 ft to l1: light 9 W\n  from l1\n    6 ft white marked black at both ends to s1: switch\n",
		"two devices on one switch": chain("9 ft to s1: switch two-pole", "9 ft to l1..l2: light 9 W each"),
		"relay with coil and contacts on different systems": thing(
			"relay K1",
			"coil: coil 12 V",
			"contact: contact 16 A 230 V",
		),
		"dimmer with the dimmed output in its negative": chain("9 ft to d1: dimmer 5 A dims negative"),
		"float and thermostat switches": chain("9 ft to f1: switch float 10 A", "9 ft to t1: thermostat"),
	},
	"direct current": {
		"battery by chemistry, cells, capacity, limits":
			"battery house lithium 4 cells 280 Ah, resistance 2 mohm, fault 5 kA, limit 200 A",
		"in series and parallel, each lead":
			"feed a from A1.+ by single 2/0 red\n  18 in to plus: bus 400 A\nfeed s from A1.- by single 2/0 black\n  18 in to A2.+\n",
		"fuse: class, ratings, distance from the post":
			"feed a from A1.+ by single 2/0 red\n  within 7 in to F1: fuse class-T 300 A interrupting 20 kA 125 V\n",
		"bus, shunt, disconnect with ratings": chain(
			"1 ft to SH: shunt 500 A",
			"1 ft to D1: disconnect 300 A make 1 kA break 500 A",
		),
		"solar strings and controllers": thing(
			"array sun open 45 V, short 10 A, -0.29 % per C, coldest -15 C, fuse 15 A",
			"m1..m2: module 200 W open 22.6 V short 10 A",
		),
		"alternator, dc-dc charger, converter":
			"alternator alt 120 A 12 V\ndc-dc-charger dd 30 A 12 V / 12 V\nconverter cv 20 A 24 V / 12 V\n",
		"chassis return, starter cable":
			"feed r from l1.negative by single 16 AWG black\n  2 ft to frame\nfeed starter from A1.+ by single 2/0 red\n  4 ft to motor: starter\n",
		"several poles together, by way of a fuse that is bolted on":
			"feed s from plus, minus by pair 8 AWG\n  bolted to F3: fuse 60 A\n  3 ft to FB\n",
	},
	loads: {
		"watts or amps, power factor, efficiency, duty, surge, lowest volts": chain(
			"9 ft to p1: pump 5 A motor, power-factor 0.8, efficiency 60 %, duty 50 %, surge 15 A, lowest 10.5 V",
		),
		"dedicated, cord-and-plug, hard-wired, own disconnect": chain(
			"9 ft to h1: heater 1500 W continuous dedicated hard-wired own disconnect",
			"9 ft to h2: load 900 W cord-and-plug",
		),
		"hours of use per day": chain("9 ft to l1: light 9 W used 4 h per day"),
		"240 V load without neutral": chain("9 ft to h1: heater 240 V 3 kW no neutral", "9 ft to h2: load 120/240 V 3 kW"),
		"several alike, each or together": chain("9 ft to l1..l6: light 2 W each", "9 ft to k1..k3: light 6 W together"),
	},
	places: {
		"dry, damp, wet, outdoor, engine space, temperature":
			"place a dry\nplace b damp\nplace c wet\nplace d outdoor\nplace e engine-space 60 C\n",
		"distance from a basin, height": "place galley sink 3 ft\nreceptacle r1 height 18 in in galley\n",
		"which rule set governs": "plan\n  region iec\n  rules boat\n",
	},
	"stages of the build": {
		"roughed in":
			"circuit c roughed in from LC.1 by 12-2\n  9 ft to b1\ncircuit d from LC.2 roughed in by 12-2\n  9 ft to b2\n",
		"slack left at each end": chain("9 ft slack 8 in to b1"),
		"a spare cable curled up for later": chain("9 ft spare as attic-spare to loft: end"),
		"tags pinned": chain("9 ft as c-9 to b1"),
	},
};

describe.each(Object.entries(statable))("%s", (_, matters) => {
	it.each(Object.entries(matters))("%s", (_, text) => {
		const { tree, findings } = readText(text, "p");
		expect(findings.map(({ code, title }) => `${code}: ${title}`)).toEqual([]);
		expect(compact(tree)).not.toContain("broken");
	});
});

describe("what is stated reaches the tree", () => {
	it("keeps every word of a line", () => {
		const plain = (text: string) => text.replace(/[^\p{L}\p{N}]/gu, "");
		for (const text of Object.values(statable).flatMap((matters) => Object.values(matters))) {
			const shown = plain(compact(readText(text, "p").tree));
			const words = text.match(/[\p{L}_][\p{L}\p{N}_-]*/gu) ?? [];
			expect(words.filter((word) => !saidOtherwise.has(word) && !shown.includes(plain(word)))).toEqual([]);
		}
	});
});

/** Words that the compact form says in another way. */
const saidOtherwise = new Set(["as"]);
