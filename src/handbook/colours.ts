// The colours a conductor can have: the words a plan may use for them, and the letter codes drawn at their ends.
import type { Provenance } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** A colour of one hue. */
export type PlainColour =
	| "black"
	| "brown"
	| "red"
	| "orange"
	| "yellow"
	| "green"
	| "blue"
	| "violet"
	| "grey"
	| "white"
	| "pink"
	| "turquoise"
	| "tan";

/** A conductor's colour: one hue, a hue with a stripe of another (`yellow-red`), green-and-yellow, or bare copper. */
export type Colour = PlainColour | "bare" | `${PlainColour}-${PlainColour}`;

/** A colour word, its letter code, and what else is read as it. */
export interface ColourName {
	readonly name: PlainColour | "bare" | "green-yellow";
	readonly code: string;
	readonly spellings: readonly string[];
}

const letters: Provenance = { source: "IEC 60757", known: "read", note: "read in a reprint of the 1983 edition" };
const ownMark: Provenance = {
	source: "this handbook's own mark",
	known: "common practice",
	note: "IEC 60757 has no code for it",
};
const rows: readonly (readonly [ColourName["name"], string, Provenance, ...string[]])[] = [
	["black", "BK", letters],
	["brown", "BN", letters],
	["red", "RD", letters],
	["orange", "OG", letters],
	["yellow", "YE", letters],
	["green", "GN", letters],
	["blue", "BU", letters, "light-blue", "dark-blue"],
	["violet", "VT", letters, "purple"],
	["grey", "GY", letters, "gray", "dark-grey", "dark-gray"],
	["white", "WH", letters],
	["pink", "PK", letters],
	["turquoise", "TQ", letters],
	["green-yellow", "GNYE", letters, "yellow-green"],
	["tan", "TN", ownMark],
	["bare", "CU", ownMark, "copper"],
];

/** Colour words and letter codes, in the order in which codes of two colours are joined. */
export const colourNames: Table<ColourName> = table<ColourName>(
	"colour-codes",
	"Colour words and their letter codes",
	[
		["colour", (row) => row.name],
		["code", (row) => row.code],
		["also read", (row) => row.spellings],
	],
	rows.map(([name, code, provenance, ...spellings]) => ({ name, code, spellings, provenance })),
);

/** Every single word a plan may use for a colour, for a message that offers the nearest. */
export const colourWords: readonly string[] = rows.flatMap(([name, , , ...spellings]) => [name, ...spellings]);

/**
 * The colour a word means, whatever its case: `Gray` is `grey`, `yellow-red` is yellow with a red stripe.
 * Undefined for any other word.
 */
export function findColour(word: string): Colour | undefined {
	const lower = word.toLowerCase();
	const whole = nameByWord.get(lower);
	if (whole !== undefined) return whole;
	for (let hyphen = lower.indexOf("-"); hyphen >= 0; hyphen = lower.indexOf("-", hyphen + 1)) {
		const base = plain(lower.slice(0, hyphen));
		const stripe = plain(lower.slice(hyphen + 1));
		if (base !== undefined && stripe !== undefined && base !== stripe) return `${base}-${stripe}`;
	}
	return undefined;
}

/**
 * The letter code of a colour; two colours are joined in the order of IEC 60757 (`blue-red` is RDBU).
 * Undefined for a word that is no colour.
 */
export function colourCode(colour: Colour): string;
export function colourCode(word: string): string | undefined;
export function colourCode(word: string): string | undefined {
	const colour = findColour(word);
	if (colour === undefined) return undefined;
	const parts = colour === "green-yellow" ? [colour] : colour.split("-");
	return rows
		.filter(([name]) => parts.includes(name))
		.map(([, code]) => code)
		.join("");
}

/** The hue that covers a conductor and the hue of its stripe, for painting. Bare copper is a hue of its own. */
export function colourParts(colour: Colour): { readonly base: PlainColour | "bare"; readonly stripe?: PlainColour } {
	const [first = "", second = ""] = colour.split("-");
	const base = plain(first);
	const stripe = plain(second);
	if (base === undefined) return { base: "bare" };
	return stripe === undefined ? { base } : { base, stripe };
}

const nameByWord = new Map<string, ColourName["name"]>(
	rows.flatMap(([name, , , ...spellings]) => [name, ...spellings].map((word) => [word, name] as const)),
);

function plain(word: string): PlainColour | undefined {
	const name = nameByWord.get(word);
	return name === "bare" || name === "green-yellow" ? undefined : name;
}
