// Which sources are live when, what a machine then does, and which joints exist in which mode.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { supply, wirePlan, wireRight } from "./wire-plan.ts";

const charger = `inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
`;

const modesOf = (text: string) => wireRight(text).modes.map(({ name, live }) => [name, live]);
const linksOf = (text: string, nature: string) => {
	const { links, points } = wireRight(text);
	return links
		.filter((link) => link.nature === nature)
		.map(({ between, modes }) => [
			between.map((point) => points[point]?.name).join(" = "),
			modes === undefined ? "always" : [...modes].join(" "),
		]);
};

describe("modes that follow from the sources", () => {
	test("shore alone", () => {
		expect(modesOf(supply)).toEqual([["shore", ["shore"]]]);
	});

	test("an inverter-charger passes shore through, and makes its own without it", () => {
		expect(modesOf(charger)).toEqual([
			["shore", ["shore"]],
			["inv", ["inv"]],
		]);
	});

	test("an inverter-charger that a mode does not name passes on what comes in all the same", () => {
		const bonds = `${charger.replace("when inverting", "to frame")}mode parked: shore\nmode camping: inv without shore\n`;
		expect(modesOf(bonds)).toEqual([
			["parked", ["shore"]],
			["camping", ["inv"]],
		]);
		expect(checkPlan(bonds, "van.ferrule").findings.map(({ code }) => code)).toContain("bond-doubled");
	});

	test("one for each outside supply", () => {
		expect(modesOf("inlet shore 30 A\ngenerator gen 3000 W\n")).toEqual([
			["shore", ["shore"]],
			["gen", ["gen"]],
		]);
	});

	test("a source that feeds nothing of a charger's input leaves it inverting", () => {
		expect(
			modesOf("inlet shore 30 A\ninverter-charger inv 2000 W\npanel LC main 30 A from inv.out by 10-2, 6 ft\n"),
		).toEqual([
			["shore", ["shore", "inv"]],
			["inv", ["inv"]],
		]);
	});

	test("nothing that gives power, no mode", () => {
		expect(wirePlan("").circuit.modes).toEqual([]);
	});
});

describe("modes as named", () => {
	test("take the place of those that follow", () => {
		expect(modesOf(`${charger}mode camp: inv\nmode site: shore, inv\n`)).toEqual([
			["camp", ["inv"]],
			["site", ["shore"]],
		]);
	});

	test("and joints follow them", () => {
		expect(linksOf(`${charger}mode camp: inv\nmode site: shore, inv\n`, "bond")).toEqual([
			["shore.neutral = shore.ground", "site"],
			["inv.out.neutral = inv.out.ground", "camp"],
		]);
	});
});

describe("joints by mode", () => {
	test("the pedestal bonds while shore is live, the machine while it makes its own", () => {
		expect(linksOf(charger, "bond")).toEqual([
			["shore.neutral = shore.ground", "shore"],
			["inv.out.neutral = inv.out.ground", "inv"],
		]);
	});

	test("it passes hot and neutral through while its input is live, and ground always", () => {
		expect(linksOf(charger, "solid").filter(([joint]) => joint?.startsWith("inv.in"))).toEqual([
			["inv.in.hot = inv.out.hot", "shore"],
			["inv.in.neutral = inv.out.neutral", "shore"],
			["inv.in.ground = inv.out.ground", "always"],
		]);
	});

	test("one that transfers the hot alone passes the neutral always", () => {
		const hotAlone = charger.replace("pass-through 30 A", "pass-through 30 A, transfers hot alone");
		expect(linksOf(hotAlone, "solid")).toContainEqual(["inv.in.neutral = inv.out.neutral", "always"]);
	});

	test.each([
		["inlet shore 30 A floating\n", []],
		["generator gen 3000 W\n", []],
		// A joint to the frame is there whether the generator runs or not.
		["generator gen 3000 W bonds neutral to frame\n", [["gen.neutral = gen.ground", "always"]]],
		["inverter inv 2000 W\n", []],
		["inverter inv 2000 W bonds neutral when inverting\n", [["inv.neutral = inv.ground", "inv"]]],
	])("%j", (text, bonds) => {
		expect(linksOf(text, "bond")).toEqual(bonds);
	});

	test("a bonded panel is joined always", () => {
		expect(linksOf(supply.replace("main 30 A", "main 30 A bonded"), "bond")).toContainEqual([
			"LC.neutral.1 = LC.case",
			"always",
		]);
	});
});

test("more sources than are judged are told, and cost no more than those that are", () => {
	const text = Array.from(
		{ length: 40 },
		(_, index) => `inlet s${index} 30 A\npanel P${index} main 30 A from s${index} by 10-2, 9 ft\n`,
	).join("");
	const { circuit, told } = wirePlan(text);
	expect(circuit.modes.length).toBe(16);
	expect(told).toEqual(["33:s16 modes-too-many"]);
});
