// What a meter and a three-lamp tester show at a 120 V receptacle, healthy and miswired.
import type { Provenance } from "./provenance.ts";
import { type Table, table } from "./table.ts";

export type LampState = "on" | "off" | "unsure";
/** Volts between two holes; `floats` where nothing holds them. */
export type HoleVolts = number | "floats";

/** One state of a receptacle. Readings are between holes, with a high-impedance meter, without load unless said. */
export interface TesterReading {
	readonly state: string;
	readonly hotNeutral: HoleVolts;
	readonly hotGround: HoleVolts;
	readonly neutralGround: HoleVolts;
	/** Lamps between the holes: neutral-ground, hot-neutral, hot-ground. */
	readonly lamps: readonly [LampState, LampState, LampState];
	readonly note: string;
}

const lamps: Provenance = {
	source: "home electrics page and a tester maker's answers on three-lamp testers",
	known: "read",
	note: "lamps read in both; volts follow from the circuit",
};
const oneReading: Provenance = {
	...lamps,
	source: "home electrics page on three-lamp testers",
	note: "lamps read once; volts follow from the circuit",
};
const derived: Provenance = { source: "derived from the circuit", known: "common practice" };
type Row = readonly [string, HoleVolts, HoleVolts, HoleVolts, LampState, LampState, LampState, Provenance, string];
const rows: readonly Row[] = [
	[
		"correct",
		120,
		120,
		0,
		"off",
		"on",
		"on",
		lamps,
		"up to about 2 V neutral to ground under load is normal; exactly 0.0 V under heavy load hints at a bootleg or at the bond next door",
	],
	[
		"open ground",
		120,
		"floats",
		"floats",
		"off",
		"on",
		"off",
		lamps,
		"a high-impedance meter may show a ghost voltage on the unconnected ground, often 30 to 70 V",
	],
	[
		"open neutral",
		"floats",
		120,
		"floats",
		"off",
		"off",
		"on",
		lamps,
		"with a load switched on along the same dead neutral, neutral to ground rises to about 120 V and its lamp lights",
	],
	[
		"open neutral, load on",
		0,
		120,
		120,
		"on",
		"off",
		"on",
		oneReading,
		"same lamps as hot and ground reversed: this is the usual cause of that reading",
	],
	["open hot", 0, 0, 0, "off", "off", "off", lamps, ""],
	[
		"hot and neutral reversed",
		120,
		0,
		120,
		"on",
		"on",
		"off",
		lamps,
		"a switch or fuse in the load now opens the neutral",
	],
	["hot and ground reversed", 0, 120, 120, "on", "off", "on", lamps, "the case of an appliance is live"],
	[
		"neutral and ground reversed",
		120,
		120,
		0,
		"off",
		"on",
		"on",
		derived,
		"lamps cannot tell it; load current flows in the ground; a ground-fault device ahead of it trips",
	],
	[
		"bootleg ground",
		120,
		120,
		0,
		"off",
		"on",
		"on",
		derived,
		"reads correct: found by 0.00 V neutral to ground under load, by opening the box, or by a ground-fault device ahead of it",
	],
	[
		"reversed bootleg ground",
		120,
		120,
		0,
		"off",
		"on",
		"on",
		derived,
		"reads correct while every case is at 120 V: found only against an independent earth or with a non-contact detector at the ground hole",
	],
	[
		"floating source",
		120,
		60,
		60,
		"unsure",
		"on",
		"unsure",
		derived,
		"an inverter or generator without a bond: 60 and 60 V by leakage or a centre tap; lamps vary",
	],
	[
		"reversed, ground open",
		120,
		"floats",
		"floats",
		"off",
		"on",
		"off",
		derived,
		"hot on the neutral and no ground: same lamps as open ground",
	],
];

/** Readings. No lamp tester shows a bootleg ground, neutral and ground exchanged, a poor joint, or two hots on one circuit. */
export const testerReadings: Table<TesterReading> = table<TesterReading>(
	"tester-readings",
	"What a meter and a three-lamp tester show at a 120 V receptacle",
	[
		["state", (row) => row.state],
		["hot-neutral, V", (row) => row.hotNeutral],
		["hot-ground, V", (row) => row.hotGround],
		["neutral-ground, V", (row) => row.neutralGround],
		["lamps N-G, H-N, H-G", (row) => row.lamps],
		["note", (row) => row.note],
	],
	rows.map(([state, hotNeutral, hotGround, neutralGround, first, second, third, provenance, note]) => ({
		state,
		hotNeutral,
		hotGround,
		neutralGround,
		lamps: [first, second, third] as const,
		note,
		provenance,
	})),
);
