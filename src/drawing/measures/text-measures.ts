// Measures of lettering: nothing on it, nothing cut by it, inside the frame, large enough, dark enough in both themes.
import { type Box, boundsOfMark, boxesMeet, boxHolds, growBox } from "../bounds.ts";
import { contrast, paintValue, type Theme } from "../palette.ts";
import type { Group, Paint } from "../scene.ts";
import { printedCapital, smallestCapital } from "../text-metrics.ts";
import { BoxIndex } from "./box-index.ts";
import { atLeast, countFaults, type Measure } from "./measure.ts";
import { lengthOf, type PlacedText, type Segment, type SheetFacts, tell } from "./sheet-facts.ts";

/** All measures of lettering. */
export function textMeasures(facts: SheetFacts): Measure[] {
	const grounds = groundsOf(facts);
	return [
		textOnText(facts),
		textOnLine(facts),
		textOnSymbol(facts),
		textOnEdge(facts),
		outsideFrame(facts),
		smallestPrint(facts),
		...(["light", "dark"] as const).map((theme) => weakestContrast(grounds, theme)),
	];
}

/** Two letters may come this near without touching: what a box adds around its ink. */
const hair = 0.5;

function textOnText({ texts }: SheetFacts): Measure {
	const index = new BoxIndex<PlacedText>();
	const where: string[] = [];
	for (const text of texts) {
		for (const other of index.meeting(growBox(text.box, -hair))) where.push(`${tell(text.of)} on ${tell(other.of)}`);
		index.add(text.box, text);
	}
	return countFaults("text on text", where);
}

/** Wires, sheaths and lines alike; a line counts with its own width. */
function textOnLine({ texts, segments }: SheetFacts): Measure {
	const index = new BoxIndex<Segment>();
	for (const segment of segments) index.add(segment.box, segment);
	const where: string[] = [];
	for (const text of texts)
		for (const segment of index.meeting(growBox(text.box, -hair)))
			if (segmentMeets(segment, growBox(text.box, -hair))) where.push(`${tell(text.of)} on ${tell(segment.of)}`);
	return countFaults("text on wire or line", where);
}

function textOnSymbol({ texts, symbols }: SheetFacts): Measure {
	const where: string[] = [];
	const index = new BoxIndex<(typeof symbols)[number]>();
	for (const symbol of symbols) index.add(symbol.box, symbol);
	for (const text of texts)
		for (const symbol of index.meeting(growBox(text.box, -hair))) where.push(`${tell(text.of)} on ${tell(symbol.of)}`);
	return countFaults("text on symbol", where);
}

/** A text stands wholly inside a rectangle or wholly outside; it may not lie on an edge, nor on a device that is not its own. */
function textOnEdge({ texts, rectangles }: SheetFacts): Measure {
	const where: string[] = [];
	const index = new BoxIndex<(typeof rectangles)[number]>();
	for (const rectangle of rectangles) index.add(rectangle.mark, rectangle);
	for (const text of texts)
		for (const rectangle of index.meeting(growBox(text.box, -hair))) {
			const solid = rectangle.mark.as === "gland" || rectangle.mark.as === "bar";
			const own = rectangle.mark.of !== undefined && rectangle.mark.of === text.of.mark.of;
			if (!boxHolds(rectangle.mark, growBox(text.box, -hair)) || (solid && !own))
				where.push(`${tell(text.of)} on ${rectangle.mark.as} of ${tell(rectangle)}`);
		}
	return countFaults("text on an edge", where);
}

function outsideFrame({ texts, rectangles, segments, symbols, frame }: SheetFacts): Measure {
	const inside = growBox(frame, 1);
	const all = [...texts, ...symbols, ...segments, ...rectangles.map((of) => ({ of, box: of.mark }))];
	return countFaults(
		"outside the frame",
		all.filter(({ box }) => !boxHolds(inside, box)).map(({ of }) => tell(of)),
	);
}

/** Height of the smallest capital on paper, in millimetres. */
function smallestPrint({ texts }: SheetFacts): Measure {
	let smallest = Number.POSITIVE_INFINITY;
	let where = "";
	for (const { of } of texts) {
		const height = printedCapital(of.mark.size);
		if (height >= smallest) continue;
		smallest = height;
		where = tell(of);
	}
	return atLeast("smallest capital, mm", texts.length === 0 ? smallestCapital : smallest, smallestCapital, [where]);
}

/** The weakest contrast of a text against what it stands on, by WCAG 2. */
function weakestContrast(grounds: readonly TextOnGround[], theme: Theme): Measure {
	let weakest = 21;
	let where = "";
	for (const { text, ground } of grounds) {
		const value = contrast(paintValue(text.of.mark.paint, theme), paintValue(ground, theme));
		if (value >= weakest) continue;
		weakest = value;
		where = tell(text.of);
	}
	return atLeast(`text contrast, ${theme}`, weakest, 4.5, [where]);
}

interface TextOnGround {
	readonly text: PlacedText;
	readonly ground: Paint;
}

/** The fill under each text: the last surface painted under its middle, in its group or before. */
function groundsOf({ sheet, texts, marks }: SheetFacts): TextOnGround[] {
	const order = new Map<Group, number>(sheet.groups.map((group, index) => [group, index]));
	const index = new BoxIndex<{ readonly fill: Paint; readonly layer: number }>();
	for (const { mark, group } of marks)
		if ((mark.kind === "rectangle" || mark.kind === "circle") && mark.fill !== undefined)
			index.add(boundsOfMark(mark), { fill: mark.fill, layer: order.get(group) ?? 0 });
	return texts.map((text) => {
		const layer = order.get(text.of.group) ?? 0;
		const [x, y] = [text.box.x + text.box.width / 2, text.box.y + text.box.height / 2];
		const under = index
			.meeting({ x: x - 0.5, y: y - 0.5, width: 1, height: 1 })
			.filter((surface) => surface.layer <= layer)
			.reduce<{ fill: Paint; layer: number } | undefined>(
				(last, surface) => (last === undefined || surface.layer >= last.layer ? surface : last),
				undefined,
			);
		return { text, ground: under?.fill ?? "paper" };
	});
}

/** Whether a straight piece, with its width, passes through a box. */
export function segmentMeets(segment: Segment, box: Box): boolean {
	if (!boxesMeet(segment.box, box)) return false;
	const { from, to } = segment;
	if (Math.abs(from.x - to.x) < 0.01 || Math.abs(from.y - to.y) < 0.01) return true;
	// An oblique piece: points along it, close enough that none of a text's width is stepped over.
	const steps = Math.ceil(lengthOf(segment) / 2);
	for (let step = 0; step <= steps; step++) {
		const share = step / steps;
		const x = from.x + (to.x - from.x) * share;
		const y = from.y + (to.y - from.y) * share;
		if (boxesMeet({ x: x - 0.8, y: y - 0.8, width: 1.6, height: 1.6 }, box)) return true;
	}
	return false;
}
