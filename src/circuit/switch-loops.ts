// Cables that bring the hot to a switch and take it back: what each core of them is for, and the knots it waits in at both ends.
import { groupBy } from "../base/group.ts";
import type { LoopSpec, Role } from "../kinds/kind.ts";
import { markedRole } from "../plan/marked-role.ts";
import { foldName } from "../plan/names.ts";
import type { Hop, Plan, Thing } from "../plan/plan.ts";

/** What the cores of loops do, by the hops that are said to be loops. */
export interface SwitchLoops {
	/** The knots in which the cores of a loop wait, in their order, at the start and at the end; undefined for any other hop. */
	knotsOf(hop: Hop): readonly (readonly [Knot, Knot])[] | undefined;
	/** Whether a thing's own hot hangs on what comes back from a switch, because a loop leaves it. */
	isSwitched(thing: Thing): boolean;
}

/** A knot by the name the thing's kind would give it; undefined where the core is capped. */
type Knot = string | undefined;
/** What a core of a loop is for. */
type Use = "supply" | "back" | "traveller-1" | "traveller-2" | "neutral" | "ground" | "spare";
/** What a loop brings besides travellers: the hot and what comes back, or one of them where a second loop has the other. */
type Brings = "both" | "supply" | "back";

/** Loops that follow one another from what they switch to the last switch. */
interface Chain {
	readonly start: Thing;
	readonly hops: Hop[];
}

/** Works out every loop of a plan. */
export function planLoops(plan: Plan): SwitchLoops {
	const find = (name: string): Thing | undefined => plan.thingByName.get(foldName(name));
	const isLoop = recogniseLoops(plan, find);
	const chains = findChains(plan, find, isLoop);
	const knots = new Map<Hop, readonly (readonly [Knot, Knot])[]>();
	for (const [start, mine] of groupBy(chains, (chain) => chain.start)) {
		const pairArrives = plan.runs.some(({ hops }) => hops.some((hop) => !isLoop(hop) && bringsPair(hop, start, find)));
		const governing = mine.filter(({ hops }) => hops.some((hop) => find(hop.to.thing)?.blueprint.loop?.sort === "end"));
		for (const { hops } of mine) {
			const place = governing.findIndex((chain) => chain.hops === hops);
			const isPair = place >= 0 && (pairArrives || governing.length > 1);
			const brings: Brings = !isPair ? "both" : pairArrives || place > 0 ? "back" : "supply";
			hops.forEach((hop, index) => {
				const uses = usesOf(hop, brings, index === 0);
				const [from, to] = [find(hop.from.thing), find(hop.to.thing)];
				knots.set(
					hop,
					uses.map((use) => [
						index === 0
							? knotAtStart(start, use, pairArrives)
							: knotAtSwitch(from?.blueprint.loop, use, { leaves: true, isFirst: index === 1 && brings === "both" }),
						knotAtSwitch(to?.blueprint.loop, use, {
							leaves: false,
							isFirst: index === 0 && brings === "both",
							isLast: index === hops.length - 1,
						}),
					]),
				);
			});
		}
	}
	const starts = new Set(chains.map(({ start }) => start));
	return { knotsOf: (hop) => knots.get(hop), isSwitched: (thing) => starts.has(thing) };
}

/**
 * A cable is a loop where that is said, and where its white is re-marked so that it has no neutral, though what it leaves is fed
 * with one, and it ends at a switch from which nothing but such cables goes on.
 */
function recogniseLoops(plan: Plan, find: (name: string) => Thing | undefined): (hop: Hop) => boolean {
	const hops = plan.runs.flatMap((run) => run.hops);
	if (!hops.some((hop) => hop.loop || hop.markings.length > 0)) return () => false;
	const leaving = groupBy(hops, (hop) => hop.from.thing);
	const isMarked = (hop: Hop): boolean => {
		const onward = leaving.get(hop.to.thing) ?? [];
		return (
			hop.markings.length > 0 &&
			!rolesOf(hop).includes("neutral") &&
			find(hop.to.thing)?.blueprint.loop !== undefined &&
			onward.every((next) => next !== hop && isMarked(next))
		);
	};
	const found = new Set<Hop>();
	const ends = new Set<string>();
	const isFedWithNeutral = (thing: string): boolean =>
		hops.some((other) => other.to.thing === thing && rolesOf(other).includes("neutral"));
	const starts = (thing: string): boolean =>
		find(thing)?.blueprint.sides.some(({ name }) => name === "switched") === true && isFedWithNeutral(thing);
	for (const hop of hops) {
		if (!hop.loop && !(isMarked(hop) && (ends.has(hop.from.thing) || starts(hop.from.thing)))) continue;
		found.add(hop);
		ends.add(hop.to.thing);
	}
	return (hop) => found.has(hop);
}

