// Figures of different units do not mix: what this file says of types is proven when it compiles.
import { expect, expectTypeOf, test } from "vitest";
import {
	type Amperes,
	amperes,
	drawnAt,
	lostIn,
	type Ohms,
	ohms,
	powerOf,
	shareOf,
	type Volts,
	volts,
	type Watts,
	watts,
} from "../../src/base/measures.ts";

test("volts are no amperes, and no number is either before it is said", () => {
	expectTypeOf<Volts>().not.toEqualTypeOf<Amperes>();
	expectTypeOf<Amperes>().not.toExtend<Volts>();
	expectTypeOf<number>().not.toExtend<Volts>();
	expectTypeOf(lostIn).parameters.toEqualTypeOf<[Amperes, Ohms]>();
	expectTypeOf<[Ohms, Amperes]>().not.toExtend<Parameters<typeof lostIn>>();
	expectTypeOf(drawnAt).returns.toEqualTypeOf<Amperes>();
	expectTypeOf(powerOf).returns.toEqualTypeOf<Watts>();
});

test("the laws that join them", () => {
	expect(lostIn(amperes(12), ohms(0.5))).toBe(6);
	expect(drawnAt(watts(1500), volts(120))).toBe(12.5);
	expect(powerOf(volts(12), amperes(10))).toBe(120);
	expect(shareOf(volts(3), volts(120))).toBe(2.5);
	expect(shareOf(volts(3), volts(0))).toBe(0);
});
