// What is in each enclosure of a circuit, and how its conductors meet it: from walls, on points, or free.
import type { Cable, Circuit, Conductor, Enclosure, End, Link, Part, Splice } from "../../circuit/circuit.ts";
import { type Shows, showsAll } from "../system-parts.ts";
import { sortByHead } from "./panel-groups.ts";

/** Everything that belongs to one enclosure, whatever sheet it is drawn on. */
export interface Stock {
	readonly enclosure: Enclosure;
	readonly parts: Part[];
	readonly splices: Splice[];
	/** Conductors that never leave it: pigtails and jumpers. */
	readonly inner: Conductor[];
	/** Ways through its parts. */
	readonly links: Link[];
	/** The cables that meet it, with the end of theirs that does. */
	readonly meetings: CableEnd[];
}
/** One end of a cable. */
export interface CableEnd {
	readonly cable: Cable;
	readonly end: 0 | 1;
}

/** The stock of each enclosure, by its name, in the order of the circuit: of what `shows` says is drawn. */
export function takeStock(circuit: Circuit, shows: Shows = showsAll): Map<string, Stock> {
	const stocks = new Map<string, Stock>();
	for (const enclosure of circuit.enclosures)
		stocks.set(enclosure.name, { enclosure, parts: [], splices: [], inner: [], links: [], meetings: [] });
	for (const part of circuit.parts) stocks.get(part.enclosure.name)?.parts.push(part);
	for (const point of circuit.points)
		if (point.kind === "splice" && shows.splice(point.index)) stocks.get(point.enclosure.name)?.splices.push(point);
	for (const conductor of circuit.conductors)
		if (conductor.cable === undefined && shows.conductor(conductor.index))
			stocks.get(conductor.ends[0].enclosure.name)?.inner.push(conductor);
	for (const link of circuit.links) {
		const part = circuit.partByName.get(link.part);
		if (part !== undefined) stocks.get(part.enclosure.name)?.links.push(link);
	}
	for (const cable of circuit.cables) {
		stocks.get(cable.from.name)?.meetings.push({ cable, end: 0 });
		stocks.get(cable.to.name)?.meetings.push({ cable, end: 1 });
	}
	for (const stock of stocks.values())
		if (stock.enclosure.sort === "panel")
			stock.parts.splice(0, stock.parts.length, ...sortByHead(circuit, stock.parts, stock.links));
	return stocks;
}

/** An enclosure as it is drawn: which cables enter where, and each conductor's two ends inside. */
export interface BoxContent {
	readonly circuit: Circuit;
	readonly enclosure: Enclosure;
	readonly left: readonly Entry[];
	readonly right: readonly Entry[];
	readonly devices: readonly Part[];
	/** Devices that are not on yet. */
	readonly coming: readonly Part[];
	readonly splices: readonly Splice[];
	readonly links: readonly Link[];
	readonly wires: readonly Wire[];
	/** The wires on each point, in the order of `wires`. */
	readonly landings: ReadonlyMap<number, readonly Wire[]>;
}
/** A cable where it passes a wall, its wires in strand order from top to bottom. */
export interface Entry extends CableEnd {
	readonly side: "left" | "right";
	readonly wires: readonly Wire[];
}
/** The stretch of one conductor inside one enclosure. */
export interface Wire {
	readonly conductor: Conductor;
	/** A core starts at the wall; what never leaves starts at its first end. */
	readonly from: Tie;
	readonly to: Tie;
	/** Which of the conductor's ends `to` is. */
	readonly end: 0 | 1;
}
/** Where a stretch begins or ends. */
export type Tie =
	| { readonly at: "wall"; readonly side: "left" | "right" }
	| { readonly at: "point"; readonly point: number }
	| { readonly at: "free"; readonly state: "loose" | "capped" };

/** A cable end on the side of the wall it is to enter by. */
export interface Approach extends CableEnd {
	readonly side: "left" | "right";
}

/** The content of an enclosure whose cables approach in the given order; `strands` tells each cable's conductors in strand order. */
export function fillBox(
	circuit: Circuit,
	stock: Stock,
	approaches: readonly Approach[],
	strands: (cable: Cable) => readonly Conductor[],
): BoxContent {
	const entries = approaches.map((approach): Entry => {
		const wires = strands(approach.cable).map(
			(conductor): Wire => ({
				conductor,
				from: { at: "wall", side: approach.side },
				to: tieOf(conductor.ends[approach.end]),
				end: approach.end,
			}),
		);
		return { cable: approach.cable, end: approach.end, side: approach.side, wires };
	});
	const inner = stock.inner.map(
		(conductor): Wire => ({ conductor, from: tieOf(conductor.ends[0]), to: tieOf(conductor.ends[1]), end: 1 }),
	);
	const wires = [...entries.flatMap((entry) => entry.wires), ...inner];
	const landings = new Map<number, Wire[]>();
	for (const wire of wires)
		for (const tie of [wire.from, wire.to]) {
			if (tie.at !== "point") continue;
			const there = landings.get(tie.point);
			if (there === undefined) landings.set(tie.point, [wire]);
			else there.push(wire);
		}
	return {
		circuit,
		enclosure: stock.enclosure,
		left: entries.filter((entry) => entry.side === "left"),
		right: entries.filter((entry) => entry.side === "right"),
		devices: stock.parts.filter((part) => part.points.length > 0),
		coming: stock.parts.filter((part) => part.coming),
		splices: stock.splices,
		links: stock.links,
		wires,
		landings,
	};
}

/** Every name that is drawn in a box, in an order that boxes of one shape share. */
export function namesOf({ circuit, enclosure, devices, coming, left, right, wires, splices }: BoxContent): string[] {
	const points = [...devices.flatMap((device) => device.points), ...splices.map((splice) => splice.index)];
	if (enclosure.body !== undefined) points.push(enclosure.body);
	return [
		enclosure.name,
		...[...devices, ...coming].map((device) => device.name),
		...points.map((point) => circuit.points[point]?.name ?? ""),
		...wires.map((wire) => wire.conductor.name),
		...[...left, ...right].map((entry) => entry.cable.tag),
	];
}

/** The point a tie is on, or undefined. */
export function pointOf(tie: Tie): number | undefined {
	return tie.at === "point" ? tie.point : undefined;
}

/** The other end of a wire that is on `point`. */
export function farTie(wire: Wire, point: number): Tie {
	return pointOf(wire.from) === point ? wire.to : wire.from;
}

/** Whether a wire comes through a wall. */
export function isCore(wire: Wire): boolean {
	return wire.from.at === "wall";
}

function tieOf(end: End): Tie {
	if (end.point !== undefined) return { at: "point", point: end.point };
	return { at: "free", state: end.state === "capped" ? "capped" : "loose" };
}
