// Which sheets a plan gets, what leads from one to another, and what stays where it is when the plan grows.
import { describe, expect, test } from "vitest";
import { marksInPlace } from "../../../src/drawing/bounds.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import type { Sheet, TextMark } from "../../../src/drawing/scene.ts";
import { draw, panel } from "./drawn.ts";

const texts = (sheet: Sheet | undefined): string[] =>
	(sheet?.groups ?? []).flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
const groupNames = (sheet: Sheet | undefined): string[] => (sheet?.groups ?? []).map(({ name }) => name);

function boxAt(sheet: Sheet | undefined, name: string): { x: number; y: number } {
	const group = sheet?.groups.find((candidate) => candidate.name === `box ${name}`);
	const wall =
		group === undefined
			? undefined
			: marksInPlace(group).find((mark) => mark.kind === "rectangle" && mark.as === "enclosure");
	return wall?.kind === "rectangle" ? { x: wall.x, y: wall.y } : { x: Number.NaN, y: Number.NaN };
}

const circuits = (count: number): string =>
	Array.from(
		{ length: count },
		(_, index) => `circuit c${index} from LC breaker 15 A by 14-2\n  9 ft to b${index}: receptacle\n`,
	).join("");
const wide = "inlet shore 30 A 120 V\npanel LC main 30 A spaces 40 from shore by 10-2, 12 ft\n";

describe("sheets", () => {
	test("one panel is one sheet named wiring", async () => {
		const { sheets } = await draw(`${panel}circuit a from LC.1 by 12-2\n  9 ft to b1: receptacle\n`);
		expect(sheets.map(({ name }) => name)).toEqual(["wiring"]);
	});

	test("a plan without a panel starts from its source", async () => {
		const { sheets } = await draw(
			"inlet shore 15 A 120 V\nfeed a from shore by 12-2\n  9 ft to b1: receptacle\n  9 ft to b2: receptacle\n",
		);
		const [sheet] = sheets;
		expect(boxAt(sheet, "shore").x).toBeLessThan(boxAt(sheet, "b1").x);
		expect(boxAt(sheet, "b1").x).toBeLessThan(boxAt(sheet, "b2").x);
	});

	test("a panel fed from a panel has a sheet of its own, with flags both ways", async () => {
		const { sheets } = await draw(`${panel}panel SUB lugs only from LC.1 by 10-2, 20 ft
  slot 1: breaker 15 A
circuit b from SUB.1 by 14-2
  10 ft to b2: receptacle
`);
		expect(sheets.map(({ name }) => name)).toEqual(["wiring-LC", "wiring-SUB"]);
		expect(texts(sheets[0])).toEqual(expect.arrayContaining(["to SUB", "sheet wiring-SUB"]));
		expect(texts(sheets[1])).toEqual(expect.arrayContaining(["from LC", "sheet wiring-LC"]));
	});

	test("more circuits than one sheet takes are spread over several, each drawn once", async () => {
		const { sheets, circuit } = await draw(wide + circuits(26));
		expect(sheets.length).toBeGreaterThan(2);
		const drawn = sheets.flatMap(groupNames);
		for (const { tag } of circuit.cables)
			expect(drawn.filter((name) => name === `cable ${tag}`).length).toBe(tag === "LC-1" ? sheets.length : 1);
		expect(texts(sheets[1]).join(" ")).toContain("from shore");
		expect(texts(sheets[0]).join(" ")).toContain("are on sheet wiring-LC.2");
	});

	test("where every conductor is spliced, a sheet has no splices of circuits that are on another", async () => {
		const { sheets, circuit } = await draw(`plan "p"\n  splices always\n${wide}${circuits(26)}`);
		const spliced = circuit.points.flatMap((point) =>
			point.kind === "splice" && point.enclosure.name === "LC" ? [point.name] : [],
		);
		const symbols = sheets.map(({ groups }) => groups.flatMap(marksInPlace).filter((mark) => mark.kind === "symbol"));
		const drawn = symbols.flatMap((marks) => marks.flatMap(({ of = "" }) => (spliced.includes(of) ? [of] : [])));
		// That of the feed is on every sheet.
		const everywhere = new Set(drawn.filter((name) => drawn.filter((other) => other === name).length > 1));
		expect(new Set(drawn)).toEqual(new Set(spliced));
		expect(everywhere.size).toBeLessThanOrEqual(3);
		for (const sheet of sheets)
			expect(brokenMeasures(sheet).filter(({ name }) => name === "crossings in a panel")).toEqual([]);
	});

	test("what hangs on nothing is drawn on the last sheet", async () => {
		const { sheets } = await draw(`generator gen 3000 W 120 V\n${panel}panel SUB lugs only from LC.1 by 10-2, 20 ft\n`);
		expect(groupNames(sheets.at(-1))).toContain("box gen");
	});

	test("a ring is laid out too, every cable drawn", async () => {
		const { sheets, circuit } = await draw(`${panel}circuit a from LC.1 by 12-2
  9 ft to b1: receptacle
  9 ft to b2: receptacle
circuit b from LC.2 by 12-2
  9 ft to b3: receptacle
  9 ft to b2
`);
		const names = groupNames(sheets[0]);
		for (const { tag } of circuit.cables) expect(names).toContain(`cable ${tag}`);
		for (const { name } of circuit.enclosures) expect(names).toContain(`box ${name}`);
	});

	test("power is read in its order: source, panel, then each circuit outward", async () => {
		const { sheets } = await draw(
			`${panel}circuit a from LC.1 by 12-2\n  9 ft to b1: receptacle\n  9 ft to b2: receptacle\n`,
		);
		const boxes = groupNames(sheets[0]).filter((name) => name.startsWith("box "));
		expect(boxes).toEqual(["box shore", "box LC", "box b1", "box b2"]);
	});
});

