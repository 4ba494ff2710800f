// One-line marks of what feeds: after IEC 60617 and IEEE 315 convention (from memory), own line work.
import { circle, filled, line, oneLineMark, path, rectangle, type SymbolDesign, symbol, upright } from "./symbol.ts";

/** Supplies, generators, converters and batteries. */
export const sources: readonly SymbolDesign[] = [
	oneLineMark(
		"ac-source",
		"Alternating-current supply",
		[circle(20, 16, 16), path("M11 16C14.2 7.9 16.8 7.9 20 16C23.2 24.1 25.8 24.1 29 16"), line(20, 32, 20, 50)],
		[40, 50],
		"starts",
	),
	// No standard form: a cup with the pins of an inlet inside and the wall it is set in.
	oneLineMark("shore-inlet", "Shore inlet", [
		line(20, 0, 20, 10),
		filled(rectangle(17, 10, 6, 16, 1)),
		path("M7 16V30A13 13 0 0 0 33 30V16"),
		line(0, 22, 7, 22),
		line(33, 22, 40, 22),
		line(20, 43, 20, 60),
	]),
	upright(
		oneLineMark(
			"generator",
			"Generator",
			[
				circle(20, 18, 18),
				path("M23.9 10.4A3.9 3.9 0 0 0 16.1 10.4V15.6A3.9 3.9 0 0 0 23.9 15.6V13.65H20.8"),
				path("M13 26.5C15.4 21.6 17.6 21.6 20 26.5C22.4 31.4 24.6 31.4 27 26.5"),
				line(20, 36, 20, 50),
			],
			[40, 50],
			"starts",
		),
	),
	upright(
		oneLineMark("inverter", "Inverter", [
			line(20, 0, 20, 10),
			rectangle(0, 10, 40, 40),
			line(0, 50, 40, 10),
			path("M5 19H19M5 24H7.8M10.6 24H13.4M16.2 24H19"),
			path("M21 41C23.4 34.2 25.6 34.2 28 41C30.4 47.8 32.6 47.8 35 41"),
			line(20, 50, 20, 60),
		]),
	),
	// No standard form: a converter square with a two-way arrow, and the way straight through beside it.
	upright(
		symbol({
			name: "inverter-charger",
			title: "Inverter-charger with pass-through",
			size: [84, 72],
			origin: [30, 0],
			ports: [
				["in", 30, 0, "north"],
				["out", 30, 72, "south"],
				["dc", 84, 36, "east"],
			],
			shapes: [
				line(30, 0, 30, 8),
				rectangle(2, 8, 66, 56, 2),
				line(30, 64, 30, 72),
				// Pass-through: the change-over contact on the alternating side.
				line(30, 8, 30, 20),
				circle(30, 22.5, 2.5),
				circle(30, 49.5, 2.5),
				line(30, 52, 30, 64),
				line(28.8, 47.3, 16, 27),
				// Conversion: the direct-current sign, an arrow each way.
				path("M46 26H62M46 31H49.2M52.4 31H55.6M58.8 31H62"),
				path("M46 46C48.8 38.6 51.2 38.6 54 46C56.8 53.4 59.2 53.4 62 46"),
				line(32.5, 36, 64, 36),
				filled(path("M36 33V39L31 36Z")),
				filled(path("M62 33V39L67 36Z")),
				line(68, 36, 84, 36),
			],
		}),
	),
	upright(
		oneLineMark("battery", "Battery", [
			line(20, 0, 20, 18),
			line(5, 18, 35, 18),
			line(12, 24, 28, 24),
			line(20, 24, 20, 38),
			line(5, 38, 35, 38),
			line(12, 44, 28, 44),
			line(20, 44, 20, 60),
			path("M32 5.7V12.3M28.7 9H35.3"),
		]),
	),
	symbol({
		name: "transfer-switch",
		title: "Transfer switch",
		size: [46, 60],
		origin: [23, 0],
		ports: [
			["in1", 3, 0, "north"],
			["in2", 43, 0, "north"],
			["out", 23, 60, "south"],
		],
		shapes: [
			line(3, 0, 3, 13),
			circle(3, 15.5, 2.5),
			line(43, 0, 43, 13),
			circle(43, 15.5, 2.5),
			circle(23, 44.5, 2.5),
			line(23, 47, 23, 60),
			line(21.5, 42.4, 4.5, 18),
		],
	}),
];
