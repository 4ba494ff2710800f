// A direct-current sheet where every conductor is spliced, cores of one sheath come from boxes far apart, and a relay is worked from a fuse block.
import { describe, expect, test } from "vitest";
import { type Box, boundsOf } from "../../../src/drawing/bounds.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import type { Sheet, WireMark } from "../../../src/drawing/scene.ts";
import { never } from "../measures/measure-sets.ts";
import { draw, marksOf, textsOf, untruths } from "./drawn.ts";
import { barge } from "./plans.ts";

function boxOf(sheet: Sheet | undefined, name: string): Box {
	const group = sheet?.groups.find((one) => one.name === `box ${name}`);
	return group === undefined ? { x: Number.NaN, y: Number.NaN, width: 0, height: 0 } : boundsOf([group]);
}

function wiresOf(sheet: Sheet | undefined, name: string): WireMark[] {
	return marksOf(sheet).flatMap((mark) => (mark.kind === "wire" && mark.of === name ? [mark] : []));
}

function symbolsOf(sheet: Sheet | undefined, name: string): string[] {
	return marksOf(sheet).flatMap((mark) => (mark.kind === "symbol" && mark.of === name ? [mark.symbol] : []));
}

describe("a barge", () => {
	test("is drawn conductor by conductor, within what holds for any sheet", async () => {
		const drawn = await draw(barge);
		expect(untruths(drawn)).toEqual([]);
		expect(
			drawn.sheet === undefined ? ["no sheet"] : brokenMeasures(drawn.sheet).filter(({ name }) => never.has(name)),
		).toEqual([]);
	});

	test("what hangs on a sheath stands behind all that its cores come from", async () => {
		const { sheet } = await draw(barge);
		const minus = boxOf(sheet, "minus");
		for (const name of ["F2", "fs", "bp"]) expect(boxOf(sheet, name).x).toBeGreaterThan(minus.x + minus.width);
	});

	test("cores enter a sheath where it starts, and leave it where it ends", async () => {
		const { sheet } = await draw(barge);
		for (const name of ["bilge-1.red", "bilge-1.black", "down-1.red", "down-1.black"]) {
			const wires = wiresOf(sheet, name);
			expect(wires).toHaveLength(2);
			for (const { points } of wires) expect(points[0]?.x ?? 0).toBeLessThan(points.at(-1)?.x ?? 0);
		}
	});

	test("a relay whose coil is spliced hangs on its contact, not on its coil", async () => {
		const { sheet } = await draw(barge);
		const [relay, block] = [boxOf(sheet, "K1"), boxOf(sheet, "FB")];
		expect(relay.y + relay.height).toBeLessThan(block.y);
		expect(boxOf(sheet, "s1").y).toBeGreaterThan(block.y);
	});

	test("a relay looks like one, with the letters of its coil", async () => {
		const { sheet } = await draw(barge);
		expect(symbolsOf(sheet, "K1")).toEqual(["relay-face"]);
		expect(textsOf(sheet)).toEqual(expect.arrayContaining(["A1", "A2"]));
	});

	test("a fuse block whose ways are spliced has fuses, a positive bus and a negative bar", async () => {
		const { sheet } = await draw(barge);
		expect(symbolsOf(sheet, "FB.1")).toEqual(["contact-fuse"]);
		expect(textsOf(sheet)).toEqual(expect.arrayContaining(["POSITIVE BUS", "NEGATIVE"]));
		expect(textsOf(sheet)).not.toContain("NEUTRAL");
	});
});

test("a relay whose contact is on the mains has the mark of a relay on the sheet of its coil", async () => {
	const { sheet } = await draw(`plan "p"
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  slot 1: breaker 20 A
circuit heat from LC.1 by 12-2
  9 ft to K1: relay 20 A coil 12 V
  4 ft to h1: heater 900 W
battery house lithium 12.8 V 100 Ah
feed small from house.+, house.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB: fuse-block
    slot 1: fuse 3 A
circuit call from FB.1 by pair 16 AWG
  6 ft to s1: switch
  3 ft to K1.coil
`);
	expect(symbolsOf(sheet, "K1")).toEqual(["relay-face"]);
	expect(
		marksOf(sheet).flatMap((mark) => (mark.kind === "circle" && mark.of?.startsWith("K1.") ? [mark.of] : [])),
	).toEqual(["K1.A1", "K1.A2"]);
});

test("a dimmer in the negative stands on the row of the negative, the positive passes above it", async () => {
	const drawn = await draw(`plan "p"
battery house lithium 12.8 V 100 Ah
feed small from house.+, house.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB: fuse-block
    slot 1: fuse 5 A
circuit lamp from FB.1 by pair 16 AWG
  6 ft to dim: dimmer negative
  3 ft to l1: light 6 W
`);
	const { sheet, circuit } = drawn;
	expect(untruths(drawn)).toEqual([]);
	const heightsOf = (colour: string): number[] =>
		wiresOf(sheet, `lamp-1.${colour}`).flatMap(({ points }) => points.slice(-1).map(({ y }) => y));
	const screws = marksOf(sheet).flatMap((mark) =>
		mark.kind === "circle" && mark.as === "terminal" && mark.of?.startsWith("dim.") ? [mark.y] : [],
	);
	expect(screws).toHaveLength(2);
	expect(new Set([...screws, ...heightsOf("black")]).size).toBe(1);
	expect(heightsOf("red")[0]).toBeLessThan(screws[0] ?? 0);
	expect(circuit.points.filter((point) => point.kind === "splice" && point.enclosure.name === "dim")).toHaveLength(1);
	expect(sheet === undefined ? ["no sheet"] : brokenMeasures(sheet).filter(({ name }) => never.has(name))).toEqual([]);
});
