// The plain layout of a net: a column for each step from where power comes, cables in the channels between columns and below all.
import { certain } from "../../base/certain.ts";
import type { Cable } from "../../circuit/circuit.ts";
import type { XY } from "../scene.ts";
import { laneGap, returnChannel, trackLead, trackPitch } from "./dimensions.ts";
import type { PlacedBox, PlacedCable } from "./lanes.ts";
import { boxAtEnd, glandAt, inReadingOrder, type Net } from "./net.ts";
import { straighten } from "./places.ts";
import { endKey, type SheetBox } from "./sheet-box.ts";
import { tagRoom } from "./tags.ts";
import type { LaneLayout } from "./tree-layout.ts";

/** The boxes of a net in columns. Every cable has tracks of its own; one that does not lead to the next column runs below all boxes. */
export function layOutColumns(net: Net): LaneLayout {
	const columnOf = assignColumns(net);
	const columns: SheetBox[][] = [];
	for (const box of net.boxes) {
		const column = certain(columnOf.get(box), "a box's column");
		while (columns.length <= column) columns.push([]);
		columns[column]?.push(box);
	}
	const ways = net.cables.map((cable): Way => {
		const [from, to] = [boxAtEnd(net.boxOf, cable, 0), boxAtEnd(net.boxOf, cable, 1)];
		const leaves = certain(columnOf.get(from), "a column") + 1;
		const enters = certain(columnOf.get(to), "a column");
		return { cable, from, to, leaves, enters };
	});
	const topOf = new Map<SheetBox, number>();
	for (const column of columns) {
		let y = 0;
		for (const box of column) {
			topOf.set(box, y);
			y += box.height + laneGap;
		}
	}
	const channels = shareChannels(ways, columns.length, ({ cable, from, to }, end) => {
		const box = end === 0 ? from : to;
		return certain(topOf.get(box), "a box's height") + certain(box.glands.get(endKey(cable, end)), "a cable's gland").y;
	});
	const placeOf = new Map<SheetBox, PlacedBox>();
	const starts: number[] = [];
	let x = 0;
	for (const [index, column] of columns.entries()) {
		starts.push(x);
		x += widthOf(channels[index]);
		for (const box of column) placeOf.set(box, { box, x, y: topOf.get(box) ?? 0 });
		x += Math.max(0, ...column.map((box) => box.width));
	}
	starts.push(x);
	const trackX = (way: Way, channel: number): number =>
		certain(starts[channel], "a channel") +
		trackLead +
		certain(channels[channel]?.trackOf.get(way), "a track") * trackPitch;
	const floor = Math.max(0, ...[...placeOf.values()].map(({ box, y }) => y + box.height)) + returnChannel;
	let below = 0;
	const cables = ways.map((way): PlacedCable => {
		const start = glandAt(certain(placeOf.get(way.from), "a place"), way.cable, 0);
		const end = glandAt(certain(placeOf.get(way.to), "a place"), way.cable, 1);
		const [out, into] = [trackX(way, way.leaves), trackX(way, way.enters)];
		const turns: XY[] =
			way.leaves === way.enters
				? [
						{ x: out, y: start.y },
						{ x: out, y: end.y },
					]
				: detour(start, end, out, into, floor + below++ * trackPitch);
		return { cable: way.cable, points: straighten([start, ...turns, end]), from: way.from, to: way.to };
	});
	return { boxes: inReadingOrder([...placeOf.values()]), cables };
}

interface Way {
	readonly cable: Cable;
	readonly from: SheetBox;
	readonly to: SheetBox;
	/** The channels it leaves into and enters from: each lies left of the column of its number. */
	readonly leaves: number;
	readonly enters: number;
}
interface Channel {
	readonly trackOf: ReadonlyMap<Way, number>;
	/** The length of cable that the widest tag in it needs. */
	readonly room: number;
}

/** How many cables power passes to each box; a cable that leads back to a box passed before counts nothing. */
function assignColumns({ boxes, cables, boxOf }: Net): Map<SheetBox, number> {
	const onward = new Map<SheetBox, SheetBox[]>();
	const fed = new Set<SheetBox>();
	for (const cable of cables) {
		const [from, to] = [boxAtEnd(boxOf, cable, 0), boxAtEnd(boxOf, cable, 1)];
		if (from === to) continue;
		onward.set(from, [...(onward.get(from) ?? []), to]);
		fed.add(to);
	}
	const columnOf = new Map<SheetBox, number>();
	// Boxes that nothing feeds come first; what only feeds itself in a ring starts anywhere.
	for (const start of [...boxes.filter((box) => !fed.has(box)), ...boxes]) {
		if (columnOf.has(start)) continue;
		columnOf.set(start, 0);
		const waiting = [start];
		for (const box of waiting)
			for (const next of onward.get(box) ?? []) {
				if (columnOf.has(next)) continue;
				columnOf.set(next, (columnOf.get(box) ?? 0) + 1);
				waiting.push(next);
			}
	}
	return columnOf;
}

/**
 * A track for each cable in each channel it uses. Of cables that go down the lowest, of those that go up the highest stands next to
 * where they leave: so few cross, and none comes in on the height at which another has left.
 */
function shareChannels(ways: readonly Way[], columns: number, yAt: (way: Way, end: 0 | 1) => number): Channel[] {
	const isDown = (way: Way): boolean => yAt(way, 1) >= yAt(way, 0);
	const inOrder = [
		...ways.filter(isDown).sort((one, other) => yAt(other, 1) - yAt(one, 1)),
		...ways.filter((way) => !isDown(way)).sort((one, other) => yAt(one, 1) - yAt(other, 1)),
	];
	return Array.from({ length: columns + 1 }, (_, channel) => {
		const own = inOrder.filter(({ leaves, enters }) => leaves === channel || enters === channel);
		return {
			trackOf: new Map(own.map((way, track) => [way, track])),
			room: Math.max(0, ...own.map(({ cable }) => tagRoom(cable))),
		};
	});
}

function widthOf(channel: Channel | undefined): number {
	if (channel === undefined || channel.trackOf.size === 0) return 0;
	return 2 * trackLead + (channel.trackOf.size - 1) * trackPitch + channel.room;
}

/** Down to below all boxes, along, and up again. */
function detour(start: XY, end: XY, out: number, into: number, y: number): XY[] {
	return [
		{ x: out, y: start.y },
		{ x: out, y },
		{ x: into, y },
		{ x: into, y: end.y },
	];
}
