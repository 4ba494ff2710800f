// What no plan can tell: a joint that is bad, a run that is longer than was written. The readings that find them are here.
import { formatNumber } from "../../base/quantity.ts";
import type { Cable, Circuit } from "../../circuit/circuit.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { changeConductors } from "../rewire.ts";
import { endsOn, placesOfPoint } from "../wire-ends.ts";

export const badJoint: Operator = {
	name: "a joint with resistance",
	*find(circuit): Iterable<Mistake> {
		for (const point of circuit.points) {
			const ends = endsOn(circuit, point.index);
			if (ends.length === 0) continue;
			const names = ends.map(({ conductor }) => conductor.name).join(", ");
			yield {
				at: point.name,
				wrong: () => circuit,
				places: placesOfPoint(point),
				reading:
					point.role === "ground"
						? `dead, ${names} to ${point.name} by an ohmmeter of low range: more than 0.1 ohm where a sound joint shows none`
						: `with the load behind it running, ${names} to ${point.name}: more than 0.1 V where a sound joint shows none`,
			};
		}
	},
};

export const longerRun: Operator = {
	name: "a length understated threefold",
	*find(circuit): Iterable<Mistake> {
		for (const cable of circuit.cables) {
			const { length } = cable;
			if (length === undefined) continue;
			yield {
				at: cable.tag,
				wrong: () =>
					changeConductors(circuit, new Set(cable.conductors), (conductor) => ({
						...conductor,
						...(conductor.length === undefined ? {} : { length: conductor.length * 3 }),
					})),
				places: [cable.tag, cable.from.name, cable.to.name],
				reading: tellDrop(circuit, cable, length),
			};
		}
	},
};

/** What the length that was written lets expect, for a load of ten amperes: volts lost there and back (Ohm's law, computed). */
function tellDrop(circuit: Circuit, { tag, conductors, from, to }: Cable, length: number): string {
	const first = circuit.conductors[conductors[0] ?? -1];
	const ways = conductors.length > 1 ? 2 : 1;
	const volts = first === undefined ? 0 : (ways * length * resistivity[first.material] * 10) / first.gauge.mm2;
	return `with ten amperes through ${tag}, the volts at ${from.name} less those at ${to.name}: about three times the ${formatNumber(Math.round(volts * 100) / 100)} V that its written length gives`;
}

/** Ohm times mm² in a metre at 20 °C (IEC 60028 for copper, IEC 60889 for aluminium, recalled). */
const resistivity = { copper: 0.01724, aluminium: 0.02826 } as const;
