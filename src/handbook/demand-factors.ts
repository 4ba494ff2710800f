// How much of what is connected is counted when a supply is sized: demand factors of dwellings and of sites for vehicles.
import type { Provenance } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** What a factor is for. */
export type DemandMethod =
	| "lighting and small appliances"
	| "dwelling, optional"
	| "heating, optional"
	| "sites, twenty";
/** One step: of what lies above the first figure and up to the second, so many percent count. */
export interface DemandFactor {
	readonly method: DemandMethod;
	/** Volt-amperes. */
	readonly above: number;
	readonly upTo: number | undefined;
	readonly percent: number;
}

const annex: Provenance = { source: "NFPA 70 Annex D, in a reprint", edition: "2005", known: "read" };
const parks: Provenance = {
	source: "NFPA 70 551.73, in an example",
	known: "read",
	note: "1620 VA a site and 32 400 VA were read; 3600 VA and 45 % follow from them",
};

/** Demand factors. A dwelling's general lighting is counted with 3 VA a square foot, each small-appliance and laundry circuit with 1500 VA. */
export const demandFactors: Table<DemandFactor> = table<DemandFactor>(
	"demand-factors",
	"Share of the connected load that a supply is sized for",
	[
		["load", (row) => row.method],
		["above, VA", (row) => row.above],
		["up to, VA", (row) => row.upTo ?? "more"],
		["counted, %", (row) => row.percent],
	],
	[
		{ method: "lighting and small appliances", above: 0, upTo: 3000, percent: 100, provenance: annex },
		{ method: "lighting and small appliances", above: 3000, upTo: 120_000, percent: 35, provenance: annex },
		{ method: "dwelling, optional", above: 0, upTo: 10_000, percent: 100, provenance: annex },
		{ method: "dwelling, optional", above: 10_000, upTo: undefined, percent: 40, provenance: annex },
		{ method: "heating, optional", above: 0, upTo: undefined, percent: 40, provenance: annex },
		{ method: "sites, twenty", above: 0, upTo: undefined, percent: 45, provenance: parks },
	],
);

/** What counts of a connected load, in volt-amperes. Beyond the last step that was read the same share counts: printed ones only fall. */
export function countedLoad(method: DemandMethod, voltAmperes: number): number {
	const steps = demandFactors.rows.filter((row) => row.method === method);
	return steps.reduce((sum, { above, percent }, at) => {
		const upTo = steps[at + 1]?.above ?? Number.POSITIVE_INFINITY;
		return sum + (Math.max(0, Math.min(voltAmperes, upTo) - above) * percent) / 100;
	}, 0);
}
