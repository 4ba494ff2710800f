// Sources behind transfer switches: what is live in which mode, which neutral has its bond, and what is fed from behind.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const two = (transfer: string, bonding = ", bonds neutral to frame"): string => `inlet shore 30 A 120 V
generator gen 3600 W 120 V${bonding}
transfer-switch TS 30 A ${transfer}
feed line from shore by 10-2
  12 ft to TS.1
feed backup from gen by 10-2
  8 ft to TS.2
panel LC main 30 A from TS by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
const modesOf = (text: string): string[] =>
	checkPlan(text, "plan").analysis.circuit.modes.map(({ name, summary }) => `${name}: ${summary}`);
const levelled = (text: string): string[] =>
	checkPlan(text, "plan")
		.findings.filter(({ level }) => level !== "note")
		.map(({ code, modes }) => [code, ...modes].join(" "));

describe("a transfer switch", () => {
	test("that moves hot and neutral gives each source its own bond", () => {
		checkRight(two("two-pole centre off"));
		checkRight(two("two-pole", ", bonding plug"));
	});
	test("stands toward the source that is live", () => {
		expect(modesOf(two("two-pole"))).toEqual(["shore: shore is live; TS at 1", "gen: gen is live; TS at 2"]);
	});
	test("that moves the hot alone leaves a bonded generator's bond beside that of shore", () => {
		checkMarked(
			two("single-pole").replace(
				"transfer-switch",
				'//        ^^^ bond-doubled "bonded twice in mode shore"\ntransfer-switch',
			),
		);
	});
	test("that moves the hot alone leaves a floating generator to the bond of shore, which is away", () => {
		expect(levelled(two("single-pole", ""))).toEqual(["bond-missing gen"]);
	});
	test("that moves both leaves a floating generator without a bond", () => {
		expect(levelled(two("two-pole", ""))).toEqual(["bond-missing gen"]);
	});
	test("with a source on its output feeds that from behind", () => {
		const crossed = two("two-pole").replace("8 ft to TS.2", "8 ft to TS.out").replace("from TS by", "from TS.2 by");
		expect(levelled(crossed)).toContain("inlet-live");
	});
	test("passed by a second feed ties both sources together", () => {
		expect(levelled(`${two("two-pole")}feed past from gen by 10-2\n  9 ft to LC\n`)).toContain("inlet-live shore");
	});
	test("is not told which input a cable goes to", () => {
		expect(levelled(two("two-pole").replace("8 ft to TS.2", "8 ft to TS"))).toContain("side-unknown");
	});
	test("too small for the device ahead of it", () => {
		expect(levelled(two("two-pole").replace("TS 30 A", "TS 20 A"))).toEqual(["device-undersized"]);
	});
	test("on two legs moves the neutral too, or leaves it", () => {
		const cabin = (poles: string, bonding: string): string => `inlet pole 50 A 120/240 V
generator gen 50 A 120/240 V${bonding}
transfer-switch TS 50 A 120/240 V ${poles}
feed line from pole by 6-3
  12 ft to TS.1
feed backup from gen by 6-3
  8 ft to TS.2
panel LC legs 2, main 50 A from TS by 6-3, 6 ft
circuit heat from LC breaker two-pole 20 A by 12-3
  14 ft to k1: receptacle split
`;
		checkRight(cabin("three-pole", ", bonds neutral to frame"));
		expect(levelled(cabin("two-pole", ", bonds neutral to frame"))).toEqual(["bond-doubled pole"]);
	});
});

describe("modes", () => {
	test("follow through a transfer switch and an inverter-charger", () => {
		const text = `inlet shore 30 A 120 V
generator gen 3600 W 120 V, bonds neutral to frame
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
transfer-switch TS 30 A
feed line from shore by 10-2
  12 ft to TS.1
feed backup from gen by 10-2
  8 ft to TS.2
feed entry from TS by 10-2
  3 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
		checkRight(text);
		expect(modesOf(text)).toEqual([
			"shore: shore is live; inv passes it through; TS at 1",
			"gen: gen is live; inv passes it through; TS at 2",
			"inv: inv is live; TS at 1",
		]);
	});
	test("a shore mode has the switch at shore, though the inverter behind the other input runs", () => {
		const text = `inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
transfer-switch TS 30 A
transfer-switch T0 30 A
feed line from shore by 10-2
  12 ft to T0.1
feed on from T0 by 10-2
  3 ft to TS.1
feed backup from inv by 10-2
  8 ft to TS.2
panel LC main 30 A from TS by 10-2, 6 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`.replace("feed on", "feed link-up");
		expect(modesOf(text)).toEqual([
			"shore: shore and inv are live; TS at 1; T0 at 1",
			"inv: inv is live; TS at 2; T0 at 1",
		]);
	});
	test("as said", () => {
		const said = `${two("two-pole centre off")}mode parked: shore
mode lunch: gen, shore
mode both: shore, gen TS at gen
mode packed: shore TS at off
`;
		expect(modesOf(said)).toEqual([
			"parked: shore is live; TS at 1",
			"lunch: gen and shore are live; TS at 2",
			"both: shore and gen are live; TS at 2",
			"packed: shore is live; TS at off",
		]);
		checkRight(said);
	});
	test("with a position that the switch does not have", () => {
		checkMarked(`${two("two-pole")}mode packed: shore TS at off
//                       ^^^ mode-position-unknown "TS has no position off"
mode odd: shore LC at 1
//              ^^ mode-position-unknown "LC is no transfer switch"
`);
	});
	test("with two sources on one bus at once", () => {
		expect(
			levelled(`inlet shore 30 A 120 V
inlet dock 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
feed second from dock by 10-2
  5 ft to LC
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
mode both: shore, dock
`),
		).toContain("sources-paralleled");
	});
});
