// Earth, chassis and bond marks, used on every sheet. Own line work after IEC 60617 convention (from memory).
import { circle, filled, line, oneLineMark, path, rectangle, type SymbolDesign, symbol, upright } from "./symbol.ts";

/** Earth and bonding. */
export const grounding: readonly SymbolDesign[] = [
	symbol({
		name: "earth",
		title: "Earth",
		size: [30, 34],
		origin: [15, 0],
		ports: [["g", 15, 0, "north"]],
		shapes: [line(15, 0, 15, 20), line(0, 20, 30, 20), line(5.5, 26, 24.5, 26), line(11, 32, 19, 32)],
	}),
	symbol({
		name: "earth-protective",
		title: "Protective earth",
		size: [34, 46],
		origin: [17, 0],
		ports: [["g", 17, 0, "north"]],
		shapes: [
			line(17, 0, 17, 25),
			line(5, 25, 29, 25),
			line(9, 30.5, 25, 30.5),
			line(13, 36, 21, 36),
			circle(17, 29, 16),
		],
	}),
	symbol({
		name: "chassis-bond",
		title: "Bond to the chassis or case",
		size: [34, 34],
		origin: [17, 0],
		ports: [["g", 17, 0, "north"]],
		shapes: [
			line(17, 0, 17, 20),
			line(7, 20, 34, 20),
			line(7, 20, 0, 34),
			line(20.5, 20, 13.5, 34),
			line(34, 20, 27, 34),
		],
	}),
	// Two diodes each way in the ground, as makers draw it on the case (common practice).
	upright(
		oneLineMark("galvanic-isolator", "Galvanic isolator", [
			line(20, 0, 20, 12),
			rectangle(2, 12, 36, 36, 2),
			line(12, 12, 12, 48),
			line(28, 12, 28, 48),
			filled(path("M6 22H18L12 32Z")),
			line(6, 33, 18, 33),
			filled(path("M22 38H34L28 28Z")),
			line(22, 27, 34, 27),
			line(20, 48, 20, 60),
		]),
	),
	// No standard form: two ringed posts marked N and earth with a heavy link between.
	symbol({
		name: "bond-jumper",
		title: "Neutral-to-ground bond",
		size: [60, 27],
		origin: [30, 20],
		ports: [
			["n", 0, 20, "west"],
			["g", 60, 20, "east"],
		],
		shapes: [
			line(0, 20, 8, 20),
			line(52, 20, 60, 20),
			circle(13, 20, 5),
			circle(47, 20, 5),
			filled(circle(13, 20, 1.6)),
			filled(circle(47, 20, 1.6)),
			filled(rectangle(18.8, 18, 22.4, 4)),
			path("M10.6 12V4L15.4 12V4"),
			line(47, 1, 47, 5),
			line(42, 5, 52, 5),
			line(44, 8, 50, 8),
			line(46, 11, 48, 11),
		],
	}),
];
