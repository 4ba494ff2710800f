// Colours of conductors for direct current that say the other pole, or one of alternating current.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { colourSuits, coloursOf } from "../handbook/colour-roles.ts";
import { findColour } from "../handbook/colours.ts";
import { citation } from "../handbook/provenance.ts";
import { keyOfReversed } from "./polarity-dc-reversed.ts";

/** A finding for each cable with such a conductor; what hangs together with grounds may be green. */
export function findMisleadingDirect({ circuit, landings }: Analysis, { direct }: ModeState, code: string): Finding[] {
	if (direct === undefined) return [];
	const { region, rules } = circuit.plan.settings;
	const found = circuit.conductors.flatMap((conductor) => {
		if (conductor.sort === "pigtail" || touchesGround(circuit, conductor)) return [];
		const carries = carriedBy(direct.poles.sortsAt, conductor);
		if (carries === undefined) return [];
		const suits = conductor.ends.every(({ marked }) => {
			const colour = findColour(marked ?? conductor.colour);
			return colour === undefined || colourSuits(coloursOf(region, carries, rules), colour);
		});
		return suits ? [] : [{ conductor, carries }];
	});
	const root = landings.misplaced[0]?.root;
	// Behind one mix-up all that follows is one thing to tell.
	return [
		...groupBy(found, ({ conductor }) => (root === undefined ? (conductor.cable ?? conductor.name) : "")),
	].flatMap(([, group]) => {
		const [first] = group;
		if (first === undefined) return [];
		const { carries } = first;
		const tag = first.conductor.cable ?? first.conductor.name;
		const usual = coloursOf(region, carries, rules);
		return [
			finding({
				code,
				level: "error",
				title: `${listNames(group.map((one) => `${one.conductor.name} carries the ${one.carries}`))}, which the colour does not say`,
				span: circuit.cableByTag.get(tag)?.span ?? first.conductor.span,
				label: "the colour misleads",
				marks: group.map(({ conductor }) => conductor.name),
				why: "Whoever opens the box next trusts the colour and joins plus to minus, or takes it for a mains wire.",
				help: `Use ${usual.usual.join(" or ")} for the ${carries}, or mark it so at both ends.`,
				basis: citation(usual.provenance),
				key: `${code}@${tag}`,
				...(root === undefined ? {} : { consequenceOf: keyOfReversed(root) }),
			}),
		];
	});
}

/** The one pole that reaches a conductor; undefined for a dead one and for a link between batteries in series. */
function carriedBy(
	sortsAt: (point: number) => ReadonlySet<string>,
	{ ends }: Conductor,
): "positive" | "negative" | undefined {
	const sorts = new Set(ends.flatMap(({ point }) => (point === undefined ? [] : [...sortsAt(point)])));
	if (sorts.size !== 1) return undefined;
	return sorts.has("hot") ? "positive" : sorts.has("neutral") ? "negative" : undefined;
}

function touchesGround({ points }: Circuit, { ends, role }: Conductor): boolean {
	return role === "ground" || ends.some(({ point }) => point !== undefined && points[point]?.role === "ground");
}
