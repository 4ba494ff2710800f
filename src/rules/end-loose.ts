// Wire ends on nothing, and outlets and loads that lack their hot or their way back because of an end or an empty terminal.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Break } from "../analysis/breaks.ts";
import { findHalfLanded } from "../analysis/half-landed.ts";
import { bothEnds } from "../analysis/landings.ts";
import { findMissingLeg, findShortPanel } from "../analysis/missing-legs.ts";
import { sortOfRole } from "../analysis/poles.ts";
import { type Finding, finding, type Level } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { cureBreak, keyBehindBreak, markBreak, pointAtVictims, tellBreak } from "./break-wording.ts";
import { keyOfShortPanel } from "./leg-missing.ts";
import { keyOfLoad } from "./load-voltage-wrong.ts";
import { dead, live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";
import { keyOfMixedIn } from "./systems-mixed.ts";

export const endLoose: Rule = {
	code: "end-loose",
	level: "danger",
	what: "A wire's end is on nothing, or a terminal that must carry has nothing on it.",
	why: "A loose live end touches whatever comes near it; a load without its neutral makes the neutral itself live.",
	help: "Land the end, or cap it if it is meant for later.",
	basis: "NFPA 70 110.14 and 300.15, recalled; common practice",
	meter: [
		dead("from the terminal, or from the end, to what it belongs to", "no continuity"),
		live(
			"digital voltmeter",
			"between hot and neutral of the outlet",
			"nothing sensible, though hot to ground may read right",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.black loose
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.white capped
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  9 ft to b2: receptacle
at b1
  join bunks-1.white, bunks-2.white
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-3
  14 ft to b1: receptacle
   9 ft to e1: end
at b1
  bunks-1.red capped
`,
	],
	check: (analysis) => {
		// What a loose ground leaves without ground is told as that.
		const grounds = new Set(analysis.states.flatMap((state) => state.grounding.breaks.map((lost) => lost.place)));
		const found = findOverModes(analysis, (state) => checkMode(analysis, state, grounds));
		return [...found, ...findHalves(analysis, found), ...findDead(analysis)];
	},
};

/** Sides of sources and transfers without a hot, where that is not told already of what they feed. */
function findHalves({ circuit, states }: Analysis, told: readonly Finding[]): Finding[] {
	const boxes = new Set(told.flatMap(({ marks }) => marks));
	return findHalfLanded(circuit).flatMap(({ part, empty, landed }): Finding[] => {
		const wires = circuit.conductors.filter(({ ends }) => ends.some(({ enclosure }) => enclosure === part.enclosure));
		const isTold = boxes.has(part.name) || boxes.has(empty.name) || wires.some(({ name }) => boxes.has(name));
		const isMixedUp = states.some(({ crossings }) =>
			[...crossings.bridges, ...crossings.strays].some(({ root }) => root.enclosure === part.enclosure.name),
		);
		if (isTold || isMixedUp || keyOfMixedIn(circuit, part.enclosure.name) !== undefined) return [];
		return [
			finding({
				code: endLoose.code,
				level: "error",
				title: `Nothing is on ${empty.name}, beside the neutral on ${landed.name}: nothing comes through ${part.name} there`,
				span: part.span,
				label: "no hot on it",
				marks: [empty.name, landed.name, part.name, ...wires.slice(0, 8).map(({ name }) => name)],
				why: `What hangs on it is dead whenever ${part.name} is to feed it, and the hot that belongs there may be live somewhere else.`,
				help: `In ${part.enclosure.name}, land the hot of the cable whose neutral is on ${landed.name} on ${empty.name}.`,
				basis: endLoose.basis,
				key: `${endLoose.code}@${empty.name}`,
			}),
		];
	});
}

/** Loads in boxes that something live comes to, of which neither pole is joined to anything that feeds in any mode. */
function findDead({ circuit, states }: Analysis): Finding[] {
	const isReached = (point: number): boolean => states.some(({ poles }) => poles.countAt(point) > 0);
	const dead = circuit.loads.filter(
		({ between }) =>
			!between.some((point) => isReached(point) || systemOfRole(circuit.points[point]?.role ?? "hot") === "dc"),
	);
	// Where poles are joined by mistake, that is told first, and may be why.
	if (dead.length === 0 || states.some(({ crossings }) => crossings.bridges.length > 0)) return [];
	const roughedIn = new Set(circuit.plan.runs.filter((run) => run.roughedIn).map(({ name }) => name));
	const fedBoxes = new Map<string, Conductor>();
	for (const conductor of circuit.conductors)
		for (const which of bothEnds) {
			const { point, state, enclosure } = conductor.ends[which];
			const other = conductor.ends[which === 0 ? 1 : 0].point;
			const isSpare = point === undefined && state === "capped" && other !== undefined;
			if (isSpare && states.some(({ poles }) => poles.sortsAt(other).has("hot")))
				fedBoxes.set(enclosure.name, conductor);
		}
	const told = new Set<string>();
	return dead.flatMap(({ part: name }): Finding[] => {
		const part = circuit.partByName.get(name);
		const capped = fedBoxes.get(part?.enclosure.name ?? "");
		if (part === undefined || part.coming || capped === undefined || told.has(name)) return [];
		if (part.run === undefined || roughedIn.has(part.run)) return [];
		told.add(name);
		return [
			finding({
				code: endLoose.code,
				level: "warning",
				title: `${name} is joined to nothing that feeds it: ${capped.name} is capped in its box`,
				span: part.span,
				label: "dead",
				also: capped.ends.flatMap(({ state, span }) => (state === "capped" ? [{ span, label: "capped here" }] : [])),
				marks: [name, capped.name],
				why: `${name} looks finished and is dead, with a live end folded up behind it.`,
				help: `Land the hot and the neutral that are capped in ${part.enclosure.name} on ${name}, or say that its circuit is \`roughed in\` until then.`,
				basis: endLoose.basis,
				key: `${endLoose.code}@${name}/dead`,
			}),
		];
	});
}

