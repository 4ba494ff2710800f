// Half-size breakers that share a space are bracketed together: slots of one number with a letter behind it.
import type { Part } from "../../circuit/circuit.ts";
import type { PanelWork, Plate } from "./box-plan.ts";
import { slotName } from "./panel-parts.ts";

/** A bracket around each space that holds more than one breaker. */
export function bracketTandems(poles: readonly Part[], plates: readonly Plate[]): PanelWork["brackets"] {
	const brackets: PanelWork["brackets"][number][] = [];
	for (let first = 0; first < poles.length; first++) {
		const space = spaceOf(poles[first]);
		let last = first;
		while (space !== undefined && spaceOf(poles[last + 1]) === space) last++;
		const [upper, lower] = [plates[first], plates[last]];
		if (last > first && upper !== undefined && lower !== undefined) {
			const box = {
				x: upper.box.x - reach,
				y: upper.box.y - reach,
				width: upper.box.width + 2 * reach,
				height: lower.box.y + lower.box.height - upper.box.y + 2 * reach,
			};
			const gap = (upper.box.y + upper.box.height + (plates[first + 1]?.box.y ?? 0)) / 2;
			brackets.push({ box, text: "tandem", at: { x: upper.box.x + upper.box.width / 2, y: gap + 4 } });
		}
		first = last;
	}
	return brackets;
}

/** The space of a half-size breaker's slot: `1` of `1A`; undefined for a whole one's. */
function spaceOf(part: Part | undefined): string | undefined {
	return part === undefined ? undefined : /^(\d+)[A-Za-z]$/.exec(slotName(part))?.[1];
}

const reach = 7;
