// One-line marks of what uses power; they end a line. Own line work after IEC 60617, IEEE 315 and machine-symbol practice (from memory).
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

/** Lamps, motors, heaters and anything else with a rating. */
export const loads: readonly SymbolDesign[] = [
	load("lamp-us", "Light", [line(20, 0, 20, 10), circle(20, 24, 14), path("M12 33V24A8 8 0 0 1 28 24V33")]),
	load("lamp-iec", "Light", [
		line(20, 0, 20, 10),
		circle(20, 24, 14),
		line(10.1, 14.1, 29.9, 33.9),
		line(10.1, 33.9, 29.9, 14.1),
	]),
	upright(load("motor", "Motor", [line(20, 0, 20, 10), circle(20, 26, 16), path("M14.8 33V19L20 28L25.2 19V33")])),
	load("fan", "Fan", [
		line(20, 0, 20, 10),
		circle(20, 26, 16),
		path("M20 26C10 30 7 24 8.5 21C10 18 16 20 20 26C24 32 30 34 31.5 31C33 28 30 22 20 26Z"),
	]),
	load("pump", "Pump", [line(20, 0, 20, 10), circle(20, 26, 16), filled(path("M10 18H30L20 40Z"))]),
	load("heater", "Heater", [
		line(20, 0, 20, 8),
		rectangle(11, 8, 18, 36),
		line(11, 17, 29, 17),
		line(11, 26, 29, 26),
		line(11, 35, 29, 35),
	]),
	load("load", "Load", [line(20, 0, 20, 30), filled(path("M20 44L13.5 29H26.5Z"))]),
	load("junction", "Junction box", [line(20, 0, 20, 12), rectangle(8, 12, 24, 24), filled(circle(20, 24, 3))]),
	load("cable-end", "Cut-off end", [line(20, 0, 20, 26), line(12, 34, 28, 18), line(12, 18, 28, 34)]),
];

function load(name: string, title: string, shapes: readonly Shape[]): SymbolDesign {
	return oneLineMark(name, title, shapes, [40, 44], "ends");
}
