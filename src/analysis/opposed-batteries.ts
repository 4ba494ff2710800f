// Two batteries in a row the wrong way round: like post on like post, and what hangs on the other two gets nothing.
import type { Source } from "../circuit/circuit.ts";
import type { DirectState } from "./direct.ts";
import { joinAll } from "./joined-sets.ts";
import { liveSources } from "./network.ts";

/** Two batteries that cancel each other. */
export interface Opposed {
	readonly one: Source;
	readonly other: Source;
	/** The posts of both that are joined. */
	readonly joined: "plus" | "minus";
}

/** Every battery with the first that it cancels, as what hangs between their free posts shows. Batteries on one minus are none: it does not hang between their pluses. */
export function findOpposed({ network }: DirectState): readonly Opposed[] {
	const sources = liveSources(network);
	const batteries = sources.filter(({ sort }) => sort === "battery");
	if (batteries.length < 2) return [];
	const sets = joinAll(network);
	const find = (point: number | undefined): number => (point === undefined ? -1 : sets.find(point));
	const spans = new Set([
		...network.circuit.loads.map(({ between: [one, other] }) => `${find(one)} ${find(other)}`),
		...sources.flatMap(({ sort, hot, neutral }) => (sort === "battery" ? [] : [`${find(hot[0])} ${find(neutral)}`])),
	]);
	const hasBetween = (one: number, other: number): boolean =>
		one !== other && (spans.has(`${one} ${other}`) || spans.has(`${other} ${one}`));
	const firstAt = new Map<string, Source[]>();
	return batteries.flatMap((battery): Opposed[] => {
		const [plus, minus] = [find(battery.hot[0]), find(battery.neutral)];
		for (const [joined, own, free] of [
			["minus", minus, plus],
			["plus", plus, minus],
		] as const) {
			const met = firstAt.get(`${joined} ${own}`) ?? [];
			const freeOf = ({ hot, neutral }: Source): number => find(joined === "minus" ? hot[0] : neutral);
			const other = met.find((known) => hasBetween(freeOf(known), free));
			if (other !== undefined) return [{ one: other, other: battery, joined }];
			// Of batteries in parallel one stands for all.
			if (!met.some((known) => freeOf(known) === free)) firstAt.set(`${joined} ${own}`, [...met, battery]);
		}
		return [];
	});
}
