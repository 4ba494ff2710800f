// Three-way switches between which no travellers run: both their commons are on one wire, and their throws lead nowhere.

import { groupBy } from "../base/group.ts";
import type { Circuit } from "../circuit/circuit.ts";
import { joinWhere } from "./joined-sets.ts";
import type { Network } from "./network.ts";
import type { PoleMap } from "./poles.ts";
import { findSwitches } from "./switching.ts";

/** Switches whose commons one wire joins, and whose throws are all empty. */
export interface EmptyTravellers {
	readonly parts: readonly string[];
	/** The common of the first. */
	readonly common: number;
	/** Every empty terminal. */
	readonly empty: readonly number[];
}

/** All of them in a mode, those on one wire together. */
export function findEmptyTravellers(network: Network, poles: PoleMap): readonly EmptyTravellers[] {
	const several = findSwitches(network.circuit).filter(({ contacts }) => contacts.length > 1);
	if (several.length === 0) return [];
	const landed = landedPoints(network.circuit);
	const lost = several.flatMap(({ part, contacts: [first, ...others] }) => {
		const common = first?.between.find((point) => others.every(({ between }) => between.includes(point)));
		if (first === undefined || common === undefined || !landed.has(common) || !poles.sortsAt(common).has("hot"))
			return [];
		const empty = [first, ...others].flatMap(({ between }) => between.filter((point) => point !== common));
		return empty.some((point) => landed.has(point)) ? [] : [{ part, common, empty }];
	});
	if (lost.length === 0) return [];
	const sets = joinWhere(network, ({ by }) => by.kind === "conductor");
	return [...groupBy(lost, ({ common }) => sets.find(common)).values()].flatMap((group) =>
		group.slice(0, 1).map(({ common }) => ({
			parts: group.map(({ part }) => part),
			common,
			empty: group.flatMap(({ empty }) => empty),
		})),
	);
}

function landedPoints({ conductors }: Circuit): ReadonlySet<number> {
	const landed = new Set<number>();
	for (const { ends } of conductors) for (const { point } of ends) if (point !== undefined) landed.add(point);
	return landed;
}
