// A load that is not fed by the breaker its circuit is said to come from.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { findExposedLeads } from "../analysis/direct-leads.ts";
import { type FedBackward, findFedBackward, findMislabelledFuses } from "../analysis/direct-mislabelled.ts";
import { type JoinedCircuits, traceJoinedCircuits } from "../analysis/joined-circuits.ts";
import { traceJoinedFuses } from "../analysis/joined-fuses.ts";
import { findMislabelled, type Mislabelled, nameMixUp } from "../analysis/mislabelled.ts";
import type { Edge } from "../analysis/network.ts";
import type { PoleMap } from "../analysis/poles.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import type { Span } from "../base/span.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Protection } from "../circuit/circuit.ts";
import { protectionFaultAt } from "./exposed-wording.ts";
import { dead, live } from "./meter-test.ts";
import { tellLanded } from "./mistake-wording.ts";
import { findOverDirect, findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const block = `battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 8 AWG
  within 7 in to F1: fuse 50 A
  3 ft to FB: fuse-block 60 A, ways 4
circuit lamps from FB fuse 5 A by pair 16 AWG
  6 ft to l1: light 6 W
circuit pump from FB fuse 10 A by pair 10 AWG
  6 ft to p1: pump 48 W
`;

export const circuitMislabelled: Rule = {
	code: "circuit-mislabelled",
	level: "error",
	what: "What belongs to one circuit is fed by the breaker or fuse of another, or past its own.",
	why: "Whoever switches off the breaker on the label, or takes its fuse out, and opens the box finds it live.",
	help: "Exchange the hots or positives there, or correct what the plan says the circuit comes from.",
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
		`${block}at FB
  lamps-1.red on FB.2.load
  pump-1.red on FB.1.load
`,
		`${block}at FB
  small-2.red on FB.2.load
  pump-1.red on FB.bus.+
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
		`${block}at FB
  lamps-1.black on FB.negative.3
  pump-1.black on FB.negative.2
`,
	],
	check: (analysis) => [
		...findOverModes(analysis, (state) => checkMode(analysis, state)),
		...findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
	],
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const { circuit, landings } = analysis;
	const { network, poles } = state.crossings;
	const found = findMislabelled(circuit, landings, state).filter((one) => !one.isPast || !isUnprotected(analysis, one));
	return tellAll(circuit, found, { poles, hot: "hot", joined: () => traceJoinedCircuits(network, poles) });
}

function checkDirect({ circuit, landings }: Analysis, direct: DirectState): Finding[] {
	const { poles } = direct;
	const backward = findFedBackward(circuit, direct);
	const found = findMislabelledFuses(circuit, landings, direct).filter(
		(one) => !one.isPast || !isExposed(circuit, direct, one),
	);
	return [
		...backward.map((one) => tellBackward(poles, one)),
		...tellAll(circuit, found, { poles, hot: "positive", joined: () => traceJoinedFuses(direct) }),
	];
}

/** What hangs on the system: its poles, what a live wire is called, and which circuits are joined. */
interface Terms {
	readonly poles: PoleMap;
	readonly hot: string;
	readonly joined: () => readonly JoinedCircuits[];
}

/** Where the two are joined, who feeds what is no longer a question of labels. */
function tellAll(circuit: Circuit, found: readonly Mislabelled[], terms: Terms): Finding[] {
	const joined = found.length === 0 ? [] : terms.joined();
	const pairs = new Set(joined.map(({ devices: [one, other] }) => nameMixUp({ said: one.part, found: other.part })));
	return [...groupBy(found, nameMixUp)].flatMap(([pair, [first, ...others]]) =>
		first === undefined ? [] : [tell(circuit, terms, first, others, pairs.has(pair))],
	);
}

/** A load whose wires lack protection because they go past their breaker is told of by that. */
function isUnprotected(analysis: Analysis, { part }: Mislabelled): boolean {
	const found = analysis.circuit.partByName.get(part);
	return found !== undefined && protectionFaultAt(analysis, found) !== undefined;
}

/** The same of a load for direct current. */
function isExposed(circuit: Circuit, direct: DirectState, { part }: Mislabelled): boolean {
	const points = circuit.partByName.get(part)?.points ?? [];
	return findExposedLeads(circuit, direct).some(({ conductors }) =>
		conductors.some(({ ends }) => ends.some(({ point }) => point !== undefined && points.includes(point))),
	);
}

function tell(
	circuit: Circuit,
	{ poles, hot }: Terms,
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
	const reach = poles.reachOf(first.point, "hot");
	const part = certain(circuit.partByName.get(first.part), first.part);
	const landing = findLanding(circuit, reach?.edgesTo(first.point) ?? [], part.run);
	const exchanged = theirs.length === 0 ? "" : `, and ${listNames(theirs)} the other way round`;
	const fed = first.isPast
		? `${many ? `their ${hot}s go` : `its ${hot} goes`} past it, from ${first.found}`
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
		help: `Put ${landing?.name ?? `the ${hot} of ${names}`} on ${first.said}, ${first.isPast ? "so that it can be switched off there" : `or say that the circuit comes from ${first.found}`}.`,
		basis: circuitMislabelled.basis,
		key: `${circuitMislabelled.code}@${nameMixUp(first)}`,
		...(isJoined ? { consequenceOf: `circuits-joined@${nameMixUp(first)}` } : {}),
	});
}

/** A wire from elsewhere on the load terminal of a circuit's fuse, by which its whole block is fed. */
function tellBackward(poles: PoleMap, { device, load, conductor }: FedBackward): Finding {
	const block = load.enclosure.name;
	const end = conductor.ends.find(({ enclosure }) => enclosure === load.enclosure) ?? conductor.ends[1];
	return finding({
		code: circuitMislabelled.code,
		level: "error",
		title: `All of ${block} is fed through ${device.part}, the fuse of one circuit: ${conductor.name} is on its load side`,
		span: end.span,
		label: `feeds ${block} backward`,
		also: [{ span: device.span, label: device.part }],
		marks: [load.name, conductor.name, device.part],
		path: poles.reachOf(load.index, "hot")?.pathTo(load.index) ?? [],
		why: `What ${block} feeds in all has to come through ${device.part}; when that opens all is dark, and what should hang behind it alone never is.`,
		help: `Land ${conductor.name} where ${block} is fed, and the wire of the circuit on ${load.name}.`,
		basis: "common practice",
		key: keyOfBackward(device),
	});
}

/** The key of the finding on what a fuse for direct current feeds in place of its own circuit, for what follows from it. */
export function keyOfMixUpAt(
	{ circuit, landings }: Analysis,
	direct: DirectState,
	{ part }: Protection,
): string | undefined {
	const backward = findFedBackward(circuit, direct).find(({ device }) => device.part === part);
	if (backward !== undefined) return keyOfBackward(backward.device);
	const other = findMislabelledFuses(circuit, landings, direct).find(({ found }) => found === part);
	return other === undefined ? undefined : `${circuitMislabelled.code}@${nameMixUp(other)}`;
}

function keyOfBackward({ part }: Protection): string {
	return `${circuitMislabelled.code}@${part}/backward`;
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
