// Colours of conductors for direct current that say the other pole, or one of alternating current.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { type ColourRole, colourSuits, coloursOf } from "../handbook/colour-roles.ts";
import { findColour } from "../handbook/colours.ts";
import { citation } from "../handbook/provenance.ts";
import type { Settings } from "../plan/plan.ts";
import { keyOfReversed } from "./polarity-dc-reversed.ts";

/** What a conductor is for: a pole, the lead between two sources in series, or the bond of a negative to metal. */
type Use = "positive" | "negative" | "series" | "bond";

/** A finding for each cable with such a conductor; what hangs together with grounds may be green. */
export function findMisleadingDirect({ circuit, landings }: Analysis, direct: DirectState, code: string): Finding[] {
	const { settings } = circuit.plan;
	const found = circuit.conductors.flatMap((conductor) => {
		if (conductor.sort === "pigtail") return [];
		const use = useOf(circuit, direct, conductor);
		return use === undefined || conductor.ends.every(({ marked }) => suits(settings, marked ?? conductor.colour, use))
			? []
			: [{ conductor, use }];
	});
	if (found.length === 0) return [];
	// The lead of a series and a bond lie on two sorts of points by right.
	const root = landings.misplaced.find(({ conductor: index }) => {
		const conductor = circuit.conductors[index];
		const use = conductor === undefined ? undefined : useOf(circuit, direct, conductor);
		return use !== "series" && use !== "bond";
	})?.root;
	// Behind one mix-up all that follows is one thing to tell.
	return [
		...groupBy(found, ({ conductor, use }) =>
			root === undefined || use === "series" || use === "bond" ? (conductor.cable ?? conductor.name) : "",
		),
	].flatMap(([key, group]) => {
		const [first] = group;
		if (first === undefined) return [];
		const tag = first.conductor.cable ?? first.conductor.name;
		const { told, usual, source } = wordsFor(settings, first.use);
		return [
			finding({
				code,
				level: "error",
				title: `${listNames(group.map((one) => `${one.conductor.name} ${wordsFor(settings, one.use).told}`))}, which the colour does not say`,
				span: circuit.cableByTag.get(tag)?.span ?? first.conductor.span,
				label: "the colour misleads",
				marks: group.map(({ conductor }) => conductor.name),
				why: "Whoever opens the box next trusts the colour and joins plus to minus, or takes it for a mains wire.",
				help: `Use ${usual.join(" or ")} for ${told.slice(told.indexOf(" ") + 1)}, or mark it so at both ends.`,
				basis: source,
				key: `${code}@${tag}`,
				...(root === undefined || key !== "" ? {} : { consequenceOf: keyOfReversed(root) }),
			}),
		];
	});
}

/** The roles whose colours each use may have, and what it is told as. */
const uses: Readonly<Record<Use, { readonly roles: readonly ColourRole[]; readonly told: string }>> = {
	positive: { roles: ["positive"], told: "carries the positive" },
	negative: { roles: ["negative"], told: "carries the negative" },
	// On a plus at one end and a minus at the other, either colour says something true.
	series: { roles: ["positive", "negative"], told: "carries the middle of a series" },
	bond: { roles: ["negative", "ground"], told: "bonds the negative" },
};

function suits({ region, rules }: Settings, word: string, use: Use): boolean {
	const colour = findColour(word);
	if (colour === undefined || uses[use].roles.some((role) => colourSuits(coloursOf(region, role, rules), colour)))
		return true;
	// A wire to the metal is brown in many vehicles (common practice); only what says positive misleads.
	return use === "bond" && (colour === "brown" || !colourSuits(coloursOf(region, "positive", rules), colour));
}

function wordsFor(
	{ region, rules }: Settings,
	use: Use,
): { readonly told: string; readonly usual: readonly string[]; readonly source: string } {
	const { roles, told } = uses[use];
	const rows = roles.map((role) => coloursOf(region, role, rules));
	return {
		told,
		usual: rows.flatMap((row) => row.usual),
		source: [...new Set(rows.map((row) => citation(row.provenance)))].join("; "),
	};
}

/** What a conductor is for; undefined for a dead one, and for one of which nobody can say. */
function useOf(circuit: Circuit, { poles, contradicted }: DirectState, { ends, role }: Conductor): Use | undefined {
	if (ends.every(({ point }) => point === undefined || poles.sortsAt(point).size === 0)) return undefined;
	const sorts = new Set(ends.flatMap(({ point }) => (point === undefined ? [] : [...poles.sortsAt(point)])));
	const roles = ends.map(({ point }) => circuit.points[point ?? -1]?.role);
	if (role === "ground" || roles.includes("ground"))
		return roles.includes("negative") && roles.includes("ground") && !sorts.has("hot") && sorts.has("neutral")
			? "bond"
			: undefined;
	if (sorts.size === 1) return sorts.has("hot") ? "positive" : sorts.has("neutral") ? "negative" : undefined;
	return sorts.has("hot") && sorts.has("neutral") && contradicted.length === 0 && isInSeries(circuit, ends)
		? "series"
		: undefined;
}

/** Whether a conductor leads from the minus of a source to the plus of another. */
function isInSeries({ sources }: Circuit, [one, other]: Conductor["ends"]): boolean {
	const isMinus = (point: number | undefined): boolean =>
		sources.some(({ neutral }) => point !== undefined && neutral === point);
	const isPlus = (point: number | undefined): boolean => sources.some(({ hot }) => hot.includes(point ?? -1));
	return (isMinus(one.point) && isPlus(other.point)) || (isPlus(one.point) && isMinus(other.point));
}
