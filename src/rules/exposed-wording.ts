// Words for groups of exposed conductors, shared by the rules that report them.

import type { Analysis } from "../analysis/analysis.ts";
import { nameMixUp } from "../analysis/mislabelled.ts";
import type { Finding, LabelledSpan } from "../base/finding.ts";
import { formatGauge } from "../base/gauge.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Part, Protection } from "../circuit/circuit.ts";
import { type ExposedConductor, type ExposedGroup, exposedGroups } from "./exposed-conductors.ts";
import { keyOfMistake } from "./mistake-wording.ts";
import { modesOf } from "./mode-names.ts";

/** `14 AWG in porch-1, porch-2 and 3 more`, or `the 14 AWG jumper b1.hot~b2.hot` where no cable is among them. */
export function tellConductors({ first, all }: ExposedGroup): string {
	const tags = cablesOf(all);
	const size = formatGauge(first.conductor.gauge);
	return tags.length === 0 ? `the ${size} conductor ${first.conductor.name}` : `${size} in ${listNames(tags)}`;
}

/** `the 20 A breaker LC.1`, `the 30 A breaker of the supply behind shore`, `the 16.7 A inverter inv`. */
export function tellDevice(analysis: Analysis, device: Protection): string {
	const amperes = device.rating === undefined ? "" : `${formatNumber(device.rating, 1)} A `;
	if (device.sort !== "supply") return `the ${amperes}${device.sort} ${device.part}`;
	const source = analysis.circuit.sources.find((candidate) => candidate.name === device.source);
	return source?.sort === "inverter" || source?.sort === "inverter-charger"
		? `the ${amperes}${source.sort} ${device.part}`
		: `the ${amperes}breaker of the supply behind ${device.part}`;
}

/** Where a group stands: the end that was said to be landed, nearest the source, else the cable; with its way and its modes. */
export function placeOf(
	analysis: Analysis,
	code: string,
	group: ExposedGroup,
): Pick<Finding, "code" | "key" | "span" | "marks" | "path" | "modes" | "consequenceOf"> {
	const { first, modes } = group;
	const { conductor, cable, state } = first;
	const said = conductor.ends.find((end) => end.said && end.state === "landed");
	const point = conductor.ends.map((end) => end.point).find((end) => end !== undefined && state.exposure.has(end));
	return {
		span: said?.span ?? cable?.span ?? conductor.span,
		code,
		key: keyOf(code, group),
		marks: marksOf(group),
		path: point === undefined ? [] : (state.poles.reachOf(point, "hot")?.pathTo(point) ?? []),
		modes: modesOf(analysis, modes),
		...followsMistake(analysis, group),
	};
}

/** The names a drawing marks: cables first, then conductors without one, then the device. */
function marksOf({ all, first }: ExposedGroup): readonly string[] {
	const loose = all.flatMap((one) => (one.cable === undefined ? [one.conductor.name] : []));
	return [...cablesOf(all), ...loose, ...(first.device === undefined ? [] : [first.device.part])];
}

/** The same cable can lead the hot of one device and bring back what another let out. */
function keyOf(code: string, group: ExposedGroup): string {
	return `${code}@${marksOf(group)[0] ?? ""}${group.first.carries === "return" ? "/return" : ""}`;
}

/** The mistake by which the hot, or the device, got to conductors that are not meant for it: that is told as the cause. */
function followsMistake(analysis: Analysis, { first, all }: ExposedGroup): Pick<Finding, "consequenceOf"> {
	if (first.carries === "return") return {};
	for (const { conductor, state } of all) {
		const point = conductor.ends.map((end) => end.point).find((end) => end !== undefined && state.exposure.has(end));
		const root = point === undefined ? undefined : state.crossings.rootAt(point, "hot");
		const cause = root === undefined ? undefined : keyOfMistake(state.crossings, root.key);
		if (cause !== undefined) return { consequenceOf: cause };
	}
	const { device, cable } = first;
	const said = analysis.circuit.plan.runs.find((run) => run.name === cable?.run)?.protection;
	return device === undefined || said === undefined || said === device.part
		? {}
		: { consequenceOf: `circuit-mislabelled@${nameMixUp({ said, found: device.part })}` };
}

/** The key of the finding on a fault of protection on the wires of a part, for what follows from it; undefined where there is none. */
export function protectionFaultAt(analysis: Analysis, part: Part): string | undefined {
	const group = exposedGroups(analysis).find(
		({ sort, all }) =>
			(sort === "no-own-device" || sort === "device-too-large") &&
			all.some(({ conductor }) =>
				conductor.ends.some(({ point }) => point !== undefined && part.points.includes(point)),
			),
	);
	if (group === undefined) return undefined;
	return keyOf(group.sort === "no-own-device" ? "protection-missing" : "protection-too-large", group);
}

/** The key of the finding that blames a device as too large for its wires, for what follows from it. */
export function protectionFaultOf(analysis: Analysis, device: Protection): string | undefined {
	const group = exposedGroups(analysis).find(
		({ sort, first }) => sort === "device-too-large" && first.device === device,
	);
	return group === undefined ? undefined : keyOf("protection-too-large", group);
}

/** The other cables of a group, and the device that is too large for them. */
export function otherPlaces({ all, first }: ExposedGroup, device: Protection | undefined): LabelledSpan[] {
	const cables = new Map(all.flatMap(({ cable }) => (cable === undefined ? [] : [[cable.tag, cable] as const])));
	const others = [...cables.values()].filter((cable) => cable !== first.cable).slice(0, mostPlaces);
	return [
		...(device === undefined ? [] : [{ span: device.span, label: deviceLabel(device) }]),
		...others.map((cable) => ({ span: cable.span, label: cable.tag })),
	];
}

/** More places than this tell a reader no more. */
const mostPlaces = 8;

function deviceLabel(device: Protection): string {
	return device.rating === undefined ? "the device" : `opens at ${formatNumber(device.rating, 1)} A`;
}

function cablesOf(all: readonly ExposedConductor[]): string[] {
	return [...new Set(all.flatMap(({ cable }) => (cable === undefined ? [] : [cable.tag])))];
}
