// How a mistake at one place is told: what is on what, what hangs on it, and what to move where.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Crossings, Effect, Stray } from "../analysis/crossings.ts";
import type { Misplaced } from "../analysis/landings.ts";
import { isHot, type PoleSort } from "../analysis/poles.ts";
import type { Root } from "../analysis/roots.ts";
import type { Finding, LabelledSpan } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit } from "../circuit/circuit.ts";
import { cureSwitchLoop } from "./loop-wording.ts";

/** The places, marks and way of a finding on a mistake. */
export type MistakeSlots = Pick<Finding, "span" | "also" | "marks" | "path" | "help">;

/** Where a mistake is, what it reaches, and how to put it right. */
export function placeMistake(
	analysis: Analysis,
	state: ModeState,
	root: Root,
	victims: readonly number[],
): MistakeSlots {
	const { circuit } = analysis;
	const first = root.halves[0];
	const conductors = root.halves.map((half) => circuit.conductors[half.conductor]?.name ?? "");
	const points = root.halves.map((half) => circuit.points[half.point]?.name ?? "");
	const hit = victims.map((point) => circuit.points[point]?.name ?? "");
	const own = root.end === undefined ? [] : [circuit.conductors[root.end.conductor]?.name ?? ""];
	return {
		span: root.span,
		also: otherPlaces(circuit, root, victims),
		marks: [...new Set([...points, ...conductors, ...own, ...hit.slice(0, mostShown)])],
		path: wayTo(state.crossings, victims[0] ?? first?.point),
		help: tellCure(analysis, root),
	};
}

/** What is on what: `bunks-1.black is on b1.neutral and bunks-1.white on b1.hot`. */
export function tellRoot({ circuit, landings }: Analysis, root: Root): string {
	if (root.halves.length === 0) {
		const conductor = root.end === undefined ? undefined : circuit.conductors[root.end.conductor];
		return `by way of ${conductor?.name ?? root.key.slice(0, root.key.lastIndexOf("@"))}`;
	}
	const told = root.halves.map(({ conductor, point }, index) => {
		const name = tellConductor(circuit, conductor);
		if (circuit.conductors[conductor]?.sort === "jumper") return `the jumper ${name}`;
		return `${name}${index === 0 ? " is" : ""} ${tellLanded(circuit, point, landings.sortAt(point))}`;
	});
	// Both ends of a jumper may be misplaced: it is one thing.
	return listNames([...new Set(told)]);
}

/** A conductor by its name; a pigtail, which nobody writes, by the terminal that it serves. */
export function tellConductor({ conductors, points }: Circuit, index: number): string {
	const conductor = conductors[index];
	if (conductor?.sort !== "pigtail") return conductor?.name ?? "";
	const served = conductor.ends.map(({ point }) => (point === undefined ? undefined : points[point]));
	return served.find((point) => point !== undefined && point.kind !== "splice")?.name ?? conductor.name;
}

/** Where an end is: `on b1.neutral`, or in a joint `with the neutrals of b1`. */
export function tellLanded(circuit: Circuit, point: number, sort: PoleSort): string {
	return `${circuit.points[point]?.kind === "splice" ? "with" : "on"} ${tellPoint(circuit, point, sort)}`;
}

/** A point in words: a terminal by its name, a case by its box, a joint by what it joins. */
export function tellPoint(circuit: Circuit, point: number, sort: PoleSort): string {
	const found = circuit.points[point];
	if (found?.kind === "body") return `the case of ${found.enclosure.name}`;
	return found?.kind === "splice" ? `the ${sort}s of ${found.enclosure.name}` : (found?.name ?? "");
}

/** Names of the things that points belong to; where devices are among them, panels, breakers and sources are left out. */
export function tellVictims(circuit: Circuit, points: readonly number[]): string {
	return listNames(victimsOf(circuit, points));
}

/** The names of the devices, or where there is none of the other parts, that points belong to, each once. */
export function victimsOf(circuit: Circuit, points: readonly number[]): readonly string[] {
	const owners = new Map<string, boolean>();
	for (const index of points) {
		const point = circuit.points[index];
		if (point === undefined) continue;
		const part = point.kind === "terminal" ? circuit.partByName.get(point.part) : undefined;
		owners.set(part === undefined ? point.enclosure.name : part.name, point.enclosure.sort === "box");
	}
	const devices = [...owners].filter(([, isDevice]) => isDevice);
	return (devices.length > 0 ? devices : [...owners]).map(([name]) => name);
}

/** The codes of the rules that tell each effect of a mistake. */
export const codeOfEffect = {
	shorted: "poles-joined",
	paralleled: "sources-paralleled",
	reversed: "polarity-reversed",
	bridged: "neutral-not-isolated",
	exchanged: "neutral-ground-exchanged",
} as const satisfies Record<Effect, string>;

/** The key of the finding on a mistake: that of the worst it does. Undefined for a mistake that does nothing in this mode. */
export function keyOfMistake(crossings: Crossings, root: string): string | undefined {
	const effect = crossings.effectOf(root);
	return effect === undefined ? undefined : `${codeOfEffect[effect]}@${root}`;
}

/** The slots that say of which finding this one is a consequence, where its mistake does something worse. */
export function followsWorse(crossings: Crossings, root: Root, effect: Effect): Pick<Finding, "key" | "consequenceOf"> {
	const key = `${codeOfEffect[effect]}@${root.key}`;
	const worst = keyOfMistake(crossings, root.key);
	if (worst !== undefined && worst !== key) return { key, consequenceOf: worst };
	const joint = effect === "shorted" || effect === "paralleled" ? undefined : keyOfJoint(crossings, root);
	return joint === undefined ? { key } : { key, consequenceOf: joint };
}

