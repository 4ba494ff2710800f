// The largest protective device that published tables allow ahead of a conductor: by size, insulation, region and rule set.
// Corrected for the hottest air on its way; nothing is judged here.
import { formatGauge, type Gauge } from "../base/gauge.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Cable, Circuit, Conductor } from "../circuit/circuit.ts";
import { aluminiumAmpacity, smallAluminiumLimit } from "../handbook/aluminium-ampacity.ts";
import { copperAmpacity } from "../handbook/copper-ampacity.ts";
import { cordAmpacity } from "../handbook/cord-ampacity.ts";
import { iecAmpacities, iecAmpacity } from "../handbook/iec-ampacity.ts";
import {
	engineSpaceFactor,
	marineAmpacity,
	marineBundlingFactor,
	marineDeviceAllowance,
} from "../handbook/marine-ampacity.ts";
import { citation, type Provenance } from "../handbook/provenance.ts";
import { smallConductorLimit, smallConductors } from "../handbook/small-conductors.ts";
import { nextStandardRating } from "../handbook/standard-ratings.ts";
import { usualSizesOf } from "../handbook/usual-sizes.ts";
import {
	carryingIn,
	correctBuildingWire,
	correctCord,
	correctMetric,
	tableAir,
	tellAir,
	tenths,
} from "./ampacity-correction.ts";
import { type Air, hottestAir, runsInEngineSpace } from "./surroundings.ts";

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

/** The limit of a conductor, in its cable if it has one; undefined where no table knows its material. */
export function conductorLimit(circuit: Circuit, conductor: Conductor): ConductorLimit | undefined {
	// On boats it is a matter of the cable and where it runs; ashore all of one make are alike.
	if (circuit.plan.settings.rules === "boat") return findLimit(circuit, conductor);
	const limits = limitsOf.get(circuit) ?? { byMake: new Map(), last: undefined };
	limitsOf.set(circuit, limits);
	const { last } = limits;
	if (last !== undefined && isOfOneCable(last.conductor, conductor)) return last.limit;
	const make = makeOf(circuit, conductor);
	const known = limits.byMake.get(make) ?? { conductor, limit: findLimit(circuit, conductor) };
	limits.byMake.set(make, known);
	limits.last = { conductor, limit: known.limit };
	return known.limit;
}

interface Known {
	readonly conductor: Conductor;
	readonly limit: ConductorLimit | undefined;
}

/** The limits of a circuit that are known, by make, and the one that was asked for last: cores of one cable are asked for in a row. */
const limitsOf = new WeakMap<Circuit, { readonly byMake: Map<string, Known>; last: Known | undefined }>();

function isOfOneCable(one: Conductor, other: Conductor): boolean {
	return (
		one.cable !== undefined &&
		one.cable === other.cable &&
		one.gauge.label === other.gauge.label &&
		one.gauge.system === other.gauge.system &&
		one.material === other.material &&
		one.insulation === other.insulation
	);
}

/** All that a limit ashore depends on. */
function makeOf(circuit: Circuit, conductor: Conductor): string {
	const { gauge, material, insulation } = conductor;
	const cable = conductor.cable === undefined ? undefined : circuit.cableByTag.get(conductor.cable);
	const cord = cable?.flexible === true ? "cord" : (cable?.make ?? "");
	const air = hottestAir(circuit, conductor);
	return `${material} ${gauge.label} ${gauge.system} ${insulation} ${cord} ${cable?.conductors.length ?? 0} ${air.celsius} ${air.place?.name ?? ""}`;
}

function findLimit(circuit: Circuit, conductor: Conductor): ConductorLimit | undefined {
	const own = limitOf(circuit, conductor, conductor.gauge);
	if (own !== undefined) return own;
	const thinnest = thinnestRows()
		.map((gauge) => limitOf(circuit, conductor, gauge))
		.find((limit) => limit !== undefined);
	return thinnest === undefined
		? undefined
		: {
				...thinnest,
				because: `${formatGauge(conductor.gauge)} is thinner than the table goes, and even ${thinnest.because}`,
				beyondTable: true,
			};
}

