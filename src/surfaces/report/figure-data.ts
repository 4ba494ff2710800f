// The figures of plans for programs: as JSON, and as a row for each cable for a spreadsheet.

import { citation } from "../../handbook/provenance.ts";
import type { CableFigure, ModeFigures } from "../checker.ts";
import type { FiguredPlan } from "./figures.ts";

/** By the schema published in `grammar/figures.schema.json`. Figures are whole, lengths in metres. */
export function writeFiguresJson(plans: readonly FiguredPlan[]): string {
	const told = plans.map(({ file, answer }) => ({
		file,
		modes: answer.modes.map(tellMode),
		workings: answer.workings.map(({ mode, thing, lines, why }) => ({
			mode,
			thing,
			why,
			lines: lines.map((line) => ({ ...line, source: line.source ?? null })),
		})),
	}));
	return `${JSON.stringify({ schema: 1, plans: told }, undefined, 2)}\n`;
}

function tellMode(mode: ModeFigures) {
	return {
		name: mode.mode,
		summary: mode.summary,
		unsettled: mode.unsettled.map(({ loading, share, weakest }) => ({
			loading,
			share,
			weakest: weakest === undefined ? null : { load: weakest.load.part, volts: weakest.across },
		})),
		sources: mode.sources.map(({ source, legs, power, charges }) => ({
			name: source.name,
			legs,
			watts: power,
			charges,
		})),
		carried: [...mode.carried.values()].map(({ name, amperes, rating, percent, isOver }) => ({
			name,
			amperes,
			rating,
			percent,
			over: isOver,
		})),
		runs: mode.runs.map(({ name, label, sort, cables }) => ({ name, label, sort, cables: cables.map(tellCable) })),
		starts: mode.starts.map(({ load, amperes, left, lowest, machines }) => ({
			load: load.part,
			amperes,
			quietVolts: left?.quiet ?? null,
			volts: left?.across ?? null,
			lowestVolts: lowest ?? null,
			machines: machines.map(({ name, power, most, input, cutOff }) => ({
				name,
				watts: power,
				mostWatts: most ?? null,
				inputVolts: input ?? null,
				cutOffVolts: cutOff ?? null,
			})),
		})),
		energy: mode.energy === undefined ? null : tellEnergy(mode.energy),
		faults: mode.faults.flatMap(({ cable, device, loops }) =>
			loops.map(({ sort, ohms, amperes, multiple, opens, source }) => ({
				cable: cable.tag,
				fault: sort,
				ohms: ohms ?? null,
				amperes: amperes ?? null,
				timesRating: multiple ?? null,
				device: device?.part ?? null,
				opens,
				source: source ?? null,
			})),
		),
		notes: mode.notes,
	};
}

function tellEnergy({ uses, batteries, unsaid }: NonNullable<ModeFigures["energy"]>) {
	return {
		uses: uses.map(({ part, power, hours, wattHours }) => ({ load: part, watts: power, hours, wattHours })),
		unsaid,
		batteries: batteries.map(({ source, wattHours, usable, depth, depthSource, days }) => ({
			name: source.name,
			wattHours,
			usableWattHours: usable ?? null,
			depthPercent: depth ?? null,
			depthSource,
			days: days ?? null,
		})),
	};
}

function tellCable({ cable, amperes, loading, conductors, lost, heat, end }: CableFigure) {
	return {
		cable: cable.tag,
		wire: cable.make,
		from: cable.from.name,
		to: cable.to.name,
		metres: cable.length ?? null,
		amperes,
		loading,
		lostVolts: lost,
		heatWatts: heat,
		conductors: conductors.map((each) => ({
			name: each.conductor.name,
			amperes: each.amperes,
			ohms: each.ohms ?? null,
			lostVolts: each.lost,
		})),
		end:
			end === undefined
				? null
				: {
						quietVolts: end.quiet,
						volts: end.across,
						lostVolts: end.lost,
						percent: end.percent,
						ownPercent: end.ownPercent,
						limits: end.limits.map(({ limit, percent, isOver }) => ({
							percent: limit.percent,
							found: percent,
							over: isOver,
							source: citation(limit.provenance),
						})),
					},
	};
}

/** A row for each cable in each mode. Text that a spreadsheet would take for a formula is told as text. */
export function writeFiguresCsv(plans: readonly FiguredPlan[]): string {
	const rows: (readonly (string | number)[])[] = [];
	for (const { file, answer } of plans)
		for (const { mode, runs } of answer.modes)
			for (const { name, sort, cables } of runs)
				for (const figure of cables) rows.push(rowOf(file, mode, `${sort} ${name}`, figure, answer.units));
	const [length] = new Set(plans.map(({ answer }) => answer.units));
	return [headsOf(length ?? "metres"), ...rows].map((row) => `${row.map(tellCell).join(",")}\r\n`).join("");
}

function headsOf(units: FiguredPlan["answer"]["units"]): string[] {
	return [
		...["plan", "mode", "run", "cable", "wire", "from", "to", units, "amperes", "on", "lost V", "heat W"],
		...["quiet V", "left V", "drop %", "own drop %", "limit %", "over"],
	];
}

function rowOf(
	file: string,
	mode: string,
	run: string,
	{ cable, amperes, loading, lost, heat, end }: CableFigure,
	units: FiguredPlan["answer"]["units"],
): (string | number)[] {
	const length = cable.length === undefined ? "" : units === "feet" ? cable.length / 0.3048 : cable.length;
	return [
		...[file, mode, run, cable.tag, cable.make, cable.from.name, cable.to.name, length, amperes, loading, lost, heat],
		...(end === undefined
			? ["", "", "", "", "", ""]
			: [
					...[end.quiet, end.across, end.percent, end.ownPercent],
					Math.min(...end.limits.map(({ limit }) => limit.percent)),
					end.limits.some(({ isOver }) => isOver) ? "yes" : "no",
				]),
	];
}

function tellCell(value: string | number): string {
	if (typeof value === "number") return Number.isFinite(value) ? String(Number(value.toFixed(6))) : "";
	const safe = /^[\s\u00a0]*[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]|[\r\n][\s\u00a0]*[=+\-@\uff1d\uff0b\uff0d\uff20]/.test(
		value,
	)
		? `'${value}`
		: value;
	return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
