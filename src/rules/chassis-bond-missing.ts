// The minus of a battery that is not joined to the chassis of its vehicle.
import type { Analysis } from "../analysis/analysis.ts";
import { type CaseTie, findCaseTies, findMinusTies, type MinusTie } from "../analysis/chassis-ties.ts";
import type { DirectState } from "../analysis/direct.ts";
import { joinAll } from "../analysis/joined-sets.ts";
import { tellWay } from "../analysis/network.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatGauge } from "../base/gauge.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Part, Source } from "../circuit/circuit.ts";
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
	what: "The chassis is in the plan, and the minus of a battery, the case of a machine or on a boat the ground of the mains is not joined to it by a lead that bears a fault.",
	why: "A positive that chafes through on the metal blows no fuse: the whole body stands on the battery's plus until a second fault finds it.",
	help: "Join the common minus bus to the chassis, at one point, with a lead that bears the largest fuse.",
	basis: citation(dcClause("common negative").provenance),
	meter: [dead("from the battery's minus to bare metal of the body, with the battery's plus off", "no continuity")],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat"],
		differs:
			"On boats, for the metal hull or bonding plate, a note where the ground of the mains is not on it either: some are built with both poles apart from it on purpose.",
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
	if (isBoat) return findOnHull(circuit, direct, metals);
	return [
		...findOpen(circuit, direct, metals, "warning"),
		...findMinusTies(circuit, direct, metals).map((tie) => tellMinusTie(circuit, tie)),
		...findCaseTies(circuit, direct, metals).map((tie) => tellCaseTie(circuit, tie)),
	];
}

/** On a boat both the ground of the mains and the minus are on the metal, or neither is. */
function findOnHull(circuit: Circuit, direct: DirectState, metals: readonly Part[]): Finding[] {
	const joined = joinAll(direct.network);
	const isOn = (point: number | undefined): boolean =>
		point !== undefined && metals.some(({ points: [stud] }) => stud !== undefined && joined.isJoined(stud, point));
	const mains = circuit.sources.filter(({ system, ground }) => system === "ac" && ground !== undefined);
	const grounded = mains.filter(({ ground }) => isOn(ground));
	const open = findOpen(circuit, direct, metals, grounded.length > 0 ? "warning" : "note");
	const isMinusOn = circuit.sources.some(({ sort, neutral }) => sort === "battery" && isOn(neutral));
	const [first] = mains;
	const ties = findMinusTies(circuit, direct, metals).map((tie) => tellMinusTie(circuit, tie));
	return first === undefined || grounded.length > 0 || !isMinusOn
		? [...open, ...ties]
		: [...open, ...ties, tellPartedGround(certain(metals[0], "a hull"), first)];
}

/** Batteries none of which is joined to the metal. */
function findOpen(
	circuit: Circuit,
	direct: DirectState,
	metals: readonly Part[],
	level: "warning" | "note",
): Finding[] {
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
			level,
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

/** A battery on the metal through a charger or converter alone. */
function tellMinusTie(circuit: Circuit, { battery, metal, through, way }: MinusTie): Finding {
	return finding({
		code: chassisBondMissing.code,
		level: "warning",
		title: `The minus of ${battery.name} is joined to ${metal.name} through ${through} alone`,
		span: metal.span,
		label: "no lead of its own",
		also: [{ span: battery.span, label: battery.name }],
		marks: [metal.name, battery.part, through],
		path: tellWay(circuit, way, battery.neutral ?? 0),
		why: `When a positive of ${battery.name} chafes through on the metal, all that its fuse lets through comes back through ${through} and its leads, which are not made for it.`,
		help: `Join the minus of ${battery.name} to ${metal.name} with a lead of its own, as thick as its thickest positive asks for.`,
		basis: chassisBondMissing.basis,
		key: `${chassisBondMissing.code}@${metal.name}/${battery.part}`,
	});
}

/** A machine whose case is on the metal by thin conductors alone. */
function tellCaseTie(circuit: Circuit, { part, metal, positive, thinnest, needed, way }: CaseTie): Finding {
	return finding({
		code: chassisBondMissing.code,
		level: "warning",
		title: `The case of ${part.name} is joined to ${metal.name} by way of ${thinnest.name} alone, of ${formatGauge(thinnest.gauge)}: its positive asks for ${formatGauge(needed)}`,
		span: part.span,
		label: "no lead of its own",
		also: [{ span: thinnest.span, label: formatGauge(thinnest.gauge) }],
		marks: [part.name, metal.name, thinnest.name],
		path: tellWay(circuit, way, part.points[0] ?? 0),
		figures: [
			{
				name: "bond",
				found: Number(thinnest.gauge.mm2.toFixed(2)),
				limit: Number(needed.mm2.toFixed(2)),
				unit: "mm2",
				source: "one size below the positive: ABYC E-11, recalled",
			},
		],
		why: `When ${positive.name} touches the case, ${thinnest.name} glows or burns through before the fuse opens.`,
		help: `Join the case of ${part.name} to ${metal.name} with ${formatGauge(needed)} or thicker. This limit is recalled, not read: look it up before you rely on it.`,
		basis: chassisBondMissing.basis,
		key: `${chassisBondMissing.code}@${metal.name}/${part.name}`,
	});
}

/** The ground of the mains, not on the metal that the minus is on. */
function tellPartedGround(metal: Part, source: Source): Finding {
	return finding({
		code: chassisBondMissing.code,
		level: "warning",
		title: `The ground of ${source.name} is not joined to ${metal.name}, which the minus is on`,
		span: metal.span,
		label: "not on the mains' ground",
		also: [{ span: source.span, label: source.name }],
		marks: [metal.name, source.part],
		why: "A mains fault that gets to anything on the minus has no way back but the water, and no breaker opens.",
		help: `Join the ground bar of the mains panel to ${metal.name}, at one point.`,
		basis: citation(dcClause("ground tie, boats").provenance),
		key: `${chassisBondMissing.code}@${metal.name}/${source.part}`,
	});
}
