// Labels of a one-line diagram as lines of text: the name in bold, then what it is; wrapped, measured, placed.
import type { Mark, TextMark, XY } from "../scene.ts";
import { smallestText, type TextStyle, textWidth, wrapText } from "../text-metrics.ts";
import type { Label } from "./steps.ts";

/** One line of a label. */
export interface LabelLine extends TextStyle {
	readonly text: string;
}

/** From one line to the next, in units. */
export const linePitch = 13.5;

const nameStyle: TextStyle = { size: 12, bold: true };
const makeStyle: TextStyle = { size: 11, bold: true };
const plainStyle: TextStyle = { size: smallestText };

/** A label's lines within `width`. */
export function labelLines(label: Label, width: number): LabelLine[] {
	const wrapped = (text: string, style: TextStyle): LabelLine[] =>
		wrapText(text, style, width).map((line) => ({ text: line, ...style }));
	return [...wrapped(label.name, nameStyle), ...label.lines.flatMap((line) => wrapped(line, plainStyle))];
}

/** A cable's lines: its make, then tag and length. */
export function cableLines(make: string, lines: readonly string[]): LabelLine[] {
	return [{ text: make, ...makeStyle }, ...lines.map((text) => ({ text, ...plainStyle }))];
}

/** The width of the widest line. */
export function widthOf(lines: readonly LabelLine[]): number {
	return Math.max(0, ...lines.map((line) => textWidth(line.text, line)));
}

/** The height of lines below one another. */
export function heightOf(lines: readonly LabelLine[]): number {
	return lines.length * linePitch;
}

/** Lines below one another, the first with its top at `corner`. */
export function linesAt(lines: readonly LabelLine[], corner: XY, anchor: TextMark["anchor"]): Mark[] {
	return lines.map((line, index) => ({
		kind: "text",
		x: corner.x,
		y: corner.y + index * linePitch + baseline,
		...line,
		anchor,
		paint: line.bold === true ? "ink" : "soft",
	}));
}

/** From the top of a line to its baseline. */
const baseline = 10.5;
