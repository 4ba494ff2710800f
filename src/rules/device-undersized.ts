// A switch, dimmer or disconnect rated below the loads or the outlet behind it; a disconnect, bus or shunt below the device ahead.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type Switched, traceSwitched } from "../analysis/switched.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Part } from "../circuit/circuit.ts";
import { continuousLoad } from "../handbook/branch-circuits.ts";
import { nextStandardRating } from "../handbook/standard-ratings.ts";
import { findDirectUndersized } from "./direct-ratings.ts";
import { byEye, live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const deviceUndersized: Rule = {
	code: "device-undersized",
	level: "error",
	what: "A switch, dimmer or disconnect is rated for less than the fixed loads or the outlet behind it, or a disconnect, bus, fuse block or shunt for less than the breaker or fuse ahead of it.",
	why: "It runs hot, its contacts stick closed, and it can set fire to what it sits in.",
	help: "Use a device of a larger rating, or put less behind it.",
	basis:
		"common practice: a device carries the load behind it, loads of three hours or more at 125 %; NFPA 70 404.14, recalled; for direct current a bus carries what the device ahead lets through, common practice",
	meter: [
		byEye("read the rating on the device and on the breaker ahead of it"),
		live(
			"clamp meter",
			"around the hot of the device, with everything on behind it",
			"more than the rating on the device",
		),
	],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs: "Loads of three hours and more count 125 % in the United States; in IEC countries the sum alone counts.",
	},
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  9 ft to s1: switch 10 A
  9 ft by 12-3 to r1: receptacle split
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit warm from LC breaker 20 A by 12-2
  9 ft to s1: switch 15 A
  9 ft to h1: heater 2200 W
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit warm from LC breaker 20 A by 12-2
  9 ft to hd: disconnect 15 A
  9 ft to h1: heater 1200 W
`,
		`battery house lithium 12.8 V 280 Ah
feed plus from house.+ by single 4/0 red
  within 7 in to F1: fuse class-T 200 A
  1 ft to plus: bus 50 A
`,
		`battery house lithium 12.8 V 280 Ah
fuse-block FB 10 A
  slot 1: fuse 5 A
feed small from house.+, house.- by pair 8 AWG
  within 6 in to F1: fuse 40 A
  3 ft to FB
circuit lights from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit warm from LC breaker 20 A by 12-2
  9 ft to s1: switch 15 A
  9 ft to h1: heater 1440 W continuous
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit warm from LC breaker 20 A by 12-2
  9 ft to hd: disconnect 20 A
  9 ft to h1: heater 1200 W
`,
		`battery house lithium 12.8 V 280 Ah
feed plus from house.+ by single 4/0 red
  within 7 in to F1: fuse class-T 200 A
  1 ft to plus: bus 200 A
`,
	],
	check: (analysis) => [
		...findOverModes(analysis, (state) => checkMode(analysis, state)),
		...findDirectUndersized(analysis, deviceUndersized.code),
	],
};

/** A sum of quotients may miss a rating by a hair. */
const rounding = 1e-6;

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	return traceSwitched(state).flatMap((switched): Finding[] => {
		const rating = switched.part.face.rating;
		if (rating === undefined) return [];
		if (carried(analysis, switched) > rating + rounding) return [tellLoad(analysis, state, switched, rating)];
		const isBehindLarger =
			switched.part.face.traits.includes("disconnect") &&
			Number.isFinite(switched.amperes) &&
			switched.amperes > rating + rounding;
		if (isBehindLarger) return [tellAhead(state, switched, rating)];
		const plug = Math.min(switched.outlet?.rating ?? 0, switched.amperes);
		return switched.outlet !== undefined && plug > rating + rounding
			? [tellOutlet(state, switched, rating, switched.outlet.part, plug)]
			: [];
	});
}

/** Everything behind a device at once, as far as what is ahead lets it through; what runs for hours below that counts in full. */
function carried(analysis: Analysis, { continuous, other, amperes }: Switched): number {
	const factor = factorOf(analysis);
	return Math.max(Math.min(continuous * factor + other, amperes), Math.min(continuous, amperes) * factor);
}

/** What runs for hours counts more where that is the rule. */
function factorOf({ circuit }: Analysis): number {
	return circuit.plan.settings.region === "us" ? continuousLoad.factor : 1;
}

function tellLoad(analysis: Analysis, state: ModeState, switched: Switched, rating: number): Finding {
	const { part, largest, count, continuous, other } = switched;
	const load = continuous * factorOf(analysis) + other;
	const name = largest?.part ?? part.name;
	const loads = count > 1 ? `${name} and ${count - 1} more` : name;
	const counted = continuous > 0 && factorOf(analysis) > 1 ? ", with what runs for hours at 125 %" : "";
	const { region } = analysis.circuit.plan.settings;
	const needed = Math.ceil(carried(analysis, switched) - rounding);
	const enough = nextStandardRating(needed, region)?.ampere ?? needed;
	const loadPart = analysis.circuit.partByName.get(name);
	return finding({
		...sharedSlots(state, switched, rating, load, "load"),
		title: `${part.name} is rated ${tell(rating)}, and ${loads} behind it ${count > 1 ? "count" : "counts"} ${tell(load)}${counted}`,
		also: loadPart === undefined ? [] : [{ span: loadPart.span, label: loadPart.face.text }],
		marks: [...new Set([part.name, name])],
		help: `Use a device of ${tell(enough)} or more for ${part.name}, or switch less with it.`,
	});
}

function tellAhead(state: ModeState, switched: Switched, rating: number): Finding {
	const { part, ahead, amperes } = switched;
	const device = ahead?.part ?? "the supply";
	return finding({
		...sharedSlots(state, switched, rating, amperes, "protection"),
		title: `${part.name} is rated ${tell(rating)}, and ${device} ahead of it lets ${tell(amperes)} through`,
		also: ahead === undefined ? [] : [{ span: ahead.span, label: tell(amperes) }],
		marks: [part.name, ...(ahead === undefined ? [] : [ahead.part])],
		help: `Use a disconnect of ${tell(amperes)} or more for ${part.name}, or protect the circuit with ${tell(rating)}.`,
	});
}

function tellOutlet(state: ModeState, switched: Switched, rating: number, outlet: Part, plug: number): Finding {
	const { part } = switched;
	return finding({
		...sharedSlots(state, switched, rating, plug, "outlet"),
		level: "warning",
		title: `${part.name} is rated ${tell(rating)}, and what is plugged in at ${outlet.name} may draw ${tell(plug)} through it`,
		also: [{ span: outlet.span, label: outlet.face.text }],
		marks: [part.name, outlet.name],
		help: `Use a switch of ${tell(plug)} or more for ${part.name}, or lead the hot of ${outlet.name} past it.`,
	});
}

function sharedSlots(state: ModeState, { part, point }: Switched, rating: number, found: number, name: string) {
	return {
		code: deviceUndersized.code,
		level: "error" as const,
		span: part.span,
		label: `rated ${tell(rating)}`,
		path: state.crossings.poles.reachOf(point, "hot")?.pathTo(point) ?? [],
		figures: [{ name, found: Number(found.toFixed(3)), limit: rating, unit: "A", source: deviceUndersized.basis }],
		why: deviceUndersized.why,
		basis: deviceUndersized.basis,
		key: `${deviceUndersized.code}@${part.name}`,
	};
}

function tell(amperes: number): string {
	return `${formatNumber(amperes, 1)} A`;
}
