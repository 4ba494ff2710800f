// The tag of a run: what it is made of, its number and length, both above it; a strap says that it is bolted.
import type { Box } from "../bounds.ts";
import type { TextMark, XY } from "../scene.ts";
import type { TextStyle } from "../text-metrics.ts";
import { type } from "../wiring/dimensions.ts";
import { noteStyle, onGrid, terminalPitch, wordsWidth } from "./direct-box.ts";
import type { Run } from "./net.ts";
import { runWidth } from "./run-widths.ts";

/** The room above a run that the layout keeps free for its tag; undefined for what has none. */
export function tagSize(run: Run): { readonly width: number; readonly height: number } | undefined {
	const lines = tagLines(run);
	if (lines.length === 0) return undefined;
	const width = Math.max(...lines.map((line, index) => wordsWidth(line, styleOf(index))));
	return {
		width: Math.max(16, width - 2 * overhang),
		height: onGrid(lines.length * linePitch + clearOf(run)),
	};
}

/** The tag's lines in their room, the last just above the run, and where a finding's number goes. */
export function tagMarks(run: Run, room: Box): { readonly marks: readonly TextMark[]; readonly at: XY } {
	const lines = tagLines(run);
	const x = Math.round(room.x + room.width / 2);
	const bottom = Math.round(room.y + room.height - clearOf(run));
	const of = run.cable?.tag ?? run.key;
	const marks = lines.map(
		(text, index): TextMark => ({
			kind: "text",
			x,
			y: bottom - 4 - linePitch * (lines.length - 1 - index),
			text,
			...styleOf(index),
			anchor: "middle",
			paint: "ink",
			of,
		}),
	);
	return { marks, at: { x: room.x, y: room.y } };
}

function tagLines({ sort, cable }: Run): readonly string[] {
	if (sort === "strap") return ["bolted"];
	if (sort === "tail" || cable === undefined) return [];
	return [cable.make, cable.lengthText === "" ? cable.tag : `${cable.tag} · ${cable.lengthText}`];
}

/** From the middle of a run to its tag: above its colour, and above the terminals to which strands fan out. */
function clearOf(run: Run): number {
	return run.sort === "sheathed" ? Math.max(runWidth(run) / 2, fanned) : runWidth(run) / 2 + lit;
}

function styleOf(line: number): TextStyle {
	return line === 0 ? makeStyle : noteStyle;
}

/** The space between boxes and the rooms of tags is wider than a tag needs: it reaches into it this far. */
const overhang = 20;
const makeStyle = { size: type.tag, bold: true } as const;
const linePitch = 13.5;
/** Room for the band of a conductor that a finding lights up. */
const lit = 3.2;
/** Where the upper strand of a pair ends, its thickness with it. */
const fanned = terminalPitch / 2 + 3;
