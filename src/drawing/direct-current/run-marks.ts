// A run as marks: a conductor in its colour, strands in their sheath that fan out to the terminals, a strap; a letter code at every end.
import type { Circuit, Conductor } from "../../circuit/circuit.ts";
import type { JacketMark, Mark, TextMark, WireMark, XY } from "../scene.ts";
import { glandReach } from "../wiring/box-marks.ts";
import { jacketColour, shiftWay } from "../wiring/cable-marks.ts";
import { codeAtEnd } from "../wiring/codes.ts";
import { jacketRadius, type } from "../wiring/dimensions.ts";
import type { PlacedDock, PlacedRun } from "./lay-out-net.ts";
import { runWidth, singleWidth, strandPitch, strandWidth, strapWidth } from "./run-widths.ts";

/** Everything of a placed run but its tag. */
export function runMarks(placed: PlacedRun, circuit: Circuit, lit: ReadonlyMap<string, number>): Mark[] {
	const { run } = placed;
	if (run.sort === "strap") return [strapMark(placed)];
	if (run.sort === "sheathed") return sheathedMarks(placed, circuit, lit);
	const [conductor] = run.conductors;
	return conductor === undefined ? [] : singleMarks(placed, conductor, lit);
}

function strapMark({ run, points, docks: [from, to] }: PlacedRun): Mark {
	const way = [...from.tips.slice(0, 1), ...points, ...to.tips.slice(0, 1)];
	return { kind: "line", as: "bus", of: run.key, points: way, stroke: "dark", strokeWidth: strapWidth };
}

function singleMarks(placed: PlacedRun, conductor: Conductor, lit: ReadonlyMap<string, number>): Mark[] {
	const { start, points, docks } = placed;
	const [from, to] = docks;
	const wire: WireMark = {
		kind: "wire",
		of: conductor.name,
		points: withTips(points, from.tips[0], to.tips[0]),
		colour: conductor.colour,
		width: singleWidth(conductor),
		radius: singleRadius,
		run: "run",
		...litBy(conductor, lit),
	};
	const clear = wire.width / 2 + (wire.finding === undefined ? 0 : litClearance);
	const codes = docks.flatMap((dock, index): Mark[] => {
		const end = index === 0 ? start : start === 0 ? 1 : 0;
		// The end at a sheath is none: there the conductor only goes under.
		if (isSheathEnd(placed, index)) return [];
		return dock.hasGland ? [] : [codeMark(conductor, end, dock, dock.at.y, clear)];
	});
	return [wire, ...codes];
}

function sheathedMarks(placed: PlacedRun, circuit: Circuit, lit: ReadonlyMap<string, number>): Mark[] {
	const { run, start, points, docks } = placed;
	const [from, to] = docks;
	const way = trim(points, from, to);
	const pitch = strandPitch(run.conductors);
	const jacket: JacketMark = {
		kind: "jacket",
		of: run.key,
		points: way,
		width: runWidth(run),
		radius: jacketRadius,
		colour: jacketColour(circuit, run.conductors[0]?.gauge.label, run.cable?.flexible === true),
	};
	// Upside down where the end on the right has its rows the other way round.
	const marks: Mark[] = [jacket];
	for (const [index, conductor] of run.conductors.entries()) {
		const aside = (index - (run.conductors.length - 1) / 2) * pitch;
		const strand = shiftWay(way, aside);
		const [first, last] = [from.tips[index], to.tips[index]];
		const finding = litBy(conductor, lit);
		marks.push({
			kind: "wire",
			of: conductor.name,
			points: [...fanOut(first, from, strand[0]), ...strand, ...fanOut(last, to, strand.at(-1)).toReversed()],
			colour: conductor.colour,
			width: strandWidth(conductor),
			radius: strandRadius,
			run: "strand",
			...finding,
		});
	}
	const collars = docks.flatMap((dock, index): Mark[] => {
		const at = index === 0 ? way[0] : way.at(-1);
		return dock.hasGland || at === undefined ? [] : [collarMark(run.key, at, runWidth(run))];
	});
	const codes = docks.flatMap((dock, index): Mark[] => {
		if (dock.hasGland || dock.tips.length < 2 || isSheathEnd(placed, index)) return [];
		const end = index === 0 ? start : start === 0 ? 1 : 0;
		return run.conductors.map((conductor, at) => {
			const clear = strandWidth(conductor) / 2 + (lit.has(conductor.name) ? litClearance : 0);
			return codeMark(conductor, end, dock, dock.tips[at]?.y ?? dock.at.y, clear);
		});
	});
	return [...marks, ...collars, ...codes];
}

