// A panel whose bus is fed past its main breaker.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Edge } from "../analysis/network.ts";
import { isHot } from "../analysis/poles.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Circuit, Link } from "../circuit/circuit.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const mainBypassed: Rule = {
	code: "main-bypassed",
	level: "error",
	what: "The bus of a panel is fed directly, past the panel's main breaker.",
	why: "Switching off the main leaves the whole panel live, and the bus has no protection of its own.",
	help: "Land the feed on the line side of the main.",
	basis: "NFPA 70 408.36 and 551.45, recalled; common practice",
	meter: "Live, with the main off: bus to neutral still reads the full voltage.",
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

function checkMode({ circuit }: Analysis, state: ModeState): Finding[] {
	const mains = circuit.links.filter((link) => isMain(circuit, link));
	if (mains.length === 0) return [];
	const { poles } = state.crossings;
	const hots = poles.reaches.filter((_, index) => isHot(poles.poles[index]?.role ?? "ground"));
	return mains.flatMap((main) => {
		const [line, bus] = main.between;
		// The bus is reached, and not by way of the main.
		const past = hots.find((reach) => {
			const by = reach.cameBy(bus)?.by;
			return by !== undefined && !(by.kind === "link" && by.link === main);
		});
		return past === undefined
			? []
			: [tell(circuit, main, line, past.pathTo(bus), findFeed(circuit, past.edgesTo(bus)))];
	});
}

/** A protective contact that is fed on a terminal and feeds the bus it plugs on to; a branch breaker is the other way round. */
function isMain({ points }: Circuit, { protection, between: [line, bus] }: Link): boolean {
	const [from, to] = [points[line], points[bus]];
	return (
		protection !== undefined &&
		from?.kind === "terminal" &&
		from.side === "line" &&
		to?.kind === "terminal" &&
		to.side === "load" &&
		to.clamp === "stab"
	);
}

type Feed = { readonly name: string; readonly point: string; readonly span: Finding["span"] } | undefined;

/** The last conductor on the way to the bus, and where it is landed in the panel. */
function findFeed(circuit: Circuit, way: readonly Edge[]): Feed {
	const edge = way.findLast(({ by }) => by.kind === "conductor");
	const conductor = edge?.by.kind === "conductor" ? circuit.conductors[edge.by.index] : undefined;
	const end = conductor?.ends.find(({ point }) => point === edge?.to);
	return conductor === undefined || end === undefined
		? undefined
		: { name: conductor.name, point: circuit.points[edge?.to ?? -1]?.name ?? "", span: end.span };
}

function tell(circuit: Circuit, main: Link, line: number, path: Finding["path"], feed: Feed): Finding {
	const part = certain(circuit.partByName.get(main.part), main.part);
	const panel = part.owner ?? part.name;
	const target = circuit.points[line]?.name ?? main.part;
	return finding({
		code: mainBypassed.code,
		level: "error",
		title: `The bus of ${panel} is fed past ${main.part}${feed === undefined ? "" : `: ${feed.name} is on ${feed.point}`}`,
		span: feed?.span ?? part.span,
		label: "past the main",
		marks: [...(feed === undefined ? [] : [feed.point, feed.name]), main.part],
		path,
		why: `With ${main.part} off, everything in ${panel} is still live.`,
		help: `In ${panel}, land ${feed?.name ?? "the feed"} on ${target}.`,
		basis: mainBypassed.basis,
		key: `${mainBypassed.code}@${main.part}`,
	});
}
