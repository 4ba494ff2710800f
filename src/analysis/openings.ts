// Outlets and loads that one pole reaches and the other does not: where the missing way is lost.
import { type Break, findBreaks } from "./breaks.ts";
import { joinWhere } from "./joined-sets.ts";
import type { Landings } from "./landings.ts";
import { belongsTo, type Network } from "./network.ts";
import { notABond, type PoleMap, type PoleSort } from "./poles.ts";

/** The breaks of a mode behind which an outlet or a load has a hot and no way back, or a way back and no hot. */
export function traceOpenings(network: Network, landings: Landings, poles: PoleMap): readonly Break[] {
	const victims = new Set<number>();
	for (const { between, part } of network.circuit.loads) {
		const [one, other] = between;
		// A load for the other system has its ways there.
		if (!belongsTo(network, network.circuit.points[one]?.role)) continue;
		const [first, second] = [poles.countAt(one) > 0, poles.countAt(other) > 0];
		if (first !== second) victims.add(first ? other : one);
		// Between two hots, what has a neutral terminal besides asks for the neutral too.
		else if (first) for (const point of idleNeutrals(network, poles, part, one, other)) victims.add(point);
	}
	if (victims.size === 0) return [];
	for (const point of findPutOff(network, landings, victims)) victims.delete(point);
	const openings = (["hot", "neutral"] as const satisfies readonly PoleSort[]).flatMap((sort) =>
		findBreaks(network, landings, {
			sort,
			victims: [...victims].filter((point) => landings.sortAt(point) === sort).toSorted((one, other) => one - other),
			isReached: (point) => poles.sortsAt(point).has(sort),
			joins: notABond,
		}),
	);
	return openings.map((lost) => lackOfSecondHot(network, lost));
}

/** Neutral terminals that nothing reaches, of a part with a load between two hots. */
function idleNeutrals(
	{ circuit }: Network,
	poles: PoleMap,
	part: string,
	one: number,
	other: number,
): readonly number[] {
	if (circuit.points[one]?.role !== "hot" || circuit.points[other]?.role !== "hot2") return [];
	const points = circuit.partByName.get(part)?.points ?? [];
	return points.filter((point) => circuit.points[point]?.role === "neutral" && poles.countAt(point) === 0);
}

/** Of loads without a hot those that are off in this mode on purpose: a transfer that stands elsewhere parts them from their supply. */
function findPutOff(network: Network, landings: Landings, victims: ReadonlySet<number>): number[] {
	const { circuit, mode } = network;
	const parted = new Set<number>();
	const joined = new Set<number>();
	for (const { modes, nature, between } of circuit.links) {
		if (modes === undefined || nature === "bond") continue;
		for (const point of between) (modes.has(mode.name) ? joined : parted).add(point);
	}
	for (const point of joined) parted.delete(point);
	if (parted.size === 0) return [];
	const islands = joinWhere(network, notABond);
	const asleep = new Set([...parted].map((point) => islands.find(point)));
	return [...victims].filter((point) => landings.sortAt(point) === "hot" && asleep.has(islands.find(point)));
}

/** An empty terminal for a second hot in a box into which no cable brings one: the cable is what lacks it. */
function lackOfSecondHot({ circuit }: Network, lost: Break): Break {
	const point = lost.cause.kind === "empty" ? circuit.points[lost.cause.point] : undefined;
	if (point?.role !== "hot2") return lost;
	const cables = circuit.cables.filter(({ from, to }) => from === point.enclosure || to === point.enclosure);
	const [first] = cables;
	const brings = cables.some(({ conductors }) =>
		conductors.some((index) => circuit.conductors[index]?.role === "hot2"),
	);
	if (first === undefined || brings) return lost;
	return { ...lost, cause: { kind: "core", cable: first.tag }, place: first.tag, span: first.span };
}
