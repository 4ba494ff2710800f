// A switch, disconnect or breaker that opens the way back of something and leaves its hot on.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { findBypasses } from "../analysis/idle-throws.ts";
import type { Root } from "../analysis/roots.ts";
import { SwitchedNets } from "../analysis/switched-nets.ts";
import { type Switch, terminalsOf } from "../analysis/switching.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import type { Span } from "../base/span.ts";
import { listNames } from "../base/wording.ts";
import { findNegativeSwitches } from "./direct-switches.ts";
import { dead, live } from "./meter-test.ts";
import { keyOfMistake, type MistakeSlots, placeMistake, tellRoot } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const switchInNeutral: Rule = {
	code: "switch-in-neutral",
	level: "danger",
	what: "A switch, disconnect or breaker opens the neutral of something, but not its hot; or the negative, but not the positive.",
	why: "What is switched off looks dead and is live: whoever changes the lamp or opens the appliance touches the hot.",
	help: "Put the switch into the hot, or use one that opens both.",
	basis: "NFPA 70 404.2(B) and 240.22, recalled; IEC 60364-5-53, recalled",
	meter: [
		dead(
			"from the hot terminal of the load to the load terminal of its breaker, or from its plus to the fuse, the switch off",
			"continuity",
		),
		live(
			"loading voltage tester",
			"from the hot terminal of the load to ground, or from its plus to the battery's minus, the switch off",
			"the full voltage instead of 0 V",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch
  9 ft to l1: light 9 W
at s1
  lights-1.white on s1.line
  lights-2.white on s1.load
  join lights-1.black, lights-2.black
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit heat from LC breaker 20 A by 12-2
  7 ft to hd: disconnect
  9 ft to wh: heater 1200 W
at hd
  join heat-1.black, heat-2.black, hd.line.hot
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch
  9 ft to l1: light 9 W
circuit heat from LC breaker 20 A by 12-2
  7 ft to hd: disconnect
  9 ft to wh: heater 1200 W
`,
	],
	check: (analysis) => [
		...findOverModes(analysis, (state) => checkMode(analysis, state)),
		...findNegativeSwitches(analysis, switchInNeutral.code),
	],
};

/** A part that opens a neutral alone. */
interface Found {
	readonly part: string;
	readonly span: Span;
	/** A terminal of it that is on the neutral. */
	readonly point: number;
	readonly leftLive: readonly string[];
	/** Whether its terminals are joined past it. */
	readonly isPassed: boolean;
	/** How the neutral got there, where it should not be; undefined where it should. */
	readonly root: Root | undefined;
}

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const { crossings } = state;
	const { circuit } = analysis;
	const nets = new SwitchedNets(crossings.network, analysis.landings, crossings.poles);
	const passed = new Set(findBypasses(state.network).map(({ device }) => device.part));
	const contacts = groupBy(
		circuit.links.filter((link) => link.contact !== undefined),
		(link) => link.part,
	);
	const breakers = circuit.protections
		.filter((protection) => protection.links.length > 0)
		.map(({ part }): Switch => ({ part, contacts: contacts.get(part) ?? [], opensNeutral: false }));
	const found = [...nets.switches, ...breakers].flatMap((device): Found[] => {
		const points = terminalsOf(device);
		const point = points.find((candidate) => isNeutralAlone(state, candidate));
		if (point === undefined) return [];
		const hasHot = points.some((candidate) => crossings.poles.sortsAt(candidate).has("hot"));
		const leftLive = nets.leftLiveBy(device);
		// A two-pole switch whose hot is dead opens nothing wrongly; a neutral on terminals for a hot does.
		const isMeant = leftLive.length === 0 && (device.opensNeutral || analysis.landings.sortAt(point) !== "hot");
		if (hasHot ? leftLive.length === 0 : isMeant) return [];
		const { span } = certain(circuit.partByName.get(device.part), device.part);
		const root = hasHot ? undefined : crossings.rootAt(point, "neutral");
		return [{ part: device.part, span, point, leftLive, root, isPassed: passed.has(device.part) }];
	});
	return [...groupBy(found, ({ root, part }) => root?.key ?? part)].flatMap(([place, [first, ...others]]) =>
		first === undefined ? [] : [tell(analysis, state, place, first, others)],
	);
}

function isNeutralAlone({ crossings }: ModeState, point: number): boolean {
	const sorts = crossings.poles.sortsAt(point);
	return sorts.has("neutral") && !sorts.has("hot");
}

function tell(analysis: Analysis, state: ModeState, place: string, first: Found, others: readonly Found[]): Finding {
	const found = [first, ...others];
	const parts = listNames(found.map(({ part }) => part));
	const left = [...new Set(found.flatMap(({ leftLive }) => leftLive))];
	const of = left.length > 0 ? ` of ${listNames(left)}` : "";
	const by = first.root === undefined ? "" : `: ${tellRoot(analysis, first.root)}`;
	const worse =
		first.root !== undefined
			? keyOfMistake(state.crossings, first.root.key)
			: first.isPassed
				? `switch-without-effect@${first.part}`
				: undefined;
	return finding({
		code: switchInNeutral.code,
		level: "danger",
		title: `${parts} ${others.length === 0 ? "opens" : "open"} the neutral${of} and not the hot${by}`,
		label: "opens the neutral",
		...placeIt(analysis, state, found, first, left),
		why: `With ${parts} off, ${left.length > 0 ? listNames(left) : "what hangs on it"} looks dead and is live.`,
		basis: switchInNeutral.basis,
		key: `${switchInNeutral.code}@${place}`,
		...(worse === undefined ? {} : { consequenceOf: worse }),
	});
}

function placeIt(
	analysis: Analysis,
	state: ModeState,
	found: readonly Found[],
	{ point, part, span, root }: Found,
	left: readonly string[],
): MistakeSlots {
	const points = found.map((one) => one.point);
	if (root !== undefined) {
		const slots = placeMistake(analysis, state, root, points);
		return { ...slots, help: `The hot belongs on ${part}; the neutrals are joined past it. ${slots.help}` };
	}
	return {
		span,
		also: [],
		marks: [analysis.circuit.points[point]?.name ?? "", part, ...left],
		path: state.crossings.poles.reachOf(point, "neutral")?.pathTo(point) ?? [],
		help: `Lead the hot of ${listNames(left)} through ${part}, not past it.`,
	};
}
