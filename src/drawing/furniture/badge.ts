// The numbered mark of a finding, the same on the drawing and in the list. Filled for what is dangerous or wrong, open for the rest,
// in a broken ring for what the builder accepts. A danger keeps its colour there.
import type { Level } from "../../base/finding.ts";
import type { Mark, XY } from "../scene.ts";
import { smallestText } from "../text-metrics.ts";

/** Radius of a finding's mark, in units. */
export const badgeRadius = 9.5;

/** The mark of finding `number` around `at`. `isAccepted`: the builder stands behind it, so it stands in a broken ring, grey but for a danger. */
export function badgeMarks(number: number, at: XY, level: Level, isAccepted = false): Mark[] {
	const of = `finding ${number}`;
	const isCalm = isAccepted && level !== "danger";
	const { fill, ink } = isCalm ? acceptedLook : isAccepted ? lightLook : graveLevels.has(level) ? graveLook : lightLook;
	return [
		{
			kind: "circle",
			as: "badge",
			of,
			x: at.x,
			y: at.y,
			radius: badgeRadius,
			fill,
			stroke: isCalm ? "soft" : "fault",
			strokeWidth: 1.6,
			...(isAccepted ? { dashed: true } : {}),
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
			paint: ink,
		},
	];
}

const graveLevels: ReadonlySet<Level> = new Set(["danger", "error"]);
const graveLook = { fill: "fault", ink: "paper" } as const;
const lightLook = { fill: "paper", ink: "fault" } as const;
const acceptedLook = { fill: "paper", ink: "soft" } as const;
