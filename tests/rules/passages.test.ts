// Grounds and shared neutrals go on in a joint of the box, never through a device that is taken off one day.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const legs = `inlet pole 50 A 120/240 V
panel LC main 50 A 120/240 V from pole by 6-3, 20 ft
`;

describe("a ground through a device", () => {
	test("both under one plate", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle terminals plate
   9 ft to b2: receptacle
at b1
  bunks-1.bare, bunks-2.bare on b1.ground
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ ground-through-device "The ground of b2 goes through b1.ground"
`);
	});
	test("one is joined, the next hangs on the device", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
   9 ft to b3: switch terminals plate
   9 ft to b4: light 9 W
at b3
  bunks-3.bare, bunks-4.bare on b3.ground
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ ground-through-device "The ground of b4 goes through b3.ground"
`);
	});
	test("a metal box that has its ground from the device's screw", () => {
		checkMarked(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle terminals plate, box metal
at b1
  bunks-1.bare on b1.ground
  link b1.ground, b1.case by 12 AWG bare
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ ground-through-device "The ground of b1 goes through b1.ground"
`);
	});
	test("a pigtail is right", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  join bunks-1.bare, bunks-2.bare, b1.ground
`);
	});
	test("at the end of a run nothing is behind it", () => {
		checkRight(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.bare on b1.ground
`);
	});
	test("in a disconnect's own case both land on its lug", () => {
		checkRight(`${supply}circuit heat from LC breaker 20 A by 12-2
  8 ft to d1: disconnect 30 A
  3 ft to h1: heater 1400 W
`);
	});
});

describe("a shared neutral through a device", () => {
	test("on both of its silver screws", () => {
		checkMarked(`${legs}circuit counter from LC breaker 20 A two-pole by 12-3
  14 ft to k1: receptacle split
   9 ft to k2: receptacle split
at k1
  counter-1.white, counter-2.white on k1.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-shared-unsafely "The shared neutral of k2 goes through k1.neutral"
`);
	});
	test("a receptacle on one of the legs carries the neutral of the other on", () => {
		checkMarked(`${legs}circuit counter from LC breaker 20 A two-pole by 12-3
  14 ft to k1: receptacle
   9 ft to k2: receptacle split
at k1
  counter-1.white, counter-2.white on k1.neutral
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-shared-unsafely "The shared neutral of k2 goes through k1.neutral"
`);
	});
	test("spliced with a pigtail", () => {
		checkRight(`${legs}circuit counter from LC breaker 20 A two-pole by 12-3
  14 ft to k1: receptacle split
   9 ft to k2: receptacle split
at k1
  join counter-1.white, counter-2.white, k1.neutral
`);
	});
	test("of one hot alone, through a device, is usual", () => {
		checkRight(`${legs}circuit room from LC breaker 20 A by 12-2
  14 ft to r1: receptacle
   9 ft to r2: receptacle
at r1
  room-1.white, room-2.white on r1.neutral
`);
	});
	test("behind the last splice one hot is left: its own neutral may pass", () => {
		checkRight(`${legs}circuit counter from LC breaker 20 A two-pole by 12-3
  14 ft to j1: box
  from j1
    6 ft by 12-2 to r1: receptacle
  from j1.second
    8 ft by 12-2 to r2: receptacle
`);
	});
});
