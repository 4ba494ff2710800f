// A load or a battery for direct current whose positive and negative are exchanged.
import type { Analysis } from "../analysis/analysis.ts";
import { type DirectState, isAlike } from "../analysis/direct.ts";
import { tellWay } from "../analysis/network.ts";
import { findOpposed, type Opposed } from "../analysis/opposed-batteries.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import { live } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const polarityDcReversed: Rule = {
	code: "polarity-dc-reversed",
	level: "danger",
	what: "Positive and negative are exchanged on the way to something for direct current.",
	why: "Electronics burn out at once, motors turn backward, and a switch or fuse on the way opens the wrong pole.",
	help: "Exchange the two wires where they were exchanged.",
	basis: "common practice",
	meter: [
		live(
			"digital voltmeter",
			"with its red lead on plus and its black lead on minus, at the terminals",
			"the voltage with a minus sign",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 10 A
feed small from house.+, house.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB
circuit lights from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W
at l1
  lights-1.red on l1.-
  lights-1.black on l1.+
`,
		`battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
feed plus from A1.+ by single 2/0 red
  1 ft to A2.-
feed minus from A1.- by single 2/0 black
  1 ft to A2.+
`,
	],
	right: [
		`battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
feed middle from A1.- by single 2/0 black
  1 ft to A2.+
feed bank from A1.+, A2.- by pair 12 AWG
  bolted to F1: fuse 30 A
  3 ft to l1: light 6 W 24 V
`,
	],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect(analysis: Analysis, direct: DirectState): Finding[] {
	const { circuit } = analysis;
	const batteries = direct.contradicted
		.filter(({ source, volts }) => isAlike(-volts, source.volts))
		.map(({ source, volts }) =>
			finding({
				code: polarityDcReversed.code,
				level: "danger",
				title: `${source.name} is joined the wrong way round: ${Math.round(-volts)} V meet its ${Math.round(source.volts)} V`,
				span: source.span,
				label: "plus meets minus",
				marks: [source.name],
				why: "Both batteries drive a short-circuit current through each other the moment they are joined.",
				help: `Exchange the two conductors on ${source.name}; in parallel plus goes to plus, in series one link goes from plus to minus and no other.`,
				basis: polarityDcReversed.basis,
			}),
		);
	const reversed = circuit.loads.flatMap(({ part, between: [positive, negative] }) => {
		const volts = direct.potentials.between(positive, negative);
		if (volts === undefined || volts > -leastVolts || circuit.points[positive]?.role !== "positive") return [];
		const way = direct.poles.reachOf(negative, "hot")?.edgesTo(negative) ?? [];
		const root = way
			.flatMap(({ by }) => (by.kind === "conductor" ? [by.index] : []))
			.map((index) => analysis.landings.misplacedAt(index, 0) ?? analysis.landings.misplacedAt(index, 1))
			.find((misplaced) => misplaced !== undefined);
		return [{ part, negative, way, root }];
	});
	const loads = [...groupBy(reversed, ({ root, part }) => root?.root ?? part)].flatMap(([key, group]) => {
		const [first] = group;
		const span = first === undefined ? undefined : circuit.partByName.get(first.part)?.span;
		if (first === undefined || span === undefined) return [];
		const end = first.root === undefined ? undefined : circuit.conductors[first.root.conductor]?.ends[first.root.which];
		const names = group.map(({ part }) => part);
		const wire = first.root === undefined ? undefined : circuit.conductors[first.root.conductor]?.name;
		const lands = first.root === undefined ? undefined : circuit.points[first.root.point]?.name;
		const by = wire === undefined || lands === undefined ? "" : `: ${wire} is on ${lands}`;
		return [
			finding({
				code: polarityDcReversed.code,
				level: "danger",
				title: `Positive and negative of ${listNames(names)} are exchanged${by}`,
				span: end?.span ?? span,
				label: "plus and minus exchanged",
				marks: [...(wire === undefined ? [] : [wire]), ...names],
				path: tellWay(circuit, first.way, first.negative),
				why: polarityDcReversed.why,
				help:
					end === undefined
						? `Exchange the two wires on ${names[0] ?? ""}.`
						: `Exchange positive and negative in ${end.enclosure.name}.`,
				basis: polarityDcReversed.basis,
				key: keyOfReversed(key),
			}),
		];
	});
	return [...batteries, ...findOpposed(direct).map(tellOpposed), ...loads];
}

function tellOpposed({ one, other, joined }: Opposed): Finding {
	const [own, free] = joined === "minus" ? ["minus", "plus"] : ["plus", "minus"];
	return finding({
		code: polarityDcReversed.code,
		level: "danger",
		title: `${one.name} and ${other.name} cancel each other: ${own} is on ${own} between them`,
		span: other.span,
		label: `${own} on ${own}`,
		also: [{ span: one.span, label: one.name }],
		marks: [one.name, other.name],
		why: `What hangs between the ${free} of one and the ${free} of the other gets next to nothing, and a charger there drives one of them backward.`,
		help: "Exchange the two conductors on one of them: in series a link goes from plus to minus.",
		basis: polarityDcReversed.basis,
		key: keyOfReversed(`${one.name}/${other.name}`),
	});
}

/** The key of the finding on a mistake. */
export function keyOfReversed(root: string): string {
	return `${polarityDcReversed.code}@${root}`;
}

/** Less than this is no source the wrong way round. */
const leastVolts = 1;
