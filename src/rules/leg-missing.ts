// A panel of two legs fed from sources that have one: half of its slots are dead.
import type { Analysis } from "../analysis/analysis.ts";
import { findShortPanels, type ShortPanel } from "../analysis/missing-legs.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import { live } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const legMissing: Rule = {
	code: "leg-missing",
	level: "error",
	what: "A panel has two hot legs, and what feeds it gives only one in every mode.",
	why: "Every slot on the other leg is dead, and nothing between the two legs works.",
	help: "Use a panel of one leg, or a supply that gives two.",
	basis: "common practice",
	meter: [
		live("loading voltage tester", "from the second leg of the bus to the neutral bar, in each source mode", "nothing"),
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
	check: (analysis) => findShortPanels(analysis).map((short) => tell(analysis, short)),
};

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
