// Lanes: what is below what, where long ones break, and that nothing placed comes near anything else.
import { describe, expect, test } from "vitest";
import { marksInPlace } from "../../../src/drawing/bounds.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import type { JacketMark, RectangleMark, Sheet } from "../../../src/drawing/scene.ts";
import { packTracks } from "../../../src/drawing/wiring/pack-tracks.ts";
import { Skyline } from "../../../src/drawing/wiring/skyline.ts";
import { never } from "../measures/measure-sets.ts";
import { draw, panel } from "./drawn.ts";

function walls(sheet: Sheet | undefined): RectangleMark[] {
	return (sheet?.groups ?? []).flatMap((group) =>
		marksInPlace(group).filter((mark): mark is RectangleMark => mark.kind === "rectangle" && mark.as === "enclosure"),
	);
}
function jackets(sheet: Sheet | undefined): JacketMark[] {
	return (sheet?.groups ?? []).flatMap((group) =>
		marksInPlace(group).filter((mark): mark is JacketMark => mark.kind === "jacket"),
	);
}

function away(at = Number.NaN, origin = Number.NaN, scale = 1): number {
	return Math.round((at - origin) / scale);
}

describe("long lanes", () => {
	const long = (count: number): string =>
		`${panel}circuit a from LC.1 by 12-2\n${Array.from({ length: count }, (_, index) => `  9 ft to b${index}: receptacle\n`).join("")}`;

	test("a lane that fits stays in one row", async () => {
		const [sheet] = (await draw(long(4))).sheets;
		const circuit = jackets(sheet).filter(({ of }) => of.startsWith("a-"));
		expect(circuit.every(({ points }) => points.length === 2)).toBe(true);
	});

	test("one that does not goes on in rows below, each entered from the left", async () => {
		const [sheet] = (await draw(long(24))).sheets;
		const returns = jackets(sheet).filter(({ of, points }) => of.startsWith("a-") && points.length === 6);
		expect(returns.length).toBeGreaterThan(0);
		for (const { points } of returns) {
			const [last, before] = [points.at(-1), points.at(-2)];
			expect((last?.x ?? 0) - (before?.x ?? 0)).toBeGreaterThan(0);
		}
		const rows = new Set(walls(sheet).map(({ y }) => Math.round(y)));
		expect(rows.size).toBeGreaterThan(2);
	});

	test("a device more at the end moves none of those before it", async () => {
		const places = async (count: number): Promise<Map<string, string>> => {
			const [sheet] = (await draw(long(count))).sheets;
			// A larger drawing may be printed at another scale: places are measured from the panel, in its units.
			const boxes = (sheet?.groups ?? []).filter(({ name }) => name.startsWith("box "));
			const origin = boxes.find(({ name }) => name === "box LC")?.at;
			return new Map(
				boxes.map(({ name, at }) => [
					name.slice("box ".length),
					`${away(at?.x, origin?.x, at?.scale)},${away(at?.y, origin?.y, at?.scale)}`,
				]),
			);
		};
		const [before, after] = [await places(3), await places(4)];
		// The last box changes its shape: what ended there goes on.
		for (const [name, place] of before) if (!["b2", "shore"].includes(name)) expect(after.get(name)).toBe(place);
	});
});

test("cables leave a panel without crossing, the lowest nearest its wall", async () => {
	const text = `${panel}${[1, 2, 3].map((slot) => `circuit c${slot} from LC.${slot} by 12-2\n  9 ft to b${slot}: receptacle\n`).join("")}`;
	const [sheet] = (await draw(text)).sheets;
	const tracks = ["c2-1", "c3-1"].map((tag) => jackets(sheet).find(({ of }) => of === tag)?.points[1]?.x ?? 0);
	expect(tracks[1]).toBeLessThan(tracks[0] ?? 0);
});

describe("the skyline", () => {
	test("something new stands clear of what is over it and of nothing else", () => {
		const sky = new Skyline();
		sky.add(
			[
				{ from: 0, to: 100, top: 0, bottom: 50 },
				{ from: 200, to: 300, top: 0, bottom: 80 },
			],
			0,
			0,
		);
		expect(sky.clearance([{ from: 10, to: 20, top: 0, bottom: 10 }], 0, 30)).toBe(80);
		expect(sky.clearance([{ from: 140, to: 160, top: 0, bottom: 10 }], 0, 30)).toBe(Number.NEGATIVE_INFINITY);
		expect(sky.clearance([{ from: 10, to: 20, top: -5, bottom: 10 }], 200, 30)).toBe(115);
	});
});

test("tracks are shared only by stretches that do not touch", () => {
	const tracks = packTracks([
		{ item: "a", from: 0, to: 40 },
		{ item: "b", from: 60, to: 90 },
		{ item: "c", from: 20, to: 70 },
	]);
	expect(tracks.get("a")).toBe(tracks.get("b"));
	expect(tracks.get("c")).not.toBe(tracks.get("a"));
});

test("two cables to one box turn on tracks of their own, and those of other boxes beside them", async () => {
	const { sheets } = await draw(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit a from LC breaker 15 A by 14-2
  9 ft to b1: receptacle
circuit b from LC breaker 15 A by 14-2
  9 ft to b2: receptacle
circuit c from LC breaker 15 A by 14-2
  9 ft to b3: receptacle no hot tab, no neutral tab
circuit d from LC breaker 15 A by 14-2
  9 ft to b3.upper
circuit e from LC breaker 15 A by 14-2
  9 ft to b4: receptacle
`);
	const turns = sheets.flatMap(({ groups }) =>
		groups.flatMap(({ marks }) =>
			marks.flatMap((mark) => (mark.kind === "jacket" && mark.points.length === 4 ? [mark.points[1]?.x] : [])),
		),
	);
	expect(turns.length).toBeGreaterThanOrEqual(4);
	expect(new Set(turns).size).toBe(turns.length);
	const broken = sheets.flatMap(brokenMeasures).filter(({ name }) => never.has(name));
	expect(broken).toEqual([]);
});
