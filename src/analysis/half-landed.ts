// Sides of sources and transfer switches of which one pole has a wire and the other has none: nothing can be fed through them.
import type { Circuit, Part, Terminal } from "../circuit/circuit.ts";

/** One such side. */
export interface HalfLanded {
	readonly part: Part;
	/** The hot terminal with nothing on it, and the neutral with a wire. */
	readonly empty: Terminal;
	readonly landed: Terminal;
}

/** Every side of a source or of a transfer switch that has its neutral landed and no hot. */
export function findHalfLanded(circuit: Circuit): readonly HalfLanded[] {
	const parts = circuit.parts.filter(({ kind, face, coming }) => !coming && isBetween(kind, face.traits));
	if (parts.length === 0) return [];
	const landed = new Set<number>();
	for (const { ends } of circuit.conductors) for (const { point } of ends) if (point !== undefined) landed.add(point);
	return parts.flatMap((part): HalfLanded[] => {
		const sides = new Map<string, Terminal[]>();
		for (const index of part.points) {
			const point = circuit.points[index];
			if (point?.kind !== "terminal" || !["hot", "hot2", "neutral"].includes(point.role)) continue;
			// `1.hot`, `out.neutral`: what stands before the pole is the side.
			const side = point.terminal.split(".").slice(0, -1).join(".");
			sides.set(side, [...(sides.get(side) ?? []), point]);
		}
		return [...sides.values()].flatMap((terminals): HalfLanded[] => {
			const neutral = terminals.find(({ role }) => role === "neutral");
			const hots = terminals.filter(({ role }) => role !== "neutral");
			const [first] = hots;
			if (neutral === undefined || first === undefined || !landed.has(neutral.index)) return [];
			return hots.some(({ index }) => landed.has(index)) ? [] : [{ part, empty: first, landed: neutral }];
		});
	});
}

function isBetween(kind: string, traits: readonly string[]): boolean {
	return kind === "transfer-switch" || traits.includes("source");
}
