// Joint connectors with conductors in them that their ports do not hold, by the sizes they are said to take.
import type { Analysis } from "../analysis/analysis.ts";
import { bothEnds } from "../analysis/landings.ts";
import { type Finding, finding } from "../base/finding.ts";
import { compareGauges, formatGauge, type Gauge } from "../base/gauge.ts";
import type { Conductor, Splice } from "../circuit/circuit.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const jointSizeWrong: Rule = {
	code: "joint-size-wrong",
	level: "error",
	what: "A conductor is thinner or thicker than the joint connector it is in takes.",
	why: "A port that is too wide lets a thin wire slip out, and one that is too narrow does not close on a thick one.",
	help: "Use a connector that takes every conductor in it.",
	basis: "NFPA 70 110.3(B): listed products are used as they are marked",
	meter: [byEye("read the sizes on the connector, and with everything dead pull every conductor: none may move")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to b1: light 9 W
  9 ft to b2: light 9 W
at b1
  join lights-1.black, lights-2.black, b1.hot by push-in 3, 24 AWG to 16 AWG
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to b1: light 9 W
  9 ft to b2: light 9 W
at b1
  join lights-1.black, lights-2.black, b1.hot by lever 3, 32 A, 24 AWG to 12 AWG
`,
	],
	check: ({ circuit }: Analysis) => {
		const splices = circuit.points.flatMap((point) =>
			point.kind === "splice" && point.largest !== undefined ? [point] : [],
		);
		if (splices.length === 0) return [];
		const wanted = new Map(splices.map((splice) => [splice.index, splice]));
		const told = new Set<Splice>();
		return circuit.conductors.flatMap((conductor) =>
			bothEnds.flatMap((which): Finding[] => {
				const end = conductor.ends[which];
				const splice = end.point === undefined ? undefined : wanted.get(end.point);
				if (splice?.smallest === undefined || splice.largest === undefined || told.has(splice)) return [];
				if (fits(conductor.gauge, splice.smallest, splice.largest)) return [];
				told.add(splice);
				return [tell(splice, splice.smallest, splice.largest, conductor, which)];
			}),
		);
	},
};

function fits(gauge: Gauge, smallest: Gauge, largest: Gauge): boolean {
	return compareGauges(gauge, smallest) >= 0 && compareGauges(gauge, largest) <= 0;
}

function tell(
	splice: Splice,
	smallest: Gauge,
	largest: Gauge,
	{ name, gauge, ends }: Conductor,
	which: 0 | 1,
): Finding {
	const takes = smallest === largest ? formatGauge(largest) : `${formatGauge(smallest)} to ${formatGauge(largest)}`;
	return finding({
		code: jointSizeWrong.code,
		level: jointSizeWrong.level,
		title: `${name} is ${formatGauge(gauge)}, and the joint ${splice.name} takes ${takes}`,
		span: splice.said ? splice.span : ends[which].span,
		label: `takes ${takes}`,
		marks: [splice.name, name],
		why: jointSizeWrong.why,
		help: `Use a connector that takes ${formatGauge(gauge)}.`,
		basis: jointSizeWrong.basis,
		key: `${jointSizeWrong.code}@${splice.name}`,
	});
}
