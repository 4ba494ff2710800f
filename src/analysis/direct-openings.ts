// Loads for direct current that get nothing because one pole does not reach them: the place at which each way is lost.
import type { Circuit, Load } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { type Break, findBreaks } from "./breaks.ts";
import type { DirectState } from "./direct.ts";
import type { Landings } from "./landings.ts";
import { notABond, type PoleSort } from "./poles.ts";

/** Every way of a positive or a negative to a load that is lost in a mode: its victims are the loads' terminals. */
export function traceDirectOpenings(circuit: Circuit, direct: DirectState, landings: Landings): readonly Break[] {
	const lost = findOpenLoads(circuit, direct);
	return (["hot", "neutral"] as const).flatMap((sort) =>
		findBreaks(direct.network, landings, {
			sort,
			victims: lost.filter((open) => open.sort === sort).map(({ point }) => point),
			isReached: (point) => direct.poles.sortsAt(point).has(sort),
			joins: notABond,
		}),
	);
}

/** The terminal of each load that its pole does not reach: the positive where that is dead, else the negative. */
function findOpenLoads(
	circuit: Circuit,
	{ poles, potentials }: DirectState,
): { readonly point: number; readonly sort: PoleSort }[] {
	const roughedIn = new Set(circuit.plan.runs.filter((run) => run.roughedIn).map(({ name }) => name));
	let landed: ReadonlySet<number | undefined> | undefined;
	let coming: ReadonlySet<number | undefined> | undefined;
	return circuit.loads.flatMap((load) => {
		const [positive, negative] = load.between;
		if (circuit.points[positive]?.role !== "positive" || potentials.between(positive, negative) !== undefined)
			return [];
		const [isLive, isReturned] = [poles.countAt(positive) > 0, poles.countAt(negative) > 0];
		if (isLive && isReturned) return [];
		if (roughedIn.has(circuit.partByName.get(load.part)?.run ?? "")) return [];
		landed ??= landedPoints(circuit, (run) => !roughedIn.has(run));
		// What no wire is on is not part of the plan: the battery side of an inverter of which only the mains is told.
		if (!isLive && !isReturned && !isWired(load, landed)) return [];
		const [point, sort] = isLive ? ([negative, "neutral"] as const) : ([positive, "hot"] as const);
		if (landed.has(point) || roughedIn.size === 0) return [{ point, sort }];
		// A wire from a device that is not on yet waits, whatever it is on: the coil of a relay whose switch comes later.
		coming ??= landedPoints(circuit, (run) => roughedIn.has(run));
		return coming.has(point) ? [] : [{ point, sort }];
	});
}

/** Where wires of certain runs are landed, by themselves or by a pigtail. */
function landedPoints(
	{ conductors, cableByTag }: Circuit,
	isMeant: (run: string) => boolean,
): ReadonlySet<number | undefined> {
	const landed = new Set<number | undefined>();
	for (const { role, ends, cable } of conductors)
		if (cable !== undefined && systemOfRole(role) === "dc" && isMeant(cableByTag.get(cable)?.run ?? ""))
			for (const { point } of ends) if (point !== undefined) landed.add(point);
	for (const { ends, cable } of conductors)
		if (cable === undefined && ends.some(({ point }) => landed.has(point)))
			for (const { point } of ends) if (point !== undefined) landed.add(point);
	return landed;
}

function isWired({ between }: Load, landed: ReadonlySet<number | undefined>): boolean {
	return between.some((point) => landed.has(point));
}
