// Overcurrent protection on the direct-current side: distances, largest devices, interrupting capacity.
import { certain } from "../base/certain.ts";
import { compareGauges, formatGauge, type Gauge } from "../base/gauge.ts";
import type { Provenance, Sourced } from "./provenance.ts";
import { type AwgLabel, awgOf, rowAtOrBelow } from "./sizes.ts";
import { type Table, table } from "./table.ts";

/** How far along the conductor a device may stand from the source of power. */
export interface DeviceDistance {
	readonly where: "anywhere" | "sheathed or enclosed" | "sheathed, at a battery terminal" | "low voltage of a vehicle";
	readonly inches: number;
	/** The same in metres, by 1 in = 0.0254 m. */
	readonly metres: number;
}

const federal: Provenance = { source: "33 CFR 183.455", known: "read" };
const distances: readonly (readonly [DeviceDistance["where"], number, Provenance])[] = [
	["anywhere", 7, federal],
	["sheathed or enclosed", 40, federal],
	["sheathed, at a battery terminal", 72, { source: "ABYC E-11", known: "read", note: "on two public pages" }],
	[
		"low voltage of a vehicle",
		18,
		{ source: "NFPA 70 552.10 and 551.10", edition: "2020", known: "read", note: "read for park trailers" },
	],
];

/** Distances of the device from the source. Cranking-motor conductors are exempt. */
export const deviceDistances: Table<DeviceDistance> = table<DeviceDistance>(
	"device-distance",
	"How far from its source of power an overcurrent device may stand",
	[
		["where", (row) => row.where],
		["in", (row) => row.inches],
		["m", (row) => row.metres],
	],
	distances.map(([where, inches, provenance]) => ({ where, inches, metres: (inches * 254) / 10000, provenance })),
);

/** The largest device for a low-voltage conductor in a vehicle. */
export interface VehicleDevice {
	readonly gauge: Gauge;
	readonly largest: number;
}

const lowVoltage: Provenance = { source: "NFPA 70 Tables 551.10(E)(1) and 552.10(E)(1)", known: "recalled" };
const vehicleRows: readonly (readonly [AwgLabel, number])[] = [
	["18", 6],
	["16", 8],
	["14", 15],
	["12", 20],
	["10", 30],
];

/** Low-voltage conductors of vehicles and their largest device. */
export const vehicleDevices: Table<VehicleDevice> = table<VehicleDevice>(
	"vehicle-low-voltage",
	"Largest overcurrent device for low-voltage conductors in vehicles",
	[
		["size", (row) => formatGauge(row.gauge)],
		["largest device, A", (row) => row.largest],
	],
	vehicleRows.map(([label, largest]) => ({ gauge: awgOf(label), largest, provenance: lowVoltage })),
);

/** Smallest interrupting capacity of breakers by what feeds them. */
export interface InterruptingNeed {
	/** Cold-cranking amperes connected, above the first and up to the second; undefined on shore power. */
	readonly above: number | undefined;
	readonly upTo: number | undefined;
	readonly supply: "12 and 24 V battery" | "120 V shore, 30 A" | "120 V shore, 50 A";
	readonly main: number;
	readonly branch: number;
}

const needBattery: Provenance = {
	source: "ABYC E-11 Table V.A",
	known: "read",
	note: "older numbering; a newer edition takes the maker's short-circuit current above 2200 CCA or 500 Ah, or 20 kA at 125 V where that is over 10 kA",
};
const needShore: Provenance = { source: "ABYC E-11 Table V.B", known: "read", note: "older numbering" };

/** Interrupting capacity. */
export const interruptingNeeds: Table<InterruptingNeed> = table<InterruptingNeed>(
	"interrupting-capacity",
	"Smallest interrupting capacity of breakers on boats",
	[
		["supply", (row) => row.supply],
		["CCA above", (row) => row.above],
		["CCA up to", (row) => (row.upTo === Number.MAX_SAFE_INTEGER ? "more" : row.upTo)],
		["main, A", (row) => row.main],
		["branch, A", (row) => row.branch],
	],
	[
		{ supply: "12 and 24 V battery", above: 0, upTo: 650, main: 1500, branch: 750, provenance: needBattery },
		{ supply: "12 and 24 V battery", above: 650, upTo: 1100, main: 3000, branch: 1500, provenance: needBattery },
		{
			supply: "12 and 24 V battery",
			above: 1100,
			upTo: Number.MAX_SAFE_INTEGER,
			main: 5000,
			branch: 2500,
			provenance: needBattery,
		},
		{ supply: "120 V shore, 30 A", above: undefined, upTo: undefined, main: 3000, branch: 3000, provenance: needShore },
		{ supply: "120 V shore, 50 A", above: undefined, upTo: undefined, main: 3000, branch: 3000, provenance: needShore },
	],
);

/** The distance allowed in a situation. */
export function deviceDistance(where: DeviceDistance["where"]): Sourced<DeviceDistance> {
	return certain(
		deviceDistances.rows.find((row) => row.where === where),
		`the distance ${where}`,
	);
}

/** The largest device for a low-voltage conductor in a vehicle; undefined below 18 and from 8 AWG up. */
export function vehicleDevice(gauge: Gauge): Sourced<VehicleDevice> | undefined {
	return compareGauges(gauge, awgOf("8")) >= 0 ? undefined : rowAtOrBelow(vehicleDevices.rows, gauge);
}

/** Interrupting capacity needed for a battery of so many cold-cranking amperes. */
export function interruptingNeed(crankingAmperes: number): Sourced<InterruptingNeed> | undefined {
	return interruptingNeeds.rows.find(
		(row) =>
			row.above !== undefined && crankingAmperes >= row.above && row.upTo !== undefined && crankingAmperes <= row.upTo,
	);
}
