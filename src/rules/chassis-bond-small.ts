// A lead from the minus, or from a machine's case, to the chassis that is too thin for the fault it has to carry.
import type { Analysis } from "../analysis/analysis.ts";
import { type ChassisBond, findChassisBonds } from "../analysis/chassis-bonds.ts";
import type { DirectState } from "../analysis/direct.ts";
import { type Finding, finding } from "../base/finding.ts";
import { compareGauges, formatGauge, type Gauge } from "../base/gauge.ts";
import type { Circuit, Conductor, Part } from "../circuit/circuit.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { citation } from "../handbook/provenance.ts";
import { awgOf } from "../handbook/sizes.ts";
import { oneSizeBelow } from "../handbook/trade-sizes.ts";
import { byEye } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const van = (bond: string): string => `battery house lithium 12.8 V 280 Ah
chassis frame
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
feed plus from house.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 125 A
  2 ft to inv.+
feed minus from house.- by single 2 AWG black
  2 ft to inv.-
bond minus-frame from house.- by single ${bond} black
  1 ft to frame
bond case from inv.case by single 4 AWG green
  2 ft to frame
circuit desk from inv.out by 14-2
  3 ft to d1: receptacle
`;

export const chassisBondSmall: Rule = {
	code: "chassis-bond-small",
	level: "warning",
	what: "The lead from the minus or from a machine's case to the chassis is more than one size thinner than the positive whose fault it must carry, or a lead to a boat's hull or plate thinner than any bond may be.",
	why: "When that positive touches the metal, the lead glows or burns through before the fuse opens.",
	help: "Use a lead of the size of the thickest positive behind the bank, or one size less.",
	basis: `${citation(dcClause("common negative").provenance)}; one size below the positive: ABYC E-11, recalled`,
	meter: [byEye("read the size printed on the lead at the chassis stud, and on the thickest positive")],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat"],
		differs:
			"In the United States no such lead is thinner than 8 AWG where the van has mains too. On boats every lead to the metal hull or bonding plate has 8 AWG or more, whatever the positives.",
	},
	wrong: [van("10 AWG"), van("8 AWG"), van("6 AWG")],
	right: [van("2 AWG"), van("4 AWG"), van("6 AWG").replaceAll("2 AWG", "4 AWG").replace("125 A", "100 A")],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	if (circuit.plan.settings.rules === "boat") return findThinOnHull(circuit);
	const { bonds } = findChassisBonds(circuit, direct);
	const { region } = circuit.plan.settings;
	const hasMains = region === "us" && circuit.sources.some(({ system }) => system === "ac");
	return bonds.flatMap((bond): Finding[] => {
		const { gauge } = bond.conductor;
		if (hasMains && compareGauges(gauge, leastWithMains) < 0) return [tell(bond, leastWithMains, "error")];
		const needed = bond.positive === undefined ? undefined : oneSizeBelow(bond.positive.gauge);
		return needed === undefined || compareGauges(gauge, needed) >= 0 ? [] : [tell(bond, needed, "warning")];
	});
}

/** NFPA 70 551.56(C), read. */
const leastWithMains = awgOf("8");

/** ABYC E-2, recalled: of any bonding conductor aboard. */
const leastOnHull = awgOf("8");

function findThinOnHull({ parts, conductors }: Circuit): Finding[] {
	const hulls = parts.filter(({ kind }) => kind === "hull");
	return hulls.flatMap((metal) =>
		conductors.flatMap((conductor) => {
			const isOn = conductor.ends.some(({ point }) => point !== undefined && metal.points.includes(point));
			return isOn && compareGauges(conductor.gauge, leastOnHull) < 0 ? [tellOnHull(conductor, metal)] : [];
		}),
	);
}

function tellOnHull({ name, gauge, span }: Conductor, metal: Part): Finding {
	const source = "ABYC E-2, recalled";
	return finding({
		code: chassisBondSmall.code,
		level: "warning",
		title: `${name} joins to ${metal.name} with ${formatGauge(gauge)}: ${formatGauge(leastOnHull)} at least`,
		span,
		label: `${formatGauge(leastOnHull)} at least`,
		marks: [name, metal.name],
		figures: [
			{
				name: "bond",
				found: Number(gauge.mm2.toFixed(2)),
				limit: Number(leastOnHull.mm2.toFixed(2)),
				unit: "mm2",
				source,
			},
		],
		why: "A thin bond corrodes through unseen in salt and damp, and a fault or a stroke of lightning melts it.",
		help: `Use ${formatGauge(leastOnHull)} or thicker for it. This limit is recalled, not read: look it up before you rely on it.`,
		basis: source,
		key: `${chassisBondSmall.code}@${name}`,
	});
}

function tell(
	{ conductor, sort, part, metal, positive }: ChassisBond,
	needed: Gauge,
	level: "error" | "warning",
): Finding {
	const what = sort === "minus" ? "the minus" : `the case of ${part.name}`;
	const beside = positive === undefined ? "" : `, beside ${positive.name} of ${formatGauge(positive.gauge)}`;
	return finding({
		code: chassisBondSmall.code,
		level,
		title: `${conductor.name} joins ${what} to ${metal.name} with ${formatGauge(conductor.gauge)}${beside}: ${formatGauge(needed)} at least`,
		span: conductor.span,
		label: `${formatGauge(needed)} at least`,
		also: positive === undefined ? [] : [{ span: positive.span, label: formatGauge(positive.gauge) }],
		marks: [conductor.name, metal.name],
		figures: [
			{
				name: "bond",
				found: Number(conductor.gauge.mm2.toFixed(2)),
				limit: Number(needed.mm2.toFixed(2)),
				unit: "mm2",
				source: chassisBondSmall.basis,
			},
		],
		why: chassisBondSmall.why,
		help: `Use ${formatGauge(needed)} or thicker for it.${level === "warning" ? " This limit is recalled, not read: look it up before you rely on it." : ""}`,
		basis: chassisBondSmall.basis,
		key: `${chassisBondSmall.code}@${conductor.name}`,
	});
}
