// A panel whose bus is fed past its main breaker.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type BypassedMain, findBypassedMains } from "../analysis/bypassed-mains.ts";
import type { Edge } from "../analysis/network.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { dead, live } from "./meter-test.ts";
import { keyOfMistake } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const mainBypassed: Rule = {
	code: "main-bypassed",
	level: "error",
	what: "The bus of a panel is fed directly, past the panel's main breaker.",
	why: "Switching off the main leaves the whole panel live, and the bus has no protection of its own.",
	help: "Land the feed on the line side of the main.",
	basis: "NFPA 70 408.36 and 551.45, recalled; common practice",
	meter: [
		dead("from the feed to the bus of the panel, the main off", "continuity"),
		live("loading voltage tester", "from the bus to the neutral bar, the main off", "the full voltage instead of 0 V"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.black on LC.bus.A
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC lugs only from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

/** The key of the finding that a main is passed by in a mode, for what follows from it: the ways through it are then not those meant. */
export function keyOfBypassed({ network: { circuit }, crossings }: ModeState, part: string): string | undefined {
	const isPassed = findBypassedMains(circuit, crossings.poles).some(({ main }) => main.part === part);
	return isPassed ? `${mainBypassed.code}@${part}` : undefined;
}

function checkMode({ circuit }: Analysis, state: ModeState): Finding[] {
	return findBypassedMains(circuit, state.crossings.poles).map((bypassed) => tell(circuit, state, bypassed));
}

type Feed =
	| {
			readonly name: string;
			readonly point: string;
			readonly span: Finding["span"];
			readonly sort: Conductor["sort"];
	  }
	| undefined;

/** The last conductor on the way to the bus, and where it is landed in the panel. */
function findFeed(circuit: Circuit, way: readonly Edge[]): Feed {
	const edge = way.findLast(({ by }) => by.kind === "conductor");
	const conductor = edge?.by.kind === "conductor" ? circuit.conductors[edge.by.index] : undefined;
	const end = conductor?.ends.find(({ point }) => point === edge?.to);
	return conductor === undefined || end === undefined
		? undefined
		: {
				name: conductor.name,
				point: circuit.points[edge?.to ?? -1]?.name ?? "",
				span: end.span,
				sort: conductor.sort,
			};
}

function tell(circuit: Circuit, { crossings }: ModeState, { main, line, bus, past }: BypassedMain): Finding {
	const part = certain(circuit.partByName.get(main.part), main.part);
	const panel = part.owner ?? part.name;
	const target = circuit.points[line]?.name ?? main.part;
	const feed = findFeed(circuit, past.edgesTo(bus));
	const bridge = crossings.bridges.find(({ root }) => root.enclosure === part.enclosure.name);
	const behind = bridge === undefined ? undefined : keyOfMistake(crossings, bridge.root.key);
	return finding({
		code: mainBypassed.code,
		level: "error",
		title: `The bus of ${panel} is fed past ${main.part}${tellFeed(feed)}`,
		span: feed?.span ?? part.span,
		label: "past the main",
		marks: [...(feed === undefined ? [] : [feed.point, feed.name]), main.part],
		path: past.pathTo(bus),
		why: `With ${main.part} off, everything in ${panel} is still live.`,
		help: tellCure(feed, panel, target),
		basis: mainBypassed.basis,
		key: `${mainBypassed.code}@${main.part}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}

function tellFeed(feed: Feed): string {
	if (feed === undefined) return "";
	return feed.sort === "pigtail" ? `: ${feed.point} is in a joint ahead of it` : `: ${feed.name} is on ${feed.point}`;
}

function tellCure(feed: Feed, panel: string, target: string): string {
	if (feed?.sort === "jumper") return `Take ${feed.name} out of ${panel}: nothing leads past a main.`;
	if (feed?.sort === "pigtail") return `In ${panel}, take ${feed.point} out of the joint: nothing leads past a main.`;
	return `In ${panel}, land ${feed?.name ?? "the feed"} on ${target}.`;
}
