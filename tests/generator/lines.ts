// Lines of a plan with what stands below them, and their text: indented, lengths aligned or not, as one builder does it.
import type { Chance } from "./chance.ts";

/** A line and the lines that belong to it. */
export interface Line {
	readonly text: string;
	/** Set on a hop that begins with its length: these characters may be aligned at their end. */
	readonly length?: string;
	/** Set where the hop says the tag of its cable. */
	readonly tag?: string;
	readonly below?: readonly Line[];
}

/** How one builder lays out a page. */
export interface Layout {
	readonly indent: string;
	readonly alignsLengths: boolean;
	readonly gaps: boolean;
	readonly ending: "\n" | "\r\n";
}

/** A layout by chance. */
export function layoutOf(chance: Chance): Layout {
	return {
		indent: chance.weigh([
			[6, "  "],
			[2, "    "],
			[1, "\t"],
		]),
		alignsLengths: chance.maybe(0.5),
		gaps: chance.maybe(0.7),
		ending: chance.maybe(0.1) ? "\r\n" : "\n",
	};
}

/** The text of a plan. */
export function writeLines(lines: readonly Line[], layout: Layout): string {
	return lines
		.flatMap((line, index) => [
			...(layout.gaps && index > 0 && line.below !== undefined ? [""] : []),
			...writeLine(line, 0, 0, layout),
		])
		.map((text) => `${text}${layout.ending}`)
		.join("");
}

function writeLine({ text, length, below = [] }: Line, depth: number, pad: number, layout: Layout): string[] {
	const first = `${layout.indent.repeat(depth)}${" ".repeat(pad)}${length === undefined ? "" : `${length} `}${text}`;
	// A tab may not stand beside blanks, and a hop without a length begins in the column of its neighbours. Within a branch
	// an aligned hop might belong to the chain that it branches off as well.
	const aligns =
		layout.alignsLengths &&
		depth === 0 &&
		layout.indent !== "\t" &&
		below.every((line) => line.length !== undefined || line.text.startsWith("from "));
	const widest = Math.max(0, ...below.map(figureWidth));
	return [
		first,
		...below.flatMap((line) =>
			writeLine(line, depth + 1, pad + (aligns && line.length !== undefined ? widest - figureWidth(line) : 0), layout),
		),
	];
}

/** How wide the first figure of its length is: figures stand under figures. */
function figureWidth({ length = "" }: Line): number {
	return /^[0-9.?]*/.exec(length)?.[0].length ?? 0;
}
