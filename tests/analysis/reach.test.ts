// What can be joined and what is always joined, against trying out every setting of every contact.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reachCertain, reachPossible, tryClusters } from "../../src/analysis/choices.ts";
import { alwaysClosed, buildNetwork, reachFrom } from "../../src/analysis/network.ts";
import { kinds } from "../../src/kinds/index.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { type SmallContact, smallCircuit } from "./small-circuit.ts";

/** Lets every edge pass. */
const anyEdge = (): boolean => true;
const mode = { name: "m", live: [], running: undefined, summary: "" };
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
	return buildNetwork(smallCircuit(count, wires, contacts), mode, "ac");
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

describe("against every setting of up to twelve contacts", () => {
	const fiveHundred = { numRuns: 500, seed: 4_096 };
	/** Switches of one to four contacts in two or three positions, twelve contacts in all. */
	const twelve = fc.integer({ min: 2, max: 14 }).chain((count) => {
		const pair = fc.tuple(fc.nat(count - 1), fc.nat(count - 1));
		// Twelve switches of two positions have 4,096 settings: one of three positions has two contacts at least.
		const one = fc.integer({ min: 2, max: 3 }).chain((positions) => {
			const closed = fc.subarray(Array.from({ length: positions }, (_, position) => position));
			return fc
				.array(fc.record({ between: pair, closed }), { minLength: positions - 1, maxLength: 4 })
				.map((contacts) => contacts.map((contact) => ({ ...contact, positions })));
		});
		return fc.record({
			count: fc.constant(count),
			wires: fc.array(pair, { maxLength: count }),
			contacts: fc
				.array(one, { minLength: 1, maxLength: 12 })
				.map((switches) =>
					switches
						.filter((_, index) => switches.slice(0, index + 1).flat().length <= 12)
						.flatMap((contacts, index) => contacts.map((contact) => ({ ...contact, group: `g${index}` }))),
				),
		});
	});

	/** What point 0 is joined with in every setting, and in some: each setting of each switch enumerated. */
	function enumerate({ count, wires, contacts }: Drawn): { always: number[]; possible: number[] } {
		const groups = [...new Map(contacts.map(({ group, positions }) => [group, positions]))];
		const all = Array.from({ length: count }, (_, point) => point);
		let always = new Set(all);
		const possible = new Set<number>();
		const settings = groups.reduce((product, [, positions]) => product * positions, 1);
		for (let setting = 0; setting < settings; setting++) {
			const at = new Map<string, number>();
			groups.reduce((rest, [group, positions]) => {
				at.set(group, rest % positions);
				return Math.floor(rest / positions);
			}, setting);
			const joints = [
				...wires,
				...contacts.filter(({ group, closed }) => closed.includes(at.get(group) ?? 0)).map(({ between }) => between),
			];
			const reached = new Set([0]);
			for (let grown = 0; grown !== reached.size; ) {
				grown = reached.size;
				for (const [one, other] of joints) if (reached.has(one) !== reached.has(other)) reached.add(one).add(other);
			}
			always = new Set([...always].filter((point) => reached.has(point)));
			for (const point of reached) possible.add(point);
		}
		return { always: sorted(always), possible: sorted(possible) };
	}

	test("what is joined always and what can be joined are exactly these", () => {
		fc.assert(
			fc.property(twelve, (drawn) => {
				const { always, possible } = enumerate(drawn);
				const built = network(drawn);
				expect(sorted(reachPossible(built, [0], anyEdge).points)).toEqual(possible);
				expect(sorted(reachCertain(built, [0], anyEdge, alwaysClosed).points)).toEqual(always);
			}),
			fiveHundred,
		);
	}, 60_000);

	/** A row of so many switches between two travellers, both of which end in one point. */
	const row = (switches: number): Drawn => ({
		count: 2 * switches + 2,
		wires: [],
		contacts: Array.from({ length: switches }, (_, index): SmallContact[] => {
			const [from, other] = index === 0 ? [0, 0] : [2 * index - 1, 2 * index];
			const [to, last] = index === switches - 1 ? [2 * switches + 1, 2 * switches + 1] : [2 * index + 1, 2 * index + 2];
			return [
				{ between: [from, to], group: `g${index}`, positions: 2, closed: [0] },
				{ between: [other, last], group: `g${index}`, positions: 2, closed: [0] },
				{ between: [from, last], group: `g${index}`, positions: 2, closed: [1] },
				{ between: [other, to], group: `g${index}`, positions: 2, closed: [1] },
			];
		}).flat(),
	});
	test.each([
		[12, true],
		[13, false],
	])("of %i switches in a row, always is proven: %s", (switches, proven) => {
		const built = network(row(switches));
		const [trial] = tryClusters(built, [0], anyEdge);
		expect(trial?.settings.length).toBe(proven ? 4_096 : 1);
		expect(reachPossible(built, [0], anyEdge).has(2 * switches + 1)).toBe(true);
		expect(reachCertain(built, [0], anyEdge, alwaysClosed).has(2 * switches + 1)).toBe(proven);
	});
});

test("every kind's contacts have two or three positions, as in these circuits", () => {
	const contacts = kinds
		.flatMap((kind) => checkPlan(kind.example, "plan").analysis.circuit.links)
		.flatMap((link) => link.contact ?? []);
	expect(contacts.length).toBeGreaterThan(0);
	expect(contacts.filter(({ positions }) => positions !== 2 && positions !== 3)).toEqual([]);
});
