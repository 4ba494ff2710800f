// Names out of words: `g1.load.hot`, `black(2)`, `bunks-1@LC`, each taken apart at its dots and checked for its shape.
import type { Finding } from "../base/finding.ts";
import type { Span } from "../base/span.ts";
import { problem, quoted } from "./problem.ts";
import { hiddenMark } from "./scan.ts";
import type { NameTerm } from "./tree.ts";
import { limits } from "./vocabulary.ts";

/** A word as a name, with its dots resolved. Problems of its shape are reported; the name is usable all the same. */
export function nameTerm(image: string, span: Span, report: (finding: Finding) => void): NameTerm {
	const text = image.includes(hiddenMark) ? image.replaceAll(hiddenMark, "") : image;
	const name = simple.test(text) ? { head: text, steps: [] } : takeApart(text);
	checkShape(name, text, span, report);
	return { kind: "name", ...name, text, span };
}

/** A name that is new must be plain: no dots, brackets or `@`. */
export function checkNewName(name: NameTerm, report: (finding: Finding) => void): void {
	if (name.steps.length === 0 && name.nth === undefined && name.end === undefined) return;
	report(
		problem("name-dotted", name.span, {
			title: `The new name ${quoted(name.text)} leads inside another thing`,
			label: "a new name is plain",
			help: `Give a plain name such as \`${name.head}\`; a dot is for a part of something that is named already.`,
		}),
	);
}

type Parts = Pick<NameTerm, "head" | "steps" | "nth" | "end">;

/** The head up to the first mark, then what each mark leads to. `-` and `+` alone are steps like any other. */
function takeApart(text: string): Parts {
	const [head = "", ...rest] = text.split(/(?=[.@(])/);
	const steps: string[] = [];
	let nth: number | undefined;
	let end: string | undefined;
	for (const piece of rest) {
		if (piece.startsWith(".")) steps.push(piece.slice(1));
		else if (piece.startsWith("@")) end = piece.slice(1);
		else nth = Number(piece.slice(1, -1));
	}
	return { head, steps, ...(nth === undefined ? {} : { nth }), ...(end === undefined ? {} : { end }) };
}

function checkShape(name: Parts, text: string, span: Span, report: (finding: Finding) => void): void {
	for (const piece of name.end === undefined ? [name.head, ...name.steps] : [name.head, name.end, ...name.steps]) {
		if (piece.length > limits.name)
			report(
				problem("name-too-long", span, {
					title: `The name ${quoted(piece)} has ${piece.length} characters, and at most ${limits.name} are read`,
					label: "too long",
				}),
			);
		if ((piece.startsWith("-") || piece.endsWith("-")) && piece !== "-")
			report(
				problem("name-hyphen", span, {
					title: `The name ${quoted(piece)} has a hyphen at its edge`,
					label: "hyphen at the edge",
				}),
			);
		const other = ascii.test(piece) ? undefined : findAlikeScript(piece);
		if (other)
			report(
				problem("name-mixed-script", span, {
					level: "warning",
					title: `The name ${quoted(text)} mixes Latin letters with ${other.name} ones (${codePoints(piece, other.letters)})`,
					label: "mixed letters",
					name: text,
				}),
			);
	}
}

/** The characters of a script in a text, by number. */
function codePoints(text: string, letters: RegExp): string {
	const found = [...text].filter((character) => letters.test(character)).slice(0, 5);
	return found
		.map((character) => `U+${character.codePointAt(0)?.toString(16).toUpperCase().padStart(4, "0")}`)
		.join(", ");
}

/** Letters, digits, `-` and `_` only: the name is its own head. */
const simple = /^[A-Za-z0-9_-]*$/;
const ascii = /^[\x20-\x7e]*$/;

/** A script besides Latin whose letters cannot be told from Latin ones by eye; its letters are looked up only for a name that needs it. */
function findAlikeScript(piece: string): { readonly name: string; readonly letters: RegExp } | undefined {
	if (!/\p{Script=Latin}/u.test(piece)) return undefined;
	return ["Cyrillic", "Greek", "Armenian", "Cherokee"]
		.map((name) => ({ name, letters: new RegExp(`\\p{Script=${name}}`, "u") }))
		.find(({ letters }) => letters.test(piece));
}
