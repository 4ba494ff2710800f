// Why a mistake that no rule finds does no harm; only what is proven here counts as harmless.
import type { Circuit } from "../circuit/circuit.ts";
import { isInterchanged } from "./interchange.ts";
import { netsOf } from "./nets.ts";

/**
 * The reason why a circuit with a slip in it, in which every limit is kept, is as good as the one before; undefined where none is
 * known.
 */
export function findHarmless(before: Circuit, wrong: Circuit): string | undefined {
	if (isJoinedAlike(before, wrong)) return "the same terminals are joined as before";
	if (isInterchanged(before, wrong))
		return "what was exchanged is interchangeable: either way round it is the same circuit";
	return undefined;
}

/** Whether every terminal and every metal case is joined with the same others as before. */
function isJoinedAlike(before: Circuit, wrong: Circuit): boolean {
	const [old, now] = [netsOf(before), netsOf(wrong)];
	const pairs = new Map<number, number>();
	const back = new Map<number, number>();
	for (const { index, kind } of before.points) {
		if (kind === "splice") continue;
		const [was, is] = [old[index] ?? index, now[index] ?? index];
		if ((pairs.get(was) ?? is) !== is || (back.get(is) ?? was) !== was) return false;
		pairs.set(was, is);
		back.set(is, was);
	}
	return true;
}
