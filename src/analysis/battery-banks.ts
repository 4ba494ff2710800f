// Batteries that work as one: in parallel or in series with nothing between that is opened on purpose.
import { groupBy } from "../base/group.ts";
import type { Circuit, Source } from "../circuit/circuit.ts";
import type { DirectState } from "./direct.ts";
import { joinWhere } from "./joined-sets.ts";
import { type Edge, type Network, reachFrom } from "./network.ts";

/** Two or more batteries of one bank. */
export interface BatteryBank {
	readonly batteries: readonly Source[];
	readonly joined: "parallel" | "series";
}

/** The banks of a mode: first those in parallel, then those in series. */
export function findBanks(circuit: Circuit, { network }: DirectState): readonly BatteryBank[] {
	const batteries = circuit.sources.filter(
		({ sort, hot, neutral }) => sort === "battery" && hot.length > 0 && neutral !== undefined,
	);
	if (batteries.length < 2) return [];
	const joined = joinWhere(network, isMeantToStay);
	const plus = ({ hot: [point] }: Source): number => joined.find(point ?? 0);
	const minus = ({ neutral }: Source): number => joined.find(neutral ?? 0);
	const parallel = [...groupBy(batteries, (battery) => `${plus(battery)} ${minus(battery)}`).values()];
	return [
		...parallel
			.filter((group) => group.length > 1)
			.map((group): BatteryBank => ({ batteries: group, joined: "parallel" })),
		...findSeries(batteries, plus, minus).map((group): BatteryBank => ({ batteries: group, joined: "series" })),
	];
}

/** What a handle or a coil parts, such as the tie between two banks for a flat engine battery, makes no bank of them. */
function isMeantToStay({ by }: Edge): boolean {
	return by.kind === "conductor" || by.link.contact === undefined || by.link.protection !== undefined;
}

/** Batteries in rows, plus on minus. */
function findSeries(
	batteries: readonly Source[],
	plus: (battery: Source) => number,
	minus: (battery: Source) => number,
): readonly (readonly Source[])[] {
	const above = new Map(batteries.map((battery) => [minus(battery), battery]));
	const tops = new Set(batteries.map(minus));
	const bottoms = new Set(batteries.map(plus));
	return batteries.flatMap((bottom) => {
		// A row begins at a battery whose minus is on no other one's plus.
		if (bottoms.has(minus(bottom)) || !tops.has(plus(bottom))) return [];
		const row = [bottom];
		for (let next = above.get(plus(bottom)); next !== undefined && !row.includes(next); next = above.get(plus(next)))
			row.push(next);
		return row.length > 1 ? [row] : [];
	});
}

/** What lies between a battery and where its bank's leads meet, there and back: metres for each square millimetre of copper. */
export interface BankLead {
	readonly battery: Source;
	/** Undefined where a length is not known. */
	readonly resistance: number | undefined;
}

/** The leads of batteries in parallel, as seen from the load that draws most; empty where no load hangs on the bank. */
export function measureLeads(
	circuit: Circuit,
	{ network, poles }: DirectState,
	bank: readonly Source[],
): readonly BankLead[] {
	const load = circuit.loads
		.filter(
			({ between: [positive, negative], watts }) =>
				watts !== undefined &&
				circuit.points[positive]?.role === "positive" &&
				poles.sortsAt(positive).has("hot") &&
				poles.sortsAt(negative).has("neutral"),
		)
		.toSorted((one, other) => (other.watts ?? 0) - (one.watts ?? 0))[0];
	if (load === undefined) return [];
	const there = ownWays(
		network,
		load.between[0],
		bank.map(({ hot: [plus] }) => plus ?? 0),
	);
	const back = ownWays(
		network,
		load.between[1],
		bank.map(({ neutral }) => neutral ?? 0),
	);
	if (there === undefined || back === undefined) return [];
	return bank.map((battery, index) => ({
		battery,
		resistance: resistanceOf(circuit, [...(there[index] ?? []), ...(back[index] ?? [])]),
	}));
}

/** The ways from a point to several others, without what all of them share; undefined where one is not reached. */
function ownWays(network: Network, from: number, ends: readonly number[]): readonly (readonly Edge[])[] | undefined {
	const reach = reachFrom(network, [from], () => true);
	if (!ends.every((end) => reach.has(end))) return undefined;
	const ways = ends.map((end) => reach.edgesTo(end));
	const [first = []] = ways;
	let shared = 0;
	while (shared < first.length && ways.every((way) => way[shared] === first[shared])) shared++;
	return ways.map((way) => way.slice(shared));
}

function resistanceOf({ conductors }: Circuit, way: readonly Edge[]): number | undefined {
	let sum = 0;
	for (const { by } of way) {
		const conductor = by.kind === "conductor" ? conductors[by.index] : undefined;
		if (conductor === undefined || conductor.sort !== "core") continue;
		if (conductor.length === undefined) return undefined;
		sum += (conductor.length / conductor.gauge.mm2) * (conductor.material === "copper" ? 1 : aluminiumToCopper);
	}
	return sum;
}

/** Aluminium of the same size has so many times the resistance (IACS: 61 % of the conductivity, recalled). */
const aluminiumToCopper = 1.64;
