// The numbered mark of a finding, the same on the drawing and in the list. Filled for what is dangerous or wrong, open for the rest.
import type { Level } from "../../base/finding.ts";
import type { Mark, XY } from "../scene.ts";
import { smallestText } from "../text-metrics.ts";

/** Radius of a finding's mark, in units. */
export const badgeRadius = 9.5;

/** The mark of finding `number` around `at`. */
export function badgeMarks(number: number, at: XY, level: Level): Mark[] {
	const grave = level === "danger" || level === "error";
	const of = `finding ${number}`;
	return [
		{
			kind: "circle",
			as: "badge",
			of,
			x: at.x,
			y: at.y,
			radius: badgeRadius,
			fill: grave ? "fault" : "paper",
			stroke: "fault",
			strokeWidth: 1.6,
		},
		{
			kind: "text",
			of,
			text: String(number),
			x: at.x,
			y: at.y + 3.8,
			size: number > 99 ? smallestText : 11,
			bold: true,
			anchor: "middle",
			paint: grave ? "paper" : "fault",
		},
	];
}
