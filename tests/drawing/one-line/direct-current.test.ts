// The direct-current side of the one-line: both sides joined through the inverter, the fuse block as a branch, negatives left out.
import { describe, expect, test } from "vitest";
import { drawOneLine } from "../../../src/drawing/one-line/one-line-sheet.ts";
import { checkPlan } from "../../../src/pipeline.ts";
import { cabin, chassisReturn, micro } from "../direct-current/plans.ts";
import { stepsOf } from "./steps-of.ts";

describe("both sides", () => {
	test("the battery's line goes through its fuse and the inverter to the panel; the fuse block branches off at the bus", () => {
		expect(stepsOf(cabin)).toBe(`start house: battery
by bank-plus-1
through F1: fuse-us
by bank-plus-2
through D1: disconnect-us
by bank-plus-3
bus plus
  1.
  by inv-plus-1
  through F2: fuse-us
  by inv-plus-2
  through inv: inverter-charger
  by output-1
  through LC.main: breaker-us
  bus LC
    1.
    through LC.1: breaker-us
    by bunks-1
    end b1: receptacle-us
  2.
  by plus.1 on F3.line
  through F3: fuse-us
  by small-1
  bus FB
    1.
    through FB.1: fuse-us
    by lights-1+lights-2
    end l1+l2: lamp-us
    2.
    through FB.2: fuse-us
    by water-1
    end wp: pump
    3.
    through FB.3: fuse-us
    by roof-1
    end rf: fan
    4.
    through FB.4: fuse-us
    by book-1
    through rs: switch
    by book-2
    end rl: lamp-us
start shore: shore-inlet
by supply-1
flag to inv`);
	});

	test("what only brings current back stands on no line, nor does a chassis", () => {
		const steps = stepsOf(cabin);
		for (const name of ["SH", "minus", "frame", "fed by nothing"])
			expect(steps).not.toMatch(new RegExp(`\\b${name}\\b`));
		expect(stepsOf(chassisReturn)).not.toContain("back-1");
	});
});

test("a pair of the battery is one line", () => {
	expect(stepsOf(micro)).toBe(`start house: battery
by small-1
through F1: fuse-us
by small-2
bus FB
  1.
  through FB.1: fuse-us
  by lights-1+lights-2
  end l1+l2: lamp-us
  2.
  through FB.2: fuse-us`);
});

test("a battery has no neutral to speak of", () => {
	const { analysis, findings } = checkPlan(micro, "p");
	const sheet = drawOneLine(analysis, findings, { number: 1, of: 1 });
	const texts = sheet.groups.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
	expect(texts.join(" ")).not.toContain("neutral");
});

describe("what stands on no line of its own", () => {
	test("a shunt and a bus that are bolted together on the negative, and a bus that only bonds lead to", () => {
		const steps = stepsOf(`plan "Bolted"
battery house lithium 12.8 V 100 Ah, fault 3 kA
feed plus from house.+ by single 6 AWG red
  6 in to F1: fuse class-T 60 A
  1 ft to hot: bus 250 A
feed minus from house.- by single 6 AWG black
  1 ft to SH: shunt 500 A
  bolted to cold: bus 250 A
bus earths 100 A
bond earth from cold by single 6 AWG green
  2 ft to earths
`);
		expect(steps).toBe("start house: battery\nby plus-1\nthrough F1: fuse-us\nby plus-2\nbus hot");
	});

	test("a bus that nothing leads to still says so", () => {
		expect(stepsOf('plan "Loose"\nbus hot 250 A\n')).toBe("flag fed by nothing\nend hot: bus");
	});
});

describe("sources in series", () => {
	const string = (leads: string): string => `plan "String"
solar PV1 "Front" 200 W, open 24.3 V, short 10.4 A
solar PV2 "Rear" 200 W, open 24.3 V, short 10.4 A
solar PV3 "Side" 200 W, open 24.3 V, short 10.4 A
solar-controller sun 30 A 12 V, limit 100 V
${leads}`;

	test("modules joined plus to minus are one symbol with all their names", () => {
		const text = string(`feed a from PV1.- by single 10 AWG black
  4 ft to PV2.+
feed b from PV2.- by single 10 AWG black
  4 ft to PV3.+
feed roof from PV1.+, PV3.- by pair 10 AWG
  14 ft to sun.in
`);
		expect(stepsOf(text)).toBe("start PV1+PV2+PV3: solar-array\nby roof-1\nthrough sun: solar-controller");
		const { analysis, findings } = checkPlan(text, "p");
		const sheet = drawOneLine(analysis, findings, { number: 1, of: 1 });
		const label = sheet.groups.find(({ name }) => name === "device PV1 PV2 PV3")?.label;
		expect(label).toContain("PV1 to PV3, 3 in series");
	});

	test("modules side by side stay apart", () => {
		const text = string(`feed roof from PV1 by pair 10 AWG
  14 ft to sun.in
`);
		expect(stepsOf(text).match(/^start /gm)).toHaveLength(3);
	});
});
