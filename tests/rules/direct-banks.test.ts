// Shunts and batteries that work as one: what flows past a shunt, and what is not alike in a bank.
import { describe, expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

describe("a shunt", () => {
	const plan = (minus: string, more = "") => `battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 60 A
  1 ft to plus: bus 100 A
feed back from house.- by single 6 AWG black
  1 ft to SH: shunt 100 A
//        ^^
  1 ft to minus: bus 100 A
feed small from plus, ${minus} by pair 12 AWG
  bolted to F2: fuse 15 A
  6 ft to p1: pump 60 W
${more}`;
	test("with everything behind it is right, also with its meter's own supply before it", () => {
		checkRight(plan("minus"));
		checkRight(
			plan(
				"minus",
				"feed meter from plus, house.- by pair 16 AWG\n  bolted to F3: fuse 3 A\n  3 ft to m1: load 0.5 W\n",
			),
		);
	});

	test("bolted to the bus it stands on", () => {
		checkRight(plan("minus").replace("1 ft to SH", "bolted to SH"));
	});

	test("with a load on the battery's side", () => {
		checkMarked(
			plan("house.-").replace(
				"//        ^^",
				'//        ^^ shunt-bypassed "What p1 draws or gives flows past the shunt SH"',
			),
		);
	});

	test("with a wire round it", () => {
		checkMarked(
			plan("minus", "feed past from house.- by single 6 AWG black\n  2 ft to minus\n").replace(
				"//        ^^",
				'//        ^^ shunt-bypassed "Current flows past the shunt SH by way of past-1.black"',
			),
		);
	});

	test("with the chassis on both its sides", () => {
		checkMarked(
			plan(
				"minus",
				`chassis frame
bond one from house.- by single 6 AWG black
  1 ft to frame
bond two from minus by single 6 AWG black
  1 ft to frame
`,
			).replace("//        ^^", '//        ^^ shunt-bypassed "by way of one-1.black and two-1.black"'),
		);
	});
});

describe("batteries that work as one", () => {
	const two = (second: string, lead = "2 ft", take = "plus, minus") => `battery A1 agm 12 V 100 Ah
//      ^^
battery A2 ${second}
feed a1 from A1.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 100 A
  2 ft to plus: bus 250 A
feed a2 from A2.+ by single 2 AWG red
  within 7 in to F2: fuse class-T 100 A
  ${lead} to plus
feed b1 from A1.- by single 2 AWG black
  2 ft to minus: bus 250 A
feed b2 from A2.- by single 2 AWG black
  2 ft to minus
feed small from ${take} by pair 12 AWG
  bolted to F3: fuse 15 A
  3 ft to l1: light 6 W
`;
	const unequal = (title: string) => [`//      ^^\n`, `//      ^^ batteries-unequal "${title}"\n`] as const;

	test("alike, or nearly", () => {
		checkRight(two("agm 12 V 100 Ah"));
		checkRight(two("agm 12 V 110 Ah"));
		checkRight(two("agm 12 V 100 Ah", "30 in"));
	});

	test("of two chemistries", () => {
		checkMarked(
			two("lithium 12.8 V 100 Ah").replace(...unequal("A1 and A2 are joined in parallel and are agm and lithium")),
		);
	});

	test("of unequal capacity: parallel a warning, in series an error", () => {
		checkMarked(two("agm 12 V 111 Ah").replace(...unequal("hold between 100 and 111 Ah")));
		const { findings } = checkMarked(`battery B1 agm 12 V 100 Ah
battery B2 agm 12 V 60 Ah
//      ^^ batteries-unequal "B2 and B1 are joined in series"
feed middle from B1.- by single 2 AWG black
  1 ft to B2.+
feed all from B1.+, B2.- by pair 12 AWG
  bolted to F1: fuse 15 A
  3 ft to l1: light 6 W 24 V
`);
		expect(findings.find(({ code }) => code === "batteries-unequal")?.level).toBe("error");
	});

	test("with leads of unequal length", () => {
		checkMarked(two("agm 12 V 100 Ah", "6 ft").replace(...unequal("The leads of A2 resist")));
	});

	test("chained post to post: the load across the first and the last, not on one of them", () => {
		const chained = (plus: string, minus: string) => `battery A1 agm 12 V 100 Ah
//      ^^
battery A2 agm 12 V 100 Ah
feed over from A1.+ by single 2 AWG red
  1 ft to A2.+
feed under from A1.- by single 2 AWG black
  1 ft to A2.-
feed small from ${plus}, ${minus} by pair 12 AWG
  bolted to F1: fuse 15 A
  3 ft to l1: light 6 W
`;
		checkRight(chained("A1.+", "A2.-"));
		checkMarked(chained("A1.+", "A1.-").replace(...unequal("The leads of A2 resist more than those of A1")));
	});

	test("two banks that a switch ties for a flat engine battery are no bank", () => {
		checkRight(`battery engine flooded 12 V 90 Ah
battery house lithium 12.8 V 200 Ah
feed tie from engine.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 150 A
  2 ft to D1: disconnect 200 A
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
