// What conductors that run by themselves are for: decided by the side they start or end at, and handed on through what they pass.

import type { Role } from "../kinds/kind.ts";
import { foldName } from "../plan/names.ts";
import type { HopEnd, Plan, Run, Thing } from "../plan/plan.ts";
import { sideAt } from "../plan/sides.ts";

/**
 * The role of each thing in line with such conductors, by its name; what nothing decides is left out. Only what takes its role
 * from what is put on it hands one on: a chassis takes a negative and a ground alike.
 */
export function findLoneRoles(plan: Plan): ReadonlyMap<string, Role> {
	const roles = new Map<string, Role>();
	if (!plan.things.some(inherits)) return roles;
	const joints = plan.runs.flatMap(jointsOf);
	for (let changed = true; changed; ) {
		changed = false;
		for (const { from, to, role } of joints) {
			const found = role ?? roleAt(plan, from, "onward", roles) ?? roleAt(plan, to, "arrival", roles);
			if (found === undefined) continue;
			for (const end of [from, to]) {
				const thing = plan.thingByName.get(foldName(end.thing));
				if (thing === undefined || roles.has(thing.name) || !inherits(thing)) continue;
				roles.set(thing.name, found);
				changed = true;
			}
		}
	}
	return roles;
}

/** Two ends that are one conductor by itself, or fastened to one another; `role` where several poles run together and say it. */
interface Joint {
	readonly from: HopEnd;
	readonly to: HopEnd;
	readonly role?: Role;
}

function jointsOf(run: Run): Joint[] {
	const poles = run.hops.flatMap(({ from, others, cable }) =>
		[from, ...others].flatMap((pole, index): Joint[] => {
			const role = cable.cores[index]?.role;
			return others.length === 0 || role === undefined ? [] : [{ from: pole, to: pole, role }];
		}),
	);
	const alone = run.hops.filter((hop) => hop.cable.cores.length === 1);
	return [...alone, ...run.fastenings, ...poles];
}

function roleAt(
	plan: Plan,
	end: HopEnd,
	way: "onward" | "arrival",
	roles: ReadonlyMap<string, Role>,
): Role | undefined {
	const thing = plan.thingByName.get(foldName(end.thing));
	if (thing === undefined) return undefined;
	return sideAt(thing, end, way)?.lone?.role ?? roles.get(thing.name);
}

function inherits(thing: Thing): boolean {
	return thing.blueprint.terminals.some((terminal) => terminal.inherits === true);
}
