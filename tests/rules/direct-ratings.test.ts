// What parts for direct current are made for: both sides of each limit, in amperes and in volts, and what is said where a figure is missing.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

/** Titles of the notes of a rule. */
function notesOf(text: string, code: string): readonly string[] {
	return checkPlan(text, "plan").findings.flatMap((finding) =>
		finding.code === code && finding.level === "note" ? [finding.title] : [],
	);
}

describe("a bus behind its fuse", () => {
	const plan = (rating: number) => `battery house lithium 12.8 V 280 Ah
feed plus from house.+ by single 4/0 red
  within 7 in to F1: fuse class-T 200 A
  1 ft to plus: bus ${rating} A
`;
	test("of the fuse's rating is right", () => {
		checkRight(plan(200));
	});

	test("of one ampere less is too small", () => {
		checkMarked(
			plan(199).replace(
				"199 A\n",
				`199 A
//        ^^^^ device-undersized "plus is made for 199 A, and F1 lets 200 A through"
`,
			),
		);
	});

	test("of no rating is not checked, and said so", () => {
		expect(notesOf(plan(200).replace(" 200 A\n", " 200 A\n").replace("bus 200 A", "bus"), "device-undersized")).toEqual(
			["Whether plus bears what flows through it is not checked: the rating is missing"],
		);
	});
});

describe("a bus behind the fuses of two batteries", () => {
	const plan = (rating: number) => `battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
feed a1 from A1.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 100 A
  2 ft to plus: bus ${rating} A
//        ^^^^
feed a2 from A2.+ by single 2 AWG red
  within 7 in to F2: fuse class-T 100 A
  2 ft to plus
feed b1 from A1.- by single 2 AWG black
  2 ft to minus: bus 250 A
feed b2 from A2.- by single 2 AWG black
  2 ft to minus
`;
	test("carries both", () => {
		checkRight(plan(200));
		checkMarked(plan(150).replace("^^^^", '^^^^ device-undersized "F1 and F2 let 200 A through together"'));
	});
});

describe("a tie between two banks", () => {
	test("carries what one of its two fuses lets through, not both", () => {
		checkRight(`battery engine agm 12 V 100 Ah
battery house agm 12 V 100 Ah
feed tie from engine.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 150 A
  2 ft to D1: disconnect 150 A
  2 ft to F2: fuse class-T 150 A
  within 7 in to house.+
feed minus from engine.- by single 2 AWG black
  2 ft to house.-
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F3: fuse 15 A
  3 ft to l1: light 6 W
`);
	});
});

describe("a shunt in the minus", () => {
	const plan = (rating: number) => `battery house lithium 12.8 V 280 Ah
feed plus from house.+ by single 4/0 red
  within 7 in to F1: fuse class-T 200 A
  1 ft to plus: bus 250 A
feed back from house.- by single 4/0 black
  bolted to SH: shunt ${rating} A
  1 ft to minus: bus 250 A
feed small from plus, minus by pair 12 AWG
  bolted to F2: fuse 15 A
  3 ft to l1: light 6 W
`;
	test("carries what the bank's own fuse lets through", () => {
		checkRight(plan(200));
		checkMarked(
			plan(100).replace(
				"100 A\n",
				`100 A
//          ^^ device-undersized "SH is made for 100 A, and F1 lets 200 A through"
`,
			),
		);
	});
});

describe("a switch in a lamp's plus", () => {
	const plan = (rating: number) => `battery house lithium 12.8 V 280 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  3 ft to s1: switch ${rating} A
  3 ft to l1: light 128 W
`;
	test("is judged by what it switches, not by the fuse", () => {
		checkRight(plan(10));
		checkMarked(
			plan(9).replace(
				"9 A\n",
				`9 A
//        ^^ device-undersized "s1 is made for 9 A, and l1 behind it draws 10 A"
`,
			),
		);
	});
});

