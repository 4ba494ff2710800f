// Terminals and joints that hold more conductors than they are made for, or thicker ones.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, type FindingSlots, finding } from "../base/finding.ts";
import { compareGauges, formatGauge, type Gauge } from "../base/gauge.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Conductor, End, Splice, Terminal } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";
import { byEye } from "./meter-test.ts";
import { keyOfMistake } from "./mistake-wording.ts";
import type { Rule } from "./rule.ts";

export const terminalOverfilled: Rule = {
	code: "terminal-overfilled",
	level: "error",
	what: "More conductors are under a terminal or in a joint than it is made for, or one too thick for it.",
	why: "What is not clamped by itself works loose, runs hot, and may fall out.",
	help: "Join them with a connector that has enough ports, and take one pigtail to the terminal.",
	basis: "NFPA 70 110.14(A); NFPA 70 110.3(B): a terminal takes one conductor unless it is marked for more",
	meter: [
		byEye(
			"count the conductors under each screw and in each port, and with everything dead pull at each: none may move",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  8 ft to l1: light 9 W
  6 ft to l2: light 9 W
at l1
  lights-1.black, lights-2.black on l1.hot
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  from b1
    6 ft to b2: receptacle
  from b1
    6 ft to b3: receptacle
at b1
  join bunks-1.black, bunks-2.black, bunks-3.black, b1.hot by lever 3
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  6 ft to b2: receptacle
at b1
  bunks-1.black, bunks-2.black on b1.hot
`,
	],
	check: (analysis) => {
		const landed = landedOn(analysis.circuit, findFull(analysis.circuit));
		return [...landed.keys()].toSorted(byNumber).flatMap((index) => {
			const ends = landed.get(index) ?? [];
			const point = analysis.circuit.points[index];
			if (point?.kind === "terminal")
				return [...tellTerminal(analysis, point, ends), ...tellThickness(analysis, point, ends)];
			return point?.kind === "splice" ? tellSplice(point, ends) : [];
		});
	},
};

/** An end on a point, with its conductor. */
interface Landed {
	readonly conductor: Conductor;
	readonly end: End;
}

/** The points with more on them, or something thicker, than they take: few or none, so that only these are looked at closely. */
function findFull({ points, conductors }: Circuit): ReadonlySet<number> {
	const counts = new Uint32Array(points.length);
	const full = new Set<number>();
	for (const { ends, gauge } of conductors)
		for (const { point } of ends) {
			const target = point === undefined ? undefined : points[point];
			if (point === undefined || target === undefined || target.kind === "body") continue;
			const count = (counts[point] ?? 0) + 1;
			counts[point] = count;
			if (count > (target.kind === "splice" ? target.ports : target.capacity)) full.add(point);
			if (target.kind === "terminal" && isUnfit(gauge, target)) full.add(point);
		}
	return full;
}

function isUnfit(gauge: Gauge, { smallest, largest }: Terminal): boolean {
	return compareGauges(gauge, largest) > 0 || compareGauges(gauge, smallest) < 0;
}

/** What is on each of the points, what the builder said last: the end that is too many is one that somebody put there. */
function landedOn(circuit: Circuit, points: ReadonlySet<number>): ReadonlyMap<number, readonly Landed[]> {
	const landed = new Map<number, Landed[]>();
	for (const conductor of circuit.conductors)
		for (const end of conductor.ends) {
			if (end.point === undefined || !points.has(end.point)) continue;
			const here = landed.get(end.point);
			if (here === undefined) landed.set(end.point, [{ conductor, end }]);
			else here.push({ conductor, end });
		}
	for (const [point, ends] of landed)
		if (ends.length > 1)
			landed.set(point, [...ends.filter(({ end }) => !end.said), ...ends.filter(({ end }) => end.said)]);
	return landed;
}

function byNumber(one: number, other: number): number {
	return one - other;
}

function tellTerminal(analysis: Analysis, terminal: Terminal, ends: readonly Landed[]): Finding[] {
	const last = ends.at(-1);
	if (last === undefined || ends.length <= terminal.capacity) return [];
	const names = ends.map(({ conductor }) => conductor.name);
	// What was put under one port by hand is too much however many ports there are.
	const bar = ends.some(({ end }) => end.said) ? undefined : portsTakenFor(analysis, terminal);
	const count =
		terminal.capacity === 0
			? `${listNames(names)} ${names.length === 1 ? "lies" : "lie"} on ${terminal.name}, which takes no conductor`
			: `${terminal.name} holds ${ends.length} conductors, and takes ${terminal.capacity}`;
	return [
		finding({
			...slots(terminal.name, ends, terminal.capacity),
			level: bar === undefined ? "error" : "note",
			title:
				bar === undefined ? count : `${terminal.part} has more conductors than the ${bar} ports it is taken to have`,
			span: last.end.span,
			help:
				bar !== undefined
					? `Say how many it has: \`${terminal.part.split(".").at(-1)}-bar ports ${bar * 2}\` in the panel.`
					: terminal.capacity === 0
						? `Nothing lands on ${terminal.name}: it plugs on to its bus. Take ${listNames(names)} to a screw.`
						: (tellFreePort(analysis, terminal, last, ends.length - terminal.capacity) ??
							`Join ${listNames(names)} in a connector with ${ends.length + 1} ports, and take one pigtail to ${terminal.name}.`),
			...followsMistake(analysis, terminal, ends),
		}),
	];
}

