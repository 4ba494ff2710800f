// A breaker, main or switch of a board that opens the hot and leaves the neutral, where both must open.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { isHot } from "../analysis/poles.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Part } from "../circuit/circuit.ts";
import { citation } from "../handbook/provenance.ts";
import { twoPoleClauseFor } from "../handbook/two-pole-clauses.ts";
import { dead } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const onePoleOpened: Rule = {
	code: "one-pole-opened",
	level: "error",
	what: "In an IEC camper or boat a breaker or main opens the hot alone and leaves the neutral joined.",
	why: "At a site whose hot and neutral are exchanged, what opens only one of them leaves everything behind it live.",
	help: "Take breakers that open both: `breaker 10 A two-pole`, `main 16 A two-pole`.",
	basis: "IEC 60364-7-721, in a UK guide to the wiring regulations, read; ISO 13297, recalled",
	meter: [dead("from the neutral ahead of the breaker to the neutral behind it, the breaker off", "continuity")],
	applies: { regions: ["iec"], rules: ["camper", "boat"] },
	wrong: [
		`plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3.5 m
circuit sockets from DB breaker 10 A by 3G1.5
  2 m to a1: socket
`,
		`plan "Van"
  region iec
inlet shore 16 A 230 V
feed entry from shore by 3G2.5
  1 m to R1: rcd 25 A 30 mA
  2 m to DB
panel DB main 16 A
circuit sockets from DB breaker 10 A two-pole by 3G1.5
  2 m to a1: socket
`,
	],
	right: [
		`plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3.5 m
circuit sockets from DB breaker 10 A two-pole by 3G1.5
  2 m to a1: socket
circuit lights from DB ground-fault-breaker 6 A by 3G1.5
  2 m to s1: switch
  2 m to l1: light 9 W
`,
		`plan "Workshop"
  region iec
  rules building
inlet supply 16 A 230 V
panel DB main 16 A rcbo 30 mA from supply by 3G2.5, 3.5 m
circuit sockets from DB breaker 10 A by 3G1.5
  2 m to a1: socket
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode({ circuit }: Analysis, state: ModeState): Finding[] {
	const clause = twoPoleClauseFor(circuit.plan.settings.rules);
	const devices = clause === undefined ? [] : findHalfOpened(circuit, state);
	const [first, ...others] = devices;
	if (clause === undefined || first === undefined) return [];
	const names = devices.map(({ name }) => name);
	return [
		finding({
			code: onePoleOpened.code,
			// What is only recalled does not decide that a plan is wrong.
			level: clause.provenance.known === "read" ? "error" : "note",
			title: `${listNames(names)} ${others.length === 0 ? "opens" : "open"} the hot and ${others.length === 0 ? "leaves" : "leave"} the neutral joined`,
			span: first.span,
			label: "opens one pole",
			also: others.slice(0, 8).map(({ span, name }) => ({ span, label: name })),
			marks: names,
			why: onePoleOpened.why,
			help: `Take devices that open both, and say so: \`two-pole\` behind the rating of ${listNames(names)}.${clause.provenance.known === "read" ? "" : " The rule is recalled from memory: look it up in the standard in force."}`,
			basis: citation(clause.provenance),
			key: `${onePoleOpened.code}@${names[0] ?? ""}`,
		}),
	];
}

/** Devices of boards with a contact in a hot that is fed, and none in a neutral. */
function findHalfOpened(circuit: Circuit, { poles }: ModeState): Part[] {
	const hots = new Set<string>();
	const neutrals = new Set<string>();
	for (const { part, nature, between } of circuit.links) {
		if (nature !== "contact") continue;
		const roles = between.flatMap((point) => [...poles.rolesAt(point)]);
		if (roles.some((role) => isHot(role))) hots.add(part);
		if (between.some((point) => circuit.points[point]?.role === "neutral")) neutrals.add(part);
	}
	return circuit.parts.filter(
		({ name, face }) => face.traits.includes("breaker") && hots.has(name) && !neutrals.has(name),
	);
}
