// The lists beside a drawing: legend, notes, findings and caution, each as a block for a given width.
import type { Level } from "../../base/finding.ts";
import { findSymbol } from "../../symbols/index.ts";
import type { Mark, XY } from "../scene.ts";
import { type TextStyle, textWidth, wrapText } from "../text-metrics.ts";
import { badgeMarks, badgeRadius } from "./badge.ts";
import type { Block, Item } from "./block.ts";
import type { LegendEntry, SheetContent, SheetFinding } from "./sheet-content.ts";

/** The blocks a sheet needs, in reading order; lists without entries are left out. */
export function blocksFor(content: SheetContent, widths: BlockWidths): Block[] {
	const blocks: Block[] = [
		{
			name: "findings",
			label: "Findings",
			heading: "FINDINGS",
			width: widths.findings,
			items: content.findings.map((finding) => findingItem(finding, widths.findings)),
		},
		{
			name: "legend",
			label: "Legend",
			heading: "LEGEND",
			width: widths.legend,
			items: content.legend.map((entry) => legendItem(entry, widths.legend)),
		},
		{
			name: "notes",
			label: "Notes",
			heading: "NOTES",
			width: widths.notes,
			items: content.notes.map((note, index) => noteItem(note, index + 1, widths.notes)),
		},
	];
	return blocks.filter((block) => block.items.length > 0);
}

/** Widths of the columns each list is set in, in units. */
export interface BlockWidths {
	readonly findings: number;
	readonly legend: number;
	readonly notes: number;
}

const style: TextStyle = { size: 11 };
const linePitch = 14.5;
const sampleWidth = 34;
const codeWidth = 38;
const symbolHeight = 32;

function legendItem(entry: LegendEntry, width: number): Item {
	const code = entry.code === "" ? 0 : Math.max(codeWidth, textWidth(entry.code, { ...style, bold: true }) + 9);
	const indent = sampleWidth + 10 + code;
	const lines = wrapText(entry.text, style, width - indent);
	const text = Math.max(1, lines.length) * linePitch;
	const height = Math.max(entry.sample.kind === "symbol" ? symbolHeight : 0, text) + 4;
	return {
		height,
		marksAt: ({ x, y }) => {
			const top = y + (height - 4 - text) / 2;
			return [
				...sampleMarks(entry, { x, y: y + (height - 4) / 2 + 1 }),
				...(entry.code === "" ? [] : [line(entry.code, { x: x + sampleWidth + 10, y: top }, true)]),
				...lines.map((words, index) => line(words, { x: x + indent, y: top + index * linePitch }, false)),
			];
		},
	};
}

function sampleMarks({ sample }: LegendEntry, at: XY): Mark[] {
	switch (sample.kind) {
		case "conductor":
			return [
				{
					kind: "wire",
					of: `legend ${sample.colour}`,
					points: [at, { x: at.x + sampleWidth, y: at.y }],
					colour: sample.colour,
					width: 3.4,
					radius: 0,
					run: "strand",
				},
			];
		case "bar":
			// The paint of the band around a lit way stands for the way itself, drawn as the drawing draws it.
			if (sample.paint === "fault-soft") return [litSample(at)];
			return [
				{
					kind: "rectangle",
					as: "plate",
					x: at.x,
					y: at.y - 5,
					width: sampleWidth,
					height: 10,
					fill: sample.paint,
					stroke: "ink",
					strokeWidth: 1,
				},
			];
		case "symbol":
			return [symbolSample(sample.symbol, at)];
	}
}

function litSample(at: XY): Mark {
	return {
		kind: "wire",
		of: "legend way of a finding",
		points: [
			{ x: at.x + 2, y: at.y },
			{ x: at.x + sampleWidth - 2, y: at.y },
		],
		colour: "black",
		width: 3.4,
		radius: 0,
		run: "strand",
		finding: 0,
	};
}

/** The symbol in the middle of the sample, as large as fits. */
function symbolSample(symbol: string, at: XY): Mark {
	const box = findSymbol(symbol)?.box ?? { x: 0, y: 0, width: 1, height: 1 };
	const scale = Math.min(0.8, sampleWidth / box.width, symbolHeight / box.height);
	return {
		kind: "symbol",
		symbol,
		x: at.x + sampleWidth / 2 - (box.x + box.width / 2) * scale,
		y: at.y - (box.y + box.height / 2) * scale,
		scale,
		paint: "ink",
	};
}

function noteItem(note: string, number: number, width: number): Item {
	const lines = wrapText(note, style, width - 20);
	return {
		height: lines.length * linePitch + 4,
		marksAt: (corner) => [
			line(`${number}`, corner, true),
			...lines.map((text, index) => line(text, { x: corner.x + 20, y: corner.y + index * linePitch }, false)),
		],
	};
}

function findingItem({ number, level, title, accepted }: SheetFinding, width: number): Item {
	const indent = 2 * badgeRadius + 9;
	const isAccepted = accepted !== undefined;
	const word = isAccepted ? `${levelWords[level]}, accepted:` : `${levelWords[level]}:`;
	const words = isAccepted ? `${title}. Reason: ${accepted}` : title;
	// The word is set bold and runs a little wider than it was wrapped with.
	const [first = "", ...rest] = wrapText(`${word} ${words}`, style, width - indent - 6);
	const opening = textWidth(`${word} `, { ...style, bold: true });
	return {
		height: Math.max((rest.length + 1) * linePitch, 2 * badgeRadius) + 5,
		marksAt: (corner) => [
			...badgeMarks(number, { x: corner.x + badgeRadius + 1, y: corner.y + 8 }, level, isAccepted),
			line(word, { x: corner.x + indent, y: corner.y }, true),
			line(first.slice(word.length + 1), { x: corner.x + indent + opening, y: corner.y }, false),
			...rest.map((text, index) => line(text, { x: corner.x + indent, y: corner.y + (index + 1) * linePitch }, false)),
		],
	};
}

const levelWords: Readonly<Record<Level, string>> = {
	danger: "Danger",
	error: "Error",
	warning: "Warning",
	note: "Note",
};

function line(text: string, corner: XY, bold: boolean): Mark {
	return {
		kind: "text",
		text,
		x: corner.x,
		y: corner.y + 12,
		size: style.size,
		bold,
		anchor: "start",
		paint: "ink",
	};
}
