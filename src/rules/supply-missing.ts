// Things that no live source reaches in any mode: nothing about them can be checked.
import type { Analysis } from "../analysis/analysis.ts";
import { JoinedSets } from "../analysis/joined-sets.ts";
import type { PoleMap } from "../analysis/poles.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Part } from "../circuit/circuit.ts";
import { live } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const supplyMissing: Rule = {
	code: "supply-missing",
	level: "warning",
	what: "Nothing feeds a part of the plan in any mode, so that its wiring cannot be checked.",
	why: "Everything about it looks right because nothing was looked at.",
	help: "Say what feeds it, or mark its run as `roughed in`.",
	basis: "common practice",
	meter: [live("loading voltage tester", "between every two terminals, whatever is switched on", "nothing")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A
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
	],
	check: (analysis) => {
		const { circuit, states } = analysis;
		// Without a source, or with lines that were not understood, this has been told already.
		if (circuit.sources.length === 0 || circuit.plan.incomplete) return [];
		const roughedIn = new Set(circuit.plan.runs.filter((run) => run.roughedIn).map((run) => run.name));
		const isFed = (point: number): boolean =>
			states.some(({ poles, direct }) => isLive(poles, point) || (direct !== undefined && isLive(direct.poles, point)));
		const canBeDead = (part: Part): boolean =>
			part.points.length > 0 && !part.face.traits.includes("source") && !roughedIn.has(part.run ?? "");
		if (!circuit.parts.some((part) => canBeDead(part) && !part.points.some(isFed))) return [];
		const islands = joinAll(analysis);
		// What a cable joins to something that is fed is dead for a reason that other rules tell.
		const fed = new Set(circuit.points.filter(({ index }) => isFed(index)).map(({ index }) => islands.find(index)));
		const dead = circuit.parts.filter((part) => canBeDead(part) && !fed.has(islands.find(part.points[0] ?? 0)));
		return [...groupBy(dead, (part) => islands.find(part.points[0] ?? 0)).values()].flatMap(tell);
	},
};

function isLive(poles: PoleMap, point: number): boolean {
	const sorts = poles.sortsAt(point);
	return sorts.has("hot") || sorts.has("neutral");
}

/** Points of one part or one box, and all that anything joins, count as one thing here. */
function joinAll({ circuit }: Analysis): JoinedSets {
	const sets = new JoinedSets(circuit.points.length);
	const firstIn = new Map<string, number>();
	for (const { index, enclosure } of circuit.points) {
		const first = firstIn.get(enclosure.name);
		if (first === undefined) firstIn.set(enclosure.name, index);
		else sets.join(first, index);
	}
	for (const { cable, ends } of circuit.conductors) {
		if (cable === undefined) continue;
		const [from, to] = ends.map((end) => firstIn.get(end.enclosure.name));
		if (from !== undefined && to !== undefined) sets.join(from, to);
	}
	return sets;
}

function tell(parts: readonly Part[]): Finding[] {
	const [first] = parts;
	if (first === undefined) return [];
	const owners = [...new Set(parts.map((part) => part.owner ?? part.name))];
	return [
		finding({
			code: supplyMissing.code,
			level: "warning",
			unchecked: true,
			title: `Nothing feeds ${listNames(owners)} in any mode, so nothing about ${owners.length === 1 ? "it" : "them"} is checked`,
			span: first.span,
			label: "fed by nothing",
			marks: owners,
			why: supplyMissing.why,
			help: `Say what feeds ${owners[0] ?? first.name}, for example \`from shore by 10-2, 12 ft\`, or look for the wire that is missing on the way.`,
			basis: supplyMissing.basis,
			key: `${supplyMissing.code}@${first.name}`,
		}),
	];
}
