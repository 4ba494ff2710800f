// The trade's words for how ends are made up and joined.
import type { Termination } from "../kinds/kind.ts";

/** How a conductor's end is made up. */
export const terminations = [
	"solid",
	"bare",
	"fork",
	"ring",
	"ferrule",
	"lug",
	"pin",
] as const satisfies readonly Termination[];

/** What joins conductors in a box. */
export const connectors = ["lever", "push-in", "twist-on", "crimp"] as const;
