// One finding as a note of an inspector: number, verdict, the place, then what was measured, why it matters and what to do.
import type { Figure, LabelledSpan, LineEdit, NumberedFinding, PathStep } from "../../base/finding.ts";
import { formatNumber } from "../../base/quantity.ts";
import { compareSpans, type Span } from "../../base/span.ts";
import { drawExcerpt } from "./excerpt.ts";
import type { Paint } from "./paint.ts";
import { visible, wrap } from "./visible.ts";

/** How a note is set: its columns and its colours. */
export interface Setting {
	readonly width: number;
	readonly paint: Paint;
}

/** A finding with what belongs to it in the same list. */
export interface NoteSubject {
	readonly finding: NumberedFinding;
	/** The root it follows from, where that is told elsewhere. */
	readonly root: NumberedFinding | undefined;
	/** What follows from it. */
	readonly consequences: readonly NumberedFinding[];
	/** The lines of the plan and of what it uses, by the names of their files. */
	readonly lines: Lines;
}

type Lines = ReadonlyMap<string, readonly string[]>;

/** The lines of a note. */
export function writeNote(subject: NoteSubject, setting: Setting): string[] {
	const { finding, root, consequences, lines } = subject;
	return [
		...writeHead(finding, setting),
		...writePlaces(finding, lines, setting),
		...finding.figures.flatMap((figure) => writeSlot("found", tellFigure(figure), setting)),
		...writeWay(finding.path, setting),
		...writeSlot("if left", finding.why, setting),
		...writeSlot("to do", finding.help, setting),
		...(finding.repair ?? []).flatMap((edit, index) => writeEdit(edit, index, setting)),
		...writeSlot("by", finding.basis, setting),
		...writeSlot("while on", finding.modes.join(", "), setting),
		...writeSlot("follows", root === undefined ? "" : `from number ${root.number}: ${root.title}`, setting),
		...consequences.flatMap((consequence) =>
			writeSlot(
				"leads to",
				`number ${consequence.number}, line ${consequence.span.line}: ${consequence.title} (${consequence.code})`,
				setting,
			),
		),
		...writeSlot("accepted", finding.accepted === undefined ? "" : `"${finding.accepted}"`, setting),
	];
}

/** Columns of the words at the left. */
const slotWidth = 12;

function writeHead(finding: NumberedFinding, { width, paint }: Setting): string[] {
	const verdict = finding.level.toUpperCase() + (finding.accepted === undefined ? "" : ", accepted");
	const number = String(finding.number);
	const indent = " ".repeat(number.length + 2);
	const rows = wrap(`${verdict}: ${visible(finding.title)} (${finding.code})`, width - indent.length);
	return rows.map((row, index) => {
		if (index > 0) return indent + paint.strong(row);
		// The first row holds the whole verdict: it is shorter than any width that is allowed.
		return `${paint.strong(number)}  ${paint.level(finding.level, verdict)}${paint.strong(row.slice(verdict.length))}`;
	});
}

/** The place itself with its line, then the other places; those of another file with its name. */
function writePlaces(finding: NumberedFinding, lines: Lines, setting: Setting): string[] {
	const { span } = finding;
	const places = joinPlaces([{ span, label: finding.label }, ...finding.also]);
	const gutter = slotWidth - 2;
	const { width, paint } = setting;
	return [
		...writeSlot("place", `${span.file}:${span.line}:${span.column}`, setting),
		...places.flatMap((place) => {
			const line = lineOf(lines, place.span);
			// The place itself has been told; of an empty line there is nothing to show.
			if (line === undefined && place.span === span) return writeSlot("", place.label, setting);
			if (line === undefined) return writeSlot("and", `${tellPlace(place.span)} ${place.label}`.trim(), setting);
			const elsewhere = place.span.file === span.file ? [] : writeSlot("and", tellPlace(place.span), setting);
			const excerpt = drawExcerpt(line, place.span, place.label, width, gutter).map(({ as, text }) => {
				const marks = as === "marks" ? text.trimStart() : "";
				return text.slice(0, text.length - marks.length) + paint.level(finding.level, marks);
			});
			return [...elsewhere, ...excerpt];
		}),
	];
}

/** Places of the same stretch as one, with all their labels. */
function joinPlaces(places: readonly LabelledSpan[]): LabelledSpan[] {
	const joined: LabelledSpan[] = [];
	for (const place of places) {
		const same = joined.findIndex(({ span }) => compareSpans(span, place.span) === 0);
		const before = joined[same];
		if (before === undefined) joined.push(place);
		else joined[same] = { ...before, label: [before.label, place.label].filter((label) => label !== "").join(", ") };
	}
	return joined;
}

/** A line with words in it; an empty one shows nothing. */
function lineOf(lines: Lines, span: Span): string | undefined {
	const line = lines.get(span.file)?.[span.line - 1];
	return line === undefined || line.trim() === "" ? undefined : line;
}

function tellPlace(span: Span): string {
	return `${span.file}:${span.line}:${span.column}`;
}

/** `protection 20 A, limit 15 A (NFPA 70 240.4(D))`. */
export function tellFigure(figure: Figure): string {
	const unit = figure.unit === "" ? "" : ` ${figure.unit}`;
	const source = figure.source === "" ? "" : ` (${figure.source})`;
	return `${figure.name} ${formatNumber(figure.found)}${unit}, limit ${formatNumber(figure.limit)}${unit}${source}`;
}

/** The way hop by hop, one a line: a person follows it from box to box with a meter. */
function writeWay(path: readonly PathStep[], setting: Setting): string[] {
	const steps = path.length > longestWay + 1 ? shorten(path) : path;
	return steps.flatMap((step, index) => {
		const words = typeof step === "string" ? step : step.by === "" ? step.point : `${step.by} to ${step.point}`;
		return writeSlot(index === 0 ? "way" : "", words, setting);
	});
}

/** Points of a way that are told; of a longer one the first and the last. */
const longestWay = 12;

function shorten(path: readonly PathStep[]): (PathStep | string)[] {
	const head = path.slice(0, longestWay / 2);
	const tail = path.slice(-longestWay / 2);
	return [...head, `(${path.length - longestWay} more)`, ...tail];
}

/** What to write, with the numbers that the lines then have. */
function writeEdit({ line, instead, lines }: LineEdit, index: number, setting: Setting): string[] {
	const place = instead > 1 ? `lines ${line} to ${line + instead - 1}` : `line ${line}`;
	const how =
		instead === 0 ? `before ${place}` : lines.length === 0 ? `nothing in place of ${place}` : `in place of ${place}`;
	return [
		...writeSlot(index === 0 ? "write" : "", index === 0 ? `once it is wired so, ${how}` : `and ${how}`, setting),
		...lines.map((words, offset) => `${String(line + offset).padStart(slotWidth - 2)}  ${visible(words)}`),
	];
}

/** `word` at the left, the text beside it in as many lines as it takes; no text, no lines. */
function writeSlot(word: string, text: string, { width, paint }: Setting): string[] {
	if (text === "") return [];
	return wrap(visible(text), width - slotWidth).map((row, index) => {
		const left = (index === 0 ? word : "").padStart(slotWidth - 2);
		return `${paint.quiet(left)}  ${row}`;
	});
}
