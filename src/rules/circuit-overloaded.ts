// Fixed loads that together draw more than the device ahead of them carries for long.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Demand } from "../analysis/demand.ts";
import { type Finding, finding, type LabelledSpan } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames, startSentence } from "../base/wording.ts";
import { continuousLoad } from "../handbook/branch-circuits.ts";
import { citation } from "../handbook/provenance.ts";
import type { Region } from "../kinds/kind.ts";
import { findDirectOverloads } from "./direct-overload.ts";
import { hotPathTo } from "./hot-path.ts";
import { live } from "./meter-test.ts";
import { modesOf } from "./mode-names.ts";
import { tellOverloadCure, worstLoad } from "./overload-cure.ts";
import type { Rule } from "./rule.ts";

const direct = "common practice: a fuse carries what hangs on it, for hours four fifths of its rating";
const bases: Readonly<Record<Region, string>> = {
	us: citation(continuousLoad.provenance),
	iec: "IEC 60364-4-43 in IEC countries: the sum alone, recalled",
};

export const circuitOverloaded: Rule = {
	code: "circuit-overloaded",
	level: "error",
	what: "The fixed loads of a circuit draw more than its breaker carries for long; those that run for hours count 125 %.",
	why: "The breaker opens just when everything runs, or it and its wires run hot for hours.",
	help: "Move a load to another circuit, or take a smaller one.",
	basis: `${bases.us}; ${bases.iec}; for direct current ${direct}`,
	meter: [
		live(
			"clamp meter",
			"around the hot of the circuit at its breaker, with everything on",
			"more than the breaker's rating, or for hours more than 80 % of it",
		),
	],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs: "Loads of three hours and more count 125 % in the United States; in IEC countries the sum alone counts.",
	},
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit heat from LC breaker 15 A by 14-2
  8 ft to h1: heater 1500 W continuous
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit work from LC breaker 15 A by 14-2
  8 ft to p1: pump 1000 W
  4 ft to p2: pump 1000 W
`,
		`battery house lithium 12.8 V 100 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 10 A
  6 ft to p1: pump 100 W
  3 ft to p2: pump 60 W
`,
		`battery house lithium 12.8 V 100 Ah
battery engine flooded 12 V 80 Ah
dc-dc step 30 A 12 V / 12 V
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 50 A
  6 ft to step.in
feed over from house.+, house.- by pair 10 AWG
  within 7 in to F2: fuse 25 A
  6 ft to step.out
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit heat from LC breaker 15 A by 14-2
  8 ft to h1: heater 1440 W continuous
`,
		`battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 10 A
  slot 2: fuse 10 A
  slot 3: fuse 10 A
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 20 A
  2 ft to FB
circuit a from FB.1 by pair 16 AWG
  6 ft to p1: pump 100 W
circuit b from FB.2 by pair 16 AWG
  6 ft to p2: pump 60 W
circuit c from FB.3 by pair 16 AWG
  6 ft to l1: light 60 W
