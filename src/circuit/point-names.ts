// Points by the names that a builder or a finding calls them by. Most plans never ask, so the names are gathered when first asked for.
import type { Point } from "./circuit.ts";

/** The names of points, in the order in which the points were added. */
export class PointNames {
	private readonly points: readonly Point[];
	/** The other names of a point's terminal, by its position: `brass`. */
	private readonly others: readonly (readonly string[] | undefined)[];
	private readonly known = new Map<string, number>();
	private gathered = 0;

	/** Both lists may grow; what is there when a name is asked for counts. */
	constructor(points: readonly Point[], others: readonly (readonly string[] | undefined)[]) {
		this.points = points;
		this.others = others;
	}

	/** Positions by name: `b1.hot`, and `b1.brass` for the same point. */
	get byName(): ReadonlyMap<string, number> {
		for (; this.gathered < this.points.length; this.gathered++) {
			const point = this.points[this.gathered];
			if (point === undefined) continue;
			this.known.set(point.name, point.index);
			if (point.kind !== "terminal") continue;
			for (const other of this.others[point.index] ?? []) this.known.set(`${point.part}.${other}`, point.index);
		}
		return this.known;
	}
}
