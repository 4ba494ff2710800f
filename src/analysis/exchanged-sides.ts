// Converters, dc-dc chargers and solar controllers whose two sides are exchanged, or joined to one another.
import type { Circuit, Load, Source } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";
import type { DirectState } from "./direct.ts";
import { isAlike } from "./direct.ts";
import { joinAll, joinWhere } from "./joined-sets.ts";

/** How the sides of a thing are exchanged, and what shows it. */
export interface ExchangedSides {
	readonly part: string;
	/** `joined`: both sides on one battery; `volts`: each has the other's volts; `modules`, `alternator`: what charges is on `out`; `engine`: the battery there is the one beside the engine. */
	readonly sort: "joined" | "volts" | "modules" | "alternator" | "engine";
	/** The source on `out` that shows it. */
	readonly shownBy: Source | undefined;
}

/** Every such thing of a mode. */
export function findExchangedSides(circuit: Circuit, { network }: DirectState): readonly ExchangedSides[] {
	const pairs = sidesOf(circuit);
	if (pairs.length === 0) return [];
	const joined = joinAll(network);
	// What a handle or a coil parts, such as the tie between two banks for a flat engine battery, is meant to.
	const always = joinWhere(
		network,
		({ by }) => by.kind === "conductor" || by.link.contact === undefined || by.link.protection !== undefined,
	);
	const kindOf = (part: string): string | undefined => circuit.partByName.get(part)?.kind;
	return pairs.flatMap(({ load, source }): ExchangedSides[] => {
		const [into] = load.between;
		const [out] = source.hot;
		if (out === undefined) return [];
		const { part } = source;
		if (always.find(into) === always.find(out)) return [{ part, sort: "joined", shownBy: undefined }];
		const meets = (point: number): Source[] =>
			circuit.sources.filter(
				(other) => other.system === "dc" && other.part !== part && other.hot.some((hot) => joined.isJoined(hot, point)),
			);
		const [onIn, onOut] = [meets(into), meets(out)];
		const found = (sort: ExchangedSides["sort"], shows: (other: Source) => boolean): ExchangedSides[] => {
			const shownBy = onIn.some(shows) ? undefined : onOut.find(shows);
			return shownBy === undefined ? [] : [{ part, sort, shownBy }];
		};
		if (kindOf(part) === "solar-controller") return found("modules", ({ sort }) => sort === "solar");
		const made = load.volts ?? source.volts;
		if (!isAlike(made, source.volts)) return found("volts", ({ volts }) => isAlike(volts, made));
		if (kindOf(part) !== "dc-dc" || onIn.length === 0) return [];
		const charged = found("alternator", (other) => kindOf(other.part) === "alternator");
		// What an alternator fills is the engine's battery, wherever it stands.
		if (charged.length > 0 || onIn.some((other) => kindOf(other.part) === "alternator")) return charged;
		return found("engine", (other) => isAtEngine(circuit, other));
	});
}

/** Whether a battery stands beside the engine and is of the sort that cranks it: no lithium bears the heat there. */
function isAtEngine({ partByName, plan }: Circuit, { sort, part }: Source): boolean {
	if (sort !== "battery" || partByName.get(part)?.enclosure.place?.traits.has("engine-space") !== true) return false;
	const chemistry = plan.thingByName.get(foldName(part))?.said.choice("chemistry");
	return chemistry !== undefined && chemistry !== "lithium";
}

/** Parts that take direct current on one side and give it on another. */
function sidesOf({ loads, sources, points }: Circuit): { readonly load: Load; readonly source: Source }[] {
	return sources.flatMap((source) => {
		if (source.system !== "dc" || source.sort !== "other") return [];
		const load = loads.find(
			({ part, between: [positive] }) => part === source.part && points[positive]?.role === "positive",
		);
		return load === undefined ? [] : [{ load, source }];
	});
}
