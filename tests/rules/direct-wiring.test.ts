// How things for direct current are joined: sources in a loop, shunts, banks, chassis, disconnects, dimmers and boxes, wrong and nearly wrong.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const bank = `battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 20 A
  6 ft to l1: light 6 W
`;

describe("a source with a post on nothing", () => {
	test("an alternator without a minus", () => {
		checkMarked(`${bank}alternator alt 60 A 14 V
//         ^^^ source-unjoined "The minus of alt leads to nothing, so it gives and takes no current"
feed charge from house.+ by single 4 AWG red
  within 7 in to F2: fuse ANL 80 A
  4 ft to alt.+
`);
	});

	test("its case is its minus where a run to the chassis says so", () => {
		checkRight(`${bank}alternator alt 60 A 14 V
chassis frame
feed charge from house.+ by single 4 AWG red
  within 7 in to F2: fuse ANL 80 A
  4 ft to alt.+
feed case from alt.- by single 4 AWG black
  1 ft to frame
bond minus-frame from house.- by single 4 AWG black
  1 ft to frame
`);
	});

	test("a charger on a circuit of the mains", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit charge from LC breaker 15 A by 14-2
  5 ft to ch: charger 20 A
//        ^^ source-unjoined "The minus of ch leads to nothing"
${bank}feed filled from house.+ by single 10 AWG red
  within 7 in to F2: fuse 30 A
  3 ft to ch.+
`);
	});

	test("a solar module", () => {
		checkMarked(`solar m1 200 W, open 22 V, short 11 A
//    ^^ source-unjoined "The minus of m1 leads to nothing"
solar-controller mppt 20 A 12 V, limit 50 V
${bank}feed sun from m1.+ by single 10 AWG red
  10 ft to D1: disconnect 30 A
  2 ft to mppt.in.+
feed charge from house.+, house.- by pair 10 AWG
  within 7 in to F2: fuse 30 A
  4 ft to mppt.out
`);
	});

	test("a second battery by its plus alone, and by none of its posts", () => {
		checkMarked(`${bank}battery second agm 12 V 100 Ah
//      ^^^^^^ source-unjoined "The minus of second leads to nothing"
battery spare agm 12 V 100 Ah
//      ^^^^^ source-unjoined "No wire is on either post of spare"
feed over from house.+ by single 4 AWG red
  within 7 in to F2: fuse 80 A
  2 ft to F3: fuse 80 A
  7 in to second.+
`);
	});

	test("a converter of which only one side is told is a note", () => {
		const { findings } = checkRight(`${bank}converter step 10 A 12 V / 24 V
feed up from house.+, house.- by pair 12 AWG
  within 6 in to F2: fuse 30 A
  3 ft to step.in
`);
		expect(findings.filter(({ code }) => code === "source-unjoined").map(({ level }) => level)).toEqual(["note"]);
	});

	test("a plan that is no more than a battery and a bus is not finished, not wrong", () => {
		checkRight(`battery house agm 12 V 100 Ah
feed plus from house.+ by single 6 AWG red
  6 in to F1: fuse class-T 60 A
  1 ft to plus: bus 250 A
`);
	});
});

describe("the chassis of a van", () => {
	const van = (bonds: string) => `battery house lithium 12.8 V 280 Ah
chassis frame
//      ^^^^^
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
feed plus from house.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 125 A
  2 ft to inv.+
feed minus from house.- by single 2 AWG black
  2 ft to inv.-
circuit desk from inv.out by 14-2
  3 ft to d1: receptacle
${bonds}`;
	const case4 = "bond case from inv.case by single 4 AWG green\n  2 ft to frame\n";

	test("with the minus on it by a lead one size thinner than the thickest positive", () => {
		checkRight(van(`${case4}bond low from house.- by single 4 AWG black\n  1 ft to frame\n`));
	});

	test("by a lead two sizes thinner", () => {
		checkMarked(
			van(`${case4}bond low from house.- by single 6 AWG black
  1 ft to frame
//        ^^^^^ chassis-bond-small "low-1.black joins the minus to frame with 6 AWG, beside plus-2.red of 2 AWG: 4 AWG at least"
`),
		);
	});

	test("thinner than 8 AWG where there is mains", () => {
		const { findings } = checkMarked(`battery house lithium 12.8 V 100 Ah
chassis frame
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
bond board from LC.ground by single 8 AWG green
  6 ft to frame
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 15 A
  6 ft to p1: pump 60 W
bond low from house.- by single 10 AWG black
  1 ft to frame
//        ^^^^^ chassis-bond-small "8 AWG at least"
`);
		expect(findings.find(({ code }) => code === "chassis-bond-small")?.level).toBe("error");
	});

	test("the case of a machine by a lead too thin", () => {
		checkMarked(
			van(`bond case from inv.case by single 8 AWG green
  2 ft to frame
//        ^^^^^ chassis-bond-small "case-1.green joins the case of inv to frame with 8 AWG"
bond low from house.- by single 4 AWG black
  1 ft to frame
`),
		);
	});

	test("without the minus on it", () => {
		checkMarked(
			van(case4).replace(
				"//      ^^^^^",
				'//      ^^^^^ chassis-bond-missing "The minus of house is not joined to frame"',
			),
		);
	});
});

