// Relays, switches, returns and what hangs on the direct-current side, right and wrong: the right one is silent, and the wrong one told by the right rule in the right place.
import { describe, test } from "vitest";
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

describe("the coil of a relay", () => {
	test("right: 24 V", () => {
		checkRight(`battery bank lithium 25.6 V 100 Ah
fuse-block FB
  slot 1: fuse 3 A
  slot 2: fuse 15 A
feed small from bank.+, bank.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB
circuit pump from FB.2 by pair 14 AWG
  6 ft to K1: relay 30 A coil 24 V
  4 ft to p1: pump 60 W
circuit call from FB.1 by pair 16 AWG
  5 ft to s1: switch
  2 ft to K1.coil
`);
	});

	test("right: mains for a contact in direct current", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
${bank}circuit pump from FB.2 by pair 14 AWG
  6 ft to K1: relay 30 A coil 120 V
  4 ft to p1: pump 60 W
circuit call from LC breaker 15 A by 14-2
  5 ft to s1: switch
  2 ft to K1.coil
`);
	});

	test("right: direct current for a contact in the mains", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
${bank}circuit heat from LC breaker 15 A by 14-2
  6 ft to K1: contactor 20 A coil 12 V
  6 ft to h1: heater 1000 W
circuit call from FB.1 by pair 16 AWG
  5 ft to s1: switch
  2 ft to K1.coil
`);
	});

	test("wrong: a coil for 12 V on 24 V", () => {
		checkMarked(`battery bank lithium 25.6 V 100 Ah
fuse-block FB
  slot 1: fuse 3 A
  slot 2: fuse 15 A
feed small from bank.+, bank.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB
circuit pump from FB.2 by pair 14 AWG
  6 ft to K1: relay 30 A coil 12 V
//        ^^ load-voltage-wrong "K1 is made for 12 V and gets 25.6 V"
  4 ft to p1: pump 60 W
circuit call from FB.1 by pair 16 AWG
  5 ft to s1: switch
  2 ft to K1.coil
`);
	});

	test("wrong: a coil for 12 V on the mains", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
${bank}circuit pump from FB.2 by pair 14 AWG
  6 ft to K1: relay 30 A coil 12 V
  4 ft to p1: pump 60 W
circuit call from LC breaker 15 A by 14-2
  5 ft to s1: switch
  2 ft to K1.coil
//        ^^^^^^^ systems-mixed "call-2.black and call-2.white join s1.load and its like, for alternating current, and K1.A1 and its like, for direct current"
`);
	});

	test("wrong: a coil for the mains on 12 V", () => {
		checkMarked(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
${bank}circuit heat from LC breaker 15 A by 14-2
  6 ft to K1: contactor 20 A coil 120 V
  6 ft to h1: heater 1000 W
circuit call from FB.1 by pair 16 AWG
  5 ft to s1: switch
  2 ft to K1.coil
//        ^^^^^^^ systems-mixed "call-2.red and call-2.black join K1.A1 and its like, for alternating current, and s1.load and its like, for direct current"
`);
	});

	test("wrong: exchanged", () => {
		checkMarked(`${bank}circuit pump from FB.2 by pair 14 AWG
  6 ft to K1: relay 30 A coil 12 V
  4 ft to p1: pump 60 W
circuit call from FB.1 by pair 16 AWG
  5 ft to s1: switch
  2 ft to K1.coil
at K1
  call-2.red on K1.A2
//^^^^^^^^^^^^^^^^^^^ polarity-dc-reversed "Positive and negative of K1 are exchanged: call-2.red is on K1.A2"
  call-2.black on K1.A1
`);
	});
});

describe("float switches and thermostats", () => {
	test("right: a float switch", () => {
		checkRight(`${bank}circuit water from FB.2 by pair 14 AWG
  6 ft to fl: float-switch 10 A
  4 ft to p1: pump 60 W
`);
	});

	test("right: a thermostat", () => {
		checkRight(`${bank}circuit heat from FB.2 by pair 14 AWG
  6 ft to th: thermostat 10 A
  4 ft to fan1: fan 60 W
`);
	});

	test("wrong: a float switch landed in the negative", () => {
		checkMarked(`${bank}circuit water from FB.2 by pair 14 AWG
  6 ft to fl: float-switch 10 A
//        ^^ switch-in-neutral "fl opens the negative and not the positive"
  4 ft to p1: pump 60 W
at fl
  water-1.black on fl.line
  water-2.black on fl.load
  join water-1.red, water-2.red
`);
	});

	test("wrong: a float switch in a negative of its own", () => {
		checkMarked(`${bank}load p1 60 W
float-switch fl 10 A
//           ^^ switch-in-neutral "fl opens the negative and not the positive"
feed wp from FB.2 by single 14 AWG red
  9 ft to p1.+
feed wn from p1.- by single 14 AWG black
  3 ft to fl
  6 ft to minus
`);
	});

	test("wrong: a thermostat joined past", () => {
		checkMarked(`${bank}circuit heat from FB.2 by pair 14 AWG
  6 ft to th: thermostat 10 A
//        ^^ switch-without-effect "th switches nothing: nothing is on th.line and th.load"
  4 ft to fan1: fan 60 W
at th
  join heat-1.red, heat-2.red
`);
	});

	test("wrong: a thermostat with both wires on one screw", () => {
		checkMarked(`${bank}circuit heat from FB.2 by pair 14 AWG
  6 ft to th: thermostat 10 A
//        ^^ switch-without-effect "th switches nothing: nothing is on th.load"
  4 ft to fan1: fan 60 W
at th
  heat-1.red on th.line
  heat-2.red on th.line
`);
	});

	test("wrong: a thermostat past which another fuse feeds", () => {
		checkMarked(`${bank}circuit heat from FB.2 by pair 14 AWG
  6 ft to th: thermostat 10 A
//        ^^ switch-without-effect "th switches nothing: th.line and th.load are joined past it"
  4 ft to fan1: fan 60 W
feed past from FB.1 by single 14 AWG red
  6 ft to fan1.+
`);
	});
});