describe("a plan that grows", () => {
	const one = `${panel}circuit a from LC.1 by 12-2
  9 ft to b1: receptacle
circuit b from LC.2 by 12-2
  9 ft to b2: switch
  9 ft to b3: light 9 W
circuit c from LC.3 by 12-2
  9 ft to b4: receptacle
`;

	test("lanes stay in the order of the slots when a box is added", async () => {
		for (const grown of [
			one,
			one.replace("b1: receptacle\n", "b1: receptacle\n  9 ft to b5: receptacle\n"),
			`${one}  9 ft to b5: gfci\n`,
		]) {
			const [sheet] = (await draw(grown)).sheets;
			const heights = ["b1", "b2", "b4"].map((name) => boxAt(sheet, name).y);
			expect(heights).toEqual(heights.toSorted((low, high) => low - high));
		}
	});

	test("boxes on one lane are level: the cable between them is straight", async () => {
		const [sheet] = (await draw(one)).sheets;
		const jacket = sheet?.groups.find(({ name }) => name === "cable b-2")?.marks.find((mark) => mark.kind === "jacket");
		expect(jacket?.kind === "jacket" ? jacket.points.length : 0).toBe(2);
	});

	test("a length that changes moves nothing", async () => {
		const places = async (text: string): Promise<string> => {
			const [sheet] = (await draw(text)).sheets;
			return JSON.stringify(["LC", "b1", "b2", "b3", "b4"].map((name) => boxAt(sheet, name)));
		};
		expect(await places(one.replace("9 ft to b3", "8 ft to b3"))).toBe(await places(one));
	});
});

describe("marks", () => {
	const faulty = `${panel}circuit a from LC.1 by 12-2
  9 ft to b1: receptacle
at b1
  a-1.black on b1.neutral
  a-1.white on b1.hot
  a-1.bare loose
`;

	test("each finding that marks something drawn has its number on the sheet, and its conductors are lit up", async () => {
		const { sheets, findings, circuit } = await draw(faulty);
		const [sheet] = sheets;
		const marked = findings.filter(({ marks }) => marks.length > 0);
		expect(marked.length).toBeGreaterThan(0);
		for (const { number } of marked) {
			const group = sheet?.groups.find(({ name }) => name === `finding ${number}`);
			const label = group?.marks.find((mark): mark is TextMark => mark.kind === "text");
			expect(label?.text).toBe(String(number));
		}
		const lit = new Set(
			(sheet?.groups ?? []).flatMap(({ marks }) =>
				marks.flatMap((mark) => (mark.kind === "wire" && mark.finding !== undefined ? [mark.of] : [])),
			),
		);
		const named = findings
			.filter(({ level, accepted }) => level !== "note" && accepted === undefined)
			.flatMap(({ marks }) => marks.filter((mark) => circuit.conductorByName.has(mark)));
		expect(named.length).toBeGreaterThan(0);
		for (const name of named) expect(lit).toContain(name);
	});

	test("a right plan lights up nothing", async () => {
		const { sheets } = await draw(`${panel}circuit a from LC.1 by 12-2\n  9 ft to b1: receptacle\n`);
		expect(
			sheets.flatMap(({ groups }) =>
				groups.flatMap(({ marks }) => marks.filter((mark) => mark.kind === "wire" && mark.finding !== undefined)),
			),
		).toEqual([]);
	});

	test("loose and capped ends say so", async () => {
		const { sheets } = await draw(`${panel}circuit a from LC.1 by 14-3
  9 ft to b1: receptacle
at b1
  a-1.white loose
`);
		expect(texts(sheets[0])).toEqual(expect.arrayContaining(["loose", "capped"]));
	});

	test("a conductor that is re-marked has a sleeve and both its codes", async () => {
		const { sheets } = await draw(
			`${panel}circuit a from LC.1 by 12-2\n  9 ft white marked red at both ends to b1: receptacle\n`,
		);
		expect(texts(sheets[0])).toContain("WH>RD");
		const boxes = (sheets[0]?.groups ?? []).filter(({ name }) => name.startsWith("box "));
		const sleeves = boxes.flatMap(({ marks }) => marks.filter((mark) => mark.kind === "wire" && mark.colour === "red"));
		expect(sleeves.length).toBe(2);
	});

	test("bars say how they stand to the case, by the links and not by the words", async () => {
		const isolated = texts((await draw(panel)).sheets[0]);
		expect(isolated).toEqual(expect.arrayContaining(["NEUTRAL", "isolated", "GROUND", "bonded"]));
		const bonded = texts((await draw(panel.replace("main 30 A", "main 30 A bonded"))).sheets[0]);
		expect(bonded).not.toContain("isolated");
	});
});
