// What reaches a load for direct current: another voltage than it is made for, none between its terminals, or one pole only.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { isAlike } from "../analysis/direct.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Circuit, Load } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";

/** Loads on a voltage they are not made for, and loads that get none, though something reaches them. */
export function findWrongDirectVoltage({ circuit }: Analysis, { direct }: ModeState, basis: string): Finding[] {
	if (direct === undefined) return [];
	// Where a battery is shorted or two voltages meet, that is the fault to tell.
	if (direct.contradicted.length > 0) return [];
	const roughedIn = new Set(circuit.plan.runs.filter((run) => run.roughedIn).map(({ name }) => name));
	const landed = new Set(
		circuit.conductors.flatMap(({ role, ends }) => (systemOfRole(role) === "dc" ? ends.map(({ point }) => point) : [])),
	);
	return circuit.loads.flatMap((load): Finding[] => {
		if (roughedIn.has(circuit.partByName.get(load.part)?.run ?? "")) return [];
		const [positive, negative] = load.between;
		if (circuit.points[positive]?.role !== "positive") return [];
		const volts = direct.potentials.between(positive, negative);
		const isLive = direct.poles.countAt(positive) > 0;
		if (volts === undefined) {
			const isReturned = direct.poles.countAt(negative) > 0;
			// What no wire is on is not part of the plan: the battery side of an inverter of which only the mains is told.
			if (isLive && isReturned) return [];
			if (!isLive && !isReturned && !load.between.some((point) => landed.has(point))) return [];
			return [tellOpen(circuit, load, isLive ? negative : positive, basis)];
		}
		if (!isLive || volts < 0) return [];
		if (volts > 0 && (load.volts === undefined || isAlike(volts, load.volts))) return [];
		return [tellVolts(circuit, load, volts, basis)];
	});
}

function tellVolts({ partByName, plan }: Circuit, load: Load, volts: number, basis: string): Finding {
	const span = partByName.get(load.part)?.span ?? { file: plan.file, line: 1, column: 1, endColumn: 1 };
	const made = load.volts ?? 0;
	const isTooMuch = volts > made && volts > 0;
	return finding({
		code: "load-voltage-wrong",
		level: isTooMuch ? "danger" : "error",
		title:
			volts === 0
				? `${load.part} gets 0 V: both its terminals are on one pole`
				: `${load.part} is made for ${formatNumber(made, 1)} V and gets ${formatNumber(volts, 1)} V`,
		span,
		label: volts === 0 ? "both on one pole" : `made for ${formatNumber(made, 1)} V`,
		marks: [load.part],
		figures: volts === 0 ? [] : [{ name: "voltage", found: volts, limit: made, unit: "V", source: basis }],
		why: isTooMuch
			? "On too much voltage it takes far more power than it is made for, overheats and can burn."
			: "It does not work, or not as it should.",
		help:
			volts === 0
				? `Take one wire of ${load.part} to the other pole.`
				: `Use a ${formatNumber(volts, 0)} V model for ${load.part}, or feed it through a converter.`,
		basis,
		key: `load-voltage-wrong@${load.part}`,
	});
}

function tellOpen({ points, partByName, plan }: Circuit, load: Load, open: number, basis: string): Finding {
	const span = partByName.get(load.part)?.span ?? { file: plan.file, line: 1, column: 1, endColumn: 1 };
	const terminal = points[open]?.name ?? "";
	const pole = points[open]?.role === "negative" ? "negative" : "positive";
	return finding({
		code: "load-voltage-wrong",
		level: "error",
		title: `${load.part} gets nothing: no ${pole} reaches ${terminal}`,
		span,
		label: `no ${pole}`,
		marks: [terminal, load.part],
		why: "It does not work, and its other terminal is live all the same.",
		help: `Look for the ${pole} wire that is missing or off on the way to ${terminal}.`,
		basis,
		key: `load-voltage-wrong@${load.part}`,
	});
}
