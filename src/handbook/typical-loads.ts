// What common things draw, for a first draft only: the nameplate always goes first, and tables differ two to one.
import type { Known } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** A typical load. */
export interface TypicalLoad {
	readonly load: string;
	readonly system: "ac" | "dc";
	/** Supply voltages it is made for. */
	readonly volts: readonly number[];
	/** Range of watts found, and the figure to plan with; undefined: take the nameplate. */
	readonly least: number;
	readonly most: number;
	readonly planned: number | undefined;
	readonly duty: string;
	readonly start: string;
}

const pages = "public appliance tables";
type Row = readonly [
	string,
	TypicalLoad["system"],
	readonly number[],
	number,
	number,
	number | undefined,
	string,
	string,
	Known,
	string?,
];
const v12 = [12];
const v120 = [120];
const rows: readonly Row[] = [
	["induction cooktop, one zone", "ac", v120, 1500, 1800, 1800, "cycles; 15-30 min a meal", "no", "common practice"],
	[
		"induction cooktop, two zones",
		"ac",
		[120, 230],
		1800,
		3500,
		3500,
		"cycles; 15-30 min a meal",
		"no",
		"common practice",
	],
	["hot plate", "ac", v120, 1000, 1500, 1200, "15-30 min a meal", "no", "read", "1200 W read"],
	["microwave oven", "ac", v120, 1100, 2000, 1500, "5-15 min a day", "no", "read", "another table prints 750-1100 W"],
	["kettle", "ac", v120, 1000, 1500, 1500, "4-6 min per litre", "no", "read", "1500 W read"],
	["kettle", "ac", [230], 1800, 3000, 2200, "2-4 min per litre", "no", "common practice"],
	["coffee maker, 10 cup", "ac", v120, 900, 1200, 1200, "10 min", "no", "read"],
	["toaster", "ac", v120, 800, 1500, 1000, "3-5 min", "no", "read"],
	[
		"water heater, small tank",
		"ac",
		v120,
		440,
		1500,
		1440,
		"continuous",
		"no",
		"read",
		"1500 W read, range common practice",
	],
	["water heater, 40 gal", "ac", [240], 4500, 5500, 4500, "continuous", "no", "read"],
	["space heater", "ac", v120, 750, 1500, 1500, "continuous", "no", "read"],
	["hair dryer", "ac", v120, 900, 1875, 1500, "10 min", "no", "read"],
	[
		"roof air conditioner, 13 500 BTU/h",
		"ac",
		v120,
		1200,
		1700,
		1500,
		"continuous in heat",
		"2-3 times",
		"common practice",
	],
	["window air conditioner, 10 000 BTU/h", "ac", v120, 1000, 1300, 1200, "continuous in heat", "3600 W more", "read"],
	[
		"refrigerator, household",
		"ac",
		v120,
		100,
		725,
		150,
		"a third of the time",
		"3-7 times",
		"read",
		"725 W nameplate read, 100-250 W running common practice",
	],
	["refrigerator, compressor", "dc", [12, 24], 36, 60, 48, "30-50 % duty", "small", "common practice"],
	["refrigerator, absorption", "dc", v12, 110, 175, 130, "continuous while travelling", "no", "common practice"],
	["ceiling fan", "ac", v120, 60, 175, 70, "continuous", "small", "read"],
	["vent fan", "dc", v12, 10, 40, 25, "several hours a day", "small", "common practice"],
	["light fixture", "dc", v12, 3, 12, 6, "4 h a day", "no", "read", "10 W read, range common practice"],
	["light bulb", "ac", v120, 5, 15, 9, "4 h a day", "no", "read"],
	["water pump", "dc", v12, 50, 120, 80, "10-30 min a day", "2-3 times", "common practice"],
	["bilge or sump pump, 1/3 hp", "ac", v120, 700, 900, 800, "now and then", "1300 W more", "read"],
	["gas furnace blower", "dc", v12, 40, 120, 80, "30-50 % duty in cold", "yes", "common practice"],
	["diesel air heater", "dc", v12, 10, 120, 25, "120 W while lighting, then 10-35 W", "yes", "common practice"],
	["laptop computer", "ac", v120, 30, 100, 65, "4-8 h a day", "no", "read", "50-75 W read"],
	["phone charging", "dc", v12, 5, 20, 10, "2 h a day", "no", "common practice"],
	["router or modem", "dc", v12, 6, 24, 12, "24 h", "no", "common practice"],
	["television, flat", "ac", v120, 30, 150, 60, "3 h a day", "no", "read", "120 W read for an older one"],
	["vacuum cleaner", "ac", v120, 300, 1440, 1200, "10 min", "yes", "read"],
	["induction-motor tool", "ac", v120, 300, 1800, undefined, "minutes", "3-7 times", "read"],
	["battery charger or converter", "ac", v120, 300, 1500, 600, "continuous while charging", "no", "common practice"],
	["inverter idling", "dc", [12, 24, 48], 5, 30, 15, "24 h if left on", "no", "common practice"],
];

/** Typical loads. */
export const typicalLoads: Table<TypicalLoad> = table<TypicalLoad>(
	"typical-loads",
	"Typical loads, for a first draft: the nameplate goes first",
	[
		["load", (row) => row.load],
		["system", (row) => row.system],
		["V", (row) => row.volts],
		["least, W", (row) => row.least],
		["most, W", (row) => row.most],
		["planned, W", (row) => row.planned],
		["in use", (row) => row.duty],
		["start", (row) => row.start],
	],
	rows.map(([load, system, volts, least, most, planned, duty, start, known, note]) => ({
		load,
		system,
		volts,
		least,
		most,
		planned,
		duty,
		start,
		provenance: {
			source: known === "read" ? pages : "common practice",
			known,
			...(note === undefined ? {} : { note }),
		},
	})),
);
