// A panel's main that is larger than the wires that feed the panel may have.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { conductorLimit } from "../analysis/conductor-limit.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { startSentence } from "../base/wording.ts";
import type { Conductor, Protection } from "../circuit/circuit.ts";
import { byEye } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const mainTooLarge: Rule = {
	code: "main-too-large",
	level: "error",
	what: "The main of a panel behind another breaker is larger than the feeder's wires may have.",
	why: "The main looks as if it stood for that much: whoever gives the feeder a breaker to match it burns its wires.",
	help: "Use a main no larger than the feeder may have, or a panel with lugs only.",
	basis: "common practice; NFPA 70 215.3 and 408.36, recalled",
	meter: [byEye("read the rating of the main, of the breaker ahead, and the size of the feeder")],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs:
			"A main larger than the supply behind an inlet is a note of protection-out-of-order: the pedestal protects the feeder.",
	},
	wrong: [
		`inlet shore 50 A 120 V
panel LC main 50 A from shore by 6-2, 12 ft
  slot 1: breaker 30 A
feed annex from LC.1 by 10-2
  20 ft to SP: panel main 50 A
circuit shed from SP breaker 15 A by 14-2
  9 ft to l1: light 9 W
`,
	],
	right: [
		`inlet shore 50 A 120 V
panel LC main 50 A from shore by 6-2, 12 ft
  slot 1: breaker 30 A
feed annex from LC.1 by 10-2
  20 ft to SP: panel main 30 A
circuit shed from SP breaker 15 A by 14-2
  9 ft to l1: light 9 W
`,
		`inlet shore 50 A 120 V
panel LC main 50 A from shore by 6-2, 12 ft
  slot 1: breaker 30 A
feed annex from LC.1 by 10-2
  20 ft to SP: panel lugs only
circuit shed from SP breaker 15 A by 14-2
  9 ft to l1: light 9 W
`,
		`inlet shore 30 A 120 V
panel LC main 50 A from shore by 10-2, 12 ft
circuit shed from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => findLargeMains(state).map((main) => tell(analysis, main))),
};

/** The key of the finding on a main that is larger than its feeder may have; undefined where it is not. */
export function keyOfLargeMain(state: ModeState, part: string): string | undefined {
	return findLargeMains(state).some(({ main }) => main.part === part) ? keyOf(part) : undefined;
}

function keyOf(part: string): string {
	return `${mainTooLarge.code}@${part}`;
}

/** A main with the breaker ahead of it and the wire that feeds it. */
interface LargeMain {
	readonly main: Protection;
	readonly ahead: Protection;
	readonly feeder: Conductor;
	readonly largest: number;
	readonly because: string;
	readonly source: string;
}

/** Mains of a mode that are larger than a feeder behind a smaller breaker may have. */
function findLargeMains({ exposure, network: { circuit } }: ModeState): readonly LargeMain[] {
	return circuit.protections.flatMap((main): LargeMain[] => {
		const link = circuit.links[main.links[0] ?? -1];
		const [line, bus] = link === undefined ? [undefined, undefined] : link.between.map((at) => circuit.points[at]);
		const isMain =
			line?.kind === "terminal" && line.side === "line" && bus?.kind === "terminal" && bus.clamp === "stab";
		if (main.rating === undefined || !isMain) return [];
		const before = exposure.get(line.index);
		const ahead = before?.nearest?.device;
		const by = before?.by?.by;
		const feeder = by?.kind === "conductor" ? circuit.conductors[by.index] : undefined;
		if (ahead?.rating === undefined || feeder === undefined || ahead.sort === "supply") return [];
		const limit = conductorLimit(circuit, feeder);
		if (limit === undefined || main.rating <= limit.largest || ahead.rating > limit.largest) return [];
		return [{ main, ahead, feeder, largest: limit.largest, because: limit.because, source: limit.source }];
	});
}

function tell({ circuit }: Analysis, { main, ahead, feeder, largest, because, source }: LargeMain): Finding {
	const rating = main.rating ?? 0;
	const feed = feeder.cable ?? feeder.name;
	return finding({
		code: mainTooLarge.code,
		level: mainTooLarge.level,
		title: `${main.part} is ${formatNumber(rating, 1)} A, and its feeder ${feed} may have ${formatNumber(largest, 1)} A at most`,
		span: main.span,
		label: `more than ${formatNumber(largest, 1)} A`,
		also: [
			{ span: ahead.span, label: `${formatNumber(ahead.rating ?? 0, 1)} A` },
			{ span: circuit.cableByTag.get(feed)?.span ?? feeder.span, label: "the feeder" },
		],
		marks: [main.part, feed, ahead.part],
		figures: [{ name: "main", found: rating, limit: largest, unit: "A", source }],
		why: `${startSentence(because)}. ${mainTooLarge.why}`,
		help: `Use a main of ${formatNumber(largest, 1)} A or less for ${main.part}, or lugs only.`,
		basis: mainTooLarge.basis,
		key: keyOf(main.part),
	});
}
