// The frame of a sheet with its zones: numerals along the top and bottom, capitals along the sides, starting opposite the title block.
import type { Group, Mark, XY } from "../scene.ts";
import { smallestText } from "../text-metrics.ts";
import { margin } from "./paper.ts";

/** The frame for a sheet of `width` x `height` units. Zones: an even number a side, 25 to 75 mm each (ISO 5457, read in a secondary text). */
export function frameGroup(width: number, height: number): Group {
	const across = evenDivisions(width - 2 * margin);
	const down = evenDivisions(height - 2 * margin);
	const marks: Mark[] = [
		{
			kind: "rectangle",
			as: "frame",
			x: margin,
			y: margin,
			width: width - 2 * margin,
			height: height - 2 * margin,
			stroke: "ink",
			strokeWidth: 2,
		},
		{
			kind: "rectangle",
			as: "frame",
			x: margin - band,
			y: margin - band,
			width: width - 2 * (margin - band),
			height: height - 2 * (margin - band),
			stroke: "faint",
			strokeWidth: 0.8,
		},
	];
	for (let index = 0; index < across; index++) {
		const step = (width - 2 * margin) / across;
		const x = margin + index * step;
		for (const y of [margin - band, height - margin]) {
			if (index > 0) marks.push(tick({ x, y }, { x, y: y + band }));
			marks.push(zone(String(index + 1), { x: x + step / 2, y: y + band / 2 }));
		}
	}
	for (let index = 0; index < down; index++) {
		const step = (height - 2 * margin) / down;
		const y = margin + index * step;
		for (const x of [margin - band, width - margin]) {
			if (index > 0) marks.push(tick({ x, y }, { x: x + band, y }));
			marks.push(zone(letters[index] ?? "", { x: x + band / 2, y: y + step / 2 }));
		}
	}
	return { name: "frame", sort: "decoration", marks };
}

/** Width of the band of zones outside the frame. */
const band = 20;

/** I and O are left out: they look like numerals. */
const letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

/** About 50 mm each. */
function evenDivisions(length: number): number {
	return Math.min(24, Math.max(2, 2 * Math.round(length / 400)));
}

function tick(from: XY, to: XY): Mark {
	return { kind: "line", as: "rule", points: [from, to], stroke: "faint", strokeWidth: 0.8 };
}

function zone(text: string, at: XY): Mark {
	return { kind: "text", text, x: at.x, y: at.y + 3.8, size: smallestText, anchor: "middle", paint: "soft" };
}
