// Cables that lack a conductor which what they feed cannot do without, or that belongs with their hot: a ground, a neutral, a second hot.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type Finding, finding, type PathStep } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Cable, Circuit, Enclosure } from "../circuit/circuit.ts";
import { keyOfCable } from "./cable-unsuited.ts";
import { dead } from "./meter-test.ts";
import { modesOf } from "./mode-names.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const conductorsTooFew: Rule = {
	code: "conductors-too-few",
	level: "danger",
	what: "A cable has no conductor for something that what it feeds needs: its ground, its neutral, or its second hot.",
	why: "Without a ground, a fault makes a metal case live and no breaker opens; without a neutral or a second hot it does not run.",
	help: "Pull a cable with the conductor that is missing.",
	basis:
		"NFPA 70 250.134, 250.118 and 406.4 (grounds), 300.3(B) (neutrals), recalled; IEC 60364-4-41 in IEC countries, recalled",
	meter: [
		dead(
			"from the terminal of the device to the bar of the panel that it belongs to, the bond open and every load unplugged",
			"no continuity",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit fan from LC breaker 15 A by cord 14-2
  8 ft to f1: fan 60 W
`,
		`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit heat from LC breaker 20 A two-pole by 12-2
  15 ft to h1: heater 3500 W 240 V, no neutral
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit fan from LC breaker 15 A by 14-2
  8 ft to f1: fan 60 W
`,
		`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit heat from LC breaker 20 A two-pole by 12-2
  15 ft white marked red at both ends to h1: heater 3500 W 240 V, no neutral
`,
	],
	check: (analysis) => {
		const shortages = new Map<string, Shortage>();
		for (const state of analysis.states) findShortages(analysis.circuit, state, shortages);
		return [
			...[...shortages.values()].map((shortage) => tell(analysis, shortage)),
			...findOverModes(analysis, (state) => findPartedGrounds(analysis.circuit, state, shortages)),
		];
	},
};

/** Cables with a live hot and no ground between boxes that both have one, by another way. */
function findPartedGrounds(circuit: Circuit, state: ModeState, told: ReadonlyMap<string, Shortage>): Finding[] {
	const cables = circuit.cables.filter(
		(cable) => cable.system === "ac" && !told.has(cable.tag) && !rolesOf(circuit, cable).has("ground"),
	);
	if (cables.length === 0) return [];
	const grounds = new Map<string, number>();
	for (const { index, role, enclosure } of circuit.points)
		if (role === "ground" && state.ground.has(index) && !grounds.has(enclosure.name))
			grounds.set(enclosure.name, index);
	const roughedIn = new Set(circuit.plan.runs.flatMap(({ name, roughedIn }) => (roughedIn ? [name] : [])));
	return cables.flatMap((cable): Finding[] => {
		const { conductors, from, to, run } = cable;
		// What is only run asks for the core as well: later it lies in the wall.
		const isComing = roughedIn.has(run) && grounds.has(from.name);
		if (isComing && !hasGroundBeside(circuit, cable)) return [tellComing(cable)];
		const ground = grounds.get(to.name);
		const isLive = conductors.some((index) =>
			circuit.conductors[index]?.ends.some(({ point }) => point !== undefined && state.exposure.has(point)),
		);
		if (ground === undefined || !grounds.has(from.name) || !isLive || hasGroundBeside(circuit, cable)) return [];
		return [tellParted(state, cable, ground)];
	});
}

/**
 * Whether a ground runs between the same two boxes by itself, or in another cable of the run; that of another circuit is its own.
 * One with a galvanic isolator in its way runs there all the same.
 */
function hasGroundBeside(circuit: Circuit, { from, to, run }: Cable): boolean {
	if (hasGroundBetween(circuit, from, to, run)) return true;
	return circuit.parts.some(
		({ kind, enclosure }) =>
			kind === "galvanic-isolator" &&
			hasGroundBetween(circuit, from, enclosure, run) &&
			hasGroundBetween(circuit, enclosure, to, run),
	);
}

function hasGroundBetween(circuit: Circuit, from: Enclosure, to: Enclosure, run: string): boolean {
	return circuit.cables.some((other) => {
		const isBeside = (other.from === from && other.to === to) || (other.from === to && other.to === from);
		const roles = isBeside ? rolesOf(circuit, other) : noRoles;
		return roles.has("ground") && (other.run === run || !roles.has("hot"));
	});
}

function tellComing(cable: Cable): Finding {
	return finding({
		code: conductorsTooFew.code,
		level: "error",
		title: `${cable.tag} (${cable.make}) has no ground for what comes to ${cable.to.name}`,
		span: cable.span,
		label: "no ground",
		marks: [cable.tag, cable.to.name],
		key: `${conductorsTooFew.code}@${cable.tag}`,
		why: "Once the wall is closed nobody pulls a ground in: what is put on later has none.",
		help: `Pull a cable with a ground conductor from ${cable.from.name} to ${cable.to.name}, as \`12-2\` and \`3G2.5\` have.`,
		basis: conductorsTooFew.basis,
	});
}

