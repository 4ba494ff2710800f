// Conductors whose colour says something else than what they carry, and that are not re-marked.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { concerns } from "../analysis/network.ts";
import type { PoleSort } from "../analysis/poles.ts";
import { type Root, rootOfConductor, rootOfEnd } from "../analysis/roots.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { type ColourRole, colourSuits, coloursOf } from "../handbook/colour-roles.ts";
import { colourParts, findColour } from "../handbook/colours.ts";
import { citation } from "../handbook/provenance.ts";
import type { Settings } from "../plan/plan.ts";
import { keyOfCable } from "./cable-unsuited.ts";
import { findMisleadingDirect } from "./direct-colours.ts";
import { dead, live } from "./meter-test.ts";
import { keyOfMistake, placeMistake } from "./mistake-wording.ts";
import { findOverDirect, findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const colourMisleading: Rule = {
	code: "colour-misleading",
	level: "error",
	what: "A conductor carries something else than its colour says, and is not re-marked at both ends.",
	why: "Whoever opens the box next trusts the colour and touches a live wire, or joins hot to ground.",
	help: "Exchange the wires, or re-mark a white that carries the hot at both ends.",
	basis: "NFPA 70 200.6; NFPA 70 250.119; NFPA 70 200.7, recalled; ABYC E-11; IEC 60445",
	meter: [
		dead("from the white, green or bare end to the load terminal of the breaker, every load unplugged", "continuity"),
		live(
			"loading voltage tester",
			"between the white and ground, and between a green or bare conductor and the ground bar",
			"any voltage; a neutral under load gives a volt or two",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.black on LC.neutral
  bunks-1.white on LC.1.load
at b1
  bunks-1.black on b1.neutral
  bunks-1.white on b1.hot
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  7 ft to s1: switch
at l1
  join lights-1.black, lights-2.black
  lights-1.white on l1.neutral
  lights-2.white on l1.hot
at s1
  lights-2.black on s1.line
  lights-2.white on s1.load
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  7 ft white marked black at both ends to s1: switch
at l1
  join lights-1.black, lights-2.black
  lights-1.white on l1.neutral
  lights-2.white on l1.hot
at s1
  lights-2.black on s1.line
  lights-2.white on s1.load
`,
	],
	check: (analysis) => [
		...findOverModes(analysis, (state) => checkMode(analysis, state)),
		...findOverDirect(analysis, (direct) => findMisleadingDirect(analysis, direct, colourMisleading.code)),
	],
};

/** A conductor, what it carries, and the mistake it comes from. */
interface Misleading {
	readonly conductor: Conductor;
	readonly carries: PoleSort;
	readonly root: Root;
}

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const { circuit } = analysis;
	const { crossings } = state;
	const bridges = new Set(crossings.bridges.map((bridge) => bridge.conductor));
	const suits = rememberSuits(circuit.plan.settings);
	const found = circuit.conductors.flatMap((conductor): Misleading[] => {
		// A pigtail has no colour of its own to mislead with, and a conductor that joins two poles is told as that.
		if (conductor.sort === "pigtail" || bridges.has(conductor.index) || !concerns(state.network, conductor)) return [];
		const carries = carriedBy(state, conductor);
		return carries === undefined || suits(conductor, carries)
			? []
			: [{ conductor, carries, root: rootOf(analysis, state, conductor, carries) }];
	});
	return [...groupBy(found, ({ root }) => root.key).values()].flatMap((group) =>
		group[0] === undefined ? [] : [tell(analysis, state, group[0].root, group)],
	);
}

/** The one sort of pole that a conductor is joined to; undefined for a dead one. */
function carriedBy({ crossings }: ModeState, { ends }: Conductor): PoleSort | undefined {
	for (const { point } of ends) {
		const [sort] = point === undefined ? [] : crossings.poles.sortsAt(point);
		if (sort !== undefined) return sort;
	}
	return undefined;
}

/** The same question, asked once for each colour and what it carries. */
function rememberSuits(settings: Settings): (conductor: Conductor, carries: PoleSort) => boolean {
	const known = new Map<string, boolean>();
	return (conductor, carries) => {
		const [one, other] = conductor.ends;
		if (one.marked !== undefined || other.marked !== undefined) return suitsColour(settings, conductor, carries);
		const key = `${conductor.colour} ${carries}`;
		const there = known.get(key) ?? suitsColour(settings, conductor, carries);
		known.set(key, there);
		return there;
	};
}

function suitsColour(settings: Settings, conductor: Conductor, carries: PoleSort): boolean {
	// Green and bare cannot be made anything else by a mark.
	if (carries !== "ground" && isGroundColour(conductor)) return false;
	return conductor.ends.every(({ marked }) => colourFits(settings, marked ?? conductor.colour, carries));
}

function colourFits({ region, rules }: Settings, word: string, carries: PoleSort): boolean {
	const colour = findColour(word);
	const roles: readonly ColourRole[] = carries === "hot" ? ["hot", "hot2"] : [carries];
	return (
		colour === undefined ||
		roles.some((role) => {
			const colours = coloursOf(region, role, rules);
			return colours === undefined || colourSuits(colours, colour);
		})
	);
}

function isGroundColour({ colour }: Conductor): boolean {
	const found = findColour(colour);
	if (found === undefined) return false;
	const { base } = colourParts(found);
	return base === "bare" || base === "green";
}

function rootOf(analysis: Analysis, { crossings }: ModeState, conductor: Conductor, carries: PoleSort): Root {
	const { circuit, landings } = analysis;
	for (const { point } of conductor.ends) {
		if (point === undefined) continue;
		const by = crossings.poles.reachOf(point, carries)?.cameBy(point)?.by;
		const root =
			by?.kind === "conductor" && by.index === conductor.index ? crossings.rootAt(point, carries) : undefined;
		if (root !== undefined) return root;
	}
	const misplaced = landings.misplacedAt(conductor.index, 0) ?? landings.misplacedAt(conductor.index, 1);
	return misplaced === undefined ? rootOfConductor(conductor, 0, circuit) : rootOfEnd(misplaced, circuit, landings);
}

function tell(analysis: Analysis, state: ModeState, root: Root, group: readonly Misleading[]): Finding {
	const { circuit } = analysis;
	const { strays } = state.crossings;
	const switched = strays.some((stray) => stray.effect === undefined && stray.root.key === root.key);
	const ofCable = keyOfWrongCable(circuit, group);
	const worse =
		keyOfMistake(state.crossings, root.key) ?? (switched ? `switch-in-neutral@${root.key}` : undefined) ?? ofCable;
	const isDanger = group.some(({ conductor, carries }) => carries !== "ground" && isGroundColour(conductor));
	const told = group.map(({ conductor, carries }) => `${conductor.name} carries the ${carries}`);
	const place = placeMistake(analysis, state, root, []);
	return finding({
		code: colourMisleading.code,
		level: isDanger ? "danger" : "error",
		title: `${listNames(told, 3)}, which the colour does not say`,
		label: "the colour misleads",
		...place,
		marks: [...new Set([...group.map(({ conductor }) => conductor.name), ...place.marks])],
		why: isDanger
			? "A green or bare wire is taken for safe to touch by everybody, and is often bare along its whole length."
			: colourMisleading.why,
		help: worse === undefined || worse === ofCable || root.halves.length === 0 ? tellCure(circuit, group) : place.help,
		basis: basisOf(circuit.plan.settings, group),
		key: `${colourMisleading.code}@${root.key}`,
		...(worse === undefined ? {} : { consequenceOf: worse }),
	});
}

/** The key of the finding on the cable itself: one for direct current, or one whose white is marked as a second hot at one end only. */
function keyOfWrongCable(circuit: Circuit, [first]: readonly Misleading[]): string | undefined {
	const cable = circuit.cableByTag.get(first?.conductor.cable ?? "");
	if (first === undefined || cable === undefined) return undefined;
	if (cable.system === "dc") return keyOfCable(cable.tag);
	const isHalfMarked =
		first.carries === "neutral" &&
		first.conductor.role === "neutral" &&
		first.conductor.ends.some(({ marked }) => marked !== undefined);
	return isHalfMarked ? `conductors-too-few@${cable.tag}` : undefined;
}

function tellCure({ plan: { settings } }: Circuit, group: readonly Misleading[]): string {
	const [first] = group;
	const canBeMarked =
		group.length === 1 &&
		first !== undefined &&
		first.carries === "hot" &&
		!isGroundColour(first.conductor) &&
		colourFits(settings, first.conductor.colour, "neutral");
	const isWhole = group.length === 1 && first?.conductor.ends.every(({ marked }) => marked === undefined) === true;
	const usual = first === undefined ? undefined : coloursOf(settings.region, first.carries, settings.rules)?.usual[0];
	const half = group.find(({ conductor: { ends } }) => new Set(ends.map(({ marked }) => marked)).size > 1);
	if (isWhole && first.conductor.sort === "jumper" && usual !== undefined)
		return `Use a ${usual} wire in place of ${first.conductor.name}.`;
	if (half !== undefined) return `Mark ${half.conductor.name} in one colour at both ends, or at none.`;
	if (!canBeMarked && isWhole && first.conductor.role === first.carries && usual !== undefined)
		return `Use a cable in which the ${first.carries} is ${usual} in place of ${first.conductor.cable ?? first.conductor.name}.`;
	return canBeMarked
		? `Re-mark ${first.conductor.name} black or red at both ends (\`${first.conductor.colour} marked black at both ends\`), or use a wire of the right colour.`
		: `Exchange ${listNames(group.map(({ conductor }) => conductor.name))} at both ends so that each carries what its colour says.`;
}

function basisOf({ region, rules }: Settings, [first]: readonly Misleading[]): string {
	const row = first === undefined ? undefined : coloursOf(region, first.carries, rules);
	return row === undefined ? colourMisleading.basis : citation(row.provenance);
}
