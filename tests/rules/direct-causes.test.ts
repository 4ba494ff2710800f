// One mistake on the direct-current side is one thing to tell, however much hangs behind it.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked } from "../check-plan.ts";

const bank = `battery house lithium 12.8 V 280 Ah, fault 5 kA
fuse-block FB
  slot 1: fuse 10 A
  slot 2: fuse 15 A
feed main from house.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 150 A interrupting 20 kA
  1 ft to D1: disconnect 300 A
  1 ft to plus: bus 250 A
feed back from house.- by single 2 AWG black
  1 ft to SH: shunt 500 A
  1 ft to minus: bus 250 A
feed small from plus, minus by pair 8 AWG
  bolted to F2: fuse 60 A
  3 ft to FB
`;
const loads = `circuit lights from FB.1 by pair 16 AWG
  3 ft to l1..l9: light 2 W each
circuit pumps from FB.2 by pair 14 AWG
  3 ft to p1..p3: pump 20 W each
`;

describe("loads that get nothing", () => {
	test("behind a loose end they follow from it", () => {
		const { findings } = checkMarked(`${bank}${loads}at l3
  lights-3.red loose
//^^^^^^^^^^^^^^^^^^ end-loose "lights-3.red is on nothing in l3, and live"
// also load-voltage-wrong
`);
		expect(findings.filter(({ code }) => code === "load-voltage-wrong").map(({ title }) => title)).toEqual([
			"l3, l4, l5 and 4 more get nothing: lights-3.red is on nothing in l3, so no positive reaches l3.+",
		]);
	});

	test("behind a loose minus of the block, whatever fuse they are on", () => {
		const { findings } = checkMarked(`${bank}${loads}at minus
  small-1.black loose
//^^^^^^^^^^^^^^^^^^^ end-loose "small-1.black is on nothing in minus"
// also load-voltage-wrong
`);
		expect(findings.filter(({ code }) => code === "load-voltage-wrong")).toHaveLength(1);
	});

	test("behind a capped end it is told once, with the end", () => {
		checkMarked(`${bank}circuit lights from FB.1 by pair 16 AWG
  3 ft to l1..l9: light 2 W each
//        ^^ load-voltage-wrong "l3, l4, l5 and 4 more get nothing: lights-3.black is capped in l3, so no negative reaches l3.-"
at l3
  lights-3.black capped
`);
	});

	test("a joint that leaves one out starves that one alone", () => {
		checkMarked(`${bank}circuit lights from FB.1 by pair 16 AWG
  3 ft to l1..l9: light 2 W each
//        ^^ load-voltage-wrong "l3 gets nothing: no negative reaches l3.-"
at l3
  join lights-3.black, lights-4.black
`);
	});
});

describe("loads on the wrong volts", () => {
	test("are one finding where they hang on one supply and are made for the same", () => {
		checkMarked(`${bank.replace("12.8 V", "25.6 V")}circuit lights from FB.1 by pair 16 AWG
  3 ft to l1..l9: light 2 W each 12 V
//        ^^ load-voltage-wrong "l1, l2, l3 and 6 more are made for 12 V and get 25.6 V"
circuit pumps from FB.2 by pair 14 AWG
  3 ft to p1: pump 20 W 6 V
//        ^^ load-voltage-wrong "p1 is made for 6 V and gets 25.6 V"
  3 ft to p2: pump 20 W 24 V
`);
	});
});

describe("plus and minus exchanged on a hop", () => {
	test("tell all behind it in one line, and the colours as what follows", () => {
		const { findings } = checkMarked(`${bank}circuit lights from FB.1 by pair 16 AWG
  3 ft to l1..l9: light 2 W each
at l3
  join lights-3.red, lights-4.black, l3.-
//     ^^^^^^^^^^^^ polarity-dc-reversed "Positive and negative of l3, l4, l5 and 4 more are exchanged"
  join lights-3.black, lights-4.red, l3.+
// also colour-misleading
`);
		expect(findings.filter(({ level }) => level !== "note")).toHaveLength(2);
	});
});

describe("a fuse close by that is too large", () => {
	test("is told as that, not as the next one being too far", () => {
		checkMarked(`battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 200 A
  5 ft to F2: fuse 60 A
//        ^^ protection-too-large "The 200 A fuse F1 is too large for 6 AWG in plus-2"
  2 ft to bus1: bus 250 A
`);
	});

	test("a short run on to a smaller one is right", () => {
		checkMarked(`battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 2/0 red
  within 7 in to F1: fuse class-T 200 A
  within 18 in by single 6 AWG red to F2: fuse 60 A
  2 ft to bus1: bus 250 A
`);
	});
});

describe("a second battery whose only fuse is that of the first", () => {
	const two = (second: string) => `battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
feed a1 from A1.+ by single 2/0 red
  within 7 in to F1: fuse class-T 150 A
  2 ft to plus: bus 400 A
feed a2 from A2.+ by single 2/0 red
${second}feed b1 from A1.- by single 2/0 black
  2 ft to minus: bus 400 A
feed b2 from A2.- by single 2/0 black
  2 ft to minus
`;
	test("has none", () => {
		checkMarked(
			two(`  2 ft to plus
//        ^^^^ protection-missing "F1 is the fuse of A1"
`),
		);
	});

	test("one of its own too far away is too far", () => {
		checkMarked(
			two(`  5 ft to F2: fuse class-T 150 A
//        ^^ protection-too-far "F2 stands 60 in along the conductor from A2"
  7 in to plus
`),
		);
	});

	test("batteries side by side with one fuse near both need no second", () => {
		checkMarked(two("  7 in to plus\n").replace("2 ft to plus: bus 400 A", "4 in to plus: bus 400 A"));
	});
});

describe("a load between two banks", () => {
	const apart = (more: string) => `battery house agm 12 V 100 Ah
battery engine agm 12 V 100 Ah
feed one from house.+ by single 12 AWG red
  within 6 in to F1: fuse 15 A
  3 ft to l1: light 6 W
//        ^^
feed back from engine.- by single 12 AWG black
  3 ft to l1.-
feed two from house.+, house.- by pair 12 AWG
  within 6 in to F2: fuse 15 A
  3 ft to l2: light 6 W
feed three from engine.+, engine.- by pair 12 AWG
  within 6 in to F3: fuse 15 A
  3 ft to l3: light 6 W
${more}`;
	test("whose minus nothing joins gets nothing", () => {
		checkMarked(
			apart("").replace(
				"^^",
				'^^ load-voltage-wrong "l1 gets nothing: its plus comes from house and its minus leads to engine, and nothing joins the two"',
			),
		);
	});

	test("with one minus for both it runs", () => {
		checkMarked(apart("feed tie from house.- by single 12 AWG black\n  3 ft to engine.-\n"));
	});
});

describe("what protects nobody can tell", () => {
	test("a wire that no table knows is a note, once", () => {
		const { findings } = checkPlan(
			`battery house agm 12 V 100 Ah
load l1 6 W
feed one from house.+ by single 8 AWG aluminium red
  within 6 in to F1: fuse 15 A
  3 ft to l1.+
feed back from house.- by single 12 AWG black
  3 ft to l1.-
`,
			"plan",
		);
		expect(findings.filter(({ code }) => code === "protection-too-large")).toMatchObject([
			{ level: "note", unchecked: true },
		]);
	});
});
