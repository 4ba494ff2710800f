// What asks for two legs where every source that feeds it has one: panels with two bus legs, and loads between two hots.
import type { Load, Part, Source } from "../circuit/circuit.ts";
import type { Analysis } from "./analysis.ts";

/** A panel with a leg that no source has. */
export interface ShortPanel {
	readonly part: Part;
	readonly sources: readonly Source[];
	/** A leg that is live, and one that nothing feeds. */
	readonly live: number;
	readonly dead: number;
}

/** Every panel of two legs whose sources have one in every mode. */
export function findShortPanels(analysis: Analysis): readonly ShortPanel[] {
	return analysis.circuit.parts.flatMap((part) => findShortPanel(analysis, part) ?? []);
}

/** What a part lacks, where it is a panel of two legs whose sources have one. */
export function findShortPanel(analysis: Analysis, part: Part): ShortPanel | undefined {
	if (!part.face.traits.includes("panel") || part.points.length < 2) return undefined;
	const sources = oneLeggedSources(analysis, part.points);
	const isLive = (leg: number): boolean => analysis.states.some(({ poles }) => poles.sortsAt(leg).has("hot"));
	const [live, dead] = [part.points.find(isLive), part.points.find((leg) => !isLive(leg))];
	return sources.length === 0 || live === undefined || dead === undefined ? undefined : { part, sources, live, dead };
}

/** The sources of a load between two hots, where none of them has two; empty for every other load. */
export function findMissingLeg(analysis: Analysis, { between }: Load): readonly Source[] {
	const roles = between.map((point) => analysis.circuit.points[point]?.role);
	return roles.includes("hot") && roles.includes("hot2") ? oneLeggedSources(analysis, between) : [];
}

/** The sources that reach some of the points in some mode; empty where one of them has two legs, for then one is lost on the way. */
function oneLeggedSources({ circuit, states }: Analysis, points: readonly number[]): readonly Source[] {
	const feeding = circuit.sources.filter(({ name }) =>
		states.some(({ poles }) =>
			poles.poles.some((pole, at) => pole.source === name && points.some((point) => poles.reaches[at]?.has(point))),
		),
	);
	return feeding.some(({ hot }) => hot.length > 1) ? [] : feeding;
}
