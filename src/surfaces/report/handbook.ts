// Tables of the handbook as text for a terminal, each row with the number of its source, and as JSON.
import type { HandbookTable, PlainValue, Provenance } from "../checker.ts";
import { type Cell, writeColumns } from "./columns.ts";
import { visible, widthOf, wrap } from "./visible.ts";

/** Every table with its title and what it rests on. */
export function writeTableList(tables: readonly HandbookTable[]): string {
	return tables
		.flatMap((table) => [
			`  ${table.name}`,
			...wrap(table.title, columns - 6).map((row) => `      ${row}`),
			...wrap(`by ${[...new Set(table.printed().map((row) => row.provenance.source))].join("; ")}`, columns - 6).map(
				(row) => `      ${row}`,
			),
		])
		.map((line) => `${visible(line)}\n`)
		.join("");
}

/** A table with a number behind each row, and under it the sources by these numbers. */
export function writeTable(table: HandbookTable): string {
	const sources = new Sources();
	const rows = table.printed().map(({ values, provenance }) => [...values, `[${sources.numberOf(provenance)}]`]);
	const heads = [...table.columns, "source"];
	const widths = heads.map((head, at) => Math.max(widthOf(head), ...rows.map((row) => widthOf(tell(row[at])))));
	const isWide = widths.reduce((sum, width) => sum + width + gap, -gap) > columns;
	return [
		...wrap(`${table.name}: ${table.title}`, columns),
		"",
		...(isWide
			? writeSlots(heads, rows)
			: writeColumns(
					heads,
					rows.map((row) => row.map(asCell)),
					gap,
				)),
		"",
		"Sources:",
		...sources.lines(),
		"",
	]
		.map(visible)
		.join("\n");
}

/** By the schema published in `grammar/handbook.schema.json`. */
export function writeTablesJson(tables: readonly HandbookTable[]): string {
	const told = tables.map((table) => ({
		name: table.name,
		title: table.title,
		columns: table.columns,
		rows: table.printed().map(({ values, provenance }) => ({
			values,
			source: provenance.source,
			edition: provenance.edition ?? null,
			known: provenance.known,
			note: provenance.note ?? null,
		})),
	}));
	return `${JSON.stringify({ schema: 1, tables: told }, undefined, 2)}\n`;
}

const columns = 80;
const gap = 2;

/** Where the columns would not stand side by side: each row as a list. */
function writeSlots(heads: readonly string[], rows: readonly (readonly PlainValue[])[]): string[] {
	const width = Math.min(22, Math.max(...heads.map(widthOf)));
	return rows.flatMap((row, index) => [
		...(index === 0 ? [] : [""]),
		...row.flatMap((value, at) => {
			const text = tell(value);
			if (text === "") return [];
			const label = heads[at] ?? "";
			return wrap(text, columns - width - gap).map(
				(line, number) => `${(number === 0 ? label : "").padEnd(width)}${" ".repeat(gap)}${line}`,
			);
		}),
	]);
}

function asCell(value: PlainValue): Cell {
	return typeof value === "number" ? { figure: String(value) } : value;
}

function tell(value: PlainValue | undefined): string {
	return value === undefined ? "" : String(value);
}

/** The sources of a table, each once, numbered in the order in which rows name them. */
class Sources {
	private readonly numbers = new Map<string, { readonly number: number; readonly provenance: Provenance }>();

	numberOf(provenance: Provenance): number {
		const key = JSON.stringify([provenance.source, provenance.edition, provenance.known, provenance.note]);
		const known = this.numbers.get(key) ?? { number: this.numbers.size + 1, provenance };
		this.numbers.set(key, known);
		return known.number;
	}

	lines(): string[] {
		return [...this.numbers.values()].flatMap(({ number, provenance: { source, edition, known, note } }) => {
			const mark = `  [${number}] `;
			const named = edition === undefined ? source : `${source} (${edition})`;
			const text = [source === known ? named : `${named}, ${known}`, ...(note === undefined ? [] : [note])].join("; ");
			return wrap(text, columns - mark.length).map((line, at) => `${at === 0 ? mark : " ".repeat(mark.length)}${line}`);
		});
	}
}