describe("a fuse and what hangs on it", () => {
	const plan = (watts: number, more = "") => `battery house lithium 12.8 V 280 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 10 A
//               ^^
  3 ft to l1: light ${watts} W${more}
`;
	test("may be used to its rating", () => {
		checkRight(plan(128));
		checkMarked(
			plan(129).replace("^^\n", '^^ circuit-overloaded "The loads behind F1 count 10.1 A, and it carries 10 A"\n'),
		);
	});

	test("for hours to four fifths of it", () => {
		checkRight(plan(102, " continuous"));
		checkMarked(plan(104, " continuous").replace("^^\n", "^^ circuit-overloaded\n"));
	});

	test("a load without a figure is a note", () => {
		expect(notesOf(plan(10).replace("light 10 W", "light"), "circuit-overloaded")).toEqual([
			"Load of F1 not checked: the power of l1 is missing",
		]);
	});

	test("the ways of a block may add up to more than its feeder, as long as the loads do not", () => {
		const block = (watts: number) => `battery house lithium 12.8 V 280 Ah
fuse-block FB 40 A
${[1, 2, 3, 4, 5, 6, 7, 8].map((way) => `  slot ${way}: fuse 10 A\n`).join("")}feed small from house.+, house.- by pair 8 AWG
  within 6 in to F1: fuse 40 A
  2 ft to FB
${[1, 2, 3, 4, 5, 6, 7, 8].map((way) => `circuit c${way} from FB.${way} by pair 14 AWG\n  6 ft to l${way}: light ${watts} W\n`).join("")}`;
		expect(notesOf(block(60), "circuit-overloaded")).toEqual([]);
		// Not everything runs at once: that is for the builder to weigh.
		checkRight(block(70));
		expect(notesOf(block(70), "circuit-overloaded")).toEqual(["The loads behind F1 count 43.8 A, and it carries 40 A"]);
	});

	test("what runs for hours behind a feeder does run at once", () => {
		checkMarked(`battery house lithium 12.8 V 280 Ah
fuse-block FB 40 A
  slot 1: fuse 15 A
  slot 2: fuse 15 A
feed small from house.+, house.- by pair 10 AWG
  within 6 in to F1: fuse 20 A
//               ^^ circuit-overloaded "The loads behind F1 count 27.3 A"
  2 ft to FB
circuit c1 from FB.1 by pair 14 AWG
  6 ft to l1: light 140 W continuous
circuit c2 from FB.2 by pair 14 AWG
  6 ft to l2: light 140 W continuous
`);
	});

	test("a charger's fuse carries what it gives", () => {
		const charge = (rating: number) => `battery house lithium 12.8 V 100 Ah
alternator alt 60 A 14 V
feed charge from house.+, house.- by pair 4 AWG
  within 7 in to F1: fuse ANL ${rating} A
//               ^^
  4 ft to alt
`;
		checkRight(charge(60));
		checkMarked(
			charge(50).replace("^^\n", '^^ circuit-overloaded "alt gives up to 60 A through F1, which carries 50 A"\n'),
		);
	});

	test("batteries in parallel carry together", () => {
		checkRight(`battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
feed a1 from A1.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 100 A
  2 ft to plus: bus 250 A
feed a2 from A2.+ by single 2 AWG red
  within 7 in to F2: fuse class-T 100 A
  2 ft to plus
feed b1 from A1.- by single 2 AWG black
  2 ft to minus: bus 250 A
feed b2 from A2.- by single 2 AWG black
  2 ft to minus
inverter inv 1500 W 12 V / 120 V, bonds neutral when inverting
feed up from plus, minus by pair 1/0 AWG
  2 ft to inv.+
circuit desk from inv.out by 14-2
  3 ft to d1: receptacle
`);
	});
});

