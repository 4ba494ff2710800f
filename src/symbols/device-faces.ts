// Switches, lights and appliances as the hand finds them, without their terminals. Own artwork.
import { circle, dashed, face, filled, line, path, rectangle, type SymbolDesign, weighted } from "./symbol.ts";

/** Faces of what is operated and of what uses power. */
export const deviceFaces: readonly SymbolDesign[] = [
	face(
		"switch-face",
		"Switch",
		[20, 32],
		[filled(rectangle(-9, -15, 18, 30, 2), "plate"), filled(rectangle(-5, -11, 10, 12, 1.5)), line(-5, 5, 5, 5)],
	),
	face(
		"rocker-face",
		"Switch with a rocker",
		[34, 34],
		[filled(rectangle(-16, -16, 32, 32, 3), "plate"), rectangle(-10.5, -10.5, 21, 21, 1.5), line(-10.5, 2, 10.5, 2)],
	),
	face(
		"switch-2p-face",
		"Switch, two poles",
		[40, 32],
		[
			filled(rectangle(-19, -15, 38, 30, 2), "plate"),
			filled(rectangle(-14, -11, 10, 12, 1.5)),
			filled(rectangle(4, -11, 10, 12, 1.5)),
			line(-14, 5, 14, 5),
		],
	),
	face(
		"disconnect-2p-face",
		"Disconnect, two poles",
		[40, 40],
		[
			filled(rectangle(-19, -19, 38, 38, 3), "plate"),
			circle(-8, 0, 7),
			circle(8, 0, 7),
			filled(rectangle(-10.5, -10, 5, 14, 2)),
			filled(rectangle(5.5, -10, 5, 14, 2)),
			line(-8, 13, 8, 13),
		],
	),
	face(
		"breaker-gfci-face",
		"Ground-fault breaker",
		[48, 24],
		[
			filled(rectangle(-23, -11, 46, 22, 2), "plate"),
			rectangle(-17, -6, 18, 12, 1.5),
			filled(rectangle(-17, -6, 8, 12, 1.5)),
			circle(11, 0, 5),
		],
	),
	face(
		"junction-box",
		"Junction box",
		[40, 40],
		[filled(rectangle(-19, -19, 38, 38, 4), "plate"), circle(-13, -13, 2.5), circle(13, 13, 2.5)],
	),
	face(
		"dimmer-face",
		"Dimmer",
		[32, 32],
		[
			filled(circle(0, 0, 15), "plate"),
			circle(0, 0, 9),
			weighted(2.4, line(0, -3, 0, -8)),
			line(-11, 8, -8.5, 6),
			line(11, 8, 8.5, 6),
		],
	),
	face(
		"disconnect-face",
		"Disconnect",
		[32, 40],
		[
			filled(rectangle(-15, -19, 30, 38, 3), "plate"),
			circle(0, 0, 10),
			filled(rectangle(-3, -12, 6, 18, 2)),
			line(-6, 14, 6, 14),
		],
	),
	face(
		"relay-face",
		"Relay",
		[44, 40],
		[
			filled(rectangle(-21, -19, 42, 38, 3), "plate"),
			line(-16, -6, -8, -6, 6, -13),
			line(8, -6, 16, -6),
			dashed(line(0, -9, 0, 3)),
			rectangle(-12, 3, 24, 11, 1),
		],
	),
	face(
		"breaker-face",
		"Circuit breaker",
		[48, 24],
		[
			filled(rectangle(-23, -11, 46, 22, 2), "plate"),
			rectangle(-9, -6, 18, 12, 1.5),
			filled(rectangle(-9, -6, 8, 12, 1.5)),
		],
	),
	face(
		"luminaire-face",
		"Light",
		[44, 42],
		[
			filled(circle(0, 0, 11), "plate"),
			line(-4.5, -4.5, 4.5, 4.5),
			line(-4.5, 4.5, 4.5, -4.5),
			path(
				"M0 -15V-20M0 15V20M-15 0H-20M15 0H20M-10.6 -10.6L-14.1 -14.1M10.6 -10.6L14.1 -14.1M-10.6 10.6L-14.1 14.1M10.6 10.6L14.1 14.1",
			),
		],
	),
	face(
		"fan-face",
		"Fan",
		[40, 40],
		[
			filled(circle(0, 0, 19), "plate"),
			path("M0 0C-13 5 -17 -2 -15 -6C-13 -10 -5 -8 0 0C5 8 13 10 15 6C17 2 13 -5 0 0Z"),
			path("M0 0C-5 -13 2 -17 6 -15C10 -13 8 -5 0 0C-8 5 -10 13 -6 15C-2 17 5 13 0 0Z"),
			filled(circle(0, 0, 2.5)),
		],
	),
	face(
		"pump-face",
		"Pump",
		[44, 40],
		[
			filled(circle(-2, 0, 17), "plate"),
			circle(-2, 0, 7),
			path("M-2 -17H20V-8H12.5"),
			path("M-2 0C-6 -5 -3 -9 2 -10M-2 0C4 -2 8 2 6 7M-2 0C0 6 -5 10 -10 8"),
		],
	),
	face(
		"heater-face",
		"Heater",
		[40, 48],
		[filled(rectangle(-19, -23, 38, 46, 4), "plate"), path("M-11 -15H11V-8H-11V-1H11V6H-11V13H11")],
	),
	face("motor-face", "Motor", [40, 40], [filled(circle(0, 0, 19), "plate"), path("M-7 9V-9L0 3L7 -9V9")]),
	face(
		"load-face",
		"Load",
		[44, 36],
		[filled(rectangle(-21, -17, 42, 34, 4), "plate"), path("M3 -12L-7 2H0L-3 12L7 -2H0Z")],
	),
];
