// The resistance of a conductor as the published tables have it, at the temperature it works at.
import { formatGauge } from "../base/gauge.ts";
import { type Celsius, celsius, type Ohms, ohms } from "../base/measures.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { resistivityAt20, resistivityInService, temperatureRatio } from "../handbook/copper.ts";
import { metricResistance, resistance75 } from "../handbook/copper-resistance.ts";
import { citation } from "../handbook/provenance.ts";
import type { Region } from "../kinds/kind.ts";

/** What a metre of a conductor resists, and how it comes from a row of a table. */
export interface OhmsPerMetre {
	/** Ohms. */
	readonly value: number;
	/** The temperature it holds at. */
	readonly at: Celsius;
	/** The row's own figure, and the metres it is for: 304.8 for 1000 ft. */
	readonly printed: number;
	readonly per: number;
	/** What the row's figure is multiplied by for the temperature; 1 where the row is for it. */
	readonly ratio: number;
	/** The row in words: `14 AWG solid at 75 °C`. */
	readonly row: string;
	readonly source: string;
}

/** The resistance of a conductor with its length; undefined where that is not known. */
export function ohmsOf(circuit: Circuit, conductor: Conductor): Ohms | undefined {
	return conductor.length === undefined
		? undefined
		: ohms(Math.max(0, conductor.length) * ohmsPerMetre(circuit, conductor).value);
}

/** What a metre of a conductor resists while it carries its load. Worked out once for each make of a circuit. */
export function ohmsPerMetre(circuit: Circuit, conductor: Conductor): OhmsPerMetre {
	const makes = known.get(circuit) ?? new Map<string, OhmsPerMetre>();
	known.set(circuit, makes);
	const { gauge, material, stranded } = conductor;
	const cable = conductor.cable === undefined ? undefined : circuit.cableByTag.get(conductor.cable);
	const isFlexible = cable?.flexible === true;
	const key = `${gauge.system} ${gauge.label} ${material} ${stranded} ${isFlexible}`;
	const found =
		makes.get(key) ??
		ohmsAt({ gauge, material, stranded, isFlexible }, workingTemperature(circuit.plan.settings.region));
	makes.set(key, found);
	return found;
}

const known = new WeakMap<Circuit, Map<string, OhmsPerMetre>>();

/** What of a conductor its resistance hangs on. */
export type WireMake = Pick<Conductor, "gauge" | "material" | "stranded"> & { readonly isFlexible: boolean };

/** What a metre of a make of wire resists at a temperature. */
export function ohmsAt(make: WireMake, at: Celsius): OhmsPerMetre {
	if (make.material === "aluminium") return ofAluminium(make, at);
	return (make.gauge.system === "awg" ? ofAmerican(make, at) : ofMetric(make, at)) ?? ofCopper(make, at);
}

/**
 * Degrees Celsius of a conductor that carries its load, as the trade reckons drops: the 75 °C of the table in North America, the 70 °C
 * that PVC bears in IEC countries (IEC 60364-5-52).
 */
export function workingTemperature(region: Region): Celsius {
	return celsius(region === "us" ? 75 : 70);
}

/** NFPA 70 Chapter 9 Table 8 is for 75 °C. */
function ofAmerican({ gauge, stranded }: WireMake, at: Celsius): OhmsPerMetre | undefined {
	// From 6 AWG up there are no solid rows: such wire is stranded.
	const row = resistance75(gauge, stranded ? "stranded" : "solid") ?? resistance75(gauge, "stranded");
	return row === undefined
		? undefined
		: made(row.ohmsPerKilofoot, 304.8, [75, at], `${formatGauge(gauge)} ${row.stranding}`, citation(row.provenance));
}

/** IEC 60228 gives the resistance at 20 °C: solid, stranded, or flexible. */
function ofMetric({ gauge, stranded, isFlexible }: WireMake, at: Celsius): OhmsPerMetre | undefined {
	const row = metricResistance(gauge);
	const [sort, word] = isFlexible ? flexible : stranded ? laid : solid;
	return row === undefined
		? undefined
		: made(row.ohmsPerKilometre[sort], 1000, [20, at], `${formatGauge(gauge)} ${word}`, citation(row.provenance));
}

const solid = [1, "solid"] as const;
const laid = [2, "stranded"] as const;
const flexible = [5, "flexible"] as const;

/** A size that the tables leave out: by its area, 2 % more where it is stranded, as in the rows there are. */
function ofCopper({ gauge, stranded }: WireMake, at: Celsius): OhmsPerMetre {
	const printed = ((resistivityAt20.value * 1e9) / gauge.mm2) * (stranded ? 1.02 : 1);
	const lay = stranded ? ", 2 % more for its lay" : "";
	const row = `17.241 ohm mm2/km by ${formatNumber(gauge.mm2)} mm2 of ${formatGauge(gauge)}${lay}`;
	return made(printed, 1000, [20, at], row, `${citation(resistivityAt20.provenance)}, computed`);
}

/** The trade's constant for aluminium is for 75 °C. */
function ofAluminium({ gauge }: WireMake, at: Celsius): OhmsPerMetre {
	const resistivity = resistivityInService("us", "aluminium");
	const row = `K = 21.2 ohm cmil/ft by ${formatNumber(gauge.mm2)} mm2 of ${formatGauge(gauge)} aluminium`;
	return made((resistivity.value / gauge.mm2) * 1000, 1000, [75, at], row, citation(resistivity.provenance));
}

/** Aluminium is corrected like copper: their coefficients differ by less than the rounding of the rows (common practice). */
function made(
	printed: number,
	per: number,
	[from, at]: readonly [number, Celsius],
	row: string,
	source: string,
): OhmsPerMetre {
	const ratio = from === at ? 1 : temperatureRatio(from, at);
	return { value: (printed / per) * ratio, at, printed, per, ratio, row: `${row} at ${from} °C`, source };
}