/** An end put on the wrong terminal by hand draws there, or leaves there, what the convention lands by itself: one cause. */
function followsMistake(
	{ landings, states }: Analysis,
	terminal: Terminal,
	ends: readonly Landed[],
): Pick<Finding, "consequenceOf"> {
	const misplaced = landings.misplacedOn(terminal.index);
	if (misplaced === undefined || ends.every(({ end }) => end.said)) return {};
	for (const { crossings } of states) {
		const key = keyOfMistake(crossings, misplaced.root);
		if (key !== undefined) return { consequenceOf: key };
	}
	return {};
}

/** On a bar each conductor has a port of its own: one that is free, for what was put there last. */
function tellFreePort({ circuit }: Analysis, terminal: Terminal, last: Landed, tooMany: number): string | undefined {
	const part = circuit.partByName.get(terminal.part);
	const isBar = part?.face.traits.some((trait) => trait === "neutral-bar" || trait === "ground-bar") === true;
	if (!isBar) return undefined;
	const taken = new Set(circuit.conductors.flatMap(({ ends }) => ends.map(({ point }) => point)));
	const free = part.points.find((point) => !taken.has(point));
	return free === undefined || tooMany > 1
		? `Give each conductor a port of its own on ${terminal.part}; add a bar if there are too few.`
		: `Give ${last.conductor.name} a port of its own: ${circuit.points[free]?.name ?? terminal.part} is free.`;
}

/** The number of ports a bar is taken to have, where the builder did not say it. */
function portsTakenFor(analysis: Analysis, terminal: Terminal): number | undefined {
	const thing = analysis.circuit.plan.thingByName.get(foldName(terminal.part));
	const isBar = thing?.blueprint.terminals.some((spec) => spec.gathers === true) === true;
	return isBar && thing?.said.count("ports") === undefined ? thing?.blueprint.terminals.length : undefined;
}

function tellSplice(splice: Splice, ends: readonly Landed[]): Finding[] {
	const last = ends.at(-1);
	if (last === undefined || ends.length <= splice.ports) return [];
	return [
		finding({
			...slots(splice.name, ends, splice.ports),
			level: "error",
			title: `The joint ${splice.name} holds ${ends.length} conductors, and its ${splice.connector} connector takes ${splice.ports}`,
			span: splice.said ? splice.span : last.end.span,
			help: `Use a connector with ${ends.length} ports, or two joints with a jumper between them.`,
		}),
	];
}

/** A binding screw is for 10 AWG at most (NFPA 70 110.14(A)); what a cage takes is marked on it, so that is only told where it was not read off. */
function tellThickness({ circuit }: Analysis, terminal: Terminal, ends: readonly Landed[]): Finding[] {
	const { said } = circuit.plan.thingByName.get(foldName(terminal.part)) ?? {};
	const isScrew = terminal.clamp === "screw";
	const thick = ends.find(({ conductor }) => compareGauges(conductor.gauge, terminal.largest) > 0);
	const thin =
		said?.gauge("smallest") === undefined
			? undefined
			: ends.find(({ conductor }) => compareGauges(conductor.gauge, terminal.smallest) < 0);
	const told = (landed: Landed, limit: Gauge, most: string): FindingSlots => ({
		...slots(terminal.name, [landed], terminal.capacity),
		level: "error",
		title: `${landed.conductor.name} is ${formatGauge(landed.conductor.gauge)}, and ${terminal.name} takes ${formatGauge(limit)} at ${most}`,
		span: landed.end.span,
		figures: [],
		help: "",
	});
	return [
		...(thick === undefined
			? []
			: [
					finding({
						...told(thick, terminal.largest, "most"),
						level: isScrew || said?.gauge("largest") !== undefined ? "error" : "note",
						key: `${terminalOverfilled.code}@${terminal.name}/thick`,
						why: "A thick conductor does not lie under the head, and a bent one works loose.",
						help: isScrew
							? "Splice a thinner pigtail to it that the breaker ahead still protects, or use a device with larger terminals."
							: said?.gauge("largest") === undefined
								? "Look at the marking on the terminal; this is only its usual size."
								: "Use lugs or a bar for this size.",
					}),
				]),
		...(thin === undefined
			? []
			: [
					finding({
						...told(thin, terminal.smallest, "least"),
						key: `${terminalOverfilled.code}@${terminal.name}/thin`,
						why: "A thin conductor is not held by a terminal made for thicker ones, and works loose.",
						help: "Use lugs or a bar for this size.",
					}),
				]),
	];
}

function slots(name: string, ends: readonly Landed[], limit: number) {
	return {
		code: terminalOverfilled.code,
		label: `${ends.length} here`,
		also: ends.slice(0, -1).map(({ conductor, end }) => ({ span: end.span, label: conductor.name })),
		marks: [name, ...ends.map(({ conductor }) => conductor.name)],
		figures: [{ name: "conductors", found: ends.length, limit, unit: "", source: terminalOverfilled.basis }],
		why: terminalOverfilled.why,
		basis: terminalOverfilled.basis,
	};
}
