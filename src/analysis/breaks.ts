// Where a way that should be there ends: for points that a pole does not reach, the one place at which it is lost.
import { certain } from "../base/certain.ts";
import { groupBy } from "../base/group.ts";
import type { Span } from "../base/span.ts";
import type { Cable, Circuit, Splice } from "../circuit/circuit.ts";
import { JoinedSets } from "./joined-sets.ts";
import { bothEnds, type Landings } from "./landings.ts";
import type { Edge, Network } from "./network.ts";
import type { PoleSort } from "./poles.ts";

/** How a way is lost. */
export type BreakCause =
	/** The end is on nothing, or capped. */
	| { readonly kind: "off"; readonly conductor: number; readonly which: 0 | 1 }
	/** The end is on a point of another sort; `root` is the key of that mistake. */
	| { readonly kind: "misplaced"; readonly conductor: number; readonly which: 0 | 1; readonly root: string }
	/** The end is landed rightly, but nothing joins it to the others of its sort in that box. */
	| { readonly kind: "apart"; readonly conductor: number; readonly which: 0 | 1 }
	/** The cable has no conductor of that sort. */
	| { readonly kind: "core"; readonly cable: string }
	/** Nothing of that sort is on the terminal or case. */
	| { readonly kind: "empty"; readonly point: number };

/** One lost way, and all that hangs on it. */
export interface Break {
	readonly sort: PoleSort;
	readonly cause: BreakCause;
	/** The place as a name: `bunks-1.bare@b1`, a cable's tag, or the empty point. */
	readonly place: string;
	readonly span: Span;
	/** Points that are not reached because of it, in the order of the circuit. */
	readonly victims: readonly number[];
}

/** What is asked: which points should be reached and are not, and what counts as joined. */
export interface Lost {
	readonly sort: PoleSort;
	readonly victims: readonly number[];
	readonly isReached: (point: number) => boolean;
	readonly joins: (edge: Edge) => boolean;
}

/** The breaks that explain all victims, in the order of the first victim of each. */
export function findBreaks(network: Network, landings: Landings, lost: Lost): Break[] {
	if (lost.victims.length === 0) return [];
	const { circuit } = network;
	const islands = joinIslands(network, lost);
	const causes = new BreakSearch(circuit, landings, lost, islands).findAll();
	const joints = saidJoints(circuit, landings, lost.sort);
	const told = lost.victims.map((victim) => {
		const cause = causes.get(islands.find(victim)) ?? { kind: "empty", point: victim };
		return { victim, cause, ...placeOf(circuit, cause, joints) };
	});
	return [...groupBy(told, ({ place }) => place).values()].map((group) => {
		const { cause, place, span } = certain(group[0], "a break");
		return { sort: lost.sort, cause, place, span, victims: group.map(({ victim }) => victim) };
	});
}

function joinIslands(network: Network, { joins }: Lost): JoinedSets {
	const islands = new JoinedSets(network.circuit.points.length);
	for (const edges of network.edges) for (const edge of edges) if (joins(edge)) islands.join(edge.from, edge.to);
	return islands;
}

/** What may have gone wrong, the likeliest first. */
const likelihood = ["off", "misplaced", "apart", "core", "empty"] as const satisfies readonly BreakCause["kind"][];

class BreakSearch {
	private readonly circuit: Circuit;
	private readonly landings: Landings;
	private readonly lost: Lost;
	private readonly islands: JoinedSets;
	private readonly lostIslands: ReadonlySet<number>;
	/** The lost islands that have points in an enclosure. */
	private readonly islandsIn = new Map<string, Set<number>>();
	/** Enclosures that the pole itself reaches. */
	private readonly reachedIn = new Set<string>();
	private readonly causes = new Map<number, BreakCause>();

	constructor(circuit: Circuit, landings: Landings, lost: Lost, islands: JoinedSets) {
		this.circuit = circuit;
		this.landings = landings;
		this.lost = lost;
		this.islands = islands;
		this.lostIslands = new Set(lost.victims.map((victim) => islands.find(victim)));
		for (const { index, enclosure } of circuit.points) this.noteIn(enclosure.name, index);
		// An end that is on nothing brings what its other end is on into its box.
		for (const { ends } of circuit.conductors)
			for (const which of bothEnds) {
				const other = ends[which === 0 ? 1 : 0].point;
				if (ends[which].point === undefined && other !== undefined) this.noteIn(ends[which].enclosure.name, other);
			}
	}

	private noteIn(enclosure: string, point: number): void {
		if (this.lost.isReached(point)) this.reachedIn.add(enclosure);
		const island = this.islands.find(point);
		if (!this.lostIslands.has(island)) return;
		const here = this.islandsIn.get(enclosure);
		if (here === undefined) this.islandsIn.set(enclosure, new Set([island]));
		else here.add(island);
	}

