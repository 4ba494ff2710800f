// Every box of a sheet with its inside drawn and its cables sorted to its walls; flags stand in for boxes of other sheets.
import { certain } from "../../base/certain.ts";
import type { Cable, Circuit, Conductor } from "../../circuit/circuit.ts";
import type { Mark } from "../scene.ts";
import { textWidth } from "../text-metrics.ts";
import { type Approach, fillBox, type Stock } from "./box-content.ts";
import { type } from "./dimensions.ts";
import type { FeedNode } from "./feed-graph.ts";
import { drawInterior, type Interior, type ShapeMemo } from "./interior.ts";
import type { Strands } from "./strand-order.ts";
import { tagRoom } from "./tags.ts";
import { sideOf } from "./terminal-letters.ts";

/** A box of a sheet, not yet placed. */
export interface SheetBox {
	readonly name: string;
	readonly width: number;
	readonly height: number;
	readonly marks: readonly Mark[];
	/** Height of each cable end's gland, by cable and end, and the wall it is in. */
	readonly glands: ReadonlyMap<string, { readonly x: number; readonly y: number }>;
	readonly interior?: Interior;
	/** The enclosure on another sheet that a flag leads to. */
	readonly flagTo?: string;
	readonly right: readonly Branch[];
	readonly left: readonly Branch[];
	readonly loops: readonly Cable[];
	/** Which end of the cables between it and its children is there. */
	readonly end: 0 | 1;
}

/** A box that hangs on another, by its cables. */
export interface Branch {
	readonly box: SheetBox;
	readonly links: readonly Cable[];
	/** The length of cable that the widest of their tags needs. */
	readonly room: number;
}

/** All that drawing a box needs to know of its sheet. */
export interface BoxDrawing {
	readonly circuit: Circuit;
	readonly strands: Strands;
	readonly lit: ReadonlyMap<string, number>;
	readonly memo: ShapeMemo;
	/** The name of the sheet an enclosure is on. */
	readonly sheetOf: (enclosure: string) => string;
}

/** A node with all that hangs on it, drawn. `side` is where it leads on to; it comes in on the other. Walked with a list, not by recursion. */
export function drawNode(drawing: BoxDrawing, root: FeedNode): SheetBox {
	const built = new Map<FeedNode, SheetBox>();
	const order: { node: FeedNode; outward: "left" | "right" }[] = [{ node: root, outward: "right" }];
	for (const { node, outward } of order) {
		for (const child of node.right) order.push({ node: child, outward });
		for (const child of node.left) order.push({ node: child, outward: "left" });
	}
	for (const { node, outward } of order.toReversed()) {
		const childrenOf = (nodes: readonly FeedNode[]) =>
			nodes.flatMap((child) => {
				const box = built.get(child);
				return box === undefined ? [] : [{ box, links: child.links, room: Math.max(...child.links.map(tagRoom)) }];
			});
		const box =
			node.stock === undefined ? drawFlag(drawing, node, outward) : drawBox(drawing, node, node.stock, outward);
		built.set(node, {
			...box,
			right: fromTheTop(box, childrenOf(node.right)),
			left: fromTheTop(box, childrenOf(node.left)),
		});
	}
	const whole = built.get(root);
	if (whole === undefined) throw new RangeError("a tree without a root");
	return whole;
}

/** Branches in the order in which their cables leave the wall: so none has to cross another. */
function fromTheTop(box: Pick<SheetBox, "glands">, branches: readonly Branch[]): Branch[] {
	const heightOf = ({ box: { end }, links: [first] }: Branch): number =>
		first === undefined ? 0 : (box.glands.get(endKey(first, end === 0 ? 1 : 0))?.y ?? 0);
	return branches.toSorted((one, other) => heightOf(one) - heightOf(other));
}

/** The key of a cable's end. */
export function endKey(cable: Cable, end: 0 | 1): string {
	return `${end}${cable.tag}`;
}

function drawBox(
	drawing: BoxDrawing,
	node: FeedNode,
	stock: Stock,
	outward: "left" | "right",
): Omit<SheetBox, "right" | "left"> {
	const inward = outward === "right" ? "left" : "right";
	const leads = (children: readonly FeedNode[], side: "left" | "right"): Approach[] =>
		children.flatMap((child) => child.links.map((cable): Approach => ({ cable, end: child.end === 0 ? 1 : 0, side })));
	const approaches: Approach[] = [
		...node.links.map((cable): Approach => ({ cable, end: node.end, side: inward })),
		...leads(node.right, outward),
		...leads(node.left, "left"),
		...node.loops.flatMap((cable): Approach[] => [
			{ cable, end: 0, side: outward },
			{ cable, end: 1, side: outward },
		]),
	];
	const shown = node.elsewhere === undefined ? stock : withoutPartsOf(drawing.circuit, stock, node.elsewhere);
	return { ...drawStock(drawing, shown, approaches), loops: node.loops, end: node.end };
}

