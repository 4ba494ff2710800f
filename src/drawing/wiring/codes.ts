// The letter code of a conductor: two letters for its colour, and what it is re-marked with at an end.
import type { Conductor } from "../../circuit/circuit.ts";
import { colourCode } from "../../handbook/colours.ts";

/** The code of a conductor's insulation; an unknown colour stands as it is written. */
export function codeOf(conductor: Conductor): string {
	const known = codes.get(conductor.colour);
	if (known !== undefined) return known;
	const code = colourCode(conductor.colour) ?? conductor.colour.slice(0, 4).toUpperCase();
	codes.set(conductor.colour, code);
	return code;
}

/** The code at one end: `WH>BK` for white re-marked black. */
export function codeAtEnd(conductor: Conductor, end: 0 | 1): string {
	const { marked } = conductor.ends[end];
	return marked === undefined ? codeOf(conductor) : `${codeOf(conductor)}>${colourCode(marked) ?? marked}`;
}

/** Each colour is looked up once; there are as many as the handbook has hues and pairs of them. */
const codes = new Map<string, string>();
