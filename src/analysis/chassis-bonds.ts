// Leads that join the minus of a bank, or the case of a machine for direct current, to the metal of a vehicle.
import { compareGauges } from "../base/gauge.ts";
import type { Circuit, Conductor, Part, Source, Terminal } from "../circuit/circuit.ts";
import type { DirectState } from "./direct.ts";
import { joinAll, joinWhere } from "./joined-sets.ts";
import { ownLinks } from "./own-links.ts";

/** One such lead: what it joins to the metal, and the thickest positive whose fault it must carry. */
export interface ChassisBond {
	readonly conductor: Conductor;
	readonly sort: "minus" | "case";
	readonly part: Part;
	readonly metal: Part;
	/** Undefined where nothing that is fed from it can fail toward the metal. */
	readonly positive: Conductor | undefined;
}

/** The chassis of a plan, the leads on them, and whether the minus of each battery is joined with one. */
export interface ChassisBonds {
	readonly metals: readonly Part[];
	readonly bonds: readonly ChassisBond[];
}

/** A lead with its end away from the metal. */
interface Landed {
	readonly conductor: Conductor;
	readonly metal: Part;
	readonly point: Terminal;
}

/** All of a mode. Metal that carries the return of a load is judged as the negative that it is. */
export function findChassisBonds(circuit: Circuit, direct: DirectState): ChassisBonds {
	const metals = circuit.parts.filter(({ kind }) => kind === "chassis");
	if (metals.length === 0) return { metals, bonds: [] };
	const landed = leadsOn(circuit, metals);
	const positives = positivesOf(circuit);
	const returns = new Set(circuit.loads.flatMap(({ between }) => between));
	const carrying = new Set(landed.flatMap(({ point, metal }) => (returns.has(point.index) ? [metal] : [])));
	const fedFrom = new BankLoads(circuit, direct, landed);
	const bonds = landed.flatMap(({ conductor, metal, point }): ChassisBond[] => {
		const part = circuit.partByName.get(point.part);
		if (part === undefined || returns.has(point.index)) return [];
		if (point.role === "negative") {
			if (carrying.has(metal)) return [];
			const positive = thickestOf(fedFrom.minusAt(point.index).flatMap((name) => positives.get(name) ?? []));
			return [{ conductor, sort: "minus", part, metal, positive }];
		}
		const own = positives.get(part.name);
		return point.role === "ground" && own !== undefined
			? [{ conductor, sort: "case", part, metal, positive: thickestOf(own) }]
			: [];
	});
	return { metals, bonds };
}

function leadsOn(circuit: Circuit, metals: readonly Part[]): Landed[] {
	const metalAt = new Map(metals.flatMap((metal) => metal.points.map((point) => [point, metal] as const)));
	return circuit.conductors.flatMap((conductor): Landed[] => {
		const which = conductor.ends.findIndex(({ point }) => point !== undefined && metalAt.has(point));
		const metal = which < 0 ? undefined : metalAt.get(conductor.ends[which === 1 ? 1 : 0].point ?? -1);
		const point = circuit.points[conductor.ends[which === 1 ? 0 : 1].point ?? -1];
		return metal === undefined || point?.kind !== "terminal" ? [] : [{ conductor, metal, point }];
	});
}

/** The loads that are fed from the batteries whose minus a lead is on. */
class BankLoads {
	private readonly circuit: Circuit;
	private readonly direct: DirectState;
	private readonly apart: ReturnType<typeof joinWhere>;

	constructor(circuit: Circuit, direct: DirectState, landed: readonly Landed[]) {
		this.circuit = circuit;
		this.direct = direct;
		const bonding = new Set(landed.map(({ conductor }) => conductor.index));
		const giving = ownLinks(
			circuit,
			new Set(circuit.sources.flatMap(({ system, sort, part }) => (system === "dc" && sort === "other" ? [part] : []))),
		);
		// Two banks with one metal or one converter between them are two all the same.
		this.apart = joinWhere(direct.network, ({ by }) =>
			by.kind === "conductor" ? !bonding.has(by.index) : !giving.has(by.link.index),
		);
	}

	/** The parts with a positive that can fail toward the metal: the batteries, those in series above them too, and what they feed. */
	minusAt(point: number): readonly string[] {
		const { sources, loads } = this.circuit;
		const joined = joinAll(this.direct.network);
		const batteries = sources.filter(({ sort }) => sort === "battery");
		const isOn = ({ neutral }: Source, other: number): boolean =>
			neutral !== undefined && this.apart.isJoined(neutral, other);
		const own = new Set(batteries.filter((battery) => isOn(battery, point)));
		// A set hands out what is added while it is walked.
		for (const { hot } of own)
			for (const battery of batteries) if (hot.some((plus) => isOn(battery, plus))) own.add(battery);
		const fed = loads.flatMap(({ part, between: [positive] }) =>
			[...own].some(({ hot }) => hot.some((plus) => joined.isJoined(plus, positive))) ? [part] : [],
		);
		return [...fed, ...[...own].map(({ part }) => part)];
	}
}

/** The conductors on the positive of each load and each battery, by its part. */
export function positivesOf({
	loads,
	sources,
	points,
	conductors,
}: Circuit): ReadonlyMap<string, readonly Conductor[]> {
	const partAt = new Map([
		...loads.flatMap(({ part, between: [positive] }) =>
			points[positive]?.role === "positive" ? [[positive, part] as const] : [],
		),
		...sources.flatMap(({ part, sort, hot }) => (sort === "battery" ? hot.map((plus) => [plus, part] as const) : [])),
	]);
	const found = new Map<string, Conductor[]>();
	for (const conductor of conductors)
		for (const { point } of conductor.ends) {
			// The lead inside a series lies on a plus too.
			const part = point === undefined || conductor.role === "negative" ? undefined : partAt.get(point);
			if (part === undefined) continue;
			const known = found.get(part);
			if (known === undefined) found.set(part, [conductor]);
			else known.push(conductor);
		}
	return found;
}

/** The thickest of some conductors, the first of equals; undefined of none. */
export function thickestOf(conductors: readonly Conductor[]): Conductor | undefined {
	return conductors.reduce<Conductor | undefined>(
		(thickest, one) => (thickest === undefined || compareGauges(one.gauge, thickest.gauge) > 0 ? one : thickest),
		undefined,
	);
}
