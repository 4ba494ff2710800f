// Whether terminals take conductors of aluminium: as they usually are, or as the builder reads it off them.
import type { AttributeSpec, Said } from "./kind.ts";

/** What may be said of the metal that a thing's terminals take. */
export const terminalMetal: AttributeSpec = {
	name: "terminals",
	takes: "phrase",
	phrases: ["copper only", "copper and aluminium"],
	summary: "the metal its terminals are marked for",
};

/** Whether terminals that are usually made so take aluminium. */
export function takesAluminium(said: Said, usually: boolean): boolean {
	const words = said.choice("terminals");
	return words === undefined ? usually : words === "copper and aluminium";
}
