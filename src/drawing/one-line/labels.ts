// What is written beside each step of a one-line diagram, in the builder's own names.

import type { Cable, Circuit, Part, Source } from "../../circuit/circuit.ts";
import type { Region, Trait } from "../../kinds/kind.ts";
import { regionalSymbol } from "../../symbols/index.ts";
import { runsBehind } from "../runs-behind.ts";
import { voltsText } from "../volts-text.ts";
import type { Label } from "./steps.ts";

/** A device's label: its name, the builder's words for it, what it is. */
export function partLabel(part: Part): Label {
	return { name: part.name, lines: [...ownWords(part), part.face.text] };
}

/** A source's label, with where its neutral meets ground. */
export function sourceLabel(part: Part, source: Source): Label {
	// What makes direct current says its volts in its own words, and has no neutral.
	if (source.system === "dc") return partLabel(part);
	const bond = { supply: "N-G bond at the supply", own: "bonds N-G while inverting", floating: "neutral floats" };
	const limit = source.limit === undefined ? "" : ` · ${Math.round(source.limit)} A`;
	const what = ["shore", "utility", "generator"].includes(source.sort) ? [] : [part.face.text];
	const earthing = source.ownEarth ? "TT: earth electrode of the place" : bond[source.bonding];
	return { name: part.name, lines: [...ownWords(part), `${voltsText(source)}${limit}`, ...what, earthing] };
}

/** A breaker's label: the circuit it protects, its slot and its rating, and whether only its cables lie there yet. */
export function breakerLabel(part: Part, circuit: Circuit): Label {
	const [run] = runsBehind(circuit.plan, part.name);
	const slot = part.owner === undefined ? part.name : part.name.slice(part.owner.length + 1);
	if (run === undefined) return { name: part.name, lines: [part.face.text] };
	const words = run.label === "" || run.label === run.name ? [] : [run.label];
	const roughedIn = run.roughedIn ? ["roughed in"] : [];
	return { name: run.name, lines: [...words, `${slot} · ${part.face.text}`, ...roughedIn] };
}

/** What is written at a cable: its make, then its tag with its length; cables drawn as one show their tags and their lengths. */
export function cableTexts(cables: readonly Cable[]): { readonly make: string; readonly lines: readonly string[] } {
	const first = cables[0];
	const last = cables.at(-1);
	if (first === undefined || last === undefined) return { make: "", lines: [] };
	const length = lengthText(cables);
	if (first === last) return { make: first.make, lines: [length === "" ? first.tag : `${first.tag} · ${length}`] };
	return { make: first.make, lines: [`${first.tag} to ${last.tag}`, ...(length === "" ? [] : [length])] };
}

/** The symbol of a part in its region; by what it is where its kind names none. */
export function oneLineSymbolOf(part: Part, region: Region): string {
	const own = regionalSymbol(part.face.oneLine, region)?.name;
	const usual = usualSymbols.find(([trait]) => part.face.traits.includes(trait))?.[1] ?? "load";
	return own ?? regionalSymbol(usual, region)?.name ?? "load";
}

/** The first that fits. */
const usualSymbols: readonly (readonly [Trait, string])[] = [
	["ground-fault", "ground-fault"],
	["breaker", "breaker"],
	["dimmer", "dimmer"],
	["switch", "switch"],
	["disconnect", "disconnect"],
	["receptacle", "receptacle"],
	["light", "lamp"],
	["fan", "fan"],
	["heater", "heater"],
	["junction", "junction"],
	["source", "ac-source"],
];

function ownWords(part: Part): string[] {
	return part.label === "" || part.label === part.name ? [] : [part.label];
}

/** `14 ft`; `14 + 9 ft`; from four on their sum. Empty when a length is not known. */
function lengthText(cables: readonly Cable[]): string {
	const texts = cables.map((cable) => cable.lengthText);
	const [first = ""] = texts;
	if (cables.length === 1) return first;
	const split = texts.map((text) => text.split(" "));
	const unit = split[0]?.[1] ?? "";
	const alike = split.every((parts) => parts.length === 2 && parts[1] === unit);
	if (!alike) return "";
	const figures = split.map((parts) => Number(parts[0]));
	if (cables.length <= 3) return `${split.map((parts) => parts[0]).join(" + ")} ${unit}`;
	const sum = figures.reduce((total, figure) => total + figure, 0);
	return `${Math.round(sum * 10) / 10} ${unit} in all`;
}
