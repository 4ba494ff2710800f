// Loads that the breaker of another circuit feeds than the one their own circuit is said to come from.
import type { Circuit } from "../circuit/circuit.ts";
import type { Feeder } from "./feeders.ts";
import type { Landings } from "./landings.ts";

/** One load under the wrong breaker. */
export interface Mislabelled {
	readonly part: string;
	/** Its hot terminal. */
	readonly point: number;
	/** The breaker its circuit is said to come from, and the one that feeds it. */
	readonly said: string;
	readonly found: string;
}

/** Every load of a mode that another circuit's breaker feeds; one that is fed past all breakers is not meant. */
export function findMislabelled(
	circuit: Circuit,
	landings: Landings,
	feeders: ReadonlyMap<number, Feeder>,
): readonly Mislabelled[] {
	const saidOf = new Map(circuit.plan.runs.map((run) => [run.name, run.protection]));
	const branches = new Set(saidOf.values());
	return circuit.loads.flatMap((load): Mislabelled[] => {
		const said = saidOf.get(circuit.partByName.get(load.part)?.run ?? "");
		const points = load.between.filter((candidate) => landings.sortAt(candidate) === "hot");
		return points.flatMap((point): Mislabelled[] => {
			const found = feeders.get(point)?.protection?.part;
			const isOther = said !== undefined && found !== undefined && found !== said && branches.has(found);
			return isOther ? [{ part: load.part, point, said, found }] : [];
		});
	});
}

/** A name for what was taken for what, the same for both halves of an exchange. */
export function nameMixUp({ said, found }: Mislabelled): string {
	return said < found ? `${said}/${found}` : `${found}/${said}`;
}
