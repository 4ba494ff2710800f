// Each shape of the direct-current side, right and wrong: the right one is silent, and the wrong one told by the right rule in the right place.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

describe("batteries in parallel", () => {
	test("wrong: one without its own fuse", () => {
		checkMarked(`battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
feed a1 from A1.+ by single 2/0 red
  within 7 in to F1: fuse class-T 150 A
  2 ft to plus: bus 400 A
feed a2 from A2.+ by single 2/0 red
  2 ft to plus
//        ^^^^ protection-missing "No fuse or breaker protects 2/0 AWG in a1-2 and a2-1 from A2: F1 is the fuse of A1"
feed b1 from A1.- by single 2/0 black
  2 ft to minus: bus 400 A
feed b2 from A2.- by single 2/0 black
  2 ft to minus
`);
	});
});

describe("batteries in series", () => {
	test("right: feed what is made for both", () => {
		checkRight(`battery B1 lithium 12.8 V 100 Ah
battery B2 lithium 12.8 V 100 Ah
feed middle from B1.- by single 2/0 black
  1 ft to B2.+
feed bank from B1.+, B2.- by pair 12 AWG
  bolted to F1: fuse 30 A
  3 ft to l1: light 6 W 24 V
`);
	});

	test("wrong: a light on the middle", () => {
		checkMarked(`battery B1 lithium 12.8 V 100 Ah
battery B2 lithium 12.8 V 100 Ah
feed middle from B1.- by single 2/0 black
  1 ft to B2.+
feed bank from B1.+, B2.- by pair 12 AWG
  bolted to F1: fuse 30 A
  3 ft to l1: light 6 W 24 V
feed tap from B2.+, B2.- by pair 12 AWG
  bolted to F2: fuse 15 A
  3 ft to l2: light 6 W 12 V
//        ^^ series-tapped "l2 hangs on the middle between B1 and B2, which are in series"
`);
	});

	test("wrong: one turned round cancels the other", () => {
		checkMarked(`battery B1 lithium 12.8 V 100 Ah
battery B2 lithium 12.8 V 100 Ah
//      ^^ polarity-dc-reversed "B1 and B2 cancel each other: minus is on minus between them"
light l1 6 W 24 V
feed middle from B1.- by single 2/0 black
  1 ft to B2.-
feed plus from B1.+ by single 10 AWG red
  bolted to F1: fuse 30 A
  3 ft to l1.+
feed minus from B2.+ by single 10 AWG red
  3 ft to l1.-
//        ^^^^ protection-missing "No fuse or breaker protects 10 AWG in minus-1 from B2 before l1"
`);
	});

	test("wrong: a ring of both", () => {
		checkMarked(`battery B1 lithium 12.8 V 100 Ah
battery B2 lithium 12.8 V 100 Ah
//      ^^ polarity-dc-reversed "B2 is joined the wrong way round: 13 V meet its 13 V"
feed middle from B1.- by single 2/0 black
  1 ft to B2.+
feed ring from B1.+ by single 2/0 red
  1 ft to B2.-
`);
	});
});

