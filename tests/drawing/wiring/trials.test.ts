// What a builder looks for on a wiring sheet: each terminal by its own letters, contacts as the switch has them, codes, numbers.
import { describe, expect, test } from "vitest";
import { type Box, boundsOfMark, boxesMeet, boxHolds, marksInPlace } from "../../../src/drawing/bounds.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import type { Mark, Sheet } from "../../../src/drawing/scene.ts";
import { draw, panel } from "./drawn.ts";
import { untruths } from "./drawn-truth.ts";

function marksOf(sheet: Sheet | undefined, group: string): readonly Mark[] {
	const found = sheet?.groups.find(({ name }) => name === group);
	return found === undefined ? [] : marksInPlace(found);
}
const wordsOf = (marks: readonly Mark[]): string[] =>
	marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
const symbolsOf = (marks: readonly Mark[]): string[] =>
	marks.flatMap((mark) => (mark.kind === "symbol" ? [mark.symbol] : []));
function wallOf(sheet: Sheet | undefined, box: string): Box {
	const wall = marksOf(sheet, `box ${box}`).find((mark) => mark.kind === "rectangle" && mark.as === "enclosure");
	return wall === undefined ? { x: 0, y: 0, width: 0, height: 0 } : boundsOfMark(wall);
}
function badgeOf(sheet: Sheet | undefined, number: number): Mark | undefined {
	return marksOf(sheet, `finding ${number}`).find((mark) => mark.kind === "circle");
}

describe("letters", () => {
	test("line and load on one edge: each terminal says which it is", async () => {
		const { sheets } = await draw(`${panel}circuit a from LC.1 by 12-2
  9 ft to g1: gfci
  6 ft to b1: receptacle
at g1
  a-1.black on g1.load.hot
  a-2.black on g1.line.hot
`);
		const words = wordsOf(marksOf(sheets[0], "box g1"));
		expect(words).toEqual(expect.arrayContaining(["LOAD H", "LINE N", "LINE H", "LOAD N"]));
		expect(words).not.toContain("LINE");
	});

	test("two on the lower edge leave room for the words of both", async () => {
		const { sheets } = await draw(`${panel}circuit a from LC.1 by 12-2
  9 ft to g1: gfci
at g1
  a-1.black on g1.line.hot
  a-1.white on g1.load.hot
`);
		expect(wordsOf(marksOf(sheets[0], "box g1"))).toEqual(expect.arrayContaining(["LINE N", "LOAD N"]));
		expect(sheets.flatMap(brokenMeasures).filter(({ name }) => name.startsWith("text"))).toEqual([]);
	});

	test("an edge of one side says it once", async () => {
		const { sheets } = await draw(
			`${panel}circuit a from LC.1 by 12-2\n  9 ft to g1: gfci\n  6 ft to b1: receptacle\n`,
		);
		expect(wordsOf(marksOf(sheets[0], "box g1")).filter((word) => /L(INE|OAD)/.test(word))).toEqual(["LINE", "LOAD"]);
	});
});

test("switches with travellers are drawn with theirs: one common on two, two on two", async () => {
	const { sheets } = await draw(`${panel}circuit a from LC.1 by 14-2
  9 ft to s1: switch three-way
  8 ft by 14-3 to s2: switch four-way
  8 ft to s3: switch three-way
  6 ft by 14-2 to l1: light 9 W
`);
	for (const [name, contact, letters] of [
		["s1", "contact-switch-3way", ["C", "1", "2"]],
		["s2", "contact-switch-4way", ["1", "2", "1", "2"]],
		["s3", "contact-switch-3way", ["C", "1", "2"]],
	] as const) {
		const marks = marksOf(sheets[0], `box ${name}`);
		expect(symbolsOf(marks).filter((symbol) => symbol.startsWith("contact-"))).toEqual([contact]);
		expect(wordsOf(marks)).toEqual(expect.arrayContaining([...letters]));
	}
	const turned = marksOf(sheets[0], "box s3").find((mark) => mark.kind === "symbol" && mark.symbol.includes("3way"));
	expect(turned?.kind === "symbol" ? turned.turn : undefined).toBe(180);
});

test("flags say which way power goes, the same on both sheets", async () => {
	const { sheets } = await draw(`inlet shore 30 A 120 V
panel MP main 30 A from shore by 10-2, 9 ft
circuit supply from MP breaker 30 A by 10-2
  4 ft to inv
inverter-charger inv 3000 W 120 V
panel SP lugs only from inv by 10-2, 4 ft
`);
	const flags = sheets.map((sheet) =>
		wordsOf(sheet.groups.flatMap(({ name, marks }) => (name.startsWith("flag") ? marks : []))),
	);
	expect(flags.flat().some((word) => word === "to SP")).toBe(true);
	expect(flags.flat().some((word) => word === "from SP")).toBe(false);
});

test("both ends of a re-marked core carry its code, and the legend tells it", async () => {
	const { sheets } = await draw(
		`${panel}circuit a from LC.1 by 12-2\n  9 ft to l1: light 9 W\n  6 ft white marked black at both ends to s1: switch\n`,
	);
	for (const box of ["l1", "s1"]) expect(wordsOf(marksOf(sheets[0], `box ${box}`))).toContain("WH>BK");
	expect(wordsOf(marksOf(sheets[0], "legend"))).toContain("WH>BK");
});

