// Paper sizes in units of 0.25 mm, landscape, and the margins inside them.
import type { Region } from "../../kinds/kind.ts";

/** A sheet of paper lying on its long side. */
export interface Paper {
	readonly name: string;
	readonly width: number;
	readonly height: number;
}

/** Units between the edge of the paper and the frame: 10 mm (ISO 5457, read in a secondary text). */
export const margin = 40;

/** Units between the frame and what is drawn inside it. */
export const padding = 26;

/** The paper of that name, whatever the region; undefined for none. */
export function paperNamed(name: string): Paper | undefined {
	return [...iso, ...ansi].find((paper) => paper.name.toLowerCase() === name.toLowerCase());
}

/** The papers of a region, smallest first. */
export function papersOf(region: Region): readonly Paper[] {
	return byRegion[region];
}

/** The papers of the same series that are larger, smallest first. */
export function papersAbove(paper: Paper): readonly Paper[] {
	const series = iso.includes(paper) ? iso : ansi;
	return series.slice(series.indexOf(paper) + 1);
}

/** A sheet of a size of its own, which its name tells: `custom, 420 x 300 mm`; in inches where these are used. */
export function customPaper(width: number, height: number, region: Region): Paper {
	const sides = [width, height].map((side) => (region === "us" ? (side / inch).toFixed(1) : String(side / millimetre)));
	return { name: `custom, ${sides.join(" x ")} ${region === "us" ? "in" : "mm"}`, width, height };
}

function millimetres(name: string, width: number, height: number): Paper {
	return { name, width: width * millimetre, height: height * millimetre };
}

function inches(name: string, width: number, height: number): Paper {
	return { name, width: width * inch, height: height * inch };
}

/** In units. */
const millimetre = 4;
const inch = 101.6;

/** ISO 216. */
const iso: readonly Paper[] = [
	millimetres("A4", 297, 210),
	millimetres("A3", 420, 297),
	millimetres("A2", 594, 420),
	millimetres("A1", 841, 594),
	millimetres("A0", 1189, 841),
];

/** ANSI Y14.1 A to E; the first two go by their trade names. */
const ansi: readonly Paper[] = [
	inches("Letter", 11, 8.5),
	inches("Tabloid", 17, 11),
	inches("ANSI C", 22, 17),
	inches("ANSI D", 34, 22),
	inches("ANSI E", 44, 34),
];

const byRegion: Readonly<Record<Region, readonly Paper[]>> = { us: ansi, iec: iso };
