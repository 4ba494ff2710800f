// Circuits that hang on another breaker than is said.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

describe("circuit-mislabelled is told", () => {
	test("the hots of two circuits exchanged", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit galley from LC breaker 20 A by 12-2
  5 ft to g1: gfci
at LC
  bunks-1.black on LC.2.load
//^^^^^^^^^^^^^^^^^^^^^^^^^^ circuit-mislabelled "b1 belongs to LC.1, but is fed by LC.2, and g1 the other way round: bunks-1.black is on LC.2.load"
  galley-1.black on LC.1.load
`);
	});

	test("both hots on one breaker", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit desk from LC breaker 20 A by 12-2
  5 ft to d1: receptacle
at LC
  bunks-1.black on LC.2.load
//^^^^^^^^^^^^^^^^^^^^^^^^^^ circuit-mislabelled "b1 belongs to LC.1, but is fed by LC.2: bunks-1.black is on LC.2.load"
//^^^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
`);
	});

	test("crossed in a box both come through", () => {
		checkMarked(`${supply}circuit one from LC breaker 15 A by 14-2
  6 ft to j1: box
  9 ft to b1: receptacle
circuit two from LC breaker 15 A by 14-2
  6 ft to j1
  from j1
    9 ft to b2: receptacle
at j1
  join one-1.black, two-2.black
  join two-1.black, one-2.black
//                  ^^^^^^^^^^^ circuit-mislabelled "b1 belongs to LC.1, but is fed by LC.2, and b2 the other way round: one-2.black is with the hots of j1"
  join one-1.white, two-2.white
  join two-1.white, one-2.white
`);
	});
});

describe("circuit-mislabelled is told of a breaker that is passed by", () => {
	test("where the device ahead protects the wires all the same", () => {
		checkMarked(`inlet cord 15 A 120 V
panel P lugs only from cord by 14-2, 4 ft
circuit one from P breaker 15 A by 14-2
  3 ft to r1: receptacle
at P
  one-1.black on P.bus.A
//^^^^^^^^^^^^^^^^^^^^^^ circuit-mislabelled "r1 belongs to P.1, but its hot goes past it, from cord: one-1.black is on P.bus.A"
//^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
`);
	});

	test("and where it does not, it is told by the protection that is missing", () => {
		checkMarked(`${supply}circuit one from LC breaker 15 A by 14-2
  3 ft to l1: light 9 W
at LC
  one-1.black on LC.bus.A
//^^^^^^^^^^^^^^^^^^^^^^^ protection-missing
`);
	});
});

describe("circuit-mislabelled is not told of", () => {
	test("neutrals on other ports", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit galley from LC breaker 20 A by 12-2
  5 ft to g1: gfci
at LC
  bunks-1.white on LC.neutral.3
  galley-1.white on LC.neutral.2
`);
	});

	test("two poles of one breaker exchanged", () => {
		checkRight(`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit desk from LC breaker 20 A two-pole by 12-3
  9 ft to d1: receptacle split
at LC
  desk-1.black on LC.1.load.2
  desk-1.red on LC.1.load.1
`);
	});

	test("a panel behind a panel", () => {
		checkRight(`${supply}circuit shed from LC breaker 20 A by 12-2
  20 ft to LD: panel lugs only
circuit one from LD breaker 15 A by 14-2
  9 ft to b1: receptacle
`);
	});
});

const block = `battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 8 AWG
  within 7 in to F1: fuse 50 A
  3 ft to FB: fuse-block 60 A, ways 4
`;
const two = `${block}circuit lamps from FB fuse 5 A by pair 16 AWG
  6 ft to l1: light 6 W
circuit pump from FB fuse 10 A by pair 10 AWG
  6 ft to p1: pump 48 W
`;

describe("circuit-mislabelled at a fuse block is told", () => {
	test("the positives of two circuits exchanged", () => {
		checkMarked(`${two}at FB
  lamps-1.red on FB.2.load
//^^^^^^^^^^^^^^^^^^^^^^^^ circuit-mislabelled "l1 belongs to FB.1, but is fed by FB.2, and p1 the other way round: lamps-1.red is on FB.2.load"
  pump-1.red on FB.1.load
`);
	});

	test("both positives on one fuse", () => {
		checkMarked(`${two}at FB
  lamps-1.red on FB.2.load
//^^^^^^^^^^^^^^^^^^^^^^^^ circuit-mislabelled "l1 belongs to FB.1, but is fed by FB.2: lamps-1.red is on FB.2.load"
//^^^^^^^^^^^^^^^^^^^^^^^^ terminal-overfilled
`);
	});

	test("a positive past its fuse, where the fuse of the block suits it", () => {
		checkMarked(`${two}at FB
  pump-1.red on FB.bus.+
//^^^^^^^^^^^^^^^^^^^^^^ circuit-mislabelled "p1 belongs to FB.2, but its positive goes past it, from F1: pump-1.red is on FB.bus.+"
`);
	});

	test("the feed of the block on the fuse of a circuit, and what it cannot carry follows from it", () => {
		checkMarked(`${two}at FB
  small-2.red on FB.1.load
//^^^^^^^^^^^^^^^^^^^^^^^^ circuit-mislabelled "All of FB is fed through FB.1, the fuse of one circuit: small-2.red is on its load side"
  lamps-1.red on FB.bus.+
`);
	});

	test("a wire too thin for the fuse it hangs on follows from it", () => {
		checkMarked(`${block}circuit lamps from FB fuse 5 A by pair 18 AWG
  6 ft to l1: light 6 W
circuit pump from FB fuse 30 A by pair 10 AWG
  6 ft to p1: pump 48 W
at FB
  lamps-1.red on FB.2.load
//^^^^^^^^^^^^^^^^^^^^^^^^ circuit-mislabelled
  pump-1.red on FB.1.load
// also protection-too-large
`);
	});
});

describe("circuit-mislabelled at a fuse block is not told of", () => {
	test("negatives on other ports", () => {
		checkRight(`${two}at FB
  lamps-1.black on FB.negative.3
  pump-1.black on FB.negative.2
`);
	});

	test("what a relay switches on from one fuse with its coil on another", () => {
		checkRight(`${block}circuit horn from FB fuse 15 A by pair 14 AWG
  3 ft to K1: relay 30 A coil 12 V
  4 ft to h1: load 100 W 12 V
circuit call from FB fuse 5 A by pair 16 AWG
  3 ft to s1: switch
  2 ft to K1.coil
`);
	});

	test("a horn on the run of the coil, which its contact feeds from the other fuse", () => {
		checkRight(`contactor K1 30 A coil 12 V
${block}circuit power from FB fuse 15 A by pair 14 AWG
  3 ft to K1.line
circuit call from FB fuse 5 A by pair 16 AWG
  3 ft to s1: switch
  2 ft to K1.coil
  from K1.load
    4 ft by pair 14 AWG to h1: load 100 W 12 V
`);
	});

	test("a solar controller that charges through a way of the block", () => {
		checkRight(`${two}solar roof 100 W, open 22 V, short 6 A
solar-controller sun 10 A 12 V, limit 50 V
circuit gained from FB fuse 15 A by pair 14 AWG
  3 ft to sun.out
feed up from roof.+, roof.- by pair 12 AWG
  9 ft to D1: disconnect 30 A
  1 ft to sun.in
`);
	});
});
