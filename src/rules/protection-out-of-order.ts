// Protective devices that stand behind a smaller one: the smaller opens first and takes with it what the larger was to keep on.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Protection, Source } from "../circuit/circuit.ts";
import { protectionFaultOf } from "./exposed-wording.ts";
import { wiresForLarger } from "./larger-device.ts";
import { keyOfBypassed } from "./main-bypassed.ts";
import { keyOfLargeMain } from "./main-too-large.ts";
import { byEye } from "./meter-test.ts";
import { modesOf } from "./mode-names.ts";
import type { Rule } from "./rule.ts";

export const protectionOutOfOrder: Rule = {
	code: "protection-out-of-order",
	level: "warning",
	what: "A protective device stands behind one with a smaller rating.",
	why: "The smaller one opens first and darkens everything behind it; the larger never gets to do its work.",
	help: "Let ratings fall from the supply to the outlet.",
	basis: "common practice",
	meter: [byEye("read the ratings from the supply to the outlet")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 15 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		`inverter inv 1500 W 12 V / 120 V, bonds neutral when inverting
panel LC main 20 A from inv by 12-2, 6 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`,
	],
	check: (analysis) => {
		const pairs = new Map<string, Inversion>();
		for (const state of analysis.states) for (const found of inversionsIn(state)) keep(pairs, found, state);
		return [...pairs.values()].map((inversion) => tellInversion(analysis, inversion));
	},
};

/** A device with larger ones directly behind it. */
interface Inversion {
	readonly smaller: Protection;
	/** Set where the smaller one is that of an outside supply. */
	readonly supply?: Source;
	readonly larger: Set<Protection>;
	readonly modes: Set<string>;
	/** The first mode in which it stands so. */
	readonly state: ModeState;
}

/** Every device with the one directly ahead of it, where that is smaller. An inverter's own limit is no device to keep in order. */
function inversionsIn({
	exposure,
	network,
}: ModeState): { smaller: Protection; larger: Protection; supply?: Source }[] {
	const found: { smaller: Protection; larger: Protection; supply?: Source }[] = [];
	for (const { by, nearest } of exposure.values()) {
		if (by?.by.kind !== "link" || by.by.link.protection === undefined || nearest === undefined) continue;
		const smaller = exposure.get(by.from)?.nearest?.device;
		const larger = nearest.device;
		if (smaller?.rating === undefined || larger.rating === undefined || smaller.rating >= larger.rating) continue;
		const supply = network.circuit.sources.find((source) => source.name === smaller.source);
		if (supply === undefined) found.push({ smaller, larger });
		else if (supply.sort === "shore" || supply.sort === "utility" || supply.sort === "generator")
			found.push({ smaller, larger, supply });
	}
	return found;
}

function keep(
	pairs: Map<string, Inversion>,
	found: { smaller: Protection; larger: Protection; supply?: Source },
	state: ModeState,
): void {
	const known = pairs.get(found.smaller.part);
	const inversion: Inversion = known ?? {
		smaller: found.smaller,
		...(found.supply === undefined ? {} : { supply: found.supply }),
		larger: new Set(),
		modes: new Set(),
		state,
	};
	inversion.larger.add(found.larger);
	inversion.modes.add(state.mode.name);
	pairs.set(found.smaller.part, inversion);
}

function tellInversion(analysis: Analysis, { smaller, supply, larger, modes, state }: Inversion): Finding {
	const largest = [...larger].toSorted((one, other) => (other.rating ?? 0) - (one.rating ?? 0));
	const [worst] = largest;
	const found = Number((worst?.rating ?? 0).toFixed(3));
	const limit = Number((smaller.rating ?? 0).toFixed(3));
	const names = listNames(largest.map(({ part, rating }) => `${part} (${formatNumber(rating ?? 0, 1)} A)`));
	const ahead = supply === undefined ? smaller.part : `the supply behind ${smaller.part}`;
	const ratings = `${formatNumber(limit, 1)} A`;
	const causes = largest.map(
		(device) =>
			keyOfBypassed(state, device.part) ?? protectionFaultOf(analysis, device) ?? keyOfLargeMain(state, device.part),
	);
	const cause = causes.every((key) => key !== undefined) ? causes[0] : undefined;
	return finding({
		code: protectionOutOfOrder.code,
		level: supply === undefined ? "warning" : "note",
		title: `${ahead.charAt(0).toUpperCase()}${ahead.slice(1)} opens at ${ratings}, before ${names} behind it`,
		span: (supply === undefined ? smaller : (worst ?? smaller)).span,
		label: `${supply === undefined ? ratings : `more than ${ratings}`}`,
		also: (supply === undefined ? largest : [smaller]).slice(0, 8).map((device) => ({
			span: device.span,
			label: `${formatNumber(device.rating ?? 0, 1)} A`,
		})),
		marks: [supply === undefined ? smaller.part : (worst ?? smaller).part, ...largest.map((device) => device.part)],
		figures: [{ name: "rating", found, limit, unit: "A", source: protectionOutOfOrder.basis }],
		why:
			supply === undefined
				? protectionOutOfOrder.why
				: "The supply's breaker opens first, and it may stand far away in the rain; nothing inside tells you why it is dark.",
		help:
			supply === undefined
				? tellCure(analysis, state, smaller, largest)
				: `Nothing need be changed: just know that ${ahead} opens first, or use ${ratings} here too.`,
		modes: modesOf(analysis, modes),
		basis: protectionOutOfOrder.basis,
		...(cause === undefined ? {} : { consequenceOf: cause }),
	});
}

/** A larger device is told only where what is ahead of it lets as much through, and with the wires that may have it. */
function tellCure(
	analysis: Analysis,
	state: ModeState,
	smaller: Protection,
	[worst, ...others]: readonly Protection[],
): string {
	const rating = worst?.rating ?? 0;
	const wires = wiresForLarger(analysis, smaller, state, rating);
	const behind = listNames([worst, ...others].map((device) => device?.part ?? ""));
	const least = `${formatNumber(smaller.rating ?? 0, 1)} A or less for ${behind}`;
	if (wires === undefined) return `Use ${least}.`;
	const larger = `Use ${formatNumber(rating, 1)} A for ${smaller.part}`;
	return wires.bear
		? `${larger}, which its wires bear, or ${least}.`
		: `${larger} with ${wires.size} behind it, or ${least}.`;
}
