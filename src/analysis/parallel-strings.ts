// Strings of solar modules in parallel that have no fuse of their own, where the others together can drive a current back through one.
import type { Circuit, Source } from "../circuit/circuit.ts";
import type { DirectState } from "./direct.ts";
import { joinAll, joinWhere } from "./joined-sets.ts";

/** A string without a fuse of its own, by the module at its top, and the strings beside it. */
export interface UnfusedString {
	readonly module: Source;
	readonly others: readonly Source[];
	/** Amperes that the others drive back through it into a fault. */
	readonly amperes: number;
}

/** Every such string of a mode; two strings in parallel need no fuse, for one cannot harm the other. */
export function findUnfusedStrings(circuit: Circuit, { network }: DirectState): readonly UnfusedString[] {
	const modules = circuit.sources.filter(({ sort }) => sort === "solar");
	if (modules.length < fewestStrings) return [];
	const joined = joinAll(network);
	const unfused = joinWhere(network, ({ by }) => by.kind === "conductor" || by.link.protection === undefined);
	const top = ({ hot }: Source): number => hot[0] ?? 0;
	// Below another module of its string stands what is joined to that one's minus.
	const tops = modules.filter(
		(module) => !modules.some(({ neutral }) => neutral !== undefined && joined.isJoined(neutral, top(module))),
	);
	const ways = new Map<number, number>();
	const count = (point: number): void => {
		const set = unfused.find(point);
		ways.set(set, (ways.get(set) ?? 0) + 1);
	};
	for (const module of tops) count(top(module));
	for (const { between } of circuit.loads) count(between[0]);
	for (const { links } of circuit.protections)
		for (const link of links) for (const point of circuit.links[link]?.between ?? []) count(point);
	return tops.flatMap((module) => {
		const others = tops.filter((other) => other !== module && joined.isJoined(top(other), top(module)));
		// Itself and one way out: what is beyond its own fuse.
		if (others.length + 1 < fewestStrings || (ways.get(unfused.find(top(module))) ?? 0) <= 2) return [];
		return [{ module, others, amperes: others.reduce((sum, { limit }) => sum + (limit ?? 0), 0) }];
	});
}

const fewestStrings = 3;
