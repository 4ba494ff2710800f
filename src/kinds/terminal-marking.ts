// What terminals are marked for, where the builder reads it off them: metal, number and size of conductors.
import type { AttributeSpec } from "./kind.ts";

/** The metal of conductor that a thing's terminals take. */
export const markedMetal: AttributeSpec = {
	name: "metal",
	takes: "phrase",
	phrases: ["copper only", "copper and aluminium"],
	summary: "the metal its terminals are marked for",
};

/** Everything that is marked on lugs and bars. */
export const markings: readonly AttributeSpec[] = [
	markedMetal,
	{ name: "smallest", takes: "gauge", word: "smallest", summary: "the thinnest conductor its terminals take" },
	{ name: "largest", takes: "gauge", word: "largest", summary: "the thickest conductor its terminals take" },
];

/** How many conductors go under one terminal. */
export const markedCount: AttributeSpec = {
	name: "takes",
	takes: "count",
	word: "takes",
	least: 1,
	most: 4,
	summary: "how many conductors go into one port",
};
