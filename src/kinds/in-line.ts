// What sits in one conductor and lets the others pass: the wiring that a fuse, a shunt, a breaker and a switch share in direct current.
import { awg, squareMillimetres } from "../base/gauge.ts";
import type { Blueprint, LinkSpec, Said, TerminalSpec } from "./kind.ts";

/** How the way through it opens: never, by its handle, or by too much current. */
export type Opening = "never" | "handle" | "trip";

/** Two studs, `line` and `load`, in whatever conductor it is put in; in a pair it sits in the positive and the negative passes. */
export function inLine(
	said: Said,
	opening: Opening,
	role: "hot" | "positive" | "negative" = said.system === "dc" ? "positive" : "hot",
): Omit<Blueprint, "face"> {
	const link: LinkSpec =
		opening === "never"
			? { between: ["line", "load"], nature: "solid" }
			: {
					between: ["line", "load"],
					nature: "contact",
					contact: { group: opening, positions: 2, closed: [1] },
					protects: opening === "trip",
				};
	return {
		terminals: [inherited(said, "line", role), inherited(said, "load", role)],
		links: [link],
		sides: [
			{ name: "line", knots: { ...passing, [role]: "line" }, lone: { knot: "line" } },
			{ name: "load", knots: { ...passing, [role]: "load" }, lone: { knot: "load" } },
		],
		onward: "load",
		enclosure: { sort: "equipment", metal: false },
	};
}

/** What is not in line goes past it. */
export const passing = {
	positive: "^positive",
	negative: "^negative",
	hot2: "^hot2",
	neutral: "^neutral",
	ground: "^ground",
} as const;

/** A stud that takes its role from the run; each lug goes on by itself. */
function inherited(said: Said, name: "line" | "load", role: TerminalSpec["role"]): TerminalSpec {
	return { ...stud(said, name, role, name), side: name, inherits: true, capacity: 2 };
}

/** A stud or large screw for ring terminals and lugs, 16 AWG to 4/0 (common practice). */
export function stud(said: Said, name: string, role: TerminalSpec["role"], knot: string): TerminalSpec {
	const [smallest, largest] =
		said.region === "us" ? [awg(16), awg(-3)] : [squareMillimetres(1), squareMillimetres(120)];
	return { name, role, knot, clamp: "stud", capacity: 4, smallest, largest, gathers: true };
}
