// What a core is for: by its colour, or by the colour it is re-marked with at both ends.
import type { Role } from "../kinds/kind.ts";
import { roleOfColour } from "./cable-make.ts";
import type { CableMake, Core, CoreMarking } from "./plan.ts";

/** The role of a core of a cable; a white marked red at both ends is a second hot. */
export function markedRole(core: Core, cable: CableMake, markings: readonly CoreMarking[]): Role {
	const marking = markings.find((candidate) => candidate.core === core.colour && candidate.at === undefined);
	if (marking === undefined) return core.role;
	const role = roleOfColour(marking.colour, cable.region);
	return role === "hot" && cable.cores.some((other) => other !== core && other.role === "hot") ? "hot2" : role;
}
