// The straps that join several bars of one sort in a panel, as panels are sold (common practice).
import { certain } from "../base/certain.ts";
import { groupBy } from "../base/group.ts";
import type { Thing } from "../plan/plan.ts";
import type { Draft } from "./draft.ts";

/** Joins the neutral bars of each panel with one another, and its ground bars, but for those that are said to stand apart. */
export function strapBars(draft: Draft): void {
	const bars = draft.plan.things.filter((thing) => sortOf(thing) !== undefined && thing.said.flag("apart") !== true);
	const alike = groupBy(bars, (bar) => `${bar.owner ?? ""} ${sortOf(bar) ?? ""} ${bar.said.behind ?? ""}`);
	for (const [first, ...others] of alike.values())
		for (const other of others)
			draft.links.push({
				index: draft.links.length,
				between: [portOf(draft, first), portOf(draft, other)],
				part: other.name,
				nature: "solid",
				contact: undefined,
				modes: undefined,
				protection: undefined,
				span: other.span,
			});
}

function sortOf({ blueprint: { face } }: Thing): "neutral-bar" | "ground-bar" | undefined {
	return (["neutral-bar", "ground-bar"] as const).find((trait) => face.traits.includes(trait));
}

function portOf(draft: Draft, bar: Thing | undefined): number {
	return certain(draft.partByName.get(bar?.name ?? "")?.points[0], "a port of a bar");
}
