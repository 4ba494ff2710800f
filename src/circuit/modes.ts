// Which sources are live when: the modes as named by the builder, else one for each outside supply and one without any.
import type { When } from "../kinds/kind.ts";
import type { Thing } from "../plan/plan.ts";
import type { Link, Mode, Source } from "./circuit.ts";
import type { Equipment } from "./devices.ts";
import type { Draft } from "./draft.ts";

/** The modes of a plan, and for each link that is not always there, the modes in which it is. */
export interface ModePlan {
	readonly modes: readonly Mode[];
	readonly modesOfLink: ReadonlyMap<number, ReadonlySet<string>>;
	/** The first mode that was left out because there are too many; undefined where none was. */
	readonly leftOut?: string;
}

/** Works out the modes and what each link's condition comes to in them. */
export function planModes(draft: Draft, equipment: Equipment): ModePlan {
	const modes: Mode[] = [];
	const modesOfLink = new Map<number, Set<string>>(
		[...equipment.conditions.keys()].map((index) => [index, new Set<string>()]),
	);
	const wanted = draft.plan.modes.length > 0 ? draft.plan.modes : deriveModes(equipment.sources);
	const leftOut = wanted[mostModes]?.name;
	for (const { name, live } of wanted.slice(0, mostModes)) {
		const fed = findFedInputs(draft, equipment, live);
		const running = live.filter((source) => !fed.has(source));
		modes.push({ name, live: running, summary: summarise(running, [...fed]) });
		for (const [index, { thing, when }] of equipment.conditions)
			if (holds(when, thing, running, fed)) modesOfLink.get(index)?.add(name);
	}
	return { modes, modesOfLink, ...(leftOut === undefined ? {} : { leftOut }) };
}

/** The whole circuit is judged once for each mode: more sources than this are no small place's. */
const mostModes = 16;

/** One mode for each outside supply, named after it, and one for the machines that make their own, without any. */
function deriveModes(sources: readonly Source[]): { name: string; live: string[] }[] {
	const outside = sources.filter((source) => source.sort === "shore" || source.sort === "generator");
	const own = sources
		.filter((source) => source.sort === "inverter" || source.sort === "inverter-charger")
		.map((source) => source.name);
	const [first] = own;
	return [
		...outside.map((source) => ({ name: source.name, live: [source.name, ...own] })),
		...(first === undefined ? [] : [{ name: own.length === 1 ? first : "inverters", live: own }]),
	];
}

function holds(when: When | undefined, thing: Thing, running: readonly string[], fed: ReadonlySet<string>): boolean {
	switch (when) {
		case "input-live":
			return fed.has(thing.name);
		case "inverting":
		case "source-live":
			return running.includes(thing.name);
		case undefined:
			return true;
	}
}

/** The live inverter-chargers whose input is reached by another live source: these pass it through and make nothing themselves. */
function findFedInputs(draft: Draft, equipment: Equipment, live: readonly string[]): ReadonlySet<string> {
	const fed = new Set<string>();
	const chargers = equipment.sources.filter(
		(source) => source.sort === "inverter-charger" && live.includes(source.name),
	);
	if (chargers.length === 0) return fed;
	for (let changed = true; changed; ) {
		changed = false;
		const starts = equipment.sources
			.filter((source) => live.includes(source.name) && !(source.sort === "inverter-charger"))
			.flatMap((source) => source.hot);
		const reached = reach(draft, starts, (link) => {
			const condition = equipment.conditions.get(link.index);
			if (link.nature === "bond") return false;
			return condition === undefined || (condition.when === "input-live" && fed.has(condition.thing.name));
		});
		for (const charger of chargers) {
			// It takes over whichever way round its input is wired.
			const inputs = ["hot", "neutral"].map((pole) => draft.pointNames.byName.get(`${charger.part}.in.${pole}`));
			if (fed.has(charger.name) || !inputs.some((input) => input !== undefined && reached.has(input))) continue;
			fed.add(charger.name);
			changed = true;
		}
	}
	return fed;
}

function reach(draft: Draft, starts: readonly number[], allow: (link: Link) => boolean): ReadonlySet<number> {
	const neighbours = new Map<number, number[]>();
	const join = (one: number, other: number): void => {
		const here = neighbours.get(one);
		if (here === undefined) neighbours.set(one, [other]);
		else here.push(other);
	};
	for (const { ends } of draft.conductors) {
		const [from, to] = [ends[0].point, ends[1].point];
		if (from === undefined || to === undefined) continue;
		join(from, to);
		join(to, from);
	}
	for (const link of draft.links) {
		if (!allow(link)) continue;
		join(link.between[0], link.between[1]);
		join(link.between[1], link.between[0]);
	}
	const reached = new Set<number>(starts);
	// A set hands out what is added while it is walked.
	for (const point of reached) for (const next of neighbours.get(point) ?? []) reached.add(next);
	return reached;
}

function summarise(running: readonly string[], fed: readonly string[]): string {
	const live =
		running.length === 0 ? "nothing is live" : `${running.join(" and ")} ${running.length === 1 ? "is" : "are"} live`;
	return fed.length === 0 ? live : `${live}; ${fed.join(" and ")} ${fed.length === 1 ? "passes" : "pass"} it through`;
}
