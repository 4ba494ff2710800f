// One-line marks of what is switched by hand; contacts drawn open. Own line work after common convention.
import { circle, filled, line, oneLineMark, path, rectangle, type SymbolDesign, symbol } from "./symbol.ts";

/** Switches, pairs of them, and dimmers. */
export const switching: readonly SymbolDesign[] = [
	oneLineMark("switch", "Switch", [
		line(20, 0, 20, 13),
		circle(20, 15.5, 2.5),
		circle(20, 44.5, 2.5),
		line(20, 47, 20, 60),
		line(21.4, 42.4, 34, 21),
	]),
	oneLineMark("switch-2p", "Switch, two poles", [
		line(20, 0, 20, 13),
		circle(20, 15.5, 2.5),
		circle(20, 44.5, 2.5),
		line(20, 47, 20, 60),
		line(21.4, 42.4, 34, 21),
		line(15, 9, 25, 4),
		line(15, 13, 25, 8),
	]),
	symbol({
		name: "switch-3way",
		title: "Three-way switch",
		size: [40, 60],
		origin: [20, 0],
		ports: [
			["in", 20, 0, "north"],
			["out", 20, 60, "south"],
		],
		shapes: [
			line(20, 0, 20, 13),
			filled(circle(20, 15.5, 2.5)),
			circle(10, 44.5, 2.5),
			circle(30, 44.5, 2.5),
			line(10, 47, 10, 53, 30, 53, 30, 47),
			line(20, 53, 20, 60),
			line(20.8, 17.8, 29, 42.2),
		],
	}),
	oneLineMark("dimmer", "Dimmer", [
		line(20, 0, 20, 18),
		rectangle(8, 18, 24, 24),
		line(20, 42, 20, 60),
		line(4, 48, 34, 13),
		filled(path("M36 11L33.75 17.52L29.85 14.13Z")),
	]),
];
