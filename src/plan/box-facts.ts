// What is said of the box around a thing and of its terminals, taken up; and told where there is no such box.
import type { Finding } from "../base/finding.ts";
import type { Quantity } from "../base/quantity.ts";
import { withArticle } from "../base/wording.ts";
import type { Blueprint, Clamp } from "../kinds/kind.ts";
import { planFinding } from "./codes.ts";
import type { BoxFacts, Thing, UsualBox } from "./plan.ts";
import type { SharedAttributes } from "./shared-words.ts";

/** What was said of the box around a thing, or of a box itself, else what is usual in the plan; nothing where nothing was. */
export function boxFacts(
	{ metal, volume: around, fittings }: SharedAttributes,
	own: Quantity | undefined,
	usual: UsualBox | undefined,
): BoxFacts | undefined {
	const volume = around ?? own ?? usual?.volume;
	if (metal === undefined && usual === undefined && volume === undefined && Object.keys(fittings).length === 0)
		return undefined;
	return { metal: metal ?? usual?.metal ?? false, ...(volume === undefined ? {} : { volume }), fittings };
}

/** Whether a thing stands in a box of its own, which nothing else brings. */
export function hasOwnBox(owner: Thing | undefined, { enclosure }: Blueprint): boolean {
	return owner === undefined && (enclosure?.sort ?? "box") === "box";
}

/** A thing with the terminals it is said to have: a plate holds two wires, a stud four lugs, any other one wire (common practice). */
export function withTerminals(blueprint: Blueprint, clamp: Clamp | undefined): Blueprint {
	if (clamp === undefined) return blueprint;
	const terminals = blueprint.terminals.map((terminal) =>
		terminal.clamp === "stab" || terminal.clamp === "lead"
			? terminal
			: { ...terminal, clamp, capacity: clamp === "plate" ? 2 : clamp === "stud" ? 4 : 1 },
	);
	return { ...blueprint, terminals };
}

/** What is said of a box where there is none: a device in a box shares that one, a machine has a case of its own. */
export function tellMisplacedFittings(thing: Thing, { fittingWords }: SharedAttributes): Finding[] {
	const hasBox = thing.owner === undefined && (thing.blueprint.enclosure?.sort ?? "box") === "box";
	const [first] = fittingWords;
	if (hasBox || first === undefined) return [];
	return [
		planFinding("attribute-unknown", {
			title: `\`${first.text}\` speaks of a box, and ${thing.name} has none of its own`,
			span: first.span,
			label: "of which box?",
			help:
				thing.owner === undefined
					? `Take it out: ${withArticle(thing.kind.name)} stands in no box.`
					: `Say it of ${thing.owner}, in which ${thing.name} sits.`,
		}),
	];
}
