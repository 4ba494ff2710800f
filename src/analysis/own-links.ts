// The ways through parts themselves, without those by which they are bolted to others.
import type { Circuit } from "../circuit/circuit.ts";

/** The links of some parts that join two terminals of the same part, by their positions. */
export function ownLinks({ links, points }: Circuit, parts: ReadonlySet<string>): ReadonlySet<number> {
	const found = new Set<number>();
	for (const { index, part, between } of links) {
		if (!parts.has(part)) continue;
		const isOwn = between.every((end) => {
			const point = points[end];
			return point?.kind === "terminal" && point.part === part;
		});
		if (isOwn) found.add(index);
	}
	return found;
}
