// The caution that every sheet carries, in its own framed block.
import type { Group, Mark, XY } from "../scene.ts";
import { wrapText } from "../text-metrics.ts";

/** What every sheet warns of, in our own words. */
const standingCautions: readonly string[] = [
	"Electricity kills and starts fires. Switch off, unplug and lock out every source, then prove dead before you touch.",
	"This sheet is a planning aid made from the plan's text. It is no approval, and its silence is no proof of safety.",
	"The code in force, the makers' instructions and the inspector decide. Some places allow only licensed people to do this work.",
];

/** A caution block set for a width. */
export interface CautionBlock {
	readonly width: number;
	readonly height: number;
	readonly groupAt: (corner: XY) => Group;
}

/** The standing cautions and `more`, wrapped to `width`. */
export function cautionBlock(more: readonly string[], width: number): CautionBlock {
	const lines = [...standingCautions, ...more].flatMap((text) => wrapText(text, { size }, width - indent - 14));
	const height = 33 + lines.length * linePitch;
	return {
		width,
		height,
		groupAt: (corner) => ({
			name: "caution",
			sort: "furniture",
			label: "Caution",
			marks: [
				{
					kind: "rectangle",
					as: "plate",
					...corner,
					width,
					height,
					radius: 4,
					fill: "caution",
					stroke: "caution-line",
					strokeWidth: 1.6,
				},
				{ kind: "symbol", symbol: "caution", x: corner.x + 26, y: corner.y + 24, scale: 0.8, paint: "engraving" },
				text("CAUTION", corner, 0, true),
				...lines.map((line, index) => text(line, corner, index + 1, false)),
			],
		}),
	};
}

const size = 11;
const linePitch = 14.5;
const indent = 52;

function text(content: string, corner: XY, row: number, bold: boolean): Mark {
	return {
		kind: "text",
		text: content,
		x: corner.x + indent,
		y: corner.y + 20 + row * linePitch,
		size: bold ? 11.5 : size,
		bold,
		anchor: "start",
		paint: "ink",
	};
}