	/** The likeliest cause for each lost island. */
	findAll(): ReadonlyMap<number, BreakCause> {
		for (const conductor of this.circuit.conductors)
			for (const which of bothEnds) this.judgeEnd(conductor.index, which);
		this.judgeCables();
		return this.causes;
	}

	private judgeEnd(index: number, which: 0 | 1): void {
		const conductor = certain(this.circuit.conductors[index], "a conductor");
		if (this.landings.carriedBy(conductor, which) !== this.lost.sort) return;
		const [here, there] = [conductor.ends[which], conductor.ends[which === 0 ? 1 : 0]];
		const misplaced = this.landings.misplacedAt(index, which);
		if (here.point !== undefined && misplaced === undefined) {
			// Landed rightly, in a box that the pole reaches, and yet on an island of its own.
			const island = this.islands.find(here.point);
			if (this.lostIslands.has(island) && this.reachedIn.has(here.enclosure.name))
				this.offer(island, { kind: "apart", conductor: index, which });
			return;
		}
		const cause: BreakCause =
			misplaced === undefined
				? { kind: "off", conductor: index, which }
				: { kind: "misplaced", conductor: index, which, root: misplaced.root };
		if (there.point === undefined) return;
		if (this.lost.isReached(there.point))
			for (const island of this.islandsIn.get(here.enclosure.name) ?? []) this.offer(island, cause);
		else if (this.reachedIn.has(here.enclosure.name)) this.offer(this.islands.find(there.point), cause);
	}

	/** From the boxes that the pole reaches outward: the first cable that lacks its conductor is the cause for all behind it. */
	private judgeCables(): void {
		const cablesAt = new Map<string, Cable[]>();
		for (const cable of this.circuit.cables)
			for (const { name } of new Set([cable.from, cable.to])) {
				const here = cablesAt.get(name);
				if (here === undefined) cablesAt.set(name, [cable]);
				else here.push(cable);
			}
		const causes = new Map<string, BreakCause | undefined>();
		for (const name of this.reachedIn) causes.set(name, undefined);
		// A map hands out what is added while it is walked.
		for (const [near, before] of causes)
			for (const cable of cablesAt.get(near) ?? []) {
				const far = cable.from.name === near ? cable.to.name : cable.from.name;
				if (causes.has(far)) continue;
				const cause: BreakCause | undefined =
					before ?? (this.hasCore(cable) ? undefined : { kind: "core", cable: cable.tag });
				causes.set(far, cause);
				if (cause !== undefined) for (const island of this.islandsIn.get(far) ?? []) this.offer(island, cause);
			}
	}

	private hasCore({ conductors }: Cable): boolean {
		return conductors.some((index) => {
			const conductor = this.circuit.conductors[index];
			return conductor !== undefined && this.landings.carriedBy(conductor, 0) === this.lost.sort;
		});
	}

	private offer(island: number, cause: BreakCause): void {
		if (!this.lostIslands.has(island)) return;
		const known = this.causes.get(island);
		if (known === undefined || this.rank(cause) < this.rank(known)) this.causes.set(island, cause);
	}

	/** Of ends that are off, a loose one is likelier to be the mistake than a cap, and a cap that was said than one inferred. */
	private rank(cause: BreakCause): number {
		const end = cause.kind === "off" ? this.circuit.conductors[cause.conductor]?.ends[cause.which] : undefined;
		const late = end === undefined || end.state === "loose" ? 0 : end.said ? 0.25 : 0.5;
		return likelihood.indexOf(cause.kind) + late;
	}
}

/** The joint of each box that was said to be made, where it is the only one of its sort there. */
function saidJoints(circuit: Circuit, landings: Landings, sort: PoleSort): ReadonlyMap<string, Splice> {
	const joints = new Map<string, Splice | undefined>();
	for (const point of circuit.points)
		if (point.kind === "splice" && landings.sortAt(point.index) === sort)
			joints.set(point.enclosure.name, point.said && !joints.has(point.enclosure.name) ? point : undefined);
	return new Map([...joints].flatMap(([box, joint]) => (joint === undefined ? [] : [[box, joint]])));
}

function placeOf(
	circuit: Circuit,
	cause: BreakCause,
	joints: ReadonlyMap<string, Splice>,
): { place: string; span: Span } {
	switch (cause.kind) {
		case "core": {
			const cable = certain(circuit.cableByTag.get(cause.cable), "a cable");
			return { place: cable.tag, span: cable.span };
		}
		case "empty": {
			const point = certain(circuit.points[cause.point], "a point");
			// A joint that was said to be made of certain ends leaves out the others of its sort: it is the line to look at.
			return { place: point.name, span: (joints.get(point.enclosure.name) ?? point).span };
		}
		default: {
			const conductor = certain(circuit.conductors[cause.conductor], "a conductor");
			const end = conductor.ends[cause.which];
			return { place: `${conductor.name}@${end.enclosure.name}`, span: end.span };
		}
	}
}
