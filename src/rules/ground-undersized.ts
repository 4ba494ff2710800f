// Equipment grounds thinner than the protective device ahead of them asks for.
import type { Analysis } from "../analysis/analysis.ts";
import { sortOfRole } from "../analysis/poles.ts";
import type { Exposure } from "../analysis/protection.ts";
import { type Finding, finding } from "../base/finding.ts";
import { compareGauges, formatGauge, type Gauge } from "../base/gauge.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { equipmentGroundFor } from "../handbook/equipment-ground.ts";
import { citation } from "../handbook/provenance.ts";
import { byEye } from "./meter-test.ts";
import { modesOf } from "./mode-names.ts";
import type { Rule } from "./rule.ts";

export const groundUndersized: Rule = {
	code: "ground-undersized",
	level: "error",
	what: "An equipment ground is thinner than the breaker ahead asks for, and thinner than the hots beside it.",
	why: "In a fault it may burn through before the breaker opens, and then the case stays live.",
	help: "Use a thicker ground, at most as thick as the circuit's hots.",
	basis: "NFPA 70 Table 250.122; NFPA 70 250.122(A)",
	meter: [byEye("read the size printed on the jacket, or hold the ground against a gauge")],
	applies: { regions: ["us"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: box metal
    r1: receptacle
    r2: receptacle
at b1
  bunks-1.bare on b1.case
  link b1.case, r1.ground by single 12 AWG green
  link b1.case, r2.ground by single 14 AWG green
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit lights from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W
`,
	],
	check: (analysis) => {
		const hotIn = thickestHots(analysis.circuit);
		return analysis.circuit.conductors.flatMap((conductor) => {
			if (conductor.role !== "ground") return [];
			let worst: Exposure | undefined;
			const modes = new Set<string>();
			for (const state of analysis.states) {
				const exposure = state.waysBack.ground.get(conductor.index);
				if (exposure?.device?.rating === undefined) continue;
				modes.add(state.mode.name);
				if (worst === undefined || exposure.amperes > worst.amperes) worst = exposure;
			}
			return worst === undefined ? [] : tell(analysis, conductor, hotIn, worst, modes);
		});
	},
};

function tell(
	analysis: Analysis,
	conductor: Conductor,
	hotIn: ReadonlyMap<string, Gauge>,
	exposure: Exposure,
	modes: ReadonlySet<string>,
): Finding[] {
	const rating = exposure.device?.rating ?? 0;
	const row = equipmentGroundFor(rating);
	const printed = conductor.material === "copper" ? row?.copper : row?.aluminium;
	if (row === undefined || printed === undefined || compareGauges(conductor.gauge, printed) >= 0) return [];
	const hots = hotBeside(analysis.circuit, conductor, hotIn);
	// Never larger than the circuit's own conductors: 250.122(A). Those may be too thin themselves, which is told elsewhere.
	if (hots === undefined || compareGauges(conductor.gauge, hots) >= 0) return [];
	const needed = compareGauges(printed, hots) < 0 ? printed : hots;
	const amperes = `${formatNumber(rating, 1)} A`;
	return [
		finding({
			code: groundUndersized.code,
			level: "error",
			title: `The ground ${conductor.name} is ${formatGauge(conductor.gauge)}, and ${amperes} ahead asks for ${formatGauge(needed)}`,
			span: conductor.span,
			label: formatGauge(conductor.gauge),
			also: exposure.device === undefined ? [] : [{ span: exposure.device.span, label: amperes }],
			marks: [conductor.name, ...(conductor.cable === undefined ? [] : [conductor.cable])],
			figures: [
				{
					name: "equipment ground",
					found: Number(conductor.gauge.mm2.toFixed(2)),
					limit: Number(needed.mm2.toFixed(2)),
					unit: "mm2",
					source: citation(row.provenance),
				},
			],
			why: groundUndersized.why,
			help: `Use ${formatGauge(needed)} for it.`,
			modes: modesOf(analysis, modes),
			basis: groundUndersized.basis,
		}),
	];
}

/** The thickest hot that runs beside a ground: in its cable, or for a pigtail, jumper or single conductor in the boxes it lies in. */
function hotBeside(circuit: Circuit, ground: Conductor, hotIn: ReadonlyMap<string, Gauge>): Gauge | undefined {
	const cable = ground.cable === undefined ? undefined : circuit.cableByTag.get(ground.cable);
	const cores = cable?.conductors.flatMap((index) => circuit.conductors[index] ?? []) ?? [];
	if (cores.length > 1)
		return cores
			.filter(isHotConductor)
			.map(({ gauge }) => gauge)
			.toSorted(compareGauges)
			.at(-1);
	// From a panel to a device: the panel's own feed is no measure, so the box with the thinner hots is.
	return ground.ends
		.flatMap(({ enclosure }) => hotIn.get(enclosure.name) ?? [])
		.toSorted(compareGauges)
		.at(0);
}

function thickestHots(circuit: Circuit): ReadonlyMap<string, Gauge> {
	const thickest = new Map<string, Gauge>();
	for (const conductor of circuit.conductors) {
		if (!isHotConductor(conductor)) continue;
		for (const { enclosure } of conductor.ends) {
			const known = thickest.get(enclosure.name);
			if (known === undefined || compareGauges(known, conductor.gauge) < 0)
				thickest.set(enclosure.name, conductor.gauge);
		}
	}
	return thickest;
}

function isHotConductor({ role }: Conductor): boolean {
	return sortOfRole(role) === "hot";
}
