// A panel of two legs fed from sources that have one: half of its slots are dead. Or from one leg of a source that has two.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { findMergedPanels, type MergedPanel } from "../analysis/merged-legs.ts";
import { findShortPanels, type ShortPanel } from "../analysis/missing-legs.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import { live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const legMissing: Rule = {
	code: "leg-missing",
	level: "error",
	what: "A panel has two hot legs, and what feeds it gives only one in every mode, or both hang on one leg of a supply that gives two.",
	why: "Every slot on the other leg is dead, and nothing between the two legs works; on one leg the currents of both add up in the neutral.",
	help: "Use a panel of one leg, or a supply that gives two; put the two poles of its breaker on two legs.",
	basis: "common practice",
	meter: [
		live("loading voltage tester", "from the second leg of the bus to the neutral bar, in each source mode", "nothing"),
		live("loading voltage tester", "between the two legs of the bus", "0 V in place of about 240 V"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A, legs 2 from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
circuit galley from LC breaker 20 A by 12-2
  9 ft to g1: receptacle
circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
`,
		`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
  slot 1: breaker 40 A
  slot 5: breaker 40 A tied LC.1
feed annex from LC.1, LC.5 by 8-3
  20 ft to SP
panel SP lugs only, legs 2
circuit bunks from SP breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
circuit galley from LC breaker 20 A by 12-2
  9 ft to g1: receptacle
circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
`,
		`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
	],
	check: (analysis) => [
		...findShortPanels(analysis).map((short) => tell(analysis, short)),
		...findOverModes(analysis, (state) => findMergedPanels(state).map((merged) => tellMerged(state, merged))),
	],
};

function tellMerged({ network: { circuit } }: ModeState, { part, source, legs, reach, at }: MergedPanel): Finding {
	const [one, other] = legs.map((leg) => circuit.points[leg]?.name ?? part.name);
	const device = at === undefined ? undefined : circuit.partByName.get(at);
	return finding({
		code: legMissing.code,
		level: "error",
		title: `Both legs of ${part.name} hang on one leg of ${source.name}${device === undefined ? "" : `, by way of ${device.name}`}`,
		span: device?.span ?? part.span,
		label: "on one leg",
		also: [{ span: part.span, label: "two legs" }],
		marks: [...(device === undefined ? [] : [device.name]), part.name, one ?? "", other ?? ""],
		path: reach.pathTo(legs[1]),
		why: `Nothing between the two legs of ${part.name} works, and what its circuits send back adds up in the one neutral of its feed instead of cancelling.`,
		help: `Feed the two legs of ${part.name} from two legs of ${source.name}: from a two-pole breaker of which each pole stands on another leg. If one is all it is to have, say \`bridged legs\` for ${part.name}.`,
		basis: legMissing.basis,
		key: keyOfShortPanel(part.name),
	});
}

function tell({ circuit, states }: Analysis, { part, sources, live, dead }: ShortPanel): Finding {
	const names = sources.map(({ name }) => name);
	return finding({
		code: legMissing.code,
		level: "error",
		title: `${part.name} has two legs, and ${listNames(names)} ${names.length === 1 ? "gives" : "give"} one: half of its slots are dead`,
		span: part.span,
		label: "two legs",
		also: sources.map(({ span }) => ({ span, label: "one leg" })),
		marks: [part.name, circuit.points[dead]?.name ?? part.name, ...names],
		path:
			states
				.find(({ poles }) => poles.sortsAt(live).has("hot"))
				?.poles.reachOf(live, "hot")
				?.pathTo(live) ?? [],
		why: legMissing.why,
		help: `Say \`legs 1\` for ${part.name} if it has one bus, or the maker's link between the two; else feed it from a supply with two legs, such as \`50 A 120 V / 240 V\`.`,
		basis: legMissing.basis,
		key: keyOfShortPanel(part.name),
	});
}

/** The key of the finding on a panel: what is dead on its second leg follows from it. */
export function keyOfShortPanel(panel: string): string {
	return `${legMissing.code}@${panel}`;
}
