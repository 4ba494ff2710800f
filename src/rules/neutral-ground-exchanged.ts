// A neutral that returns over the ground, or a ground that hangs on the neutral: two wires exchanged, or one on the wrong bar.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Stray } from "../analysis/crossings.ts";
import type { Root } from "../analysis/roots.ts";
import { type Finding, finding } from "../base/finding.ts";
import { dead, live } from "./meter-test.ts";
import { followsWorse, groupStrays, placeMistake, tellRoot, tellVictims } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const neutralGroundExchanged: Rule = {
	code: "neutral-ground-exchanged",
	level: "danger",
	what: "A neutral terminal is reached by the ground alone, or a ground terminal by the neutral alone.",
	why: "Load current flows over the ground wire; every case is live the moment that wire opens, and every plug tester shows it as right.",
	help: "Exchange the two wires where they were exchanged, or move the one that is on the wrong bar.",
	basis: "NFPA 70 250.6 and 250.142(B), recalled; common practice",
	meter: [
		dead(
			"from the ground terminal of the outlet to the ground bar and to the neutral bar, the bond open and every load unplugged; live every meter and plug-in tester reads as if all were right",
			"continuity to the neutral bar and none to the ground bar",
		),
		live("clamp meter", "around the ground conductor, with a load plugged in and on", "the current of the load"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.white on b1.ground
  bunks-1.bare on b1.neutral
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.bare on LC.neutral
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.bare on LC.ground.7
  bunks-1.white on LC.neutral.3
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const exchanged = state.crossings.strays.filter((stray) => stray.effect === "exchanged");
	return groupStrays(exchanged).map(({ root, strays }) => tell(analysis, state, root, strays));
}

function tell(analysis: Analysis, state: ModeState, root: Root, strays: readonly Stray[]): Finding {
	const { circuit } = analysis;
	const victims = strays.map(({ point }) => point);
	const names = tellVictims(circuit, victims);
	const [returns, grounds] = [strays.some(({ by }) => by === "ground"), strays.some(({ by }) => by === "neutral")];
	const what =
		returns && grounds
			? "Neutral and ground are exchanged at"
			: returns
				? "The ground is on the neutral of"
				: "The neutral is on the ground of";
	return finding({
		code: neutralGroundExchanged.code,
		level: "danger",
		title: `${what} ${names}: ${tellRoot(analysis, root)}`,
		label: returns ? "load current on the ground" : "ground by way of the neutral",
		...placeMistake(analysis, state, root, victims),
		why: returns
			? `What ${names} uses flows back over the ground wire; every case on it is live the moment it opens.`
			: `When the neutral opens, every load behind it makes the case of ${names} live.`,
		basis: neutralGroundExchanged.basis,
		...followsWorse(state.crossings, root, "exchanged"),
	});
}