/** The most a conductor may be protected at however it is laid: where heat cannot get away, if the tables know of it. */
export function carefulLimit({ enclosed, largest }: ConductorLimit): number {
	return enclosed?.largest ?? largest;
}

function limitOf(circuit: Circuit, conductor: Conductor, gauge: Gauge): ConductorLimit | undefined {
	const { rules, region } = circuit.plan.settings;
	const isCopper = conductor.material === "copper";
	const cable = conductor.cable === undefined ? undefined : circuit.cableByTag.get(conductor.cable);
	// Of aluminium only the table for building wire is at hand.
	if (!isCopper && (rules === "boat" || region === "iec" || cable?.flexible === true)) return undefined;
	if (rules === "boat") return onBoats(circuit, conductor, cable, gauge);
	const air = hottestAir(circuit, conductor);
	if (region === "iec") return byMethod(gauge, air);
	// A cord's ground does not count; what else it has carries current.
	if (cable?.flexible === true) return inCord(gauge, cable.conductors.length > 3 ? 3 : 2, air);
	return inBuildingWire(gauge, conductor, cable, { air, carrying: carryingIn(circuit, cable) });
}

/** The thinnest usual size that may have a device of so many amperes, as it is written; undefined beyond the tables. */
export function sizeFor(circuit: Circuit, amperes: number, conductor: Conductor): string | undefined {
	const fitting = usualSizesOf(circuit.plan.settings.region).find(({ gauge }) => {
		const limit = conductorLimit(circuit, { ...conductor, gauge });
		return limit !== undefined && limit.beyondTable !== true && carefulLimit(limit) >= amperes;
	});
	return fitting === undefined ? undefined : formatGauge(fitting.gauge);
}

/** The thinnest size of the American tables and of the metric one. */
function thinnestRows(): readonly Gauge[] {
	return [smallConductors.rows[0], iecAmpacities.rows[0]].flatMap((row) => row?.gauge ?? []);
}

/**
 * NFPA 70 240.4: the ampacity, or the next standard rating above it, and never more than 240.4(D) allows for thin ones.
 * No column above 75 C, for terminals are not marked for more (110.14(C), recalled).
 */
function inBuildingWire(
	gauge: Gauge,
	conductor: Conductor,
	cable: Cable | undefined,
	around: { readonly air: Air; readonly carrying: number },
): ConductorLimit | undefined {
	const { insulation, material } = conductor;
	const isCopper = material === "copper";
	const printed = (isCopper ? copperAmpacity : aluminiumAmpacity)(gauge, Math.min(insulation, 75));
	const small = isCopper ? smallConductorLimit(gauge) : smallAluminiumLimit(gauge);
	const size = `${formatGauge(gauge)} ${material}`;
	const corrected =
		printed === undefined ? undefined : correctBuildingWire(gauge, conductor, cable, around, printed.ampere);
	if (small !== undefined && (corrected === undefined || small.largest <= corrected.ampere))
		return {
			largest: small.largest,
			because: `${size} may have ${small.largest} A at most`,
			...known(small.provenance),
		};
	if (printed === undefined || corrected === undefined) return undefined;
	const next = nextStandardRating(corrected.ampere, "us")?.ampere ?? corrected.ampere;
	const largest = corrected.ampere === 0 ? 0 : Math.min(next, small?.largest ?? next);
	const carries =
		corrected.ampere === printed.ampere
			? `${size} carries ${printed.ampere} A at ${printed.column} °C`
			: `${size} carries ${formatNumber(corrected.ampere, 1)} A: ${corrected.because}`;
	const provenances = corrected.ampere === printed.ampere ? [printed.provenance] : corrected.provenances;
	return {
		largest,
		because: largest === corrected.ampere ? carries : `${carries}, and ${largest} A is the next standard rating`,
		source: `${provenances.map(citation).join("; ")}, ${printed.column} °C column by 334.80 and 110.14(C), recalled`,
		recalled: true,
	};
}

