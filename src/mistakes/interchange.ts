// Whether a circuit with a slip in it is the one before with like things in one another's places: two travellers, two legs, the two
// terminals of a plain contact. Every part keeps its name, so that only what is alike within a part can stand for one another; every cable keeps its own, its cores being alike but for their size.
import { groupBy } from "../base/group.ts";
import type { Circuit, Link } from "../circuit/circuit.ts";
import { isJoint, joinedPoints } from "./nets.ts";

/**
 * Whether two circuits look the same from every point: each spot, conductor, contact, load and source has neighbours of the same looks, and so
 * have these, as far as there is any difference to be seen (colour refinement of the graph).
 */
export function isInterchanged(one: Circuit, other: Circuit, legs: Legs): boolean {
	const looks = new Looks();
	const [first, second] = [graphOf(one, looks, legs), graphOf(other, looks, legs)];
	if (first.looks.length !== second.looks.length) return false;
	for (let kinds = 0; ; ) {
		const now = countLooks(first.looks);
		if (!isEqual(now, countLooks(second.looks))) return false;
		if (now.size === kinds) return true;
		kinds = now.size;
		first.looks = refine(first, looks);
		second.looks = refine(second, looks);
	}
}

/** Whether it makes a difference which of two legs something is on, as long as it is on one. */
export type Legs = "told apart" | "alike";

interface Graph {
	/** The look of each vertex, by a number. */
	looks: readonly number[];
	/** For each vertex its neighbours, each with a number for what it is to the vertex. */
	readonly neighbours: readonly (readonly (readonly [vertex: number, as: number])[])[];
}

/** Numbers for looks, the same for the same look in all graphs. */
class Looks {
	readonly #numbers = new Map<string, number>();

	numberOf(look: string): number {
		const known = this.#numbers.get(look);
		if (known !== undefined) return known;
		this.#numbers.set(look, this.#numbers.size);
		return this.#numbers.size - 1;
	}
}

/** Points, conductors, ways through parts, positions of contacts, loads, sources and ground-fault devices, and what is at what. */
function graphOf(circuit: Circuit, looks: Looks, legs: Legs): Graph {
	const kinds: number[] = [];
	const neighbours: [number, number][][] = [];
	const add = (look: string): number => {
		neighbours.push([]);
		return kinds.push(looks.numberOf(look)) - 1;
	};
	const tie = (one: number, other: number, as: string): void => {
		const number = looks.numberOf(as);
		neighbours[one]?.push([other, number]);
		neighbours[other]?.push([one, number]);
	};
	const spots = joinedPoints(circuit.points.length, function* () {
		for (const link of circuit.links) if (isJoint(circuit, link)) yield link.between;
		if (legs === "alike") yield* legPairs(circuit);
	});
	const names = nameParts(circuit);
	const poles = partsOfLikePoles(circuit);
	const vertexOfSpot = new Map<number, number>();
	const terminals = circuit.points.map((point) => {
		const spot = spots[point.index] ?? point.index;
		const known = vertexOfSpot.get(spot) ?? add("spot");
		vertexOfSpot.set(spot, known);
		// A joint is nothing by itself; hots of one part are told apart by what they are on, not by their names.
		if (point.kind === "splice") return known;
		const role =
			poles.has(point.kind === "body" ? "" : point.part) && point.role !== "ground"
				? "pole"
				: point.role.replace(/[23]$/, "");
		const vertex = add(point.kind === "body" ? point.name : `${names(point.part)} ${role}`);
		tie(vertex, known, "on");
		return known;
	});
	for (const { cable, sort, gauge, length, ends } of circuit.conductors) {
		const vertex = add(`${sort} of ${cable}, ${gauge.mm2}, ${length}`);
		for (const { point, state } of ends)
			if (point === undefined) tie(vertex, vertex, state);
			else tie(vertex, terminals[point] ?? vertex, "end");
	}
	const at = (vertex: number, points: readonly (number | undefined)[], as: string): void => {
		for (const point of points) if (point !== undefined) tie(vertex, terminals[point] ?? vertex, as);
	};
	for (const [group, links] of groupBy(
		circuit.links.filter((link) => !isJoint(circuit, link)),
		(link) => link.contact?.group ?? "",
	)) {
		const positions = Array.from({ length: links[0]?.contact?.positions ?? 0 }, () => add(`position of ${group}`));
		for (const link of links) {
			const vertex = add(lookOf(circuit, link));
			at(vertex, link.between, "between");
			for (const closed of link.contact?.closed ?? []) tie(vertex, positions[closed] ?? vertex, "closed in");
		}
	}
	for (const { part, between, watts, volts, outlet } of circuit.loads)
		at(add(`load of ${part}, ${watts} W, ${volts} V, ${outlet}`), between, "between");
	for (const { name, system, hot, neutral, ground } of circuit.sources) {
		const vertex = add(`source ${names(name)}`);
		// Which of two legs is which is all the same; which pole of a battery is which is not.
		at(vertex, hot, system === "ac" ? "hot" : "positive");
		at(vertex, [neutral], "neutral");
		at(vertex, [ground], "ground");
	}
	for (const { part, line, load } of circuit.groundFaults) {
		const vertex = add(`ground-fault device ${part}`);
		at(vertex, [line.hot, line.hot2], "line");
		at(vertex, [load.hot, load.hot2], "load");
		at(vertex, [line.neutral], "line neutral");
		at(vertex, [load.neutral], "load neutral");
	}
	return { looks: kinds, neighbours };
}