describe("numbers", () => {
	test("of a loose end stands in the box where it is loose", async () => {
		const { sheets, findings } = await draw(`${panel}circuit a from LC.1 by 12-2
  9 ft to b1: receptacle
  9 ft to b2: receptacle
at b2
  a-2.bare loose
`);
		const finding = findings.find(({ marks }) => marks[0] === "a-2.bare");
		const badge = badgeOf(sheets[0], finding?.number ?? -1);
		expect(badge === undefined ? false : boxHolds(wallOf(sheets[0], "b2"), boundsOfMark(badge))).toBe(true);
	});

	test("of what is in a box stands inside its walls", async () => {
		const { sheets, findings } = await draw(`${panel}circuit a from LC.1 by 12-2
  9 ft to b1: receptacle
  9 ft to b2: receptacle
at b1
  join a-1.black, a-2.black, a-1.white, a-2.white, b1.hot, b1.neutral
`);
		const inside = findings.filter(({ marks }) => marks[0]?.startsWith("b1") === true);
		expect(inside.length).toBeGreaterThan(0);
		for (const { number } of inside) {
			const badge = badgeOf(sheets[0], number);
			expect(badge === undefined ? false : boxHolds(wallOf(sheets[0], "b1"), boundsOfMark(badge))).toBe(true);
		}
	});
});

test("what is roughed in is drawn broken and says so; what is there is not", async () => {
	const { sheets } = await draw(`${panel}circuit a from LC.1 by 12-2
  9 ft to b1: receptacle
circuit b roughed in from LC.2 by 12-2
  9 ft to b2: receptacle
`);
	const plates = (box: string) =>
		marksOf(sheets[0], `box ${box}`).flatMap((mark) =>
			mark.kind === "rectangle" && mark.as === "item" ? [mark.dashed === true] : [],
		);
	expect(plates("b1")).toEqual([false]);
	expect(plates("b2")).toEqual([true]);
	expect(wordsOf(marksOf(sheets[0], "box b2")).some((word) => word.endsWith("roughed in"))).toBe(true);
	expect(wordsOf(marksOf(sheets[0], "box b1")).some((word) => word.endsWith("roughed in"))).toBe(false);
});

test("a breaker names the circuit that hangs on it", async () => {
	const { sheets } = await draw(`${panel}circuit bunks from LC.1 by 12-2\n  9 ft to b1: receptacle\n`);
	expect(wordsOf(marksOf(sheets[0], "box LC"))).toContain("bunks");
});

test("splices look like the connector they are made with, wide ones too", async () => {
	const { sheets } = await draw(`plan "Crimped"
  joints crimp
${panel}circuit a from LC.1 by 12-2
  9 ft to gb: box 18 cuin metal
    g1: receptacle
    g2: receptacle
  9 ft to b1: receptacle
`);
	const marks = marksOf(sheets[0], "box gb");
	expect(symbolsOf(marks)).toContain("splice-crimp");
	expect(symbolsOf(marks)).not.toContain("splice-lever");
	expect(marks.some((mark) => mark.kind === "circle" && mark.as === "dot")).toBe(false);
	expect(wordsOf(marksOf(sheets[0], "legend"))).not.toContain("splice, lever");
});

test("a leg of the bus is met only by what it feeds and what feeds it", async () => {
	const { sheets } = await draw(`plan "Two legs"
  rules building
inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
  slot 1: breaker 20 A
  slot 2: breaker 20 A two-pole
circuit a from LC.1 by 12-2
  9 ft to r1: receptacle
circuit h from LC.2 by 12-2
  9 ft to h1: heater 2000 W 240 V
`);
	const marks = marksOf(sheets[0], "box LC");
	const bars = marks.flatMap((mark) => (mark.kind === "rectangle" && mark.fill === "hot-bus" ? [mark] : []));
	const legs = bars.filter(({ width, height }) => height > width);
	const stubs = bars.filter(({ width, height }) => width > height && width > 15);
	expect(legs).toHaveLength(2);
	expect(stubs).toHaveLength(3);
	// A stub that passes the other leg comes after it and over a gap in it.
	const gaps = marks.filter((mark) => mark.kind === "rectangle" && mark.as === "plate" && mark.fill === "panel");
	const crossing = stubs.filter((stub) =>
		legs.some((leg) => stub.x < leg.x && stub.x + stub.width > leg.x + leg.width),
	);
	expect(crossing).toHaveLength(1);
	for (const stub of crossing) {
		const [gap] = gaps.filter((mark) => boxesMeet(boundsOfMark(mark), stub));
		expect(gap).toBeDefined();
		if (gap === undefined) continue;
		expect(marks.indexOf(gap)).toBeLessThan(marks.indexOf(stub));
		for (const leg of legs) expect(marks.indexOf(leg)).toBeLessThan(marks.indexOf(gap));
	}
	// Each contact of the main ends at a leg of its own.
	const ends = marks
		.filter((mark) => mark.kind === "symbol" && mark.of === "LC.main")
		.map((mark) => boundsOfMark(mark).x + boundsOfMark(mark).width);
	expect(ends.toSorted((one, other) => one - other)).toEqual(
		legs.map(({ x }) => x).toSorted((one, other) => one - other),
	);
});

test("a box that what is still to come makes wider has the gland of the onward cable on its wall", async () => {
	const { circuit, sheets } = await draw(`${panel}circuit b roughed in from LC.2 by 12-2
  6 ft to b1: box
    r1: receptacle
    r2: receptacle
    r3: receptacle
  6 ft to r4: receptacle
`);
	expect(untruths(circuit, sheets)).toEqual([]);
});
