// A changeover relay on the direct-current sheet: its throws, its coil, and the return of all it feeds.
import { expect, test } from "vitest";
import { changeoverBox } from "../../../src/drawing/direct-current/changeover-box.ts";
import type { SidedMeeting } from "../../../src/drawing/direct-current/direct-box.ts";
import { readNet } from "../../../src/drawing/direct-current/net.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import type { Sheet } from "../../../src/drawing/scene.ts";
import { partSystems } from "../../../src/drawing/system-parts.ts";
import { never } from "../measures/measure-sets.ts";
import { draw, marksOf, textsOf, untruths } from "./drawn.ts";

const plan = (ways: number): string => `plan "p"
battery house lithium 12.8 V 100 Ah
feed small from house.+, house.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB: fuse-block
    slot 1: fuse 5 A
    slot 2: breaker 5 A
${Array.from({ length: ways }, (_, index) => `    slot ${index + 3}: fuse 5 A\n`).join("")}circuit lamps from FB.1 by pair 16 AWG
  6 ft to K1: relay 30 A coil 12 V changeover
  3 ft to day: light 6 W
  from K1.normally-closed
    3 ft to night: light 2 W
circuit call from FB.2 by pair 16 AWG
  6 ft to s1: switch
  3 ft to K1.coil
${Array.from({ length: ways }, (_, index) => `circuit more${index} from FB.${index + 3} by pair 16 AWG\n  9 ft to e${index}: fan 9 W\n  3 ft to g${index}: light 9 W\n  3 ft to h${index}: light 9 W\n`).join("")}`;

/** The height of a terminal's screw. */
function screwOf(sheet: Sheet | undefined, name: string): { readonly x: number; readonly y: number } {
	const found = marksOf(sheet).find((mark) => mark.kind === "circle" && mark.as === "terminal" && mark.of === name);
	return found?.kind === "circle" ? found : { x: Number.NaN, y: Number.NaN };
}

test.each([0, 7])("every conductor is on its terminal, with %i further ways", async (ways) => {
	const drawn = await draw(plan(ways));
	expect(untruths(drawn)).toEqual([]);
	const { sheet } = drawn;
	expect(sheet === undefined ? ["no sheet"] : brokenMeasures(sheet).filter(({ name }) => never.has(name))).toEqual([]);
	expect(textsOf(sheet)).toEqual(expect.arrayContaining(["C", "NC", "NO", "A1", "A2"]));
});

test("the throws leave the wall across from the common, each level with its letters, and the coil is below", async () => {
	const { sheet } = await draw(plan(0));
	const [common, closed, open] = ["common", "normally-closed", "normally-open"].map((name) =>
		screwOf(sheet, `K1.${name}`),
	);
	expect(closed?.x).toBe(open?.x);
	expect(common?.x).not.toBe(closed?.x);
	const letters = new Map(
		marksOf(sheet).flatMap((mark) => (mark.kind === "text" ? [[mark.text, mark.y] as const] : [])),
	);
	expect(Math.abs((letters.get("NC") ?? 0) - (closed?.y ?? 0))).toBeLessThan(8);
	expect(Math.abs((letters.get("NO") ?? 0) - (open?.y ?? 0))).toBeLessThan(8);
	expect(screwOf(sheet, "K1.A1").y).toBeGreaterThan(Math.max(closed?.y ?? 0, open?.y ?? 0));
	// At rest the blade is on the upper throw.
	expect(closed?.y).toBeLessThan(open?.y ?? 0);
});

test("a way with a breaker is drawn as one", async () => {
	const { sheet } = await draw(plan(0));
	const symbolsOf = (name: string): string[] =>
		marksOf(sheet).flatMap((mark) => (mark.kind === "symbol" && mark.of === name ? [mark.symbol] : []));
	expect(symbolsOf("FB.1")).toEqual(["contact-fuse"]);
	expect(symbolsOf("FB.2")).toEqual(["contact-breaker-us"]);
});

test("turned round, the throw that is closed at rest is below, where the blade is then", async () => {
	const { circuit } = await draw(plan(0));
	const part = partSystems(circuit).direct;
	const node = part === undefined ? undefined : readNet(part).nodes.find(({ name }) => name === "K1");
	if (node?.kind !== "box") throw new Error("the relay is not drawn");
	const meetings = node.meetings.map((meeting): SidedMeeting => {
		const isFeed = meeting.run.key === "lamps-1" || meeting.isControl;
		return { ...meeting, side: isFeed ? "right" : "left", isOnward: !isFeed };
	});
	const far = { above: 0, below: 0 };
	const box = changeoverBox(circuit, node.stock, meetings, () => ({ ...far, near: far, reaches: new Set() }));
	const ink = box?.draw(box.docks);
	const xOf = (name: string): number => {
		const screw = ink?.over.find((mark) => mark.kind === "circle" && mark.of === `K1.${name}`);
		return screw?.kind === "circle" ? screw.x : Number.NaN;
	};
	expect([xOf("common"), xOf("normally-closed"), xOf("normally-open")]).toEqual([box?.width, 0, 0]);
	const letters = (ink?.marks ?? []).flatMap((mark) =>
		mark.kind === "text" && ["NC", "NO"].includes(mark.text) ? [mark] : [],
	);
	expect(letters.toSorted((one, other) => one.y - other.y).map(({ text, anchor }) => [text, anchor])).toEqual([
		["NO", "start"],
		["NC", "start"],
	]);
	expect(ink?.marks.find((mark) => mark.kind === "symbol" && mark.symbol === "contact-switch-3way")).toMatchObject({
		turn: 180,
	});
});
