// Plates of devices that are not on yet: below the conductors that wait for them, without screws.
import type { Part } from "../../circuit/circuit.ts";
import { textWidth } from "../text-metrics.ts";
import type { BoxContent } from "./box-content.ts";
import type { BoxPlan, Plate } from "./box-plan.ts";
import { innerMargin, type } from "./dimensions.ts";
import { faceOf } from "./face-symbols.ts";

/** A box with the plates of what is still to come put in a row below all that it holds; it is as wide as `comingWidth`. */
export function addComing(content: BoxContent, plan: BoxPlan): BoxPlan {
	if (content.coming.length === 0) return plan;
	const named = isNamed(content);
	const y = plan.height - innerMargin + plateGap;
	const plates = platesAt(content, y);
	const depth = Math.max(...plates.map(({ box }) => box.height)) + (named ? captionHeight : 0);
	return {
		...plan,
		height: Math.ceil(y + depth + innerMargin),
		plates: [...plan.plates, ...plates],
	};
}

/** The width that a box needs for the row of what is still to come; 0 where nothing is. */
export function comingWidth(content: BoxContent): number {
	const last = platesAt(content, 0).at(-1);
	return last === undefined ? 0 : Math.ceil(last.box.x + last.box.width + innerMargin);
}

function platesAt(content: BoxContent, y: number): Plate[] {
	let x = innerMargin;
	return content.coming.map((device) => {
		const plate = plateOf(device, { x, y }, isNamed(content));
		x += plate.box.width + plateGap;
		return plate;
	});
}

/** Where several share a box, each has its name. */
function isNamed({ coming, devices }: BoxContent): boolean {
	return coming.length + devices.length > 1;
}

function plateOf(device: Part, { x, y }: { readonly x: number; readonly y: number }, named: boolean): Plate {
	const face = faceOf(device, false);
	const caption = named ? textWidth(device.name, captionStyle) : 0;
	const width = Math.max((face?.width ?? 24) + 2 * facePad, caption + 8);
	const height = (face?.height ?? 24) + 2 * facePad;
	const middle = x + width / 2;
	return {
		of: device.name,
		box: { x, y, width, height },
		terminals: [],
		symbols: face === undefined ? [] : [{ symbol: face.symbol, at: { x: middle, y: y + height / 2 } }],
		leads: [],
		texts: named
			? [{ text: device.name, at: { x: middle, y: y + height + captionHeight }, anchor: "middle", bold: true }]
			: [],
	};
}

const captionStyle = { size: type.note, bold: true } as const;
const captionHeight = 14;
const facePad = 8;
const plateGap = 12;
