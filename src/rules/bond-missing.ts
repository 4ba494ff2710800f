// A live source whose neutral is joined to ground nowhere.
import type { ModeState } from "../analysis/analysis.ts";
import type { NeutralIsland } from "../analysis/bonds.ts";
import { type Finding, finding, type Level } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Source } from "../circuit/circuit.ts";
import { neutralBondIn } from "../handbook/neutral-bond.ts";
import { citation } from "../handbook/provenance.ts";
import { foldName } from "../plan/names.ts";
import type { Plan } from "../plan/plan.ts";
import { live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const bondMissing: Rule = {
	code: "bond-missing",
	level: "error",
	what: "In one source mode neutral and ground are bonded nowhere, though nothing says that the source floats on purpose.",
	why: "A hot that touches a case draws no current that would open a breaker, and ground-fault devices have nothing to sense.",
	help: "Say where the source bonds its neutral, or give it a bond.",
	basis: `${citation(neutralBondIn("shore").provenance)}; ${citation(neutralBondIn("inverting").provenance)}; NFPA 70 250.20 and 250.30, recalled`,
	meter: [
		live(
			"digital voltmeter",
			"from neutral to ground in that source mode; a relay that bonds is open when dead, so no dead test shows it",
			"half the voltage, or one that wanders, instead of 0 V",
		),
		live(
			"loading voltage tester",
			"from hot to ground in that source mode",
			"next to nothing instead of the full voltage",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`generator gen 3000 W 120 V
panel LC main 25 A from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral never
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit galley from LC breaker 20 A by 12-2
  14 ft to g1: gfci
`,
	],
	right: [
		`generator gen 3000 W 120 V, bonds neutral to frame
panel LC main 25 A from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		`inverter inv 300 W 12 V / 120 V, bonds neutral never
circuit desk from inv by 14-2
  3 ft to d1: receptacle
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis.circuit.plan, state)),
};

function checkMode(plan: Plan, state: ModeState): Finding[] {
	return state.bonds
		.filter((island) => island.bonds.length === 0 && !island.wired)
		.flatMap((island) => {
			const [source] = island.sources;
			return source === undefined ? [] : [tell(plan, state, island, source)];
		});
}

function tell(plan: Plan, state: ModeState, { sources }: NeutralIsland, source: Source): Finding {
	const names = listNames(sources.map(({ name }) => name));
	const devices = groundFaultsBehind(state, sources);
	const meant = sources.every((other) => floatsOnPurpose(plan, other));
	const level: Level = meant && devices.length === 0 ? "note" : "error";
	const guarded = listNames(devices);
	return finding({
		code: bondMissing.code,
		level,
		title:
			meant && devices.length > 0
				? `The neutral of ${names} floats, so ${guarded} cannot sense a ground fault`
				: `The neutral of ${names} is joined to ground nowhere`,
		span: source.span,
		label: meant ? "floats on purpose" : "no bond",
		marks: [source.name, ...sources.slice(1).map(({ name }) => name), ...devices],
		why:
			devices.length > 0
				? `A hot that touches a case draws no current: no breaker opens, and ${guarded} senses nothing before somebody is the way back.`
				: "A hot that touches a case draws no current that would open a breaker; the case stays live unnoticed.",
		help: meant
			? "Use it for loads of its own alone, as its manual allows, or take a source that can bond its neutral."
			: tellCure(source),
		basis: citation(
			neutralBondIn(source.sort === "generator" ? "floating portable generator" : "inverter without relay").provenance,
		),
		key: `${bondMissing.code}@${source.name}`,
	});
}

/** What a builder can say of each sort of source. */
function tellCure({ name, sort }: Source): string {
	switch (sort) {
		case "generator":
			return `If ${name} bonds its neutral to its frame, say \`bonds neutral to frame\`; if its manual says it floats, bond it by a plug made for that, at the generator and never in the panel.`;
		case "utility":
			return `${name} brings no ground, so the first panel behind it bonds its neutral: say \`bonding screw\` there.`;
		case "shore":
			return `The supply behind ${name} bonds neutral to ground; leave out \`floating\` unless it truly does not.`;
		default:
			return `If the manual of ${name} says that it bonds its output, say \`bonds neutral when inverting\`; if it can, set it so; if it must float, say \`bonds neutral never\`.`;
	}
}

/** Said by the builder, not merely the kind's default. */
function floatsOnPurpose(plan: Plan, source: Source): boolean {
	const said = plan.thingByName.get(foldName(source.part))?.said;
	if (source.sort === "shore") return said?.flag("floating") === true;
	const bonding = said?.choice("bonding");
	return bonding === "bonds neutral never" || bonding === "floating";
}

function groundFaultsBehind({ network: { circuit }, poles }: ModeState, sources: readonly Source[]): string[] {
	const names = new Set(sources.map((source) => source.name));
	const reaches = poles.reaches.filter((_, index) => names.has(poles.poles[index]?.source ?? ""));
	return circuit.groundFaults
		.filter(({ line }) => reaches.some((reach) => reach.has(line.hot)))
		.map(({ part }) => part);
}
