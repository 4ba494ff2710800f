// The figures of plans as tables for a terminal, with the working of one thing line by line.
import { formatNumber } from "../../base/quantity.ts";
import { citation } from "../../handbook/provenance.ts";
import type { CableFigure, Carried, FigureAnswer, ModeFigures, SourceFlow, Unsettled, Working } from "../checker.ts";
import { type Cell, writeColumns } from "./columns.ts";
import { visibleLines, wrap } from "./visible.ts";

/** The figures of one plan, by the name of its file. */
export interface FiguredPlan {
	readonly file: string;
	readonly answer: Extract<FigureAnswer, { readonly kind: "figures" }>;
}

/** Tables, mode by mode; where one thing was asked for, its working in their place. */
export function writeFigures(plans: readonly FiguredPlan[]): string {
	return visibleLines(plans.flatMap(writePlan).join("\n"));
}

function writePlan({ file, answer }: FiguredPlan): string[] {
	const lines = [file, ""];
	if (answer.workings.length > 0) return [...lines, ...answer.workings.flatMap(writeWorking)];
	return [...lines, ...answer.modes.flatMap((mode) => writeMode(mode, answer.units)), ...writeLimits(answer.modes)];
}

function writeMode(mode: ModeFigures, units: FiguredPlan["answer"]["units"]): string[] {
	return [
		...wrap(`Mode ${mode.summary}`, columns),
		"",
		...mode.unsettled.flatMap((state) => [...wrap(tellUnsettled(state), columns), ""]),
		...mode.sources.flatMap((flow) => wrap(tellSource(flow, mode.carried.get(flow.source.name)), columns)),
		...[...mode.carried.values()].flatMap((device) =>
			device.isOver && mode.sources.every(({ source }) => source.name !== device.name)
				? wrap(`${device.name} carries ${tellCarried(device)}`, columns)
				: [],
		),
		...(mode.sources.length === 0 ? [] : [""]),
		...mode.runs.flatMap(({ name, label, sort, device, cables }) => [
			`${sort} ${name}${label === "" || label === name ? "" : ` (${label})`}${device === undefined ? "" : `, ${device.name}: ${tellCarried(device)}`}`,
			...writeColumns(
				headsOf(units),
				cables.map((cable) => rowOf(cable, units)),
			).map((line) => `  ${line}`),
			"",
		]),
		...writeFaults(mode),
		...writeStarts(mode),
		...writeEnergy(mode),
		...mode.notes.flatMap((note) => wrap(`- ${note}`, columns)),
		...(mode.notes.length === 0 ? [] : [""]),
	];
}

function tellSource({ source, given, legs, power, charges }: SourceFlow, carried: Carried | undefined): string {
	const verb = given < -tiny ? "takes" : charges ? "pushes" : "gives";
	const flowing = legs.map((leg) => nearest(Math.abs(leg), 2)).join(" and ");
	const of =
		carried === undefined
			? ""
			: ` (${upward(carried.percent, 1)} % of ${nearest(carried.rating, 2)} A${carried.isOver ? ", OVER" : ""})`;
	return `${source.name} ${verb} ${flowing} A, ${nearest(Math.abs(power), 0)} W${of}`;
}

function tellCarried({ amperes, rating, percent, isOver }: Carried): string {
	return `${upward(amperes, 2)} A of ${nearest(rating, 2)} A, ${upward(percent, 1)} %${isOver ? ", OVER" : ""}`;
}

const columns = 80;
const tiny = 1e-9;

function headsOf(units: FiguredPlan["answer"]["units"]): string[] {
	return ["cable", "wire", units === "feet" ? "ft" : "m", "A", "lost V", "to", "left V", "drop %", "own %", ""];
}

function rowOf(figure: CableFigure, units: FiguredPlan["answer"]["units"]): Cell[] {
	const { cable, amperes, lost, end, loading } = figure;
	const over =
		end?.limits.filter(({ isOver }) => isOver).map(({ limit }) => `over ${formatNumber(limit.percent)} %`) ?? [];
	const length = cable.length === undefined ? undefined : units === "feet" ? cable.length / 0.3048 : cable.length;
	return [
		cable.tag,
		cable.make,
		{ figure: length === undefined ? "?" : nearest(length, 1) },
		{ figure: upward(amperes, 2) },
		{ figure: length === undefined ? "?" : upward(lost, 2) },
		cable.to.name,
		{ figure: end === undefined ? "" : downward(end.across, 2) },
		{ figure: end === undefined ? "" : upward(end.percent, 2) },
		{ figure: end === undefined ? "" : upward(end.ownPercent, 2) },
		[...over, ...(loading === "charging" ? ["when charging"] : [])].join(", "),
	];
}

function writeFaults({ faults }: ModeFigures): string[] {
	if (faults.length === 0) return [];
	const rows = faults.flatMap(({ cable, device, loops }) =>
		loops.map(({ sort, ohms, amperes, multiple, opens }): Cell[] => [
			cable.tag,
			sort,
			{ figure: ohms === undefined ? "" : upward(ohms, 3) },
			{ figure: amperes === undefined ? "" : downward(amperes, 0) },
			{ figure: multiple === undefined ? "" : downward(multiple, 1) },
			device?.part ?? "",
			opens,
		]),
	);
	const sources = new Set(faults.flatMap(({ loops }) => loops.flatMap(({ source }) => source ?? [])));
	return [
		"faults, wires warm",
		...writeColumns(["end of", "fault", "ohm", "A", "x rating", "device", "opens"], rows).map((line) => `  ${line}`),
		...wrap(
			`What the supply itself resists is not known and counts as nothing, so that less may flow; an inverter gives little more than its surge. What is published of breakers stops at so many seconds; by its maker's curve one opens sooner. A ground-fault device opens at its milliamperes whatever flows.${sources.size === 0 ? "" : ` By ${[...sources].join("; ")}.`}`,
			columns - 2,
		).map((line) => `  ${line}`),
		"",
	];
}

