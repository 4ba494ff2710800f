// The head of an enclosure: its name, its label, what it is and where.
import type { TextMark } from "../scene.ts";
import { shortenText, textWidth } from "../text-metrics.ts";
import type { BoxContent } from "./box-content.ts";
import { type } from "./dimensions.ts";

/** The texts of a head, in the enclosure's coordinates, and the width they ask for. */
export interface Header {
	readonly marks: readonly TextMark[];
	readonly width: number;
	/** The same in one line, for a reader who does not see it. */
	readonly words: string;
}

/** The head of an enclosure. */
export function headerOf(content: BoxContent): Header {
	const { enclosure } = content;
	const planned = content.coming.length > 0 ? "roughed in" : "";
	const what = [whatItIs(content), enclosure.place?.label ?? "", planned].filter((text) => text !== "").join(" · ");
	const name = shortenText(enclosure.name, titleStyle, longestLine);
	const nameWidth = textWidth(name, titleStyle);
	const hasLabel = enclosure.label !== "" && enclosure.label !== enclosure.name;
	const label = hasLabel ? shortenText(enclosure.label, labelStyle, Math.max(60, longestLine - nameWidth)) : "";
	const subtitle = shortenText(what, noteStyle, 1.25 * longestLine);
	const labelX = margin + nameWidth * reserve + 7;
	const marks: TextMark[] = [
		{
			kind: "text",
			x: margin,
			y: titleLine,
			text: name,
			...titleStyle,
			anchor: "start",
			paint: "ink",
			of: enclosure.name,
		},
	];
	if (hasLabel)
		marks.push({
			kind: "text",
			x: labelX,
			y: titleLine,
			text: label,
			...labelStyle,
			anchor: "start",
			paint: "ink",
			of: enclosure.name,
		});
	if (subtitle !== "")
		marks.push({
			kind: "text",
			x: margin,
			y: noteLine,
			text: subtitle,
			...noteStyle,
			anchor: "start",
			paint: "soft",
			of: enclosure.name,
		});
	const titleEnd = hasLabel ? labelX + textWidth(label, labelStyle) * reserve : margin + nameWidth * reserve;
	const width = Math.ceil(Math.max(titleEnd, margin + textWidth(subtitle, noteStyle) * reserve) + margin);
	const words = [hasLabel ? `${enclosure.name} ${enclosure.label}` : enclosure.name, what]
		.filter((text) => text !== "")
		.join(": ");
	return { marks, width, words };
}

/** The kinds of things in it, or what sort of enclosure it is. */
function whatItIs({ enclosure, devices: present, coming, circuit }: BoxContent): string {
	const devices = [...present, ...coming];
	if (enclosure.sort === "open") return "cable end, no box";
	const own = circuit.partByName.get(enclosure.name);
	if (enclosure.sort === "panel" && own !== undefined) return own.face.text;
	const [only, ...others] = devices;
	if (only === undefined) return own?.face.text ?? "junction box";
	if (others.length === 0) return only.face.text;
	const counts = new Map<string, number>();
	for (const device of devices) counts.set(device.kind, (counts.get(device.kind) ?? 0) + 1);
	return [...counts].map(([kind, count]) => (count === 1 ? kind : `${count} × ${kind}`)).join(", ");
}

const titleStyle = { size: type.title, bold: true } as const;
const labelStyle = { size: type.label } as const;
const noteStyle = { size: type.note } as const;
const margin = 12;
const titleLine = 20;
const noteLine = 36;
/** Longer lines are cut: a box is not widened without end for its label. */
const longestLine = 240;
/** Room for a reader whose font runs wider. */
const reserve = 1.04;
