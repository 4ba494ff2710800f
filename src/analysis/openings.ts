// Outlets and loads that one pole reaches and the other does not: where the missing way is lost.
import type { Circuit, Link } from "../circuit/circuit.ts";
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
	const inputs = new Set(halfFedInputs(network, poles));
	if (victims.size + inputs.size === 0) return [];
	for (const point of findPutOff(network, landings, victims, () => true)) victims.delete(point);
	// That a machine does not take over what comes half is no reason why it comes half.
	for (const point of findPutOff(network, landings, inputs, ({ part }) => !isCharger(network.circuit, part)))
		inputs.delete(point);
	for (const point of inputs) victims.add(point);
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

/** Of the input of an inverter-charger the one pole that another source does not reach, where it reaches the other: that source is lost to it. */
function halfFedInputs({ circuit, mode }: Network, poles: PoleMap): readonly number[] {
	const found: number[] = [];
	for (const { part, sort, name } of circuit.sources) {
		if (sort !== "inverter-charger" || mode.live.length < 2) continue;
		const inputs = (circuit.partByName.get(part)?.points ?? []).filter((index) => {
			const point = circuit.points[index];
			return point?.kind === "terminal" && point.side === "line" && point.role !== "ground";
		});
		const isFed = (point: number): boolean =>
			poles.poles.some((pole, at) => pole.source !== name && poles.reaches[at]?.has(point) === true);
		const idle = inputs.filter((point) => !isFed(point) && poles.countAt(point) === 0);
		if (idle.length < inputs.length) found.push(...idle);
	}
	return found;
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
function findPutOff(
	network: Network,
	landings: Landings,
	victims: ReadonlySet<number>,
	counts: (link: Link) => boolean,
): number[] {
	const { circuit, mode } = network;
	if (victims.size === 0) return [];
	const parted = new Set<number>();
	const joined = new Set<number>();
	for (const link of circuit.links) {
		const { modes, nature, between } = link;
		if (modes === undefined || nature === "bond" || !counts(link)) continue;
		for (const point of between) (modes.has(mode.name) ? joined : parted).add(point);
	}
	for (const point of joined) parted.delete(point);
	if (parted.size === 0) return [];
	const islands = joinWhere(network, notABond);
	const asleep = new Set([...parted].map((point) => islands.find(point)));
	return [...victims].filter((point) => landings.sortAt(point) === "hot" && asleep.has(islands.find(point)));
}

function isCharger({ sources }: Circuit, name: string): boolean {
	return sources.some(({ part, sort }) => part === name && sort === "inverter-charger");
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