function isSheathEnd({ run, start }: PlacedRun, index: number): boolean {
	const end = index === 0 ? start : start === 0 ? 1 : 0;
	return run.ends[end].startsWith("sheath ");
}

/** From a tip to the wall, along its row, then slanting to where its strand starts. */
function fanOut(tip: XY | undefined, dock: PlacedDock, strand: XY | undefined): XY[] {
	if (tip === undefined || strand === undefined || dock.hasGland) return [];
	const out = dock.side === "left" ? -1 : 1;
	const lead = { x: dock.at.x + out * (stripped - slant), y: tip.y };
	return tip.x === lead.x ? [tip] : [tip, lead];
}

/** The sheath is stripped before each wall; where there is a gland it runs up to it. */
function trim(points: readonly XY[], from: PlacedDock, to: PlacedDock): XY[] {
	return points.map((point, index) => {
		const dock = index === 0 ? from : index === points.length - 1 ? to : undefined;
		if (dock === undefined) return point;
		const out = dock.side === "left" ? -1 : 1;
		return { x: point.x + out * (dock.hasGland ? glandReach : stripped), y: point.y };
	});
}

/** The end of a sheath. */
function collarMark(of: string, { x, y }: XY, width: number): Mark {
	const height = width + 4;
	return {
		kind: "rectangle",
		as: "gland",
		of,
		x: x - 2.5,
		y: y - height / 2,
		width: 5,
		height,
		radius: 1.5,
		fill: "gland",
		stroke: "ink",
		strokeWidth: 1,
	};
}

/** A code below the conductor, just outside the wall: its tag stands above. */
function codeMark(conductor: Conductor, end: 0 | 1, dock: PlacedDock, y: number, clear: number): TextMark {
	const isLeft = dock.side === "left";
	return {
		kind: "text",
		text: codeAtEnd(conductor, end),
		x: dock.at.x + (isLeft ? -codeOut : codeOut),
		y: y + clear + 9.4,
		size: type.letter,
		anchor: isLeft ? "end" : "start",
		paint: "ink",
		of: conductor.name,
	};
}

function withTips(points: readonly XY[], first: XY | undefined, last: XY | undefined): XY[] {
	const same = (one: XY | undefined, other: XY | undefined): boolean => one?.x === other?.x && one?.y === other?.y;
	const inner = points.slice(
		same(first, points[0]) || first === undefined ? 0 : 1,
		same(last, points.at(-1)) || last === undefined ? undefined : -1,
	);
	return [
		...(same(first, points[0]) || first === undefined ? [] : [first]),
		...inner,
		...(same(last, points.at(-1)) || last === undefined ? [] : [last]),
	];
}

function litBy({ name }: Conductor, lit: ReadonlyMap<string, number>): { readonly finding?: number } {
	const finding = lit.get(name);
	return finding === undefined ? {} : { finding };
}

const singleRadius = 9;
const strandRadius = 6;
/** How far from a wall a sheath ends, and over what length of that its strands slant. */
const stripped = 35;
const slant = 9;
/** From a wall to the code of a conductor. */
const codeOut = 7;
/** A conductor that a finding lights up has a band with ticks. */
const litClearance = 3.4;
