// One-line marks of receptacles: the circle with lines of US plans, the half circle of IEC practice (from memory), own line work.
import { circle, filled, line, oneLineMark, path, type Shape, type SymbolDesign } from "./symbol.ts";

const usBody = [line(20, 0, 20, 10), circle(20, 22, 12)];
const usDuplex = [line(16, 6, 16, 38), line(24, 6, 24, 38)];
const iecBody = [line(20, 0, 20, 20), line(6, 20, 34, 20), path("M6 34A14 14 0 0 1 34 34")];
/** A stem and a tick: switched elsewhere. */
const switched = [line(28.5, 30.5, 37, 39), line(37, 39, 40, 36)];

/** Receptacles, single to split. */
export const outlets: readonly SymbolDesign[] = [
	outlet("receptacle-us", "Duplex receptacle", [...usBody, ...usDuplex]),
	outlet("receptacle-iec", "Socket-outlet", iecBody),
	outlet("receptacle-single-us", "Single receptacle", [...usBody, line(20, 6, 20, 38)]),
	outlet("receptacle-single-iec", "Socket-outlet", iecBody),
	outlet("receptacle-split-us", "Split receptacle, a hot for each half", [...usBody, ...usDuplex, line(8, 22, 32, 22)]),
	outlet("receptacle-split-iec", "Twin socket-outlet, a line for each half", [...iecBody, line(20, 20, 20, 34)]),
	outlet("receptacle-half-switched-us", "Split receptacle, one half switched", [
		...usBody,
		...usDuplex,
		filled(path("M24 10.7A12 12 0 0 1 24 33.3Z")),
	]),
	outlet("receptacle-half-switched-iec", "Socket-outlet, one half switched", [...iecBody, line(20, 20, 34, 30)]),
	outlet("receptacle-switched-us", "Switched receptacle", [...usBody, ...usDuplex, ...switched]),
	outlet("receptacle-switched-iec", "Switched socket-outlet", [...iecBody, line(20, 20, 36, 31), line(36, 31, 40, 27)]),
];

function outlet(name: string, title: string, shapes: readonly Shape[]): SymbolDesign {
	return oneLineMark(name, title, shapes, [40, 40], "ends");
}
