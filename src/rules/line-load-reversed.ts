// A ground-fault device that is fed on its LOAD side, with one wire or both.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Coverage } from "../analysis/coverage.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Span } from "../base/span.ts";
import { listNames } from "../base/wording.ts";
import { live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const lineLoadReversed: Rule = {
	code: "line-load-reversed",
	level: "danger",
	what: "A ground-fault device is fed on its LOAD terminals.",
	why: "It protects nothing, or cannot be set; its own slots may stay live after it has tripped.",
	help: "Put the cable from the panel on LINE and the cable that goes on, on LOAD.",
	basis: "makers' instructions for ground-fault receptacles and UL 943, recalled; common practice",
	meter: [
		live(
			"loading voltage tester",
			"from hot to neutral in the slots of the device, after its TEST button was pressed",
			"the full voltage, or a device that cannot be set at all",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
   5 ft to g2: receptacle
at g1
  galley-1.black on g1.load.hot
  galley-1.white on g1.load.neutral
  galley-2.black on g1.line.hot
  galley-2.white on g1.line.neutral
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
at g1
  galley-1.black on g1.load.hot
  galley-1.white on g1.load.neutral
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
   5 ft to g2: receptacle
at g1
  galley-2.black on g1.load.hot
  galley-2.white on g1.load.neutral
  galley-1.black on g1.line.hot
  galley-1.white on g1.line.neutral
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

type Fed = Coverage["fed"][number];

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	return state.coverage.fed
		.filter(({ hot, neutral }) => hot === "load" || neutral === "load")
		.map((fed) => tell(analysis, state, fed));
}

function tell({ circuit }: Analysis, state: ModeState, { device, hot, neutral }: Fed): Finding {
	const wrong = (["hot", "neutral"] as const).filter((pole) => (pole === "hot" ? hot : neutral) === "load");
	const feeds = wrong.flatMap((pole) => findFeed(state, device.load[pole]) ?? []);
	const landed = listNames(
		feeds.map(({ name, point }, index) => `${name}${index === 0 ? " is" : ""} on ${circuit.points[point]?.name ?? ""}`),
	);
	const first = feeds[0];
	const point = device.load[wrong[0] ?? "hot"];
	const what = wrong.length === 2 ? `${device.part} is` : `The ${wrong[0] ?? "hot"} of ${device.part} is`;
	return finding({
		code: lineLoadReversed.code,
		level: "danger",
		title: `${what} fed on its LOAD side${landed === "" ? "" : `: ${landed}`}`,
		span: first?.span ?? device.span,
		label: "belongs on LINE",
		also: feeds.slice(1).flatMap(({ span }) => (span === first?.span ? [] : [{ span, label: "belongs on LINE" }])),
		marks: [circuit.points[point]?.name ?? "", ...feeds.map(({ name }) => name), device.part],
		path: state.poles.reachOf(point, wrong[0] ?? "hot")?.pathTo(point) ?? [],
		why:
			wrong.length === 2
				? `${device.part} protects nothing: its slots stay live after it trips, or it cannot be set.`
				: `Hot and neutral pass ${device.part} in opposite directions: it trips as soon as anything is used.`,
		help: `In ${circuit.points[point]?.enclosure.name ?? device.part}, put ${listNames(feeds.map(({ name }) => name)) || "the feed"} on LINE, and what goes on from there on LOAD.`,
		basis: lineLoadReversed.basis,
		key: `${lineLoadReversed.code}@${device.part}`,
	});
}

/** The conductor by which a pole comes to a terminal, and where it is landed there. */
function findFeed(
	{ network: { circuit }, poles }: ModeState,
	point: number,
): { name: string; point: number; span: Span } | undefined {
	const edge = (["hot", "neutral"] as const).map((sort) => poles.reachOf(point, sort)?.cameBy(point)).find((by) => by);
	if (edge?.by.kind !== "conductor") return undefined;
	const conductor = circuit.conductors[edge.by.index];
	const end = conductor?.ends.find((candidate) => candidate.point === point);
	return conductor === undefined || end === undefined ? undefined : { name: conductor.name, point, span: end.span };
}
