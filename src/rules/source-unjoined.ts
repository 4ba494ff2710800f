// A battery, alternator, charger or solar module of which a post leads to nothing, or to nothing that leads back to the other.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { findLoopless, type Loopless } from "../analysis/direct-loops.ts";
import { reachFrom } from "../analysis/network.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Circuit, Source } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { byEye, live } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const bank = `battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 20 A
  6 ft to l1: light 6 W
`;

export const sourceUnjoined: Rule = {
	code: "source-unjoined",
	level: "error",
	what: "A post of a battery, alternator, charger or solar module leads to nothing, or to nothing that leads back to its other post.",
	why: "It gives and takes no current: the battery it should fill runs flat, and an alternator or controller without its battery can burn out.",
	help: "Join both its posts: the plus by way of its fuse, the minus with the minus of what it feeds or fills.",
	basis: "common practice: a current needs a way there and a way back",
	meter: [
		live(
			"clamp meter",
			"around the lead of the post, while it should give or take current",
			"nothing, while between its own posts the voltmeter reads its voltage",
		),
		byEye("follow the lead of each post to the other post of what it feeds"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`${bank}alternator alt 60 A 14 V
feed charge from house.+ by single 4 AWG red
  within 7 in to F2: fuse ANL 80 A
  4 ft to alt.+
`,
		`${bank}battery spare agm 12 V 100 Ah
`,
		`${bank}battery second agm 12 V 100 Ah
feed over from house.+ by single 4 AWG red
  within 7 in to F2: fuse 80 A
  2 ft to F3: fuse 80 A
  7 in to second.+
`,
	],
	right: [
		`${bank}alternator alt 60 A 14 V
feed charge from house.+ by single 4 AWG red
  within 7 in to F2: fuse ANL 80 A
  4 ft to alt.+
feed back from house.- by single 4 AWG black
  4 ft to alt.-
`,
		`${bank}alternator alt 60 A 14 V
chassis frame
feed charge from house.+ by single 4 AWG red
  within 7 in to F2: fuse ANL 80 A
  4 ft to alt.+
feed case from alt.- by single 4 AWG black
  1 ft to frame
bond minus-frame from house.- by single 4 AWG black
  1 ft to frame
`,
	],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	// Where a battery is shorted or two voltages meet, that is the fault to tell.
	if (direct.contradicted.length > 0) return [];
	const { sources } = findLoopless(direct.network);
	if (sources.length === 0) return [];
	const landed = new Set(circuit.conductors.flatMap(({ ends }) => ends.map(({ point }) => point)));
	const roughedIn = new Set(circuit.plan.runs.filter((run) => run.roughedIn).map(({ name }) => name));
	const isAlone = sources.length === circuit.sources.length && circuit.loads.length === 0;
	return sources.flatMap((lost): Finding[] => {
		const { thing, positive, negative } = lost;
		if (!("hot" in thing) || roughedIn.has(circuit.partByName.get(thing.part)?.run ?? "")) return [];
		if (![...thing.hot, thing.neutral].some((point) => landed.has(point)))
			return isAlone ? [] : [tellBare(circuit, thing)];
		// With nothing on its leads, on a bus with free studs, the plan is not finished; nor where its cable waits, capped.
		if (!positive.isJoined && !negative.isJoined) return [];
		if (waits(circuit, direct, thing)) return [];
		// With no other source there is nothing it should help: its loads tell that nothing reaches them.
		return positive.sources + negative.sources === 0 ? [] : [tellHalf(circuit, thing, lost)];
	});
}

/** Whether a cable that one of its posts leads to ends capped, for what comes later. */
function waits({ conductors }: Circuit, { network }: DirectState, { hot, neutral }: Source): boolean {
	const reach = reachFrom(network, neutral === undefined ? hot : [...hot, neutral], () => true);
	const isReached = (point: number | undefined): boolean => point !== undefined && reach.has(point);
	return conductors.some(
		({ ends, role }) =>
			systemOfRole(role) === "dc" &&
			ends.some(({ state }) => state === "capped") &&
			ends.some(({ point }) => isReached(point)),
	);
}

function tellBare(circuit: Circuit, source: Source): Finding {
	const part = certain(circuit.partByName.get(source.part), source.part);
	// A charger or converter of which only the other side is told is not all in the plan.
	const isWhole = part.points.every((point) => source.hot.includes(point) || point === source.neutral);
	return finding({
		...slotsOf(source),
		level: isWhole ? "warning" : "note",
		title: `No wire is on either post of ${source.name}`,
		label: "joined to nothing",
		help: `Join plus and minus of ${source.name}, or take it out of the plan.`,
	});
}

function tellHalf(circuit: Circuit, source: Source, { positive, negative }: Loopless): Finding {
	const open = !positive.isJoined ? source.hot[0] : !negative.isJoined ? source.neutral : undefined;
	const post = circuit.points[open ?? -1]?.name;
	const pole = open === source.neutral ? "minus" : "plus";
	return finding({
		...slotsOf(source),
		level: "error",
		title:
			post === undefined
				? `Nothing leads from the plus of ${source.name} back to its minus: what they are joined to is not joined`
				: `The ${pole} of ${source.name} leads to nothing, so it gives and takes no current`,
		label: post === undefined ? "no way back" : `${pole} leads to nothing`,
		marks: [source.part, ...(post === undefined ? [] : [post])],
		help:
			post === undefined
				? `Join the minus of ${source.name} with the minus of what its plus leads to.`
				: pole === "minus"
					? `Join ${post} with the minus of what it fills or feeds; where its case is its minus, say so with a run to the chassis.`
					: `Join ${post}, by way of a fuse, with the plus of what it fills or feeds.`,
	});
}

function slotsOf(source: Source) {
	return {
		code: sourceUnjoined.code,
		span: source.span,
		marks: [source.part],
		why: sourceUnjoined.why,
		basis: sourceUnjoined.basis,
		key: `${sourceUnjoined.code}@${source.part}`,
	};
}
