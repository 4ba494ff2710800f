// Loads that are not fed by the breaker their circuit is said to come from: by another circuit's, or past it.
import type { Circuit, Part } from "../circuit/circuit.ts";
import type { Feeder } from "./feeders.ts";
import type { Landings } from "./landings.ts";
import type { PoleMap } from "./poles.ts";

/** The facts of a mode that it follows from. */
interface Fed {
	readonly feeders: ReadonlyMap<number, Feeder>;
	readonly crossings: { readonly poles: PoleMap };
}

/** One load under the wrong breaker. */
export interface Mislabelled {
	readonly part: string;
	/** Its hot terminal. */
	readonly point: number;
	/** The breaker its circuit is said to come from, and the device that feeds it. */
	readonly said: string;
	readonly found: string;
	/** That device belongs to no circuit: it stands ahead of the breaker that is passed by. */
	readonly isPast: boolean;
}

/** Every load of a mode that another circuit's breaker feeds, or that is fed past its own. */
export function findMislabelled(
	circuit: Circuit,
	landings: Landings,
	{ feeders, crossings }: Fed,
): readonly Mislabelled[] {
	const saidOf = new Map(circuit.plan.runs.map((run) => [run.name, run.protection]));
	const branches = new Set(saidOf.values());
	// A box that cables of several circuits enter holds devices of each of them.
	const entering = new Map<string, Set<string | undefined>>();
	for (const { from, to, run } of circuit.cables)
		for (const { name } of [from, to]) entering.set(name, (entering.get(name) ?? new Set()).add(saidOf.get(run)));
	const isAtHome = (part: Part | undefined, breaker: string): boolean =>
		part !== undefined && entering.get(part.enclosure.name)?.has(breaker) === true;
	return circuit.loads.flatMap((load): Mislabelled[] => {
		const part = circuit.partByName.get(load.part);
		const said = saidOf.get(part?.run ?? "");
		const points = load.between.filter((candidate) => landings.sortAt(candidate) === "hot");
		return points.flatMap((point): Mislabelled[] => {
			const found = feeders.get(point)?.protection?.part;
			if (said === undefined || found === undefined || found === said || isAtHome(part, found)) return [];
			const isPast = !branches.has(found);
			// A device between the breaker and the load is no other way, and a breaker of no circuit has no label.
			if (isPast && (!isAhead(circuit, feeders, found, said) || leadsThrough(crossings.poles, point, said))) return [];
			return [{ part: load.part, point, said, found, isPast }];
		});
	});
}

/** Whether a breaker is itself fed by a device. */
function isAhead(circuit: Circuit, feeders: ReadonlyMap<number, Feeder>, device: string, breaker: string): boolean {
	const points = circuit.partByName.get(breaker)?.points ?? [];
	return points.some((point) => feeders.get(point)?.protection?.part === device);
}

function leadsThrough(poles: PoleMap, point: number, part: string): boolean {
	const way = poles.reachOf(point, "hot")?.edgesTo(point) ?? [];
	return way.some(({ by }) => by.kind === "link" && by.link.part === part && by.link.protection !== undefined);
}

/** A name for what was taken for what, the same for both halves of an exchange. */
export function nameMixUp({ said, found }: Pick<Mislabelled, "said" | "found">): string {
	return said < found ? `${said}/${found}` : `${found}/${said}`;
}
