// What heat and company leave of a published ampacity: factors for the air around a cable, and for conductors that run together.

import type { Gauge } from "../base/gauge.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Cable, Circuit, Conductor } from "../circuit/circuit.ts";
import { aluminiumAmpacity } from "../handbook/aluminium-ampacity.ts";
import { ambientFactor, bundlingFactor } from "../handbook/ampacity-corrections.ts";
import { copperAmpacity } from "../handbook/copper-ampacity.ts";
import { iecAmbientFactor } from "../handbook/iec-corrections.ts";
import type { Provenance } from "../handbook/provenance.ts";
import type { Air } from "./surroundings.ts";

/** Degrees Celsius of the air for which the tables are printed. */
export const tableAir = 30;

/** What is left of an ampacity. */
export interface Corrected {
	/** Amperes, in tenths downward. */
	readonly ampere: number;
	/** How it comes about, as the end of a sentence: `30 A at 90 °C, 0.87 times as much in bay at 45 °C`; empty where nothing is corrected. */
	readonly because: string;
	readonly provenances: readonly Provenance[];
}

/**
 * Building wire (NFPA 70 310.15): the insulation's own column times the factors, and no more than `base`, which its terminals
 * allow. House cable has insulation for 90 °C even where it is used at 60 °C (334.80, recalled).
 */
export function correctBuildingWire(
	gauge: Gauge,
	conductor: Conductor,
	cable: Cable | undefined,
	{ air, carrying }: { readonly air: Air; readonly carrying: number },
	base: number,
): Corrected {
	const isWarm = air.celsius > tableAir;
	if (!isWarm && carrying <= 3) return { ampere: base, because: "", provenances: [] };
	const bears = isHouseCable(cable) ? 90 : conductor.insulation;
	const start = (conductor.material === "copper" ? copperAmpacity : aluminiumAmpacity)(gauge, bears);
	if (start === undefined) return { ampere: base, because: "", provenances: [] };
	const heat = isWarm ? ambientFactor(air.celsius, start.column) : undefined;
	if (isWarm && heat === undefined)
		return {
			ampere: 0,
			because: `insulation for ${start.column} °C does not bear ${tellAir(air)}`,
			provenances: [start.provenance],
		};
	const together = carrying > 3 ? bundlingFactor(carrying) : undefined;
	const ampere = tenths(start.ampere * (heat?.factor ?? 1) * (together?.factor ?? 1));
	return {
		ampere: Math.min(base, ampere),
		because: [
			`${start.ampere} A at ${start.column} °C`,
			...(heat === undefined ? [] : [`${heat.factor} times as much ${tellAir(air)}`]),
			...(together === undefined ? [] : [`${together.factor} times as much with ${carrying} that carry current`]),
		].join(", "),
		provenances: [
			start.provenance,
			...(heat === undefined ? [] : [heat.provenance]),
			...(together === undefined ? [] : [together.provenance]),
		],
	};
}

/** A cord (NFPA 70 400.5): its table times the factor of 60 °C insulation for the air. */
export function correctCord(ampere: number, air: Air): Corrected {
	if (air.celsius <= tableAir) return { ampere, because: "", provenances: [] };
	const heat = ambientFactor(air.celsius, 60);
	if (heat === undefined)
		return { ampere: 0, because: `insulation for 60 °C does not bear ${tellAir(air)}`, provenances: [] };
	return {
		ampere: tenths(ampere * heat.factor),
		because: `${heat.factor} times as much ${tellAir(air)}`,
		provenances: [heat.provenance],
	};
}

/** IEC 60364-5-52: the table times the factor for insulation of PVC in that air. */
export function correctMetric(ampere: number, air: Air): Corrected {
	if (air.celsius <= tableAir) return { ampere, because: "", provenances: [] };
	const heat = iecAmbientFactor(air.celsius);
	if (heat === undefined)
		return { ampere: 0, because: `insulation of PVC does not bear ${tellAir(air)}`, provenances: [] };
	return {
		ampere: tenths(ampere * heat.factor),
		because: `${heat.factor} times as much ${tellAir(air)}`,
		provenances: [heat.provenance],
	};
}

/** Conductors of a cable that carry current: all but its ground. */
export function carryingIn({ conductors }: Circuit, cable: Cable | undefined): number {
	if (cable === undefined) return 1;
	let carrying = 0;
	for (const index of cable.conductors) if (conductors[index]?.role !== "ground") carrying += 1;
	return carrying;
}

/** Products of factors in tenths, downward, as a hair more would not be safe to round up. */
export function tenths(amperes: number): number {
	return Math.floor(amperes * 10 + 1e-6) / 10;
}

export function tellAir({ celsius, place }: Air): string {
	return `at ${formatNumber(celsius, 0)} °C${place === undefined ? "" : ` in ${place.name}`}`;
}

/** A make-up of the trade alone: a temperature that was said for it holds as it was said. */
function isHouseCable(cable: Cable | undefined): boolean {
	return cable !== undefined && !cable.flexible && /^[0-9/]+-[0-9]\b/.test(cable.make) && !/ C\b/.test(cable.make);
}
