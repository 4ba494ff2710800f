// The line of a plan that a finding speaks of, with marks under the place. Cut to the width, with control characters shown.
import type { Span } from "../../base/span.ts";
import { visible, widthOf, wrap } from "./visible.ts";

/** The lines of an excerpt, each with what it is, so that a terminal can set it off. */
export type ExcerptLine = { readonly as: "source" | "marks" | "label"; readonly text: string };

/** `line` is the text of the span's line; `width` is the most columns a line may take; `gutter` those of the line number. */
export function drawExcerpt(line: string, span: Span, label: string, width: number, gutter: number): ExcerptLine[] {
	const room = width - gutter - 2;
	const shown = layOut(line, span, room);
	const margin = " ".repeat(gutter + 2);
	const marks = " ".repeat(shown.start) + "^".repeat(Math.max(1, shown.end - shown.start));
	const source: ExcerptLine = {
		as: "source",
		text: `${String(span.line).padStart(gutter)}  ${shown.text}`.trimEnd(),
	};
	const words = visible(label);
	if (words === "") return [source, { as: "marks", text: margin + marks }];
	if (widthOf(marks) + 1 + widthOf(words) <= room) return [source, { as: "marks", text: `${margin}${marks} ${words}` }];
	return [
		source,
		{ as: "marks", text: margin + marks },
		...wrap(words, room).map((text) => ({ as: "label", text: margin + text }) as const),
	];
}

/** The stretch of `line` that fits in `room` columns around the span, and where the span begins and ends in it. */
function layOut(line: string, span: Span, room: number): { text: string; start: number; end: number } {
	const from = Math.min(span.column - 1, line.length);
	const to = Math.min(Math.max(span.endColumn - 1, from), line.length);
	const before = show(line.slice(Math.max(0, from - longestShown), from));
	const place = show(line.slice(from, Math.min(to, from + longestShown)));
	const after = show(line.slice(to, to + longestShown));
	const start = widthOf(before);
	const whole = before + place + after;
	if (from <= longestShown && line.length <= to + longestShown && widthOf(whole) <= room)
		return { text: whole, start, end: start + widthOf(place) };
	// Too long: keep what leads up to the place, and as much after it as fits.
	const lead = takeEnd(before, Math.floor(room / 2) - cut.length);
	const head = lead.length < before.length || from > longestShown ? cut + lead : before;
	const rest = head + place + after;
	const text =
		widthOf(rest) <= room && line.length <= to + longestShown ? rest : takeStart(rest, room - cut.length) + cut;
	const begin = widthOf(head);
	return { text, start: begin, end: Math.min(begin + widthOf(place), widthOf(text)) };
}

/** Beyond this many characters nothing of a line can be on the screen. */
const longestShown = 500;
const cut = "...";

/** A tab takes two columns; every other control character its escape. */
function show(text: string): string {
	return text.split("\t").map(visible).join("  ");
}

function takeStart(text: string, width: number): string {
	let taken = "";
	for (const character of text) {
		if (widthOf(taken + character) > width) break;
		taken += character;
	}
	return taken;
}

function takeEnd(text: string, width: number): string {
	return [...takeStart([...text].reverse().join(""), width)].reverse().join("");
}
