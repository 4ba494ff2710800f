// Where a published number comes from and how it is known. Every row of the handbook carries one of these.

/**
 * How a number is known: `read` in a stored public text (mostly a reprint), `recalled` from memory and not seen,
 * `computed` from a stated formula, or `common practice` of the trade without a published source.
 */
export type Known = "read" | "recalled" | "computed" | "common practice";

/** The published source of a row, by its title in words. */
export interface Provenance {
	readonly source: string;
	/** The edition or year, where it is known. */
	readonly edition?: string;
	readonly known: Known;
	/** What a reader must know besides: a limit of the reading, a difference between editions or pages. */
	readonly note?: string;
}

/** A row with its source. */
export type Sourced<Row> = Row & { readonly provenance: Provenance };

/** A source as it is printed beside a figure: `NFPA 70 Table 310.16 (2020, 2023)`; what was not read says so. */
export function citation(provenance: Provenance): string {
	const { source, edition, known } = provenance;
	const named = edition === undefined ? source : `${source} (${edition})`;
	return known === "read" || source === known ? named : `${named}, ${known}`;
}
