// Sets of points that are one potential together, grown one joint at a time (union-find with path halving).

/** Points 0 to `count` - 1, each alone at first. */
export class JoinedSets {
	private readonly parents: Int32Array;

	constructor(count: number) {
		this.parents = new Int32Array(count);
		for (let index = 1; index < count; index++) this.parents[index] = index;
	}

	/** The point that stands for all that are joined with this one. */
	find(point: number): number {
		let here = point;
		for (let above = this.above(here); above !== here; above = this.above(here)) {
			const next = this.above(above);
			this.parents[here] = next;
			here = next;
		}
		return here;
	}

	/** Joins two points; the set keeps the name of the first one's. */
	join(one: number, other: number): void {
		this.parents[this.find(other)] = this.find(one);
	}

	private above(point: number): number {
		return this.parents[point] ?? point;
	}
}
