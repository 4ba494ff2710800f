// Receptacles as the hand finds them, seen from the front with the ground hole down: long neutral slot left, short hot slot right.
import {
	circle,
	dashed,
	face,
	filled,
	line,
	path,
	rectangle,
	type Shape,
	type SymbolDesign,
	weighted,
} from "./symbol.ts";

/** Faces of receptacles. Terminals and plates are drawn by the sheet. */
export const outletFaces: readonly SymbolDesign[] = [
	face("receptacle-single-face", "Single receptacle", [36, 32], outlet(0, 0)),
	face("receptacle-duplex-face", "Duplex receptacle", [68, 30], [...outlet(-19, 0), ...outlet(19, 0)]),
	face("receptacle-duplex-face-tall", "Duplex receptacle", [34, 66], [...outlet(0, -17), ...outlet(0, 17)]),
	face(
		"receptacle-split-face",
		"Split receptacle, hot tab removed",
		[68, 30],
		[...outlet(-19, 0), ...outlet(19, 0), dashed(line(0, -14, 0, 14))],
	),
	face(
		"receptacle-split-face-tall",
		"Split receptacle, hot tab removed",
		[34, 66],
		[...outlet(0, -17), ...outlet(0, 17), dashed(line(-16, 0, 16, 0))],
	),
	face(
		"receptacle-gfci-face",
		"Ground-fault receptacle",
		[104, 34],
		[
			...outlet(-36, 0),
			...outlet(36, 0),
			filled(rectangle(-12, -9, 24, 7, 1.5), "plate"),
			filled(rectangle(-12, 2, 24, 7, 1.5), "plate"),
		],
	),
	face("socket-outlet-single-face", "Socket-outlet", [40, 40], socketOutlet(0, 0)),
	face("socket-outlet-duplex-face", "Two socket-outlets", [84, 40], [...socketOutlet(-22, 0), ...socketOutlet(22, 0)]),
	face(
		"socket-outlet-duplex-face-tall",
		"Two socket-outlets",
		[40, 84],
		[...socketOutlet(0, -22), ...socketOutlet(0, 22)],
	),
	face(
		"socket-outlet-split-face",
		"Two socket-outlets, fed apart",
		[84, 40],
		[...socketOutlet(-22, 0), ...socketOutlet(22, 0), dashed(line(0, -19, 0, 19))],
	),
	face(
		"socket-outlet-split-face-tall",
		"Two socket-outlets, fed apart",
		[40, 84],
		[...socketOutlet(0, -22), ...socketOutlet(0, 22), dashed(line(-19, 0, 19, 0))],
	),
	face(
		"socket-outlet-protected-face",
		"Socket-outlet with ground-fault protection",
		[76, 40],
		[
			...socketOutlet(-17, 0),
			filled(rectangle(12, -9, 24, 7, 1.5), "plate"),
			filled(rectangle(12, 2, 24, 7, 1.5), "plate"),
		],
	),
];

/** One socket-outlet around a middle: two round holes and the ground's side clips. */
function socketOutlet(x: number, y: number): Shape[] {
	return [
		filled(circle(x, y, 19), "plate"),
		circle(x, y, 14),
		filled(circle(x - 7, y, 2.2)),
		filled(circle(x + 7, y, 2.2)),
		weighted(2.4, line(x, y - 14, x, y - 9)),
		weighted(2.4, line(x, y + 9, x, y + 14)),
	];
}

/** One outlet around a middle: two slots and the ground hole. */
function outlet(x: number, y: number): Shape[] {
	return [
		filled(rectangle(x - 14, y - 13.5, 28, 27, 9), "plate"),
		weighted(2.4, line(x - 5.5, y - 8, x - 5.5, y + 1)),
		weighted(2.4, line(x + 5.5, y - 6.5, x + 5.5, y + 0.5)),
		filled(path(`M${x - 3} ${y + 9}V${y + 6}A3 3 0 0 1 ${x + 3} ${y + 6}V${y + 9}Z`)),
	];
}
