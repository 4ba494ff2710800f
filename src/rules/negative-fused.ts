// A fuse or breaker that stands in the negative alone.
import type { PoleSort } from "../analysis/poles.ts";
import { finding } from "../base/finding.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { citation } from "../handbook/provenance.ts";
import { dead, live } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const negativeFused: Rule = {
	code: "negative-fused",
	level: "error",
	what: "A fuse or breaker opens the negative and leaves the positive on.",
	why: "When it opens, what it feeds looks dead and is live; a fault from the positive to the frame goes past it.",
	help: "Put it into the positive.",
	basis: citation(dcClause("grounded conductor").provenance),
	meter: [
		dead("from plus of the load to plus of the battery, its lead taken off, and the fuse out", "continuity"),
		live(
			"loading voltage tester",
			"from plus of the load to minus of the battery, the fuse out",
			"the full voltage instead of 0 V",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 6 AWG red
  within 6 in to F1: fuse 60 A
  1 ft to plus: bus 250 A
feed minus from house.- by single 6 AWG black
  1 ft to F2: fuse 60 A
  1 ft to minus: bus 250 A
`,
	],
	right: [
		`battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 6 AWG red
  within 6 in to F1: fuse 60 A
  1 ft to plus: bus 250 A
feed minus from house.- by single 6 AWG black
  1 ft to SH: shunt 500 A
  1 ft to minus: bus 250 A
`,
	],
	check: ({ circuit, states }) =>
		circuit.protections.flatMap(({ part, links, span, sort }) => {
			const isNegative = links.some((link) =>
				circuit.links[link]?.between.every(
					(point) =>
						circuit.points[point]?.role === "negative" ||
						// A wire of the negative that was landed on it.
						states.some(({ direct }) => isNegativeAlone(direct?.poles.sortsAt(point))),
				),
			);
			if (!isNegative) return [];
			return [
				finding({
					code: negativeFused.code,
					level: "error",
					title: `The ${sort} ${part} stands in the negative`,
					span,
					label: "in the negative",
					marks: [part],
					why: negativeFused.why,
					help: `Put ${part} into the positive, near the battery or bus.`,
					basis: negativeFused.basis,
				}),
			];
		}),
};

function isNegativeAlone(sorts: ReadonlySet<PoleSort> | undefined): boolean {
	return sorts?.has("neutral") === true && !sorts.has("hot");
}
