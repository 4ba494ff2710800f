// What is one potential on the direct-current side, and how many volts lie between two: sets of points grown joint by joint.

/** Points 0 to `count` - 1, each alone at first, each with its volts above the point that stands for its set. */
export class PotentialSets {
	private readonly parents: Int32Array;
	/** Volts of a point above its parent. */
	private readonly rises: Float64Array;

	constructor(count: number) {
		this.parents = Int32Array.from({ length: count }, (_, index) => index);
		this.rises = new Float64Array(count);
	}

	/** The set that a point belongs to, by a point of it, and the volts above that one. */
	at(point: number): { readonly root: number; readonly volts: number } {
		const root = this.find(point);
		return { root, volts: this.rise(point, root) };
	}

	/** Volts of the first point above the second; undefined where nothing joins them. */
	between(one: number, other: number): number | undefined {
		const root = this.find(one);
		return root === this.find(other) ? this.rise(one, root) - this.rise(other, root) : undefined;
	}

	/** Puts the first point so many volts above the second, if nothing joins them yet. */
	join(one: number, other: number, volts: number): void {
		const first = this.find(one);
		const second = this.find(other);
		if (first === second) return;
		this.parents[first] = second;
		this.rises[first] = volts + this.rise(other, second) - this.rise(one, first);
	}

	/** Volts of a point above the top of its set, once that was looked for. */
	private rise(point: number, root: number): number {
		return point === root ? 0 : (this.rises[point] ?? 0);
	}

	/** The top of a point's set. Everything on the way hangs on it from then on, so that long rows of joints stay quick. */
	private find(point: number): number {
		let root = point;
		let left = 0;
		for (let above = this.parents[root] ?? root; above !== root; above = this.parents[root] ?? root) {
			left += this.rises[root] ?? 0;
			root = above;
		}
		for (let here = point; here !== root; ) {
			const above = this.parents[here] ?? root;
			const rise = this.rises[here] ?? 0;
			this.parents[here] = root;
			this.rises[here] = left;
			here = above;
			left -= rise;
		}
		return root;
	}
}
