// What a word that begins with a digit is by its letters alone: a number, a cable's make-up, a gauge, a name.
import { hiddenMark } from "./scan.ts";

/** The shape of such a word. `unit` is what stands right behind the number, empty where nothing does. */
export type FigureShape =
	| { readonly shape: "number"; readonly value: number; readonly unit: string }
	/** `120/240`, and `120/240V`. */
	| { readonly shape: "two-numbers"; readonly first: number; readonly second: number; readonly unit: string }
	/** `4/0`: how many noughts. */
	| { readonly shape: "aught"; readonly noughts: number }
	/** `12-2`, `3G2.5`, `2x1.5`. */
	| { readonly shape: "make-up" }
	/** `1A.hot`, `5-15R`: a name that begins with a digit. */
	| { readonly shape: "name" }
	| { readonly shape: "unclear" };

/** The shape of the word; every string has one. */
export function figureShape(image: string): FigureShape {
	const text = image.replaceAll(hiddenMark, "");
	if (madeUp.test(text) || isDashed(text)) return { shape: "make-up" };
	const aught = /^([1-4])\/0(?:AWG|awg)?$/.exec(text);
	if (aught) return { shape: "aught", noughts: Number(aught[1]) };
	const [first = "", second, ...more] = text.split("/");
	const number = splitNumber(first);
	if (second !== undefined) {
		const other = splitNumber(second);
		const whole = number?.unit === "" && other !== undefined && more.length === 0;
		return whole
			? { shape: "two-numbers", first: number.value, second: other.value, unit: other.unit }
			: { shape: "unclear" };
	}
	if (number && isUnitLike(number.unit)) return { shape: "number", ...number };
	return /^[0-9]/.test(text) && /[^0-9.]/.test(text) ? { shape: "name" } : { shape: "unclear" };
}

/** The number a text begins with, and what is left; undefined where the number is not finite. */
function splitNumber(text: string): { readonly value: number; readonly unit: string } | undefined {
	const number = /^[+-]?[0-9]+(?:\.[0-9]+)?/.exec(text)?.[0];
	if (number === undefined) return undefined;
	const value = Number(number);
	return Math.abs(value) <= largest ? { value, unit: text.slice(number.length) } : undefined;
}

/** Letters only, with what stands above or beside them in units: `mm2`, `cm³`, `°C`, `%`. */
function isUnitLike(text: string): boolean {
	return /^(?:[A-Za-z]*[23]?|%)$/.test(text) || /^[\p{L}\u00b0]*[23\u00b2\u00b3]?$/u.test(text);
}

/** `12-2`, `2-2-2-4`, `1/0-3`. */
function isDashed(text: string): boolean {
	const [first = "", ...rest] = text.split("-");
	return rest.length > 0 && /^[0-9]+(?:\/0)?$/.test(first) && rest.every((piece) => /^[0-9]+$/.test(piece));
}

const madeUp = /^[0-9]+[Gx][0-9]+(?:\.[0-9]+)?$/;
/** Beyond it no figure of a plan means anything, and sums would lose digits. */
const largest = 1e12;
