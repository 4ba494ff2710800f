// What is to be told of runs that are roughed in: their cables will be found by their tags, so the tags must stay.
import type { Finding } from "../base/finding.ts";
import { planFinding } from "./codes.ts";
import type { Plan } from "./plan.ts";

/** A note for each roughed-in run of which a cable has no tag of its own: running numbers shift when a hop is put in before them. */
export function tellAutomaticTags(plan: Plan): Finding[] {
	return plan.runs.flatMap((run) => {
		const automatic = run.roughedIn ? run.hops.filter(({ tagSaid }) => !tagSaid) : [];
		const [first] = automatic;
		if (first === undefined) return [];
		const others = automatic.length === 1 ? "" : ` and ${automatic.length - 1} more`;
		return [
			planFinding("tag-automatic", {
				title: `${first.tag}${others} of ${run.name} ${automatic.length === 1 ? "has" : "have"} a running number for a tag`,
				span: run.span,
				label: "tags may shift",
				marks: automatic.map(({ tag }) => tag),
				help: `Write the tag that is on the cable: \`as ${first.tag}\` on its hop. \`ferrule tidy --pin-tags\` writes them all.`,
			}),
		];
	});
}
