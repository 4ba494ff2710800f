// Loads whose hot goes through a breaker of two poles while their neutral goes past it, or through another.
import type { Circuit, Link, Part } from "../circuit/circuit.ts";
import type { ModeState } from "./analysis.ts";
import { joinWhere } from "./joined-sets.ts";
import { notABond, type PoleMap, sortOfRole } from "./poles.ts";

/** What one breaker parts from its neutral. */
export interface PartedNeutral {
	readonly device: Part;
	/** The loads, by their parts. */
	readonly parts: readonly string[];
	/** The breaker that opens the neutral instead; undefined where none does. */
	readonly opens: string | undefined;
	/** The end by which the neutral leaves the board; undefined where it is none that was said. */
	readonly end: { readonly conductor: number; readonly which: 0 | 1 } | undefined;
}

/** Every breaker of a mode with two poles that does not open hot and neutral of its loads together. */
export function findPartedNeutrals(circuit: Circuit, state: ModeState): readonly PartedNeutral[] {
	const neutrals = neutralContacts(circuit);
	if (neutrals.size === 0) return [];
	const { network, poles } = state.crossings;
	const contacts = new Set([...neutrals.values()].map(({ index }) => index));
	const sets = joinWhere(
		network,
		(edge) => notABond(edge) && (edge.by.kind === "conductor" || !contacts.has(edge.by.link.index)),
	);
	const behind = new Map([...neutrals].map(([part, { between }]) => [sets.find(between[1]), part]));
	const found = new Map<string, { device: Part; parts: string[]; opens: string | undefined; neutral: number }>();
	const aheadOf = nextAhead(poles, neutrals);
	// What a source's neutral comes to with all of them open.
	const fed = new Set(
		poles.poles.flatMap((pole) => (pole.role === "neutral" ? pole.points.map((point) => sets.find(point)) : [])),
	);
	/** Holds what hangs on a hot and a neutral against the next device ahead that opens both. */
	const hold = (part: string, hot: number, neutral: number): void => {
		const own = aheadOf(hot);
		const device = circuit.partByName.get(own?.part ?? "");
		if (own === undefined || device === undefined) return;
		const [ahead, after] = own.between.map((point) => sets.find(point));
		const at = sets.find(neutral);
		// Where two are joined behind their contacts, each leaves the other's neutral on.
		const isOpened = at === after && ahead !== after && !fed.has(at);
		if (isOpened && behind.get(at) === own.part) return;
		const known = found.get(device.name);
		if (known !== undefined) known.parts.push(part);
		else
			found.set(device.name, {
				device,
				parts: [part],
				opens: ahead === after || fed.has(at) ? undefined : behind.get(at),
				neutral,
			});
	};
	for (const { loads } of state.returns) for (const { load, neutral, hot } of loads) hold(load.part, hot, neutral);
	// A breaker behind another is to that one what a load is to it.
	for (const { part, nature, between } of circuit.links) {
		const own = neutrals.get(part);
		if (own === undefined || nature !== "contact" || isNeutral(circuit, between[0])) continue;
		const line = between.find((point) => poles.sortsAt(point).has("hot") && aheadOf(point)?.part !== part);
		if (line !== undefined) hold(part, line, own.between[0]);
	}
	return [...found.values()].map(({ device, parts, opens, neutral }) => ({
		device,
		parts: [...new Set(parts)],
		opens,
		end: findEnd(circuit, state, device, neutral),
	}));
}

/** The neutral contact of the first device ahead of a hot that opens both. */
function nextAhead(poles: PoleMap, neutrals: ReadonlyMap<string, Link>): (hot: number) => Link | undefined {
	const known = new Map<number, Link | undefined>();
	return (hot) => {
		const reach = poles.reachOf(hot, "hot");
		const passed: number[] = [];
		let found: Link | undefined;
		for (let point = hot; ; ) {
			if (known.has(point)) {
				found = known.get(point);
				break;
			}
			passed.push(point);
			const edge = reach?.cameBy(point);
			const link = edge?.by.kind === "link" && edge.by.link.nature === "contact" ? edge.by.link : undefined;
			found = link === undefined ? undefined : neutrals.get(link.part);
			if (edge === undefined || found !== undefined) break;
			point = edge.from;
		}
		for (const point of passed) known.set(point, found);
		return found;
	};
}

/** The neutral contact of each breaker or main switch of a board that opens a hot with it and watches no leak: that is for other rules. */
function neutralContacts(circuit: Circuit): ReadonlyMap<string, Link> {
	const watching = new Set(circuit.groundFaults.map(({ part }) => part));
	const breakers = new Set<string>();
	for (const { name, face } of circuit.parts)
		if (face.traits.includes("breaker") && !watching.has(name)) breakers.add(name);
	const found = new Map<string, Link>();
	if (breakers.size === 0) return found;
	for (const link of circuit.links)
		if (
			link.nature === "contact" &&
			breakers.has(link.part) &&
			link.between.every((point) => isNeutral(circuit, point))
		)
			found.set(link.part, link);
	return found;
}

function isNeutral({ points }: Circuit, point: number): boolean {
	return sortOfRole(points[point]?.role ?? "hot") === "neutral";
}

/** On the way to the neutral, the last end in the board of the breaker. */
function findEnd(
	circuit: Circuit,
	{ crossings }: ModeState,
	{ enclosure }: Part,
	neutral: number,
): PartedNeutral["end"] {
	const way = crossings.poles.reachOf(neutral, "neutral")?.edgesTo(neutral) ?? [];
	for (const { by, from } of way.toReversed()) {
		const conductor = by.kind === "conductor" ? circuit.conductors[by.index] : undefined;
		if (conductor === undefined || circuit.points[from]?.enclosure !== enclosure) continue;
		return { conductor: conductor.index, which: conductor.ends[0].point === from ? 0 : 1 };
	}
	return undefined;
}
