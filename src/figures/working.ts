// How a figure comes about, line by line, so that a person can do it again on paper: formula, values with units, row, result.
import { conductorLimit } from "../analysis/conductor-limit.ts";
import { directLimit } from "../analysis/direct-limit.ts";
import { formatGauge } from "../base/gauge.ts";
import { amperes, lostIn, ohms } from "../base/measures.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Circuit, Conductor, Load } from "../circuit/circuit.ts";
import { citation } from "../handbook/provenance.ts";
import { type OhmsPerMetre, ohmsPerMetre } from "./conductor-ohms.ts";
import type { Limit } from "./drop-limits.ts";
import { directDropLimit, mainsDropLimits } from "./drop-limits.ts";
import type { LoadFlow, Steady } from "./steady-state.ts";
import { findWay, type WayStep } from "./way.ts";

/** One line: what it is, how it is reckoned with its values, and what comes of it. */
export interface WorkingLine {
	readonly what: string;
	readonly formula: string;
	readonly result: string;
	/** The row of the handbook it rests on; undefined where it rests on the lines before. */
	readonly source: string | undefined;
}

/** Lengths are told in feet or in metres. */
export type LengthUnit = "feet" | "metres";

/** The working of the volts at a load, or at an outlet that draws nothing; undefined where it is not fed. */
export function workOutLoad(steady: Steady, load: Load, unit: LengthUnit): readonly WorkingLine[] | undefined {
	const { circuit, supplies } = steady;
	const [one, other] = load.between;
	const quiet = supplies.quiet.between(one, other);
	if (quiet === undefined || quiet === 0) return undefined;
	const [high, low] = quiet > 0 ? [one, other] : [other, one];
	const steps = findWay(steady, high, low);
	if (steps === undefined) return undefined;
	const flow = steady.loads.find((each) => each.load === load);
	const left = steady.voltsAt(high) - steady.voltsAt(low);
	const wires = steps.flatMap((step) => (step.kind === "conductor" ? workOutStep(steady, step, unit) : []));
	const inside = steps.flatMap((step) => (step.kind === "supply" ? workOutSource(steady, step) : []));
	const losses = [...wires, ...inside].flatMap(({ volts }) => (Math.abs(volts) < leastVolts ? [] : [volts]));
	const lost = Math.abs(quiet) - left;
	return [
		...(flow === undefined ? [] : [tellDraw(flow)]),
		...wires.map(({ line }) => line),
		...inside.map(({ line }) => line),
		{
			what: "lost, there and back",
			formula: losses.length === 0 ? "nothing flows" : losses.map(tellTerm).join(""),
			result: `${show(lost)} V`,
			source: undefined,
		},
		{
			what: "left",
			formula: `${show(Math.abs(quiet))} V - ${show(lost)} V`,
			result: `${show(left)} V`,
			source: undefined,
		},
		...(flow === undefined ? [] : tellProof(flow)),
		...limitsFor(circuit, load).map((limit) => tellLimit(limit, lost, Math.abs(quiet))),
	];
}

/** The working of what one conductor resists and loses. */
export function workOutConductor(steady: Steady, conductor: Conductor, unit: LengthUnit): readonly WorkingLine[] {
	return workOutStep(steady, { conductor, isForward: true }, unit).map(({ line }) => line);
}

/** The working of the largest device that a conductor may have; nothing where no table has it. */
export function workOutLimit(steady: Steady, conductor: Conductor, system: "ac" | "dc"): readonly WorkingLine[] {
	const limit =
		system === "ac"
			? conductorLimit(steady.circuit, conductor)
			: directLimit(steady.circuit, conductor, highestDirect(steady));
	if (limit === undefined) return [];
	const careful = limit.enclosed === undefined ? "" : `; ${limit.enclosed.largest} A ${limit.enclosed.where}`;
	return [
		{
			what: `${conductor.name} may be protected at`,
			formula: limit.because,
			result: `${formatNumber(limit.largest, 1)} A${careful}`,
			source: limit.source,
		},
	];
}

/** The most volts that a source of direct current holds; 12 V where there is none (common practice). */
function highestDirect({ supplies }: Steady): number {
	const held = supplies.supplies.filter(({ source }) => source.system === "dc").map(({ volts }) => Math.abs(volts));
	return held.length === 0 ? 12 : Math.max(...held);
}

/** Less is a rounding. */
const leastVolts = 5e-7;

interface Worked {
	readonly line: WorkingLine;
	readonly volts: number;
}

function workOutStep(
	{ circuit, amperesIn }: Steady,
	{ conductor, isForward }: { readonly conductor: Conductor; readonly isForward: boolean },
	unit: LengthUnit,
): readonly Worked[] {
	// The way is walked from the load's high side to its source and round: what it loses there is lost against the current.
	const current = amperes(isForward ? -amperesIn(conductor.index) : amperesIn(conductor.index));
	const what = `${conductor.name}, ${formatGauge(conductor.gauge)}${conductor.material === "aluminium" ? " aluminium" : ""}`;
	if (conductor.length === undefined)
		return conductor.cable === undefined
			? []
			: [
					{
						line: {
							what,
							formula: `${show(Math.abs(current))} A; its length is missing`,
							result: "nothing counted",
							source: undefined,
						},
						volts: 0,
					},
				];
	const row = ohmsPerMetre(circuit, conductor);
	const resistance = ohms(Math.max(0, conductor.length) * row.value);
	const lost = lostIn(current, resistance);
	return [
		{
			line: {
				what: `${what}, ${tellLength(conductor.length, unit)}`,
				formula: `R = ${tellRow(row)} x ${lengthFor(row, conductor.length)} = ${figure(resistance)} ohm; V = I R = ${show(current)} A x ${figure(resistance)} ohm`,
				result: `${show(lost)} V`,
				source: `${row.row}, ${row.source}`,
			},
			volts: lost,
		},
	];
}

