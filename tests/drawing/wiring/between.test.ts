// Boxes that ask for more than one device beside the rows of one cable: what they look like, and how often their wires cross.
import { describe, expect, test } from "vitest";
import { marksInPlace } from "../../../src/drawing/bounds.ts";
import { brokenMeasures, measureSheet } from "../../../src/drawing/measures/index.ts";
import type { Mark, Sheet } from "../../../src/drawing/scene.ts";
import { asTheTradeWires, never } from "../measures/measure-sets.ts";
import { draw } from "./drawn.ts";
import { untruths } from "./drawn-truth.ts";

const head = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";
const circuit = (hops: string): string => `circuit a from LC breaker 20 A by 12-2\n${hops}`;

const splitInChain = circuit(`  9 ft to s1: switch
  6 ft by 12-3 to b1: receptacle split
  6 ft by 12-3 to b2: receptacle split
`);
const two = circuit("  9 ft to b1: box gangs 2\n    r1: receptacle\n    r2: receptacle\n  6 ft to b2: receptacle\n");
const three = circuit(
	"  9 ft to b1: box gangs 3\n    r1: receptacle\n    r2: receptacle\n    r3: receptacle\n  6 ft to b2: receptacle\n",
);
const threeAtEnd = circuit("  9 ft to b1: box gangs 3\n    r1: receptacle\n    r2: receptacle\n    r3: receptacle\n");
const metalWithBranch = circuit(
	"  9 ft to b1: receptacle, box metal\n  6 ft to b2: receptacle\n  from b1\n    5 ft to b3: receptacle\n",
);
/** The crossings that are left, in all and for each onward cable. */
const cases = [
	["a split receptacle in mid-chain", splitInChain, 2],
	["two receptacles in a box", two, 2],
	["three receptacles in a box", three, 4],
	["three receptacles in a box at the end", threeAtEnd, 2],
	["a metal box with a branch", metalWithBranch, 3],
] as const;

describe("devices between the rows", () => {
	test.each(cases)("%s: few wires cross", async (_name, text, crossings) => {
		const { sheets } = await draw(head + text);
		const found = sheets
			.flatMap(measureSheet)
			.filter(({ name }) => /^crossings in a (box with its device beside|fallback)/.test(name))
			.map((measure) => measure.found);
		expect(Math.max(...found)).toBe(crossings);
		const [sheet] = sheets;
		const box = enclosureOf(sheet, "b1");
		const plates = marksOf(sheet).filter((mark) => mark.kind === "rectangle" && mark.as === "item" && isIn(mark, box));
		const terminals = marksOf(sheet).flatMap((mark) =>
			mark.kind === "circle" && mark.as === "terminal" && isIn({ ...mark, width: 0, height: 0 }, box) ? [mark.y] : [],
		);
		// Screws on the upper and on the lower edge.
		expect(plates.length).toBeGreaterThan(0);
		expect(new Set(terminals.map(Math.round)).size).toBe(2);
	});

	test.each(cases)("%s: every conductor is on its terminal, and nothing on anything else", async (_name, text) => {
		const { circuit: built, sheets } = await draw(head + text);
		expect(untruths(built, sheets)).toEqual([]);
		const broken = sheets.flatMap(brokenMeasures).map(({ name }) => name);
		expect(broken.filter((name) => never.has(name) || asTheTradeWires.has(name))).toEqual([]);
	});

	test("two wires cross less often than beside the rows, or the devices stay there", async () => {
		const { sheets } = await draw(`${head}${circuit("  9 ft to b1: receptacle\n  6 ft to b2: receptacle\n")}`);
		const terminals = marksOf(sheets[0]).flatMap((mark) =>
			mark.kind === "circle" && mark.of?.startsWith("b1.") ? [Math.round(mark.y)] : [],
		);
		expect(new Set(terminals).size).toBe(1);
	});
});

describe("other boxes", () => {
	test.each([
		[
			"two circuits in one receptacle",
			`circuit a from LC breaker 15 A by 14-2
  9 ft to b1: receptacle no hot tab, no neutral tab
circuit b from LC breaker 15 A by 14-2
  9 ft to b1.upper
`,
		],
		[
			"a plain box with two branches",
			circuit(
				"  9 ft to j1: box\n  6 ft to b1: receptacle\n  from j1\n    5 ft to b2: receptacle\n  from j1\n    5 ft to b3: receptacle\n",
			),
		],
		[
			"roughed-in boxes with a branch",
			`circuit a roughed in from LC breaker 15 A by 14-2
  20 ft as one to b1: receptacle
  9 ft as two to b2: box 34 cuin metal
    r1: receptacle
    s1: switch
  from b1
    5 ft as aside to b3: receptacle
`,
		],
	])("%s: every conductor is on its terminal, and nothing on anything else", async (_name, text) => {
		const { circuit: built, findings, sheets } = await draw(head + text);
		expect(findings.filter(({ level }) => level === "error" || level === "danger")).toEqual([]);
		expect(untruths(built, sheets)).toEqual([]);
		const broken = sheets.flatMap(brokenMeasures).map(({ name }) => name);
		expect(
			broken.filter((name) => never.has(name) || asTheTradeWires.has(name) || name.startsWith("crossings")),
		).toEqual([]);
	});
});

function marksOf(sheet: Sheet | undefined): Mark[] {
	return (sheet?.groups ?? []).flatMap((group) => [...marksInPlace(group)]);
}

interface Area {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

function enclosureOf(sheet: Sheet | undefined, name: string): Area {
	const box = marksOf(sheet).find((mark) => mark.kind === "rectangle" && mark.as === "enclosure" && mark.of === name);
	return box?.kind === "rectangle" ? box : { x: 0, y: 0, width: 0, height: 0 };
}

function isIn(one: Area, box: Area): boolean {
	return (
		one.x >= box.x &&
		one.y >= box.y &&
		one.x + one.width <= box.x + box.width &&
		one.y + one.height <= box.y + box.height
	);
}
