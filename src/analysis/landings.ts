// What every landed end is for by its colour, what it landed on is for, and which do not go together. The same in every mode.
import { groupBy } from "../base/group.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { colourSuits, coloursOf } from "../handbook/colour-roles.ts";
import { findColour } from "../handbook/colours.ts";
import { type PoleSort, sortOfRole } from "./poles.ts";

/** An end that is on a point of another sort than its colour says. No fault by itself: what reaches the point decides. */
export interface Misplaced {
	readonly conductor: number;
	readonly which: 0 | 1;
	readonly point: number;
	/** What its colour, or the colour it is re-marked with there, says it is for. */
	readonly carries: PoleSort;
	/** What the point is for. */
	readonly lands: PoleSort;
	/** The place of the mistake, `bunks-1@b1`: the same for all ends that were exchanged with one another there. */
	readonly root: string;
}

/** The sorts of all points and ends of a circuit. */
export interface Landings {
	/** A terminal's own sort; for a splice that of most of its members. */
	sortAt(point: number): PoleSort;
	/** What an end is for by its colour there; for a pigtail that of the terminal it serves. */
	carriedBy(conductor: Conductor, which: 0 | 1): PoleSort;
	/** In the order of the conductors. */
	readonly misplaced: readonly Misplaced[];
	misplacedAt(conductor: number, which: 0 | 1): Misplaced | undefined;
	/** Every misplaced end of one mistake. */
	halvesOf(root: string): readonly Misplaced[];
}

/** Sorts every landing of a circuit. */
export function sortLandings(circuit: Circuit): Landings {
	const carriedBy = (conductor: Conductor, which: 0 | 1): PoleSort => carried(circuit, conductor, which);
	const sorts = sortPoints(circuit, carriedBy);
	const found: Omit<Misplaced, "root">[] = [];
	for (const conductor of circuit.conductors)
		for (const which of bothEnds) {
			const { point } = conductor.ends[which];
			if (point === undefined) continue;
			const [carries, lands] = [carriedBy(conductor, which), sorts[point] ?? "hot"];
			if (carries !== lands) found.push({ conductor: conductor.index, which, point, carries, lands });
		}
	const roots = nameRoots(circuit, found);
	const misplaced = found.map((end): Misplaced => ({ ...end, root: roots.get(placeOf(circuit, end)) ?? "" }));
	const byEnd = new Map(misplaced.map((end) => [end.conductor * 2 + end.which, end]));
	const byRoot = groupBy(misplaced, (end) => end.root);
	return {
		sortAt: (point) => sorts[point] ?? "hot",
		carriedBy,
		misplaced,
		misplacedAt: (conductor, which) => byEnd.get(conductor * 2 + which),
		halvesOf: (root) => byRoot.get(root) ?? [],
	};
}

/** Both ends of a conductor, the one toward `from` first. */
export const bothEnds = [0, 1] as const;

/** The name of a conductor in the key of a root: its cable's tag, the part a pigtail serves, or a jumper's own name. */
export function bundleOf(circuit: Circuit, conductor: Conductor): string {
	if (conductor.cable !== undefined) return conductor.cable;
	const [first, second] = conductor.ends.map((end) =>
		end.point === undefined ? undefined : circuit.points[end.point],
	);
	if (first?.kind === "terminal" && second?.kind === "terminal") return conductor.name;
	return first?.kind === "terminal" ? first.part : conductor.name;
}

function carried(circuit: Circuit, conductor: Conductor, which: 0 | 1): PoleSort {
	const own = sortOfRole(conductor.role);
	const { marked } = conductor.ends[which];
	if (marked !== undefined) return sortOfMark(circuit, marked, own);
	// A pigtail's colour is that of the first wire of its joint; what it is for is what the terminal on it is for.
	const [first, second] = conductor.ends.map((end) =>
		end.point === undefined ? undefined : circuit.points[end.point],
	);
	if (conductor.sort === "pigtail" && first !== undefined && first.kind !== "splice" && second?.kind === "splice")
		return sortOfRole(first.role);
	return own;
}

/** What a re-marking says: the end's own sort where the colour suits it, else the first that it suits. */
function sortOfMark(circuit: Circuit, marked: string, own: PoleSort): PoleSort {
	const { region, rules } = circuit.plan.settings;
	const colour = findColour(marked);
	if (colour === undefined) return own;
	const fitting = ([own, "hot", "neutral", "ground"] as const).find((role) => {
		const colours = coloursOf(region, role, rules);
		return colours !== undefined && colourSuits(colours, colour);
	});
	return fitting ?? own;
}

/** The sort of every point: a splice is what most of its members are; a pigtail's vote, then the first conductor's, settles a tie. */
function sortPoints(circuit: Circuit, carriedBy: Landings["carriedBy"]): PoleSort[] {
	const votes = new Map<number, Map<PoleSort, number>>();
	for (const conductor of circuit.conductors)
		for (const which of bothEnds) {
			const { point } = conductor.ends[which];
			if (point === undefined || circuit.points[point]?.kind !== "splice") continue;
			const here = votes.get(point) ?? new Map<PoleSort, number>();
			votes.set(point, here);
			const sort = carriedBy(conductor, which);
			here.set(sort, (here.get(sort) ?? 0) + (conductor.sort === "pigtail" ? pigtailVote : 1));
		}
	return circuit.points.map((point): PoleSort => {
		if (point.kind !== "splice") return sortOfRole(point.role);
		let best: PoleSort = sortOfRole(point.role);
		let most = 0;
		for (const [sort, count] of votes.get(point.index) ?? [])
			if (count > most) {
				best = sort;
				most = count;
			}
		return best;
	});
}

/** A little more than a core's one vote: the terminal behind a pigtail is sure of what it is for. */
const pigtailVote = 1.25;

/** One box and the wires of one bundle in it: the smallest thing that is landed wrongly at one go. */
function placeOf(circuit: Circuit, end: Pick<Misplaced, "conductor" | "which">): string {
	const conductor = circuit.conductors[end.conductor];
	if (conductor === undefined) return "";
	return `${bundleOf(circuit, conductor)}@${conductor.ends[end.which].enclosure.name}`;
}

/**
 * The name of the mistake at each place: the place itself, save where two bundles exchanged one wire each in a box.
 * These two are one mistake and have the name of the first.
 */
function nameRoots(circuit: Circuit, found: readonly Omit<Misplaced, "root">[]): ReadonlyMap<string, string> {
	const roots = new Map<string, string>();
	const waiting = new Map<string, string[]>();
	for (const [place, ends] of groupBy(found, (end) => placeOf(circuit, end))) {
		roots.set(place, place);
		const [only] = ends;
		if (ends.length > 1 || only === undefined) continue;
		const box = place.slice(place.lastIndexOf("@"));
		const wanted = waiting.get(`${only.lands} on ${only.carries}${box}`)?.shift();
		if (wanted !== undefined) roots.set(place, wanted);
		else {
			const mine = `${only.carries} on ${only.lands}${box}`;
			waiting.set(mine, [...(waiting.get(mine) ?? []), place]);
		}
	}
	return roots;
}
