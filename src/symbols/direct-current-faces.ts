// What the direct-current side is made of as the hand finds it, without its terminals. Own artwork.
import { circle, face, filled, line, path, rectangle, type Shape, type SymbolDesign, weighted } from "./symbol.ts";

/** Faces of fuses, shunts, buses, converters and what charges a battery. */
export const directCurrentFaces: readonly SymbolDesign[] = [
	face(
		"fuse-face",
		"Fuse",
		[48, 24],
		[
			filled(rectangle(-23, -11, 46, 22, 2), "plate"),
			rectangle(-12, -7, 24, 14, 3),
			path("M-19 0H-5C-3 -6 -1 -6 0 0C1 6 3 6 5 0H19"),
		],
	),
	face(
		"fuse-block-face",
		"Fuse block",
		[64, 40],
		[
			filled(rectangle(-31, -19, 62, 38, 3), "plate"),
			...[-24, -11, 2, 15].flatMap((x) => [rectangle(x, -12, 9, 24, 1.5), line(x + 4.5, -8, x + 4.5, 8)]),
		],
	),
	face(
		"bus-face",
		"Bus bar",
		[64, 20],
		[filled(rectangle(-31, -9, 62, 18, 2), "plate"), ...[-21, -7, 7, 21].flatMap((x) => stud(x, 0))],
	),
	face(
		"shunt-face",
		"Measuring shunt",
		[64, 32],
		[
			filled(rectangle(-31, -15, 20, 30, 2), "plate"),
			filled(rectangle(11, -15, 20, 30, 2), "plate"),
			...[-9, -3, 3, 9].map((y) => weighted(2.4, line(-11, y, 11, y))),
			...stud(-23, 0),
			...stud(23, 0),
		],
	),
	face(
		"chassis-bond-face",
		"Bond to the chassis or case",
		[40, 40],
		[
			filled(rectangle(-19, -19, 38, 38, 4), "plate"),
			line(0, -13, 0, 1),
			line(-10, 1, 14, 1),
			line(-10, 1, -15, 12),
			line(2, 1, -3, 12),
			line(14, 1, 9, 12),
		],
	),
	converterFace("dc-dc-face", "DC-DC converter", [path(direct(-24, -16))]),
	converterFace("charger-face", "Battery charger", [
		path("M-24 -13C-20.8 -21.1 -18.2 -21.1 -15 -13C-11.8 -4.9 -9.2 -4.9 -6 -13"),
	]),
	converterFace("solar-controller-face", "Solar charge controller", [
		rectangle(-24, -20, 18, 14),
		line(-24, -20, -15, -13, -6, -20),
	]),
	face(
		"solar-array-face",
		"Solar array",
		[64, 48],
		[filled(rectangle(-31, -23, 62, 46, 2), "plate"), path("M-10.3 -23V23M10.3 -23V23M-31 -7.7H31M-31 7.7H31")],
	),
	face(
		"alternator-face",
		"Alternator",
		[56, 48],
		[filled(circle(-4, 0, 22), "plate"), circle(-4, 0, 14), circle(-4, 0, 3), path("M18 -4H27V4H18")],
	),
];

/** Two strokes, whole over broken: direct current. */
function direct(x: number, y: number): string {
	return `M${x} ${y}H${x + 18}M${x} ${y + 6}H${x + 3.6}M${x + 7.2} ${y + 6}H${x + 10.8}M${x + 14.4} ${y + 6}H${x + 18}`;
}

function stud(x: number, y: number): Shape[] {
	return [circle(x, y, 5), filled(circle(x, y, 1.6))];
}

function converterFace(name: string, title: string, comesIn: readonly Shape[]): SymbolDesign {
	return face(
		name,
		title,
		[64, 56],
		[filled(rectangle(-31, -27, 62, 54, 4), "plate"), line(-31, 27, 31, -27), ...comesIn, path(direct(6, 12))],
	);
}
