// Hot where neutral or ground belongs, or either of these where hot belongs: terminals and cases that the wrong pole reaches.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Stray } from "../analysis/crossings.ts";
import type { Root } from "../analysis/roots.ts";
import { type Finding, finding } from "../base/finding.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { dead, live } from "./meter-test.ts";
import { followsWorse, groupStrays, placeMistake, tellRoot, tellVictims, victimsOf } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const polarityReversed: Rule = {
	code: "polarity-reversed",
	level: "danger",
	what: "The hot is on a terminal that is meant for neutral or ground, or the other way round.",
	why: "Switches and breakers open the wrong wire, and what looks switched off is live; a hot on a ground makes every metal case live.",
	help: "Exchange the two wires where they were exchanged.",
	basis: "NFPA 70 200.11 and 200.10, recalled; IEC 60364-6 polarity test, recalled; common practice",
	meter: [
		dead(
			"from the hot terminal of the outlet to the load terminal of its breaker, every load unplugged",
			"no continuity, but from its neutral or ground terminal",
		),
		live(
			"loading voltage tester",
			"between hot and neutral, hot and ground, neutral and ground; all three look right where neutral and ground are joined in that box, so the dead test comes first",
			"the full voltage from neutral to ground, or nothing from hot to ground",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.black on b1.neutral
  bunks-1.white on b1.hot
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.black on b1.ground
  bunks-1.bare on b1.hot
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  7 ft white marked black at both ends to s1: switch
at l1
  join lights-1.black, lights-2.black
  lights-1.white on l1.neutral
  lights-2.white on l1.hot
at s1
  lights-2.black on s1.line
  lights-2.white on s1.load
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const { strays } = state.crossings;
	const { points } = analysis.circuit;
	// A post of the battery side has no hot: what joins it to the mains is told by `systems-mixed`.
	const reversed = strays.filter(
		({ effect, point }) => effect === "reversed" && systemOfRole(points[point]?.role ?? "hot") !== "dc",
	);
	return groupStrays(reversed).map(({ root, strays: victims }) => tell(analysis, state, root, victims));
}

function tell(analysis: Analysis, state: ModeState, root: Root, strays: readonly Stray[]): Finding {
	const { circuit, landings } = analysis;
	const live = strays.filter(({ point, by }) => by === "hot" && landings.sortAt(point) === "ground");
	const shown = live.length > 0 ? live : strays;
	const victims = shown.map(({ point }) => point);
	const names = tellVictims(circuit, victims);
	// A ground where the hot belongs makes nothing live: what stands there gets no power.
	const isDead = shown.every(({ by }) => by === "ground");
	return finding({
		code: polarityReversed.code,
		level: isDead ? "error" : "danger",
		title: `${tellWhat(analysis, shown)} ${names}: ${tellRoot(analysis, root)}`,
		label: live.length > 0 ? "makes the ground live" : "the wrong pole",
		...placeMistake(analysis, state, root, victims),
		why:
			live.length > 0
				? `Whoever touches the case of ${names}, or of anything plugged in there, touches the hot.`
				: isDead
					? `${names} ${victimsOf(circuit, victims).length === 1 ? "gets" : "get"} no power, and what the ground is for hangs on a terminal that a switch or breaker opens.`
					: `At ${names} a switch or breaker then opens the wrong wire: what looks switched off stays live.`,
		basis: polarityReversed.basis,
		...followsWorse(state.crossings, root, "reversed"),
	});
}

function tellWhat({ landings }: Analysis, strays: readonly Stray[]): string {
	const on = (sort: string, by: string): boolean =>
		strays.some((stray) => stray.by === by && landings.sortAt(stray.point) === sort);
	if (on("ground", "hot")) return "The hot is on the ground of";
	if (on("neutral", "hot") && on("hot", "neutral")) return "Hot and neutral are exchanged at";
	if (on("neutral", "hot")) return "The hot is on the neutral of";
	return on("hot", "neutral") ? "The neutral is on the hot of" : "The ground is on the hot of";
}
