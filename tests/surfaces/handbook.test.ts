// `ferrule handbook`: every table is listed and printed with its sources, for a reader and for programs.
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import schema from "../../grammar/handbook.schema.json" with { type: "json" };
import { tables } from "../../src/handbook/index.ts";
import { citation } from "../../src/handbook/provenance.ts";
import { makeFolder, run } from "./stand-in.ts";

const handbook = (...words: readonly string[]) =>
	run(makeFolder(), ["handbook", ...words], { handbook: async () => tables });

test("the list names every table once, with what it rests on", async () => {
	const { output, status } = await handbook();
	expect(status).toBe(0);
	expect([...output.matchAll(/^ {2}(\S+)$/gm)].map(([, name]) => name)).toEqual(tables.map(({ name }) => name));
	expect(output).toContain("  copper-ampacity\n");
	expect(output).toContain("      by NFPA 70 Table 310.16\n");
});

test("a table is printed with a source for each row", async () => {
	expect(
		(await handbook("small-aluminium")).output,
	).toBe(`small-aluminium: Largest overcurrent device for small aluminium conductors

size    largest device, A  source
12 AWG                 15  [1]
10 AWG                 25  [1]

Sources:
  [1] NFPA 70 240.4(D), recalled
`);
});

test.each(tables.map((table) => [table.name, table] as const))(
	"%s fits in 80 columns and leaves no row out",
	async (name, table) => {
		const { output, status } = await handbook(name);
		expect(status).toBe(0);
		expect(output.split("\n").filter((line) => line.length > 80)).toEqual([]);
		expect([...output.matchAll(/\[\d+\]$/gm)].length).toBe(table.printed().length);
		const told = output.replace(/\s+/g, " ");
		for (const { provenance } of table.printed())
			expect(told).toContain(citation(provenance).replace(/, (recalled|computed|common practice)$/, ""));
	},
);

describe("for programs", () => {
	const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);

	test("every table, by the published schema", async () => {
		const told: unknown = JSON.parse((await handbook("--as", "json")).output);
		expect([validate(told), validate.errors]).toEqual([true, null]);
		expect(told).toMatchObject({ schema: 1, tables: tables.map(({ name, columns }) => ({ name, columns })) });
	});

	test("one table", async () => {
		const told = JSON.parse((await handbook("copper-ampacity", "--as", "json")).output);
		expect(told.tables[0].rows[1]).toEqual({
			values: ["12 AWG", 20, 25, 30],
			source: "NFPA 70 Table 310.16",
			edition: "2020, 2023",
			known: "read",
			note: expect.any(String),
		});
	});
});

describe("a table that is not there", () => {
	test("offers the nearest", async () => {
		const { messages, status } = await handbook("typical-load");
		expect([messages, status]).toEqual([
			"ferrule: there is no table `typical-load`. Did you mean `typical-loads`?\n",
			64,
		]);
	});

	test("points at the list where nothing is near", async () => {
		expect((await handbook("xyzzy-plugh")).messages).toContain("`ferrule handbook` lists all tables.");
	});
});
