// What uses power and passes nothing on but the feed itself: lights, fans, pumps, heaters, and any other load.

import { awg } from "../base/gauge.ts";
import { stud } from "./in-line.ts";
import type { Blueprint, Kind, Said, Trait } from "./kind.ts";
import { markedMetal } from "./terminal-marking.ts";
import { deviceScrew, deviceTerminal, secondSide, switchedSide } from "./terminals.ts";
import { useOfPower } from "./use-of-power.ts";

/** One kind: its word, what it is, its marks, and what the rules take it for. */
interface Row {
	readonly word: string;
	readonly also?: readonly string[];
	readonly what: string;
	readonly wiring: string;
	readonly oneLine: string;
	readonly traits: readonly Trait[];
	/** Set for what is made for direct current only. */
	readonly system?: "dc";
}

const rows: readonly Row[] = [
	{ word: "light", also: ["lamp"], what: "light", wiring: "luminaire-face", oneLine: "lamp", traits: ["light"] },
	{ word: "fan", what: "fan", wiring: "fan-face", oneLine: "fan", traits: ["fan"] },
	{ word: "pump", what: "pump", wiring: "pump-face", oneLine: "pump", traits: ["load"] },
	{ word: "heater", what: "heater", wiring: "heater-face", oneLine: "heater", traits: ["heater"] },
	{ word: "fridge", what: "refrigerator", wiring: "load-face", oneLine: "motor", traits: ["load"] },
	{ word: "usb-outlet", what: "USB outlet", wiring: "load-face", oneLine: "load", traits: ["load"] },
	{ word: "outlet-12v", what: "12 V outlet", wiring: "load-face", oneLine: "load", traits: ["load"], system: "dc" },
	{ word: "load", what: "load", wiring: "load-face", oneLine: "load", traits: ["load"] },
];

/** The kinds of this file, in the order of their rows. */
export const consumers: readonly Kind[] = rows.map((row) => ({
	name: row.word,
	...(row.also === undefined ? {} : { also: row.also }),
	summary: `A ${row.what}, rated in watts or amperes. The feed comes in and may go on from it.`,
	example: row.system === undefined ? onMains(row) : onBattery(row),
	...(row.system === undefined ? {} : { system: row.system }),
	stands: ["top", "hop", "box"],
	attributes: [
		{ name: "power", takes: "quantity", dimension: "power", least: 0.1, most: 20_000, summary: "what it uses" },
		{
			name: "apparent power",
			takes: "quantity",
			dimension: "apparent-power",
			least: 0.1,
			most: 20_000,
			summary: "what it draws, times its volts, where that is what its plate says",
		},
		{
			name: "current",
			takes: "quantity",
			dimension: "current",
			least: 0.01,
			most: 100,
			summary: "what it draws, where that is what its plate says",
		},
		{
			name: "voltage",
			takes: "quantity",
			dimension: "voltage",
			least: 3,
			most: 250,
			summary: "240 V for one fed by two hots; its own voltage in direct current",
		},
		{
			name: "legs",
			takes: "pair",
			dimension: "voltage",
			least: 5,
			most: 600,
			summary: "`120 V / 240 V` for one on two hots and a neutral",
		},
		markedMetal,
		{ name: "continuous", takes: "flag", summary: "may run for three hours or more" },
		{ name: "neutral", takes: "flag", summary: "`no neutral` for one fed by hots alone" },
		...useOfPower,
	],
	build: (said) => {
		if (said.system === "dc") return onDirectCurrent(said, row);
		const us = said.region === "us";
		const legs = said.pair("legs");
		const volts =
			legs?.[1].value ?? said.quantity("voltage")?.value ?? (us ? (said.flag("neutral") === false ? 240 : 120) : 230);
		const twoHots = us && volts > 200;
		const amperes = said.quantity("current")?.value;
		const watts = drawnBy(said, amperes === undefined ? undefined : amperes * volts);
		// What is fed by one hot cannot do without a neutral, whatever is said.
		const neutral = !twoHots || legs !== undefined || said.flag("neutral") === true;
		const screw = (name: string, role: "hot" | "hot2" | "neutral" | "ground", ...also: string[]) =>
			deviceTerminal(said.region, (watts ?? 0) / volts, name, role, role, { also });
		return {
			terminals: [
				screw("hot", "hot", "brass"),
				...(twoHots ? [screw("hot2", "hot2")] : []),
				...(neutral ? [screw("neutral", "neutral", "silver")] : []),
				screw("ground", "ground", "green"),
			],
			loads: [
				{
					between: ["hot", twoHots ? "hot2" : "neutral"],
					...(watts === undefined ? {} : { watts }),
					volts,
					continuous: said.flag("continuous") ?? false,
					outlet: false,
				},
			],
			sides: [
				{ name: "feed", knots: { hot: "hot", hot2: "hot2", neutral: "neutral", ground: "ground" } },
				...(twoHots ? [] : [switchedSide, secondSide]),
			],
			onward: "feed",
			face: {
				text: `${row.what}${watts === undefined ? "" : ` ${Math.round(watts)} W`}${twoHots ? ` ${volts} V` : ""}`,
				wiring: row.wiring,
				oneLine: row.oneLine,
				traits: row.traits,
			},
		};
	},
}));

