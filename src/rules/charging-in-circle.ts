// A charger that is fed by the inverter whose own battery it charges.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { sortOfRole } from "../analysis/poles.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Circuit, Source } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const chargingInCircle: Rule = {
	code: "charging-in-circle",
	level: "error",
	what: "A battery charger hangs on the inverter that is fed by the very battery it charges.",
	why: "Power goes round from the battery through inverter and charger back into it, and a fifth is lost each time: the battery is flat by morning.",
	help: "Feed the charger from shore or a generator, on a circuit that the inverter does not feed.",
	basis: "common practice",
	meter: [live("clamp meter", "around the charger's hot, with the inverter alone on", "a current that does not end")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`battery house lithium 12.8 V 100 Ah, fault 3 kA
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
feed power from house.+, house.- by pair 2 AWG
  within 7 in to F1: fuse class-T 125 A interrupting 20 kA
  2 ft to inv.+
circuit desk from inv.out by 12-2
  3 ft to ch: charger 20 A 12 V
feed filled from house.+, house.- by pair 10 AWG
  within 7 in to F2: fuse 30 A interrupting 10 kA
  3 ft to ch.+
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
battery house agm 12 V 100 Ah
circuit charge from LC breaker 15 A by 14-2
  5 ft to ch: charger 20 A 12 V
feed filled from house.+, house.- by pair 10 AWG
  within 6 in to F1: fuse 30 A
  3 ft to ch.+
`,
	],
	check: (analysis) =>
		analysis.circuit.sources.some(({ system }) => system === "dc")
			? findOverModes(analysis, (state) => checkMode(analysis, state))
			: [],
};

/** What makes direct current of mains: its source, and the hot terminal by which it is fed. */
interface Charger {
	readonly source: Source;
	readonly hot: number;
}

function chargersOf({ sources, loads, points }: Circuit): Charger[] {
	return sources.flatMap((source): Charger[] => {
		if (source.system !== "dc") return [];
		const load = loads.find(({ part }) => part === source.part);
		const hot = load?.between.find((point) => {
			const role = points[point]?.role;
			return role !== undefined && systemOfRole(role) === "ac" && sortOfRole(role) === "hot";
		});
		return hot === undefined ? [] : [{ source, hot }];
	});
}

function checkMode({ circuit }: Analysis, { poles, direct }: ModeState): Finding[] {
	if (direct === undefined) return [];
	const chargers = chargersOf(circuit);
	if (chargers.length === 0) return [];
	return circuit.sources.flatMap((inverter) => {
		if (inverter.system !== "ac") return [];
		const reach = poles.reaches.find((_, index) => poles.poles[index]?.source === inverter.name);
		const plus = circuit.partByName.get(inverter.part)?.points.find((at) => circuit.points[at]?.role === "positive");
		if (reach === undefined || plus === undefined) return [];
		return chargers.flatMap(({ source, hot }) => {
			const [post] = source.hot;
			if (post === undefined || source.part === inverter.part || !reach.has(hot)) return [];
			return direct.potentials.between(plus, post) === 0 ? [tell(circuit, inverter, source, reach.pathTo(hot))] : [];
		});
	});
}

function tell(circuit: Circuit, inverter: Source, charger: Source, path: Finding["path"]): Finding {
	return finding({
		code: chargingInCircle.code,
		level: chargingInCircle.level,
		title: `${charger.part} charges the battery that ${inverter.part} feeds it from`,
		span: circuit.partByName.get(charger.part)?.span ?? charger.span,
		label: `fed by ${inverter.part}`,
		also: [{ span: inverter.span, label: inverter.part }],
		marks: [charger.part, inverter.part],
		path,
		why: chargingInCircle.why,
		help: `Feed ${charger.part} from shore or a generator, ahead of ${inverter.part}.`,
		basis: chargingInCircle.basis,
		key: `${chargingInCircle.code}@${charger.part}`,
	});
}
