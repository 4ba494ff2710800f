// The direct-current side: a right plan of each shape is silent, and each planted fault is found where it was made.
import { describe, expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

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

describe("a right plan", () => {
	test("a pair to the plus of a machine brings its minus too", () => {
		checkRight(`${bank}inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
feed up from plus, minus by pair 2 AWG
  bolted to F3: fuse class-T 125 A
  3 ft to inv.+
circuit desk from inv.out by 14-2
  3 ft to d9: receptacle
`);
	});

	test("lights, a switch and a dimmer read like those of the mains", () => {
		checkRight(`${bank}circuit lights from FB.1 by pair 16 AWG
  6 ft to s1: switch
  9 ft to l1..l3: light 2 W each
  from l1
    3 ft to dim: dimmer
    4 ft to l4: light 4 W
circuit water from FB.2 by pair 14 AWG
  6 ft to fl: float-switch 10 A
  4 ft to p1: pump 60 W
`);
	});

	test("a dimmer in the negative, and a breaker in a way of the block", () => {
		const { analysis } =
			checkRight(`${bank.replace("slot 2: fuse 15 A", "slot 2: breaker 10 A")}circuit lights from FB.2 by pair 16 AWG
  6 ft to dim: dimmer negative
  9 ft to l1: light 6 W
`);
		const { circuit } = analysis;
		const onDimmer = circuit.conductors.filter(({ ends }) =>
			ends.some(({ point }) => circuit.points[point ?? -1]?.name.startsWith("dim.") === true),
		);
		expect(onDimmer.map(({ name }) => name)).toEqual(["lights-1.black", "lights-2.black"]);
	});

	test("two batteries in parallel, each with its own fuse", () => {
		checkRight(`battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
feed a1 from A1.+ by single 2/0 red
  within 7 in to F1: fuse class-T 150 A
  2 ft to plus: bus 400 A
feed a2 from A2.+ by single 2/0 red
  within 7 in to F2: fuse class-T 150 A
  2 ft to plus
feed b1 from A1.- by single 2/0 black
  2 ft to minus: bus 400 A
feed b2 from A2.- by single 2/0 black
  2 ft to minus
`);
	});

	test("four batteries in series make 48 V", () => {
		checkRight(`battery B1..B4 lithium 12.8 V 100 Ah
feed m1 from B1.- by single 2/0 black
  1 ft to B2.+
feed m2 from B2.- by single 2/0 black
  1 ft to B3.+
feed m3 from B3.- by single 2/0 black
  1 ft to B4.+
inverter inv 3000 W 48 V / 120 V, bonds neutral when inverting
feed plus from B1.+ by single 2/0 red
  within 7 in to F1: fuse class-T 150 A
  3 ft to inv.+
feed minus from B4.- by single 2/0 black
  3 ft to inv.-
circuit desk from inv.out by 10-2
  3 ft to d1: receptacle 30 A single
`);
	});

	test("the return through the chassis", () => {
		checkRight(`${bank}chassis frame
bond tie from minus by single 2 AWG black
  2 ft to frame
load horn 60 W
circuit blow from FB.1 by single 14 AWG red
  6 ft to horn.+
feed home from horn.- by single 14 AWG black
  1 ft to frame
`);
	});

	test("a starter without a fuse, beside a fused house circuit", () => {
		checkRight(`battery engine flooded 12 V 80 Ah
starter st 200 A
alternator alt 90 A 14 V
feed crank from engine.+ by single 2/0 red
  4 ft to st.+
feed ground from engine.- by single 2/0 black
  4 ft to st.-
feed charge from engine.+ by single 4 AWG red
  within 7 in to F1: fuse ANL 100 A
  4 ft to alt.+
feed home from engine.- by single 4 AWG black
  4 ft to alt.-
`);
	});

	test("a relay on direct current that switches the mains", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
${bank}circuit heat from LC breaker 15 A by 14-2
  6 ft to K1: contactor 20 A coil 12 V
  6 ft to h1: heater 1000 W
circuit call from FB.1 by pair 16 AWG
  5 ft to t1: thermostat 5 A
  3 ft to K1.coil
`);
	});

	test("a converter between two voltages", () => {
		checkRight(`battery bank lithium 25.6 V 100 Ah
converter step 20 A 24 V / 12 V
feed up from bank.+, bank.- by pair 10 AWG
  bolted to F1: fuse 30 A
  3 ft to step.in
feed down from step.out by pair 10 AWG
  2 ft to l1: light 20 W 12 V
`);
	});
});

describe("planted faults", () => {
	test("plus and minus exchanged at a light", () => {
		checkMarked(`${bank}circuit lights from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W
at l1
  lights-1.red on l1.-
//^^^^^^^^^^^^^^^^^^^^ polarity-dc-reversed "Positive and negative of l1 are exchanged"
  lights-1.black on l1.+
`);
	});

	test("no fuse before the bus", () => {
		checkMarked(`battery house lithium 12.8 V 280 Ah
feed main from house.+ by single 2 AWG red
  1 ft to plus: bus 250 A
//        ^^^^ protection-missing "from house before l1"
feed back from house.- by single 2 AWG black
  1 ft to minus: bus 250 A
feed small from plus, minus by pair 12 AWG
  9 ft to l1: light 6 W
`);
	});

	test("a fuse too large for its wire", () => {
		checkMarked(`${bank}feed pump from plus, minus by pair 16 AWG
  bolted to F3: fuse 60 A
  9 ft to p1: pump 60 W
//        ^^ protection-too-large "The 60 A fuse F3 is too large for 16 AWG"
`);
	});

	test("a thin tap far from its fuse", () => {
		checkMarked(`${bank}feed pump from plus, minus by pair 12 AWG
  5 ft to F3: fuse 15 A
//        ^^ protection-too-far "F3 stands 60 in along the conductor"
  9 ft to p1: pump 60 W
`);
	});

	test("a bus of another voltage", () => {
		checkMarked(`${bank}battery bank lithium 25.6 V 100 Ah
//      ^^^^ voltages-mixed "bank gives 25.6 V and is joined to 12.8 V of house"
feed high from bank.+ by single 2 AWG red
  within 7 in to F4: fuse class-T 150 A
  1 ft to plus
feed low from bank.- by single 2 AWG black
  1 ft to minus
`);
	});

	test("a light for 24 V on 12 V", () => {
		checkMarked(`${bank}circuit lights from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W 24 V
//        ^^ load-voltage-wrong "l1 is made for 24 V and gets 12.8 V"
`);
	});

	test("plus joined to minus", () => {
		checkMarked(`${bank}feed wrong from plus by single 2 AWG red
  1 ft to minus
//        ^^^^^ poles-joined "Positive and negative of house are joined"
`);
	});

	test("a negative that leads nowhere", () => {
		const { findings } = checkMarked(`battery house lithium 12.8 V 280 Ah
light l1 6 W
//    ^^ load-voltage-wrong "no negative reaches l1.-"
feed plus from house.+ by single 14 AWG red
  within 7 in to F1: fuse 10 A
  6 ft to l1.+
`);
		expect(findings.filter(({ level }) => level === "danger")).toEqual([]);
	});

	test("fuses at the far end that let more through together than the wire to them may carry", () => {
		const plan = (third: string) => `battery house lithium 12.8 V 100 Ah, fault 2 kA
fuse-block FB
  slot 1: fuse 15 A
  slot 2: fuse 15 A
${third}
feed main from house.+ by single 6 AWG red
  6 in to F1: fuse class-T 40 A interrupting 20 kA
  1 ft to plus: bus 100 A
feed back from house.- by single 6 AWG black
  1 ft to minus: bus 100 A
feed small from plus, minus by pair 14 AWG
  1 ft to FB
`;
		checkRight(plan("  slot 3: fuse 5 A"));
		checkMarked(
			plan("  slot 3: fuse 15 A").replace(
				"to FB\n",
				'to FB\n//        ^^ protection-too-large "The 40 A fuse F1 is too large for 14 AWG in small-1: 35 A at most"\n',
			),
		);
	});

	test("a thin negative of an inverter", () => {
		checkMarked(`${bank}inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
feed up from plus by single 2 AWG red
  bolted to F3: fuse class-T 125 A
  3 ft to inv.+
feed down from minus by single 10 AWG black
  3 ft to inv.-
//        ^^^^^ protection-too-large "The negative down-1.black is too thin for what inv may draw"
circuit desk from inv.out by 14-2
  3 ft to d9: receptacle
`);
	});

	test("a light behind a way without a wire on its fuse", () => {
		checkMarked(`${bank}circuit lights from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W
//        ^^ load-voltage-wrong "no positive reaches l1.+"
at FB
  lights-1.red capped
`);
	});

	test("a black positive", () => {
		checkMarked(`battery house lithium 12.8 V 280 Ah
feed main from house.+ by single 2 AWG black
  within 7 in to F1: fuse class-T 150 A
//               ^^ colour-misleading "main-1.black carries the positive"
  1 ft by single 2 AWG red to plus: bus 250 A
`);
	});

	test("a switch with the blacks on it", () => {
		checkMarked(`${bank}circuit water from FB.2 by pair 14 AWG
  5 ft to s1: switch
//        ^^ switch-in-neutral "s1 opens the negative and not the positive"
  4 ft to tap: pump 60 W
at s1
  water-1.black on s1.line
  water-2.black on s1.load
  join water-1.red, water-2.red
`);
	});

	test("a fuse with the blacks on it", () => {
		checkMarked(`${bank}feed water from plus, minus by pair 14 AWG
  within 7 in to F3: fuse 10 A
  5 ft to F4: fuse 5 A
//        ^^ negative-fused "The fuse F4 stands in the negative"
  4 ft to tap: pump 60 W
at F4
  water-2.black on F4.line
  water-3.black on F4.load
  join water-2.red, water-3.red
`);
	});
});
