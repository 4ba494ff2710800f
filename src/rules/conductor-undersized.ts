// Conductors of fixed wiring thinner than the least size there may be, and such as carry less than their loads ask for.
import type { Analysis } from "../analysis/analysis.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { compareGauges, formatGauge } from "../base/gauge.ts";
import { listNames } from "../base/wording.ts";
import type { Cable, Circuit, Conductor } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { type LeastSize, leastSizeFor } from "../handbook/least-sizes.ts";
import { citation, type Sourced } from "../handbook/provenance.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const conductorUndersized: Rule = {
	code: "conductor-undersized",
	level: "error",
	what: "A conductor of the mains wiring is thinner than the least size for fixed wiring, whatever protects it.",
	why: "A thin conductor breaks when it is bent or shaken, and carries too little current in a short circuit for the breaker to open at once.",
	help: "Use 14 AWG or thicker, under IEC 1.5 mm2 or thicker.",
	basis: "NFPA 70 Table 210.24, recalled; 33 CFR 183.435 on boats, recalled; IEC 60364-5-52 Table 52.2, recalled",
	meter: [byEye("read the size printed on the jacket")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3.5 m
circuit lights from DB breaker 6 A two-pole by 3G1
  2 m to l1: light 9 W
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 10 A by 16-2
  9 ft to l1: light 9 W
`,
	],
	right: [
		`plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3.5 m
circuit lights from DB breaker 6 A two-pole by 3G1.5
  2 m to l1: light 9 W
`,
	],
	check: ({ circuit }: Analysis) => {
		const { region, rules } = circuit.plan.settings;
		const least = leastSizeFor(region, rules);
		const thin = new Map<string, Conductor[]>();
		for (const conductor of circuit.conductors) {
			if (compareGauges(conductor.gauge, least.gauge) >= 0 || !isFixed(circuit, conductor)) continue;
			const name = conductor.cable ?? conductor.name;
			const known = thin.get(name);
			if (known === undefined) thin.set(name, [conductor]);
			else known.push(conductor);
		}
		return [...thin].map(([name, conductors]) => tell(circuit, name, conductors, least));
	},
};

/** Mains wiring that is no cord, no lead that came with a device, and no ground. */
function isFixed({ points, cableByTag }: Circuit, { cable, role, ends }: Conductor): boolean {
	if (systemOfRole(role) !== "ac") return false;
	const own = cable === undefined ? undefined : cableByTag.get(cable);
	if (own?.flexible === true) return false;
	return !ends.some(({ point }) => {
		const found = point === undefined ? undefined : points[point];
		return found?.kind === "terminal" && found.clamp === "lead";
	});
}

function tell(
	{ cableByTag }: Circuit,
	name: string,
	conductors: readonly Conductor[],
	least: Sourced<LeastSize>,
): Finding {
	const cable: Cable | undefined = cableByTag.get(name);
	const { gauge, span } = certain(conductors[0], "a thin conductor");
	return finding({
		code: conductorUndersized.code,
		level: conductorUndersized.level,
		title: `${listNames(cable === undefined ? conductors.map((conductor) => conductor.name) : [name])} is ${formatGauge(gauge)}, and ${formatGauge(least.gauge)} is the least for fixed wiring`,
		span: cable?.span ?? span,
		label: `${formatGauge(least.gauge)} at least`,
		marks: [name],
		figures: [
			{
				name: "size",
				found: Number(gauge.mm2.toFixed(2)),
				limit: Number(least.gauge.mm2.toFixed(2)),
				unit: "mm2",
				source: citation(least.provenance),
			},
		],
		why: `${conductorUndersized.why} This limit is recalled, not read: look it up before you rely on it.`,
		help: `Use ${formatGauge(least.gauge)} or thicker for ${name}.`,
		basis: citation(least.provenance),
		key: `${conductorUndersized.code}@${name}`,
	});
}
