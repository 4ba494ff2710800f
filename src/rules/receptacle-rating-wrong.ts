// Receptacles whose rating does not go with the breaker of their circuit.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Demand } from "../analysis/demand.ts";
import { type Finding, finding, type Level } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Part } from "../circuit/circuit.ts";
import { multiOutletRatings } from "../handbook/branch-circuits.ts";
import { citation, type Provenance } from "../handbook/provenance.ts";
import { receptacleRatingsFor, singleReceptacle, socketOutletOf } from "../handbook/receptacles.ts";
import { foldName } from "../plan/names.ts";
import { protectionFaultAt } from "./exposed-wording.ts";
import { hotPathTo } from "./hot-path.ts";
import { keyOfBypassed } from "./main-bypassed.ts";
import { byEye } from "./meter-test.ts";
import { modesOf } from "./mode-names.ts";
import type { Rule } from "./rule.ts";

export const receptacleRatingWrong: Rule = {
	code: "receptacle-rating-wrong",
	level: "error",
	what: "A receptacle's rating does not go with the breaker of its circuit.",
	why: "A plug can draw more than the receptacle's contacts carry, and they burn while the breaker holds.",
	help: "Use a receptacle of a rating that goes with the breaker, or a smaller breaker.",
	basis:
		"NFPA 70 210.21(B)(1); NFPA 70 Table 210.21(B)(3); in IEC countries the rating marked on the socket-outlet, common practice",
	meter: [byEye("read the rating on the receptacle's yoke and on the breaker's handle")],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs:
			"In the United States the table of receptacle ratings decides; in IEC countries a breaker may not be larger than the socket-outlet is marked.",
	},
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit hob from LC breaker 20 A by 12-2
  8 ft to h1: receptacle 15 A single
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit work from LC breaker 30 A by 10-2
  8 ft to w1: receptacle 20 A duplex
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle 15 A duplex
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit hob from LC breaker 20 A by 12-2
  8 ft to h1: receptacle 20 A single
