// The cable of a starter: it needs no device by custom and by rule, and what branches off it does.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

describe("the cable of a starter", () => {
	test("right: no fuse", () => {
		checkRight(`battery engine flooded 12 V 80 Ah
starter st 200 A
feed ground from engine.- by single 2/0 black
  4 ft to st.-
feed crank from engine.+ by single 2/0 red
  4 ft to st.+
`);
	});

	test("right: a fused branch off it", () => {
		checkRight(`battery engine flooded 12 V 80 Ah
starter st 200 A
feed ground from engine.- by single 2/0 black
  4 ft to st.-
feed crank from engine.+ by single 2/0 red
  4 ft to st.+
feed lamp from st.+ by single 14 AWG red
  within 7 in to F1: fuse 10 A
  3 ft to l1: light 6 W
feed lampn from l1.- by single 14 AWG black
  3 ft to st.-
`);
	});

	const engines = `battery port flooded 12 V 80 Ah
battery starboard flooded 12 V 80 Ah
starter st1 200 A
starter st2 200 A
feed ground1 from port.- by single 2/0 black
  4 ft to st1.-
feed ground2 from starboard.- by single 2/0 black
  4 ft to st2.-
feed tie from port.- by single 2/0 black
  4 ft to starboard.-
feed crank1 from port.+ by single 2/0 red
  2 ft to off1: disconnect 300 A
  2 ft to st1.+
feed crank2 from starboard.+ by single 2/0 red
  2 ft to off2: disconnect 300 A
  2 ft to st2.+
feed across from off1 by single 2/0 red
  2 ft to both: disconnect 300 A
  2 ft to off2.load
`;

	test("right: two banks that start two engines, with a switch across", () => {
		checkRight(engines);
	});

	test("wrong: a branch off the lead across", () => {
		checkMarked(`${engines}feed lamp from both by single 14 AWG red
  3 ft to l1: light 6 W
//        ^^ protection-missing "before l1"
feed lampn from l1.- by single 14 AWG black
  3 ft to st1.-
`);
	});

	test("wrong: a branch off the starter's stud", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
starter st 200 A
feed ground from engine.- by single 2/0 black
  4 ft to st.-
feed crank from engine.+ by single 2/0 red
  4 ft to st.+
feed lamp from st.+ by single 14 AWG red
  3 ft to l1: light 6 W
//        ^^ protection-missing "No fuse or breaker protects 14 AWG in lamp-1 from engine before l1"
feed lampn from l1.- by single 14 AWG black
  3 ft to st.-
`);
	});

	test("wrong: a branch off the battery", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
starter st 200 A
feed ground from engine.- by single 2/0 black
  4 ft to st.-
feed crank from engine.+ by single 2/0 red
  4 ft to st.+
feed lamp from engine.+, engine.- by pair 14 AWG
  3 ft to l1: light 6 W
//        ^^ protection-missing "No fuse or breaker protects 14 AWG in lamp-1 from engine before l1"
`);
	});

	test("wrong: an alternator on the starter's stud", () => {
		checkMarked(`battery engine flooded 12 V 80 Ah
starter st 200 A
feed ground from engine.- by single 2/0 black
  4 ft to st.-
feed crank from engine.+ by single 2/0 red
  4 ft to st.+
alternator alt 90 A 14 V
feed charge from st.+ by single 4 AWG red
  2 ft to alt.+
//        ^^^^^ protection-missing "No fuse or breaker protects 4 AWG in charge-1 from engine before alt"
feed home from engine.- by single 4 AWG black
  4 ft to alt.-
`);
	});
});
