// A supply that brings no ground with it: its ground begins where its neutral is bonded first, most often in the panel behind it.
import { foldName } from "../plan/names.ts";
import type { Source } from "./circuit.ts";
import type { Wired } from "./transfers.ts";

/** The sources, each with the point at which its ground begins; one whose neutral is bonded nowhere has none. */
export function groundAtBonds(
	{ plan, conductors, links }: Pick<Wired, "plan" | "conductors" | "links">,
	sources: readonly Source[],
): readonly Source[] {
	const bare = sources.filter(
		({ part }) => plan.thingByName.get(foldName(part))?.blueprint.source?.groundAtBond === true,
	);
	if (bare.length === 0) return sources;
	const bonds = new Map<number, number>();
	const neighbours = new Map<number, number[]>();
	const join = (one: number, other: number): void => {
		const here = neighbours.get(one);
		if (here === undefined) neighbours.set(one, [other]);
		else here.push(other);
	};
	for (const { ends } of conductors) {
		const [one, other] = [ends[0].point, ends[1].point];
		if (one === undefined || other === undefined) continue;
		join(one, other);
		join(other, one);
	}
	for (const { nature, between } of links) {
		const [one, other] = between;
		if (nature === "bond") {
			bonds.set(one, other);
			bonds.set(other, one);
		} else {
			join(one, other);
			join(other, one);
		}
	}
	return sources.map((source) => {
		if (!bare.includes(source) || source.neutral === undefined) return source;
		const reached = new Set([source.neutral]);
		// A set hands out what is added while it is walked: nearest first.
		for (const point of reached) {
			const ground = bonds.get(point);
			if (ground !== undefined) return { ...source, ground };
			for (const next of neighbours.get(point) ?? []) reached.add(next);
		}
		return source;
	});
}
