// Leads between the metal of a vehicle or boat and what a fault on it has to come back to.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";

/** A van with two banks, a charger between them and an inverter. */
function van(bonds: string): string {
	return `battery start flooded 12 V 60 Ah
battery house agm 12 V 200 Ah
dc-dc step 20 A 12 V / 12 V
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
chassis body
feed up from start.+, start.- by pair 8 AWG
  within 12 in to F1: fuse 40 A
  9 ft to D1: disconnect 60 A
  1 ft to step.in
feed filled from house.+, house.- by pair 10 AWG
  within 12 in to F2: fuse 30 A
  2 ft to step.out
feed big from house.+ by single 2 AWG red
  within 7 in to F3: fuse class-T 125 A
  2 ft to inv.+
feed big-minus from house.- by single 2 AWG black
  2 ft to inv.-
panel LC main 15 A, spaces 4 from inv by 14-2, 6 ft
circuit desk from LC breaker 15 A by 14-2
  3 ft to d1: receptacle
${bonds}`;
}
const earth = "bond earth from house.- by single 4 AWG black\n  2 ft to body\n";
const starter = "bond starter-earth from start.- by single 8 AWG black\n  2 ft to body\n";
const cased = "bond case from inv.case by single 4 AWG green\n  2 ft to body\n";
const board = "bond board from LC.ground by single 8 AWG green\n  2 ft to body\n";

function boat(bonds: string): string {
	return `plan "Boat"
  region us
  rules boat
inlet dock 30 A 120 V
panel AC main 30 A two-pole, spaces 4 from dock by triplex 10 AWG, 8 ft
battery house agm 12 V 100 Ah
hull plate
circuit hot from AC breaker 20 A by triplex 12 AWG
  12 ft to wh: heater 1200 W
feed small from house.+, house.- by duplex 12 AWG
  within 7 in to F1: fuse 20 A
  6 ft to l1: light 6 W
${bonds}`;
}
const ground = "bond mains-ground from AC.ground by single 8 AWG green\n  6 ft to plate\n";
const minus = "bond minus-hull from house.- by single 8 AWG green\n  4 ft to plate\n";

function told(text: string, code: string): readonly string[] {
	return checkPlan(text, "plan")
		.findings.filter((finding) => finding.code === code)
		.map(({ level, title }) => `${level}: ${title}`);
}

describe("chassis-bond-missing is told of", () => {
	test("a battery that gets to the metal through a charger alone", () => {
		expect(told(van(earth + cased + board), "chassis-bond-missing")).toEqual([
			"warning: The minus of start is joined to body through step alone",
		]);
	});
	test("the other one, where that has the lead", () => {
		expect(told(van(starter + cased + board), "chassis-bond-missing")).toEqual([
			"warning: The minus of house is joined to body through step alone",
		]);
	});
	test("a machine whose case gets there through the mains' ground alone", () => {
		expect(told(van(earth + starter + board), "chassis-bond-missing")).toEqual([
			expect.stringMatching(
				/^warning: The case of inv is joined to body by way of .* alone, of 14 AWG: its positive asks for 4 AWG$/,
			),
		]);
	});
	test("a boat's minus on the plate, and the mains' ground not", () => {
		expect(told(boat(minus), "chassis-bond-missing")).toEqual([
			"warning: The ground of dock is not joined to plate, which the minus is on",
		]);
	});
	test("a boat's mains' ground on the plate, and the minus not", () => {
		expect(told(boat(ground), "chassis-bond-missing")).toEqual(["warning: The minus of house is not joined to plate"]);
	});
});

describe("chassis-bond-missing is not told of", () => {
	test.each([
		["a van in which each has its lead", van(earth + starter + cased + board)],
		["a boat with both on the plate", boat(ground + minus)],
	])("%s", (_, text) => {
		expect(told(text, "chassis-bond-missing")).toEqual([]);
	});
	test("a case without any way to the metal: that is another fault", () => {
		const text = van(earth + starter).replace("panel LC", "// panel LC");
		expect(told(text, "chassis-bond-missing").filter((title) => title.includes("inv"))).toEqual([]);
	});
	test("a boat with neither on the plate but as a note", () => {
		expect(told(boat(""), "chassis-bond-missing")).toEqual(["note: The minus of house is not joined to plate"]);
	});
});

describe("chassis-bond-small", () => {
	const small = (text: string): readonly string[] => told(text, "chassis-bond-small");
	test("is told by the battery's own positive, also above another in a series", () => {
		const row = (size: string): string => `battery b1 lithium 12.8 V 200 Ah
battery b2 lithium 12.8 V 200 Ah
chassis body
feed middle from b1.- by single 1/0 black
  1 ft to b2.+
feed main from b1.+ by single 1/0 red
  within 7 in to F1: fuse class-T 200 A
  1 ft to plus: bus 300 A
feed back from b2.- by single 1/0 black
  1 ft to minus: bus 300 A
feed small from plus, minus by pair 12 AWG
  bolted to F2: fuse 20 A
  6 ft to l1: light 6 W 24 V
bond earth from minus by single ${size} black
  2 ft to body
`;
		expect(small(row("2 AWG"))).toEqual([expect.stringContaining("beside main-1.red of 1/0 AWG: 1 AWG at least")]);
		expect(small(row("1 AWG"))).toEqual([]);
	});
	test("is told of a lead to a boat's plate below 8 AWG, and not from there up", () => {
		expect(small(boat(ground + minus))).toEqual([]);
		expect(small(boat(ground.replace("8 AWG", "10 AWG") + minus))).toEqual([
			"warning: mains-ground-1.green joins to plate with 10 AWG: 8 AWG at least",
		]);
		expect(small(boat(ground + minus.replace("8 AWG", "12 AWG")))).toHaveLength(1);
	});
});