function tellParted(state: ModeState, cable: Cable, ground: number): Finding {
	return finding({
		code: conductorsTooFew.code,
		level: "error",
		title: `${cable.tag} (${cable.make}) has no ground: ${cable.to.name} gets its own by another way than its hot`,
		span: cable.span,
		label: "no ground",
		also: [{ span: cable.to.span, label: cable.to.name }],
		marks: [cable.tag, cable.to.name],
		path: state.ground.pathTo(ground),
		key: `${conductorsTooFew.code}@${cable.tag}`,
		why: "What a fault drives then runs through bonds that were made for something else, on a long way round: the breaker opens late or not at all. The rule is recalled, not read: look it up in the code in force.",
		help: `Pull a cable with a ground conductor from ${cable.from.name} to ${cable.to.name}, and land it at both ends.`,
		basis: "NFPA 70 300.3(B), recalled; IEC 60364-5-54 543.6, recalled",
	});
}

type Needed = "ground" | "neutral" | "hot2";
const needs = ["ground", "neutral", "hot2"] as const satisfies readonly Needed[];
const words = { ground: "ground", neutral: "neutral", hot2: "second hot" } as const;

/** A cable, what it lacks, and what goes without. */
interface Shortage {
	readonly cable: Cable;
	readonly lacking: Set<Needed>;
	/** Names of points that go without. */
	readonly without: Set<string>;
	/** The way of the hot to the first of them. */
	readonly path: readonly PathStep[];
	readonly modes: Set<string>;
}

/** On the way of the hot to a point: for each need the first cable that lacks its conductor, and the box that it leads into. */
type Lacks = Partial<Record<Needed, { readonly cable: Cable; readonly box: string }>>;

function findShortages(circuit: Circuit, state: ModeState, shortages: Map<string, Shortage>): void {
	const wanting = wants(circuit, state);
	if (wanting.length === 0) return;
	const lacks = traceLacks(circuit, state);
	const arriving = rolesArriving(circuit, state);
	for (const { point, need, from } of wanting) {
		const lack = lacks.get(from)?.[need];
		// Where the conductor comes in by another cable, it is there and only not joined: that is told elsewhere.
		if (lack === undefined || arriving.get(lack.box)?.has(need) === true) continue;
		const known = shortages.get(lack.cable.tag);
		const shortage = known ?? {
			cable: lack.cable,
			lacking: new Set(),
			without: new Set(),
			path: state.poles.reachOf(from, "hot")?.pathTo(from) ?? [],
			modes: new Set(),
		};
		shortage.lacking.add(need);
		shortage.without.add(nameOf(circuit, point));
		shortage.modes.add(state.mode.name);
		shortages.set(lack.cable.tag, shortage);
	}
}

/** A point by its name; a bar's ports are all one, so that the bar is named. */
function nameOf(circuit: Circuit, point: number): string {
	const target = circuit.points[point];
	if (target?.kind !== "terminal") return target?.name ?? "";
	const isBar = circuit.partByName.get(target.part)?.face.traits.includes("ground-bar") === true;
	return isBar ? target.part : target.name;
}

/** Points that go without, with a hot point of the same part or box from which the way back is looked at. */
function wants(circuit: Circuit, state: ModeState): { point: number; need: Needed; from: number }[] {
	const found: { point: number; need: Needed; from: number }[] = [];
	const hasGround = state.poles.poles.some((pole) => pole.role === "ground");
	const hasNeutral = state.poles.poles.some((pole) => pole.role === "neutral");
	const liveIn = new Map<string, number>();
	for (const point of state.exposure.keys()) {
		const box = circuit.points[point]?.enclosure.name ?? "";
		if (!liveIn.has(box)) liveIn.set(box, point);
	}
	if (hasGround)
		for (const point of circuit.points) {
			const from = liveIn.get(point.enclosure.name);
			const isLanding = point.kind === "body" || (point.kind === "terminal" && point.capacity > 0);
			if (from !== undefined && isLanding && point.role === "ground" && !state.ground.has(point.index))
				found.push({ point: point.index, need: "ground", from });
		}
	for (const load of circuit.loads) {
		const part = circuit.partByName.get(load.part);
		const from = part?.points.find((point) => state.exposure.has(point));
		if (from === undefined) continue;
		for (const point of load.between) {
			const role = circuit.points[point]?.role;
			if (role === "neutral" && hasNeutral && !state.poles.rolesAt(point).has("neutral"))
				found.push({ point, need: "neutral", from });
			else if (role === "hot2" && !state.exposure.has(point)) found.push({ point, need: "hot2", from });
		}
	}
	return found;
}

