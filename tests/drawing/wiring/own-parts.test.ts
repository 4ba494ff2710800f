// A part of the builder's own has no template: it is drawn all the same, with its terminals by their names.
import { describe, expect, test } from "vitest";
import { marksInPlace } from "../../../src/drawing/bounds.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import { draw, panel } from "./drawn.ts";
import { untruths } from "./drawn-truth.ts";

const parts = `part timer "Wall timer" 15 A, switch
  1 hot line
  2 hot load
  N neutral
  G ground
  link 1 2 when on
  draws 2 W from 1 to N
part changeover
  11 hot line
  12 hot load
  14 hot on back
  A1 hot on coil
  A2 neutral on coil
  link 11 12 when off
  link 11 14 when on
part valve "Gas valve"
  supply-hot hot
  supply-neutral neutral
  protective-ground ground
  signal hot on signal
  a-name-that-is-longer-than-any-plate hot on signal-back
  case metal
  draws 20 W from supply-hot to supply-neutral
part pigtail
  L hot
part three-wire
  one hot
  two hot2
  N neutral
`;

describe("own parts", () => {
	test.each([
		["at the end of a cable", "  9 ft to x1: timer\n"],
		["between two cables", "  9 ft to x1: timer\n  6 ft to l1: light 9 W\n"],
		["with a side of their own", "  9 ft to x1: changeover\n  from x1.back\n    5 ft to l3: light 9 W\n"],
		["with long names", "  9 ft to x1: valve\n"],
		["with long names, passed by", "  9 ft to x1: valve\n  6 ft to l1: light 9 W\n"],
		["with one terminal", "  9 ft to x1: pigtail\n  6 ft to x2: pigtail metal\n"],
		["in one box", "  9 ft to j1: box\n    x1: timer\n    x2: changeover\n"],
		["on a cable with two hots", "  9 ft by 12-3 to x1: three-wire\n"],
	])("%s", async (_, hops) => {
		const { circuit, sheets } = await draw(`${parts}${panel}circuit a from LC.1 by 12-2\n${hops}`);
		expect(untruths(circuit, sheets)).toEqual([]);
		expect(sheets.flatMap(brokenMeasures)).toEqual([]);
		const words = sheets.flatMap(({ groups }) =>
			groups
				.filter(({ name }) => name === "box x1")
				.flatMap(marksInPlace)
				.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
		);
		const names = (circuit.partByName.get("x1")?.points ?? []).map(
			(point) => circuit.points[point]?.name.slice("x1.".length) ?? "",
		);
		// A long name is cut.
		const shown = names.map((name) => (name.length > 14 ? expect.stringContaining("…") : name));
		if (words.length > 0) expect(words).toEqual(expect.arrayContaining(shown));
	});
});