function checkMode(analysis: Analysis, state: ModeState, grounds: ReadonlySet<string>): Finding[] {
	const told = new Set([...grounds, ...state.openings.map((lost) => lost.place)]);
	const loose = analysis.circuit.conductors.flatMap((conductor) =>
		bothEnds
			.filter((which) => conductor.ends[which].state === "loose" && conductor.ends[which].point === undefined)
			.filter((which) => !told.has(`${conductor.name}@${conductor.ends[which].enclosure.name}`))
			.map((which) => tellLoose(state, conductor, which)),
	);
	return [...state.openings.map((lost) => tellOpening(analysis, state, lost)), ...loose];
}

function tellOpening(analysis: Analysis, state: ModeState, lost: Break): Finding {
	const { circuit } = analysis;
	const starved = namesOf(state, lost);
	const names = listNames(starved);
	const many = starved.length > 1;
	const { cause } = lost;
	const end = "which" in cause ? circuit.conductors[cause.conductor] : undefined;
	const isLive = end !== undefined && "which" in cause && cause.kind === "off" && isLiveLoose(state, end, cause.which);
	const behind = keyBehindBreak(state, lost) ?? keyBehindLeg(analysis, lost) ?? keyBehindMixed(circuit, lost);
	const level: Level = lost.sort === "neutral" || isLive ? "danger" : "error";
	return finding({
		code: endLoose.code,
		level,
		title: `${names} ${many ? "have" : "has"} no ${lost.sort === "hot" ? "hot" : "way back"}: ${tellBreak(analysis, lost)}${isLive ? ", and live" : ""}`,
		span: lost.span,
		label: isLive ? "live and on nothing" : `no ${lost.sort} beyond this`,
		also: pointAtVictims(analysis, lost),
		marks: markBreak(analysis, lost),
		path: tellWay(state, lost),
		why:
			lost.sort === "neutral"
				? `Whatever is switched on at ${names} makes the dead end of the neutral live at full voltage.`
				: isLive
					? endLoose.why
					: `${names} cannot work, and whoever looks for the reason opens a box that may be live.`,
		help: cureBreak(analysis, lost),
		basis: endLoose.basis,
		key: `${endLoose.code}@${lost.place}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}

/** The key of the finding that what belongs on an empty terminal is on one of the direct-current side. */
function keyBehindMixed(circuit: Circuit, { cause }: Break): string | undefined {
	const box = cause.kind === "empty" ? circuit.points[cause.point]?.enclosure.name : undefined;
	return box === undefined ? undefined : keyOfMixedIn(circuit, box);
}

/** The key of the finding on a second hot that no source has, where that is what is missing. */
function keyBehindLeg(analysis: Analysis, { sort, cause, victims }: Break): string | undefined {
	if (sort !== "hot") return undefined;
	const { circuit } = analysis;
	const box = cause.kind === "apart" ? circuit.conductors[cause.conductor]?.ends[cause.which].enclosure : undefined;
	const panel = box === undefined ? undefined : circuit.partByName.get(box.name);
	if (panel !== undefined && findShortPanel(analysis, panel) !== undefined) return keyOfShortPanel(panel.name);
	const load = circuit.loads.find(({ between }) => between.includes(victims[0] ?? -1));
	return load !== undefined && findMissingLeg(analysis, load).length > 0 ? keyOfLoad(load.part) : undefined;
}

/** The things that go without; of one that is served elsewhere, as half of a split receptacle, the terminal. */
function namesOf({ network: { circuit }, poles }: ModeState, { victims, sort }: Break): readonly string[] {
	const names = victims.map((index) => {
		const point = circuit.points[index];
		const part = point?.kind === "terminal" ? circuit.partByName.get(point.part) : undefined;
		const isServed = part?.points.some(
			(other) =>
				other !== index &&
				poles.sortsAt(other).has(sort) &&
				sortOfRole(circuit.points[other]?.role ?? "ground") === sort,
		);
		return (isServed === true ? point?.name : part?.name) ?? "";
	});
	return [...new Set(names)];
}

function tellLoose(state: ModeState, conductor: Conductor, which: 0 | 1): Finding {
	const end = conductor.ends[which];
	const box = end.enclosure.name;
	const isLive = isLiveLoose(state, conductor, which);
	const isDirect = systemOfRole(conductor.role) === "dc";
	const { poles } = isDirect ? (state.direct ?? state) : state;
	const other = conductor.ends[which === 0 ? 1 : 0].point;
	return finding({
		code: endLoose.code,
		level: isLive ? "danger" : "warning",
		title: `${conductor.name} is on nothing in ${box}${isLive ? ", and live" : ""}`,
		span: end.span,
		label: isLive ? "live and on nothing" : "on nothing",
		marks: [conductor.name],
		path: isLive && other !== undefined ? (poles.reachOf(other, "hot")?.pathTo(other) ?? []) : [],
		why: isLive
			? isDirect
				? "A loose positive that touches the chassis or a negative makes a short circuit, and what it touches burns."
				: endLoose.why
			: "An end that nothing holds can touch something live, and nobody knows what it was meant for.",
		help: `In ${box}, land ${conductor.name}, or cap it: \`${conductor.name} capped\`.`,
		basis: endLoose.basis,
		key: `${endLoose.code}@${conductor.name}@${box}`,
	});
}

/** Whether a hot reaches the conductor from its other end. */
function isLiveLoose(state: ModeState, conductor: Conductor, which: 0 | 1): boolean {
	const end = conductor.ends[which];
	const other = conductor.ends[which === 0 ? 1 : 0].point;
	if (end.state !== "loose" || other === undefined) return false;
	const { poles } = systemOfRole(conductor.role) === "dc" ? (state.direct ?? state) : state;
	return poles.sortsAt(other).has("hot");
}

function tellWay({ poles, network: { circuit } }: ModeState, { victims, cause }: Break): Finding["path"] {
	const [first] = victims;
	const load = circuit.loads.find(({ between }) => first !== undefined && between.includes(first));
	// An input has no other side that is fed: the way is that to the wire which does not reach it.
	const off = cause.kind === "off" ? circuit.conductors[cause.conductor]?.ends[cause.which === 0 ? 1 : 0] : undefined;
	const fed = load === undefined ? off?.point : load.between.find((point) => poles.countAt(point) > 0);
	if (fed === undefined) return [];
	return (poles.reachOf(fed, "hot") ?? poles.reachOf(fed, "neutral"))?.pathTo(fed) ?? [];
}
