// The conductor sizes that cable for branch circuits is sold in: what a builder can be told to buy.
import { awg, formatGauge, type Gauge, squareMillimetres } from "../base/gauge.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import type { Region } from "./scope.ts";
import { type Table, table } from "./table.ts";

/** A size in which cable is sold. */
export interface UsualSize {
	readonly region: Region;
	readonly gauge: Gauge;
}

const trade: Provenance = {
	source: "common practice: what wholesalers stock",
	known: "common practice",
	note: "odd sizes of American wire gauge are made and seldom stocked; the metric ones are of the IEC 60228 series (recalled)",
};

/** Usual sizes, thinnest first in each region. */
export const usualSizes: Table<UsualSize> = table<UsualSize>(
	"usual-sizes",
	"Conductor sizes that cable for branch circuits is sold in",
	[
		["region", (row) => row.region],
		["size", (row) => formatGauge(row.gauge)],
	],
	[
		...[14, 12, 10, 8, 6, 4, 2].map((size): UsualSize => ({ region: "us", gauge: awg(size) })),
		...[1.5, 2.5, 4, 6, 10, 16, 25].map((mm2): UsualSize => ({ region: "iec", gauge: squareMillimetres(mm2) })),
	].map((row) => ({ ...row, provenance: trade })),
);

/** The usual sizes of a region, thinnest first. */
export function usualSizesOf(region: Region): readonly Sourced<UsualSize>[] {
	return usualSizes.rows.filter((row) => row.region === region);
}
