// Negatives, and leads inside a series, that are thinner than what comes back through them: what the rules on protection say.
import type { Analysis } from "../analysis/analysis.ts";
import type { ConductorLimit } from "../analysis/conductor-limit.ts";
import type { DirectState } from "../analysis/direct.ts";
import { findExposedLeads } from "../analysis/direct-leads.ts";
import { directLimit } from "../analysis/direct-limit.ts";
import { type ComingBack, traceComingBack } from "../analysis/direct-returns.ts";
import { voltsAboveLowest } from "../analysis/direct-volts.ts";
import { liveSources, tellWay } from "../analysis/network.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames, startSentence } from "../base/wording.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { findOverDirect } from "./over-modes.ts";

/** Negatives thinner than the devices ahead of what they lead back from allow, all of it together. */
export function findThinReturns(analysis: Analysis, code: string): Finding[] {
	const { circuit } = analysis;
	return findOverDirect(analysis, (direct) => {
		const limits = limitsOfLone(circuit, direct);
		const coming = traceComingBack(circuit, direct, new Set(limits.keys()));
		if (coming.size === 0) return [];
		const blamed = new Map(
			findExposedLeads(circuit, direct).map(({ exposure: { device }, conductors: [first] }) => [
				device,
				first?.cable ?? first?.name,
			]),
		);
		const told = new Set<string>();
		return [...coming].flatMap(([index, comes]): Finding[] => {
			const [conductor, limit] = [circuit.conductors[index], limits.get(index)];
			if (conductor === undefined || limit === undefined || comes.amperes <= limit.largest) return [];
			const tag = conductor.cable ?? conductor.name;
			if (told.has(tag)) return [];
			told.add(tag);
			// Where the positive is as thin for that device, it is the device that is too large.
			const cause = comes.devices.map((device) => blamed.get(device)).find((blame) => blame !== undefined);
			return [
				{
					...tell(circuit, conductor, limit, comes, code),
					...(cause === undefined ? {} : { consequenceOf: `${code}@${cause}` }),
				},
			];
		});
	});
}

/** The limits of the negatives by themselves that are thinner than some device of the plan. One beside a positive is as thick as that. */
function limitsOfLone(circuit: Circuit, direct: DirectState): ReadonlyMap<number, ConductorLimit> {
	let most = 0;
	for (const { amperes } of direct.exposure.values()) if (Number.isFinite(amperes) && amperes > most) most = amperes;
	const limits = new Map<number, ConductorLimit>();
	const above = voltsAboveLowest(direct);
	const volts = Math.max(0, ...liveSources(direct.network).flatMap(({ hot }) => hot.map(above)));
	for (const conductor of circuit.conductors) {
		if (conductor.role !== "negative" || conductor.sort === "pigtail" || isBesidePositive(circuit, conductor)) continue;
		const limit = directLimit(circuit, conductor, volts);
		if (limit !== undefined && limit.largest < most) limits.set(conductor.index, limit);
	}
	return limits;
}

function isBesidePositive(circuit: Circuit, { cable }: Conductor): boolean {
	const beside = circuit.cableByTag.get(cable ?? "")?.conductors ?? [];
	return beside.some((index) => circuit.conductors[index]?.role === "positive");
}

function tell(
	circuit: Circuit,
	conductor: Conductor,
	limit: ConductorLimit,
	{ amperes, devices, loads, way }: ComingBack,
	code: string,
): Finding {
	const tag = conductor.cable ?? conductor.name;
	const parts = [...new Set(loads.map(({ part }) => part))];
	const [device, ...others] = devices;
	const most = formatNumber(amperes, 1);
	const through =
		device !== undefined && others.length === 0
			? `the ${most} A ${device.sort} ${device.part}`
			: `${listNames(devices.map(({ part }) => part))}, ${most} A together`;
	return finding({
		code,
		level: "danger",
		title: `The negative ${conductor.name} is too thin for what ${listNames(parts, 3)} may draw through ${through}: ${formatNumber(limit.largest, 1)} A at most`,
		span: circuit.cableByTag.get(tag)?.span ?? conductor.span,
		label: `${formatNumber(limit.largest, 1)} A at most`,
		also: devices.slice(0, 8).map(({ span, rating }) => ({ span, label: `${formatNumber(rating ?? 0, 1)} A` })),
		marks: [tag, ...parts],
		path: tellWay(circuit, way, loads[0]?.between[1] ?? 0),
		figures: [{ name: "protection", found: amperes, limit: limit.largest, unit: "A", source: limit.source }],
		why: `${startSentence(limit.because)}; what goes out through the positive comes back through it.`,
		help: `Use a negative as thick as the positive.${limit.recalled ? " This limit is recalled, not read: look it up before you rely on it." : ""}`,
		basis: limit.source,
		key: `${code}@${tag}/return`,
	});
}