/** What parts go by: their names, but batteries and modules that are alike go by what they are. */
function nameParts(circuit: Circuit): (part: string) => string {
	const alike = new Map(
		circuit.sources.flatMap(({ part, sort, volts }) =>
			sort === "battery" || sort === "solar"
				? [[part, `${circuit.partByName.get(part)?.face.text}, ${volts} V`] as const]
				: [],
		),
	);
	return (part) => alike.get(part) ?? part;
}

/** Switches of several contacts that one handle opens together: one pole is as good as another. Breakers are none, for they watch their poles. */
function partsOfLikePoles({ links, protections, groundFaults }: Circuit): ReadonlySet<string> {
	const watching = new Set([...protections, ...groundFaults].map(({ part }) => part));
	const found = new Set<string>();
	for (const [part, own] of groupBy(links, (link) => link.part)) {
		const [first] = own;
		const isOneHandle = own.every(
			({ contact, modes }) =>
				contact !== undefined &&
				modes === undefined &&
				contact.group === first?.contact?.group &&
				contact.positions === 2,
		);
		if (own.length > 1 && isOneHandle && !watching.has(part)) found.add(part);
	}
	return found;
}

/** The hot and the second hot of each side of a part. */
function* legPairs(circuit: Circuit): Iterable<readonly [number, number]> {
	for (const { points } of circuit.parts)
		for (const one of points)
			for (const other of points) {
				const [first, second] = [circuit.points[one], circuit.points[other]];
				if (first?.kind !== "terminal" || second?.kind !== "terminal") continue;
				if (first.role === "hot" && second.role === "hot2" && first.side === second.side) yield [one, other];
			}
}

/** A way through a part, told without its terminals; a protective device is known by its rating. */
function lookOf(circuit: Circuit, { part, nature, modes, contact, protection }: Link): string {
	const device = protection === undefined ? undefined : circuit.protections[protection];
	const when = modes === undefined ? "always" : [...modes].toSorted().join(" ");
	return `${nature} of ${part}, ${when}, ${contact?.group}, ${device?.rating}`;
}

/** The looks after one more round: what a vertex looks like, and what its neighbours do. */
function refine({ looks: now, neighbours }: Graph, looks: Looks): number[] {
	return now.map((look, vertex) => {
		const around = (neighbours[vertex] ?? []).map(([other, as]) => `${as}:${now[other]}`).toSorted();
		return looks.numberOf(`${look} (${around.join(" ")})`);
	});
}

function countLooks(looks: readonly number[]): ReadonlyMap<number, number> {
	const counts = new Map<number, number>();
	for (const look of looks) counts.set(look, (counts.get(look) ?? 0) + 1);
	return counts;
}

function isEqual(one: ReadonlyMap<number, number>, other: ReadonlyMap<number, number>): boolean {
	return one.size === other.size && [...one].every(([look, count]) => other.get(look) === count);
}
