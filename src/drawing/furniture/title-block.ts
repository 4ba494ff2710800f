// The title block: fields of our own after ISO 7200 (read in a secondary table). No date and no name stands in it unless given.
import type { Group, Mark, XY } from "../scene.ts";
import { roomFor, shortenText, smallestText, textWidth, wrapText } from "../text-metrics.ts";
import type { Fact, SheetContent } from "./sheet-content.ts";

/** A title block set for a width. */
export interface TitleBlock {
	readonly width: number;
	readonly height: number;
	/** `paper` is only known once the sheet is chosen. */
	readonly groupAt: (corner: XY, paper: string) => Group;
}

/** The title block of a sheet in `width` units; at most 720 (180 mm). */
export function titleBlock(content: SheetContent, width: number): TitleBlock {
	const side = 156;
	const project = projectLines(content.project, width - side - 2 * inset);
	const rows = factRows(content.facts, width);
	const head = 26 + project.length * 18 + 22;
	const height = head + rows.length * rowHeight;
	return {
		width,
		height,
		groupAt: (corner, paper) => ({
			name: "title block",
			sort: "furniture",
			label: "Title block",
			marks: [
				box(corner, width, height),
				...headMarks(content, project, corner, width, head, side, paper),
				...rows.flatMap((row, index) => rowMarks(row, { x: corner.x, y: corner.y + head + index * rowHeight }, width)),
			],
		}),
	};
}

const inset = 10;
const rowHeight = 36;
const nameStyle = { size: smallestText };
const valueStyle = { size: 11.5 };
const projectStyle = { size: 15, bold: true };

function headMarks(
	content: SheetContent,
	project: readonly string[],
	corner: XY,
	width: number,
	head: number,
	side: number,
	paper: string,
): Mark[] {
	const wall = corner.x + width - side;
	const middle = corner.y + head / 2;
	return [
		rule({ x: wall, y: corner.y }, { x: wall, y: corner.y + head }),
		rule({ x: wall, y: middle }, { x: corner.x + width, y: middle }),
		name("Project", { x: corner.x + inset, y: corner.y + 15 }),
		...project.map(
			(text, index): Mark => ({
				...value(text, { x: corner.x + inset, y: corner.y + 33 + index * 18 }),
				...projectStyle,
			}),
		),
		{
			...value(shortenText(content.title, { size: 12.5 }, width - side - 2 * inset), {
				x: corner.x + inset,
				y: corner.y + 33 + project.length * 18,
			}),
			size: 12.5,
		},
		name("Sheet", { x: wall + inset, y: corner.y + 15 }),
		{ ...value(`${content.number} of ${content.of}`, { x: wall + inset, y: corner.y + 29 }), bold: true },
		name("Paper (not to scale)", { x: wall + inset, y: middle + 13.5 }),
		value(shortenText(paper, valueStyle, side - 2 * inset), { x: wall + inset, y: middle + 27 }),
	];
}

/** The plan's title in two lines at most; where it is longer, an ellipsis says so. */
function projectLines(project: string, width: number): string[] {
	const [first = "", ...rest] = wrapText(project, projectStyle, width);
	if (rest.length < 2) return [first, ...rest];
	// Without the space, a word that is broken over both lines stays one.
	const [second = "", third = ""] = rest;
	const between = project.includes(`${second}${third}`) ? "" : " ";
	return [first, shortenText(`${second}${between}${third}`, projectStyle, width)];
}

/** Fields in rows as wide as the block, each at least as wide as what it holds. */
function factRows(facts: readonly Fact[], width: number): Fact[][] {
	const rows: Fact[][] = [];
	let room = 0;
	for (const fact of facts) {
		const need = Math.min(width, factWidth(fact));
		const row = rows.at(-1);
		if (row === undefined || need > room) {
			rows.push([fact]);
			room = width - need;
		} else {
			row.push(fact);
			room -= need;
		}
	}
	return rows;
}

function factWidth(fact: Fact): number {
	// A field without a value is left for a hand to write in.
	const written = fact.value === "" ? 90 : roomFor(fact.value, valueStyle);
	return Math.max(textWidth(fact.name, nameStyle), written) + 2 * inset;
}

function rowMarks(row: readonly Fact[], corner: XY, width: number): Mark[] {
	const needs = row.map(factWidth);
	const spare = Math.max(0, width - needs.reduce((sum, need) => sum + need, 0)) / row.length;
	const marks: Mark[] = [rule(corner, { x: corner.x + width, y: corner.y })];
	let x = corner.x;
	row.forEach((fact, index) => {
		const wide = Math.min((needs[index] ?? 0) + spare, width);
		if (index > 0) marks.push(rule({ x, y: corner.y }, { x, y: corner.y + rowHeight }));
		marks.push(name(shortenText(fact.name, nameStyle, wide - 2 * inset), { x: x + inset, y: corner.y + 14 }));
		if (fact.value !== "")
			marks.push(value(shortenText(fact.value, valueStyle, wide - 2 * inset), { x: x + inset, y: corner.y + 28.5 }));
		x += wide;
	});
	return marks;
}

function box(corner: XY, width: number, height: number): Mark {
	return { kind: "rectangle", as: "frame", ...corner, width, height, stroke: "ink", strokeWidth: 1.6, fill: "paper" };
}

function rule(from: XY, to: XY): Mark {
	return { kind: "line", as: "rule", points: [from, to], stroke: "ink", strokeWidth: 1 };
}

function name(text: string, at: XY) {
	return { kind: "text", text, ...at, ...nameStyle, anchor: "start", paint: "soft" } as const;
}

function value(text: string, at: XY) {
	return { kind: "text", text, ...at, ...valueStyle, anchor: "start", paint: "ink" } as const;
}
