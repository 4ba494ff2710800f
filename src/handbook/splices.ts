// Joint connectors, crimp barrels, tightening torques and pull tests: usual figures; the package or maker decides.
import { formatGauge, type Gauge } from "../base/gauge.ts";
import type { Known, Provenance } from "./provenance.ts";
import { type AwgLabel, awgOf } from "./sizes.ts";
import { type Clause, clauseTable, type Table, table } from "./table.ts";

export type ConnectorKind = "lever" | "large lever" | "push-in" | "twist-on yellow" | "twist-on red";
/** What one sort of joint connector usually takes. */
export interface JointConnector {
	readonly connector: ConnectorKind;
	/** Numbers of ports it is made in, or of conductors it takes. */
	readonly ports: readonly number[];
	readonly smallest: Gauge;
	readonly largest: Gauge;
	/** Amperes in North America; undefined where none was found. */
	readonly ampere: number | undefined;
	readonly says: string;
}

const practice: Provenance = { source: "common practice", known: "common practice", note: "the package decides" };
const twistOn: Provenance = {
	source: "home repair page on twist-on connectors",
	known: "read",
	note: "two and three 12 AWG read, the rest common practice",
};
const connectors: readonly (readonly [
	ConnectorKind,
	readonly number[],
	AwgLabel,
	AwgLabel,
	number | undefined,
	string,
	Provenance,
])[] = [
	["lever", [2, 3, 5], "22", "12", 20, "solid and stranded; 0.2 to 4 mm2 and 32 A by IEC", practice],
	["large lever", [2, 3, 5], "20", "10", undefined, "solid and stranded; 0.5 to 6 mm2", practice],
	[
		"push-in",
		[2, 3, 4, 5, 6, 8],
		"20",
		"12",
		undefined,
		"solid; some take strands that are tinned or bonded",
		practice,
	],
	["twist-on yellow", [2, 3, 4], "14", "12", undefined, "two to four 14 AWG, or two 12 AWG", twistOn],
	["twist-on red", [2, 3, 4, 5], "14", "12", undefined, "two to five 12 AWG, or three 12 AWG and more", twistOn],
];

/** Joint connectors. */
export const jointConnectors: Table<JointConnector> = table<JointConnector>(
	"joint-connectors",
	"What joint connectors usually take",
	[
		["connector", (row) => row.connector],
		["ports", (row) => row.ports],
		["smallest", (row) => formatGauge(row.smallest)],
		["largest", (row) => formatGauge(row.largest)],
		["A", (row) => row.ampere],
		["takes", (row) => row.says],
	],
	connectors.map(([connector, ports, smallest, largest, ampere, says, provenance]) => ({
		connector,
		ports,
		smallest: awgOf(smallest),
		largest: awgOf(largest),
		ampere,
		says,
		provenance,
	})),
);

/** The sizes a crimp terminal's barrel colour stands for. */
export interface CrimpBarrel {
	readonly colour: "red" | "blue" | "yellow";
	readonly smallest: Gauge;
	readonly largest: Gauge;
}

const crimp: Provenance = {
	source: "common practice",
	known: "common practice",
	note: "a maker's page prints ranges 22-16, 16-14 and 12-10 AWG",
};

/** Crimp barrel colours. */
export const crimpBarrels: Table<CrimpBarrel> = table<CrimpBarrel>(
	"crimp-barrels",
	"Sizes by the colour of a crimp barrel",
	[
		["colour", (row) => row.colour],
		["smallest", (row) => formatGauge(row.smallest)],
		["largest", (row) => formatGauge(row.largest)],
	],
	[
		{ colour: "red", smallest: awgOf("22"), largest: awgOf("16"), provenance: crimp },
		{ colour: "blue", smallest: awgOf("16"), largest: awgOf("14"), provenance: crimp },
		{ colour: "yellow", smallest: awgOf("12"), largest: awgOf("10"), provenance: crimp },
	],
);

/** Usual torque of a screw without its own marking, pound-force inches. */
export interface ScrewTorque {
	readonly screw: string;
	readonly least: number;
	readonly most: number;
}

const torques: readonly (readonly [string, number, number, Known, string])[] = [
	["15 or 20 A receptacle, binding screw", 14, 18, "common practice", "common practice"],
	["slotted, 18 to 10 AWG", 20, 35, "recalled", "NFPA 70 Annex I"],
	["slotted, 8 AWG", 25, 40, "recalled", "NFPA 70 Annex I"],
	["slotted, 6 to 4 AWG", 35, 45, "recalled", "NFPA 70 Annex I"],
];

/** Screw torques. In Annex I the larger figure is for a slot over 0.047 in wide or over 1/4 in long. */
export const screwTorques: Table<ScrewTorque> = table<ScrewTorque>(
	"torques",
	"Tightening torque where the equipment is not marked",
	[
		["screw", (row) => row.screw],
		["from, lbf in", (row) => row.least],
		["to, lbf in", (row) => row.most],
	],
	torques.map(([screw, least, most, known, source]) => ({ screw, least, most, provenance: { source, known } })),
);

/** The pull that a crimped joint must bear on a boat, pound-force. */
export interface PullTest {
	readonly gauge: Gauge;
	readonly pounds: number;
}

const pull: Provenance = {
	source: "ABYC E-11",
	known: "recalled",
	note: "one terminal maker prints 70 lbf for 12 AWG",
};
const pulls: readonly (readonly [AwgLabel, number])[] = [
	["18", 10],
	["16", 15],
	["14", 30],
	["12", 35],
	["10", 40],
	["8", 45],
	["6", 50],
	["4", 70],
	["3", 80],
	["2", 90],
	["1", 100],
	["1/0", 125],
	["2/0", 150],
	["3/0", 175],
	["4/0", 225],
];

/** Pull tests. */
export const pullTests: Table<PullTest> = table<PullTest>(
	"pull-test",
	"Pull that a crimped joint must bear",
	[
		["size", (row) => formatGauge(row.gauge)],
		["lbf", (row) => row.pounds],
	],
	pulls.map(([label, pounds]) => ({ gauge: awgOf(label), pounds, provenance: pull })),
);

/** Rules on splices and torque. */
export const spliceClauses: Table<Clause> = clauseTable("splice-clauses", "Splices and tightening", [
	{
		clause: "46 CFR twist-on",
		topic: "boats",
		says: "twist-on connectors only in an enclosure, secured against shaking loose, not for lengthening or joining cable runs; devices suit stranded copper",
		provenance: { source: "46 CFR 111.60-17 and 143.575", known: "read", note: "for larger craft" },
	},
	{
		clause: "110.3(B)",
		topic: "connectors",
		says: "used within the number and sizes on the package; splices sit in boxes",
		provenance: { source: "NFPA 70 110.3(B)", known: "read" },
	},
	{
		clause: "110.14(D)",
		topic: "torque",
		says: "the value marked on the equipment, with a calibrated tool",
		provenance: { source: "NFPA 70 110.14(D)", known: "read", note: "the duty was read, the section is recalled" },
	},
]);
