// Slots of a panel: declared or the next free one, half-size breakers, two-pole breakers, full panels, panels that feed themselves.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { readPlan, supply } from "./read-plan.ts";

/** Names of the breakers in a panel, in the order of the text. */
function breakersOf(text: string, panel = "LC"): string[] {
	return readPlan(text)
		.plan.things.filter((thing) => thing.owner === panel && thing.blueprint.protection !== undefined)
		.map((thing) => thing.name);
}

function circuits(...starts: string[]): string {
	return starts
		.map((start, index) => `circuit c${index} from ${start} by 12-2\n  4 ft to r${index}: receptacle\n`)
		.join("");
}

describe("which slot", () => {
	test("the next free one", () => {
		expect(breakersOf(supply + circuits("LC breaker 20 A", "LC breaker 15 A"))).toEqual(["LC.main", "LC.1", "LC.2"]);
	});

	test("one that is declared", () => {
		const text = `${supply}  slot 3: breaker 20 A\n${circuits("LC.3")}`;
		expect(breakersOf(text)).toEqual(["LC.3", "LC.main"]);
		expect(readPlan(text).told).toEqual([]);
	});

	test("declared ones are passed over", () => {
		const text = `${supply}  slot 1: breaker 20 A\n  slot 2: breaker 20 A\n${circuits("LC breaker 20 A")}`;
		expect(breakersOf(text)).toContain("LC.3");
	});

	test("one named with its breaker", () => {
		expect(breakersOf(supply + circuits("LC.5 breaker 20 A", "LC breaker 20 A"))).toEqual(["LC.main", "LC.5", "LC.1"]);
	});

	test("half-size breakers share a space, which is then taken", () => {
		const text = `${supply}  slot 1A: breaker 20 A\n  slot 1B: breaker 15 A\n${circuits("LC.1A", "LC.1B", "LC breaker 20 A")}`;
		expect(breakersOf(text)).toEqual(["LC.1A", "LC.1B", "LC.main", "LC.2"]);
		expect(readPlan(text).told).toEqual([]);
	});

	test("a two-pole breaker on two legs takes the next space on its side", () => {
		const two = "inlet pole 50 A, 120 V / 240 V\npanel LC main 50 A, legs 2 from pole by 6-3, 20 ft\n";
		const text = two + circuits("LC breaker 20 A two-pole", "LC breaker 20 A", "LC breaker 20 A");
		expect(breakersOf(text)).toEqual(["LC.main", "LC.1", "LC.2", "LC.4"]);
	});
});

describe("bars in a panel", () => {
	test("a bar's own name takes no slot, whatever it ends in", () => {
		const text = `${supply}  GB-1: ground-bar\n${circuits("LC breaker 20 A")}`;
		expect(breakersOf(text)).toEqual(["LC.main", "LC.1"]);
	});

	test("a declared neutral bar is bonded where the panel says so", () => {
		const bar = (panel: string, said: string) =>
			readPlan(
				`inlet shore 30 A 120 V\npanel LC main 30 A${panel} from shore by 10-2, 12 ft\n  NB: neutral-bar 8${said}\n`,
			).plan.thingByName.get("nb")?.blueprint.face.text;
		expect(bar(" bonding screw", "")).toBe("neutral bar, bonded to the case");
		expect(bar(" bonding screw", " isolated")).toBe("neutral bar, isolated");
		expect(bar("", " bonded")).toBe("neutral bar, bonded to the case");
		expect(bar("", "")).toBe("neutral bar, isolated");
	});
});

describe("which leg", () => {
	const two = "inlet pole 50 A, 120 V / 240 V\npanel LC main 50 A, legs 2 from pole by 6-3, 20 ft\n";
	const legsOf = (name: string, text: string) =>
		readPlan(text)
			.plan.thingByName.get(name.toLowerCase())
			?.blueprint.plugs?.map((plug) => plug.owner);

	test.each([
		["LC.1", ["bus.A"]],
		["LC.2", ["bus.A"]],
		["LC.3", ["bus.B"]],
		["LC.4", ["bus.B"]],
		["LC.5", ["bus.A"]],
	])("%s plugs on to %s", (name, legs) => {
		const text = two + circuits(...Array<string>(5).fill("LC breaker 20 A"));
		expect(legsOf(name, text)).toEqual(legs);
	});

	test("a two-pole breaker is on both", () => {
		expect(legsOf("LC.1", two + circuits("LC breaker 20 A two-pole"))).toEqual(["bus.A", "bus.B"]);
	});

	test("on one leg everything is on it", () => {
		expect(legsOf("LC.3", supply + circuits(...Array<string>(3).fill("LC breaker 20 A")))).toEqual(["bus.A"]);
	});
});

