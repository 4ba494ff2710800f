// Loads between two hots of which something opens one and not the other.
import { groupBy } from "../base/group.ts";
import type { Load, Part } from "../circuit/circuit.ts";
import { type Edge, type Network, reachFrom } from "./network.ts";
import { isHot, notABond, type PoleMap } from "./poles.ts";

/** Something that opens, and what it leaves live. */
export interface LegLeftLive {
	/** The part, with any whose handles are tied to its own. */
	readonly parts: readonly Part[];
	readonly load: Load;
	/** The terminals of the load: the one that is opened, and the one that stays live. */
	readonly opened: number;
	readonly live: number;
}

/** Every switch, disconnect and breaker of a mode that opens one of a load's two hots. */
export function findLegsLeftLive(network: Network, poles: PoleMap): readonly LegLeftLive[] {
	const { circuit } = network;
	const loads = circuit.loads.filter(({ between: [one, other] }) => isBetweenLegs(poles, one, other));
	if (loads.length === 0) return [];
	const starts = poles.poles.flatMap(({ role, points }) => (isHot(role) ? points : []));
	const partsOf = groupBy(
		circuit.links.filter(({ contact }) => contact !== undefined),
		({ contact }) => contact?.group ?? "",
	);
	const reaches = new Map<string, { has(point: number): boolean }>();
	const without = (group: string): { has(point: number): boolean } => {
		const known = reaches.get(group) ?? reachFrom(network, starts, (edge) => notABond(edge) && groupOf(edge) !== group);
		reaches.set(group, known);
		return known;
	};
	return loads.flatMap((load) => {
		const [one, other] = load.between;
		const groups = new Set([one, other].flatMap((point) => groupsTo(poles, point)));
		return [...groups].flatMap((group): LegLeftLive[] => {
			const reach = without(group);
			if (reach.has(one) === reach.has(other)) return [];
			const names = new Set((partsOf.get(group) ?? []).map(({ part }) => part));
			const parts = [...names].flatMap((name) => circuit.partByName.get(name) ?? []);
			const [opened, live] = reach.has(one) ? [other, one] : [one, other];
			return [{ parts, load, opened, live }];
		});
	});
}

/** Whether each of two points is reached by a hot of its own. */
function isBetweenLegs(poles: PoleMap, one: number, other: number): boolean {
	const hotsAt = (point: number): number[] =>
		poles.poles.flatMap(({ role }, index) => (isHot(role) && poles.reaches[index]?.has(point) === true ? [index] : []));
	const [first, second] = [hotsAt(one), hotsAt(other)];
	return first.length === 1 && second.length === 1 && first[0] !== second[0];
}

/** The groups of contacts on the way of its hot to a point. */
function groupsTo(poles: PoleMap, point: number): readonly string[] {
	return (poles.reachOf(point, "hot")?.edgesTo(point) ?? []).flatMap((edge) => groupOf(edge) ?? []);
}

function groupOf({ by }: Edge): string | undefined {
	return by.kind === "link" ? by.link.contact?.group : undefined;
}
