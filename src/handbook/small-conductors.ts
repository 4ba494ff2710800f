// The largest protective device for small copper conductors, whatever their ampacity.
import { compareGauges, formatGauge, type Gauge } from "../base/gauge.ts";
import type { Known, Sourced } from "./provenance.ts";
import { type AwgLabel, awgOf, rowAtOrBelow } from "./sizes.ts";
import { type Table, table } from "./table.ts";

/** The limit for one size of copper. */
export interface SmallConductor {
	readonly gauge: Gauge;
	/** Largest protective device, amperes. */
	readonly largest: number;
	/** What else the clause asks of so thin a conductor; empty where nothing. */
	readonly condition: string;
}

const listed = (ampere: number) => `continuous load at most ${ampere} A; the device is listed for this size`;
const rows: readonly (readonly [AwgLabel, number, string, Known])[] = [
	["18", 7, listed(5.6), "recalled"],
	["16", 10, listed(8), "recalled"],
	["14", 15, "", "read"],
	["12", 20, "", "read"],
	["10", 30, "", "read"],
];

/** Small copper conductors and their largest device. */
export const smallConductors: Table<SmallConductor> = table<SmallConductor>(
	"small-conductors",
	"Largest overcurrent device for small copper conductors",
	[
		["size", (row) => formatGauge(row.gauge)],
		["largest device, A", (row) => row.largest],
		["condition", (row) => row.condition],
	],
	rows.map(([label, largest, condition, known]) => ({
		gauge: awgOf(label),
		largest,
		condition,
		provenance: { source: "NFPA 70 240.4(D)", known },
	})),
);

/**
 * The limit for a copper conductor. A size between two rows has that of the thinner one; undefined from 8 AWG up, where
 * the clause sets none, and below 18 AWG, where power wiring ends.
 */
export function smallConductorLimit(gauge: Gauge): Sourced<SmallConductor> | undefined {
	return compareGauges(gauge, awgOf("8")) >= 0 ? undefined : rowAtOrBelow(smallConductors.rows, gauge);
}
