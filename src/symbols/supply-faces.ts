// Sources as the hand finds them, without their terminals. Own artwork; an inlet is seen from inside, where it is wired.
import { circle, face, filled, line, path, rectangle, type SymbolDesign, weighted } from "./symbol.ts";

/** Faces of inlets, generators, converters and batteries. */
export const supplyFaces: readonly SymbolDesign[] = [
	face(
		"shore-inlet-face",
		"Shore inlet, from behind",
		[56, 56],
		[
			filled(circle(0, 0, 27), "plate"),
			circle(0, 0, 20),
			weighted(2.4, path("M-12 -4A12.6 12.6 0 0 0 -9 9")),
			weighted(2.4, path("M12 -4A12.6 12.6 0 0 1 9 9")),
			weighted(2.4, path("M-5 -12H5V-8")),
		],
	),
	face(
		"shore-inlet-two-legs-face",
		"Shore inlet of two legs, from behind",
		[56, 56],
		[
			filled(circle(0, 0, 27), "plate"),
			circle(0, 0, 20),
			weighted(2.4, path("M-12.6 -3A13 13 0 0 0 -10 8.3")),
			weighted(2.4, path("M12.6 -3A13 13 0 0 1 10 8.3")),
			weighted(2.4, path("M-5.5 11.8A13 13 0 0 0 5.5 11.8")),
			weighted(2.4, path("M-5 -12H5V-8")),
		],
	),
	face(
		"shore-inlet-blades-face",
		"Shore inlet with straight blades, from behind",
		[56, 56],
		[
			filled(circle(0, 0, 27), "plate"),
			circle(0, 0, 19),
			weighted(2.6, line(-7, -9, -7, 2)),
			weighted(2.6, line(7, -8, 7, 1)),
			filled(circle(0, 9, 3.2)),
		],
	),
	// The industrial pattern for 230 V: three round pins, the ground pin stouter and at the keyway (IEC 60309, recalled).
	face(
		"shore-inlet-pins-face",
		"Shore inlet with round pins, from behind",
		[56, 56],
		[
			filled(rectangle(-27, -27, 54, 54, 8), "plate"),
			path("M-4 20.6A21 21 0 1 1 4 20.6V16.5H-4Z"),
			filled(circle(-8.7, -5, 3)),
			filled(circle(8.7, -5, 3)),
			filled(circle(0, 8.5, 4.4)),
			...[-22, 22].flatMap((x) => [-22, 22].map((y) => circle(x, y, 1.4))),
		],
	),
	face(
		"meter-face",
		"Utility service with its meter",
		[56, 56],
		[
			filled(rectangle(-27, -27, 54, 54, 3), "plate"),
			circle(0, -4, 17),
			rectangle(-10, -10, 20, 8, 1),
			line(-10, 4, 10, 4),
			line(-6, 20, 6, 20),
		],
	),
	face(
		"galvanic-isolator-face",
		"Galvanic isolator",
		[56, 40],
		[
			filled(rectangle(-27, -19, 54, 38, 3), "plate"),
			line(-20, -7, 20, -7),
			line(-20, 8, 20, 8),
			filled(path("M-6 -13V-1L5 -7Z")),
			line(6, -13, 6, -1),
			filled(path("M6 2V14L-5 8Z")),
			line(-6, 2, -6, 14),
		],
	),
	face(
		"generator-face",
		"Generator",
		[56, 48],
		[
			filled(rectangle(-27, -23, 54, 46, 5), "plate"),
			circle(0, 0, 15),
			path("M-9 0C-5.8 -8.1 -3.2 -8.1 0 0C3.2 8.1 5.8 8.1 9 0"),
			line(-20, -17, -12, -17),
			line(20, 17, 12, 17),
		],
	),
	face(
		"inverter-face",
		"Inverter",
		[64, 56],
		[
			filled(rectangle(-31, -27, 62, 54, 4), "plate"),
			line(-31, 27, 31, -27),
			path("M-24 -16H-6M-24 -10H-20.4M-16.8 -10H-13.2M-9.6 -10H-6"),
			path("M6 13C9.2 4.9 11.8 4.9 15 13C18.2 21.1 20.8 21.1 24 13"),
		],
	),
	face(
		"inverter-charger-face",
		"Inverter-charger",
		[64, 56],
		[
			filled(rectangle(-31, -27, 62, 54, 4), "plate"),
			line(-31, 27, 31, -27),
			path("M-24 -16H-6M-24 -10H-20.4M-16.8 -10H-13.2M-9.6 -10H-6"),
			path("M6 13C9.2 4.9 11.8 4.9 15 13C18.2 21.1 20.8 21.1 24 13"),
			line(-7, -7, 7, 7),
			filled(path("M-10 -10L-2.5 -7.5L-7.5 -2.5Z")),
			filled(path("M10 10L2.5 7.5L7.5 2.5Z")),
		],
	),
	face(
		"battery-face",
		"Battery",
		[64, 40],
		[
			filled(rectangle(-31, -14, 62, 33, 3), "plate"),
			filled(rectangle(-24, -19, 12, 5)),
			filled(rectangle(12, -19, 12, 5)),
			path("M-18 -7V3M-23 -2H-13M13 -2H23"),
		],
	),
];
