// A second pair of eyes: reads the written text on its own and holds it against what a drawing may contain, before anyone gets it.
import { InternalFault } from "../base/certain.ts";

/** Throws an InternalFault when `text` holds an element, attribute, reference or value outside the contract, or is not nested properly. */
export function checkSvg(text: string): void {
	if (!text.startsWith(opening)) refuse("another beginning", text, 0);
	const open: string[] = [];
	let at = 0;
	while (at < text.length) {
		if (text.charCodeAt(at) !== lessThan) {
			at = readText(text, at, open);
			continue;
		}
		at = text[at + 1] === "/" ? readEndTag(text, at, open) : readStartTag(text, at, open);
		if (open.length === 0 && at < text.length) refuse("text after the end of the drawing", text, at);
	}
	if (open.length > 0 || text === "") refuse(`<${open.at(-1) ?? "svg"}> is not closed`, text, at);
}

const lessThan = 60;
const opening = '<svg xmlns="http://www.w3.org/2000/svg" ';

const elements: ReadonlySet<string> = new Set(
	"svg title desc defs style g path rect circle line polyline polygon text tspan symbol use pattern marker clipPath".split(
		" ",
	),
);

/** Stands for text of the plan, which is looked at letter by letter. */
const anyText = /^/;

/** What each attribute may hold; an attribute that is not here may not be written. */
const attributes: ReadonlyMap<string, RegExp> = new Map([
	["xmlns", /^http:\/\/www\.w3\.org\/2000\/svg$/],
	["id", /^[A-Za-z_][A-Za-z0-9_-]*$/],
	["href", /^#[A-Za-z_][A-Za-z0-9_-]*$/],
	["class", /^fe-sheet$/],
	["role", /^graphics-(document|object|symbol)$/],
	["aria-label", anyText],
	["aria-labelledby", /^[A-Za-z0-9_ -]+$/],
	["aria-hidden", /^true$/],
	["lang", /^en$/],
	["data-line", /^\d+$/],
	["data-column", /^\d+$/],
	["viewBox", /^[\d. -]+$/],
	["d", /^[MLHVCSQAZahvz\d. -]*$/],
	["transform", /^(?:(?:translate|rotate|scale)\([\d. -]+\))+$/],
	["fill", /^(?:none|currentColor|#[0-9a-f]{6})$/],
	["stroke", /^(?:none|currentColor|#[0-9a-f]{6})$/],
	["color", /^#[0-9a-f]{6}$/],
	["stroke-dasharray", /^[\d. ]+$/],
	["stroke-linecap", /^round$/],
	["stroke-linejoin", /^round$/],
	["text-anchor", /^(?:middle|end)$/],
	["font-weight", /^700$/],
	["font-family", /^Arial, Helvetica, 'Liberation Sans', Arimo, sans-serif$/],
	["width", /^[\d.]+(?:mm)?$/],
	["height", /^[\d.]+(?:mm)?$/],
	...["x", "y", "cx", "cy", "r", "rx", "stroke-width", "font-size"].map((name) => [name, /^-?[\d.]+$/] as const),
]);

/** The whole of a style sheet: one dark colour for each light one, and dark only on a screen. */
const styleSheet =
	/^\.fe-sheet\{print-color-adjust:exact;forced-color-adjust:none\}@media screen and \(prefers-color-scheme:dark\)\{\.fe-sheet\{color:#[0-9a-f]{6}\}(?:\.fe-sheet \[(?:fill|stroke|color)=\\#[0-9a-f]{6}\]\{(?:fill|stroke|color):#[0-9a-f]{6}\})*\}$/;

function readText(text: string, from: number, open: readonly string[]): number {
	const next = text.indexOf("<", from);
	const end = next < 0 ? text.length : next;
	const content = text.slice(from, end);
	const inside = open.at(-1);
	if (inside === undefined) refuse("text outside the drawing", text, from);
	if (inside === "style" ? !styleSheet.test(content) : !isCleanText(content))
		refuse(`the text of <${inside}>`, text, from);
	return end;
}

function readEndTag(text: string, from: number, open: string[]): number {
	const end = text.indexOf(">", from);
	const name = text.slice(from + 2, end);
	if (end < 0 || open.pop() !== name) refuse(`</${name}> closes nothing`, text, from);
	return end + 1;
}

/** Written by hand and not as one pattern, so that its time grows with the text and no faster. */
function readStartTag(text: string, from: number, open: string[]): number {
	let at = nameEnd(text, from + 1);
	const name = text.slice(from + 1, at);
	if (!elements.has(name) || (open.length === 0) !== (name === "svg")) refuse(`<${name}>`, text, from);
	const seen: string[] = [];
	while (text[at] === " ") {
		const start = at + 1;
		const equals = nameEnd(text, start);
		const attribute = text.slice(start, equals);
		if (text.slice(equals, equals + 2) !== '="') refuse(`attribute ${attribute}`, text, start);
		const end = text.indexOf('"', equals + 2);
		const value = text.slice(equals + 2, end);
		const pattern = attributes.get(attribute);
		const allowed = pattern === anyText ? isCleanText(value) : pattern?.test(value) === true;
		if (end < 0 || !allowed || seen.includes(attribute)) refuse(`attribute ${attribute} of <${name}>`, text, start);
		seen.push(attribute);
		at = end + 1;
	}
	if (text[at] === ">") {
		open.push(name);
		return at + 1;
	}
	if (text.slice(at, at + 2) !== "/>") refuse(`<${name}>`, text, at);
	return at + 2;
}

/** Names hold letters and hyphens only. */
function nameEnd(text: string, from: number): number {
	let at = from;
	for (;;) {
		const code = text.charCodeAt(at);
		const isName = (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || code === 45;
		if (!isName) return at;
		at++;
	}
}

/** Only letters that XML 1.0 can carry, nothing that opens an element, and only the references the library writes. */
function isCleanText(text: string): boolean {
	if (/^[\x20-\x25\x27-\x3b\x3d-\x7e]*$/.test(text)) return true;
	for (let at = text.indexOf("&"); at >= 0; at = text.indexOf("&", at + 1))
		if (!references.some((reference) => text.startsWith(reference, at))) return false;
	return !forbidden.test(text);
}

const references = ["&amp;", "&lt;", "&gt;", "&quot;", "&apos;"];
/** The complement of the character range of XML 1.0, section 2.2, and the sign that opens an element. */
const forbidden = /[^\t\n\r\u{20}-\u{3b}\u{3d}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/u;

function refuse(what: string, text: string, at: number): never {
	throw new InternalFault(`the drawing holds what it may not: ${what} at ${at}: ${text.slice(at, at + 60)}`);
}