describe("a string without a disconnect", () => {
	const string = (off: string) => `solar roof 200 W, open 22 V, short 11 A
solar-controller mppt 20 A 12 V, limit 75 V
//               ^^^^
battery house lithium 12.8 V 100 Ah
feed sun from roof.+, roof.- by pair 10 AWG
  ${off}to mppt.in
feed charge from house.+, house.- by pair 10 AWG
  within 7 in to F1: fuse 30 A
  4 ft to mppt.out
`;
	test("a disconnect, a breaker and a two-pole switch will do, a fuse will not", () => {
		checkRight(string("12 ft to D1: disconnect 30 A\n  2 ft "));
		checkRight(string("12 ft to Q1: breaker 20 A\n  2 ft "));
		for (const off of ["14 ft ", "1 ft to F2: fuse 20 A\n  12 ft "])
			checkMarked(string(off).replace("^^^^", '^^^^ disconnection-missing "Nothing cuts mppt off from roof by hand"'));
	});

	test("a battery that only its fuse cuts off is a note", () => {
		const { findings } = checkPlan(bank, "plan");
		expect(findings.filter(({ code }) => code === "disconnection-missing").map(({ level }) => level)).toEqual(["note"]);
	});
});

describe("a dimmer", () => {
	const dimmed = (word: string, dimmer = "dimmer") => `battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 20 A
  6 ft to d1: ${dimmer}
  3 ft to l1: light 6 W
  3 ft to x1: ${word}
//        ^^
`;
	test.each(["light 4 W", "load 4 W"])("before a %s is right", (word) => {
		checkRight(dimmed(word));
	});

	test.each(["usb-outlet 18 W", "pump 30 W", "outlet-12v 60 W", "fridge 40 W"])("before a %s", (word) => {
		checkMarked(dimmed(word).replace("^^", '^^ receptacle-dimmed "x1 is fed through the dimmer d1"'));
	});

	test("in the negative as well", () => {
		checkMarked(dimmed("usb-outlet 18 W", "dimmer negative").replace("^^", "^^ receptacle-dimmed"));
	});
});

describe("a fuse in the negative", () => {
	const pair = (second: number, more = "") => `battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 12 AWG red
  within 6 in to F1: fuse 20 A
  6 ft to l1: light 6 W
feed minus from house.- by single 12 AWG black
  within 6 in to F2: fuse ${second} A
//               ^^
  6 ft to l1.-
${more}`;
	test("is right where each pole of an ungrounded pair has one", () => {
		checkRight(pair(20));
	});

	test("is wrong on a minus that is on the chassis, or smaller than that of the plus", () => {
		checkMarked(
			pair(20, "chassis frame\nbond low from house.- by single 8 AWG black\n  1 ft to frame\n").replace(
				"^^",
				"^^ negative-fused",
			),
		);
		checkMarked(pair(10).replace("^^", "^^ negative-fused"));
	});
});

