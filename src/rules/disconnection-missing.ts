// Solar modules or a battery for direct current that nothing cuts off by hand.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { type Edge, reachFrom } from "../analysis/network.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Part, Source } from "../circuit/circuit.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { citation } from "../handbook/provenance.ts";
import { dead } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const string = (off: string): string => `solar roof 200 W, open 22 V, short 11 A
solar-controller mppt 20 A 12 V, limit 75 V
battery house lithium 12.8 V 100 Ah
feed sun from roof.+, roof.- by pair 10 AWG
  ${off}to mppt.in
feed charge from house.+, house.- by pair 10 AWG
  within 7 in to F1: fuse 30 A
  1 ft to D2: disconnect 30 A
  4 ft to mppt.out
`;

export const disconnectionMissing: Rule = {
	code: "disconnection-missing",
	level: "warning",
	what: "No disconnect or breaker stands between solar modules and what they feed, or between a battery and all it feeds.",
	why: "Modules give their volts as long as it is day, a battery always: a plug or fuse pulled under load draws an arc, and nobody can work on it dead.",
	help: "Put a disconnect for direct current into the plus, where a hand reaches it.",
	basis: `NFPA 70 690.13 and 690.15, IEC 60364-7-712, both recalled; for batteries ${citation(dcClause("main disconnect").provenance)}`,
	meter: [
		dead(
			"from the plus of the module to the input of its controller, with everything off that has a handle",
			"continuity",
		),
	],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs: "For solar modules a warning everywhere; for a battery, whose fuse can be taken out, a note.",
	},
	wrong: [string("14 ft "), string("1 ft to F2: fuse 20 A\n  12 ft ")],
	right: [string("12 ft to D1: disconnect 30 A\n  2 ft "), string("12 ft to Q1: breaker 20 A\n  2 ft ")],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	const modules = circuit.sources.filter(({ sort }) => sort === "solar");
	const batteries = circuit.sources.filter(({ sort }) => sort === "battery");
	if (modules.length + batteries.length === 0 || direct.contradicted.length > 0) return [];
	const parts = circuit.partByName;
	const opensByHand = ({ by }: Edge): boolean =>
		by.kind === "link" && by.link.contact !== undefined && byHand.has(parts.get(by.link.part)?.kind ?? "");
	const reachedFrom = (sources: readonly Source[]): readonly Part[] => {
		const reach = reachFrom(
			direct.network,
			sources.flatMap(({ hot }) => hot),
			(edge) => !opensByHand(edge),
		);
		return circuit.loads.flatMap(({ part, between: [positive] }) => {
			const found = parts.get(part);
			return circuit.points[positive]?.role !== "positive" || !reach.has(positive) || found === undefined
				? []
				: [found];
		});
	};
	const fed = modules.length === 0 ? [] : reachedFrom(modules);
	return [
		...fed.filter(({ kind }) => kind === "solar-controller").map((controller) => tellString(controller, modules)),
		...(circuit.parts.some(({ kind }) => byHand.has(kind)) || batteries.length === 0
			? []
			: tellBattery(batteries, reachedFrom(batteries))),
	];
}

/** What a hand opens under load, or by a coil from afar. */
const byHand: ReadonlySet<string> = new Set(["disconnect", "breaker", "relay", "contactor", "switch"]);

function tellString(controller: Part, modules: readonly Source[]): Finding {
	return finding({
		code: disconnectionMissing.code,
		level: "warning",
		title: `Nothing cuts ${controller.name} off from ${listNames(modules.map(({ name }) => name))} by hand`,
		span: controller.span,
		label: "always on its modules",
		also: modules.slice(0, 8).map(({ span, name }) => ({ span, label: name })),
		marks: [controller.name, ...modules.slice(0, 8).map(({ part }) => part)],
		why: disconnectionMissing.why,
		help: `Put a disconnect or a breaker for direct current into the plus between the modules and ${controller.name}.`,
		basis: disconnectionMissing.basis,
		key: `${disconnectionMissing.code}@${controller.name}`,
	});
}

function tellBattery(batteries: readonly Source[], fed: readonly Part[]): Finding[] {
	const [first] = batteries;
	if (first === undefined || fed.length === 0) return [];
	const names = listNames(batteries.map(({ name }) => name));
	return [
		finding({
			code: disconnectionMissing.code,
			level: "note",
			title: `Nothing but a fuse cuts ${names} off from ${listNames(fed.map(({ name }) => name))}`,
			span: first.span,
			marks: batteries.map(({ part }) => part),
			why: "To work on anything the fuse has to be taken out, or a lead off its post.",
			help: "A disconnect behind the battery's fuse, where a hand reaches it, is what the trade puts there.",
			basis: citation(dcClause("main disconnect").provenance),
			key: `${disconnectionMissing.code}@${first.part}`,
		}),
	];
}
