// Switch loops, travellers and panels with two legs on the wiring sheet: within every measure, and said where no mark says it.
import { describe, expect, test } from "vitest";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import type { Sheet } from "../../../src/drawing/scene.ts";
import { draw, panel } from "./drawn.ts";

const wordsOf = ({ groups }: Sheet): string[] =>
	groups.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
const marked = "white marked black at both ends";
const legs = "inlet pole 50 A 120/240 V\npanel LC main 50 A 120/240 V from pole by 6-3, 12 ft\n";

describe("within every measure", () => {
	test.each([
		["a loop", `${panel}circuit a from LC.1 by 14-2\n  9 ft to l1: light 9 W\n  6 ft, ${marked} to s1: switch\n`],
		[
			"a loop with a neutral",
			`${panel}circuit a from LC.1 by 14-2\n  9 ft to l1: light 9 W\n  6 ft loop by 14-3 to s1: switch\n`,
		],
		[
			"three switches in a loop",
			`${panel}circuit a from LC.1 by 14-2
  9 ft to l1: light 9 W
  6 ft, ${marked} to s1: switch three-way
  9 ft by 14-3, ${marked} to s2: switch four-way
  9 ft, ${marked} to s3: switch three-way
`,
		],
		[
			"the light between the switches",
			`${panel}circuit a from LC.1 by 14-2
  9 ft to s1: switch three-way
  9 ft by 14-3 to l1: light 9 W
  9 ft, ${marked} to s2: switch three-way
`,
		],
		[
			"handles tied, a tandem, bars strapped",
			`${legs}  slot 2: breaker 20 A
  slot 4: breaker 20 A tied LC.2
  slot 5A: breaker 15 A
  slot 5B: breaker 15 A
  NA: neutral-bar 12
  NB: neutral-bar 12
circuit heat from LC.2 by 12-2
  9 ft, white marked red at both ends to h1: heater 3000 W 240 V
circuit a from LC.5A by 14-2
  9 ft to l2: light 9 W
circuit b from LC.5B by 14-2
  9 ft to l3: light 9 W
at LC
  heat-1.white on LC.4.load
  b-1.white on NB.2
`,
		],
		[
			"legs bridged",
			`inlet shore 30 A 120 V
panel LC main 30 A, legs 2, bridged legs from shore by 10-2, 12 ft
circuit a from LC.1 breaker 15 A by 14-2
  9 ft to l2: light 9 W
circuit b from LC.3 breaker 15 A by 14-2
  9 ft to l3: light 9 W
`,
		],
		[
			"outlets and loads on two hots",
			`${legs}circuit range from LC breaker two-pole 50 A by 6-3
  9 ft to k1: load 8000 W 120/240 V
circuit dryer from LC breaker two-pole 30 A by 10-3
  9 ft to r1: receptacle 30 A 120/240 V
`,
		],
	])("%s", async (_, text) => {
		const { sheets } = await draw(text);
		expect(sheets.flatMap(brokenMeasures)).toEqual([]);
	});
});

describe("what a panel's breakers and bars are besides", () => {
	test("a tandem whose handles are tied has one bracket that says both", async () => {
		const { sheets } = await draw(`${legs}  slot 5A: breaker 15 A
  slot 5B: breaker 15 A tied LC.5A
circuit a from LC.5A by 14-2
  9 ft to l2: light 9 W
circuit b from LC.5B by 14-2
  9 ft to l3: light 9 W
`);
		const marks = sheets.flatMap(({ groups }) => groups.flatMap(({ marks: own }) => own));
		const texts = marks.flatMap((mark) =>
			mark.kind === "text" && /^(tandem|tied)/.test(mark.text) ? [mark.text] : [],
		);
		expect(texts).toEqual(["tandem, tied"]);
		expect(
			marks.filter((mark) => mark.kind === "rectangle" && mark.as === "plate" && mark.dashed === true),
		).toHaveLength(1);
	});

	test("tied handles are bracketed and noted", async () => {
		const { sheets } = await draw(`${legs}  slot 2: breaker 20 A
  slot 4: breaker 20 A tied LC.2
circuit heat from LC.2 by 12-2
  9 ft, white marked red at both ends to h1: heater 3000 W 240 V
at LC
  heat-1.white on LC.4.load
`);
		const words = sheets.flatMap(wordsOf);
		expect(words).toContain("tied");
		expect(words.join("\n")).toContain("the handles of 2 and 4 are tied");
	});
	test("a breaker that is held down, bridged legs and strapped bars are noted", async () => {
		const { sheets } = await draw(`inlet shore 50 A 120/240 V, adapter 30 A
panel LC lugs only, legs 2, bridged legs
  slot 1: breaker two-pole 30 A held down
  NA: neutral-bar 8
  NB: neutral-bar 8
feed supply from shore by 6-3
  12 ft to LC.1
circuit a from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
`);
		const words = sheets.flatMap(wordsOf).join("\n");
		expect(words).toContain("1 is held down");
		expect(words).toContain("both legs are bridged");
		expect(words).toContain("NA and NB are strapped together");
	});
	test("two neutrals of a device have their numbers", async () => {
		const { sheets } = await draw(`${panel}circuit a from LC.1 by 14-2
  9 ft to r1: receptacle no hot tab, no neutral tab
circuit b from LC.2 by 14-2
  9 ft to r1.upper
`);
		expect(sheets.flatMap(wordsOf)).toEqual(expect.arrayContaining(["N1", "N2"]));
	});
});
