// A load that is not fed by the breaker its circuit is said to come from.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { traceJoinedCircuits } from "../analysis/joined-circuits.ts";
import { findMislabelled, type Mislabelled, nameMixUp } from "../analysis/mislabelled.ts";
import type { Edge } from "../analysis/network.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import type { Span } from "../base/span.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit } from "../circuit/circuit.ts";
import { protectionFaultAt } from "./exposed-wording.ts";
import { dead, live } from "./meter-test.ts";
import { tellLanded } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const circuitMislabelled: Rule = {
	code: "circuit-mislabelled",
	level: "error",
	what: "What belongs to one circuit is fed by the breaker of another, or past its own.",
	why: "Whoever switches off the breaker on the label and opens the box finds it live.",
	help: "Exchange the hots at the breakers, or correct what the plan says the circuit comes from.",
	basis: "NFPA 70 408.4 (circuit directory), recalled; common practice",
	meter: [
		dead(
			"from the hot of the outlet to the load terminal of the breaker that is named for it, every breaker off and every load unplugged",
			"no continuity, but to the load terminal of another breaker",
		),
		live(
			"loading voltage tester",
			"from hot to neutral at the outlet, the breaker that is named for it off",
			"the full voltage",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit galley from LC breaker 20 A by 12-2
   5 ft to g1: gfci
at LC
  bunks-1.black on LC.2.load
  galley-1.black on LC.1.load
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit galley from LC breaker 20 A by 12-2
   5 ft to g1: gfci
at LC
  bunks-1.white on LC.neutral.3
  galley-1.white on LC.neutral.2
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const { circuit, landings } = analysis;
	const found = findMislabelled(circuit, landings, state).filter((one) => !one.isPast || !isUnprotected(analysis, one));
	// Where the two are joined, who feeds what is no longer a question of labels.
	const { network, poles } = state.crossings;
	const joined = found.length === 0 ? [] : traceJoinedCircuits(network, poles);
	const pairs = new Set(joined.map(({ devices: [one, other] }) => nameMixUp({ said: one.part, found: other.part })));
	return [...groupBy(found, nameMixUp)].flatMap(([pair, [first, ...others]]) =>
		first === undefined ? [] : [tell(analysis, state, first, others, pairs.has(pair))],
	);
}

/** A load whose wires lack protection because they go past their breaker is told of by that. */
function isUnprotected(analysis: Analysis, { part }: Mislabelled): boolean {
	const found = analysis.circuit.partByName.get(part);
	return found !== undefined && protectionFaultAt(analysis, found) !== undefined;
}

function tell(
	{ circuit }: Analysis,
	state: ModeState,
	first: Mislabelled,
	others: readonly Mislabelled[],
	isJoined: boolean,
): Finding {
	const namesOf = (said: string): readonly string[] => [
		...new Set([first, ...others].filter((one) => one.said === said).map(({ part }) => part)),
	];
	const [mine, theirs] = [namesOf(first.said), namesOf(first.found)];
	const names = listNames(mine);
	const many = mine.length > 1;
	const reach = state.crossings.poles.reachOf(first.point, "hot");
	const part = certain(circuit.partByName.get(first.part), first.part);
	const landing = findLanding(circuit, reach?.edgesTo(first.point) ?? [], part.run);
	const exchanged = theirs.length === 0 ? "" : `, and ${listNames(theirs)} the other way round`;
	const fed = first.isPast
		? `${many ? "their hots go" : "its hot goes"} past it, from ${first.found}`
		: `${many ? "are" : "is"} fed by ${first.found}`;
	return finding({
		code: circuitMislabelled.code,
		level: "error",
		title: `${names} ${many ? "belong" : "belongs"} to ${first.said}, but ${fed}${exchanged}${landing === undefined ? "" : `: ${landing.name} is ${landing.where}`}`,
		span: landing?.span ?? part.span,
		label: `belongs to ${first.said}`,
		also: [{ span: part.span, label: first.part }],
		marks: [
			...(landing === undefined ? [] : [landing.point, landing.name]),
			...mine,
			...theirs,
			first.said,
			first.found,
		],
		path: reach?.pathTo(first.point) ?? [],
		why: `Whoever switches off ${first.said} to work on ${names} finds ${many ? "them" : "it"} live.`,
		help: `Put ${landing?.name ?? `the hot of ${names}`} on ${first.said}, ${first.isPast ? "so that it can be switched off there" : `or say that the circuit comes from ${first.found}`}.`,
		basis: circuitMislabelled.basis,
		key: `${circuitMislabelled.code}@${nameMixUp(first)}`,
		...(isJoined ? { consequenceOf: `circuits-joined@${nameMixUp(first)}` } : {}),
	});
}

/** The first conductor of the load's own run on the way to it, and where it meets what is not its own. */
function findLanding(
	circuit: Circuit,
	way: readonly Edge[],
	run: string | undefined,
): { name: string; where: string; point: string; span: Span } | undefined {
	for (const { by, from } of way) {
		if (by.kind !== "conductor") continue;
		const conductor = certain(circuit.conductors[by.index], "a conductor");
		const cable = conductor.cable === undefined ? undefined : circuit.cableByTag.get(conductor.cable);
		const end = conductor.ends.find(({ point }) => point === from);
		if (cable === undefined || cable.run !== run || end === undefined) continue;
		const point = circuit.points[from]?.name ?? "";
		return { name: conductor.name, where: tellLanded(circuit, from, "hot"), point, span: end.span };
	}
	return undefined;
}
