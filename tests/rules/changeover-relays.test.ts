// Relays with a changeover contact: either throw is fed in its turn, and never both at once.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

describe("a changeover contact", () => {
	test("right: in the mains, its coil on direct current", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
battery house lithium 12.8 V 280 Ah, fault 5 kA
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
circuit warm from LC breaker 15 A by 14-2
  6 ft to K1: relay 16 A coil 12 V changeover
  6 ft to h1: heater 1000 W
  from K1.normally-closed
    5 ft to l9: light 9 W
circuit call from FB.1 by pair 16 AWG
  5 ft to s1: switch
  2 ft to K1.coil
`);
	});

	test("right: in direct current, its coil on the mains", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
battery house lithium 12.8 V 280 Ah, fault 5 kA
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
circuit pump from FB.2 by pair 14 AWG
  6 ft to K1: relay 30 A coil 120 V changeover
  4 ft to p1: pump 60 W 12 V
  from K1.normally-closed
    5 ft to l9: light 9 W 12 V
circuit call from LC breaker 15 A by 14-2
  2 ft to K1.coil
`);
	});

	test("right: between two banks of different volts", () => {
		checkRight(`battery house lithium 12.8 V 100 Ah
battery bank lithium 25.6 V 100 Ah
relay K1 30 A coil 12 V changeover
feed a from house.+ by single 10 AWG red
  within 7 in to F1: fuse 30 A
  2 ft to K1.normally-closed
feed b from bank.+ by single 10 AWG red
  within 7 in to F2: fuse 30 A
  2 ft to K1.normally-open
feed am from house.- by single 10 AWG black
  1 ft to minus: bus 100 A
feed bm from bank.- by single 10 AWG black
  1 ft to minus
feed out from K1.common by single 10 AWG red
  2 ft to l1.+
feed outm from minus by single 10 AWG black
  2 ft to l1.-
light l1 20 W
`);
	});

	test("wrong: a wire between its throws", () => {
		checkMarked(`battery house lithium 12.8 V 100 Ah
battery bank lithium 25.6 V 100 Ah
//      ^^^^ voltages-mixed "bank gives 25.6 V and is joined to 12.8 V of house"
relay K1 30 A coil 12 V changeover
feed a from house.+ by single 10 AWG red
  within 7 in to F1: fuse 20 A
  2 ft to K1.normally-closed
feed b from bank.+ by single 10 AWG red
  within 7 in to F2: fuse 20 A
  2 ft to K1.normally-open
feed am from house.- by single 10 AWG black
  1 ft to minus: bus 100 A
feed bm from bank.- by single 10 AWG black
  1 ft to minus
feed out from K1.common by single 10 AWG red
  2 ft to l1.+
feed outm from minus by single 10 AWG black
  2 ft to l1.-
light l1 20 W
feed wrong from K1.normally-open by single 10 AWG red
  1 ft to K1.normally-closed
`);
	});
});
