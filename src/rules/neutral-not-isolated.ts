// Neutral and ground joined by a wire where no source and no panel is said to bond them.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { isHot } from "../analysis/poles.ts";
import type { Root } from "../analysis/roots.ts";
import { type Finding, finding } from "../base/finding.ts";
import { neutralBondIn } from "../handbook/neutral-bond.ts";
import { citation } from "../handbook/provenance.ts";
import { dead } from "./meter-test.ts";
import { followsWorse, placeMistake, tellRoot } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const neutralNotIsolated: Rule = {
	code: "neutral-not-isolated",
	level: "danger",
	what: "With every intended bond taken away, neutral and ground are still joined somewhere.",
	why: "Part of what every load uses then flows back over the ground and through every case; when the neutral opens, all cases are live.",
	help: "Take the joint out; the one bond belongs at the source.",
	basis: `${citation(neutralBondIn("shore").provenance)}; NFPA 70 250.24(A)(5) and IEC 60364-5-54, recalled`,
	meter: [
		dead(
			"from the neutral bar to the ground bar, every source taken off and every bond that is meant to be there open; live everything looks right",
			"continuity",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  link LC.neutral.9, LC.ground.9 by 10 AWG bare
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
  9 ft to b2: receptacle
at b2
  bunks-2.bare on b2.neutral
`,
	],
	right: [
		`inlet pole 30 A 120 V floating
panel LC main 30 A bonded from pole by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const roots = new Map<string, { root: Root; points: number[] }>();
	const add = (root: Root, points: readonly number[]): void => {
		const known = roots.get(root.key);
		if (known === undefined) roots.set(root.key, { root, points: [...points] });
		else known.points.push(...points);
	};
	for (const { between, root } of state.crossings.bridges) if (!between.some((pole) => isHot(pole.role))) add(root, []);
	for (const stray of state.crossings.strays) if (stray.effect === "bridged") add(stray.root, [stray.point]);
	return [...roots.values()].map(({ root, points }) => {
		const source = bondedThere(analysis, root);
		return finding({
			code: neutralNotIsolated.code,
			level: source === undefined ? "danger" : "error",
			title: `Neutral and ground are joined in ${root.enclosure}: ${tellRoot(analysis, root)}`,
			label: "joins neutral and ground",
			...placeMistake(analysis, state, root, points),
			why:
				source === undefined
					? neutralNotIsolated.why
					: `${source} joins them at these very terminals itself, so nothing changes today; without its own bond, or with another supply in its place, they stay joined.`,
			basis: neutralNotIsolated.basis,
			...followsWorse(state.crossings, root, "bridged"),
		});
	});
}

/** The machine on board that bonds its neutral always, at the terminals that are joined once more; undefined elsewhere. */
function bondedThere({ circuit }: Analysis, { halves }: Root): string | undefined {
	const parts = new Set(
		halves.map(({ point }) => {
			const found = circuit.points[point];
			return found?.kind === "terminal" ? found.part : undefined;
		}),
	);
	const [part] = parts;
	// The bond of a shore supply is at its pedestal, at the other end of the cord.
	const source = circuit.sources.find((candidate) => candidate.part === part && candidate.sort !== "shore");
	if (parts.size !== 1 || source === undefined) return undefined;
	const isBonded = circuit.links.some(
		({ nature, modes, part: owner }) =>
			nature === "bond" && owner === part && (modes === undefined || modes.size === circuit.modes.length),
	);
	return isBonded ? source.name : undefined;
}
