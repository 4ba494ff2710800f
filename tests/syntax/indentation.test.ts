// Which line belongs to which: columns, figures that stand under figures, tabs, and what is read where in doubt.
import { describe, expect, it } from "vitest";
import { readText } from "../../src/syntax/read.ts";
import { compact } from "./compact.ts";
import { found } from "./marked.ts";

const read = (...lines: string[]) => compact(readText(lines.join("\n"), "p").tree).split("\n");
const clean = (...lines: string[]) => expect(found(lines.join("\n"))).toEqual([]);

describe("hops", () => {
	it("stand in one column, or have the ends of their lengths in one", () => {
		const lines = [
			"circuit c from LC by 12-2",
			"  14 ft to a",
			"   9 ft to b",
			"  to d",
			" 110 ft to e",
			"   3.5 m to f",
		];
		clean(...lines);
		expect(read(...lines)).toEqual([
			"circuit c from LC by <12-2>",
			"  hop length <14 ft> to a",
			"  hop length <9 ft> to b",
			"  hop to d",
			"  hop length <110 ft> to e",
			"  hop length <3.5 m> to f",
		]);
	});

	it("go on behind a branch, with the ends of their lengths in one column", () => {
		const lines = [
			"circuit c from LC by 12-2",
			"  14 ft to a",
			"  from a",
			"    6 ft to b",
			"   9 ft to d",
			"  from d",
			"    to e",
		];
		clean(...lines);
		expect(read(...lines).map((line) => line.length - line.trimStart().length)).toEqual([0, 2, 2, 4, 2, 2, 4]);
	});

	it("branch from branches", () => {
		const lines = [
			"circuit c from LC by 12-2",
			"  1 ft to a",
			"  from a",
			"    1 ft to b",
			"    from b",
			"      1 ft to d",
			"  1 ft to e",
		];
		clean(...lines);
		expect(read(...lines).map((line) => line.length - line.trimStart().length)).toEqual([0, 2, 2, 4, 4, 6, 2]);
	});

	it("that stand deeper than the one above are told, and stay in its chain", () => {
		const lines = ["circuit c from LC by 12-2", "  9 ft to a", "      5 ft to b"];
		expect(found(lines.join("\n"))).toEqual(["3:7-11 indentation-uneven"]);
		expect(read(...lines)[2]).toBe("  hop length <5 ft> to b");
	});

	it("have devices below them, deeper than the hop", () => {
		const lines = [
			"circuit c from LC by 12-2",
			"   9 ft to j: box",
			"    r1: receptacle",
			"      tab: no",
			"  14 ft to k: box",
			"    r2: receptacle",
		];
		clean(...lines);
		expect(read(...lines).slice(1)).toEqual([
			"  hop length <9 ft> to j: box",
			"    member r1: receptacle",
			"      member tab: no",
			"  hop length <14 ft> to k: box",
			"    member r2: receptacle",
		]);
	});
});

describe("lines below lines", () => {
	it("may be indented by any width, tabs included", () => {
		clean("box a", "\tb: light", "\t\tc: light", "box d", "\te: light");
		clean("  box a", "     b: light", "  box d");
		expect(read("box a", "\tb: light", "\t\tc: light")).toEqual([
			"thing a: box",
			"  member b: light",
			"    member c: light",
		]);
	});

	it("are not parted by empty lines and comments at any depth", () => {
		clean("box a", "", "      // deep", "// flat", "  b: light", "   ", "  c: light");
	});

	it("that come back to a column of none are read below the nearest line above them", () => {
		expect(read("box a", "    b: light", "  c: light")).toEqual([
			"thing a: box",
			"  member b: light",
			"  member c: light",
		]);
	});

	it("are read to 32 steps", () => {
		const steps = (count: number) =>
			Array.from({ length: count + 1 }, (_, step) => `${" ".repeat(step)}light l${step}`).join("\n");
		expect(found(steps(32))).toEqual([]);
		expect(found(steps(40))).toEqual(["34:34-43 indentation-too-deep"]);
	});

	it("are told once where nothing can stand below", () => {
		expect(found("place a\n  light b\n  light c\n  light d")).toEqual(["2:3-8 indentation-unexpected"]);
		expect(found("box b\n  9 ft to c\n  3 ft to d")).toEqual(["2:3-12 hop-misplaced"]);
	});
});
