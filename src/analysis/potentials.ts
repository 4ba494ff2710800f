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
		return this.find(point);
	}

	/** Volts of the first point above the second; undefined where nothing joins them. */
	between(one: number, other: number): number | undefined {
		const [first, second] = [this.find(one), this.find(other)];
		return first.root === second.root ? first.volts - second.volts : undefined;
	}

	/** Puts the first point so many volts above the second, if nothing joins them yet. */
	join(one: number, other: number, volts: number): void {
		const [first, second] = [this.find(one), this.find(other)];
		if (first.root === second.root) return;
		this.parents[first.root] = second.root;
		this.rises[first.root] = volts + second.volts - first.volts;
	}

	private find(point: number): { readonly root: number; readonly volts: number } {
		let [root, volts] = [point, 0];
		for (let above = this.parents[root] ?? root; above !== root; above = this.parents[root] ?? root) {
			volts += this.rises[root] ?? 0;
			root = above;
		}
		// Everything on the way hangs on the top from now on, so that long rows of joints stay quick.
		for (let [here, left] = [point, volts]; here !== root; ) {
			const [above, rise] = [this.parents[here] ?? root, this.rises[here] ?? 0];
			this.parents[here] = root;
			this.rises[here] = left;
			here = above;
			left -= rise;
		}
		return { root, volts };
	}
}
