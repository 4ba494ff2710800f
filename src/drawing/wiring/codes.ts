// The letter code of a conductor: two letters for its colour, and what it is re-marked with at an end.
import type { Conductor } from "../../circuit/circuit.ts";
import { colourCode } from "../../handbook/colours.ts";

/** The code of a conductor's insulation; an unknown colour stands as it is written. */
export function codeOf(conductor: Conductor): string {
	return colourCode(conductor.colour) ?? conductor.colour.slice(0, 4).toUpperCase();
}

/** The code at one end: `WH>BK` for white re-marked black. */
export function codeAtEnd(conductor: Conductor, end: 0 | 1): string {
	const { marked } = conductor.ends[end];
	return marked === undefined ? codeOf(conductor) : `${codeOf(conductor)}>${colourCode(marked) ?? marked}`;
}
