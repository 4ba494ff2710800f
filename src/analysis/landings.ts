// What every landed end is for by its colour, what it landed on is for, and which do not go together. The same in every mode.
import { groupBy } from "../base/group.ts";
import type { Circuit, Conductor, Terminal } from "../circuit/circuit.ts";
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
	/** The first misplaced end on a point. */
	misplacedOn(point: number): Misplaced | undefined;
	/** A terminal of a box for wires of a sort that nothing is on; undefined where there is none. */
	freeTerminal(box: string, sort: PoleSort): Terminal | undefined;
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
			const carries = carriedBy(conductor, which);
			const lands = sorts[point] ?? "hot";
			if (carries !== lands) found.push({ conductor: conductor.index, which, point, carries, lands });
		}
	const roots = nameRoots(circuit, found);
	const misplaced = found.map((end): Misplaced => ({ ...end, root: roots.get(placeOf(circuit, end)) ?? "" }));
	const byEnd = new Map(misplaced.map((end) => [end.conductor * 2 + end.which, end]));
	let free: ReadonlyMap<string, Terminal> | undefined;
	const byPoint = new Map(misplaced.toReversed().map((end) => [end.point, end]));
	const byRoot = groupBy(misplaced, (end) => end.root);
	return {
		sortAt: (point) => sorts[point] ?? "hot",
		carriedBy,
		misplaced,
		misplacedAt: (conductor, which) => byEnd.get(conductor * 2 + which),
		misplacedOn: (point) => byPoint.get(point),
		freeTerminal: (box, sort) => {
			free ??= findFree(circuit);
			return free.get(`${box} ${sort}`);
		},
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
	if (conductor.sort !== "pigtail") return own;
	const [first, second] = conductor.ends.map((end) =>
		end.point === undefined ? undefined : circuit.points[end.point],
	);
	return first !== undefined && first.kind !== "splice" && second?.kind === "splice" ? sortOfRole(first.role) : own;
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

/** What each member of a splice says it is for. */
interface Vote {
	readonly sort: PoleSort;
	readonly conductor: Conductor;
}

/**
 * The sort of every point: a splice is what most of its members are. Where two sorts have as many, the other exchanges in the
 * box decide: the member that completes one is the one that is misplaced.
 */
function sortPoints(circuit: Circuit, carriedBy: Landings["carriedBy"]): PoleSort[] {
	const sorts = circuit.points.map((point) => sortOfRole(point.role));
	const votes = new Map<number, Vote[]>();
	for (const point of disagreeing(circuit, carriedBy, sorts)) votes.set(point, []);
	if (votes.size === 0) return sorts;
	for (const conductor of circuit.conductors)
		for (const which of bothEnds) {
			const { point } = conductor.ends[which];
			if (point !== undefined) votes.get(point)?.push({ sort: carriedBy(conductor, which), conductor });
		}
	const open: number[] = [];
	for (const [point, here] of votes) {
		const [first, second] = rankSorts(here);
		if (first === undefined) continue;
		sorts[point] = first.sort;
		if (second !== undefined && second.count === first.count) open.push(point);
	}
	if (open.length > 0) settleTies(circuit, carriedBy, votes, open, sorts);
	return sorts;
}

/** The splices of which not all members are for the same; where all are, that is written to `sorts`. In the order they are met. */
function disagreeing(circuit: Circuit, carriedBy: Landings["carriedBy"], sorts: PoleSort[]): ReadonlySet<number> {
	const found = new Set<number>();
	const asked = new Uint8Array(sorts.length);
	for (const conductor of circuit.conductors)
		for (const which of bothEnds) {
			const { point } = conductor.ends[which];
			if (point === undefined || circuit.points[point]?.kind !== "splice") continue;
			const sort = carriedBy(conductor, which);
			if (asked[point] === 1 && sorts[point] !== sort) found.add(point);
			asked[point] = 1;
			sorts[point] = sort;
		}
	return found;
}

/** Sorts by how many members say them; as many: first those of pigtails, whose terminals are sure, then in the circuit's order. */
function rankSorts(votes: readonly Vote[]): readonly { sort: PoleSort; count: number }[] {
	const ranked = [...groupBy(votes, ({ sort }) => sort)].map(([sort, said]) => ({
		sort,
		count: said.length,
		pigtails: said.filter(({ conductor }) => conductor.sort === "pigtail").length,
	}));
	return ranked.toSorted((one, other) => other.count - one.count || other.pigtails - one.pigtails);
}

function settleTies(
	circuit: Circuit,
	carriedBy: Landings["carriedBy"],
	votes: ReadonlyMap<number, readonly Vote[]>,
	open: readonly number[],
	sorts: PoleSort[],
): void {
	const undecided = new Set(open);
	const boxes = new Set(open.map((point) => circuit.points[point]?.enclosure.name));
	// What is surely misplaced in these boxes, as `box: carries on lands`, and the same with its bundle.
	const sure = new Set<string>();
	for (const conductor of circuit.conductors)
		for (const which of bothEnds) {
			const { point, enclosure } = conductor.ends[which];
			if (point === undefined || undecided.has(point) || !boxes.has(enclosure.name)) continue;
			const [carries, lands] = [carriedBy(conductor, which), sorts[point]];
			if (carries === lands) continue;
			sure.add(`${enclosure.name}: ${carries} on ${lands}`);
			sure.add(`${enclosure.name}: ${bundleOf(circuit, conductor)}: ${carries} on ${lands}`);
		}
	for (const point of open) {
		const here = votes.get(point) ?? [];
		const box = circuit.points[point]?.enclosure.name ?? "";
		const scoreOf = (sort: PoleSort): number =>
			here.reduce((score, vote) => {
				if (vote.sort === sort) return score;
				// The exchange of which this would be the other half.
				const half = `${sort} on ${vote.sort}`;
				const ofBundle = sure.has(`${box}: ${bundleOf(circuit, vote.conductor)}: ${half}`);
				return score + (ofBundle ? 2 : sure.has(`${box}: ${half}`) ? 1 : 0);
			}, 0);
		const most = rankSorts(here)[0]?.count ?? 0;
		for (const { sort, count } of rankSorts(here))
			if (count === most && scoreOf(sort) > scoreOf(sorts[point] ?? sort)) sorts[point] = sort;
	}
}

/** The first terminal of each box and sort that takes a wire and has none. */
function findFree(circuit: Circuit): ReadonlyMap<string, Terminal> {
	const taken = new Set(circuit.conductors.flatMap(({ ends }) => ends.map((end) => end.point)));
	const free = new Map<string, Terminal>();
	for (const point of circuit.points) {
		if (point.kind !== "terminal" || point.capacity === 0 || point.clamp === "lead" || taken.has(point.index)) continue;
		const sort = sortOfRole(point.role);
		// A free hot in a panel is its bus or a breaker of something else: nobody is to be sent there.
		if (sort === "hot" && point.enclosure.sort === "panel") continue;
		const key = `${point.enclosure.name} ${sort}`;
		if (!free.has(key)) free.set(key, point);
	}
	return free;
}

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