function rolesOf({ cable, markings }: Hop): readonly Role[] {
	return cable.cores.map((core) => markedRole(core, cable, markings));
}

function findChains(plan: Plan, find: (name: string) => Thing | undefined, isLoop: (hop: Hop) => boolean): Chain[] {
	const chains: Chain[] = [];
	const reachedBy = new Map<string, Chain>();
	for (const { hops } of plan.runs)
		for (const hop of hops) {
			const start = find(hop.from.thing);
			if (!isLoop(hop) || start === undefined) continue;
			const known = reachedBy.get(hop.from.thing);
			const chain = known ?? { start, hops: [] };
			if (known === undefined) chains.push(chain);
			chain.hops.push(hop);
			reachedBy.set(hop.to.thing, chain);
		}
	return chains;
}

/** Travellers to a thing: a cable with two hots that arrives there, or one that is written from there to their switch. */
function bringsPair(hop: Hop, thing: Thing, find: (name: string) => Thing | undefined): boolean {
	if (!rolesOf(hop).includes("hot2")) return false;
	const far = find(hop.to.thing)?.blueprint.loop?.sort;
	return hop.to.thing === thing.name || (hop.from.thing === thing.name && (far === "end" || far === "between"));
}

/**
 * By custom the white takes the hot to the switch and black brings it back (NEC 200.7(C)(1), recalled); with a conductor to
 * spare black and red do both and white stays a neutral. Between switches black and red, or red and blue, are the travellers.
 */
function usesOf({ cable: { cores } }: Hop, brings: Brings, isFirst: boolean): readonly Use[] {
	const live = cores.filter(({ role }) => role !== "ground").length;
	const pass = brings === "back" ? "back" : "supply";
	const uses: readonly Use[] =
		isFirst && brings === "both"
			? live === 2
				? ["back", "supply"]
				: ["supply", "back", ...spares(live - 3), "neutral"]
			: live > 3
				? [pass, "traveller-1", "traveller-2", ...spares(live - 4), "neutral"]
				: brings === "back"
					? ["back", "traveller-1", "traveller-2"]
					: ["traveller-1", "traveller-2", pass];
	let next = 0;
	return cores.map(({ role }) => (role === "ground" ? "ground" : (uses[next++] ?? "spare")));
}

function spares(count: number): readonly Use[] {
	return Array.from({ length: Math.max(0, count) }, () => "spare");
}

/** In the box of what is switched: the hot of its feed, its own hot apart from that, and travellers where they meet. */
function knotAtStart({ blueprint: { sides } }: Thing, use: Use, pairArrives: boolean): Knot {
	const knots = sides[0]?.knots;
	switch (use) {
		case "supply":
			return knots?.hot;
		case "back":
			return sides.find(({ name }) => name === "switched")?.knots.hot;
		case "traveller-1":
			return pairArrives ? knots?.hot : use;
		case "traveller-2":
			return pairArrives ? knots?.hot2 : use;
		case "spare":
			return undefined;
		default:
			return knots?.[use];
	}
}

/** At a switch, or at a box on the way to one, through which everything passes. */
function knotAtSwitch(
	loop: LoopSpec | undefined,
	use: Use,
	at: { readonly leaves: boolean; readonly isFirst: boolean; readonly isLast?: boolean },
): Knot {
	if (use === "spare") return undefined;
	if (use === "neutral" || use === "ground")
		return use === "neutral" ? "^neutral" : loop === undefined ? "^ground" : use;
	const traveller = use === "traveller-1" ? 0 : use === "traveller-2" ? 1 : undefined;
	switch (loop?.sort) {
		case "plain":
			return use === "supply" ? loop.supply : use === "back" ? loop.back : undefined;
		case "end":
			if (traveller !== undefined) return loop.travellers[traveller];
			if (!at.isFirst) return loop.common;
			// The first of several hands the hot on to the last; alone it switches like a plain one.
			if (use === "supply") return at.isLast === true ? loop.common : "loop";
			return at.isLast === true ? loop.travellers[0] : loop.common;
		case "between":
			return traveller === undefined ? "loop" : loop[at.leaves ? "load" : "line"][traveller];
		case undefined:
			return `loop-${use}`;
	}
}