describe("an alternator", () => {
	test("right: its fuse at the battery", () => {
		checkRight(`battery engine flooded 12 V 80 Ah
alternator alt 90 A 14 V
feed back from engine.- by single 4 AWG black
  4 ft to alt.-
feed charge from engine.+ by single 4 AWG red
  within 7 in to F1: fuse ANL 100 A
  4 ft to alt.+
`);
	});

	test("wrong: no fuse at all", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
alternator alt 90 A 14 V
feed back from engine.- by single 4 AWG black
  4 ft to alt.-
feed charge from engine.+ by single 4 AWG red
  4 ft to alt.+
//        ^^^^^ protection-missing "No fuse or breaker protects 4 AWG in charge-1 from engine before alt"
`);
	});

	test("wrong: the fuse at the wrong end", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
alternator alt 90 A 14 V
feed back from engine.- by single 4 AWG black
  4 ft to alt.-
feed charge from engine.+ by single 4 AWG red
  4 ft to F1: fuse ANL 100 A
//        ^^ protection-too-far "F1 stands 48 in along the conductor from engine; 18 in is the most"
  6 in to alt.+
`);
	});

	test("wrong: written from the alternator", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
alternator alt 90 A 14 V
feed back from engine.- by single 4 AWG black
  4 ft to alt.-
feed charge from alt.+ by single 4 AWG red
  4 ft to engine.+
//        ^^^^^^^^ protection-missing "No fuse or breaker protects 4 AWG in charge-1 from engine before alt"
`);
	});
});

describe("a dc-dc charger", () => {
	test("right: a fuse at each end", () => {
		checkRight(`battery engine flooded 12 V 80 Ah
battery house lithium 12.8 V 100 Ah
dc-dc dc 20 A 12 V / 12 V
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 60 A
  6 ft to dc.in
feed over from house.+, house.- by pair 10 AWG
  within 7 in to F2: fuse 30 A
  6 ft to dc.out
`);
	});

	test("right: two voltages", () => {
		checkRight(`battery engine flooded 12 V 80 Ah
battery house lithium 25.6 V 100 Ah
dc-dc dc 20 A 12 V / 24 V
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 60 A
  6 ft to dc.in
feed over from house.+, house.- by pair 8 AWG
  within 7 in to F2: fuse 60 A
  6 ft to dc.out
`);
	});

	test("right: beside an alternator", () => {
		checkRight(`battery engine flooded 12 V 80 Ah
battery house lithium 12.8 V 100 Ah
dc-dc dc 20 A 12 V / 12 V
alternator alt 90 A 14 V
feed charge from engine.+ by single 4 AWG red
  within 7 in to F3: fuse ANL 100 A
  4 ft to alt.+
feed ret from engine.- by single 4 AWG black
  4 ft to alt.-
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 60 A
  6 ft to dc.in
feed over from house.+, house.- by pair 8 AWG
  within 7 in to F2: fuse 60 A
  6 ft to dc.out
`);
	});

	test("wrong: no fuse at the engine's battery", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
battery house lithium 12.8 V 100 Ah
dc-dc dc 20 A 12 V / 12 V
feed up from engine.+, engine.- by pair 8 AWG
  6 ft to dc.in
//        ^^^^^ protection-missing "No fuse or breaker protects 8 AWG in up-1 from engine before dc"
feed over from house.+, house.- by pair 10 AWG
  within 7 in to F2: fuse 30 A
  6 ft to dc.out
`);
	});

	test("wrong: no fuse at the house's battery", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
battery house lithium 12.8 V 100 Ah
dc-dc dc 20 A 12 V / 12 V
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 60 A
  6 ft to dc.in
feed over from house.+, house.- by pair 10 AWG
  6 ft to dc.out
//        ^^^^^^ protection-missing "No fuse or breaker protects 10 AWG in over-1 from house before dc"
`);
	});

	test("wrong: in and out exchanged between two voltages", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
battery house lithium 25.6 V 100 Ah
dc-dc dc 20 A 12 V / 24 V
//    ^^ charging-reversed "In and out of dc are exchanged: engine is on out and has the volts of in"
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 60 A
  6 ft to dc.out
feed over from house.+, house.- by pair 8 AWG
  within 7 in to F2: fuse 60 A
  6 ft to dc.in
`);
	});

	test("wrong: in and out exchanged, told by the alternator", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
battery house lithium 12.8 V 100 Ah
dc-dc dc 20 A 12 V / 12 V
//    ^^ charging-reversed "In and out of dc are exchanged: it charges the battery that alt charges already, from the other one"
alternator alt 90 A 14 V
feed charge from engine.+ by single 4 AWG red
  within 7 in to F3: fuse ANL 100 A
  4 ft to alt.+
feed ret from engine.- by single 4 AWG black
  4 ft to alt.-
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 60 A
  6 ft to dc.out
feed over from house.+, house.- by pair 8 AWG
  within 7 in to F2: fuse 60 A
  6 ft to dc.in
`);
	});

	test("wrong: both sides on one battery", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
dc-dc dc 20 A 12 V / 12 V
//    ^^ charging-reversed "dc charges from the battery it charges: its in and out are joined"
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 60 A
  6 ft to dc.in
feed over from engine.+, engine.- by pair 8 AWG
  within 7 in to F2: fuse 60 A
  6 ft to dc.out
`);
	});
});

