// The direct-current sheet: what is on it, every conductor on its terminal, its quality, and what stays on the other sheets.
import { describe, expect, test } from "vitest";
import { boundsOf } from "../../../src/drawing/bounds.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import type { Sheet } from "../../../src/drawing/scene.ts";
import { drawSheets, type SheetChoice } from "../../../src/drawing/sheet-set.ts";
import { checkPlan } from "../../../src/pipeline.ts";
import { writeSvg } from "../../../src/svg/index.ts";
import { draw, groupNames, marksOf, textsOf, untruths } from "./drawn.ts";
import { cabin, chassisReturn, eightWays, metric, micro, starterApart, twoBatteries } from "./plans.ts";

const plans = { cabin, twoBatteries, micro, chassisReturn, metric, eightWays, starterApart };
const named = Object.entries(plans);

async function sheetsOf(text: string, choice: SheetChoice): Promise<Sheet[]> {
	const { analysis, findings } = checkPlan(text, "test.ferrule");
	const sheets: Sheet[] = [];
	for await (const sheet of drawSheets(analysis, findings, choice)) sheets.push(sheet);
	return sheets;
}

describe("every plan", () => {
	test.each(named)("%s: every conductor ends on its terminal", async (_name, text) => {
		expect(untruths(await draw(text))).toEqual([]);
	});

	test.each(named)("%s: the measures hold", async (_name, text) => {
		const { sheet } = await draw(text);
		expect(sheet === undefined ? ["no sheet"] : brokenMeasures(sheet)).toEqual([]);
	});

	test.each(named)("%s: every end of every conductor between boxes has its letter code", async (_name, text) => {
		const { sheet } = await draw(text);
		for (const { name, marks } of sheet?.groups ?? []) {
			if (!name.startsWith("cable ")) continue;
			const wires = new Set(marks.flatMap((mark) => (mark.kind === "wire" ? [mark.of] : [])));
			for (const wire of wires) {
				const codes = marks.filter((mark) => mark.kind === "text" && mark.of === wire);
				expect(codes.length, wire).toBe(2);
			}
		}
	});

	test.each(named)("%s comes out the same twice", async (_name, text) => {
		const [one, other] = [await draw(text), await draw(text)];
		if (one.sheet === undefined || other.sheet === undefined) throw new Error("no sheet");
		expect(await writeSvg(one.sheet, "p")).toBe(await writeSvg(other.sheet, "p"));
	});
});

describe("what is on which sheet", () => {
	test("a plan without direct current has no such sheet", async () => {
		const text = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";
		expect((await sheetsOf(text, "all")).map(({ name }) => name)).toEqual(["wiring", "one-line"]);
		expect(await sheetsOf(text, "direct-current")).toEqual([]);
	});

	test("an inverter whose battery side is not wired keeps to the wiring sheet", async () => {
		const text = `inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 20 A from inv by 12-2, 6 ft
chassis frame
bond case from inv.case by single 4 AWG green
  3 ft to frame
`;
		const sheets = await sheetsOf(text, "all");
		expect(sheets.map(({ name }) => name)).toEqual(["wiring", "one-line"]);
		expect(groupNames(sheets[0])).toContain("cable case-1");
	});

	test("a plan of direct current alone has no wiring sheet beside it", async () => {
		expect((await sheetsOf(micro, "all")).map(({ name }) => name)).toEqual(["direct-current", "one-line"]);
		expect(await sheetsOf(micro, "wiring")).toEqual([]);
	});

	test("a sheet has the same number by itself as among the others", async () => {
		const texts = (sheet: Sheet | undefined) => textsOf(sheet).filter((text) => / of 3$/.test(text));
		const all = await sheetsOf(cabin, "all");
		expect(all.map(({ name }) => name)).toEqual(["wiring", "direct-current", "one-line"]);
		expect(all.map(texts)).toEqual([["1 of 3"], ["2 of 3"], ["3 of 3"]]);
		for (const [index, choice] of (["wiring", "direct-current", "one-line"] as const).entries())
			expect(texts((await sheetsOf(cabin, choice))[0])).toEqual([`${index + 1} of 3`]);
	});

	test("an inverter-charger is on both, each time with its own terminals and where the others are", async () => {
		const [wiring, direct] = await sheetsOf(cabin, "all");
		const terminals = (sheet: Sheet | undefined) =>
			marksOf(sheet).flatMap((mark) =>
				mark.kind === "circle" && mark.of?.startsWith("inv.") ? [mark.of.slice("inv.".length)] : [],
			);
		expect(terminals(wiring).toSorted()).toEqual(
			["in.ground", "in.hot", "in.neutral", "out.ground", "out.hot", "out.neutral"].toSorted(),
		);
		expect(terminals(direct).toSorted()).toEqual(["+", "-", "lug"]);
		expect(textsOf(wiring)).toContain("Direct-current side of inv: sheet direct-current.");
		expect(textsOf(direct)).toContain("AC side: sheet wiring");
	});

	test("no cable is on two sheets, and none is on neither", async () => {
		const { circuit } = await draw(cabin);
		const [wiring, direct] = await sheetsOf(cabin, "all");
		const drawn = [wiring, direct].flatMap(groupNames);
		for (const { tag } of circuit.cables) expect(drawn.filter((name) => name === `cable ${tag}`)).toHaveLength(1);
	});

	test("a bond from a bus to a load centre is on both, with a flag to the other", async () => {
		const text = `${cabin}bond star from minus by single 2 AWG green
  3 ft to LC.ground
`;
		const [wiring, direct] = await sheetsOf(text, "all");
		expect(groupNames(direct)).toContain("cable star-1");
		expect(textsOf(direct)).toContain("sheet wiring");
		expect(groupNames(wiring)).toContain("cable star-1");
		expect(textsOf(wiring)).toContain("sheet direct-current");
	});
});

