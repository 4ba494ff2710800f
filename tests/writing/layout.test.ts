// What the one layout of all plans looks like.
import { describe, expect, test } from "vitest";
import { tidy } from "./tidy.ts";

/** A text laid out, as one column of lines. */
function laidOut(...lines: readonly string[]): string[] {
	const { text, kept } = tidy(lines.join("\n"));
	expect(kept).toEqual([]);
	expect(tidy(text).text).toBe(text);
	expect(text.endsWith("\n")).toBe(true);
	return text.slice(0, -1).split("\n");
}

describe("the layout", () => {
	test("has two blanks a level, whatever there was", () => {
		expect(
			laidOut(
				"plan",
				"\tregion us",
				"box a",
				"     b: light",
				"circuit c from LC by 12-2",
				" 9 ft to x: box",
				"   y: light",
			),
		).toEqual([
			"plan",
			"  region us",
			"box a",
			"  b: light",
			"circuit c from LC by 12-2",
			"  9 ft to x: box",
			"    y: light",
		]);
	});

	test("takes a comma between a figure and its unit for white space, and keeps one between words", () => {
		expect(laidOut("inlet,   shore 30,A 120 V", "feed f from shore by 10-2", "  30, ft to LC")).toEqual([
			"inlet, shore 30 A 120 V",
			"feed f from shore by 10-2",
			"  30 ft to LC",
		]);
	});

	test("ends the lengths of a chain in one column", () => {
		expect(
			laidOut(
				"circuit c from LC by 12-2",
				" 9 ft to a: light",
				" 14 ft to b: light",
				" 4 ft 6 in to d: light",
				" ? to e: light",
			),
		).toEqual([
			"circuit c from LC by 12-2",
			"   9 ft to a: light",
			"  14 ft to b: light",
			"   4 ft 6 in to d: light",
			"   ? to e: light",
		]);
		expect(laidOut("feed c from b by 3G2.5", " 2.4 m to a: light", " 3 m to b: light", " 12.75 m to d: light")).toEqual(
			["feed c from b by 3G2.5", "    2.4 m to a: light", "      3 m to b: light", "  12.75 m to d: light"],
		);
	});

	test("begins hops that begin with a word where the widest length begins", () => {
		expect(
			laidOut(
				"circuit c from LC by 12-2",
				" via s: switch",
				" 9 ft to a: box",
				" from a",
				"  9 ft to b: light",
				"  from b",
				"   3 ft to d: light",
				"  120 ft to e: light",
				" within 14 in to f: light",
				" 14 ft to g: light",
			),
		).toEqual([
			"circuit c from LC by 12-2",
			"  via s: switch",
			"   9 ft to a: box",
			"  from a",
			"      9 ft to b: light",
			"    from b",
			"      3 ft to d: light",
			"    120 ft to e: light",
			"  within 14 in to f: light",
			"  14 ft to g: light",
		]);
	});

	test("begins all lengths in one column where their ends would not tell which chain they belong to", () => {
		const lines = [
			"circuit c from LC by 3G2.5",
			"  1200 mm to a: box",
			"  900 mm to b: box",
			"  from b",
			"    12 m to d: light",
			"    9 m to e: light",
			"  7 mm to f: light",
		];
		expect(laidOut(...lines)).toEqual(lines);
	});

	test("indents what is below a hop from where the hop begins", () => {
		expect(
			laidOut("circuit c from LC by 12-2", " 1000 mm to a: box", "   r1: light", " 9 mm to b: box", "   r2: light"),
		).toEqual([
			"circuit c from LC by 12-2",
			"  1000 mm to a: box",
			"    r1: light",
			"     9 mm to b: box",
			"       r2: light",
		]);
	});

	test("begins what slots hold in one column", () => {
		expect(
			laidOut(
				"panel LC",
				" slot 1A:breaker // a",
				" slot 10:  breaker",
				" NB: neutral-bar 8",
				" slot 2 : breaker // b",
			),
		).toEqual([
			"panel LC",
			"  slot 1A: breaker  // a",
			"  slot 10: breaker",
			"  NB: neutral-bar 8",
			"  slot 2:  breaker  // b",
		]);
	});

	test("has one blank between words, and marks where they belong", () => {
		expect(
			laidOut(
				'panel   LC"Load   centre"main 30A from shore by 10-2,12ft',
				"  slot 1A :breaker 20 A,",
				"box j1 , metal",
				"  l1 .. l6:light 2W each",
				"at j1",
				"  join one-1.black(2)  ferrule ,( r1.hot   r2.hot )by lever 3",
			),
		).toEqual([
			'panel LC "Load   centre" main 30 A from shore by 10-2, 12 ft',
			"  slot 1A: breaker 20 A",
			"box j1, metal",
			"  l1..l6: light 2 W each",
			"at j1",
			"  join one-1.black(2) ferrule, (r1.hot r2.hot) by lever 3",
		]);
	});

	test.each([
		["inlet s 30amps 120volts", "inlet s 30 A 120 V"],
		["inverter i 2kW 12V/120 V,eff 88%", "inverter i 2 kW 12 V / 120 V, eff 88 %"],
		["inlet s 120/240V 5 kA", "inlet s 120/240 V 5 kA"],
		["place p 45°C sink 1 foot 6inches", "place p 45 C sink 1 ft 6 in"],
		[
			"cable c 12awg #14 4/0AWG 2/0 2.5mm² 250kcmil 3G2.5 12-2",
			"cable c 12 AWG #14 4/0 AWG 2/0 2.5 mm2 250 kcmil 3G2.5 12-2",
		],
		["box b 18in3 20cm³ 3ohms 5mΩ -15C", "box b 18 cuin 20 cm3 3 ohm 5 mohm -15 C"],
		["battery h fault ?kA, ? volts", "battery h fault ? kA, ? V"],
		["light l1 30A", "light l1 30 A"],
	])("spells units in one way: %s", (line, spelt) => {
		expect(laidOut(line)).toEqual([spelt]);
	});

	test("leaves names alone that look like figures", () => {
		expect(
			laidOut(
				"panel LC",
				"  slot 1A: breaker",
				"place 1A",
				"light l in  1A",
				"circuit 12V from LC.1A by 12-2",
				"  9 ft as 30A to 20A: light",
			),
		).toEqual([
			"panel LC",
			"  slot 1A: breaker",
			"place 1A",
			"light l in 1A",
			"circuit 12V from LC.1A by 12-2",
			"  9 ft as 30A to 20A: light",
		]);
	});

	test("keeps comments: alone with what follows them, behind the lines of a statement in one column", () => {
		expect(
			laidOut(
				"// head  ",
				"plan // a",
				"    // of region",
				"   region us//b",
				"   rules building    // c",
				'   note "a long one that nothing is said of"',
				"   // last",
				"box j // d",
				"box long-name//e",
				"circuit c from LC by 12-2",
				"      // first",
				"  9 ft to x: box // f",
				"    y: light // g",
				"    // end of x",
				"// end",
			),
		).toEqual([
			"// head",
			"plan  // a",
			"  // of region",
			"  region us       //b",
			"  rules building  // c",
			'  note "a long one that nothing is said of"',
			"  // last",
			"box j          // d",
			"box long-name  //e",
			"circuit c from LC by 12-2",
			"  // first",
			"  9 ft to x: box  // f",
			"    y: light      // g",
			"    // end of x",
			"// end",
		]);
	});

	test("keeps single blank lines between lines, and none at the edges", () => {
		expect(laidOut("", "box a", "", " ", "", "box b", "", "")).toEqual(["box a", "", "box b"]);
		expect(tidy("").text).toBe("");
		expect(tidy(" \n\n").text).toBe("");
	});

	test.each(["\n", "\r\n", "\r"])("keeps the ending of lines %j", (ending) => {
		expect(tidy(["box a", "", "", "box  b"].join(ending)).text).toBe(["box a", "", "box b", ""].join(ending));
	});

	test("keeps a byte order mark, and each ending where they are mixed", () => {
		expect(tidy("\ufeffbox  a\r\nbox b\nbox c").text).toBe("\ufeffbox a\r\nbox b\nbox c\r\n");
	});
});
