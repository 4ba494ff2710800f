// What is written on the breakers of a panel: slot and rating, and what else they open on.
import type { Part } from "../../circuit/circuit.ts";
import type { Region } from "../../kinds/kind.ts";
import { slotName } from "./panel-parts.ts";

/** Slot and rating last; above it the leak it opens on, where it does. */
export function labelLines(part: Part, region: Region): string[] {
	const rating = part.face.rating === undefined ? "" : ` · ${part.face.rating} A`;
	const own = `${slotName(part)}${rating}`;
	const residual = /\b\d+(?:\.\d+)? mA.*/.exec(part.face.text)?.[0];
	if (residual === undefined) return [own];
	return [region === "us" ? `ground-fault ${residual}` : residual, own];
}