/** A battery's own resistance, where it is known. */
function workOutSource(
	{ sources }: Steady,
	{ supply: { source, ohms: own }, isForward }: Extract<WayStep, { kind: "supply" }>,
): readonly Worked[] {
	if (own === 0) return [];
	const given = sources.find((each) => each.source === source)?.given ?? 0;
	const current = isForward ? given : -given;
	return [
		{
			line: {
				what: `inside ${source.name}`,
				formula: `V = I R = ${show(current)} A x ${figure(own)} ohm`,
				result: `${show(current * own)} V`,
				source: "its own resistance, or its volts over its fault current, as the plan says",
			},
			volts: current * own,
		},
	];
}

function tellRow({ printed, per, ratio }: OhmsPerMetre): string {
	const unit = per === 1000 ? "ohm/km" : "ohm/1000 ft";
	return `${figure(printed)} ${unit}${ratio === 1 ? "" : ` x ${figure(ratio)}`}`;
}

/** A length in the unit of a row, as exactly as it takes to do it again. */
function lengthFor({ per }: OhmsPerMetre, metres: number): string {
	const length = Math.max(0, metres);
	return per === 1000 ? `${figure(length)} m` : `${figure(length / 0.3048)} ft`;
}

function tellDraw({ load, nature, drawn, across, quiet }: LoadFlow): WorkingLine {
	const what = `${load.part} ${natures[nature]}, fed with ${show(quiet)} V`;
	return { what, formula: tellCurrent(load, nature, across, drawn), result: `${show(drawn)} A`, source: undefined };
}

const natures = {
	power: "takes its power whatever its volts",
	current: "draws its current whatever its volts",
	resistance: "is a resistance",
} as const;

function tellCurrent({ watts, volts }: Load, nature: LoadFlow["nature"], across: number, drawn: number): string {
	if (nature === "current") return "as said";
	if (nature === "power") return `I = P / V = ${show(across * drawn)} W / ${show(across)} V`;
	const resistance = drawn === 0 ? 0 : across / drawn;
	const plate =
		watts === undefined || volts === undefined
			? `R = ${figure(resistance)} ohm`
			: `R = V x V / P = ${show(volts)} V x ${show(volts)} V / ${show(watts)} W = ${figure(resistance)} ohm`;
	return `${plate}; I = V / R = ${show(across)} V / ${figure(resistance)} ohm`;
}

/** With what is left the load draws just what was put in above: the figures hold one another up. */
function tellProof({ nature, drawn, across }: LoadFlow): readonly WorkingLine[] {
	if (nature === "current") return [];
	return [
		{
			what: "used",
			formula: `P = V I = ${show(across)} V x ${show(drawn)} A`,
			result: `${show(across * drawn)} W`,
			source: undefined,
		},
	];
}

function limitsFor({ plan, partByName, points, sources }: Circuit, load: Load): readonly Limit[] {
	const role = points[load.between[0]]?.role;
	if (role === "positive" || role === "negative") return [directDropLimit(plan.settings, false)];
	return mainsDropLimits(plan.settings, {
		isLight: partByName.get(load.part)?.face.traits.includes("light") === true,
		isPublic: sources.some(({ sort }) => sort === "shore"),
	}).filter(({ circuit }) => circuit !== "branch");
}

function tellLimit(limit: Limit, lost: number, quiet: number): WorkingLine {
	const percent = (Math.max(0, lost) / quiet) * 100;
	return {
		what: "drop",
		formula: `${show(lost)} V / ${show(quiet)} V x 100`,
		result: `${show(percent)} %, ${percent > limit.percent + 1e-6 ? "over" : "within"} the ${formatNumber(limit.percent)} % of ${limit.applies}`,
		source: citation(limit.provenance),
	};
}

function tellTerm(value: number, index: number): string {
	const sign = value < 0 ? "-" : "+";
	return index === 0 ? (value < 0 ? `-${show(-value)}` : show(value)) : ` ${sign} ${show(Math.abs(value))}`;
}

/** A length in the unit asked for. */
export function tellLength(metres: number, unit: LengthUnit): string {
	return unit === "feet" ? `${formatNumber(metres / 0.3048, 2)} ft` : `${formatNumber(metres, 2)} m`;
}

/** To a ten-thousandth: what is added up again on paper agrees to a thousandth. */
function show(value: number): string {
	return formatNumber(value, 4);
}

/** Six figures that count, without an exponent. */
function figure(value: number): string {
	if (value === 0 || !Number.isFinite(value)) return "0";
	const decimals = Math.min(12, Math.max(0, 5 - Math.floor(Math.log10(Math.abs(value)))));
	return formatNumber(value, decimals);
}
