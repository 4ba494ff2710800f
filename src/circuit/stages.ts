// Stages of a build: which devices are not on yet. Their cables are drawn in and tagged, and nothing is landed on them.
import { foldName, resolveName } from "../plan/names.ts";
import type { Plan, SaidLanding, Thing } from "../plan/plan.ts";
import type { NameTerm } from "../syntax/tree.ts";

/**
 * The names of the devices that are still to come: those said to be roughed in, and those that only roughed-in runs reach.
 * A device on which something is said to be landed is there; so are panels, sources and boxes.
 */
export function findComing(plan: Plan): ReadonlySet<string> {
	const reached = new Set<string>();
	const finished = new Set<string>();
	for (const run of plan.runs)
		for (const { to } of run.hops) (run.roughedIn ? reached : finished).add(ownerOf(plan, to.thing));
	const landed = landedOn(plan);
	return new Set(
		plan.things
			.filter((thing) => {
				const owner = ownerOf(plan, thing.name);
				const isReached = reached.has(owner) && !finished.has(owner);
				return isDevice(plan, thing) && (thing.roughedIn || isReached) && !landed.has(thing.name);
			})
			.map(({ name }) => name),
	);
}

/** The thing at the outside: the box of a device, the panel of a breaker. */
function ownerOf(plan: Plan, name: string): string {
	let thing = plan.thingByName.get(foldName(name));
	for (;;) {
		const owner = thing?.owner === undefined ? undefined : plan.thingByName.get(foldName(thing.owner));
		if (owner === undefined) return thing?.name ?? name;
		thing = owner;
	}
}

function isDevice(plan: Plan, thing: Thing): boolean {
	const outside = plan.thingByName.get(foldName(ownerOf(plan, thing.name)));
	const { source, terminals } = thing.blueprint;
	return source === undefined && terminals.length > 0 && outside?.blueprint.enclosure?.sort !== "panel";
}

/** The things that an `at` block lands, joins or links something on. */
function landedOn(plan: Plan): ReadonlySet<string> {
	const names = plan.landings.flatMap(({ landings }) => landings.flatMap(terminalsOf));
	return new Set(
		names.flatMap((name) => {
			const found = resolveName(name, plan.thingByName);
			// Grounds are made up on the metal of a box before its device is on.
			return found === undefined || isMetal(found.thing, found.rest) ? [] : found.thing.name;
		}),
	);
}

function isMetal({ blueprint }: Thing, rest: readonly string[]): boolean {
	return foldName(rest.join(".")) === "case" && blueprint.terminals.every(({ name }) => name !== "case");
}

function terminalsOf(landing: SaidLanding): readonly NameTerm[] {
	switch (landing.sort) {
		case "land":
			return [landing.on];
		case "join":
			return landing.members.flat();
		case "link":
			return landing.between;
		case "free":
			return [];
	}
}
