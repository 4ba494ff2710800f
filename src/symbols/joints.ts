// Splices, screws and free ends of conductors, plain and grey so that only conductors carry colour. Own artwork.
import { circle, face, filled, line, path, rectangle, type SymbolDesign } from "./symbol.ts";

/** How conductors are joined, and how they end. */
export const joints: readonly SymbolDesign[] = [
	face(
		"splice-lever",
		"Lever splice",
		[18, 18],
		[filled(rectangle(-8, -8, 16, 16, 4), "joint"), line(-3.5, -4.5, -3.5, 4.5), line(3.5, -4.5, 3.5, 4.5)],
	),
	face(
		"splice-push-in",
		"Push-in splice",
		[18, 18],
		[filled(rectangle(-8, -8, 16, 16, 2), "joint"), circle(-3.5, 0, 2), circle(3.5, 0, 2)],
	),
	face(
		"splice-twist-on",
		"Twist-on splice",
		[18, 18],
		[filled(path("M-8 8L-4.5 -6Q0 -10 4.5 -6L8 8Z"), "joint"), line(-2, -4, -3, 5), line(2, -4, 3, 5)],
	),
	face(
		"splice-crimp",
		"Crimp splice",
		[18, 18],
		[filled(path("M-8.5 -5H-3L0 -3L3 -5H8.5V5H3L0 3L-3 5H-8.5Z"), "joint"), line(0, -3, 0, 3)],
	),
	face("terminal-screw", "Screw", [12, 12], [filled(circle(0, 0, 5), "joint"), line(-3, 3, 3, -3)]),
	face(
		"conductor-capped",
		"Capped end",
		[14, 12],
		[filled(path("M-3 -5H4Q7 -5 7 0Q7 5 4 5H-3Z"), "joint"), line(-7, 0, -3, 0)],
		[{ name: "a", x: -7, y: 0, direction: "west" }],
	),
	face(
		"conductor-loose",
		"Loose end",
		[14, 12],
		[line(-7, 0, 0, 0), line(0, 0, 6, -5), line(0, 0, 7, 0), line(0, 0, 6, 5)],
		[{ name: "a", x: -7, y: 0, direction: "west" }],
	),
];
