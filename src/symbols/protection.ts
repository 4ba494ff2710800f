// One-line marks of what opens on too much current or on leakage: a US and an IEC form each (from memory), own line work.
import { circle, dashed, line, oneLineMark, path, rectangle, type SymbolDesign, symbol, upright } from "./symbol.ts";

/** Two small contacts with an arc beside them: the US form of a breaker. */
const usBreaker = [
	line(20, 0, 20, 13),
	circle(20, 16, 3),
	circle(20, 44, 3),
	line(20, 47, 20, 60),
	path("M25 14A21 21 0 0 1 25 46"),
];
/** A blade with a cross at the fixed contact: the IEC form. */
const iecBreaker = [line(20, 0, 20, 20), line(20, 60, 20, 42, 8, 20), line(16, 16, 24, 24), line(16, 24, 24, 16)];
/** One stroke across the lead for each pole. */
const twoPoles = [line(15, 9, 25, 4), line(15, 13, 25, 8)];
const usDisconnect = [
	line(20, 0, 20, 13),
	circle(20, 15.5, 2.5),
	circle(20, 44.5, 2.5),
	line(20, 47, 20, 60),
	line(18.6, 42.4, 5, 20),
];
const iecDisconnect = [line(20, 0, 20, 20), line(20, 60, 20, 44, 8, 20), line(14, 19, 26, 19), circle(20, 22.5, 3)];
/** Ring around the conductors, tied by a dashed link to the box that decides. */
const sensor = [path("M6 30A14 5.5 0 0 0 34 30A14 5.5 0 0 0 6 30Z"), line(34, 30, 44, 30), rectangle(44, 20, 26, 20)];
/** The sign of a residual current: I and a triangle. */
const residual = [line(51, 25, 51, 35), path("M55.5 35L60 25.5L64.5 35Z")];

/** Breakers, fuses, disconnects and ground-fault devices. */
export const protection: readonly SymbolDesign[] = [
	oneLineMark("breaker-us", "Circuit breaker", usBreaker),
	oneLineMark("breaker-iec", "Circuit breaker", iecBreaker),
	oneLineMark("breaker-2p-us", "Circuit breaker, two poles", [...usBreaker, ...twoPoles]),
	oneLineMark("breaker-2p-iec", "Circuit breaker, two poles", [...iecBreaker, ...twoPoles]),
	upright(
		symbol({
			name: "breaker-gfci-us",
			title: "Ground-fault breaker",
			size: [78, 60],
			origin: [20, 0],
			ports: [
				["in", 20, 0, "north"],
				["out", 20, 60, "south"],
			],
			shapes: [...usBreaker, dashed(line(31, 30, 44, 30)), rectangle(44, 20, 26, 20), ...residual],
		}),
	),
	upright(
		symbol({
			name: "breaker-gfci-iec",
			title: "Breaker with residual-current protection",
			size: [78, 80],
			origin: [20, 0],
			ports: [
				["in", 20, 0, "north"],
				["out", 20, 80, "south"],
			],
			shapes: [
				...iecBreaker,
				line(20, 60, 20, 80),
				path("M6 62A14 5.5 0 0 0 34 62A14 5.5 0 0 0 6 62Z"),
				line(34, 62, 57, 62, 57, 40),
				dashed(line(44, 30, 14, 30)),
				rectangle(44, 20, 26, 20),
				...residual,
			],
		}),
	),
	upright(
		symbol({
			name: "ground-fault",
			title: "Ground-fault protection",
			size: [78, 60],
			origin: [20, 0],
			ports: [
				["in", 20, 0, "north"],
				["out", 20, 60, "south"],
			],
			shapes: [line(20, 0, 20, 60), ...sensor, ...residual],
		}),
	),
	oneLineMark("fuse-us", "Fuse", [
		line(20, 0, 20, 9),
		circle(20, 11.5, 2.5),
		path("M20 14C32 14 32 30 20 30C8 30 8 46 20 46"),
		circle(20, 48.5, 2.5),
		line(20, 51, 20, 60),
	]),
	oneLineMark("fuse-iec", "Fuse", [rectangle(14, 16, 12, 28), line(20, 0, 20, 60)]),
	oneLineMark("disconnect-us", "Disconnect", usDisconnect),
	oneLineMark("disconnect-iec", "Switch-disconnector", iecDisconnect),
	oneLineMark("disconnect-2p-us", "Disconnect, two poles", [...usDisconnect, ...twoPoles]),
	oneLineMark("disconnect-2p-iec", "Switch-disconnector, two poles", [...iecDisconnect, ...twoPoles]),
];