function writeStarts({ starts }: ModeFigures): string[] {
	if (starts.length === 0) return [];
	const lines = starts.flatMap(({ load, amperes, left, lowest, machines }) => {
		const holds =
			left === undefined ? "DOES NOT START" : lowest === undefined ? "" : left.across < lowest ? "TOO FEW" : "it holds";
		const least = lowest === undefined ? "the lowest it runs at is not said" : `it runs from ${nearest(lowest, 2)} V`;
		const volts =
			left === undefined ? "nothing settles" : `left ${downward(left.across, 2)} V of ${nearest(left.quiet, 2)} V`;
		return [
			`${load.part} draws ${upward(amperes, 2)} A: ${[volts, least, holds].filter((text) => text !== "").join("; ")}`,
			...machines.map(({ name, power, most, input, cutOff }) => {
				const surge =
					most === undefined
						? "its surge is not said"
						: `${power > most ? "OVER" : "within"} its ${nearest(most, 0)} W for a moment`;
				const stops =
					cutOff === undefined || input === undefined
						? []
						: [`${input < cutOff ? "STOPS" : "goes on"} at ${downward(input, 2)} V, cut-off ${nearest(cutOff, 2)} V`];
				return `${name} gives ${upward(power, 0)} W: ${[surge, ...stops].join("; ")}`;
			}),
		];
	});
	return [
		"starts, one at a time with all else on",
		...lines.flatMap((line) => wrap(line, columns - 2).map((row) => `  ${row}`)),
		"",
	];
}

function writeEnergy({ energy }: ModeFigures): string[] {
	if (energy === undefined) return [];
	const rows = energy.uses.map(({ part, power, hours, wattHours }) => [
		part,
		{ figure: upward(power, 1) },
		{ figure: nearest(hours, 2) },
		{ figure: upward(wattHours, 0) },
	]);
	const days = energy.batteries.flatMap(({ source, wattHours, usable, depth, depthSource, days: lasts }) =>
		wattHours <= 0
			? []
			: [
					usable === undefined || lasts === undefined || depth === undefined
						? `${source.name} gives ${upward(wattHours, 0)} Wh a day; its capacity is not said`
						: `${source.name} gives ${upward(wattHours, 0)} Wh a day of ${downward(usable, 0)} Wh (${nearest(depth, 0)} % of what it holds, ${depthSource}): ${downward(lasts, 1)} days with nothing charging`,
				],
	);
	const unsaid =
		energy.unsaid.length === 0 ? [] : [`\`daily\` is not said, so not counted: ${energy.unsaid.join(", ")}`];
	return [
		"a day on the batteries, losses on the way counted, standby not",
		...writeColumns(["load", "W", "h", "Wh"], rows).map((line) => `  ${line}`),
		...[...days, ...unsaid].flatMap((line) => wrap(line, columns - 2).map((row) => `  ${row}`)),
		"",
	];
}

/** What the tables hold drops against, and by which book. */
function writeLimits(modes: readonly ModeFigures[]): string[] {
	const told = new Set(
		modes.flatMap(({ runs }) =>
			runs.flatMap(({ cables }) =>
				cables.flatMap(
					({ end }) =>
						end?.limits.map(
							({ limit }) => `${formatNumber(limit.percent)} % for ${limit.applies} (${citation(limit.provenance)})`,
						) ?? [],
				),
			),
		),
	);
	return [
		...(told.size === 0 ? [] : wrap(`Limits: ${[...told].join("; ")}.`, columns)),
		...wrap(
			"`drop` counts from the source, `own` from where the circuit or feed begins. `ferrule figures PLAN --of THING` tells how a figure comes about. The code in force, the makers' papers and a licensed person decide.",
			columns,
		),
	];
}

/** Why a mode has no steady state. */
export function tellUnsettled({ mode, loading, share, weakest }: Unsettled): string {
	const on = loading === "all" ? "everything" : loading === "loads" ? "every load" : "every charger";
	const much =
		share <= 0
			? "It settles with nothing drawn at all only, or not even so."
			: `The largest that settles is ${downward(share * 100, 1)} % of it${weakest === undefined ? "" : `: then ${weakest.load.part} is left with ${downward(weakest.across, 1)} V of ${nearest(weakest.quiet, 1)} V`}.`;
	return `No steady state in ${mode} with ${on} on: the wires and sources cannot bring what is asked for. ${much}`;
}

function writeWorking({ mode, thing, lines, why }: Working): string[] {
	return [
		...wrap(`Working of ${thing}, ${mode}`, columns),
		"",
		...(lines.length === 0 ? [`  ${why}`] : []),
		...lines.flatMap(({ what, formula, result, source }) => [
			...wrap(what, columns - 2).map((line) => `  ${line}`),
			...wrap(`${formula} = ${result}`, columns - 6).map((line) => `      ${line}`),
			...(source === undefined ? [] : wrap(`[${source}]`, columns - 6).map((line) => `      ${line}`)),
		]),
		"",
	];
}

/** Rounded to the side that does not flatter: what is lost or flows is never told smaller than it is. */
function upward(value: number, decimals: number): string {
	const scale = 10 ** decimals;
	return (Math.ceil(value * scale - 1e-6) / scale + 0).toFixed(decimals);
}

function downward(value: number, decimals: number): string {
	const scale = 10 ** decimals;
	return (Math.floor(value * scale + 1e-6) / scale).toFixed(decimals);
}

function nearest(value: number, decimals: number): string {
	return formatNumber(value, decimals);
}