/** A panel without the breakers whose cables are drawn on another sheet, without those breakers' own tails, and without what splices them. */
function withoutPartsOf(circuit: Circuit, stock: Stock, elsewhere: readonly Cable[]): Stock {
	const partAt = (point: number | undefined): string | undefined => {
		const found = point === undefined ? undefined : circuit.points[point];
		return found?.kind === "terminal" ? found.part : undefined;
	};
	const isTail = (point: number | undefined): boolean => {
		const found = point === undefined ? undefined : circuit.points[point];
		return found?.kind === "terminal" && found.clamp === "lead";
	};
	const names = new Set<string>();
	const unused = splicesOf(circuit, stock, elsewhere);
	const isUnused = ({ ends }: Conductor): boolean => ends.some(({ point }) => unused.has(point ?? -1));
	const inner = unused.size === 0 ? stock.inner : stock.inner.filter((conductor) => !isUnused(conductor));
	const leading = elsewhere.flatMap(({ conductors }) => conductors.flatMap((index) => circuit.conductors[index] ?? []));
	if (unused.size > 0) leading.push(...stock.inner.filter(isUnused));
	for (const { ends } of leading)
		for (const { point } of ends) if (sideOf(circuit, point ?? -1) !== "line") names.add(partAt(point) ?? "");
	// A breaker that a jumper leads to stays, for the jumper is drawn.
	for (const { ends } of inner) for (const { point } of ends) if (!isTail(point)) names.delete(partAt(point) ?? "");
	const isGone = (part: Stock["parts"][number]): boolean =>
		part.face.traits.includes("breaker") && names.has(part.name);
	const gone = new Set(stock.parts.filter(isGone).map((part) => part.name));
	return {
		...stock,
		parts: stock.parts.filter((part) => !gone.has(part.name)),
		splices: stock.splices.filter(({ index }) => !unused.has(index)),
		inner: inner.filter(({ ends }) => !ends.some(({ point }) => gone.has(partAt(point) ?? ""))),
	};
}

/** The splices of a panel that only cables drawn on another sheet lead to. */
function splicesOf(circuit: Circuit, { splices, meetings }: Stock, elsewhere: readonly Cable[]): ReadonlySet<number> {
	const found = new Set<number>();
	if (splices.length === 0) return found;
	const own = new Set(splices.map(({ index }) => index));
	const endsOf = (cable: Cable): number[] =>
		cable.conductors.flatMap(
			(index) => circuit.conductors[index]?.ends.flatMap(({ point = -1 }) => (own.has(point) ? [point] : [])) ?? [],
		);
	for (const cable of elsewhere) for (const point of endsOf(cable)) found.add(point);
	for (const { cable } of meetings)
		if (!elsewhere.includes(cable)) for (const point of endsOf(cable)) found.delete(point);
	return found;
}

/** A box with its cables approaching as told. */
export function drawStock(
	drawing: BoxDrawing,
	stock: Stock,
	approaches: readonly Approach[],
): Omit<SheetBox, "right" | "left" | "loops" | "end"> {
	const content = fillBox(drawing.circuit, stock, approaches, drawing.strands);
	const interior = drawInterior(content, drawing.lit, drawing.memo);
	return {
		name: stock.enclosure.name,
		width: interior.width,
		height: interior.height,
		marks: interior.marks,
		glands: new Map(
			[...content.left, ...content.right].map(({ cable, end }, index) => [
				endKey(cable, end),
				certain(interior.glands[index], "a gland"),
			]),
		),
		interior,
	};
}

/** A flag where a cable goes on on another sheet: what is there, and which sheet it is. */
export function drawFlag(
	drawing: BoxDrawing,
	node: FeedNode,
	outward: "left" | "right",
): Omit<SheetBox, "right" | "left"> {
	const name = node.flagTo ?? "";
	// A cable is named from where power comes: its far end is the way power goes.
	const isSupplied = node.end === 1;
	const lines = [`${isSupplied ? "to" : "from"} ${name}`, `sheet ${drawing.sheetOf(name)}`];
	const width = Math.ceil(Math.max(...lines.map((line) => textWidth(line, { size: type.tag, bold: true })))) + 42;
	const height = 44 + (node.links.length - 1) * flagPitch;
	const tip = 14;
	const [back, front] = outward === "right" ? [0, width] : [width, 0];
	const inward = outward === "right" ? -1 : 1;
	// Pointed the way power goes: out of the sheet, or notched and into it.
	const [shoulder, middle] = isSupplied ? [front + inward * tip, front] : [front, front + inward * tip];
	const of = `flag ${name}`;
	const textX = outward === "right" ? 18 : width - 18;
	const anchor = outward === "right" ? "start" : "end";
	return {
		name,
		width,
		height,
		marks: [
			{
				kind: "line",
				as: "rule",
				of,
				points: [
					{ x: back, y: 0 },
					{ x: shoulder, y: 0 },
					{ x: middle, y: height / 2 },
					{ x: shoulder, y: height },
					{ x: back, y: height },
					{ x: back, y: 0 },
				],
				stroke: "ink",
				strokeWidth: 1.3,
			},
			{
				kind: "text",
				x: textX,
				y: height / 2 - 3,
				text: lines[0] ?? "",
				size: type.tag,
				bold: true,
				anchor,
				paint: "ink",
				of,
			},
			{ kind: "text", x: textX, y: height / 2 + 12, text: lines[1] ?? "", size: type.note, anchor, paint: "soft", of },
		],
		glands: new Map(
			node.links.map((cable, index) => [endKey(cable, node.end), { x: back, y: 22 + index * flagPitch }]),
		),
		flagTo: name,
		loops: [],
		end: node.end,
	};
}

/** Between several cables that lead to one flag. */
const flagPitch = 96;
