// The resistance of a conductor as the published tables have it, at the temperature it works at.
import { formatGauge, type Gauge } from "../base/gauge.ts";
import { type Celsius, celsius, type Ohms, ohms } from "../base/measures.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { resistivityAt20, resistivityInService, temperatureRatio } from "../handbook/copper.ts";
import { metricResistance, resistance75 } from "../handbook/copper-resistance.ts";
import { citation } from "../handbook/provenance.ts";
import type { Region } from "../kinds/kind.ts";

/** What a metre of a conductor resists, and where that comes from. */
export interface OhmsPerMetre {
	readonly value: number;
	/** The temperature it holds at. */
	readonly at: Celsius;
	/** The row and what was done to its figure, for the working: `1.93 ohm per 1000 ft (12 AWG solid at 75 °C)`. */
	readonly because: string;
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
	const made =
		makes.get(key) ??
		ohmsAt({ gauge, material, stranded, isFlexible }, workingTemperature(circuit.plan.settings.region));
	makes.set(key, made);
	return made;
}

const known = new WeakMap<Circuit, Map<string, OhmsPerMetre>>();

/** What of a conductor its resistance hangs on. */
export type WireMake = Pick<Conductor, "gauge" | "material" | "stranded"> & { readonly isFlexible: boolean };

/** What a metre of a make of wire resists at a temperature. */
export function ohmsAt(make: WireMake, at: Celsius): OhmsPerMetre {
	if (make.material === "aluminium") return ofAluminium(make);
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
	if (row === undefined) return undefined;
	return {
		value: (row.ohmsPerKilofoot / metresInKilofoot) * temperatureRatio(75, at),
		at,
		because: `${row.ohmsPerKilofoot} ohm per 1000 ft, ${formatGauge(gauge)} ${row.stranding} at 75 °C${corrected(75, at)}`,
		source: citation(row.provenance),
	};
}

const metresInKilofoot = 304.8;

/** IEC 60228 gives the resistance at 20 °C: solid, stranded, or flexible. */
function ofMetric({ gauge, stranded, isFlexible }: WireMake, at: Celsius): OhmsPerMetre | undefined {
	const row = metricResistance(gauge);
	if (row === undefined) return undefined;
	const [sort, word] = isFlexible ? flexible : stranded ? laid : solid;
	return {
		value: (row.ohmsPerKilometre[sort] / 1000) * temperatureRatio(20, at),
		at,
		because: `${row.ohmsPerKilometre[sort]} ohm/km, ${formatGauge(gauge)} ${word} at 20 °C${corrected(20, at)}`,
		source: citation(row.provenance),
	};
}

const solid = [1, "solid"] as const;
const laid = [2, "stranded"] as const;
const flexible = [5, "flexible"] as const;

/** A size that the tables leave out: by its area, 2 % more where it is stranded, as in the rows there are. */
function ofCopper({ gauge, stranded }: WireMake, at: Celsius): OhmsPerMetre {
	const lay = stranded ? 1.02 : 1;
	return {
		value: ((resistivityAt20.value * 1e6) / gauge.mm2) * lay * temperatureRatio(20, at),
		at,
		because: `0.017241 ohm mm2/m at 20 °C by ${areaOf(gauge)}${stranded ? ", 2 % more for its lay" : ""}${corrected(20, at)}`,
		source: `${citation(resistivityAt20.provenance)}, computed`,
	};
}

function ofAluminium({ gauge }: WireMake): OhmsPerMetre {
	const resistivity = resistivityInService("us", "aluminium");
	return {
		value: resistivity.value / gauge.mm2,
		at: celsius(75),
		because: `K = 21.2 ohm cmil/ft at 75 °C by ${areaOf(gauge)}`,
		source: citation(resistivity.provenance),
	};
}

function areaOf(gauge: Gauge): string {
	return gauge.system === "awg" ? `${formatGauge(gauge)}, ${formatNumber(gauge.mm2)} mm2` : formatGauge(gauge);
}

function corrected(from: number, to: number): string {
	return from === to
		? ""
		: `, by (234.5 + ${formatNumber(to)}) / (234.5 + ${formatNumber(from)}) = ${formatNumber(temperatureRatio(from, to), 4)} for ${formatNumber(to)} °C`;
}
