// The lead by which a device in a panel has its neutral from a bar, or gives it on to one.

import { awg, squareMillimetres } from "../base/gauge.ts";
import type { Blueprint, Said } from "./kind.ts";

/** A lead of a terminal to a knot of the panel, in the region's colour, as thick as the device's rating asks (common practice). */
export function neutralLead(said: Said, mine: string, ownerKnot: string): NonNullable<Blueprint["leads"]>[number] {
	const amperes = said.quantity("rating")?.value ?? 0;
	const us = said.region === "us";
	return {
		mine,
		ownerKnot,
		colour: us ? "white" : "blue",
		gauge: us
			? awg(amperes <= 20 ? 12 : amperes <= 30 ? 10 : amperes <= 60 ? 6 : 4)
			: squareMillimetres(amperes <= 20 ? 4 : amperes <= 32 ? 6 : amperes <= 63 ? 16 : 25),
	};
}
