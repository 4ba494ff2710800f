// The voltage between two points, from the poles that reach them.
import type { Source } from "../circuit/circuit.ts";
import type { ModeState } from "./analysis.ts";
import { isHot } from "./poles.ts";

/** What lies between two points in a mode. */
export interface Across {
	readonly source: Source;
	/** Volts between them; 0 where one pole reaches both. */
	readonly volts: number;
}

/**
 * The voltage between two points; undefined where a live pole does not reach both, where neither is hot, or where a
 * ground is among them. Poles that are joined by mistake are looked at as if they were not.
 */
export function voltageAcross({ crossings, network }: ModeState, one: number, other: number): Across | undefined {
	const { poles, reaches } = crossings.poles;
	for (const [index, pole] of poles.entries()) {
		if (!isHot(pole.role)) continue;
		const [from, to] = reaches[index]?.has(one) === true ? [one, other] : [other, one];
		if (reaches[index]?.has(from) !== true) continue;
		const source = network.circuit.sources.find(({ name }) => name === pole.source);
		if (source === undefined) continue;
		if (crossings.poles.sortsAt(to).has("ground")) return undefined;
		const roles = poles.flatMap((far, at) =>
			far.source === pole.source && reaches[at]?.has(to) === true ? [far.role] : [],
		);
		if (roles.includes("neutral") || roles.includes("negative")) return { source, volts: source.volts };
		if (roles.some((role) => isHot(role) && role !== pole.role)) return { source, volts: source.volts * 2 };
		if (roles.includes(pole.role)) return { source, volts: 0 };
	}
	return undefined;
}