/** For every point a hot reaches, what the cables on its way lack. */
function traceLacks(circuit: Circuit, { exposure, poles }: ModeState): ReadonlyMap<number, Lacks> {
	const hasTwoLegs = poles.poles.some((pole) => pole.role === "hot2");
	const lacks = new Map<number, Lacks>();
	const roles = new Map(circuit.cables.map((cable) => [cable.tag, rolesOf(circuit, cable)]));
	for (const [point, { by }] of exposure) {
		const before = (by === undefined ? undefined : lacks.get(by.from)) ?? {};
		const tag = by?.by.kind === "conductor" ? circuit.conductors[by.by.index]?.cable : undefined;
		const cable = tag === undefined ? undefined : circuit.cableByTag.get(tag);
		const box = circuit.points[point]?.enclosure.name ?? "";
		lacks.set(point, cable === undefined ? before : lacksBehind(before, cable, roles.get(cable.tag) ?? noRoles, box));
		// On one leg a second hot can only begin at a switch in the box before, so the cable that arrives is the one to change.
		if (!hasTwoLegs && cable !== undefined && lacks.get(point)?.hot2 !== undefined)
			lacks.set(point, { ...lacks.get(point), hot2: { cable, box } });
	}
	return lacks;
}

function lacksBehind(before: Lacks, cable: Cable, roles: ReadonlySet<string>, box: string): Lacks {
	const behind: { -readonly [Need in Needed]?: { readonly cable: Cable; readonly box: string } } = { ...before };
	for (const need of needs)
		if (!roles.has(need)) behind[need] ??= { cable, box };
		// A second hot can begin anywhere, at a switch or a second pole; a ground or neutral only at the source.
		else if (need === "hot2") delete behind.hot2;
	return behind;
}

/** What comes into each box from its source, or lies there unjoined, by a conductor of that role. */
function rolesArriving(circuit: Circuit, state: ModeState): ReadonlyMap<string, ReadonlySet<string>> {
	const arriving = new Map<string, Set<string>>();
	for (const { role, cable, ends } of circuit.conductors) {
		if (cable === undefined) continue;
		const isFed = ends.some(
			({ point }) =>
				point !== undefined &&
				(role === "ground"
					? state.ground.has(point)
					: role === "hot2"
						? state.exposure.has(point)
						: state.poles.rolesAt(point).has(role)),
		);
		if (!isFed) continue;
		for (const { enclosure } of ends) {
			const here = arriving.get(enclosure.name) ?? new Set();
			arriving.set(enclosure.name, here.add(role));
		}
	}
	return arriving;
}

function rolesOf(circuit: Circuit, cable: Cable): ReadonlySet<string> {
	return new Set(cable.conductors.map((index) => circuit.conductors[index]?.role ?? ""));
}

const noRoles: ReadonlySet<string> = new Set();

function tell(analysis: Analysis, { cable, lacking, without, path, modes }: Shortage): Finding {
	const names = [...without];
	const missing = listNames(needs.filter((need) => lacking.has(need)).map((need) => words[need]));
	const isDanger = lacking.has("ground");
	return finding({
		code: conductorsTooFew.code,
		level: isDanger ? "danger" : "error",
		title: `${cable.tag} (${cable.make}) has no ${missing.replace(" and ", " and no ")} for ${listNames(names)}`,
		span: cable.span,
		label: `no ${missing}`,
		also: names.slice(0, 8).flatMap((name) => {
			const { points, pointByName, partByName } = analysis.circuit;
			const span = points[pointByName.get(name) ?? -1]?.span ?? partByName.get(name)?.span;
			return span === undefined || span === cable.span ? [] : [{ span, label: name }];
		}),
		marks: [cable.tag, ...names],
		path,
		key: `${conductorsTooFew.code}@${cable.tag}`,
		why: isDanger
			? "When a hot touches metal there, it stays live until somebody touches it, and no breaker opens."
			: `${listNames(names)} cannot work without it, and whoever finds it dead may borrow a wire that is not theirs.`,
		help: tellCure(analysis, cable, lacking, names),
		modes: modesOf(analysis, modes),
		basis: conductorsTooFew.basis,
		// What is no cable for this circuit at all is told as that.
		...(cable.system === "dc" ? { consequenceOf: keyOfCable(cable.tag) } : {}),
	});
}

function tellCure(
	{ circuit }: Analysis,
	{ from, to, conductors }: Cable,
	lacking: ReadonlySet<Needed>,
	names: readonly string[],
): string {
	if (lacking.has("ground"))
		return `Pull a cable with a ground conductor from ${from.name} to ${to.name}, as \`12-2\` and \`3G2.5\` have.`;
	const parts = names.flatMap((name) => circuit.points[circuit.pointByName.get(name) ?? -1] ?? []);
	const takesNeutral = parts.some(
		(point) =>
			point.kind === "terminal" &&
			circuit.partByName.get(point.part)?.points.some((other) => circuit.points[other]?.role === "neutral"),
	);
	const white = conductors.map((index) => circuit.conductors[index]).find((core) => core?.colour === "white");
	return white === undefined || lacking.has("neutral") || takesNeutral
		? `Pull a cable with one conductor more from ${from.name} to ${to.name}.`
		: `Nothing at ${to.name} takes a neutral, so the white may be the second hot: mark it at both ends, \`white marked red at both ends\`.`;
}
