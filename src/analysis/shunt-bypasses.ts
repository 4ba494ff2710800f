// What flows past a shunt: loads and chargers whose minus is on the battery's side of it, and wires that lead round it.
import { certain } from "../base/certain.ts";
import type { Circuit, Conductor, Load, Part, Source } from "../circuit/circuit.ts";
import type { DirectState } from "./direct.ts";
import { joinWhere } from "./joined-sets.ts";
import { type Edge, reachFrom } from "./network.ts";
import { ownLinks } from "./own-links.ts";

/** A shunt past which current flows. */
export interface BypassedShunt {
	readonly shunt: Part;
	/** The conductors of a way round it; empty where there is none. */
	readonly round: readonly Conductor[];
	/** Parts whose minus is on the battery's side. */
	readonly past: readonly string[];
}

/** Every such shunt that stands in the negative of a battery. */
export function findBypassedShunts(circuit: Circuit, direct: DirectState): readonly BypassedShunt[] {
	const shunts = circuit.parts.filter(({ kind }) => kind === "shunt");
	if (shunts.length === 0) return [];
	const names = new Set(shunts.map(({ name }) => name));
	const through = ownLinks(circuit, names);
	const allow = ({ by }: Edge): boolean => by.kind === "conductor" || !through.has(by.link.index);
	const joined = joinWhere(direct.network, allow);
	return shunts.flatMap((shunt): BypassedShunt[] => {
		const [line, load] = shunt.points;
		if (line === undefined || load === undefined) return [];
		const sorts = direct.poles.sortsAt(line);
		if (sorts.has("hot") || !sorts.has("neutral")) return [];
		if (joined.isJoined(line, load)) {
			const way = reachFrom(direct.network, [line], allow).edgesTo(load);
			// Its own leads are where they should be: what lies between them leads round it.
			const round = way.flatMap(({ by, from, to }) =>
				by.kind === "conductor" && (way.length < 3 || ![from, to].some((point) => shunt.points.includes(point)))
					? [certain(circuit.conductors[by.index], "a conductor")]
					: [],
			);
			return [{ shunt, round, past: [] }];
		}
		const sides = [line, load].map((point) => hangingOn(circuit, (other) => joined.isJoined(other, point)));
		// With batteries on both sides it is for those on which less hangs besides.
		const [measured] = sides
			.filter(({ batteries }) => batteries > 0)
			.toSorted((one, other) => one.others.length - other.others.length);
		return measured === undefined || measured.others.length === 0 ? [] : [{ shunt, round: [], past: measured.others }];
	});
}

/** What has its minus among some points: how many batteries, and what else by name. */
function hangingOn(
	{ sources, loads, points }: Circuit,
	isThere: (point: number) => boolean,
): { readonly batteries: number; readonly others: readonly string[] } {
	const isOn = ({ neutral, system }: Source): boolean => system === "dc" && neutral !== undefined && isThere(neutral);
	const here = sources.filter(isOn);
	const drawing = loads.filter(
		(load: Load) => points[load.between[1]]?.role === "negative" && isThere(load.between[1]) && !isSenseLead(load),
	);
	return {
		batteries: here.filter(({ sort }) => sort === "battery").length,
		others: [...new Set([...drawing, ...here.filter(({ sort }) => sort !== "battery")].map(({ part }) => part))],
	};
}

/** The meter of the shunt itself draws next to nothing, and takes its own supply where it likes. */
function isSenseLead({ watts }: Load): boolean {
	return watts !== undefined && watts <= 1;
}