`,
	],
	check: (analysis) => {
		const overloads = new Map<string, Overload>();
		for (const state of analysis.states)
			for (const demand of state.demand.values()) keepWorst(analysis, overloads, demand, state);
		const all = [...overloads.values()];
		return [
			...all
				.filter((overload) => !all.some((other) => tellsTheSame(analysis, other, overload)))
				.flatMap((overload) => tell(analysis, overload)),
			...findDirectOverloads(analysis, { code: circuitOverloaded.code, basis: direct }),
		];
	},
};

/** A device's demand on the pole and in the mode in which it is greatest, and the modes in which it is too great or not known. */
interface Overload {
	demand: Demand;
	state: ModeState;
	readonly modes: Set<string>;
}

function keepWorst(analysis: Analysis, overloads: Map<string, Overload>, demand: Demand, state: ModeState): void {
	const isOver = demand.device.rating !== undefined && amperesOf(analysis, demand) > demand.device.rating + rounding;
	if (!isOver && (demand.unknown.length === 0 || demand.feedsDevices)) return;
	const known = overloads.get(demand.device.part);
	if (known === undefined) overloads.set(demand.device.part, { demand, state, modes: new Set([state.mode.name]) });
	else {
		if (amperesOf(analysis, demand) > amperesOf(analysis, known.demand)) {
			known.demand = demand;
			known.state = state;
		}
		known.modes.add(state.mode.name);
	}
}

/** Whether a device further on, no larger, has all the load of a board's: then that one is told and not the board's. */
function tellsTheSame(analysis: Analysis, further: Overload, board: Overload): boolean {
	const [one, other] = [further.demand, board.demand];
	if (one === other || !other.feedsDevices || one.loads.length !== other.loads.length) return false;
	if (Math.abs(amperesOf(analysis, one) - amperesOf(analysis, other)) > rounding) return false;
	const [ahead, behind] = [other.device.rating ?? 0, one.device.rating ?? 0];
	return behind < ahead || (behind === ahead && (other.device.sort === "supply" || !one.feedsDevices));
}

/** 16 A at 125 % are 20 A and right on a 20 A circuit: a sum of quotients may miss that by a hair. */
const rounding = 1e-6;

/** What the demand counts for: continuous loads at 125 % where that is the rule, else as they are. */
function amperesOf(analysis: Analysis, demand: Demand): number {
	return demand.continuous * factorOf(analysis) + demand.other;
}

function factorOf(analysis: Analysis): number {
	return analysis.circuit.plan.settings.region === "us" ? continuousLoad.factor : 1;
}

function tell(analysis: Analysis, overload: Overload): Finding[] {
	const { demand } = overload;
	const rating = demand.device.rating;
	const findings: Finding[] = [];
	if (rating !== undefined && amperesOf(analysis, demand) > rating + rounding)
		findings.push(demand.feedsDevices ? tellBoard(analysis, overload) : tellCircuit(analysis, overload));
	if (demand.unknown.length > 0 && !demand.feedsDevices) findings.push(tellUnknown(analysis, overload));
	return findings;
}

const opens = "The breaker opens just when everything runs, and until then it and its wires run hot.";
const runsHot =
	"With everything on for hours the breaker carries more than 80 % of its rating: it and its wires run hot, and in a warm place it opens.";

/** Whether more flows than the rating, not only more than is allowed for hours. */
function opensAtOnce({ device, continuous, other }: Demand): boolean {
	return continuous + other > (device.rating ?? 0) + rounding;
}

function tellCircuit(analysis: Analysis, overload: Overload): Finding {
	const { demand, state } = overload;
	const { device } = demand;
	const amperes = formatNumber(amperesOf(analysis, demand), 1);
	return finding({
		...sharedSlots(analysis, overload),
		level: "error",
		title: `The loads on ${device.part} count ${amperes} A, and it is rated ${formatNumber(device.rating ?? 0, 1)} A`,
		why: `${sum(analysis, demand)} ${opensAtOnce(demand) ? opens : runsHot}`,
		help: tellOverloadCure(analysis, demand, state, amperesOf(analysis, demand)),
	});
}

/** A main or a source with several circuits: not everything runs at once, so it is told and not blamed. */
function tellBoard(analysis: Analysis, overload: Overload): Finding {
	const { demand } = overload;
	const { device } = demand;
	const amperes = formatNumber(amperesOf(analysis, demand), 1);
	return finding({
		...sharedSlots(analysis, overload),
		level: "note",
		title: `All fixed loads together count ${amperes} A, and ${device.part} gives ${formatNumber(device.rating ?? 0, 1)} A`,
		why: `${sum(analysis, demand)} ${
			opensAtOnce(demand)
				? "With all of them on at once it opens or shuts down"
				: "With all of them on for hours it carries more than 80 % of its rating"
		}; outlets come besides.`,
		help: "Decide what is never to run together, and write it down where you see it.",
	});
}

function tellUnknown(analysis: Analysis, overload: Overload): Finding {
	const { demand } = overload;
	const names = [...new Set(demand.unknown.map((load) => load.part))];
	return finding({
		...sharedSlots(analysis, overload),
		level: "note",
		unchecked: true,
		title: `Load of ${demand.device.part} not checked: the power of ${listNames(names)} is missing`,
		also: placesOfLoads(analysis, names),
		marks: [demand.device.part, ...names],
		figures: [],
		key: `${circuitOverloaded.code}@${demand.device.part}/unknown`,
		why: "Whether the breaker carries everything at once cannot be told.",
		help: "Write what the plate says, in watts or amperes.",
	});
}

function sharedSlots(analysis: Analysis, { demand, state, modes }: Overload) {
	const { device, loads } = demand;
	const names = [...new Set(loads.map((load) => load.part))];
	return {
		code: circuitOverloaded.code,
		span: device.span,
		also: placesOfLoads(analysis, names),
		marks: [device.part, ...names],
		path: hotPathTo(state, analysis.circuit.partByName.get(worstLoad(demand))),
		figures: [
			{
				name: "load",
				found: Number(amperesOf(analysis, demand).toFixed(3)),
				limit: Number((device.rating ?? 0).toFixed(3)),
				unit: "A",
				source: bases[analysis.circuit.plan.settings.region],
			},
		],
		modes: modesOf(analysis, modes),
		basis: bases[analysis.circuit.plan.settings.region],
	};
}

/** The sum as it is counted: `12.5 A for hours count 15.6 A, and 2 A more.` */
function sum(analysis: Analysis, { continuous, other }: Demand): string {
	const factor = factorOf(analysis);
	const figure = (amperes: number): string => `${formatNumber(amperes, 1)} A`;
	if (continuous === 0) return `${figure(other)} flow with everything on.`;
	const counted = factor === 1 ? "" : ` count ${figure(continuous * factor)}`;
	const hours = `${figure(continuous)} that run for hours${counted}`;
	return startSentence(other === 0 ? `${hours}.` : `${hours}, and ${figure(other)} come on top.`);
}

function placesOfLoads(analysis: Analysis, names: readonly string[]): LabelledSpan[] {
	return names.slice(0, 8).flatMap((name) => {
		const part = analysis.circuit.partByName.get(name);
		return part === undefined ? [] : [{ span: part.span, label: part.face.text }];
	});
}
