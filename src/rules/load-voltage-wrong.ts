// A load or outlet that gets another voltage than it is made for: none between two hots of one leg, half, double, another country's.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { findMergedPanels, type MergedPanel } from "../analysis/merged-legs.ts";
import { findMissingLeg } from "../analysis/missing-legs.ts";
import { type Across, voltageAcross } from "../analysis/voltage.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Circuit, Load, Point } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { findWrongDirectVoltage } from "./direct-voltage.ts";
import { keyOfShortPanel } from "./leg-missing.ts";
import { live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const loadVoltageWrong: Rule = {
	code: "load-voltage-wrong",
	level: "error",
	what: "What reaches the terminals of a load, or of an outlet for two hots, is not the voltage it is made for.",
	why: "On too much voltage it overheats and can burn; on too little or none it does not work, and motors overheat too.",
	help: "Use a load for the voltage that is there, or feed it from a source that gives its voltage.",
	basis: "common practice: 10 % up or down, as voltage ranges of supplies go (IEC 60038, ANSI C84.1), recalled",
	meter: [
		live(
			"loading voltage tester",
			"between the two supply terminals of the load, before it is connected",
			"another voltage than its plate says",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit warm from LC breaker 20 A two-pole by 12-3
  9 ft to h1: heater 1500 W 240 V
`,
		`plan
  region iec
inlet shore 16 A 230 V
panel LC main 16 A two-pole from shore by 3G2.5, 12 m
circuit warm from LC ground-fault-breaker 16 A trip 30 mA by 3G2.5
  9 m to h1: heater 1500 W 120 V
`,
	],
	right: [
		`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
circuit warm from LC breaker 20 A two-pole by 12-3
  9 ft to h1: heater 1500 W 240 V
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit warm from LC breaker 20 A by 12-2
  9 ft to h1: heater 1500 W 110 V
`,
	],
	check: (analysis) =>
		findOverModes(analysis, (state) => [
			...checkMode(analysis, state),
			...findWrongDirectVoltage(analysis, state, loadVoltageWrong.basis),
		]),
};

/** How far from what it is made for a load's voltage may be, as a share. */
const tolerance = 0.1;

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const strays = new Set(state.crossings.strays.flatMap(({ point, effect }) => (effect === undefined ? [] : [point])));
	const { circuit } = analysis;
	return circuit.loads.flatMap((load): Finding[] => {
		const made = load.volts ?? madeFor(state, load);
		// Where a terminal is on the wrong pole, that is the fault to tell.
		// Mains on what is for direct current is told as that.
		if (load.between.some((point) => systemOfRole(circuit.points[point]?.role ?? "hot") === "dc")) return [];
		if (made === undefined || load.between.some((point) => strays.has(point))) return [];
		const across = voltageAcross(state, ...load.between) ?? lackingLeg(analysis, load);
		if (across === undefined || Math.abs(across.volts - made) <= made * tolerance) return [];
		return [tell(circuit, state, load, made, across)];
	});
}

/** What an outlet for two hots is for: what two legs of its source give. */
function madeFor(
	{ network: { circuit }, feeders }: ModeState,
	{ between: [one, other], outlet }: Load,
): number | undefined {
	if (!outlet || circuit.points[one]?.role !== "hot" || circuit.points[other]?.role !== "hot2") return undefined;
	const feeder = feeders.get(one) ?? feeders.get(other);
	const source = circuit.sources.find(({ name }) => name === feeder?.pole.source);
	return source === undefined ? undefined : source.volts * 2;
}

/** No volts for a load between two hots where no source has two: the second is nowhere to be had. */
function lackingLeg(analysis: Analysis, load: Load): Across | undefined {
	const [source] = findMissingLeg(analysis, load);
	return source === undefined ? undefined : { source, volts: 0 };
}

/** The key of the finding on a load: that its second hot is missing follows from it. */
export function keyOfLoad(part: string): string {
	return `${loadVoltageWrong.code}@${part}`;
}

function tell(circuit: Circuit, state: ModeState, load: Load, made: number, across: Across): Finding {
	const part = certain(circuit.partByName.get(load.part), load.part);
	const terminals = load.between.map((point): Point => certain(circuit.points[point], "a point"));
	const fed = load.between.find((point) => state.crossings.poles.sortsAt(point).has("hot"));
	const isTooMuch = across.volts > made;
	const merged = findMergedPanels(state).find((panel) => load.between.some((point) => hangsOn(state, panel, point)));
	return finding({
		code: loadVoltageWrong.code,
		level: isTooMuch ? "danger" : "error",
		title: `${load.part} is made for ${formatNumber(made, 0)} V and gets ${tellVolts(across)}`,
		span: part.span,
		label: `made for ${formatNumber(made, 0)} V`,
		also: [{ span: across.source.span, label: `gives ${givenBy(across)}` }],
		marks: [...new Set([part.name, ...terminals.map(({ name }) => name)])],
		path: fed === undefined ? [] : (state.crossings.poles.reachOf(fed, "hot")?.pathTo(fed) ?? []),
		figures: [
			{
				name: "voltage",
				found: across.volts,
				limit: Number((made * (isTooMuch ? 1 + tolerance : 1 - tolerance)).toFixed(3)),
				unit: "V",
				source: loadVoltageWrong.basis,
			},
		],
		why: isTooMuch
			? `On ${formatNumber(across.volts, 0)} V it takes far more power than it is made for, overheats and can burn.`
			: across.volts === 0
				? "Both its hots are at the same potential, so no current flows; to ground both are live all the same."
				: "It gives a fraction of its power, and a motor on too little voltage overheats.",
		help: tellCure(load, made, across),
		basis: loadVoltageWrong.basis,
		key: keyOfLoad(load.part),
		...(merged === undefined ? {} : { consequenceOf: keyOfShortPanel(merged.part.name) }),
	});
}

/** Whether the hot of a point comes by way of a panel's legs. */
function hangsOn({ crossings: { poles } }: ModeState, { legs }: MergedPanel, point: number): boolean {
	return (
		poles
			.reachOf(point, "hot")
			?.edgesTo(point)
			.some(({ from }) => legs.includes(from)) === true
	);
}

function tellVolts({ source, volts }: Across): string {
	if (volts > 0) return `${formatNumber(volts, 0)} V`;
	return source.hot.length > 1 ? "0 V: both its hots are on one leg" : `0 V: ${source.name} has one hot leg only`;
}

function givenBy({ source }: Across): string {
	const one = `${formatNumber(source.volts, 0)} V`;
	return source.hot.length > 1 ? `${one} and ${formatNumber(source.volts * 2, 0)} V` : one;
}

function tellCure({ part, between }: Load, made: number, { source, volts }: Across): string {
	const given = source.hot.length > 1 ? [source.volts, source.volts * 2] : [source.volts];
	const reachable = given.some((one) => Math.abs(one - made) <= made * tolerance);
	if (reachable && volts === 0 && between.length === 2)
		return `Feed ${part} from a two-pole breaker, one hot on each of its poles, so that each is on another leg.`;
	if (reachable)
		return made > source.volts * (1 + tolerance)
			? `Feed ${part} by two hots from a two-pole breaker.`
			: `Feed ${part} by one hot and a neutral.`;
	return `Use ${given.map((one) => `a ${formatNumber(one, 0)} V`).join(" or ")} model for ${part}: ${source.name} gives no ${formatNumber(made, 0)} V.`;
}
