// Capped ends that are live: what is roughed in, or waits in a wall, is put under power by its breaker before anything hangs on it.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { bothEnds } from "../analysis/landings.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Conductor, Enclosure } from "../circuit/circuit.ts";
import { live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const cappedEndLive: Rule = {
	code: "capped-end-live",
	level: "note",
	what: "A cable that waits for its devices, its ends capped, is under power when its breaker is on.",
	why: "Whoever comes back to put the devices on may take the cable for dead.",
	help: "Keep the breaker off and locked, or leave the hot off it, until the devices are on.",
	basis: "common practice",
	meter: [
		live(
			"loading voltage tester",
			"between every two capped conductors and from each to ground, before a cap comes off",
			"any voltage",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit attic roughed in from LC breaker 15 A by 14-2
  20 ft as attic-feed to a1: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit attic roughed in from LC breaker 15 A by 14-2
  20 ft as attic-feed to a1: receptacle
at LC
  attic-feed.black capped
`,
	],
	check: (analysis) => {
		const waiting = waitingEnds(analysis.circuit);
		return waiting.length === 0 ? [] : findOverModes(analysis, (state) => checkMode(analysis, state, waiting));
	},
};

interface Waiting {
	readonly conductor: Conductor;
	readonly enclosure: Enclosure;
	/** The point at its other end. */
	readonly from: number;
}

/** The capped ends where a device is still to come, or where a cable ends in a wall. */
function waitingEnds(circuit: Circuit): readonly Waiting[] {
	const boxes = new Set(circuit.parts.filter(({ coming }) => coming).map(({ enclosure }) => enclosure));
	if (boxes.size === 0 && !circuit.enclosures.some(({ sort }) => sort === "open")) return [];
	return circuit.conductors.flatMap((conductor) =>
		bothEnds.flatMap((which): Waiting[] => {
			const end = conductor.ends[which];
			const from = conductor.ends[which === 0 ? 1 : 0].point;
			const waits = end.state === "capped" && (boxes.has(end.enclosure) || end.enclosure.sort === "open");
			return waits && from !== undefined ? [{ conductor, enclosure: end.enclosure, from }] : [];
		}),
	);
}

function checkMode({ circuit }: Analysis, state: ModeState, waiting: readonly Waiting[]): Finding[] {
	const live = waiting.filter(({ from }) => state.poles.sortsAt(from).has("hot"));
	return [...groupBy(live, ({ enclosure }) => enclosure)].map(([enclosure, ends]) => {
		const names = ends.map(({ conductor }) => conductor.name);
		const [first] = ends;
		const cable = circuit.cableByTag.get(first?.conductor.cable ?? "");
		const breaker = circuit.plan.runs.find(({ name }) => name === cable?.run)?.protection;
		const by = breaker === undefined ? "" : ` with ${breaker} on`;
		return finding({
			code: cappedEndLive.code,
			level: cappedEndLive.level,
			title: `${listNames(names)} ${names.length === 1 ? "ends" : "end"} capped in ${enclosure.name}, and ${names.length === 1 ? "is" : "are"} live${by}`,
			span: enclosure.span,
			label: "live behind its cap",
			marks: [...names, enclosure.name],
			path: first === undefined ? [] : (state.poles.reachOf(first.from, "hot")?.pathTo(first.from) ?? []),
			why: cappedEndLive.why,
			help:
				breaker === undefined
					? cappedEndLive.help
					: `Keep ${breaker} off and locked until the devices are on, or leave the hot off it: \`${names[0] ?? ""} capped\` below \`at\`.`,
			basis: cappedEndLive.basis,
			key: `${cappedEndLive.code}@${enclosure.name}`,
		});
	});
}
