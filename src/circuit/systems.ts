// Which system a point or a conductor belongs to: alternating or direct current, or the ground that both share.
import type { Role, System } from "../kinds/kind.ts";

/** The system of a role; undefined for a ground, which belongs to both. */
export function systemOfRole(role: Role): System | undefined {
	if (role === "ground") return undefined;
	return role === "positive" || role === "negative" ? "dc" : "ac";
}
