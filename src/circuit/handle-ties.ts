// Breakers whose handles are tied, so that none opens alone.
import type { Finding } from "../base/finding.ts";
import { planFinding } from "../plan/codes.ts";
import { foldName } from "../plan/names.ts";
import type { Plan, Thing } from "../plan/plan.ts";

/** For every breaker with a tied handle the first of those that move with it; what is tied to no other breaker is a finding. */
export function tieHandles(plan: Plan, findings: Finding[]): ReadonlyMap<string, string> {
	const firstOf = new Map<string, string>();
	for (const thing of plan.things) {
		const name = thing.said.choice("tied");
		if (name === undefined) continue;
		const other =
			plan.thingByName.get(foldName(`${thing.owner ?? ""}.${name}`)) ?? plan.thingByName.get(foldName(name));
		if (other === undefined || other === thing || !isBeside(thing, other)) {
			findings.push(
				planFinding("name-unknown", {
					title: `${thing.name} is tied to ${name}, which is no other breaker of ${thing.owner ?? "its panel"}`,
					span: thing.span,
					label: "tied to nothing",
					help: `Write the slot of the breaker beside it: \`tied ${thing.owner ?? "LC"}.3\`.`,
				}),
			);
			continue;
		}
		const first = firstOf.get(other.name) ?? firstOf.get(thing.name) ?? other.name;
		for (const tied of [thing.name, other.name]) firstOf.set(tied, first);
	}
	return firstOf;
}

function isBeside(one: Thing, other: Thing): boolean {
	return one.owner === other.owner && other.blueprint.protection !== undefined;
}
