// Conductor sizes as the tables name them, and how a size that a table lacks finds its row.
import { awg, compareGauges, type Gauge } from "../base/gauge.ts";

/** American wire gauge as it is written in the tables, thinnest first. */
export type AwgLabel =
	| "22"
	| "20"
	| "18"
	| "17"
	| "16"
	| "15"
	| "14"
	| "12"
	| "10"
	| "8"
	| "6"
	| "4"
	| "3"
	| "2"
	| "1"
	| "1/0"
	| "2/0"
	| "3/0"
	| "4/0";

/** The gauge of a label; its area is that of the solid conductor by the ASTM B258 formula. */
export function awgOf(label: AwgLabel): Gauge {
	return label.endsWith("/0") ? awg(1 - Number.parseInt(label, 10)) : awg(Number(label));
}

/**
 * The row of the same size, or of the nearest smaller one: a metric conductor in an American table (or the reverse)
 * is taken for the thinner of its neighbours. Undefined when it is thinner than every row. Rows stand thinnest first.
 */
export function rowAtOrBelow<Row extends { readonly gauge: Gauge }>(
	rows: readonly Row[],
	gauge: Gauge,
): Row | undefined {
	return rows.findLast((row) => compareGauges(row.gauge, gauge) <= 0);
}
