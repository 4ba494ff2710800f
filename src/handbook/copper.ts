// Constants of copper as a conductor, and what temperature does to its resistance.
import { certain } from "../base/certain.ts";
import type { Known, Sourced } from "./provenance.ts";
import type { Region } from "./scope.ts";
import { type Table, table } from "./table.ts";

/** A constant with its unit. */
export interface Constant {
	readonly name: string;
	readonly value: number;
	readonly unit: string;
}

type Row = readonly [string, number, string, Known, string, string?];
const rows: readonly Row[] = [
	["resistivity at 20 C", 1.7241e-8, "ohm m", "read", "International Annealed Copper Standard (IEC 60028)"],
	["mil-foot resistance at 20 C", 10.37, "ohm cmil/ft", "read", "wire reference sheet", "10.371 from the resistivity"],
	[
		"temperature coefficient at 20 C",
		0.00393,
		"1/K",
		"recalled",
		"IEC 60028",
		"equals 1 / (234.5 + 20); the read correction table of IEC 60228 agrees",
	],
	[
		"temperature coefficient at 75 C",
		0.00323,
		"1/K",
		"read",
		"NFPA 70 Chapter 9 Table 8 note 2",
		"R2 = R1 (1 + a (T2 - 75))",
	],
	[
		"zero-resistance temperature",
		-234.5,
		"C",
		"read",
		"IEC 60228 temperature correction",
		"factor at T = 254.5 / (234.5 + T)",
	],
	[
		"K at 75 C",
		12.9,
		"ohm cmil/ft",
		"read",
		"trade lessons on voltage drop",
		"drop = 2 K I L / area, L one way in feet",
	],
	["K of aluminium at 75 C", 21.2, "ohm cmil/ft", "read", "trade lessons on voltage drop"],
	[
		"K for boats",
		10.75,
		"ohm cmil/ft",
		"read",
		"ABYC E-11",
		"area = K I L / drop, L out and back in feet; copper near 29 C",
	],
	["resistivity in service", 0.0225, "ohm mm2/m", "read", "IEC 60364-5-52 Annex G", "1.25 times the 20 C value"],
	["reactance if unknown", 0.08, "mohm/m", "recalled", "IEC 60364-5-52 Annex G"],
];

/** Constants of copper (and one of aluminium). */
export const copperConstants: Table<Constant> = table<Constant>(
	"copper-constants",
	"Constants for resistance and voltage drop",
	[
		["constant", (row) => row.name],
		["value", (row) => row.value],
		["unit", (row) => row.unit],
	],
	rows.map(([name, value, unit, known, source, note]) => ({
		name,
		value,
		unit,
		provenance: { source, known, ...(note === undefined ? {} : { note }) },
	})),
);

/** Resistivity of annealed copper at 20 C, ohm metre. */
export const resistivityAt20: Sourced<{ readonly value: number }> = {
	value: 1.7241e-8,
	provenance: { source: "International Annealed Copper Standard (IEC 60028)", known: "read" },
};

/** How much copper's resistance grows from one temperature to another, degrees Celsius: (234.5 + to) / (234.5 + from), IEC 60228. */
export function temperatureRatio(from: number, to: number): number {
	return (234.5 + to) / (234.5 + from);
}

/** Resistivity of a conductor that carries its load, ohm mm2 per metre: what the drop is reckoned with in a region. */
export function resistivityInService(
	region: Region,
	material: "copper" | "aluminium",
): Sourced<{ readonly value: number }> {
	const name =
		material === "aluminium" ? "K of aluminium at 75 C" : region === "us" ? "K at 75 C" : "resistivity in service";
	const row = certain(
		copperConstants.rows.find((candidate) => candidate.name === name),
		name,
	);
	// One circular mil is 0.0005067075 mm2, one foot 0.3048 m.
	return {
		value: row.unit === "ohm cmil/ft" ? (row.value * 0.0005067075) / 0.3048 : row.value,
		provenance: row.provenance,
	};
}
