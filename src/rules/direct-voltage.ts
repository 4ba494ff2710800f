// What reaches a load for direct current: another voltage than it is made for, none between its terminals, or one pole only.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Break } from "../analysis/breaks.ts";
import { type DirectState, isAlike } from "../analysis/direct.ts";
import { findLoopless } from "../analysis/direct-loops.ts";
import { traceDirectOpenings } from "../analysis/direct-openings.ts";
import { joinAll } from "../analysis/joined-sets.ts";
import { findOpposed } from "../analysis/opposed-batteries.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding, type LabelledSpan } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Load, Part } from "../circuit/circuit.ts";
import { keyOfReversed } from "./polarity-dc-reversed.ts";

/** Loads on a voltage they are not made for, and loads that get none, though something reaches them: one finding for one cause. */
export function findWrongDirectVoltage(analysis: Analysis, { direct }: ModeState, basis: string): Finding[] {
	// Where a battery is shorted, two cancel each other or two voltages meet, that is the fault to tell.
	if (direct === undefined || direct.contradicted.length > 0 || findOpposed(direct).length > 0) return [];
	const { circuit, landings } = analysis;
	return [
		...traceDirectOpenings(circuit, direct, landings).map((lost) => tellOpen(circuit, lost, basis)),
		...groupAlike(direct, findWrong(circuit, direct)).map((group) => tellVolts(circuit, group, basis)),
		...findParted(circuit, direct, basis),
	];
}

/** Loads that a plus and a minus reach which belong to different batteries with nothing between them. */
function findParted(circuit: Circuit, { network, poles, potentials }: DirectState, basis: string): Finding[] {
	const parted = circuit.loads.filter(
		({ between: [positive, negative] }) =>
			circuit.points[positive]?.role === "positive" &&
			poles.countAt(positive) > 0 &&
			poles.countAt(negative) > 0 &&
			potentials.between(positive, negative) === undefined,
	);
	// A source of which a post leads to nothing is the reason, and told as that.
	if (parted.length === 0 || findLoopless(network).sources.length > 0) return [];
	return parted.map((load) => tellParted(circuit, poles, load, basis));
}

function tellParted(circuit: Circuit, poles: DirectState["poles"], { part, between }: Load, basis: string): Finding {
	const [plus, minus] = between.map((point) => {
		const index = poles.reaches.findIndex((reach) => reach.has(point));
		return poles.poles[index]?.source ?? "";
	});
	return finding({
		code: "load-voltage-wrong",
		level: "error",
		title: `${part} gets nothing: its plus comes from ${plus ?? ""} and its minus leads to ${minus ?? ""}, and nothing joins the two`,
		span: placeOf(circuit, [part]).span,
		label: "no way back",
		marks: [part],
		why: "It does not work, and its plus is live all the same.",
		help: `Lead the minus of ${part} back to ${plus ?? ""}, or join the minus of both.`,
		basis,
		key: `load-voltage-wrong@${part}/parted`,
	});
}

/** A load, and the volts between its terminals. */
interface Wrong {
	readonly load: Load;
	readonly volts: number;
}

function findWrong(circuit: Circuit, { potentials, poles }: DirectState): Wrong[] {
	let roughedIn: ReadonlySet<string> | undefined;
	return circuit.loads.flatMap((load): Wrong[] => {
		const [positive, negative] = load.between;
		if (circuit.points[positive]?.role !== "positive") return [];
		const volts = potentials.between(positive, negative);
		if (volts === undefined || volts < 0 || poles.countAt(positive) === 0) return [];
		if (volts > 0 && (load.volts === undefined || isAlike(volts, load.volts))) return [];
		roughedIn ??= new Set(circuit.plan.runs.filter((run) => run.roughedIn).map(({ name }) => name));
		return roughedIn.has(circuit.partByName.get(load.part)?.run ?? "") ? [] : [{ load, volts }];
	});
}

/** Loads that hang on the same two potentials and are made for the same volts have one cause. */
function groupAlike({ network }: DirectState, wrong: readonly Wrong[]): Wrong[][] {
	if (wrong.length === 0) return [];
	const joined = joinAll(network);
	return [
		...groupBy(
			wrong,
			({ load: { between, volts: made }, volts }) =>
				`${joined.find(between[0])} ${joined.find(between[1])} ${volts === 0 ? 0 : made}`,
		).values(),
	];
}