describe("volts that a device opens", () => {
	const bank = (volts: number, fuse: string) => `battery bank lithium ${volts} V 100 Ah, fault 2 kA
feed plus from bank.+ by single 2 AWG red
  within 7 in to F1: fuse ${fuse} interrupting 20 kA
//               ^^
  1 ft to plus: bus 250 A
feed minus from bank.- by single 2 AWG black
  1 ft to minus: bus 250 A
`;
	test("those of the battery, give or take what a nominal voltage does", () => {
		checkRight(bank(12.8, "class-T 100 A 12 V"));
		checkRight(bank(51.2, "class-T 100 A 48 V"));
		checkRight(bank(51.2, "ANL 100 A 58 V"));
		checkMarked(
			bank(51.2, "class-T 100 A 32 V").replace(
				"^^\n",
				'^^ voltage-rating-low "F1 has 51.2 V to open, and is made for 32 V"\n',
			),
		);
	});

	test("by its class where nothing is marked, and then a warning", () => {
		checkRight(bank(25.6, "ANL 100 A"));
		const { findings } = checkMarked(
			bank(51.2, "ANL 100 A").replace("^^\n", '^^ voltage-rating-low "typical for 32 V by its class"\n'),
		);
		expect(findings.find(({ code }) => code === "voltage-rating-low")?.level).toBe("warning");
	});

	test("four batteries in series add up", () => {
		checkMarked(`battery B1..B4 lithium 12.8 V 100 Ah
feed m1 from B1.- by single 2 AWG black
  1 ft to B2.+
feed m2 from B2.- by single 2 AWG black
  1 ft to B3.+
feed m3 from B3.- by single 2 AWG black
  1 ft to B4.+
feed up from B1.+, B4.- by pair 12 AWG
  within 6 in to Q1: breaker 20 A 32 V
//               ^^ voltage-rating-low "Q1 has 51.2 V to open"
  3 ft to l1: light 6 W 48 V
`);
	});

	test("of a string on the coldest day", () => {
		checkMarked(`solar m1 200 W, open 45 V, short 11 A
solar-controller mppt 20 A 12 V, limit 100 V
battery house lithium 12.8 V 100 Ah
feed sun from m1.+, m1.- by pair 10 AWG
  10 ft to D1: disconnect 30 A 48 V
//         ^^ voltage-rating-low "D1 has 56.3 V to open on the coldest day"
  2 ft to mppt.in
feed charge from house.+, house.- by pair 10 AWG
  within 7 in to F1: fuse 30 A
  4 ft to mppt.out
`);
	});

	test("unmarked above 35 V: a note that names them all", () => {
		expect(notesOf(bank(51.2, "100 A"), "voltage-rating-low")).toEqual([
			"Whether F1 can open the volts of the system is not checked: what it is marked for is missing",
		]);
		expect(notesOf(bank(25.6, "100 A"), "voltage-rating-low")).toEqual([]);
	});
});

describe("what a class interrupts at the volts of the bank", () => {
	const bank = (volts: number, fault: number) => `battery bank lithium ${volts} V 100 Ah, fault ${fault} A
feed plus from bank.+ by single 2 AWG red
  within 7 in to F1: fuse cube 100 A interrupting 10 kA
//               ^^
  1 ft to plus: bus 250 A
`;
	test("all of it on 12 V, less on 24 V", () => {
		checkRight(bank(12.8, 9000));
		checkRight(bank(25.6, 5000));
		checkMarked(
			bank(25.6, 5001).replace("^^\n", '^^ interrupting-rating-low "opens its 10000 A at 14 V, here 5000 A"\n'),
		);
	});

	test("what is missing is said once for all devices of a bank", () => {
		const text = `battery bank lithium 12.8 V 100 Ah
feed one from bank.+, bank.- by pair 12 AWG
  within 7 in to F1: fuse 15 A
  3 ft to l1: light 6 W
feed two from bank.+, bank.- by pair 12 AWG
  within 7 in to F2: fuse 15 A
  3 ft to l2: light 6 W
`;
		expect(notesOf(text, "interrupting-rating-low")).toEqual([
			"Whether F1 and F2 can open a short circuit is not checked: the fault current of bank and the interrupting rating of F1 and F2 are not said",
		]);
	});
});

describe("a string on the coldest day", () => {
	const sun = (facts: string, limit: string) => `solar m1 200 W, open 40 V, short 11 A${facts}
solar-controller mppt 20 A 12 V${limit}
//               ^^^^
battery house lithium 12.8 V 100 Ah
feed sun from m1.+, m1.- by pair 10 AWG
  10 ft to D1: disconnect 30 A
  2 ft to mppt.in
feed charge from house.+, house.- by pair 10 AWG
  within 7 in to F1: fuse 30 A
  4 ft to mppt.out
`;
	test("by the table where the coldest day alone is said", () => {
		checkRight(sun(", coldest 0 C", ", limit 44 V"));
		checkMarked(sun(", coldest -1 C", ", limit 44 V").replace("^^^^", "^^^^ string-voltage-high"));
	});

	test("by the module's own coefficient where both are", () => {
		checkRight(sun(", coldest -15 C, coefficient -0.3 %", ", limit 44.8 V"));
		checkMarked(
			sun(", coldest -16 C, coefficient -0.3 %", ", limit 44.8 V").replace("^^^^", "^^^^ string-voltage-high"),
		);
	});

	test("by the coldest row where nothing is said", () => {
		checkRight(sun("", ", limit 50 V"));
		checkMarked(sun("", ", limit 49 V").replace("^^^^", '^^^^ string-voltage-high "on the coldest day 50 V"'));
	});

	test("a limit that is missing is a note", () => {
		expect(notesOf(sun("", ""), "string-voltage-high")).toEqual([
			"Whether mppt bears the 50 V of its string on the coldest day is not checked: its limit is missing",
		]);
	});
});
