// Resistance of copper conductors as printed: North American at 75 C and 20 C, IEC at 20 C.
import { compareGauges, formatGauge, type Gauge, squareMillimetres } from "../base/gauge.ts";
import type { Known, Provenance, Sourced } from "./provenance.ts";
import { type AwgLabel, awgOf } from "./sizes.ts";
import { type Table, table } from "./table.ts";

export type Stranding = "solid" | "stranded";
/** Direct-current resistance of uncoated copper at 75 C. */
export interface Resistance75 {
	readonly gauge: Gauge;
	readonly stranding: Stranding;
	readonly ohmsPerKilofoot: number;
}

const at75: readonly (readonly [AwgLabel, Stranding, number, Known])[] = [
	["18", "solid", 7.77, "recalled"],
	["18", "stranded", 7.95, "recalled"],
	["16", "solid", 4.89, "recalled"],
	["16", "stranded", 4.99, "read"],
	["14", "solid", 3.07, "read"],
	["14", "stranded", 3.14, "recalled"],
	["12", "solid", 1.93, "read"],
	["12", "stranded", 1.98, "read"],
	["10", "solid", 1.21, "read"],
	["10", "stranded", 1.24, "read"],
	["8", "solid", 0.764, "read"],
	["8", "stranded", 0.778, "recalled"],
	["6", "stranded", 0.491, "read"],
	["4", "stranded", 0.308, "read"],
	["3", "stranded", 0.245, "read"],
	["2", "stranded", 0.194, "read"],
	["1", "stranded", 0.154, "read"],
	["1/0", "stranded", 0.122, "read"],
	["2/0", "stranded", 0.0967, "read"],
	["3/0", "stranded", 0.0766, "read"],
	["4/0", "stranded", 0.0608, "read"],
];

/** Resistance at 75 C. */
export const resistances75: Table<Resistance75> = table<Resistance75>(
	"resistance-75",
	"Direct-current resistance of uncoated copper conductors at 75 C",
	[
		["size", (row) => formatGauge(row.gauge)],
		["make", (row) => row.stranding],
		["ohm per 1000 ft", (row) => row.ohmsPerKilofoot],
	],
	at75.map(([label, stranding, ohmsPerKilofoot, known]) => ({
		gauge: awgOf(label),
		stranding,
		ohmsPerKilofoot,
		provenance: { source: "NFPA 70 Chapter 9 Table 8", known },
	})),
);

/** Resistance of a solid conductor at 20 C. */
export interface Resistance20 {
	readonly gauge: Gauge;
	readonly ohmsPerKilofoot: number;
}

const university: Provenance = { source: "university physics table of the American wire gauge", known: "read" };
const at20: readonly (readonly [AwgLabel, number])[] = [
	["22", 16.14],
	["20", 10.15],
	["18", 6.385],
	["16", 4.016],
	["14", 2.525],
	["12", 1.588],
	["10", 0.9989],
	["8", 0.6282],
	["6", 0.3951],
	["4", 0.2485],
	["3", 0.197],
	["2", 0.1563],
	["1", 0.124],
	["1/0", 0.0983],
	["2/0", 0.078],
	["3/0", 0.0618],
	["4/0", 0.049],
];

/** Resistance at 20 C. */
export const resistances20: Table<Resistance20> = table<Resistance20>(
	"resistance-20",
	"Resistance of solid copper conductors at 20 C",
	[
		["size", (row) => formatGauge(row.gauge)],
		["ohm per 1000 ft", (row) => row.ohmsPerKilofoot],
	],
	at20.map(([label, ohmsPerKilofoot]) => ({ gauge: awgOf(label), ohmsPerKilofoot, provenance: university })),
);

/** Conductor classes of IEC 60228: solid, stranded, flexible. */
export type ConductorClass = 1 | 2 | 5;
/** Largest resistance of a metric size at 20 C, ohm per kilometre, by class. */
export interface MetricResistance {
	readonly gauge: Gauge;
	readonly ohmsPerKilometre: Readonly<Record<ConductorClass, number>>;
}

const metric: Provenance = {
	source: "IEC 60228 Tables 1, 2 and 3",
	edition: "2004",
	known: "read",
	note: "three reprints agree in every cell; plain wires, tinned class 5 is about 2.5 % higher",
};
const metricRows: readonly (readonly [number, number, number, number])[] = [
	[0.5, 36, 36, 39],
	[0.75, 24.5, 24.5, 26],
	[1, 18.1, 18.1, 19.5],
	[1.5, 12.1, 12.1, 13.3],
	[2.5, 7.41, 7.41, 7.98],
	[4, 4.61, 4.61, 4.95],
	[6, 3.08, 3.08, 3.3],
	[10, 1.83, 1.83, 1.91],
	[16, 1.15, 1.15, 1.21],
	[25, 0.727, 0.727, 0.78],
	[35, 0.524, 0.524, 0.554],
	[50, 0.387, 0.387, 0.386],
	[70, 0.268, 0.268, 0.272],
	[95, 0.193, 0.193, 0.206],
	[120, 0.153, 0.153, 0.161],
];

/** Largest resistance of metric conductors. */
export const metricResistances: Table<MetricResistance> = table<MetricResistance>(
	"resistance-metric",
	"Largest resistance of plain annealed copper conductors at 20 C",
	[
		["size", (row) => formatGauge(row.gauge)],
		["solid, ohm/km", (row) => row.ohmsPerKilometre[1]],
		["stranded, ohm/km", (row) => row.ohmsPerKilometre[2]],
		["flexible, ohm/km", (row) => row.ohmsPerKilometre[5]],
	],
	metricRows.map(([mm2, solid, stranded, flexible]) => ({
		gauge: squareMillimetres(mm2),
		ohmsPerKilometre: { 1: solid, 2: stranded, 5: flexible },
		provenance: metric,
	})),
);

/** Resistance at 75 C of exactly this size and make; undefined where the table has no such row. */
export function resistance75(gauge: Gauge, stranding: Stranding): Sourced<Resistance75> | undefined {
	return resistances75.rows.find((row) => row.stranding === stranding && compareGauges(row.gauge, gauge) === 0);
}

/** Largest resistance at 20 C of exactly this metric size; undefined where the table has no such row. */
export function metricResistance(gauge: Gauge): Sourced<MetricResistance> | undefined {
	return metricResistances.rows.find((row) => compareGauges(row.gauge, gauge) === 0);
}
