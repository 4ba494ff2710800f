// One-line marks of the direct-current side: what makes it, converts it, gathers it and measures it. Own line work after IEC 60617 (from memory).
import {
	circle,
	filled,
	line,
	oneLineMark,
	path,
	rectangle,
	type Shape,
	type SymbolDesign,
	upright,
} from "./symbol.ts";

/** Two strokes, whole over broken: direct current; the upper left end at (x, y). */
const direct = (x: number, y: number): Shape =>
	path(`M${x} ${y}H${x + 14}M${x} ${y + 5}H${x + 2.8}M${x + 5.6} ${y + 5}H${x + 8.4}M${x + 11.2} ${y + 5}H${x + 14}`);

/** A wave: alternating current; its left end at (x, y). */
const alternating = (x: number, y: number): Shape =>
	path(
		`M${x} ${y}C${x + 2.4} ${y - 6.8} ${x + 4.6} ${y - 6.8} ${x + 7} ${y}C${x + 9.4} ${y + 6.8} ${x + 11.6} ${y + 6.8} ${x + 14} ${y}`,
	);

/** Solar array, alternator, converters, bus and shunt. The battery stands with the sources, the fuse with the protection. */
export const directCurrent: readonly SymbolDesign[] = [
	oneLineMark(
		"solar-array",
		"Solar array",
		[rectangle(3, 2, 34, 32), line(3, 2, 20, 15, 37, 2), line(20, 34, 20, 50)],
		[40, 50],
		"starts",
	),
	upright(
		oneLineMark(
			"alternator",
			"Alternator with rectifier",
			[
				circle(20, 18, 18),
				path("M23.9 8.4A3.9 3.9 0 0 0 16.1 8.4V13.6A3.9 3.9 0 0 0 23.9 13.6V11.65H20.8"),
				direct(13, 23),
				line(20, 36, 20, 50),
			],
			[40, 50],
			"starts",
		),
	),
	converter("solar-controller", "Solar charge controller", [rectangle(5, 15, 14, 11), line(5, 15, 12, 20, 19, 15)]),
	converter("dc-dc", "DC-DC converter", [direct(5, 18)]),
	converter("charger", "Battery charger", [alternating(5, 21)]),
	oneLineMark(
		"bus",
		"Bus bar",
		[line(20, 0, 20, 14), filled(rectangle(1, 13, 38, 6, 1)), line(20, 18, 20, 32)],
		[40, 32],
	),
	// The strip that the current runs through, and the two leads it is measured by.
	oneLineMark("shunt", "Measuring shunt", [
		line(20, 0, 20, 18),
		rectangle(14, 18, 12, 24),
		line(20, 42, 20, 60),
		filled(circle(20, 12, 1.6)),
		filled(circle(20, 48, 1.6)),
		line(20, 12, 33, 12),
		line(20, 48, 33, 48),
		circle(35.5, 12, 2.5),
		circle(35.5, 48, 2.5),
	]),
];

/** A square with a stroke across: what comes in on its upper left, direct current going out on its lower right. */
function converter(name: string, title: string, comesIn: readonly Shape[]): SymbolDesign {
	return upright(
		oneLineMark(name, title, [
			line(20, 0, 20, 10),
			rectangle(0, 10, 40, 40),
			line(0, 50, 40, 10),
			...comesIn,
			direct(21, 37),
			line(20, 50, 20, 60),
		]),
	);
}
