// Banks that are right and unusual: nothing is said of their thin minus, their bolted shunt, a cable that waits behind a converter.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const house = `battery house lithium 25.6 V 100 Ah, fault 2 kA
feed main from house.+ by single 8 AWG red
  within 7 in to F1: fuse class-T 50 A interrupting 20 kA
  1 ft to plus: bus 250 A
feed back from house.- by single 8 AWG black
  bolted to SH: shunt 500 A
  1 ft to minus: bus 250 A
`;
const engine = `battery engine flooded 12 V 80 Ah, fault 2 kA
dc-dc step 30 A 12 V / 24 V
feed up from engine.+, engine.- by pair 4 AWG
  within 7 in to F2: fuse class-T 100 A interrupting 20 kA
  3 ft to step.in
feed over from plus, minus by pair 8 AWG
  bolted to F3: fuse 40 A
  3 ft to step.out
`;

test("what a charger draws from one bank does not go back through the thinner minus of the other", () => {
	checkRight(house + engine);
});

test("the battery's stud under a bolted shunt is on the battery's side of it", () => {
	checkRight(`${house}feed lamp from plus, minus by pair 14 AWG
  bolted to F4: fuse 10 A
  3 ft to l1: light 20 W 24 V
`);
	checkMarked(
		`${house}feed lamp from plus, house.- by pair 14 AWG
  bolted to F4: fuse 10 A
  3 ft to l1: light 20 W 24 V
`.replace("SH: shunt 500 A\n", "SH: shunt 500 A\n//          ^^ shunt-bypassed\n"),
	);
});

test("a converter may wait for what comes later", () => {
	checkRight(`${house}fuse-block FB
  slot 1: fuse 5 A
feed down from plus, minus by pair 10 AWG
  bolted to F4: fuse 20 A
  2 ft to half: converter 20 A 24 V / 12 V
  2 ft to FB
circuit later from FB.1 by pair 14 AWG
  6 ft to e1: end
`);
});

test("on an IEC boat the negative may be yellow", () => {
	checkRight(`plan "Launch"
  region iec
  rules boat
battery house agm 12 V 80 Ah, fault 2 kA
feed lamp from house.+, house.- by duplex 2.5 mm2
  within 15 cm to F1: fuse class-T 10 A interrupting 20 kA
  2 m to l1: light 6 W
`);
});

test("the disconnect of a bank need bear no more than the fuse ahead of it, however much hangs behind", () => {
	checkRight(`${house.replace("  1 ft to plus", "  1 ft to D1: disconnect 50 A\n  1 ft to plus")}feed one from plus, minus by pair 10 AWG
  bolted to F4: fuse 30 A
  1 ft to h1: heater 600 W 24 V
feed two from plus, minus by pair 10 AWG
  bolted to F5: fuse 30 A
  1 ft to h2: heater 600 W 24 V
feed three from plus, minus by pair 10 AWG
  bolted to F6: fuse 30 A
  1 ft to h3: heater 600 W 24 V
`);
});

describe("what waits for a device that is not on yet", () => {
	const calls = (stage: string): string => `battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 3 A
  slot 2: fuse 15 A
feed small from house.+, house.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB
circuit pump from FB.2 by pair 14 AWG
  6 ft to K1: relay 30 A coil 12 V
  4 ft to p1: pump 60 W
circuit call ${stage} from FB.1 by pair 16 AWG
  5 ft to s1: switch
  2 ft to K1.coil
`;

	test("a coil whose switch comes later is not starved", () => {
		checkRight(calls("roughed in"));
		checkRight(`plan "With pigtails"\n  splices always\n${calls("roughed in")}`);
	});

	test("a series of batteries may wait with its buses", () => {
		checkRight(`battery B1 agm 12 V 100 Ah
battery B2 agm 12 V 100 Ah
feed middle from B1.- by single 8 AWG black
  1 ft to B2.+
feed small from B1.+, B2.- by pair 8 AWG
  within 7 in to F1: fuse class-T 60 A interrupting 20 kA
  3 ft to FB: fuse-block
    slot 1: fuse 5 A
circuit later roughed in from FB.1 by pair 16 AWG
  4 ft to l1: light 6 W 24 V
`);
	});
});
