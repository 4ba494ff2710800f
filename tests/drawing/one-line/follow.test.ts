// The way of the power as the one-line diagram tells it, for each shape a plan can have.
import { expect, test } from "vitest";
import { stepsOf } from "./steps-of.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

test("from the source over main and bus to each breaker and its loads", () => {
	expect(
		stepsOf(`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit light from LC breaker 15 A by 14-2
  4 ft to s1: switch
  3 ft to l1: light 9 W
`),
	).toBe(`start shore: shore-inlet
by LC-1
through LC.main: breaker-us
bus LC
  1.
  through LC.1: breaker-us
  by bunks-1
  end b1: receptacle-us
  2.
  through LC.2: breaker-us
  by light-1
  through s1: switch
  by light-2
  end l1: lamp-us`);
});

test("the region decides the form of a symbol", () => {
	const steps = stepsOf(`plan "Tiny house"
  region iec
${supply.replace("120 V", "230 V").replaceAll("10-2", "3G2.5").replace("12 ft", "4 m").replaceAll("30 A", "16 A")}circuit a from LC breaker 16 A by 3G2.5
  4 m to r1: receptacle
`);
	expect(steps).toContain("through LC.1: breaker-iec");
	expect(steps).toContain("end r1: receptacle-iec");
});

test("a ground-fault receptacle stands in the line and ends in its own outlets", () => {
	const steps = stepsOf(`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
   5 ft to g2: receptacle
circuit bath from LC breaker 20 A by 12-2
   9 ft to g3: gfci
`);
	expect(steps).toContain("through g1: ground-fault\n  by galley-2\n  end g2: receptacle-us");
	expect(steps).toContain("through g3: ground-fault\n  end g3: receptacle-us");
});

test("what leaves from the line side of a device is not behind it", () => {
	const steps = stepsOf(`${supply}circuit a from LC breaker 15 A by 14-2
  4 ft to s1: switch
  3 ft to l1: light 9 W
  from s1.line
    5 ft to r1: receptacle
`);
	expect(steps).toContain(`  by a-1
  split
    1.
    through s1: switch
    by a-2
    end l1: lamp-us
    2.
    by a-3
    end r1: receptacle-us`);
});

test("an inverter-charger is passed on the way from shore to panel", () => {
	const steps = stepsOf(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit a from LC breaker 20 A by 12-2
  4 ft to r1: receptacle
`);
	expect(steps.split("\n").slice(0, 5)).toEqual([
		"start shore: shore-inlet",
		"by supply-1",
		"through inv: inverter-charger",
		"by LC-1",
		"through LC.main: breaker-us",
	]);
});

test("a second way to the same panel is told by a flag, and every cable is drawn once", () => {
	const steps = stepsOf(`${supply}generator gen 3000 W 120 V
feed spare from gen by 10-2
  9 ft to LC
circuit a from LC breaker 20 A by 12-2
  5 ft to r1: receptacle
  5 ft to r2: receptacle
circuit b from LC breaker 20 A by 12-2
  4 ft to r3: receptacle
  4 ft to r2
`);
	expect(steps).toContain("start gen: generator\nby spare-1\nflag to LC");
	expect(steps).toContain("by b-2\n  flag to r2");
	for (const tag of ["LC-1", "spare-1", "a-1", "a-2", "b-1", "b-2"]) expect(steps.split(tag)).toHaveLength(2);
});

test("what nothing feeds is drawn and says so", () => {
	const steps = stepsOf("panel LC main 30 A\ncircuit a from LC breaker 20 A by 12-2\n  5 ft to r1: receptacle\n").split(
		"\n",
	);
	expect([steps[0], steps.at(-1)?.trim()]).toEqual(["flag fed by nothing", "end r1: receptacle-us"]);
	expect(stepsOf("")).toBe("");
});

test("a breaker without a circuit is spare", () => {
	expect(
		stepsOf(
			`${supply.trimEnd()}\n  slot 1: breaker 20 A\n  slot 2: breaker 15 A\ncircuit a from LC.1 by 12-2\n  5 ft to r1: receptacle\n`,
		),
	).toContain("2.\n  through LC.2: breaker-us");
});

test("a device whose hot is not landed still stands beside its line", () => {
	const steps = stepsOf(`${supply}circuit a from LC breaker 20 A by 12-2
  5 ft to r1: receptacle
  5 ft to r2: receptacle
at r1
  a-1.black loose
  a-2.black capped
at r2
  a-2.black loose
`);
	for (const name of ["r1", "r2", "a-1", "a-2"]) expect(steps).toContain(name);
});

test("alike neighbours are drawn together, unless a finding marks one", () => {
	const plan = `${supply}circuit a from LC breaker 20 A by 12-2
  5 ft to r1: receptacle
  6 ft to r2: receptacle
  7 ft to r3: receptacle
`;
	expect(stepsOf(plan)).toContain("  by a-1+a-2+a-3\n  end r1+r2+r3: receptacle-us");
	expect(stepsOf(plan, ["r2"])).toContain(
		"  by a-1\n  tap r1: receptacle-us\n  by a-2\n  tap r2: receptacle-us\n  by a-3\n  end r3: receptacle-us",
	);
});

test("another cable or another device keeps neighbours apart", () => {
	expect(
		stepsOf(`${supply}circuit a from LC breaker 20 A by 12-2
  5 ft to r1: receptacle
  6 ft by 10-2 to r2: receptacle
  7 ft to r3: light 9 W
`),
	).not.toContain("+");
});

test("a split receptacle is half switched only where a switch opens one half", () => {
	const shared = `inlet shore 50 A, 120 V / 240 V
panel LC main 50 A legs 2, spaces 8 from shore by 6-3, 12 ft
circuit counter from LC breaker 20 A two-pole by 12-3
  14 ft to k1: receptacle split
`;
	expect(stepsOf(shared)).toContain("end k1: receptacle-split-us");
	const oneSwitch = `${supply}circuit a from LC breaker 15 A by 14-2
  4 ft to s1: switch
  3 ft by 14-3 to k1: receptacle split
at s1
  a-1.black, a-2.black on s1.line
  a-2.red on s1.load
`;
	expect(stepsOf(oneSwitch)).toContain("k1: receptacle-half-switched-us");
	expect(
		stepsOf(
			oneSwitch
				.replace("a-1.black, a-2.black on s1.line", "a-1.black on s1.line")
				.replace("a-2.red on", "a-2.red, a-2.black on"),
		),
	).toContain("k1: receptacle-split-us");
});

test("a frame that only a bonding conductor leads to is no part of it", () => {
	const bonded = `${supply}bond frame from LC.ground by single 8 AWG green
  3 ft to chassis: box metal
`;
	expect(stepsOf(bonded)).not.toContain("fed by nothing");
	expect(stepsOf(bonded)).not.toContain("chassis");
});