describe("a dimmer in the negative", () => {
	test("right: lets nothing past", () => {
		checkRight(`${bank}circuit lights from FB.1 by pair 16 AWG
  6 ft to dim: dimmer negative
  9 ft to l1: light 6 W
`);
	});

	test("wrong: the light has another negative besides", () => {
		checkMarked(`${bank}circuit lights from FB.1 by pair 16 AWG
  6 ft to dim: dimmer negative
//        ^^^ switch-without-effect "dim switches nothing: dim.line and dim.load are joined past it"
  9 ft to l1: light 6 W
feed n2 from minus by single 16 AWG black
  6 ft to l1.-
`);
	});

	test("wrong: the wires join past it", () => {
		checkMarked(`${bank}circuit lights from FB.1 by pair 16 AWG
  6 ft to dim: dimmer negative
//        ^^^ switch-without-effect "dim switches nothing: nothing is on dim.line and dim.load"
  9 ft to l1: light 6 W
at dim
  join lights-1.black, lights-2.black
`);
	});
});

describe("a return by way of the chassis", () => {
	test("right: as thick as what feeds it", () => {
		checkRight(`${bank}chassis frame
bond tie from minus by single 8 AWG black
  2 ft to frame
load winch 300 W
feed blow from plus by single 10 AWG red
  bolted to F5: fuse 40 A
  6 ft to winch.+
feed home from winch.- by single 10 AWG black
  1 ft to frame
`);
	});

	test("wrong: thin between bus and chassis", () => {
		checkMarked(`${bank}chassis frame
bond tie from minus by single 16 AWG black
  2 ft to frame
//        ^^^^^ protection-too-large "The negative tie-1.black is too thin for what winch may draw through the 40 A fuse F5: 15 A at most"
load winch 300 W
feed blow from plus by single 10 AWG red
  bolted to F5: fuse 40 A
  6 ft to winch.+
feed home from winch.- by single 10 AWG black
  1 ft to frame
`);
	});
});

describe("a converter from 24 V to 12 V", () => {
	test("right: the light on its out", () => {
		checkRight(`battery bank lithium 25.6 V 100 Ah
converter step 20 A 24 V / 12 V
feed up from bank.+, bank.- by pair 10 AWG
  bolted to F1: fuse 30 A
  3 ft to step.in
feed down from step.out by pair 10 AWG
  2 ft to l1: light 20 W 12 V
`);
	});

	test("wrong: the light on its in", () => {
		checkMarked(`battery bank lithium 25.6 V 100 Ah
converter step 20 A 24 V / 12 V
feed up from bank.+, bank.- by pair 10 AWG
  bolted to F1: fuse 30 A
  3 ft to step.in
feed down from step.in by pair 10 AWG
  2 ft to l1: light 20 W 12 V
//        ^^ load-voltage-wrong "l1 is made for 12 V and gets 25.6 V"
`);
	});

	test("wrong: fed on its out", () => {
		checkMarked(`battery bank lithium 25.6 V 100 Ah
converter step 20 A 24 V / 12 V
//        ^^^^ charging-reversed "In and out of step are exchanged: bank is on out and has the volts of in"
feed up from bank.+, bank.- by pair 10 AWG
  bolted to F1: fuse 30 A
  3 ft to step.out
feed down from step.in by pair 10 AWG
  2 ft to l1: light 20 W 12 V
`);
	});
});

describe("a USB outlet", () => {
	test("right: plus on plus", () => {
		checkRight(`${bank}circuit charge from FB.1 by pair 16 AWG
  6 ft to u1: usb-outlet 20 W
`);
	});

	test("wrong: reversed", () => {
		checkMarked(`${bank}circuit charge from FB.1 by pair 16 AWG
  6 ft to u1: usb-outlet 20 W
at u1
  charge-1.red on u1.-
//^^^^^^^^^^^^^^^^^^^^ polarity-dc-reversed "Positive and negative of u1 are exchanged: charge-1.red is on u1.-"
  charge-1.black on u1.+
`);
	});
});
