// The minus of a battery that is not joined to the chassis of its vehicle.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { joinAll } from "../analysis/joined-sets.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { citation } from "../handbook/provenance.ts";
import { dead } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const van = (bond: string): string => `battery house lithium 12.8 V 100 Ah
chassis frame
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
bond board from LC.ground by single 8 AWG green
  6 ft to frame
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  6 ft to p1: pump 60 W
${bond}`;

const bond = "bond minus-frame from house.- by single 8 AWG black\n  1 ft to frame\n";
const second = `battery engine flooded 12 V 80 Ah
feed horn from engine.+, engine.- by pair 12 AWG
  within 6 in to F2: fuse 15 A
  6 ft to l1: load 60 W
feed tie from engine.- by single 6 AWG black
  6 ft to house.-
`;

export const chassisBondMissing: Rule = {
	code: "chassis-bond-missing",
	level: "warning",
	what: "The chassis is in the plan, and the minus of a battery is not joined to it.",
	why: "A positive that chafes through on the metal blows no fuse: the whole body stands on the battery's plus until a second fault finds it.",
	help: "Join the common minus bus to the chassis, at one point, with a lead that bears the largest fuse.",
	basis: citation(dcClause("common negative").provenance),
	meter: [dead("from the battery's minus to bare metal of the body, with the battery's plus off", "no continuity")],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat"],
		differs:
			"On boats, for the metal hull or bonding plate, a note: some are built with both poles apart from it on purpose.",
	},
	wrong: [van(""), van(second), van("feed spare from house.- by single 8 AWG black\n  1 ft to low: bus 100 A\n")],
	right: [
		van(bond),
		van(`${second}${bond}`),
		van(
			"feed low from house.- by single 8 AWG black\n  1 ft to low: bus 100 A\nbond tie from low by single 8 AWG black\n  1 ft to frame\n",
		),
	],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	const isBoat = circuit.plan.settings.rules === "boat";
	const metals = circuit.parts.filter(({ kind }) => kind === (isBoat ? "hull" : "chassis"));
	if (metals.length === 0) return [];
	const joined = joinAll(direct.network);
	const isBonded = (point: number): boolean =>
		metals.some(({ points: [stud] }) => stud !== undefined && joined.isJoined(stud, point));
	// A battery above another one in a series has its minus on that one's plus, and one on which nothing hangs is not built in.
	const feeding = circuit.sources.filter(
		({ sort, hot: [plus] }) =>
			sort === "battery" &&
			plus !== undefined &&
			circuit.loads.some(({ between: [positive] }) => joined.isJoined(plus, positive)),
	);
	const tops = circuit.sources.flatMap(({ sort, hot }) => (sort === "battery" ? hot : []));
	const lowest = circuit.sources.filter(
		({ sort, neutral }) =>
			sort === "battery" && neutral !== undefined && !tops.some((plus) => joined.isJoined(plus, neutral)),
	);
	const open = lowest.filter(({ neutral }) => neutral !== undefined && !isBonded(neutral));
	if (feeding.length === 0 || open.length === 0 || open.length < lowest.length) return [];
	const metal = certain(metals[0], "a chassis");
	const names = listNames(open.map(({ name }) => name));
	return [
		finding({
			code: chassisBondMissing.code,
			level: isBoat ? "note" : "warning",
			title: `The minus of ${names} is not joined to ${metal.name}`,
			span: metal.span,
			label: "not on the minus",
			also: open.slice(0, 8).map(({ span, name }) => ({ span, label: name })),
			marks: [metal.name, ...open.map(({ part }) => part)],
			why: chassisBondMissing.why,
			help: `Join the minus bus to ${metal.name}: \`bond minus-${metal.name} from ${open[0]?.part ?? ""}.-\`, with the cable that the thickest positive asks for.`,
			basis: chassisBondMissing.basis,
			key: `${chassisBondMissing.code}@${metal.name}`,
		}),
	];
}
