// Contacts lying down, as they are drawn inside devices on a wiring sheet: line left, load right, rows 24 apart; drawn open where they can be.
import {
	circle,
	dashed,
	face,
	line,
	path,
	rectangle,
	type Shape,
	type SymbolDesign,
	type SymbolPort,
} from "./symbol.ts";

/** Contacts of switches, breakers and disconnects, fuses, and the sensor of a ground-fault device. */
export const contacts: readonly SymbolDesign[] = [
	contact("contact-switch", "Switch contact", blade(0), ["1", "2"]),
	contact("contact-breaker-us", "Breaker contact", arc(0), ["line", "load"]),
	contact("contact-breaker-iec", "Breaker contact", cross(0), ["line", "load"]),
	contact("contact-disconnect", "Disconnect contact", blade(0), ["line", "load"]),
	contact("contact-fuse", "Fuse", [line(-30, 0, 30, 0), rectangle(-14, -6, 28, 12)], ["line", "load"]),
	pair("contact-disconnect-2p", "Disconnect, two poles", [...blade(-12), ...blade(12), dashed(line(0, -17.5, 0, 6))]),
	pair("contact-breaker-2p-us", "Breaker, two poles", [...arc(-12), ...arc(12), dashed(line(0, -20, 0, 3))]),
	pair("contact-breaker-2p-iec", "Breaker, two poles", [...cross(-12), ...cross(12), dashed(line(0, -17.5, 0, 6))]),
	face(
		"contact-switch-3way",
		"Three-way switch, common to one of two travellers",
		[60, 48],
		[...lead(-1, 0), ...lead(1, -12), ...lead(1, 12), line(-9.7, -1, 9.8, -10.9)],
		[port("common", -30, 0, "west"), port("traveller1", 30, -12, "east"), port("traveller2", 30, 12, "east")],
	),
	pair("contact-switch-4way", "Four-way switch, travellers crossed", [
		...[-12, 12].flatMap((y) => [...lead(-1, y), ...lead(1, y)]),
		line(-10.2, -10.2, 10.2, 10.2),
		line(-10.2, 10.2, 10.2, -10.2),
	]),
	face(
		"ground-fault-sensor",
		"Ground-fault sensor",
		[44, 30],
		[
			path("M-20 0A6 12 0 0 0 -8 0A6 12 0 0 0 -20 0Z"),
			line(-8, 0, -2, 0),
			rectangle(-2, -12, 22, 24),
			line(4, -6, 4, 6),
			path("M8 6L12.5 -5L17 6Z"),
		],
	),
];

/** A contact point with its lead to the left (-1) or right (1) edge. */
function lead(side: -1 | 1, y: number): Shape[] {
	return [line(side * 30, y, side * 14.5, y), circle(side * 12, y, 2.5)];
}

/** Two contact points with an open blade. */
function blade(y: number): Shape[] {
	return [...lead(-1, y), ...lead(1, y), line(-9.8, y - 1.1, 10, y - 10)];
}

function arc(y: number): Shape[] {
	return [...lead(-1, y), ...lead(1, y), path(`M-14 ${y - 4}A17 17 0 0 1 14 ${y - 4}`)];
}

function cross(y: number): Shape[] {
	return [
		line(-30, y, -12, y, 8, y - 9.5),
		line(12, y, 30, y),
		line(8.5, y - 3.5, 15.5, y + 3.5),
		line(8.5, y + 3.5, 15.5, y - 3.5),
	];
}

function contact(name: string, title: string, shapes: readonly Shape[], ends: readonly [string, string]): SymbolDesign {
	return face(name, title, [60, 24], shapes, [port(ends[0], -30, 0, "west"), port(ends[1], 30, 0, "east")]);
}

function pair(name: string, title: string, shapes: readonly Shape[]): SymbolDesign {
	return face(name, title, [60, 48], shapes, [
		port("line1", -30, -12, "west"),
		port("line2", -30, 12, "west"),
		port("load1", 30, -12, "east"),
		port("load2", 30, 12, "east"),
	]);
}

function port(name: string, x: number, y: number, direction: SymbolPort["direction"]): SymbolPort {
	return { name, x, y, direction };
}
