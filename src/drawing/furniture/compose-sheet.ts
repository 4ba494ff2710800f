// A drawing and its furniture as a finished sheet: paper chosen, drawing moved into place, lists where they leave the least empty.
import { type Box, boundsOf, boundsOfMark, boxHolds, boxInPlace, growBox, joinBoxes, placeGroup } from "../bounds.ts";
import { air, coarseCell, fineCell, inkBoxes, Occupancy } from "../occupancy.ts";
import type { Group, Sheet } from "../scene.ts";
import { textWidth, wrapText } from "../text-metrics.ts";
import { badgeRadius } from "./badge.ts";
import { frameGroup } from "./frame.ts";
import { margin, padding } from "./paper.ts";
import type { SheetContent } from "./sheet-content.ts";
import { chooseLayout, type Drawing, type HeadingWidth } from "./sheet-layout.ts";

export type { Fact, LegendEntry, SheetContent, SheetFinding } from "./sheet-content.ts";

/** The sheet. The drawing is scaled up where there is room, never down: on no paper large enough, the sheet is made to measure. */
export function composeSheet(content: SheetContent): Sheet {
	const ink = content.groups.flatMap(inkOf);
	const box = joinBoxes(ink.length === 0 ? [boundsOf(content.groups)] : ink);
	const layout = chooseLayout(content, surveyDrawing(ink, box), headingWidth(content));
	return {
		name: content.name,
		title: `${content.project}: ${content.title}`,
		description: content.description,
		width: layout.width,
		height: layout.height,
		groups: [
			frameGroup(layout.width, layout.height),
			heading(content, layout.area.width),
			...content.groups.map((group) => placeGroup(group, layout.drawing)),
			...layout.furniture(),
		],
	};
}

/** The boxes of a group's ink; what stands in an enclosure is covered by it, glands and badges on its edge too; words beside it are not. */
function inkOf(group: Group): Box[] {
	const { marks } = group;
	const enclosure = marks.find((mark) => mark.kind === "rectangle" && mark.as === "enclosure");
	if (enclosure === undefined) return marks.flatMap(inkBoxes).map((box) => boxInPlace(box, group));
	const covered = growBox(boxInPlace(boundsOfMark(enclosure), group), edge);
	const words = marks.flatMap((mark) => (mark.kind === "text" ? boxInPlace(boundsOfMark(mark), group) : []));
	return [covered, ...words.filter((box) => !boxHolds(covered, box))];
}

/** How far glands and badges reach over the edge of an enclosure. */
const edge = badgeRadius;

/** The drawing's ink on a grid, once: as few boxes, and as the ground it covers. */
function surveyDrawing(ink: readonly Box[], box: Box): Drawing {
	const tight = new Occupancy(growBox(box, fineCell), fineCell);
	for (const one of ink) tight.take(one);
	const stretches = tight.stretches();
	const airy = new Occupancy(growBox(box, air), coarseCell);
	for (const one of stretches) airy.take(one, air - coarseCell / 2);
	const space = (box.width + 2 * air) * (box.height + 2 * air);
	return { box, ink: stretches, covers: (1 - airy.freeShare()) * space };
}

const titleStyle = { size: 20, bold: true };
const subtitleStyle = { size: 12 };

function headingWidth(content: SheetContent): HeadingWidth {
	const title = padding + textWidth(content.title, titleStyle);
	return { title, whole: title + 18 + textWidth(content.subtitle ?? "", subtitleStyle) };
}

/** Title and, where there is room beside it, how to read the sheet. */
function heading(content: SheetContent, width: number): Group {
	const at = { x: margin + padding, y: margin + padding + 15 };
	const beside = Math.ceil(textWidth(content.title, titleStyle)) + 18;
	const fits = content.subtitle !== undefined && wrapText(content.subtitle, subtitleStyle, width - beside).length === 1;
	return {
		name: "heading",
		sort: "furniture",
		label: content.title,
		marks: [
			{ kind: "text", text: content.title, ...at, ...titleStyle, anchor: "start", paint: "ink" },
			...(content.subtitle === undefined || !fits
				? []
				: [
						{
							kind: "text" as const,
							text: content.subtitle,
							x: at.x + beside,
							y: at.y,
							...subtitleStyle,
							anchor: "start" as const,
							paint: "soft" as const,
						},
					]),
		],
	};
}
