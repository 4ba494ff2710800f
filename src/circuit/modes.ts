// Which sources are live when: the modes as named by the builder, else one for each outside supply and one without any.
import { listNames } from "../base/wording.ts";
import type { When } from "../kinds/kind.ts";
import type { SaidMode, Thing } from "../plan/plan.ts";
import type { Circuit, Link, Mode, Source } from "./circuit.ts";
import { groundAtBonds } from "./grounds-at-bonds.ts";
import { settleTransfers, type Wired } from "./transfers.ts";

/** The modes of a plan, and for each link that is not always there, the modes in which it is. */
export interface ModePlan {
	readonly modes: readonly Mode[];
	readonly modesOfLink: ReadonlyMap<number, ReadonlySet<string>>;
	/** The first mode that was left out because there are too many; undefined where none was. */
	readonly leftOut?: string;
}

/** Works out the modes and what each link's condition comes to in them. */
export function planModes(wired: Wired): ModePlan {
	const modes: Mode[] = [];
	const { conditions, transfers } = wired.switchovers;
	const modesOfLink = new Map<number, Set<string>>(
		[...conditions.keys(), ...transfers.keys()].map((index) => [index, new Set<string>()]),
	);
	const wanted = wired.plan.modes.length > 0 ? wired.plan.modes : deriveModes(wired.sources);
	const leftOut = wanted[mostModes]?.name;
	for (const { name, live, running: loads, positions } of wanted.slice(0, mostModes)) {
		const { fed, standing } = settleTransfers(wired, live, positions);
		const running = live.filter((source) => !fed.has(source));
		modes.push({ name, live: running, running: loads, summary: summarise(running, [...fed], standing, loads) });
		for (const [index, { thing, when }] of conditions)
			if (holds(when, thing, running, fed)) modesOfLink.get(index)?.add(name);
		for (const [index, { thing, closed }] of transfers) {
			const position = thing.blueprint.transfer?.positions.indexOf(standing.get(thing.name) ?? "");
			if (position !== undefined && closed.includes(position)) modesOfLink.get(index)?.add(name);
		}
	}
	return { modes, modesOfLink, ...(leftOut === undefined ? {} : { leftOut }) };
}

/** The links with the modes they exist in. */
export function linksByMode(links: readonly Link[], { modesOfLink }: ModePlan): readonly Link[] {
	return links.map((link) => {
		const modes = modesOfLink.get(link.index);
		return modes === undefined ? link : { ...link, modes };
	});
}

/** A circuit that was rewired, with its modes settled as it is wired now: what chooses between sources goes by what reaches it. */
export function settleAnew(rewired: Circuit): Circuit {
	const sources = groundAtBonds(rewired, rewired.sources);
	const circuit = sources === rewired.sources ? rewired : { ...rewired, sources };
	const depends =
		circuit.switchovers.transfers.size > 0 || circuit.sources.some(({ sort }) => sort === "inverter-charger");
	if (!depends) return circuit;
	const modePlan = planModes(circuit);
	return { ...circuit, modes: modePlan.modes, links: linksByMode(circuit.links, modePlan) };
}

/** The whole circuit is judged once for each mode: more sources than this are no small place's. */
const mostModes = 16;

/** One mode for each outside supply, named after it, and one for the machines that make their own, without any. */
function deriveModes(sources: readonly Source[]): Omit<SaidMode, "span">[] {
	const outside = sources.filter(({ sort }) => sort === "shore" || sort === "utility" || sort === "generator");
	const own = sources
		.filter((source) => source.sort === "inverter" || source.sort === "inverter-charger")
		.map((source) => source.name);
	// Batteries stay live whatever feeds the mains side.
	const batteries = sources.filter((source) => source.system === "dc").map((source) => source.name);
	const [first] = own;
	const [battery] = batteries;
	const usual = { running: undefined, positions: new Map<string, string>() };
	const alternating = [
		...outside.map((source) => ({ name: source.name, live: [source.name, ...own, ...batteries], ...usual })),
		...(first === undefined
			? []
			: [{ name: own.length === 1 ? first : "inverters", live: [...own, ...batteries], ...usual }]),
	];
	if (alternating.length > 0 || battery === undefined) return alternating;
	return [{ name: batteries.length === 1 ? battery : "batteries", live: batteries, ...usual }];
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

function summarise(
	running: readonly string[],
	fed: readonly string[],
	standing: ReadonlyMap<string, string>,
	loads: ReadonlySet<string> | undefined,
): string {
	const live =
		running.length === 0 ? "nothing is live" : `${running.join(" and ")} ${running.length === 1 ? "is" : "are"} live`;
	const passing = fed.length === 0 ? [] : [`${fed.join(" and ")} ${fed.length === 1 ? "passes" : "pass"} it through`];
	const drawing =
		loads === undefined ? [] : [`of the loads only ${listNames([...loads])} ${loads.size === 1 ? "runs" : "run"}`];
	return [live, ...passing, ...[...standing].map(([name, position]) => `${name} at ${position}`), ...drawing].join(
		"; ",
	);
}
