// The largest protective device that published tables allow ahead of a conductor: by size, insulation, region and rule set.
// Correction for ambient temperature and bundling is to come in here; nothing is judged.
import { awg, formatGauge, type Gauge, squareMillimetres } from "../base/gauge.ts";
import type { Cable, Conductor } from "../circuit/circuit.ts";
import { copperAmpacity } from "../handbook/copper-ampacity.ts";
import { cordAmpacity } from "../handbook/cord-ampacity.ts";
import { iecAmpacity } from "../handbook/iec-ampacity.ts";
import { marineAmpacity, marineDeviceAllowance } from "../handbook/marine-ampacity.ts";
import { citation, type Provenance } from "../handbook/provenance.ts";
import { smallConductorLimit } from "../handbook/small-conductors.ts";
import { nextStandardRating } from "../handbook/standard-ratings.ts";
import type { Settings } from "../plan/plan.ts";

/** What a conductor may be protected at. */
export interface ConductorLimit {
	/** Amperes of the largest device. */
	readonly largest: number;
	/** How it comes about, as the end of a sentence: `12 AWG copper may have 20 A`. */
	readonly because: string;
	/** The table or clause, with how it is known. */
	readonly source: string;
	/** Whether a figure it rests on was recalled and not read. */
	readonly recalled: boolean;
	/** Set where the conductor is thinner than its table goes: `largest` is that of the thinnest row, its own is smaller. */
	readonly beyondTable?: true;
	/** A smaller limit that holds where the cable cannot give off its heat; undefined where the tables make no difference. */
	readonly enclosed?: { readonly largest: number; readonly where: string };
}

/** The limit of a conductor in its cable (undefined for a pigtail); undefined where no table knows its material. */
export function conductorLimit(
	conductor: Conductor,
	cable: Cable | undefined,
	settings: Pick<Settings, "region" | "rules">,
): ConductorLimit | undefined {
	if (conductor.material !== "copper") return undefined;
	const own = limitOf(conductor.gauge, conductor, cable, settings);
	if (own !== undefined) return own;
	const thinnest = thinnestRows
		.map((gauge) => limitOf(gauge, conductor, cable, settings))
		.find((limit) => limit !== undefined);
	return thinnest === undefined
		? undefined
		: {
				...thinnest,
				because: `${formatGauge(conductor.gauge)} is thinner than the table goes, and even ${thinnest.because}`,
				beyondTable: true,
			};
}

function limitOf(
	gauge: Gauge,
	{ insulation }: Conductor,
	cable: Cable | undefined,
	settings: Pick<Settings, "region" | "rules">,
): ConductorLimit | undefined {
	if (settings.rules === "boat") return onBoats(gauge, insulation, settings.region);
	if (settings.region === "iec") return byMethod(gauge);
	// A cord's ground does not count; what else it has carries current.
	if (cable?.flexible === true) return inCord(gauge, cable.conductors.length > 3 ? 3 : 2);
	return inBuildingWire(gauge, insulation);
}

/** The thinnest usual size that may have a device of so many amperes, as it is written; undefined beyond the tables. */
export function sizeFor(
	amperes: number,
	conductor: Conductor,
	cable: Cable | undefined,
	settings: Pick<Settings, "region" | "rules">,
): string | undefined {
	const sizes = settings.region === "us" ? usualAwg.map(awg) : usualMetric.map(squareMillimetres);
	const fitting = sizes.find((gauge) => {
		const limit = conductorLimit({ ...conductor, gauge }, cable, settings);
		return limit !== undefined && limit.largest >= amperes;
	});
	return fitting === undefined ? undefined : formatGauge(fitting);
}

/** Sizes that cable is sold in (common practice). */
const usualAwg = [14, 12, 10, 8, 6, 4, 2] as const;
const usualMetric = [1.5, 2.5, 4, 6, 10, 16, 25] as const;
/** The sizes at which one table or another begins. */
const thinnestRows = [awg(18), squareMillimetres(1.5)];

/**
 * NFPA 70 240.4: the ampacity, or the next standard rating above it, and never more than 240.4(D) allows for 14 to 10 AWG.
 * No column above 75 C, for terminals are not marked for more (110.14(C), recalled).
 */
function inBuildingWire(gauge: Gauge, insulation: number): ConductorLimit | undefined {
	const ampacity = copperAmpacity(gauge, Math.min(insulation, 75));
	const small = smallConductorLimit(gauge);
	const size = `${formatGauge(gauge)} copper`;
	if (small !== undefined && (ampacity === undefined || small.largest <= ampacity.ampere))
		return {
			largest: small.largest,
			because: `${size} may have ${small.largest} A at most`,
			...known(small.provenance),
		};
	if (ampacity === undefined) return undefined;
	const next = nextStandardRating(ampacity.ampere, "us")?.ampere ?? ampacity.ampere;
	const largest = Math.min(next, small?.largest ?? next);
	const carries = `${size} carries ${ampacity.ampere} A at ${ampacity.column} °C`;
	return {
		largest,
		because: largest === ampacity.ampere ? carries : `${carries}, and ${largest} A is the next standard rating`,
		source: `${citation(ampacity.provenance)}, ${ampacity.column} °C column by 334.80 and 110.14(C), recalled`,
		recalled: true,
	};
}

/** NFPA 70 240.4 leaves cords out: no next standard rating above what the cord carries. */
function inCord(gauge: Gauge, carrying: 2 | 3): ConductorLimit | undefined {
	const row = cordAmpacity(gauge, carrying);
	if (row === undefined) return undefined;
	return {
		largest: row.ampere,
		because: `${formatGauge(gauge)} flexible cord carries ${row.ampere} A`,
		...known(row.provenance),
	};
}

/** 33 CFR 183: from 50 V up the table value, or the next standard rating if that is no more than 150 % of it. */
function onBoats(gauge: Gauge, insulation: number, region: Settings["region"]): ConductorLimit | undefined {
	const row = marineAmpacity(gauge, insulation);
	if (row === undefined) return undefined;
	const next = nextStandardRating(row.ampere, region)?.ampere ?? row.ampere;
	const largest = next <= row.ampere * marineDeviceAllowance.share ? next : row.ampere;
	const carries = `${formatGauge(gauge)} boat wire carries ${row.ampere} A at ${row.column} °C`;
	return {
		largest,
		because: largest === row.ampere ? carries : `${carries}, and ${largest} A is the next standard rating`,
		...known(row.provenance),
	};
}

/** IEC 60364-4-43: no device above what the cable carries. On a wall it carries most; how it runs is not said in a plan. */
function byMethod(gauge: Gauge): ConductorLimit | undefined {
	const free = iecAmpacity(gauge, "c");
	const enclosed = iecAmpacity(gauge, "b2");
	if (free === undefined) return undefined;
	return {
		largest: free.ampere,
		because: `${formatGauge(gauge)} copper carries ${free.ampere} A, fixed to a wall in free air`,
		...known(free.provenance),
		...(enclosed === undefined
			? {}
			: { enclosed: { largest: enclosed.ampere, where: "in a conduit or trunking on a wall" } }),
	};
}

function known(provenance: Provenance): { source: string; recalled: boolean } {
	return { source: citation(provenance), recalled: provenance.known === "recalled" };
}
