// How a figure is spelt in every plan: its number as it was written, its unit by its usual symbol, one blank between.
import { findUnit } from "../base/quantity.ts";
import type { Term } from "./tree.ts";
import { isGaugeWord } from "./units.ts";

/** The usual spelling of a term; words and texts stay as they are. `30amps` is `30 A`, `4ft 6 inches` is `4 ft 6 in`. */
export function spellTerm(term: Term): string {
	switch (term.kind) {
		case "quantity":
		case "gauge":
			return spellFigure(term.text);
		case "pair":
			return `${spellFigure(term.first.text)}${isBare(term.first.text) ? "/" : " / "}${spellFigure(term.second.text)}`;
		case "unknown":
			return term.unit === undefined ? "?" : `? ${term.unit}`;
		case "text":
			return `"${term.text}"`;
		case "name":
		case "number":
		case "make-up":
		case "sign":
			return term.text;
	}
}

/** Each number with the unit behind it; a comma between them is white space. A gauge by its mark or its noughts gets no unit. */
function spellFigure(text: string): string {
	if (isSpelt.test(text)) return text;
	const pieces = text.matchAll(/([#+-]?[0-9]+(?:\.[0-9]+|\/0)?)[ \t,]*(%|[\p{L}°]+[23²³]?)?/gu);
	return Array.from(pieces, ([, number = "", unit]) =>
		unit === undefined ? number : `${number} ${spellUnit(unit)}`,
	).join(" ");
}

/** A figure as most write it, done with at once: plans have one on nearly every line. */
const isSpelt = /^[0-9]+(?:\.[0-9]+)? (?:ft|in|m|A|V|W)$/;

function spellUnit(unit: string): string {
	return isGaugeWord(unit) ? "AWG" : (findUnit(unit)?.symbol ?? unit);
}

/** Whether a figure has no unit of its own, as the first of `120/240 V`. */
function isBare(text: string): boolean {
	return /^[0-9.]+[ \t]*$/.test(text);
}
