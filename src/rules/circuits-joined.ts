// The hots of two circuits joined behind their breakers: the box stays live with one off, and both let current into its wires.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type ConductorLimit, conductorLimit } from "../analysis/conductor-limit.ts";
import type { DirectState } from "../analysis/direct.ts";
import { directLimit } from "../analysis/direct-limit.ts";
import { type JoinedCircuits, traceJoinedCircuits } from "../analysis/joined-circuits.ts";
import { traceJoinedFuses } from "../analysis/joined-fuses.ts";
import type { PoleMap } from "../analysis/poles.ts";
import { type Figure, type Finding, finding, type Level } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames, startSentence } from "../base/wording.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { findJoint, type Joint } from "./joint.ts";
import { dead, live } from "./meter-test.ts";
import { findOverDirect, findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const circuitsJoined: Rule = {
	code: "circuits-joined",
	level: "danger",
	what: "The hots or positives of two circuits are joined behind their breakers or fuses, and these do not open together.",
	why: "With one device off everything stays live through the other, and the wires get what both let through.",
	help: "Keep the hots or positives of each circuit in a joint of their own.",
	basis: "common practice; NFPA 70 240.8 (devices in parallel) and 240.4, recalled",
	meter: [
		dead(
			"from the load terminal of the one breaker to that of the other, both off and every load unplugged",
			"continuity",
		),
		live(
			"loading voltage tester",
			"from the load terminal of the one breaker to the neutral bar, it off and the other on",
			"the full voltage instead of 0 V",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to j1: box
circuit bunks from LC breaker 15 A by 14-2
  9 ft to j1
at j1
  join lights-1.black, bunks-1.black
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to b1: receptacle
circuit bunks from LC breaker 15 A by 14-2
  9 ft to b1
at b1
  lights-1.black, bunks-1.black on b1.hot
  bunks-1.white capped
`,
		`battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 8 AWG
  within 7 in to F1: fuse 50 A
  3 ft to FB: fuse-block 60 A, ways 4
circuit lamps from FB fuse 5 A by pair 16 AWG
  6 ft to j1: box
  6 ft to l1: light 6 W
circuit pump from FB fuse 10 A by pair 14 AWG
  6 ft to j1
  from j1
    6 ft to p1: pump 48 W
at j1
  join lamps-1.red, lamps-2.red, pump-1.red, pump-2.red
  join lamps-1.black, lamps-2.black
  join pump-1.black, pump-2.black
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to j1: box
  6 ft to l1: light 9 W
circuit bunks from LC breaker 15 A by 14-2
  9 ft to j1
  from j1
    6 ft to b1: receptacle
at j1
  join lights-1.black, lights-2.black
  join lights-1.white, lights-2.white
  join bunks-1.black, bunks-2.black
  join bunks-1.white, bunks-2.white
`,
		`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A two-pole by 12-3
  14 ft to b1: receptacle split
`,
	],
	check: (analysis) => [
		...findOverModes(analysis, (state) => checkMode(analysis, state)),
		...findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
	],
};

function checkMode({ circuit }: Analysis, { crossings: { network, poles } }: ModeState): Finding[] {
	const limitOf = (conductor: Conductor): ConductorLimit | undefined => conductorLimit(circuit, conductor);
	const terms: Terms = { level: "danger", hots: "hots", returns: "neutrals", poles, limitOf };
	return traceJoinedCircuits(network, poles).map((joined) => tell(circuit, joined, terms));
}

/** What fuses for low voltage leave live burns, but shocks nobody. */
function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	const { poles, feeders } = direct;
	return traceJoinedFuses(direct).map((joined) => {
		const volts = circuit.sources.find(({ name }) => name === feeders.get(joined.points[0] ?? -1)?.pole.source)?.volts;
		const limitOf = (conductor: Conductor): ConductorLimit | undefined => directLimit(circuit, conductor, volts ?? 12);
		return tell(circuit, joined, { level: "error", hots: "positives", returns: "negatives", poles, limitOf });
	});
}

/** What hangs on the system: how bad it is, what its wires are called and bear, and its poles. */
interface Terms {
	readonly level: Level;
	readonly hots: string;
	readonly returns: string;
	readonly poles: PoleMap;
	readonly limitOf: (conductor: Conductor) => ConductorLimit | undefined;
}

function tell(circuit: Circuit, joined: JoinedCircuits, terms: Terms): Finding {
	const { level, hots, poles, limitOf } = terms;
	const [one, other] = joined.devices;
	const joint = findJoint(circuit, joined.way);
	const limit = thinnest(circuit, joined.points, limitOf);
	const sum = sumOf(joined);
	const where = joint.box === undefined ? "" : ` in ${joint.box}`;
	return finding({
		code: circuitsJoined.code,
		level,
		title: `The ${hots} of ${one.part} and ${other.part} are joined${where}${joint.names.length < 2 ? "" : `: ${listNames(joint.names)}`}`,
		span: joint.span ?? other.span,
		label: "two circuits meet",
		also: [one, other].map(({ span, part }) => ({ span, label: part })),
		marks: [...joint.marks, one.part, other.part],
		path: poles.reachOf(joint.point, "hot")?.pathTo(joint.point) ?? [],
		figures: limit === undefined || sum === undefined ? [] : [figure(sum, limit)],
		why: `With ${one.part} or ${other.part} off, what hangs there is still live through the other.${tellSum(sum, limit)}`,
		help: tellCure(joint, [one.part, other.part], terms),
		basis: circuitsJoined.basis,
		key: `${circuitsJoined.code}@${one.part < other.part ? `${one.part}/${other.part}` : `${other.part}/${one.part}`}`,
	});
}

function figure(sum: number, limit: ConductorLimit): Figure {
	return {
		name: "protection",
		found: Number(sum.toFixed(3)),
		limit: limit.largest,
		unit: "A",
		source: limit.source,
	};
}

/** What both let through together; undefined where a rating is not known. */
function sumOf({ devices: [one, other] }: JoinedCircuits): number | undefined {
	return one.rating === undefined || other.rating === undefined ? undefined : one.rating + other.rating;
}

function tellSum(sum: number | undefined, limit: ConductorLimit | undefined): string {
	if (sum === undefined) return "";
	const both = ` Together they let ${formatNumber(sum, 1)} A into the same wires`;
	return limit === undefined || sum <= limit.largest ? `${both}.` : `${both}: ${limit.because}.`;
}

/** The smallest limit among the conductors that both feed. */
function thinnest(
	circuit: Circuit,
	points: readonly number[],
	limitOf: (conductor: Conductor) => ConductorLimit | undefined,
): ConductorLimit | undefined {
	const fed = new Set(points);
	const isFed = ({ ends }: Conductor): boolean => ends.some(({ point }) => point !== undefined && fed.has(point));
	let least: ConductorLimit | undefined;
	for (const conductor of circuit.conductors) {
		if (!isFed(conductor)) continue;
		const limit = limitOf(conductor);
		if (limit !== undefined && (least === undefined || limit.largest < least.largest)) least = limit;
	}
	return least;
}

function tellCure({ box, jumper, sides }: Joint, devices: readonly string[], { hots, returns }: Terms): string {
	if (jumper !== undefined) return `Take the jumper ${jumper} out of ${box ?? "the box"}.`;
	const where = box === undefined ? "" : `in ${box}, `;
	const joints = sides.filter(({ length }) => length > 1).map((names) => `\`join ${names.join(", ")}\``);
	const single = sides.filter(({ length }) => length === 1).flat();
	if (sides.length === 0) return `Part the ${hots} of ${listNames(devices)}, or feed both from one breaker.`;
	if (joints.length === 0) return startSentence(`${where}cap ${single.join(" or ")}, so that only one of them feeds.`);
	const rest = single.length === 0 ? "" : `, and cap ${listNames(single)}`;
	return startSentence(`${where}write ${joints.join(" and ")}${rest}; keep their ${returns} apart in the same way.`);
}
