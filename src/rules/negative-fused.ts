// A fuse or breaker that stands in the negative alone.
import type { ModeState } from "../analysis/analysis.ts";
import { reachFrom } from "../analysis/network.ts";
import type { PoleSort } from "../analysis/poles.ts";
import { finding } from "../base/finding.ts";
import type { Circuit, Link } from "../circuit/circuit.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { citation } from "../handbook/provenance.ts";
import { dead, live } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const negativeFused: Rule = {
	code: "negative-fused",
	level: "error",
	what: "A fuse or breaker opens the negative and leaves the positive on; where no pole is joined to ground, one in each is right.",
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
		`battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 12 AWG red
  within 6 in to F1: fuse 20 A
  6 ft to l1: light 6 W
feed minus from house.- by single 12 AWG black
  within 6 in to F2: fuse 20 A
  6 ft to l1.-
`,
	],
	check: ({ circuit, states }) =>
		circuit.protections.flatMap(({ part, links, span, sort }) => {
			const first = circuit.links[links[0] ?? -1];
			if (first === undefined || sort === "supply") return [];
			const isNegative = links.some((link) =>
				circuit.links[link]?.between.every(
					(point) =>
						circuit.points[point]?.role === "negative" ||
						// A wire of the negative that was landed on it.
						states.some(({ direct }) => isNegativeAlone(direct?.poles.sortsAt(point))),
				),
			);
			if (!isNegative || states.every((state) => isOfPair(circuit, state, first))) return [];
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

/**
 * Whether a device in the negative is one of a pair: nothing joins the negative to ground, and a device of its own stands in
 * the positive of all that hangs behind it. In a system without ground a fault can come by either pole.
 */
function isOfPair(circuit: Circuit, { direct }: ModeState, { between, index, protection }: Link): boolean {
	if (direct === undefined) return false;
	const { network, poles, exposure } = direct;
	const batteries = circuit.sources.flatMap(({ sort, neutral }) => (sort === "battery" ? (neutral ?? []) : []));
	const reach = reachFrom(network, batteries, ({ by }) => by.kind === "conductor" || by.link.index !== index);
	const behind = between.filter((point) => !reach.has(point));
	if (behind.length !== 1 || poles.rolesAt(behind[0] ?? 0).has("positive")) return false;
	const beyond = reachFrom(network, behind, ({ by }) => by.kind === "conductor" || by.link.index !== index);
	const isGrounded = [...reach.points, ...beyond.points].some((point) => circuit.points[point]?.role === "ground");
	// What is smaller than the fuse of the positive is none of its pair, but one that was landed in the wrong pole.
	const rating = circuit.protections[protection ?? -1]?.rating ?? 0;
	const hanging = circuit.loads.filter(({ between: ends }) => beyond.has(ends[1]));
	return (
		!isGrounded &&
		hanging.length > 0 &&
		hanging.every(({ between: [positive] }) => (exposure.get(positive)?.amperes ?? 0) <= rating)
	);
}
