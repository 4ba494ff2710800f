// Panels in a row: how each is fed, where neutral and ground are bonded, bars and straps, feeders of aluminium.
import { describe, expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";
import { endsIn, wireRight } from "./wire-plan.ts";

const building = "plan\n  rules building\n";
const main = `${building}inlet pole 60 A 120/240 V
panel LC main 60 A 120/240 V from pole by 4-3, 12 ft
`;
const branch = (panel: string) => `circuit one from ${panel} breaker 15 A by 14-2
  9 ft to l1: light 9 W
`;

describe("panels in a row", () => {
	test("a main panel, a subpanel of lugs, and one with a main behind it", () => {
		checkRight(`${main}  slot 1: breaker two-pole 40 A
feed annex from LC.1 by 8-3
  20 ft to SP: panel lugs only, legs 2
    slot 1: breaker two-pole 30 A
feed shed from SP.1 by 10-3
  30 ft to TP: panel main 30 A, legs 2
${branch("TP")}`);
	});
	test("a subpanel whose bonding screw is left in", () => {
		checkMarked(`${main}  slot 1: breaker two-pole 40 A
feed annex from LC.1 by 8-3
  20 ft to SP: panel lugs only, legs 2
//         ^^ bond-doubled
    bonding screw
${branch("SP")}`);
	});
	test("the same with the screw taken out", () => {
		checkRight(`${main}  slot 1: breaker two-pole 40 A
feed annex from LC.1 by 8-3
  20 ft to SP: panel lugs only, legs 2
    no bonding screw
${branch("SP")}`);
	});
	test("a main panel on a floating source without its strap", () => {
		const floating = (words: string) => `generator gen 7200 W 120/240 V, floating
panel LC main 30 A, legs 2, ${words} from gen by 10-3, 12 ft
${branch("LC")}`;
		checkRight(floating("bonding strap"));
		checkMarked(`generator gen 7200 W 120/240 V, floating
//        ^^^ bond-missing
panel LC main 30 A, legs 2, no bonding strap from gen by 10-3, 12 ft
${branch("LC")}`);
	});
	test("a feeder of three conductors: the subpanel has no ground of its own", () => {
		checkMarked(`${main}  slot 1: breaker two-pole 40 A
feed annex from LC.1 by single 8 AWG black
  20 ft to SP: panel lugs only
//         ^^ conductors-too-few
${branch("SP")}// also ground-broken enclosure-unbonded end-loose
`);
	});
	test("feeders of aluminium from lug to lug", () => {
		checkRight(`${main}  slot 1: breaker two-pole 40 A
feed annex from LC.1 by 6-3 aluminium
  40 ft to SP: panel lugs only, legs 2, largest 2/0
${branch("SP")}`);
	});
});

describe("several bars in a panel", () => {
	const bars = (words: string) => `${main}  NA: neutral-bar 8
  NB: neutral-bar 8 ${words}
  GA: ground-bar 8
  GB: ground-bar 8
${branch("LC")}at LC
  one-1.white on NB.1
  one-1.bare on GB.1
`;
	test("are strapped together", () => {
		const circuit = wireRight(bars(""));
		expect(endsIn(circuit, "LC").filter((end) => /^(LC|one)-1.(white|bare)/.test(end))).toEqual([
			"LC-1.white on NA.1",
			"LC-1.bare on GA.1",
			"one-1.white on NB.1",
			"one-1.bare on GB.1",
		]);
		checkRight(bars(""));
	});
	test("one that stands apart is dead, and what is on it has no way back", () => {
		checkMarked(`${bars("apart").trimEnd().split("\n").slice(0, -1).join("\n")}
//^^^^^^^^^^^^^^^^^^^ end-loose "one-1.white is not joined to the other neutrals in LC"
  one-1.bare on GB.1
`);
	});
	test("nothing lands by itself on one that stands apart", () => {
		const circuit = wireRight(`${main}  NA: neutral-bar 1
  NB: neutral-bar 8 apart
  NC: neutral-bar 8
${branch("LC")}`);
		expect(endsIn(circuit, "LC").filter((end) => end.includes("white"))).toEqual([
			"LC-1.white on NA.1",
			"one-1.white on NC.1",
		]);
	});
	test("a ground bar in a case of plastic is joined to the other", () => {
		checkRight(`inlet shore 30 A 120 V
panel LC main 30 A, plastic from shore by 10-2, 12 ft
  GA: ground-bar 8
  GB: ground-bar 8
${branch("LC")}at LC
  one-1.bare on GB.1
`);
	});
});
