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