/** NFPA 70 240.4 leaves cords out: no next standard rating above what the cord carries. */
function inCord(gauge: Gauge, carrying: 2 | 3, air: Air): ConductorLimit | undefined {
	const row = cordAmpacity(gauge, carrying);
	if (row === undefined) return undefined;
	const corrected = correctCord(row.ampere, air);
	return {
		largest: corrected.ampere,
		because: `${formatGauge(gauge)} flexible cord carries ${row.ampere} A${corrected.because === "" ? "" : `; ${corrected.because}`}`,
		...knownTogether([row.provenance, ...corrected.provenances]),
	};
}

/**
 * 33 CFR 183: from 50 V up what the conductor carries, or the next standard rating if that is no more than 150 % of it. It
 * carries the table value, less in an engine space and less with others in its cable; every core but the ground counts.
 */
function onBoats(
	circuit: Circuit,
	conductor: Conductor,
	cable: Cable | undefined,
	gauge: Gauge,
): ConductorLimit | undefined {
	const { region } = circuit.plan.settings;
	const row = marineAmpacity(gauge, conductor.insulation);
	if (row === undefined) return undefined;
	const carrying = carryingIn(circuit, cable);
	const bundled = marineBundlingFactor(carrying);
	const air = hottestAir(circuit, conductor);
	// The rule knows one factor, for 50 °C: it is taken for whatever is hotter than the table, as being on the safe side.
	const isInEngineSpace = runsInEngineSpace(circuit, conductor);
	const hot = isInEngineSpace || air.celsius > tableAir ? engineSpaceFactor(row.column) : undefined;
	const factors = [
		...(bundled.factor === 1
			? []
			: [{ ...bundled, where: `with ${carrying} that carry current in ${cable?.tag ?? ""}` }]),
		...(hot === undefined || hot.factor === 1
			? []
			: [{ ...hot, where: isInEngineSpace ? "in an engine space" : tellAir(air) }]),
	];
	const ampere = tenths(factors.reduce((product, { factor }) => product * factor, row.ampere));
	const next = nextStandardRating(ampere, region)?.ampere ?? ampere;
	const largest = next <= ampere * marineDeviceAllowance.share ? next : ampere;
	const standIn = region === "iec" ? " by the law of the United States, which stands in for ISO 13297 here" : "";
	const carries = [
		`${formatGauge(gauge)} boat wire carries ${row.ampere} A at ${row.column} °C${standIn}`,
		...factors.map(({ factor, where }) => `${where} ${factor} times as much`),
		...(factors.length === 0 ? [] : [`which is ${ampere} A`]),
	].join(", ");
	const provenances = [row.provenance, ...factors.map(({ provenance }) => provenance)];
	return {
		largest,
		because: largest === ampere ? carries : `${carries}, and ${largest} A is the next standard rating`,
		source: provenances.map(citation).join("; "),
		recalled: provenances.some((provenance) => provenance.known === "recalled"),
	};
}

/**
 * IEC 60364-4-43: no device above what the cable carries. How it runs is not said in a plan: on a wall it carries most
 * (method C), in an insulated wall least (method A1).
 */
function byMethod(gauge: Gauge, air: Air): ConductorLimit | undefined {
	const free = iecAmpacity(gauge, "c");
	const enclosed = iecAmpacity(gauge, "a1");
	if (free === undefined) return undefined;
	const corrected = correctMetric(free.ampere, air);
	const heat = corrected.because === "" ? "" : `; ${corrected.because}`;
	return {
		largest: corrected.ampere,
		because: `${formatGauge(gauge)} copper carries ${free.ampere} A, fixed to a wall in free air${heat}`,
		...knownTogether([free.provenance, ...corrected.provenances]),
		...(enclosed === undefined
			? {}
			: {
					enclosed: {
						largest: correctMetric(enclosed.ampere, air).ampere,
						where: `in a conduit inside an insulated wall${heat === "" ? "" : ` ${tellAir(air)}`}`,
					},
				}),
	};
}

function known(provenance: Provenance): { source: string; recalled: boolean } {
	return { source: citation(provenance), recalled: provenance.known === "recalled" };
}

function knownTogether(provenances: readonly Provenance[]): { source: string; recalled: boolean } {
	return {
		source: provenances.map(citation).join("; "),
		recalled: provenances.some((provenance) => provenance.known === "recalled"),
	};
}
