// The shape of a handbook table: typed rows for the code, and the same rows as plain values for a reader.
import type { Provenance, Sourced } from "./provenance.ts";

/** A table as it can be printed, whatever its rows are made of. */
export interface HandbookTable {
	/** One word with hyphens: what `handbook NAME` asks for. */
	readonly name: string;
	readonly title: string;
	/** Column heads, with their unit. */
	readonly columns: readonly string[];
	/** The rows as plain values in the order of `columns`; an empty text where the source gives nothing. */
	readonly printed: () => readonly PrintedRow[];
}

/** One row as plain values. */
export interface PrintedRow {
	readonly values: readonly PlainValue[];
	readonly provenance: Provenance;
}
export type PlainValue = string | number;

/** A table whose rows have a type. Rows stand in the order of the source, smallest first. */
export interface Table<Row> extends HandbookTable {
	readonly rows: readonly Sourced<Row>[];
}

/** A column: its head, and what it shows of a row. */
export type Column<Row> = readonly [head: string, show: (row: Row) => PlainValue | readonly PlainValue[] | undefined];

/** A table from its columns and rows. */
export function table<Row>(
	name: string,
	title: string,
	columns: readonly Column<Row>[],
	rows: readonly Sourced<Row>[],
): Table<Row> {
	const printed = () =>
		rows.map((row) => ({ values: columns.map(([, show]) => plain(show(row))), provenance: row.provenance }));
	return { name, title, columns: columns.map(([head]) => head), rows, printed };
}

/** A clause in our own words: what a standard asks, without a table of its own. */
export interface Clause {
	/** The section of the standard, or a short name of our own. */
	readonly clause: string;
	readonly topic: string;
	readonly says: string;
}

/** A table of clauses. */
export function clauseTable(name: string, title: string, rows: readonly Sourced<Clause>[]): Table<Clause> {
	return table<Clause>(
		name,
		title,
		[
			["clause", (row) => row.clause],
			["topic", (row) => row.topic],
			["what it asks", (row) => row.says],
		],
		rows,
	);
}

function plain(value: PlainValue | readonly PlainValue[] | undefined): PlainValue {
	if (value === undefined) return "";
	return typeof value === "object" ? value.join(", ") : value;
}
