// Which sources and loads for direct current lie in a loop: what does not can carry no current, whatever is switched on.
import type { Circuit, Load, Source } from "../circuit/circuit.ts";
import { type JoinedSets, joinAll } from "./joined-sets.ts";
import { liveSources, type Network } from "./network.ts";

/** A source or load that no loop leads through. */
export interface Loopless {
	readonly thing: Source | Load;
	/** What hangs on each of its poles besides itself. */
	readonly positive: Hanging;
	readonly negative: Hanging;
}

/** What hangs on one pole, with all that its own loops and ways lead to. */
export interface Hanging {
	/** Whether a source or load is on the pole itself. */
	readonly isJoined: boolean;
	/** Sources among all that hangs there. */
	readonly sources: number;
}

/** A source or load as a way between two sets of joined points. */
interface Bridge {
	readonly thing: Source | Load;
	readonly ends: readonly [number, number];
}

/** Every source, then every load, that is in no loop in a mode, with every contact closed; `sets` are the points that are joined. */
export function findLoopless(
	network: Network,
	sets: Pick<JoinedSets, "find"> = joinAll(network),
): {
	readonly sources: readonly Loopless[];
	readonly loads: readonly Loopless[];
} {
	const { circuit } = network;
	const ways = waysOf(circuit, liveSources(network), sets);
	const search = new BridgeSearch(ways);
	const loopless = ways.flatMap((way, index) => search.judge(way, index));
	const isSource = ({ thing }: Loopless): boolean => "hot" in thing;
	return { sources: loopless.filter(isSource), loads: loopless.filter((one) => !isSource(one)) };
}

function waysOf({ loads, points }: Circuit, sources: readonly Source[], sets: Pick<JoinedSets, "find">): Bridge[] {
	const banks = new Set<string>();
	return [
		...sources.flatMap((source): Bridge[] => {
			const [plus] = source.hot;
			if (plus === undefined || source.neutral === undefined) return [];
			const ends = [sets.find(plus), sets.find(source.neutral)] as const;
			// Batteries in parallel are one: with nothing else on them, what goes round between them helps nobody.
			if (source.sort === "battery" && banks.size === banks.add(ends.join()).size) return [];
			return [{ thing: source, ends }];
		}),
		...loads.flatMap((load): Bridge[] =>
			points[load.between[0]]?.role === "positive"
				? [{ thing: load, ends: [sets.find(load.between[0]), sets.find(load.between[1])] }]
				: [],
		),
	];
}

/** The ways of a graph whose loss parts it: found by one walk that numbers sets in the order they are met. */
class BridgeSearch {
	private readonly ways: readonly Bridge[];
	private readonly waysAt = new Map<number, number[]>();
	private readonly numbers = new Map<number, number>();
	/** The lowest number that a set, or one behind it in the walk, leads back to. */
	private readonly lowest = new Map<number, number>();
	/** Sources behind a set in the walk, and by the walk's start in the whole island. */
	private readonly sourcesBehind = new Map<number, number>();
	private readonly startOf = new Map<number, number>();

	constructor(ways: readonly Bridge[]) {
		this.ways = ways;
		ways.forEach(({ ends }, index) => {
			for (const end of new Set(ends)) {
				const there = this.waysAt.get(end);
				if (there === undefined) this.waysAt.set(end, [index]);
				else there.push(index);
			}
		});
		for (const set of this.waysAt.keys()) if (!this.numbers.has(set)) this.walk(set);
	}

	/** What is lost with a way, where it is in no loop. */
	judge({ thing, ends: [positive, negative] }: Bridge, index: number): Loopless[] {
		if (positive === negative) return [];
		const [upper, lower] =
			this.numberOf(positive) < this.numberOf(negative) ? [positive, negative] : [negative, positive];
		if ((this.lowest.get(lower) ?? 0) <= this.numberOf(upper)) return [];
		const own = "hot" in thing ? 1 : 0;
		const behind = this.sourcesBehind.get(lower) ?? 0;
		const all = this.sourcesBehind.get(this.startOf.get(lower) ?? lower) ?? 0;
		const hanging = (set: number): Hanging => ({
			isJoined: (this.waysAt.get(set) ?? []).some((way) => way !== index),
			sources: set === lower ? behind : all - behind - own,
		});
		return [{ thing, positive: hanging(positive), negative: hanging(negative) }];
	}

	private numberOf(set: number): number {
		return this.numbers.get(set) ?? 0;
	}

	/** Depth first, with a list in place of calls: a long chain must not run out of them. */
	private walk(start: number): void {
		const open: { readonly set: number; readonly by: number; next: number }[] = [{ set: start, by: -1, next: 0 }];
		this.meet(start, start);
		for (let here = open.at(-1); here !== undefined; here = open.at(-1)) {
			const way = (this.waysAt.get(here.set) ?? [])[here.next];
			if (way === undefined) {
				open.pop();
				this.close(here, open.at(-1)?.set);
				continue;
			}
			here.next++;
			if (way === here.by) continue;
			const [one, other] = this.ways[way]?.ends ?? [here.set, here.set];
			const to = one === here.set ? other : one;
			if (this.numbers.has(to)) this.lower(here.set, this.numberOf(to));
			else {
				this.meet(to, start);
				open.push({ set: to, by: way, next: 0 });
			}
		}
	}

	private meet(set: number, start: number): void {
		this.lowest.set(set, this.numbers.size);
		this.numbers.set(set, this.numbers.size);
		this.startOf.set(set, start);
	}

	private lower(set: number, number: number): void {
		if (number < (this.lowest.get(set) ?? 0)) this.lowest.set(set, number);
	}

	private close({ set, by }: { readonly set: number; readonly by: number }, above: number | undefined): void {
		// A source counts where its plus is.
		const here = (this.waysAt.get(set) ?? []).filter((way) => {
			const bridge = this.ways[way];
			return bridge !== undefined && "hot" in bridge.thing && bridge.ends[0] === set && way !== by;
		}).length;
		const behind = (this.sourcesBehind.get(set) ?? 0) + here;
		this.sourcesBehind.set(set, behind);
		if (above === undefined) return;
		this.lower(above, this.lowest.get(set) ?? 0);
		this.sourcesBehind.set(above, (this.sourcesBehind.get(above) ?? 0) + behind + this.ownWay(by, set));
	}

	/** The source by which the walk came to a set counts for the set above it. */
	private ownWay(by: number, set: number): number {
		const bridge = this.ways[by];
		return bridge !== undefined && "hot" in bridge.thing && bridge.ends[0] === set ? 1 : 0;
	}
}