describe("a box in which both systems meet", () => {
	const met = (box: string, more = "j1") => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
battery house lithium 12.8 V 100 Ah
circuit bunks from LC breaker 20 A by 12-2
  14 ft to j1: box ${box}
//         ^^
  6 ft to b1: receptacle
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 10 A
  9 ft to ${more}
  3 ft to o1: outlet-12v 60 W
`;
	test("needs a partition; black hot beside black negative is told", () => {
		checkRight(met("partition"));
		checkRight(met("metal", "j2: box"));
		checkMarked(
			met("plastic").replace(
				"^^",
				'^^ systems-unseparated "both have a black wire: bunks-1.black is a hot, small-2.black a negative"',
			),
		);
	});

	test("a machine with both sides is made for it", () => {
		checkRight(`battery house lithium 12.8 V 100 Ah
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
feed plus from house.+ by single 2 AWG red
  within 6 in to F1: fuse class-T 125 A
  2 ft to inv.+
feed minus from house.- by single 2 AWG black
  2 ft to inv.-
circuit desk from inv.out by 14-2
  3 ft to d1: receptacle
`);
	});

	test("a hot joined with a negative of its colour", () => {
		const { findings } = checkPlan(
			`${met("plastic")}at j1
  join bunks-1.black, small-2.black
`,
			"plan",
		);
		expect(findings.filter(({ level }) => level === "danger").map(({ code }) => code)).toContain("systems-mixed");
	});
});

describe("two batteries that cancel each other", () => {
	const row = (link: string, back: string, marks = "") => `battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
${link}feed there from A1.+ by single 10 AWG red
  bolted to F1: fuse 30 A
  bolted to D1: disconnect 60 A
  1 ft to plus: bus 100 A
feed back from ${back} by single 10 AWG black
  1 ft to minus: bus 100 A
${marks}circuit lamp from plus, minus by pair 14 AWG
  bolted to F2: fuse 5 A
  3 ft to l1: light 6 W 24 V
`;

	test("minus on minus", () => {
		checkMarked(
			row(
				`//      ^^ polarity-dc-reversed "A1 and A2 cancel each other: minus is on minus between them"
feed middle from A1.- by single 10 AWG black
  1 ft to A2.-
`,
				"A2.+",
				"//        ^^^^^ protection-missing\n//        ^^^^^ colour-misleading\n",
			),
		);
	});

	test("plus to minus", () => {
		checkRight(row("feed middle from A1.- by single 10 AWG black\n  1 ft to A2.+\n", "A2.-"));
	});

	test("two banks with one minus and loads of their own", () => {
		checkRight(`battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
feed one from A1.+, A1.- by pair 12 AWG
  bolted to F1: fuse 20 A
  bolted to D1: disconnect 60 A
  3 ft to l1: light 6 W
feed two from A2.+, A2.- by pair 12 AWG
  bolted to F2: fuse 20 A
  bolted to D2: disconnect 60 A
  3 ft to l2: light 6 W
feed tie from A1.- by single 12 AWG black
  1 ft to A2.-
`);
	});
});

describe("a galvanic isolator", () => {
	const jetty = (more: string) => `plan "Jetty"
  rules boat
inlet dock 30 A 120 V
feed supply from dock by triplex 10 AWG
  2 ft to GI: galvanic-isolator 30 A
//        ^^
  6 ft to AC
panel AC main 30 A two-pole 30 mA
hull plate
bond mains-ground from AC.ground by single 8 AWG green
  6 ft to plate
circuit lamps from AC breaker 15 A by triplex 14 AWG
  6 ft to l1: light 9 W
${more}`;
	test("with all grounds of the boat behind it", () => {
		checkRight(jetty(""));
	});

	test("gone round by way of the hull", () => {
		checkMarked(
			jetty("bond dock-ground from dock.ground by single 8 AWG green\n  4 ft to plate\n").replace(
				"^^",
				'^^ isolator-bypassed "The ground goes round GI"',
			),
		);
	});

	test("with the hull on the shore's side of it", () => {
		checkMarked(
			jetty("")
				.replace("//        ^^\n", "")
				.replace("from AC.ground", "from dock.ground")
				.replace("to plate\n", `to plate\n//        ^^^^^ isolator-bypassed "plate is on the shore's side of GI"\n`),
		);
	});

	test("gone round by a wire from the inlet to the panel", () => {
		checkMarked(
			jetty("bond round from dock.ground by single 8 AWG green\n  6 ft to AC.ground\n").replace(
				"^^",
				'^^ isolator-bypassed "by way of round-1.green"',
			),
		);
	});
});
