// A net that is no tree and too large for the layout engine: laid out all the same, every box and cable of it.
import { expect, test } from "vitest";
import { boxesMeet, marksInPlace } from "../../../src/drawing/bounds.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import { draw } from "./drawn.ts";

/** Twelve circuits of `length` boxes each, the ends of two of them joined. */
const ring = (length: number): string =>
	`inlet shore 30 A 120 V\npanel LC main 30 A spaces 42 from shore by 10-2, 12 ft\n${Array.from(
		{ length: 12 },
		(_, circuit) =>
			`circuit c${circuit} from LC breaker 15 A by 14-2\n${Array.from({ length }, (_, index) => `  9 ft to b${circuit}x${index}: receptacle\n`).join("")}`,
	).join("")}  9 ft to b0x${length - 1}\n`;

test("a ring of more boxes than the engine takes has all its boxes apart and all its cables", async () => {
	const { sheets, circuit } = await draw(ring(36));
	const [sheet, ...others] = sheets;
	if (sheet === undefined) throw new Error("no sheet");
	expect(others).toEqual([]);
	const names = new Set(sheet.groups.map(({ name }) => name));
	for (const { name } of circuit.enclosures) expect(names).toContain(`box ${name}`);
	for (const { tag } of circuit.cables) expect(names).toContain(`cable ${tag}`);
	const walls = sheet.groups.flatMap((group) =>
		marksInPlace(group).flatMap((mark) => (mark.kind === "rectangle" && mark.as === "enclosure" ? [mark] : [])),
	);
	for (const [index, wall] of walls.entries())
		for (const other of walls.slice(index + 1)) expect(boxesMeet(wall, other)).toBe(false);
	// The cable that closes the ring crosses others, and a large net is wide: nothing else may suffer.
	const excused = new Set(["cable crossings", "bends a cable between boxes", "empty share", "largest empty rectangle"]);
	expect(brokenMeasures(sheet).filter(({ name }) => !excused.has(name))).toEqual([]);
});

test("the same large net comes out the same twice", async () => {
	const once = await draw(ring(34));
	expect(JSON.stringify((await draw(ring(34))).sheets)).toBe(JSON.stringify(once.sheets));
});
