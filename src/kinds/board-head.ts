// The head of a panel: what its feed lands on and its bus hangs on. A main breaker, a main switch, a residual-current device, or
// a breaker that is one too; it opens the hots, and the neutral too where it is said to or has to.
import type { Blueprint, GroundFaultPoles, LinkSpec, Said, TerminalSpec } from "./kind.ts";
import { neutralLead } from "./neutral-lead.ts";
import { residualOf, residualText } from "./residual-current.ts";
import { cage } from "./terminals.ts";

/** What sort of head: its words for the face, its marks, what it opens on. */
export interface HeadSort {
	readonly what: string;
	readonly oneLine: string;
	readonly traits: Blueprint["face"]["traits"];
	/** Opens on too much current. */
	readonly protects: boolean;
	/** Opens on a leak, by this many milliamperes if not said. */
	readonly usualTrip?: number;
	/** Opens the neutral with the hots. */
	readonly opensNeutral: boolean;
}

/** The core of a feed that meets a head which opens the neutral: a knot of its own, apart from the bar behind it. */
export const neutralAhead = "^neutral-ahead";

/** A head with one hot or two. `stab` feeds the bus; a neutral that it opens goes on to the neutral bar by a lead. */
export function boardHead(said: Said, sort: HeadSort): Blueprint {
	const hots = said.slot?.legs.length === 2 ? [".1", ".2"] : [sort.opensNeutral ? ".hot" : ""];
	const stabOf = (pole: string): string => `stab${pole === ".hot" ? "" : pole}`;
	const rating = said.quantity("rating")?.value;
	const terminals = hots.flatMap((pole, index): TerminalSpec[] => {
		const role = index === 0 ? "hot" : "hot2";
		return [
			cage(said.region, `line${pole}`, role, role, {
				side: "line",
				screw: "brass",
				...(pole === ".hot" ? { also: ["line"] } : {}),
			}),
			{ ...cage(said.region, stabOf(pole), role, undefined), clamp: "stab", capacity: 0, side: "load" },
		];
	});
	return {
		terminals: [...terminals, ...(sort.opensNeutral ? neutralTerminals(said) : [])],
		links: [
			...hots.map((pole) => contact(`line${pole}`, stabOf(pole), sort.protects)),
			...(sort.opensNeutral ? [contact("line.neutral", "load.neutral", false)] : []),
		],
		plugs: hots.flatMap((pole, index) => {
			const owner = said.slot?.legs[index];
			return owner === undefined ? [] : [{ mine: stabOf(pole), owner }];
		}),
		...(sort.opensNeutral
			? {
					leads: [neutralLead(said, "load.neutral", "neutral")],
				}
			: {}),
		...(sort.protects
			? { protection: { ...(rating === undefined ? {} : { rating }), sort: "breaker", poles: hots.length } }
			: {}),
		...(sort.usualTrip === undefined
			? {}
			: {
					groundFault: {
						line: polesOf(hots, "line", "line.neutral"),
						load: polesOf(hots.map(stabOf), "", "load.neutral"),
						ownOutlet: false,
						...residualOf(said, sort.usualTrip),
					},
				}),
		sides: [
			{
				name: "line",
				knots: { hot: "hot", hot2: "hot2", neutral: sort.opensNeutral ? neutralAhead : "^neutral", ground: "^ground" },
			},
		],
		onward: "line",
		face: {
			text: [
				...(rating === undefined ? [] : [`${rating} A`]),
				`${tellPoles(hots.length, sort)}${sort.what}`,
				...(sort.usualTrip === undefined ? [] : [residualText(said, sort.usualTrip)]),
			].join(" "),
			wiring: "breaker-face",
			oneLine: sort.oneLine,
			traits: sort.traits,
			...(rating === undefined ? {} : { rating }),
		},
	};
}

function neutralTerminals(said: Said): TerminalSpec[] {
	return [
		cage(said.region, "line.neutral", "neutral", neutralAhead, { side: "line", screw: "silver" }),
		{ ...cage(said.region, "load.neutral", "neutral", undefined, { side: "load" }), clamp: "lead" },
	];
}

function polesOf(hots: readonly string[], before: string, neutral: string): GroundFaultPoles<string> {
	const [hot = "", hot2] = hots.map((pole) => `${before}${pole}`);
	return { hot, ...(hot2 === undefined ? {} : { hot2 }), neutral };
}

function tellPoles(hots: number, { opensNeutral }: HeadSort): string {
	const poles = hots + (opensNeutral ? 1 : 0);
	return poles === 1 ? "" : poles === 2 ? "two-pole " : "three-pole ";
}

function contact(from: string, to: string, protects: boolean): LinkSpec {
	return {
		between: [from, to],
		nature: "contact",
		contact: { group: "trip", positions: 2, closed: [1] },
		protects,
	};
}