/** The key of the short circuit in the very joint that a mistake is made in: all that is wrongly in it is one cause. */
function keyOfJoint({ bridges }: Crossings, { key, halves }: Root): string | undefined {
	const points = new Set(halves.map(({ point }) => point));
	const bridge = bridges.find(({ root, between }) => {
		const isShort = between.some((pole) => isHot(pole.role));
		return isShort && root.key !== key && root.halves.some(({ point }) => points.has(point));
	});
	return bridge === undefined ? undefined : `${codeOfEffect.shorted}@${bridge.root.key}`;
}

/** Strays by the mistake they come from. */
export function groupStrays(strays: readonly Stray[]): readonly { root: Root; strays: readonly Stray[] }[] {
	return [...groupBy(strays, ({ root }) => root.key).values()].flatMap((group) =>
		group[0] === undefined ? [] : [{ root: group[0].root, strays: group }],
	);
}

/** More places than this are not pointed at one by one. */
const mostShown = 8;

function otherPlaces(circuit: Circuit, root: Root, victims: readonly number[]): LabelledSpan[] {
	const places = new Map<string, LabelledSpan>();
	const add = (place: LabelledSpan): void => {
		const { line, column } = place.span;
		if (line !== root.span.line || column !== root.span.column) places.set(`${line}:${column}`, place);
	};
	for (const half of root.halves.slice(1)) {
		const conductor = circuit.conductors[half.conductor];
		if (conductor !== undefined) add({ span: conductor.ends[half.which].span, label: "the other half" });
	}
	for (const index of victims) {
		const point = circuit.points[index];
		if (point !== undefined && places.size < mostShown) add({ span: point.span, label: point.name });
	}
	return [...places.values()];
}

function wayTo({ poles }: Crossings, point: number | undefined): Finding["path"] {
	if (point === undefined) return [];
	const reach = (["hot", "neutral", "ground"] as const)
		.map((sort) => poles.reachOf(point, sort))
		.find((found) => found);
	return reach?.pathTo(point) ?? [];
}

function tellCure(analysis: Analysis, { halves, enclosure, end }: Root): string {
	const { circuit } = analysis;
	const nameOf = (half: Misplaced): string => tellConductor(circuit, half.conductor);
	const [first, second] = halves;
	if (first === undefined) {
		const conductor = end === undefined ? undefined : circuit.conductors[end.conductor];
		return `Look at ${conductor?.name ?? "the wiring"} in ${enclosure} and land it where it belongs.`;
	}
	if (circuit.conductors[first.conductor]?.sort === "jumper") {
		const other = second?.conductor === first.conductor ? second.lands : first.carries;
		return `Take ${nameOf(first)} out of ${enclosure}: nothing may join ${other} and ${first.lands} there.`;
	}
	// To exchange two ends there could join both wires of the loop, and the switch would be shorted.
	const loop = halves.some(({ carries, lands }) => carries === "ground" || lands === "ground")
		? undefined
		: cureSwitchLoop(analysis, enclosure);
	if (loop !== undefined) return loop;
	const together = sharingJoint(analysis, first);
	if (together.length > 1 && halves.every(({ point, carries }) => point === first.point && carries === first.carries))
		return `In ${enclosure}, take ${listNames(together, 8)} out of ${tellPoint(circuit, first.point, first.lands)}, and ${tellNewJoint(analysis, first, together)}.`;
	if (second === undefined)
		return `In ${enclosure}, move ${nameOf(first)} from ${tellPoint(circuit, first.point, first.lands)} to ${tellTarget(analysis, first)}.`;
	if (halves.length === 2 && first.carries === second.lands && first.lands === second.carries)
		return `In ${enclosure}, exchange ${nameOf(first)} and ${nameOf(second)}.`;
	return `In ${enclosure}, land ${listNames(halves.map((half) => `${nameOf(half)} on ${tellTarget(analysis, half)}`))}.`;
}

/** Everything of one sort that is wrongly in one joint with an end, it first. */
function sharingJoint({ circuit, landings }: Analysis, first: Misplaced): readonly string[] {
	if (circuit.points[first.point]?.kind !== "splice") return [];
	const here = landings.misplaced.filter(({ point, carries }) => point === first.point && carries === first.carries);
	return [...new Set([first, ...here].map(({ conductor }) => tellConductor(circuit, conductor)))];
}

/** The joint that ends of one sort go to: that which is there, else one of their own. */
function tellNewJoint(
	{ circuit, landings }: Analysis,
	{ point, carries }: Misplaced,
	names: readonly string[],
): string {
	const box = circuit.points[point]?.enclosure.name;
	const others = circuit.points.some(
		({ kind, index, enclosure }) => kind === "splice" && enclosure.name === box && landings.sortAt(index) === carries,
	);
	return others ? `put them with the ${carries}s there` : `join them by themselves: \`join ${names.join(", ")}\``;
}

/** Where an end belongs: a free terminal of its sort in the box, or the others of its sort. */
function tellTarget({ circuit, landings }: Analysis, half: Misplaced): string {
	const conductor = circuit.conductors[half.conductor];
	const box = conductor?.ends[half.which].enclosure.name ?? "";
	const free = landings.freeTerminal(box, half.carries);
	return free?.name ?? `the ${half.carries}s of ${box}`;
}
