// A thinner wire than was planned: a whole cable, or a single conductor of its own.
import type { Gauge } from "../../base/gauge.ts";
import { awg, compareGauges, squareMillimetres } from "../../base/gauge.ts";
import type { Circuit, Conductor } from "../../circuit/circuit.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { changeConductors } from "../rewire.ts";

export const thinner: Operator = {
	name: "a thinner conductor",
	*find(circuit): Iterable<Mistake> {
		for (const { tag, conductors, from, to } of circuit.cables)
			yield* thin(circuit, tag, conductors, [tag, from.name, to.name]);
		for (const conductor of circuit.conductors)
			if (conductor.cable === undefined && !isLead(circuit, conductor))
				yield* thin(circuit, conductor.name, [conductor.index], [conductor.name, conductor.ends[0].enclosure.name]);
	},
};

/** The two next sizes that a drawer holds. */
function* thin(
	circuit: Circuit,
	name: string,
	conductors: readonly number[],
	around: readonly string[],
): Iterable<Mistake> {
	const own = conductors.flatMap((index) => circuit.conductors[index] ?? []);
	const [first] = own;
	if (first === undefined) return;
	for (const steps of [1, 2]) {
		if (thinnerBy(first.gauge, steps) === undefined) continue;
		yield {
			at: `${name}, ${steps === 1 ? "one size" : "two sizes"} thinner`,
			wrong: () =>
				changeConductors(circuit, new Set(conductors), (conductor) => ({
					...conductor,
					gauge: thinnerBy(conductor.gauge, steps) ?? conductor.gauge,
				})),
			places: [...around, ...own.flatMap((conductor) => [conductor.name, ...placesOfEnds(circuit, conductor)])],
		};
	}
}

function placesOfEnds(circuit: Circuit, { ends }: Conductor): readonly string[] {
	return ends.flatMap(({ point }) => (point === undefined ? [] : (circuit.points[point]?.name ?? [])));
}

function isLead(circuit: Circuit, { ends }: Conductor): boolean {
	return ends.some(({ point }) => {
		const on = point === undefined ? undefined : circuit.points[point];
		return on?.kind === "terminal" && on.clamp === "lead";
	});
}

/** The usual size so many steps below one; undefined where there is none. */
function thinnerBy(gauge: Gauge, steps: number): Gauge | undefined {
	return sizes[gauge.system].filter((size) => compareGauges(size, gauge) < 0).at(-steps);
}

/** Sizes that installers have at hand, thinnest first (common practice). */
const sizes: Readonly<Record<Gauge["system"], readonly Gauge[]>> = {
	awg: [18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3].map(awg),
	mm2: [0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95].map(squareMillimetres),
};
