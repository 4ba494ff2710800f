// Panels of two legs of which both hang on one leg of a source that has two: by a two-pole breaker with both its stabs on one leg.
import type { Part, Source } from "../circuit/circuit.ts";
import type { ModeState } from "./analysis.ts";
import { liveSources, type Reach } from "./network.ts";
import type { Pole, PoleMap } from "./poles.ts";

/** One such panel. */
export interface MergedPanel {
	readonly part: Part;
	readonly source: Source;
	readonly pole: Pole;
	/** Its two legs, the last with the way on which the source's one leg comes to it. */
	readonly legs: readonly [number, number];
	readonly reach: Reach;
	/** The part at which the ways to the two legs part; undefined where no part does it. */
	readonly at: string | undefined;
}

/** Every such panel of a mode. Legs that are bridged in the panel itself are one on purpose. */
export function findMergedPanels({ network, crossings: { poles } }: ModeState): readonly MergedPanel[] {
	const { circuit } = network;
	const sources = liveSources(network).filter(({ hot }) => hot.length > 1);
	if (sources.length === 0) return [];
	return circuit.parts.flatMap((part): MergedPanel[] => {
		const [one, other] = part.points;
		if (one === undefined || other === undefined || !part.face.traits.includes("panel")) return [];
		for (const source of sources) {
			const ways = waysTo(poles, source, [one, other]);
			const [way] = ways;
			if (way === undefined || ways.length > 1 || !way.reach.has(one) || !way.reach.has(other)) continue;
			const parting = findParting(way.reach, one, other);
			if (parting !== undefined) return [{ part, source, legs: [one, other], ...way, at: parting.at }];
		}
		return [];
	});
}

interface Way {
	readonly pole: Pole;
	readonly reach: Reach;
}

/** The legs of a source that reach any of some points. */
function waysTo({ poles, reaches }: PoleMap, { name, hot }: Source, points: readonly number[]): Way[] {
	return poles.flatMap((pole, index) => {
		const reach = reaches[index];
		const isLeg = pole.source === name && hot.includes(pole.points[0] ?? -1);
		return isLeg && reach !== undefined && points.some((point) => reach.has(point)) ? [{ pole, reach }] : [];
	});
}

/** Where the ways to two points part; undefined where the one leads through the other. */
function findParting(reach: Reach, one: number, other: number): { readonly at: string | undefined } | undefined {
	const [first, second] = [reach.edgesTo(one), reach.edgesTo(other)];
	if (first.some(({ from }) => from === other) || second.some(({ from }) => from === one)) return undefined;
	const index = first.findIndex((edge, at) => edge !== second[at]);
	const by = first[index]?.by;
	return { at: by?.kind === "link" ? by.link.part : undefined };
}
