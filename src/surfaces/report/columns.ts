// Rows under heads, in columns as wide as they need: figures to the right, words to the left.
import { widthOf } from "./visible.ts";

/** A cell: a word, or a figure with the decimals that it is told with. */
export type Cell = string | { readonly figure: string };

/** The lines of a table, heads first; a column whose cells are figures stands to the right. */
export function writeColumns(heads: readonly string[], rows: readonly (readonly Cell[])[], gap = 2): string[] {
	const isFigure = heads.map((_, at) => rows.some((row) => typeof row[at] === "object"));
	const told = [heads, ...rows.map((row) => row.map(tellCell))];
	const widths = heads.map((_, at) => Math.max(...told.map((row) => widthOf(row[at] ?? ""))));
	return told.map((row) =>
		row
			.map((text, at) => {
				const blank = " ".repeat(Math.max(0, (widths[at] ?? 0) - widthOf(text)));
				return isFigure[at] === true ? blank + text : text + blank;
			})
			.join(" ".repeat(gap))
			.trimEnd(),
	);
}

function tellCell(cell: Cell): string {
	return typeof cell === "string" ? cell : cell.figure;
}
