// A second pair of eyes: reads the written text on its own and holds it against what a drawing may contain, before anyone gets it.
import { InternalFault } from "../base/certain.ts";

/** Throws an InternalFault when `text` holds an element, attribute, reference or value outside the contract, or is not nested properly. */
export function checkSvg(text: string): void {
	if (!text.startsWith(opening)) refuse("another beginning", text, 0);
	const open: string[] = [];
	let at = 0;
	while (at < text.length) {
		if (text.charCodeAt(at) !== lessThan) at = readText(text, at, open);
		else at = text.charCodeAt(at + 1) === slash ? readEndTag(text, at, open) : readStartTag(text, at, open);
		if (open.length === 0 && at < text.length) refuse("text after the end of the drawing", text, at);
	}
	if (open.length > 0) refuse(`<${open.at(-1)}> is not closed`, text, at);
}

const lessThan = 60;
const slash = 47;
const opening = '<svg xmlns="http://www.w3.org/2000/svg" ';

const elements =
	"g path text use title desc style defs svg rect circle line polyline polygon tspan symbol pattern marker clipPath";

const id = "[A-Za-z_][A-Za-z0-9_-]*";
const figure = "-?[\\d.]+";
const colour = "none|currentColor|#[0-9a-f]{6}";
/** A letter that XML 1.0 can carry (section 2.2) but for those that open or close something, or a reference that the library writes. */
const letter =
	"[\\t\\n\\r\\u{20}-\\u{21}\\u{23}-\\u{25}\\u{27}-\\u{3b}\\u{3d}-\\u{d7ff}\\u{e000}-\\u{fffd}\\u{10000}-\\u{10ffff}]|&(?:amp|lt|gt|quot|apos);";

/** What each attribute may hold; an attribute that is not here may not be written. */
const attributes: readonly (readonly [name: string, value: string])[] = [
	["d", "[MLHVCSQAZahvz\\d. -]*"],
	["x", figure],
	["y", figure],
	["stroke", colour],
	["stroke-width", figure],
	["fill", colour],
	["stroke-dasharray", "[\\d. ]+"],
	["font-size", figure],
	["text-anchor", "middle|end"],
	["font-weight", "700"],
	["href", `#${id}`],
	["transform", "(?:(?:translate|rotate|scale)\\([\\d. -]+\\))+"],
	["id", id],
	["role", "graphics-(?:document|object|symbol)"],
	["aria-label", `(?:${letter})*`],
	["data-line", "\\d+"],
	["data-column", "\\d+"],
	["aria-hidden", "true"],
	["color", "#[0-9a-f]{6}"],
	["xmlns", "http://www\\.w3\\.org/2000/svg"],
	["viewBox", "[\\d. -]+"],
	["width", "[\\d.]+(?:mm)?"],
	["height", "[\\d.]+(?:mm)?"],
	["aria-labelledby", "[A-Za-z0-9_ -]+"],
	["lang", "en"],
	["class", "fe-sheet|fe-symbol"],
	["stroke-linecap", "round"],
	["stroke-linejoin", "round"],
	["font-family", "Arial, Helvetica, 'Liberation Sans', Arimo, sans-serif"],
];

/** Each attribute begins with a space and ends in a quote that no value holds, so there is one way to read it and time grows with the text. */
const anyAttribute = attributes.map(([name, value]) => `${name}="(?:${value})"`).join("|");
const startTag = new RegExp(`<(${elements.replaceAll(" ", "|")})((?: (?:${anyAttribute}))*)>`, "uy");
const endTag = /<\/([A-Za-z]+)>/y;
const content = new RegExp(`(?:${letter}|")+`, "uy");
const attributeTwice = / ([A-Za-z-]+)="[^"]*"(?: [A-Za-z-]+="[^"]*")* \1="/;

/** The whole of a style sheet: one dark colour for each light one, and dark only on a screen. */
const styleSheet =
	/^\.fe-sheet\{print-color-adjust:exact;forced-color-adjust:none\}@media screen and \(prefers-color-scheme:dark\)\{\.fe-sheet\{color:#[0-9a-f]{6}\}(?:\.fe-sheet \[(?:fill|stroke|color)=\\#[0-9a-f]{6}\](?:,\.fe-symbol \[fill=\\#[0-9a-f]{6}\])?\{(?:fill|stroke|color):#[0-9a-f]{6}\})*\}$/;

function readText(text: string, from: number, open: readonly string[]): number {
	const inside = open.at(-1);
	if (inside === undefined) refuse("text outside the drawing", text, from);
	content.lastIndex = from;
	const words = content.exec(text)?.[0] ?? "";
	if (words === "" || (inside === "style" && !styleSheet.test(words))) refuse(`the text of <${inside}>`, text, from);
	return from + words.length;
}

function readEndTag(text: string, from: number, open: string[]): number {
	endTag.lastIndex = from;
	const [tag = "", name] = endTag.exec(text) ?? [];
	if (tag === "" || open.pop() !== name) refuse("an element closed that was not open", text, from);
	return from + tag.length;
}

function readStartTag(text: string, from: number, open: string[]): number {
	startTag.lastIndex = from;
	const [tag = "", name = "", list = ""] = startTag.exec(text) ?? [];
	if (tag === "" || (open.length === 0) !== (name === "svg") || attributeTwice.test(list))
		refuse("an element or attribute", text, from);
	open.push(name);
	return from + tag.length;
}

function refuse(what: string, text: string, at: number): never {
	throw new InternalFault(`the drawing holds what it may not: ${what} at ${at}: ${text.slice(at, at + 60)}`);
}
