// The thinnest conductor there may be in fixed mains wiring, whatever protects it.
import { certain } from "../base/certain.ts";
import { awg, formatGauge, type Gauge, squareMillimetres } from "../base/gauge.ts";
import type { Sourced } from "./provenance.ts";
import type { Region, RuleSet } from "./scope.ts";
import { type Table, table } from "./table.ts";

/** The least size by region and rule set. */
export interface LeastSize {
	readonly region: Region;
	readonly rules: RuleSet;
	readonly gauge: Gauge;
}

const rows: readonly (readonly [Region, RuleSet, Gauge, string])[] = [
	["us", "camper", awg(14), "NFPA 70 Table 210.24"],
	["us", "building", awg(14), "NFPA 70 Table 210.24"],
	["us", "boat", awg(16), "33 CFR 183.435"],
	["iec", "camper", squareMillimetres(1.5), "IEC 60364-7-721"],
	["iec", "building", squareMillimetres(1.5), "IEC 60364-5-52 Table 52.2"],
	["iec", "boat", squareMillimetres(1.5), "ISO 13297"],
];

/** Least sizes of copper. All recalled. */
export const leastSizes: Table<LeastSize> = table<LeastSize>(
	"least-sizes",
	"The thinnest conductor of fixed mains wiring",
	[
		["region", (row) => row.region],
		["rules", (row) => row.rules],
		["size", (row) => formatGauge(row.gauge)],
	],
	rows.map(([region, rules, gauge, source]) => ({ region, rules, gauge, provenance: { source, known: "recalled" } })),
);

/** The least size of a region and rule set. */
export function leastSizeFor(region: Region, rules: RuleSet): Sourced<LeastSize> {
	return certain(
		leastSizes.rows.find((row) => row.region === region && row.rules === rules),
		"a least size",
	);
}
