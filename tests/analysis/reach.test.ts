// What can be joined and what is always joined, against trying out every setting of every contact.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reachPossible } from "../../src/analysis/choices.ts";
import { alwaysClosed, buildNetwork, reachFrom } from "../../src/analysis/network.ts";
import { kinds } from "../../src/kinds/index.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { type SmallContact, smallCircuit } from "./small-circuit.ts";

/** Lets every edge pass. */
const anyEdge = (): boolean => true;
const mode = { name: "m", live: [], summary: "" };
const runs = { numRuns: 200, seed: 20_261 };

interface Drawn {
	readonly count: number;
	readonly wires: readonly (readonly [number, number])[];
	readonly contacts: readonly SmallContact[];
}

/** Up to eight points, six wires, and four switches of up to three contacts each; `positions` and `closed` by `shape`. */
function circuits(shape: fc.Arbitrary<readonly (readonly number[])[]>): fc.Arbitrary<Drawn> {
	return fc.integer({ min: 2, max: 8 }).chain((count) => {
		const pair = fc.tuple(fc.nat(count - 1), fc.nat(count - 1));
		const wires = fc.array(pair, { maxLength: 6 });
		const switches = fc.array(
			shape.chain((closings) => fc.tuple(...closings.map((closed) => fc.tuple(pair, fc.constant(closed))))),
			{
				maxLength: 4,
			},
		);
		return fc.record({ count: fc.constant(count), wires, contacts: switches.map(numberGroups) });
	});
}

function numberGroups(
	switches: readonly (readonly (readonly [readonly [number, number], readonly number[]])[])[],
): SmallContact[] {
	return switches.flatMap((contacts, index) =>
		contacts.map(([between, closed]) => ({ between, group: `g${index}`, positions: 2, closed })),
	);
}

/** One to three contacts that close together, as in a switch, a breaker or a disconnect. */
const together = fc.array(fc.constant([1] as const), { minLength: 1, maxLength: 3 });
/** Any contacts of a switch of two positions, three-way and four-way among them. */
const any = fc.array(fc.subarray([0, 1]), { minLength: 1, maxLength: 4 });

/** For every setting of all groups, which points are joined with point 0. */
function tryAll({ count, wires, contacts }: Drawn): Set<number>[] {
	const groups = [...new Set(contacts.map((contact) => contact.group))];
	return Array.from({ length: 2 ** groups.length }, (_, setting) => {
		const isClosed = ({ group, closed }: SmallContact): boolean =>
			closed.includes((setting >> groups.indexOf(group)) & 1);
		const joints = [...wires, ...contacts.filter(isClosed).map((contact) => contact.between)];
		const reached = new Set([0]);
		for (let round = 0; round < count; round++)
			for (const [one, other] of joints) {
				if (reached.has(one)) reached.add(other);
				if (reached.has(other)) reached.add(one);
			}
		return reached;
	});
}

function network({ count, wires, contacts }: Drawn) {
	return buildNetwork(smallCircuit(count, wires, contacts), mode);
}

const sorted = (points: Iterable<number>): number[] => [...points].toSorted((one, other) => one - other);

describe("what can be joined", () => {
	test("is what some setting joins", () => {
		fc.assert(
			fc.property(circuits(any), (drawn) => {
				const possible = new Set(tryAll(drawn).flatMap((reached) => [...reached]));
				expect(sorted(reachPossible(network(drawn), [0], anyEdge).points)).toEqual(sorted(possible));
			}),
			runs,
		);
	});

	test("is told by a way that one setting closes", () => {
		fc.assert(
			fc.property(circuits(any), (drawn) => {
				const reach = reachPossible(network(drawn), [0], anyEdge);
				for (const point of reach.points) {
					const contacts = reach
						.edgesTo(point)
						.flatMap(({ by }) => (by.kind === "link" && by.link.contact ? [by.link.contact] : []));
					for (const { group } of contacts) {
						const mine = contacts.filter((contact) => contact.group === group);
						expect([0, 1].some((position) => mine.every((contact) => contact.closed.includes(position)))).toBe(true);
					}
					expect(reach.edgesTo(point).at(-1)?.to ?? 0).toBe(point);
				}
			}),
			runs,
		);
	});
});

describe("what is always joined", () => {
	test("is what every setting joins, where the contacts of a switch close together", () => {
		fc.assert(
			fc.property(circuits(together), (drawn) => {
				const [first = new Set<number>(), ...others] = tryAll(drawn);
				const always = [...first].filter((point) => others.every((reached) => reached.has(point)));
				expect(sorted(reachFrom(network(drawn), [0], alwaysClosed).points)).toEqual(sorted(always));
			}),
			runs,
		);
	});

	test("is never more than what every setting joins, whatever the switches", () => {
		// It may be less: a joint that one traveller or the other always makes is not counted on, which errs toward danger.
		fc.assert(
			fc.property(circuits(any), (drawn) => {
				const settings = tryAll(drawn);
				for (const point of reachFrom(network(drawn), [0], alwaysClosed).points)
					expect(settings.every((reached) => reached.has(point))).toBe(true);
			}),
			runs,
		);
	});
});

test("every kind's contacts have at most two positions, as in these circuits", () => {
	const contacts = kinds
		.flatMap((kind) => checkPlan(kind.example, "plan").analysis.circuit.links)
		.flatMap((link) => link.contact ?? []);
	expect(contacts.length).toBeGreaterThan(0);
	expect(contacts.filter((contact) => contact.positions !== 2)).toEqual([]);
});
