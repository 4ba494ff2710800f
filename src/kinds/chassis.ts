// The metal that everything is bonded to: a chassis or frame, a hull, a ground rod.
import { stud } from "./in-line.ts";
import type { Kind } from "./kind.ts";

/** One row a kind: its word and what it is. */
const rows = [
	{ word: "chassis", also: ["frame"], what: "chassis of a vehicle" },
	{ word: "hull", what: "metal hull or bonding plate of a boat" },
	{ word: "rod", what: "ground rod" },
] as const;

/** The kinds of this file, in the order of their rows. */
export const earths: readonly Kind[] = rows.map((row) => ({
	name: row.word,
	...("also" in row ? { also: row.also } : {}),
	summary: `The ${row.what}: grounds and bonds land on its studs.`,
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
${row.word} frame
bond board from LC.ground by single 8 AWG green
  6 ft to frame
`,
	system: "both",
	stands: ["top"],
	attributes: [],
	build: (said) => ({
		terminals: ["1", "2", "3", "4", "5", "6"].map((name) => ({ ...stud(said, name, "ground", "stud"), capacity: 2 })),
		links: ["2", "3", "4", "5", "6"].map((name) => ({ between: ["1", name], nature: "solid" })),
		sides: [{ name: "stud", knots: { ground: "stud", negative: "stud" }, lone: { knot: "stud" } }],
		onward: "stud",
		enclosure: { sort: "equipment", metal: false },
		face: { text: row.what, wiring: "chassis-bond", oneLine: "chassis-bond", traits: ["ground-bar"] },
	}),
}));