/** What wires must carry for it, in watts or volt-amperes. */
function drawnBy(said: Said, byCurrent: number | undefined): number | undefined {
	const used = said.quantity("power")?.value;
	const factor = said.quantity("power-factor")?.value ?? 1;
	return said.quantity("apparent power")?.value ?? (used === undefined ? byCurrent : used / factor);
}

function onMains({ word }: Row): string {
	return `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit one from LC breaker 15 A by 14-2
  9 ft to x1: ${word} 60 W
`;
}

function onBattery({ word }: Row): string {
	return `battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 10 A
feed small from house.+, house.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB
circuit one from FB.1 by pair 14 AWG
  9 ft to x1: ${word} 60 W
`;
}

/** Fed by a positive and a negative, which may go on from it. */
function onDirectCurrent(said: Said, row: Row): Blueprint {
	const volts = said.quantity("voltage")?.value ?? usualVolts;
	const amperes = said.quantity("current")?.value;
	const watts = drawnBy(said, amperes === undefined ? undefined : amperes * volts);
	const drawn = watts === undefined ? 0 : watts / volts;
	const post = (name: "+" | "-", role: "positive" | "negative") =>
		drawn > mostUnderScrew
			? stud(said, name, role, role)
			: { ...deviceScrew(said.region, name, role, role), smallest: awg(20), clamp: "screw" as const };
	return {
		terminals: [post("+", "positive"), post("-", "negative")],
		loads: [
			{
				between: ["+", "-"],
				...(watts === undefined ? {} : { watts }),
				...(said.quantity("voltage") === undefined ? {} : { volts }),
				continuous: said.flag("continuous") ?? false,
				outlet: false,
			},
		],
		sides: [
			{ name: "feed", knots: { positive: "positive", negative: "negative" } },
			{
				name: "+",
				knots: { positive: "positive", negative: "negative" },
				lone: { knot: "positive", role: "positive" },
			},
			{ name: "-", knots: { negative: "negative" }, lone: { knot: "negative", role: "negative" } },
		],
		onward: "feed",
		face: {
			text: watts === undefined ? row.what : `${row.what} ${Math.round(watts)} W`,
			wiring: row.wiring,
			oneLine: row.oneLine,
			traits: row.traits,
		},
	};
}

/** Amperes from which a winch or an amplifier has studs for lugs; 10 AWG, the thickest under a screw, is for 30 A in a vehicle (NFPA 70 Table 551.10(E)(1), recalled). */
const mostUnderScrew = 30;

/** The nominal voltage of a vehicle's direct-current side where nothing is said (common practice). */
const usualVolts = 12;
