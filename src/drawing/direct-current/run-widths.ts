// How thick conductors and sheaths are drawn: heavier copper shows as a heavier line.
import type { Conductor } from "../../circuit/circuit.ts";
import type { Run } from "./net.ts";

/** The coloured core of a conductor that runs by itself: 3.4 units for the thinnest, 4.4 for 8 AWG, 6 for 4/0 and above. */
export function singleWidth({ gauge }: Conductor): number {
	return round(Math.min(6, Math.max(3.4, 3.2 + 0.41 * Math.log2(gauge.mm2))));
}

/** The same of a strand in its sheath. */
export function strandWidth(conductor: Conductor): number {
	return round(singleWidth(conductor) * 0.75);
}

/** From the middle of a strand to that of the next. */
export function strandPitch(conductors: readonly Conductor[]): number {
	return Math.ceil(Math.max(...conductors.map(strandWidth))) + 3.5;
}

/** Width of what is drawn of a run. */
export function runWidth({ sort, conductors }: Run): number {
	const [only] = conductors;
	if (sort === "strap" || only === undefined) return strapWidth;
	if (sort !== "sheathed") return singleWidth(only);
	return (conductors.length - 1) * strandPitch(conductors) + Math.max(...conductors.map(strandWidth)) + 9;
}

/** Width of a strap between two studs. */
export const strapWidth = 7;

function round(width: number): number {
	return Math.round(width * 10) / 10;
}