describe("solar modules", () => {
	test("right: one string and a disconnect", () => {
		checkRight(`solar roof 200 W, open 22 V, short 11 A
solar-controller mppt 40 A 12 V, limit 100 V
battery house lithium 12.8 V 100 Ah
feed charge from house.+, house.- by pair 6 AWG
  within 7 in to F1: fuse 60 A
  4 ft to mppt.out
feed sun from roof.+, roof.- by pair 10 AWG
  12 ft to D1: disconnect 30 A
  2 ft to mppt.in
`);
	});

	test("right: two strings need no fuses", () => {
		checkRight(`solar P1 200 W, open 22 V, short 11 A
solar P2 200 W, open 22 V, short 11 A
solar-controller mppt 40 A 12 V, limit 100 V
battery house lithium 12.8 V 100 Ah
feed charge from house.+, house.- by pair 6 AWG
  within 7 in to F1: fuse 60 A
  4 ft to mppt.out
feed s1 from P1.+ by single 10 AWG red
  6 ft to rp: bus 100 A
feed r1 from P1.- by single 10 AWG black
  6 ft to rm: bus 100 A
feed s2 from P2.+ by single 10 AWG red
  6 ft to rp
feed r2 from P2.- by single 10 AWG black
  6 ft to rm
feed sun from rp, rm by pair 8 AWG
  12 ft to D1: disconnect 60 A
  2 ft to mppt.in
`);
	});

	test("right: three strings, each with its fuse", () => {
		checkRight(`solar P1 200 W, open 22 V, short 11 A
solar P2 200 W, open 22 V, short 11 A
solar P3 200 W, open 22 V, short 11 A
solar-controller mppt 40 A 12 V, limit 100 V
battery house lithium 12.8 V 100 Ah
feed charge from house.+, house.- by pair 6 AWG
  within 7 in to F1: fuse 60 A
  4 ft to mppt.out
feed s1 from P1.+ by single 10 AWG red
  1 ft to FS1: fuse 15 A
  6 ft to rp: bus 100 A
feed r1 from P1.- by single 10 AWG black
  6 ft to rm: bus 100 A
feed s2 from P2.+ by single 10 AWG red
  1 ft to FS2: fuse 15 A
  6 ft to rp
feed r2 from P2.- by single 10 AWG black
  6 ft to rm
feed s3 from P3.+ by single 10 AWG red
  1 ft to FS3: fuse 15 A
  6 ft to rp
feed r3 from P3.- by single 10 AWG black
  6 ft to rm
feed sun from rp, rm by pair 8 AWG
  12 ft to D1: disconnect 60 A
  2 ft to mppt.in
`);
	});

	test("right: a controller the right way round", () => {
		checkRight(`solar roof 200 W, open 22 V, short 11 A
solar-controller mppt 40 A 12 V, limit 100 V
battery house lithium 12.8 V 100 Ah
feed charge from house.+, house.- by pair 6 AWG
  within 7 in to F1: fuse 60 A
  4 ft to mppt.out
feed sun from roof.+, roof.- by pair 10 AWG
  12 ft to D1: disconnect 30 A
  2 ft to mppt.in
`);
	});

	test("wrong: three strings without fuses", () => {
		checkMarked(`solar P1 200 W, open 22 V, short 11 A
//    ^^ strings-unfused "The string of P1 has no fuse of its own, and P2 and P3 can drive 22 A back through it"
solar P2 200 W, open 22 V, short 11 A
//    ^^ strings-unfused "The string of P2 has no fuse of its own, and P1 and P3 can drive 22 A back through it"
solar P3 200 W, open 22 V, short 11 A
//    ^^ strings-unfused "The string of P3 has no fuse of its own, and P1 and P2 can drive 22 A back through it"
solar-controller mppt 40 A 12 V, limit 100 V
battery house lithium 12.8 V 100 Ah
feed charge from house.+, house.- by pair 6 AWG
  within 7 in to F1: fuse 60 A
  4 ft to mppt.out
feed s1 from P1.+ by single 10 AWG red
  6 ft to rp: bus 100 A
feed r1 from P1.- by single 10 AWG black
  6 ft to rm: bus 100 A
feed s2 from P2.+ by single 10 AWG red
  6 ft to rp
feed r2 from P2.- by single 10 AWG black
  6 ft to rm
feed s3 from P3.+ by single 10 AWG red
  6 ft to rp
feed r3 from P3.- by single 10 AWG black
  6 ft to rm
feed sun from rp, rm by pair 8 AWG
  12 ft to D1: disconnect 60 A
  2 ft to mppt.in
`);
	});

	test("wrong: modules on the battery side of a controller", () => {
		checkMarked(`solar roof 200 W, open 22 V, short 11 A
solar-controller mppt 40 A 12 V, limit 100 V
//               ^^^^ charging-reversed "In and out of mppt are exchanged: roof, a solar module, is on the battery side"
battery house lithium 12.8 V 100 Ah
feed charge from house.+, house.- by pair 6 AWG
  within 7 in to F1: fuse 60 A
  4 ft to mppt.in
feed sun from roof.+, roof.- by pair 10 AWG
  12 ft to D1: disconnect 30 A
  2 ft to mppt.out
`);
	});
});
