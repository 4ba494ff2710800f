// A switch, disconnect or breaker that opens one hot of a load fed by two, and leaves the other live.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { findLegsLeftLive, type LegLeftLive } from "../analysis/legs-left-live.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Part } from "../circuit/circuit.ts";
import { live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const legLeftLive: Rule = {
	code: "leg-left-live",
	level: "danger",
	what: "A switch, disconnect or breaker opens one hot of something that is fed by two.",
	why: "What is switched off stands still and looks dead, and is live with the full voltage to ground.",
	help: "Use a switch, disconnect or breaker with two poles, or tie the handles of the two breakers.",
	basis: "NFPA 70 240.15(B), 404.2 and 422.31, recalled; common practice",
	meter: [
		live(
			"loading voltage tester",
			"from each hot terminal of the load to ground, it switched off",
			"the voltage of one leg at one of them instead of 0 V",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet pole 50 A 120/240 V
panel LC legs 2, main 50 A from pole by 6-3, 12 ft
circuit heat from LC breaker two-pole 20 A by 12-2
  14 ft, white marked red at both ends to s1: switch
   3 ft, white marked red at both ends to h1: heater 3000 W 240 V
`,
		`inlet pole 50 A 120/240 V
panel LC legs 2, main 50 A from pole by 6-3, 12 ft
  slot 1: breaker 20 A
  slot 3: breaker 20 A
circuit heat from LC.1 by 12-2
  14 ft, white marked red at both ends to h1: heater 3000 W 240 V
at LC
  heat-1.white on LC.3.load
`,
	],
	right: [
		`inlet pole 50 A 120/240 V
panel LC legs 2, main 50 A from pole by 6-3, 12 ft
circuit heat from LC breaker two-pole 20 A by 12-2
  14 ft, white marked red at both ends to s1: switch two-pole
   3 ft, white marked red at both ends to h1: heater 3000 W 240 V
`,
		`inlet pole 50 A 120/240 V
panel LC legs 2, main 50 A from pole by 6-3, 12 ft
circuit range from LC breaker two-pole 30 A by 10-3
  14 ft to k1: load 5000 W 120/240 V
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode({ circuit }: Analysis, state: ModeState): Finding[] {
	const { network, poles } = state.crossings;
	const found = findLegsLeftLive(network, poles);
	const openers = groupBy(found, ({ load, parts }) => `${load.part} ${parts.every(isBreaker)}`);
	const alike = groupBy(openers.values(), (group) =>
		group.map(({ parts }) => parts.map(({ name }) => name).join("+")).join("/"),
	);
	return [...alike].flatMap(([key, groups]) => {
		const [first] = groups;
		return first === undefined ? [] : [tell(circuit, state, key, first, loadsOf(groups))];
	});
}

function loadsOf(groups: readonly (readonly LegLeftLive[])[]): readonly string[] {
	return [...new Set(groups.flat().map(({ load }) => load.part))];
}

function isBreaker({ face }: Part): boolean {
	return face.traits.includes("breaker");
}

function tell(
	circuit: Circuit,
	{ crossings }: ModeState,
	key: string,
	group: readonly LegLeftLive[],
	loads: readonly string[],
): Finding {
	const first = certain(group[0], "what opens one hot");
	const parts = group.flatMap((one) => one.parts);
	const [, ...others] = parts;
	const opener = certain(parts[0], "a part that opens");
	const names = listNames(parts.map(({ name }) => name));
	const load = circuit.partByName.get(first.load.part);
	const live = circuit.points[first.live]?.name ?? "";
	const apart = parts.length > 1;
	return finding({
		code: legLeftLive.code,
		level: "danger",
		title: apart
			? `${names} open the two hots of ${listNames(loads)} one by one: either leaves the other live`
			: `${names} opens one hot of ${listNames(loads)} and leaves ${live} live`,
		span: opener.span,
		label: apart ? "not tied" : "opens one of two hots",
		also: [
			...others.map((part) => ({ span: part.span, label: part.name })),
			...(load === undefined ? [] : [{ span: load.span, label: "fed by two hots" }]),
		],
		marks: [opener.name, ...others.map(({ name }) => name), live, ...loads],
		path: crossings.poles.reachOf(first.live, "hot")?.pathTo(first.live) ?? [],
		why: `With ${apart ? `one of ${names}` : names} off, ${listNames(loads)} ${loads.length > 1 ? "do" : "does"} nothing and ${loads.length > 1 ? "look" : "looks"} dead, and ${live} is live to ground.`,
		help: apart
			? `Use one two-pole breaker in place of ${names}, or tie their handles (\`${parts.length === 2 ? `tied ${opener.name}` : "tied"}\` behind the second).`
			: isBreaker(opener)
				? `Use a two-pole breaker in place of ${names}, with one hot on each pole.`
				: `Use one with two poles in place of ${names}, and lead both hots through it.`,
		basis: legLeftLive.basis,
		key: `${legLeftLive.code}@${key}`,
	});
}
