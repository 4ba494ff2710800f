// What is energised in each source mode: the boxes and machines that a hot or a positive can reach, and those that none does.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { isHot } from "../analysis/poles.ts";
import type { Circuit, Enclosure } from "../circuit/circuit.ts";

/** One mode with the names of what is live in it and what is dead, in the order of the circuit. */
export interface Energised {
	readonly live: readonly string[];
	readonly dead: readonly string[];
}

/** What is energised, by the name of the mode, whatever the switches do; what no hot is meant for is left out. */
export function findEnergised({ circuit, states }: Analysis): ReadonlyMap<string, Energised> {
	const boxes = circuit.enclosures.filter((enclosure) => hotPoints(circuit, enclosure).length > 0);
	return new Map(
		states.map((state) => {
			const isLive = (enclosure: Enclosure): boolean =>
				holdsBattery(circuit, enclosure) || hotPoints(circuit, enclosure).some((point) => isReached(state, point));
			const names = (live: boolean): string[] =>
				boxes.filter((enclosure) => isLive(enclosure) === live).map(({ name }) => name);
			return [state.mode.name, { live: names(true), dead: names(false) }];
		}),
	);
}

function hotPoints({ points, parts }: Circuit, enclosure: Enclosure): number[] {
	return parts
		.filter((part) => part.enclosure === enclosure)
		.flatMap((part) => part.points.filter((point) => isHot(points[point]?.role ?? "ground")));
}

/** Nothing makes its posts dead, also when the mode leaves it out. */
function holdsBattery({ sources, partByName }: Circuit, enclosure: Enclosure): boolean {
	return sources.some(({ sort, part }) => sort === "battery" && partByName.get(part)?.enclosure === enclosure);
}

function isReached({ poles, direct }: ModeState, point: number): boolean {
	return [poles, direct?.poles].some((side) => [...(side?.rolesAt(point) ?? [])].some((role) => isHot(role)));
}
