// How what chooses between sources stands in one mode: each transfer switch at a position, each inverter-charger passing or not.
import type { Thing } from "../plan/plan.ts";
import type { Circuit, Link, Source } from "./circuit.ts";

/** As much of a circuit, finished or not, as this takes. */
export type Wired = Pick<Circuit, "plan" | "conductors" | "links" | "sources" | "switchovers" | "pointByName">;

/** Where everything stands in a mode. */
export interface Settled {
	/** The inverter-chargers whose input another live source reaches: these pass it through and make nothing themselves. */
	readonly fed: ReadonlySet<string>;
	/** The position of each transfer switch, by its name. */
	readonly standing: ReadonlyMap<string, string>;
}

/**
 * Settles one after another, as power gets to it: a switch stands where the builder says, else toward the input that is live,
 * of two live ones toward that of the first source. One that no source reaches stands at its first position.
 */
export function settleTransfers(wired: Wired, live: readonly string[], said: ReadonlyMap<string, string>): Settled {
	const fed = new Set<string>();
	const standing = new Map<string, string>();
	const { conditions, transfers } = wired.switchovers;
	const sources = wired.sources.filter((source) => live.includes(source.name));
	// One that a mode does not name does not invert; what comes in it passes on all the same.
	const chargers = wired.sources.filter((source) => source.sort === "inverter-charger");
	const switches = [...new Set([...transfers.values()].map(({ thing }) => thing))];
	for (const { name, blueprint } of switches) {
		const position = said.get(name);
		if (position !== undefined && blueprint.transfer?.positions.includes(position)) standing.set(name, position);
	}
	if (chargers.length === 0 && switches.length === 0) return { fed, standing };
	const reachedBy = (from: readonly Source[]): ReadonlySet<number> =>
		reach(
			wired,
			from.flatMap((source) => source.hot),
			(link) => isClosed(link, { conditions, transfers }, fed, standing),
		);
	while (settleCharger() || settleSwitch());
	return { fed, standing: new Map(switches.map(({ name }) => [name, standing.get(name) ?? firstPosition])) };

	function settleCharger(): boolean {
		const reached = reachedBy(sources.filter((source) => source.sort !== "inverter-charger"));
		const next = chargers.find(
			({ name, part }) =>
				// It takes over whichever way round its input is wired.
				!fed.has(name) && ["hot", "neutral"].some((pole) => isReached(wired, reached, `${part}.in.${pole}`)),
		);
		if (next !== undefined) fed.add(next.name);
		return next !== undefined;
	}

	/** What the first source reaches is settled first, however far from it; a switch said to pass on a source waits for that. */
	function settleSwitch(): boolean {
		const open = switches.filter(({ name }) => !standing.has(name));
		if (open.length === 0) return false;
		const running = live.flatMap((name) => sources.filter((source) => source.name === name && !fed.has(name)));
		const wanted = wired.sources.filter(({ name }) => open.some((thing) => said.get(thing.name) === name));
		for (const source of [...wanted, ...running]) {
			const reached = reachedBy([source]);
			for (const thing of open) {
				if ((said.get(thing.name) ?? source.name) !== source.name) continue;
				const input = inputs.find((side) => isInputReached(wired, reached, thing, side));
				if (input === undefined) continue;
				standing.set(thing.name, input);
				return true;
			}
		}
		return false;
	}
}

const inputs = ["1", "2"] as const;
const [firstPosition] = inputs;

function isInputReached(wired: Wired, reached: ReadonlySet<number>, { name }: Thing, side: string): boolean {
	return ["hot", "neutral"].some((pole) => isReached(wired, reached, `${name}.${side}.${pole}`));
}

function isReached({ pointByName }: Wired, reached: ReadonlySet<number>, name: string): boolean {
	const point = pointByName.get(name);
	return point !== undefined && reached.has(point);
}

function isClosed(
	link: Link,
	{ conditions, transfers }: Wired["switchovers"],
	fed: ReadonlySet<string>,
	standing: ReadonlyMap<string, string>,
): boolean {
	if (link.nature === "bond") return false;
	const transfer = transfers.get(link.index);
	if (transfer !== undefined) {
		const { name, blueprint } = transfer.thing;
		return transfer.closed.includes(blueprint.transfer?.positions.indexOf(standing.get(name) ?? "") ?? -1);
	}
	const condition = conditions.get(link.index);
	return condition === undefined || (condition.when === "input-live" && fed.has(condition.thing.name));
}

function reach(wired: Wired, starts: readonly number[], allow: (link: Link) => boolean): ReadonlySet<number> {
	const neighbours = new Map<number, number[]>();
	const join = (one: number, other: number): void => {
		const here = neighbours.get(one);
		if (here === undefined) neighbours.set(one, [other]);
		else here.push(other);
	};
	for (const { ends } of wired.conductors) {
		const [from, to] = [ends[0].point, ends[1].point];
		if (from === undefined || to === undefined) continue;
		join(from, to);
		join(to, from);
	}
	for (const link of wired.links) {
		if (!allow(link)) continue;
		join(link.between[0], link.between[1]);
		join(link.between[1], link.between[0]);
	}
	const reached = new Set<number>(starts);
	// A set hands out what is added while it is walked.
	for (const point of reached) for (const next of neighbours.get(point) ?? []) reached.add(next);
	return reached;
}
