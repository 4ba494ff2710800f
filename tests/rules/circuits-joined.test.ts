// Hots of two circuits that meet behind two devices which do not open together.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const twoLegs = `inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
`;
const inOneBox = `circuit a from LC breaker 15 A by 14-2
  9 ft to j1: box
  6 ft to b1: receptacle
circuit c from LC breaker 15 A by 14-2
  9 ft to j1
  from j1
    6 ft to c1: receptacle
`;

describe("joined in a box", () => {
	test("all blacks and all whites together are one cause", () => {
		checkMarked(`${supply}${inOneBox}at j1
  join a-1.black, a-2.black, c-1.black, c-2.black
//                           ^^^^^^^^^ circuits-joined "LC.1 and LC.2 are joined in j1"
  join a-1.white, a-2.white, c-1.white, c-2.white
// also circuit-mislabelled
`);
	});
	test("both under the screws of one receptacle", () => {
		checkMarked(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to b1: receptacle
circuit c from LC breaker 15 A by 14-2
  9 ft to b1
at b1
  a-1.black, c-1.black on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ circuits-joined "a-1.black and c-1.black"
  c-1.white capped
`);
	});
	test("a duplex with its tab in place, fed by two breakers of one leg", () => {
		const { findings } = checkPlan(
			`${supply}  slot 1: breaker 20 A
  slot 2: breaker 20 A
circuit a from LC.1 by 12-3
  9 ft to j1: box
  9 ft to k1: receptacle
at LC
  a-1.red on LC.2.load
at j1
  join a-1.black, a-1.red, a-2.black, a-2.red
`,
			"plan",
		);
		expect(findings.map(({ code }) => code)).toContain("circuits-joined");
	});
	test("the figures add up what both let through", () => {
		const { findings } = checkPlan(
			`${supply}${inOneBox}at j1
  join a-1.black, a-2.black, c-1.black, c-2.black
`,
			"plan",
		);
		const [found] = findings.filter(({ code }) => code === "circuits-joined");
		expect(found?.figures).toMatchObject([{ found: 30, limit: 15, unit: "A" }]);
	});

	test("a breaker and the spare pole of its main, by a jumper", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A, legs 2, bridged legs from shore by 10-2, 12 ft
circuit one from LC breaker 20 A by 10-2
  9 ft to l1: light 9 W
at LC
  link LC.1.load, LC.main.line.2 by 10 AWG black
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ circuits-joined "The hots of LC.main and LC.1 are joined in LC"
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
`);
	});
});

describe("what is to be done, done", () => {
	test("a joint for each breaker's hots is right", () => {
		checkRight(`${supply}${inOneBox}at j1
  join a-1.black, a-2.black
  join c-1.black, c-2.black
  join a-1.white, a-2.white
  join c-1.white, c-2.white
`);
	});
	test("the help says these two joints", () => {
		const { findings } = checkPlan(
			`${supply}${inOneBox}at j1
  join a-1.black, a-2.black, c-1.black, c-2.black
`,
			"plan",
		);
		const help = findings.find(({ code }) => code === "circuits-joined")?.help ?? "";
		expect(help).toContain("`join a-1.black, a-2.black` and `join c-1.black, c-2.black`");
	});
});

describe("not joined", () => {
	test("two circuits in one box, each by itself", () => {
		checkRight(`${supply}${inOneBox}`);
	});
	test("two circuits from one breaker", () => {
		checkRight(`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to a1: receptacle
  9 ft to c1: receptacle
`);
	});
	test("a panel behind a panel", () => {
		checkRight(`${supply}feed cabin from LC breaker 20 A by 12-2
  12 ft to SP: panel main 20 A
circuit a from SP breaker 15 A by 14-2
  9 ft to a1: receptacle
circuit c from LC breaker 15 A by 14-2
  9 ft to c1: receptacle
`);
	});
	test("both legs of one two-pole breaker", () => {
		checkRight(`${twoLegs}circuit a from LC breaker 20 A two-pole by 12-3
  9 ft to k1: receptacle split
`);
	});
});

const block = `battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 8 AWG
  within 7 in to F1: fuse 50 A
  3 ft to FB: fuse-block 60 A, ways 4
`;
const fused = `${block}circuit lamps from FB fuse 5 A by pair 16 AWG
  6 ft to j1: box
  6 ft to l1: light 6 W
circuit pump from FB fuse 10 A by pair 14 AWG
  6 ft to j1
  from j1
    6 ft to p1: pump 48 W
`;

describe("behind two fuses", () => {
	test("the positives of two circuits in one joint", () => {
		const { findings } = checkMarked(`${fused}at j1
  join lamps-1.red, lamps-2.red, pump-1.red, pump-2.red
//                               ^^^^^^^^^^ circuits-joined "The positives of FB.1 and FB.2 are joined in j1: lamps-1.red and pump-1.red"
  join lamps-1.black, lamps-2.black
  join pump-1.black, pump-2.black
// also circuit-mislabelled
`);
		expect(findings.find(({ code }) => code === "circuits-joined")).toMatchObject({
			level: "error",
			figures: [{ found: 15, limit: 25 }],
		});
	});
	test("two wires from two fuses on one lamp", () => {
		checkMarked(`${block}circuit lamps from FB fuse 5 A by pair 16 AWG
  6 ft to l1: light 6 W
circuit spare from FB fuse 5 A by pair 16 AWG
  6 ft to l1
at l1
  join lamps-1.red, spare-1.red
//                  ^^^^^^^^^^^ circuits-joined "FB.1 and FB.2 are joined in l1"
  join lamps-1.black, spare-1.black
`);
	});
	test("a large load on two fuses of two sizes, one at the bus and one in the block", () => {
		checkMarked(`battery house agm 12 V 100 Ah
feed main from house.+ by single 4 AWG red
  within 7 in to F1: fuse 100 A
  1 ft to plus: bus 150 A
feed back from house.- by single 4 AWG black
  1 ft to minus: bus 150 A
feed small from plus, minus by pair 8 AWG
  bolted to F2: fuse 50 A
  3 ft to FB: fuse-block 60 A, ways 4
circuit box from FB fuse 15 A by pair 12 AWG
  4 ft to k1: load 120 W 12 V
feed more from plus by single 12 AWG red
  bolted to F3: fuse 20 A
  4 ft to k1.+
//        ^^^^ circuits-joined "The positives of FB.1 and F3 are joined in k1: box-1.red and more-1.red"
// also circuit-mislabelled
`);
	});
});

describe("not behind two fuses", () => {
	test("batteries in parallel, each with a fuse of its own", () => {
		checkRight(
			[1, 2]
				.map(
					(number) => `battery b${number} agm 12 V 100 Ah
feed up${number} from b${number}.+ by single 4 AWG red
  within 7 in to F${number}: fuse 100 A
  1 ft to plus${number === 1 ? ": bus 250 A" : ""}
feed down${number} from b${number}.- by single 4 AWG black
  1 ft to minus${number === 1 ? ": bus 250 A" : ""}
`,
				)
				.join("")
				.concat("feed small from plus, minus by pair 12 AWG\n  bolted to F3: fuse 15 A\n  6 ft to l1: light 6 W\n"),
		);
	});
	test("a pump with a float switch on one fuse and a handle on another", () => {
		checkRight(`${block}circuit float from FB fuse 10 A by pair 14 AWG
  6 ft to fs: float-switch 15 A
  2 ft to bp: pump 60 W
circuit handle from FB fuse 10 A by pair 14 AWG
  6 ft to s1: switch
  2 ft to bp
`);
	});
	test("what charges beside what draws on one bus", () => {
		checkRight(`${fused}at j1
  join lamps-1.red, lamps-2.red
  join lamps-1.black, lamps-2.black
  join pump-1.red, pump-2.red
  join pump-1.black, pump-2.black
`);
	});
});
