// Loads that lose more volts on the way than the published guides advise.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { branchCables, type Drop, type Drops, findDrops } from "../analysis/drops.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatGauge } from "../base/gauge.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import { type Limit, mainsDropLimits, mainsLimits } from "../figures/drop-limits.ts";
import { resistivityInService } from "../handbook/copper.ts";
import { citation } from "../handbook/provenance.ts";
import { usualSizesOf } from "../handbook/usual-sizes.ts";
import { hotPathTo } from "./hot-path.ts";
import { live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const dropExcessive: Rule = {
	code: "drop-excessive",
	level: "warning",
	what: "With every fixed load on, a load loses more volts in its wires than the guides advise.",
	why: "Lamps dim, motors start badly and run hot, and what is lost heats the wires.",
	help: "Use a thicker cable, a shorter way, or a circuit of its own.",
	basis: [...new Set(mainsLimits.map(({ provenance }) => citation(provenance)))].join("; "),
	meter: [
		live(
			"digital voltmeter",
			"at the load, everything on, and at the board right after",
			"a difference of more than 3 % of the voltage, or more than the guide of the region",
		),
	],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs:
			"US: 3 % behind the last breaker and 5 % in all; boats 10 % in all; IEC: 3 % for lights and 5 % for the rest from a public supply, 6 % and 8 % from one of your own.",
	},
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit shed from LC breaker 15 A by 14-2
  90 ft to h1: heater 1400 W
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit shed from LC breaker 15 A by 10-2
  45 ft to h1: heater 1400 W
`,
	],
	check: (analysis) => {
		const drops = new Map(analysis.states.map((state) => [state, findDrops(state)]));
		return [
			...findOverModes(analysis, (state) => checkMode(analysis, state, drops.get(state)?.loads ?? [])),
			...tellUnmeasured(analysis, [...drops.values()]),
		];
	},
};

/** A load with what it loses, where that is too much. */
interface Excess {
	readonly drop: Drop;
	readonly limit: Limit;
	readonly lost: number;
	readonly percent: number;
}

/** The worst load behind each device, where it loses too much. */
function checkMode(analysis: Analysis, state: ModeState, drops: readonly Drop[]): Finding[] {
	const worst = new Map<string, { excess: Excess; others: string[] }>();
	for (const drop of drops) {
		const excess = excessOf(analysis, drop);
		if (excess === undefined) continue;
		const key = drop.device?.part ?? drop.source;
		const known = worst.get(key);
		if (known === undefined) worst.set(key, { excess, others: [] });
		else if (excess.percent > known.excess.percent) {
			known.others.push(known.excess.drop.load.part);
			known.excess = excess;
		} else known.others.push(drop.load.part);
	}
	return [...worst.values()].map(({ excess, others }) => tell(analysis, state, excess, others));
}

/** A sum of products may pass a limit by a hair. */
const hair = 1e-6;

function excessOf({ circuit }: Analysis, drop: Drop): Excess | undefined {
	const ways = limitsFor(circuit.plan.settings, drop, circuit).map(({ limit, lost }) => ({
		drop,
		limit,
		lost,
		percent: (lost / drop.volts) * 100,
	}));
	return ways.find(({ percent, limit }) => percent > limit.percent + hair);
}

function limitsFor(
	settings: Analysis["circuit"]["plan"]["settings"],
	{ lost, lostInBranch, load, source }: Drop,
	circuit: Analysis["circuit"],
): readonly { readonly limit: Limit; readonly lost: number }[] {
	const isLight = circuit.partByName.get(load.part)?.face.traits.includes("light") === true;
	const isPublic = circuit.sources.some(({ name, sort }) => name === source && sort === "shore");
	return mainsDropLimits(settings, { isLight, isPublic }).map((limit) => ({
		limit,
		lost: limit.circuit === "branch" ? lostInBranch : lost,
	}));
}

function tell(analysis: Analysis, state: ModeState, excess: Excess, others: readonly string[]): Finding {
	const { drop, limit, lost, percent } = excess;
	const { circuit } = analysis;
	const part = certain(circuit.partByName.get(drop.load.part), drop.load.part);
	const cables = branchCables(state, drop);
	const cable = circuit.cableByTag.get(cables.at(-1) ?? "");
	const lostText = `${formatNumber(lost, 1)} V of ${formatNumber(drop.volts)} V`;
	const isAll = limit.circuit !== "branch";
	return finding({
		code: dropExcessive.code,
		level: dropExcessive.level,
		title: `${part.name} loses ${lostText} ${isAll ? "on the whole way" : `behind ${drop.device?.part ?? drop.source}`}, ${formatNumber(percent, 1)} %: ${formatNumber(limit.percent, 1)} % is the guide`,
		span: cable?.span ?? part.span,
		label: `${formatNumber(percent, 1)} % lost`,
		also: others.slice(0, 8).flatMap((name) => {
			const other = circuit.partByName.get(name);
			return other === undefined ? [] : [{ span: other.span, label: name }];
		}),
		marks: [part.name, ...new Set(cables)],
		path: hotPathTo(state, part),
		figures: [
			{
				name: "voltage drop",
				found: Number(percent.toFixed(2)),
				limit: limit.percent,
				unit: "%",
				source: citation(limit.provenance),
			},
		],
		why: `With every fixed load on, ${formatNumber(drop.amperes, 1)} A flow to ${part.name}. ${dropExcessive.why}`,
		help: tellCure(analysis, excess, cables),
		basis: citation(limit.provenance),
		key: `${dropExcessive.code}@${part.name}`,
	});
}

/** The thinnest usual size behind the last device with which the guide is kept; the feed ahead is named where it alone is too much. */
function tellCure({ circuit }: Analysis, { drop, limit, lost }: Excess, cables: readonly string[]): string {
	const { region } = circuit.plan.settings;
	const room = (limit.percent / 100) * drop.volts - (lost - drop.lostInBranch);
	const thick = circuit.cableByTag.get(cables.at(-1) ?? "");
	const own = circuit.conductors[thick?.conductors[0] ?? -1];
	const tags = listNames([...new Set(cables)]);
	if (own === undefined || room <= 0) return `Use a thicker feed to the board, or a shorter way to ${drop.load.part}.`;
	// As if all of the branch were of the size of its last cable.
	const needed = (own.gauge.mm2 * drop.lostInBranch) / room;
	const size = usualSizesOf(region).find(({ gauge }) => gauge.mm2 >= needed);
	return size === undefined
		? "Bring the board nearer, or use a higher voltage for this load."
		: `Use ${formatGauge(size.gauge)} for ${tags}, or bring the board nearer.`;
}

/** Once for all: cables whose length is missing, on the way to a load that draws. */
function tellUnmeasured({ circuit }: Analysis, drops: readonly Drops[]): Finding[] {
	const tags = [...new Set(drops.flatMap(({ unmeasured }) => [...unmeasured]))];
	const first = circuit.cableByTag.get(tags[0] ?? "");
	if (first === undefined) return [];
	return [
		finding({
			code: dropExcessive.code,
			level: "note",
			unchecked: true,
			title: `Voltage drop in ${listNames(tags)} not checked: ${tags.length === 1 ? "its" : "their"} length is missing`,
			span: first.span,
			marks: tags,
			why: "How many volts are lost there cannot be told.",
			help: "Measure the way, and write it in front: `14 ft to b1: receptacle`.",
			basis: citation(resistivityInService(circuit.plan.settings.region, "copper").provenance),
			key: `${dropExcessive.code}@unmeasured`,
		}),
	];
}