describe("what is wrong with slots", () => {
	test("one slot twice", () => {
		const { told } = readPlan(`${supply}  slot 1: breaker 20 A\n  slot 1: breaker 15 A\n${circuits("LC.1")}`);
		expect(told).toEqual(["4:1 slot-twice"]);
	});

	test("a circuit with its own breaker in a slot that is taken", () => {
		const { told } = readPlan(`${supply}  slot 1: breaker 20 A\n${circuits("LC.1 breaker 15 A")}`);
		expect(told).toContain("4:LC.1 slot-twice");
	});

	test("a slot without a breaker", () => {
		expect(readPlan(supply + circuits("LC.9")).told).toContain("3:LC.9 slot-unknown");
	});

	test("a panel without saying which breaker", () => {
		expect(readPlan(supply + circuits("LC")).told).toContain("3:LC slot-unknown");
	});

	test("more circuits than spaces", () => {
		const small = "inlet shore 30 A 120 V\npanel LC main 30 A, spaces 2 from shore by 10-2, 12 ft\n";
		const { told } = readPlan(small + circuits("LC breaker 20 A", "LC breaker 20 A", "LC breaker 20 A"));
		expect(told).toContain("7:LC panel-full");
		expect(breakersOf(small + circuits("LC breaker 20 A", "LC breaker 20 A"))).toEqual(["LC.main", "LC.1", "LC.2"]);
	});

	test("slots of what has none", () => {
		expect(readPlan("inlet shore 30 A\n  slot 1: breaker 20 A\n").told).toEqual(["2:slot kind-misplaced"]);
	});

	test("a receptacle in a slot", () => {
		expect(readPlan(`${supply}  slot 1: receptacle\n`).told).toEqual(["3:receptacle kind-misplaced"]);
	});
});

describe("what a panel brings", () => {
	const partsOf = (text: string): string[] =>
		readPlan(text)
			.plan.things.filter((thing) => thing.owner === "LC")
			.map((thing) => `${thing.name} ${thing.blueprint.face.text}`);

	test("where a thing may stand is told with where it may not", () => {
		const { findings } = checkPlan(
			`${supply}feed on from LC by 10-2\n  2 ft to M1: ground-fault-breaker 15 A\n`,
			"van.ferrule",
		);
		expect(findings.find(({ code }) => code === "kind-misplaced")?.help).toBe(
			"It stands indented below a panel, `NAME: ground-fault-breaker`.",
		);
	});

	test("a main, an isolated neutral bar, a ground bar on its case", () => {
		expect(partsOf(supply)).toEqual([
			"LC.main 30 A main",
			"LC.neutral neutral bar, isolated",
			"LC.ground ground bar, bonded to the case",
		]);
	});

	test("no main where it has lugs only", () => {
		expect(partsOf("inlet s 30 A\npanel LC lugs only from s by 10-2, 3 ft\n")).toEqual([
			"LC.neutral neutral bar, isolated",
			"LC.ground ground bar, bonded to the case",
		]);
	});

	test("bonded, its neutral bar is joined to the case", () => {
		expect(partsOf("inlet s 30 A\npanel LC main 30 A bonded from s by 10-2, 3 ft\n")).toContain(
			"LC.neutral neutral bar, bonded to the case",
		);
	});

	test("a bar that is declared takes the place of its own", () => {
		expect(partsOf(`${supply}  NB: neutral-bar ports 8\n`)).toEqual([
			"NB neutral bar, isolated",
			"LC.main 30 A main",
			"LC.ground ground bar, bonded to the case",
		]);
	});
});

describe("panels that feed themselves", () => {
	test("through one cable", () => {
		const { told } = readPlan(`${supply}feed back from LC breaker 20 A by 12-2\n  4 ft to LC\n`);
		expect(told).toEqual(["4:LC panel-fed-by-itself"]);
	});

	test("over another panel", () => {
		const { told } = readPlan(`${supply}feed second from LC breaker 20 A by 12-2
  4 ft to P2: panel main 20 A
feed back from P2 breaker 15 A by 14-2
  4 ft to LC
`);
		expect(told.map((line) => line.split(" ").at(-1))).toContain("panel-fed-by-itself");
	});

	test("a panel behind a panel is right", () => {
		const { told } = readPlan(`${supply}feed second from LC breaker 20 A by 12-2
  4 ft to P2: panel main 20 A
circuit one from P2 breaker 15 A by 14-2
  4 ft to r1: receptacle
`);
		expect(told).toEqual([]);
	});

	test("a panel whose own line says what feeds it may hang on one that a run declares", () => {
		const { told, plan } = readPlan(`inlet shore 30 A 120 V
panel P2 main 20 A from LC.1 by 12-2, 4 ft
feed first from shore by 10-2
  12 ft to LC: panel main 30 A
    slot 1: breaker 20 A
`);
		expect(told).toEqual([]);
		expect(plan.runs.find(({ name }) => name === "P2")?.hops[0]?.from.thing).toBe("LC.1");
	});
});

test("a bar that takes the place of the usual one goes by that one's name too", () => {
	const bonded = `${supply}  GB: ground-bar 8\nchassis frame\nbond board from LC.ground by single 8 AWG green\n  6 ft to frame\n`;
	expect(readPlan(bonded).told).toEqual([]);
});
