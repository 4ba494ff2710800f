// One-line marks of what is switched by hand; contacts drawn open. Own line work after common convention.
import { circle, filled, line, oneLineMark, path, rectangle, type Shape, type SymbolDesign } from "./symbol.ts";

/** Two travellers drawn as the one line they belong to, and the contacts they end on. */
const gatherBelow = [line(10, 47, 10, 53, 30, 53, 30, 47), line(20, 53, 20, 60)];
const gatherAbove = [line(20, 0, 20, 7), line(10, 13, 10, 7, 30, 7, 30, 13)];
const contactsBelow = [circle(10, 44.5, 2.5), circle(30, 44.5, 2.5)];

/** One common, on one of two travellers. */
const threeWay: readonly Shape[] = [
	line(20, 0, 20, 13),
	filled(circle(20, 15.5, 2.5)),
	...contactsBelow,
	...gatherBelow,
	line(20.8, 17.8, 29, 42.2),
];
/** Two travellers, straight through or crossed. */
const fourWay: readonly Shape[] = [
	...gatherAbove,
	circle(10, 15.5, 2.5),
	circle(30, 15.5, 2.5),
	line(11.4, 17.6, 28.6, 42.4),
	line(28.6, 17.6, 11.4, 42.4),
	...contactsBelow,
	...gatherBelow,
];

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
	oneLineMark("switch-3way-us", "Three-way switch", threeWay),
	oneLineMark("switch-3way-iec", "Two-way switch", threeWay),
	oneLineMark("switch-4way-us", "Four-way switch", fourWay),
	oneLineMark("switch-4way-iec", "Intermediate switch", fourWay),
	oneLineMark("dimmer", "Dimmer", [
		line(20, 0, 20, 18),
		rectangle(8, 18, 24, 24),
		line(20, 42, 20, 60),
		line(4, 48, 34, 13),
		filled(path("M36 11L33.75 17.52L29.85 14.13Z")),
	]),
];