`,
	],
	check: (analysis) => {
		const misfits = new Map<string, Misfit>();
		for (const state of analysis.states)
			for (const demand of state.demand.values())
				for (const misfit of misfitsOf(analysis, demand)) {
					const key = `${demand.device.part} ${misfit.parts[0]?.face.rating} ${misfit.level}`;
					const known = misfits.get(key);
					if (known === undefined) misfits.set(key, { ...misfit, state, modes: new Set([state.mode.name]) });
					else known.modes.add(state.mode.name);
				}
		return [...misfits.values()].map((misfit) => tell(analysis, misfit));
	},
};

/** Receptacles of one rating that do not go with the device ahead of them. */
interface Misfit {
	readonly demand: Demand;
	readonly parts: readonly Part[];
	readonly level: Level;
	/** What would fit, as the end of a sentence, and the figure it is held against. */
	readonly fitting: string;
	readonly limit: number;
	readonly provenance: Provenance;
	readonly state: ModeState;
	readonly modes: Set<string>;
}

function misfitsOf(analysis: Analysis, demand: Demand): Omit<Misfit, "state" | "modes">[] {
	const { device } = demand;
	const { circuit } = analysis;
	const source = circuit.sources.find((candidate) => candidate.name === device.source);
	// What an inverter gives is no rating of a circuit.
	if (device.rating === undefined || source?.sort === "inverter" || source?.sort === "inverter-charger") return [];
	const receptacles = new Map<string, Part>();
	let outlets = 0;
	for (const load of demand.own) {
		const part = circuit.partByName.get(load.part);
		if (!load.outlet || part === undefined) continue;
		if (!receptacles.has(part.name)) outlets += part.face.outlets ?? 1;
		receptacles.set(part.name, part);
	}
	const byRating = new Map<number, Part[]>();
	for (const part of receptacles.values())
		if (part.face.rating !== undefined)
			byRating.set(part.face.rating, [...(byRating.get(part.face.rating) ?? []), part]);
	return [...byRating].flatMap(([rating, parts]) => {
		const judged =
			circuit.plan.settings.region === "iec"
				? judgeSocket(rating, device.rating ?? 0)
				: judgeReceptacle(rating, device.rating ?? 0, outlets === 1);
		if (judged === undefined) return [];
		// A rating that was not said is the usual one and may be smaller on the wall.
		const blamed = rating > (device.rating ?? 0) ? parts.filter((part) => isRatingSaid(analysis, part)) : parts;
		return blamed.length === 0 ? [] : [{ ...judged, demand, parts: blamed }];
	});
}

type Judged = Pick<Misfit, "level" | "fitting" | "limit" | "provenance">;

/** NFPA 70 210.21(B): one outlet alone is not rated below its circuit; several follow the table. */
function judgeReceptacle(rating: number, circuit: number, alone: boolean): Judged | undefined {
	const { provenance } = singleReceptacle;
	if (alone)
		return rating >= circuit
			? undefined
			: { level: "error", fitting: `one alone needs at least ${circuit} A`, limit: circuit, provenance };
	const row = receptacleRatingsFor(circuit);
	if (row?.receptacles.includes(rating)) return undefined;
	if (row !== undefined) {
		const tooSmall = rating < circuit;
		return {
			// Where editions differ on larger ones, that is for information only.
			level: tooSmall ? "error" : row.provenance.note === undefined ? "warning" : "note",
			fitting: `${row.receptacles.map((fit) => `${fit} A`).join(" or ")} would fit`,
			limit: tooSmall ? Math.min(...row.receptacles) : Math.max(...row.receptacles),
			provenance: row.provenance,
		};
	}
	// Below 15 A any receptacle carries what the breaker lets through.
	if (rating >= circuit) return undefined;
	return {
		level: "error",
		fitting: `several outlets need a circuit of ${listNames(multiOutletRatings.amperes.map(String), 9).replace(" and ", " or ")} A`,
		limit: circuit,
		provenance: multiOutletRatings.provenance,
	};
}

function judgeSocket(rating: number, circuit: number): Judged | undefined {
	const row = socketOutletOf(rating);
	if (circuit <= row.largestDevice) return undefined;
	return {
		level: "warning",
		fitting: `at most ${row.largestDevice} A may stand before it`,
		limit: row.largestDevice,
		provenance: row.provenance,
	};
}

function isRatingSaid(analysis: Analysis, part: Part): boolean {
	return analysis.circuit.plan.thingByName.get(foldName(part.name))?.said.quantity("rating") !== undefined;
}

function tell(analysis: Analysis, { demand, parts, level, fitting, limit, provenance, state, modes }: Misfit): Finding {
	const { device } = demand;
	const [first] = parts;
	const rating = first?.face.rating ?? 0;
	const names = parts.map((part) => part.name);
	const said = first !== undefined && isRatingSaid(analysis, first);
	const cause =
		keyOfBypassed(state, device.part) ?? (first === undefined ? undefined : protectionFaultAt(analysis, first));
	const recalled = provenance.known === "recalled" ? " This rule is recalled, not read: look it up." : "";
	return finding({
		code: receptacleRatingWrong.code,
		level,
		title: `${listNames(names)} ${names.length === 1 ? "is" : "are"} rated ${rating} A behind the ${formatNumber(device.rating ?? 0, 1)} A of ${device.part}: ${fitting}`,
		span: first?.span ?? device.span,
		label: said ? `${rating} A` : `taken for ${rating} A`,
		also: [
			{ span: device.span, label: `${formatNumber(device.rating ?? 0, 1)} A` },
			...parts.slice(1, 8).map((part) => ({ span: part.span, label: `${rating} A` })),
		],
		marks: [...names, device.part],
		path: hotPathTo(state, first),
		figures: [{ name: "receptacle", found: rating, limit, unit: "A", source: citation(provenance) }],
		why: `${tellWhy(level, rating > (device.rating ?? 0))}${recalled}`,
		help: said
			? receptacleRatingWrong.help
			: `Say the rating if it is another; else ${lowerFirst(receptacleRatingWrong.help)}`,
		modes: modesOf(analysis, modes),
		basis: citation(provenance),
		...(cause === undefined ? {} : { consequenceOf: cause }),
	});
}

function tellWhy(level: Level, isLarger: boolean): string {
	if (level === "note") return "Editions of the code differ on it, and a larger plug fits than the circuit can feed.";
	return isLarger
		? "A larger plug fits than the circuit can feed: the breaker opens whenever it is used in full."
		: receptacleRatingWrong.why;
}

function lowerFirst(text: string): string {
	return text.charAt(0).toLowerCase() + text.slice(1);
}