describe("what is seen", () => {
	test("heavy conductors are thicker, and a pair is one sheath with two strands", async () => {
		const { sheet } = await draw(cabin);
		const wires = marksOf(sheet).flatMap((mark) => (mark.kind === "wire" ? [mark] : []));
		const widthOf = (name: string): number => wires.find(({ of }) => of === name)?.width ?? 0;
		expect(widthOf("bank-plus-1.red")).toBeGreaterThan(widthOf("inv-plus-1.red"));
		expect(widthOf("inv-plus-1.red")).toBeGreaterThan(widthOf("small-1.red"));
		const water = sheet?.groups.find(({ name }) => name === "cable water-1")?.marks ?? [];
		expect(water.filter(({ kind }) => kind === "jacket")).toHaveLength(1);
		expect(water.flatMap((mark) => (mark.kind === "wire" ? [mark.of] : []))).toEqual(["water-1.red", "water-1.black"]);
	});

	test("a chassis is met where each of its bonds ends", async () => {
		const { sheet } = await draw(cabin);
		expect(groupNames(sheet).filter((name) => name.startsWith("box frame"))).toEqual(["box frame", "box frame (2)"]);
		expect(textsOf(sheet)).toEqual(expect.arrayContaining(["frame · stud 1", "frame · stud 2"]));
	});

	test("batteries stand left of buses, buses left of fuse blocks' loads", async () => {
		const { sheet } = await draw(twoBatteries);
		const leftOf = (name: string): number => {
			const box = marksOf(sheet).find(
				(mark) => mark.kind === "rectangle" && mark.kind === "rectangle" && mark.as === "enclosure" && mark.of === name,
			);
			return box?.kind === "rectangle" ? box.x : Number.NaN;
		};
		for (const battery of ["north", "south"]) {
			expect(leftOf(battery)).toBeLessThan(leftOf("plus"));
			expect(leftOf(battery)).toBeLessThan(leftOf("minus"));
		}
		expect(leftOf("FN")).toBeLessThan(leftOf("plus"));
		expect(leftOf("FB")).toBeLessThan(leftOf("fr"));
	});

	test("many ways of a fuse block leave on both its walls, its feed above those on the left", async () => {
		const { sheet } = await draw(eightWays);
		const boxOf = (name: string) =>
			marksOf(sheet).find((mark) => mark.kind === "rectangle" && mark.as === "enclosure" && mark.of === name);
		const [block, left, right] = [boxOf("FB"), boxOf("fr"), boxOf("l1")];
		if (block?.kind !== "rectangle" || left?.kind !== "rectangle" || right?.kind !== "rectangle")
			throw new Error("a box is not drawn");
		expect(left.x + left.width).toBeLessThan(block.x);
		expect(right.x).toBeGreaterThan(block.x + block.width);
		const heights = marksOf(sheet).flatMap((mark) =>
			mark.kind === "circle" && mark.as === "terminal" && Math.abs(mark.x - block.x) < 1
				? [{ of: mark.of, y: mark.y }]
				: [],
		);
		const highest = heights.toSorted((one, other) => one.y - other.y)[0];
		expect(heights.length).toBe(12);
		expect(highest?.of).toBe("FB.bus.+");
	});

	test("the sheet is read from the house bank, wherever the starter battery is written", async () => {
		const starter = `dc-dc step 20 A 12 V / 12 V
feed up from start.+, start.- by pair 8 AWG
  within 6 in to F9: fuse 40 A
  9 ft to step.in
feed filled from plus, minus by pair 10 AWG
  bolted to F8: fuse 30 A
  2 ft to step.out
`;
		const { sheet } = await draw(
			`${twoBatteries.replace("battery north", "battery start agm 12 V 60 Ah\nbattery north")}${starter}`,
		);
		const xOf = (name: string): number => {
			const group = sheet?.groups.find((one) => one.name === `box ${name}`);
			return group === undefined ? Number.NaN : boundsOf([group]).x;
		};
		expect(xOf("south")).toBeLessThan(xOf("plus"));
		expect(xOf("start")).toBeGreaterThan(xOf("plus"));
	});

	test("findings have their numbers on it", async () => {
		const { sheet, findings } = await draw(`${micro}at l2
  lights-2.red on l2.-
  lights-2.black on l2.+
`);
		const marked = findings.filter(({ marks, level }) => marks.length > 0 && level !== "note");
		expect(marked.length).toBeGreaterThan(0);
		for (const { number } of marked) expect(groupNames(sheet)).toContain(`finding ${number}`);
	});
});