function tellVolts(circuit: Circuit, group: readonly Wrong[], basis: string): Finding {
	const { load, volts } = certain(group[0], "a load on a wrong voltage");
	const { names, span, also } = placeOf(
		circuit,
		group.map((one) => one.load.part),
	);
	const many = names.length > 1;
	const made = load.volts ?? 0;
	const isTooMuch = volts > made && volts > 0;
	return finding({
		code: "load-voltage-wrong",
		level: isTooMuch ? "danger" : "error",
		title:
			volts === 0
				? `${listNames(names)} ${many ? "get 0 V: both terminals of each" : "gets 0 V: both its terminals"} are on one pole`
				: `${listNames(names)} ${many ? "are" : "is"} made for ${formatNumber(made, 1)} V and ${many ? "get" : "gets"} ${formatNumber(volts, 1)} V`,
		span,
		label: volts === 0 ? "both on one pole" : `made for ${formatNumber(made, 1)} V`,
		also,
		marks: names,
		figures: volts === 0 ? [] : [{ name: "voltage", found: volts, limit: made, unit: "V", source: basis }],
		why: isTooMuch
			? "On too much voltage it takes far more power than it is made for, overheats and can burn."
			: "It does not work, or not as it should.",
		help:
			volts === 0
				? `Take one wire of ${names[0] ?? ""} to the other pole.`
				: `Use a ${formatNumber(volts, 0)} V model for ${listNames(names)}, or feed ${many ? "them" : "it"} through a converter.`,
		basis,
		key: `load-voltage-wrong@${load.part}`,
	});
}

function tellOpen(circuit: Circuit, lost: Break, basis: string): Finding {
	const first = circuit.points[lost.victims[0] ?? -1];
	const { names, span, also } = placeOf(
		circuit,
		lost.victims.map((victim) => {
			const point = circuit.points[victim];
			return point?.kind === "terminal" ? point.part : "";
		}),
	);
	const terminal = first?.name ?? "";
	const pole = lost.sort === "neutral" ? "negative" : "positive";
	const cause = tellCause(circuit, lost, pole);
	const behind = keyBehind(circuit, lost);
	return finding({
		code: "load-voltage-wrong",
		level: "error",
		title: `${listNames(names)} ${names.length > 1 ? "get" : "gets"} nothing: ${cause === undefined ? "" : `${cause}, so `}no ${pole} reaches ${terminal}`,
		span,
		label: `no ${pole}`,
		also,
		marks: [terminal, ...names],
		why:
			lost.sort === "neutral"
				? "It does not work, and its other terminal is live all the same."
				: "It does not work, and whoever looks for the reason opens a box in which other wires are live.",
		help:
			cause === undefined
				? `Look for the ${pole} wire that is missing or off on the way to ${terminal}.`
				: `Land it with the other ${pole}s there.`,
		basis,
		key: `load-voltage-wrong@${lost.place}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}

/** Where the pole is lost, if an end says so. */
function tellCause({ conductors, points }: Circuit, { cause }: Break, pole: string): string | undefined {
	if (cause.kind === "core") return `${cause.cable} has no ${pole} conductor`;
	if (cause.kind === "empty") return undefined;
	const conductor = conductors[cause.conductor];
	const end = conductor?.ends[cause.which];
	if (conductor === undefined || end === undefined) return undefined;
	if (cause.kind === "apart") return `${conductor.name} is not joined to the other ${pole}s in ${end.enclosure.name}`;
	const where = end.point === undefined ? undefined : points[end.point]?.name;
	if (where !== undefined) return `${conductor.name} is on ${where}`;
	return `${conductor.name} is ${end.state === "capped" ? "capped" : "on nothing"} in ${end.enclosure.name}`;
}

/** What is told of the end itself: that it is loose, or that two were exchanged. */
function keyBehind({ conductors }: Circuit, { cause, place }: Break): string | undefined {
	if (cause.kind === "misplaced") return keyOfReversed(cause.root);
	if (cause.kind !== "off") return undefined;
	return conductors[cause.conductor]?.ends[cause.which].state === "loose" ? `end-loose@${place}` : undefined;
}

/** The parts by name, the place of the first, and those of the next few. */
function placeOf(
	{ partByName, plan }: Circuit,
	found: readonly string[],
): Pick<Finding, "span"> & { readonly names: readonly string[]; readonly also: readonly LabelledSpan[] } {
	const names = [...new Set(found)];
	const parts = names.flatMap((name): readonly Part[] => {
		const part = partByName.get(name);
		return part === undefined ? [] : [part];
	});
	return {
		names,
		span: parts[0]?.span ?? { file: plan.file, line: 1, column: 1, endColumn: 1 },
		also: parts.slice(1, mostShown).map(({ span, name }) => ({ span, label: name })),
	};
}

/** Places told beside the first. */
const mostShown = 8;
