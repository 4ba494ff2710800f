// Equipment grounds thinner than the protective device ahead of them asks for; in IEC countries thinner than their line conductor.
import type { Analysis } from "../analysis/analysis.ts";
import { sortOfRole } from "../analysis/poles.ts";
import type { Exposure } from "../analysis/protection.ts";
import { type Finding, finding } from "../base/finding.ts";
import { compareGauges, formatGauge, type Gauge } from "../base/gauge.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { equipmentGroundFor, protectiveEarthFor } from "../handbook/equipment-ground.ts";
import { citation } from "../handbook/provenance.ts";
import { byEye } from "./meter-test.ts";
import { modesOf } from "./mode-names.ts";
import type { Rule } from "./rule.ts";

export const groundUndersized: Rule = {
	code: "ground-undersized",
	level: "error",
	what: "An equipment ground is thinner than the breaker ahead asks for, and thinner than the hots beside it; in IEC countries, thinner than these alone.",
	why: "In a fault it may burn through before the breaker opens, and then the case stays live.",
	help: "Use a thicker ground, at most as thick as the circuit's hots.",
	basis: "NFPA 70 Table 250.122; NFPA 70 250.122(A); IEC 60364-5-54 Table 54.2 in IEC countries, recalled",
	meter: [byEye("read the size printed on the jacket, or hold the ground against a gauge")],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs:
			"In the United States the device ahead decides; in IEC countries the line conductor does, as a warning, for a calculation may allow less.",
	},
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
		`plan
  region iec
  rules building
inlet supply 16 A 230 V
panel DB main 16 A rcbo 30 mA from supply by 3G2.5, 3.5 m
circuit sockets from DB breaker 16 A by 3G2.5
  2 m to b1: box metal
    a1: socket
at b1
  sockets-1.green-yellow on b1.case
  link b1.case, a1.ground by single 1.5 mm2 green-yellow
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
			if (worst === undefined) return [];
			return analysis.circuit.plan.settings.region === "iec"
				? tellEarth(analysis, conductor, hotIn, worst, modes)
				: tell(analysis, conductor, hotIn, worst, modes);
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

function tellEarth(
	analysis: Analysis,
	conductor: Conductor,
	hotIn: ReadonlyMap<string, Gauge>,
	{ device }: Exposure,
	modes: ReadonlySet<string>,
): Finding[] {
	const hots = hotBeside(analysis.circuit, conductor, hotIn);
	if (hots === undefined) return [];
	const { least, provenance } = protectiveEarthFor(hots.mm2);
	if (conductor.gauge.mm2 >= least - rounding) return [];
	return [
		finding({
			code: groundUndersized.code,
			level: "warning",
			title: `The ground ${conductor.name} is ${formatGauge(conductor.gauge)} beside ${formatGauge(hots)}: ${formatNumber(least, 1)} mm2 at least`,
			span: conductor.span,
			label: formatGauge(conductor.gauge),
			also: device === undefined ? [] : [{ span: device.span, label: device.part }],
			marks: [conductor.name, ...(conductor.cable === undefined ? [] : [conductor.cable])],
			figures: [
				{
					name: "protective earth",
					found: Number(conductor.gauge.mm2.toFixed(2)),
					limit: Number(least.toFixed(2)),
					unit: "mm2",
					source: citation(provenance),
				},
			],
			why: `${groundUndersized.why} The table is recalled, not read, and a calculation may allow less: look it up.`,
			help: `Use ${formatNumber(least, 1)} mm2 for it.`,
			modes: modesOf(analysis, modes),
			basis: citation(provenance),
		}),
	];
}

/** Metric sizes are whole tenths of a square millimetre. */
const rounding = 1e-6;

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

/** What a battery feeds beside it asks nothing of a ground of the mains. */
function isHotConductor({ role }: Conductor): boolean {
	return sortOfRole(role) === "hot" && systemOfRole(role) === "ac";
}
