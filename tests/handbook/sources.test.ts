// No row without its source: every table is walked, and a planted row shows that the walk would see one.
import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { findTable, tables } from "../../src/handbook/index.ts";
import { citation, type Known, type Provenance } from "../../src/handbook/provenance.ts";
import { type HandbookTable, table } from "../../src/handbook/table.ts";

const ways: readonly Known[] = ["read", "recalled", "computed", "common practice"];

/** What is wrong with the rows of a table: a missing source, an unknown way of knowing, a cell that is no value. */
function faultsOf(checked: HandbookTable): string[] {
	return checked.printed().flatMap((row, index) => {
		const place = `${checked.name} row ${index + 1}`;
		const faults: string[] = [];
		if (row.provenance.source.trim() === "") faults.push(`${place}: no source`);
		if (row.provenance.edition?.trim() === "") faults.push(`${place}: empty edition`);
		if (!ways.includes(row.provenance.known)) faults.push(`${place}: not said how it is known`);
		if (row.values.length !== checked.columns.length) faults.push(`${place}: cells do not match the columns`);
		if (row.values.some((value) => typeof value === "number" && !Number.isFinite(value)))
			faults.push(`${place}: a cell is no number`);
		if (row.values.every((value) => value === "")) faults.push(`${place}: empty`);
		return faults;
	});
}

function isTable(value: unknown): value is HandbookTable {
	return typeof value === "object" && value !== null && "printed" in value && "columns" in value;
}

/** Sources nobody can look up: an address, a path, a placeholder. */
const unusable = /https?:|www\.|\.(com|net|org)\b|[/\\]\w+[/\\]|\bS\d\d[a-z]?\b|memory|todo/i;

describe("every row says where it comes from", () => {
	test.each(tables.map((checked) => [checked.name, checked] as const))("%s", (_, checked) => {
		expect(checked.printed().length).toBeGreaterThan(0);
		expect(faultsOf(checked)).toEqual([]);
	});

	test("a source is a title in words", () => {
		const sources = tables.flatMap((checked) => checked.printed().map((row) => row.provenance.source));
		expect(sources.filter((source) => unusable.test(source))).toEqual([]);
	});
});

describe("the walk sees a row without one", () => {
	const planted = (provenance: Provenance, value = 15): HandbookTable =>
		table("planted", "Planted", [["A", (row: { value: number }) => row.value]], [{ value, provenance }]);

	test("no source", () => expect(faultsOf(planted({ source: " ", known: "read" }))).toHaveLength(1));
	test("not said how it is known", () => {
		const careless: Provenance = JSON.parse('{ "source": "NFPA 70 240.6(A)" }');
		expect(faultsOf(planted(careless))).toEqual(["planted row 1: not said how it is known"]);
	});
	test("a cell that is no number", () => {
		expect(faultsOf(planted({ source: "NFPA 70", known: "read" }, Number.NaN))).toEqual([
			"planted row 1: a cell is no number",
		]);
	});
	test("a sound row passes", () => expect(faultsOf(planted({ source: "NFPA 70", known: "read" }))).toEqual([]));
});

describe("tables are found by name", () => {
	test("names are words with hyphens, each once", () => {
		const names = tables.map((checked) => checked.name);
		expect(names.filter((name) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(name))).toEqual([]);
		expect(new Set(names).size).toBe(names.length);
	});
	test("titles and columns are said, columns each once", () => {
		for (const checked of tables) {
			expect(checked.title).not.toBe("");
			expect(new Set(checked.columns).size, checked.name).toBe(checked.columns.length);
		}
	});
	test("by name, and not by another", () => {
		expect(findTable("copper-ampacity")?.columns).toEqual(["size", "60 C, A", "75 C, A", "90 C, A"]);
		expect(findTable("copper-ampacity")?.printed()[1]?.values).toEqual(["12 AWG", 20, 25, 30]);
		expect(findTable("constructor")).toBeUndefined();
	});
	test("every table of the room is listed", async () => {
		const room = new URL("../../src/handbook/", import.meta.url);
		const made: HandbookTable[] = [];
		for (const file of readdirSync(room)) {
			const exported: Record<string, unknown> = await import(new URL(file, room).href);
			made.push(...Object.values(exported).filter(isTable));
		}
		expect(made.length).toBe(tables.length);
		expect(made.filter((one) => !tables.includes(one)).map((one) => one.name)).toEqual([]);
	});
});

test("a citation names source and edition, and says what was not read", () => {
	expect(citation({ source: "NFPA 70 Table 310.16", edition: "2023", known: "read" })).toBe(
		"NFPA 70 Table 310.16 (2023)",
	);
	expect(citation({ source: "NFPA 70 240.4(D)", known: "recalled" })).toBe("NFPA 70 240.4(D), recalled");
	expect(citation({ source: "common practice", known: "common practice" })).toBe("common practice");
});
