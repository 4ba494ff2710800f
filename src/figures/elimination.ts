// Symmetric equations of a network, eliminated in an order that keeps them sparse: a tree costs as much as walking it twice.

/** The pattern of a network's equations, made once; its figures may change. */
export class Elimination {
	private readonly count: number;
	/** The unknown that is taken out at each step, and the step of each unknown. */
	private readonly unknowns: Int32Array;
	private readonly steps: Int32Array;
	/** Entries above the diagonal by their column, in steps. */
	private readonly columnStarts: Int32Array;
	private readonly rows: Int32Array;
	/** Where a pair of unknowns has its entry; -1 for one with itself. */
	private readonly places: Int32Array;
	/** The step that each step's remains go on to; -1 for none. */
	private readonly parents: Int32Array;
	private readonly factorStarts: Int32Array;
	private readonly factorRows: Int32Array;
	private readonly factors: Float64Array;
	private readonly pivots: Float64Array;

	/** For unknowns 0 to `count` - 1 of which these pairs have to do with one another. */
	constructor(count: number, pairs: readonly (readonly [number, number])[]) {
		this.count = count;
		this.unknowns = orderSparsely(count, pairs);
		this.steps = new Int32Array(count);
		this.unknowns.forEach((unknown, step) => {
			this.steps[unknown] = step;
		});
		const columns: Map<number, number>[] = Array.from({ length: count }, () => new Map());
		const inOrder = pairs.map(([one, other]): readonly [number, number] => {
			const [first, second] = [this.steps[one] ?? 0, this.steps[other] ?? 0];
			return first < second ? [first, second] : [second, first];
		});
		for (const [row, column] of inOrder) if (row !== column) columns[column]?.set(row, 0);
		this.columnStarts = new Int32Array(count + 1);
		const rows: number[] = [];
		columns.forEach((column, step) => {
			this.columnStarts[step] = rows.length;
			for (const row of column.keys()) {
				column.set(row, rows.length);
				rows.push(row);
			}
		});
		this.columnStarts[count] = rows.length;
		this.rows = Int32Array.from(rows);
		this.places = Int32Array.from(inOrder, ([row, column]) => columns[column]?.get(row) ?? -1);
		const { parents, counts } = this.followFill();
		this.parents = parents;
		this.factorStarts = new Int32Array(count + 1);
		for (let step = 0; step < count; step++)
			this.factorStarts[step + 1] = (this.factorStarts[step] ?? 0) + (counts[step] ?? 0);
		const size = this.factorStarts[count] ?? 0;
		this.factorRows = new Int32Array(size);
		this.factors = new Float64Array(size);
		this.pivots = new Float64Array(count);
	}

	/**
	 * Factors the equations: `diagonal` for each unknown, `pairs` for each pair in the order they were given, added up where one
	 * was given twice. False where they are not positive definite: then there is nothing to solve.
	 */
	factor(diagonal: Float64Array, pairs: Float64Array): boolean {
		const { count, columnStarts, rows, parents, factorStarts, factorRows, factors, pivots } = this;
		const entries = new Float64Array(rows.length);
		for (let pair = 0; pair < pairs.length; pair++) {
			const place = this.places[pair] ?? -1;
			if (place >= 0) entries[place] = (entries[place] ?? 0) + (pairs[pair] ?? 0);
		}
		const work = new Float64Array(count);
		const flags = new Int32Array(count).fill(-1);
		const pattern = new Int32Array(count);
		const filled = new Int32Array(count);
		// Row by row, each by the rows that the tree of eliminations says it hangs on (Davis, Direct Methods for Sparse Linear Systems, 2006).
		for (let step = 0; step < count; step++) {
			let top = count;
			flags[step] = step;
			const own = diagonal[this.unknowns[step] ?? 0] ?? 0;
			let pivot = own;
			for (let at = columnStarts[step] ?? 0; at < (columnStarts[step + 1] ?? 0); at++) {
				let row = rows[at] ?? 0;
				work[row] = (work[row] ?? 0) + (entries[at] ?? 0);
				let length = 0;
				for (; flags[row] !== step; row = parents[row] ?? -1) {
					pattern[length++] = row;
					flags[row] = step;
				}
				while (length > 0) pattern[--top] = pattern[--length] ?? 0;
			}
			for (; top < count; top++) {
				const row = pattern[top] ?? 0;
				const value = work[row] ?? 0;
				work[row] = 0;
				const start = factorStarts[row] ?? 0;
				const end = start + (filled[row] ?? 0);
				for (let at = start; at < end; at++) {
					const below = factorRows[at] ?? 0;
					work[below] = (work[below] ?? 0) - (factors[at] ?? 0) * value;
				}
				const factor = value / (pivots[row] ?? 1);
				pivot -= factor * value;
				factorRows[end] = step;
				factors[end] = factor;
				filled[row] = (filled[row] ?? 0) + 1;
			}
			// Less than rounding leaves of the unknown's own figure is nothing.
			if (!(pivot > own * 1e-13)) return false;
			pivots[step] = pivot;
		}
		return true;
	}

	/** The unknowns for a right-hand side, in their own order. */
	solve(right: Float64Array): Float64Array {
		const { count, unknowns, factorStarts, factorRows, factors, pivots } = this;
		const work = new Float64Array(count);
		for (let step = 0; step < count; step++) work[step] = right[unknowns[step] ?? 0] ?? 0;
		for (let step = 0; step < count; step++)
			for (let at = factorStarts[step] ?? 0; at < (factorStarts[step + 1] ?? 0); at++) {
				const below = factorRows[at] ?? 0;
				work[below] = (work[below] ?? 0) - (factors[at] ?? 0) * (work[step] ?? 0);
			}
		for (let step = count - 1; step >= 0; step--) {
			let value = (work[step] ?? 0) / (pivots[step] ?? 1);
			for (let at = factorStarts[step] ?? 0; at < (factorStarts[step + 1] ?? 0); at++)
				value -= (factors[at] ?? 0) * (work[factorRows[at] ?? 0] ?? 0);
			work[step] = value;
		}
		const solved = new Float64Array(count);
		for (let step = 0; step < count; step++) solved[unknowns[step] ?? 0] = work[step] ?? 0;
		return solved;
	}

	/** The tree of eliminations, and how many entries each step leaves below it. */
	private followFill(): { readonly parents: Int32Array; readonly counts: Int32Array } {
		const parents = new Int32Array(this.count).fill(-1);
		const counts = new Int32Array(this.count);
		const flags = new Int32Array(this.count).fill(-1);
		for (let step = 0; step < this.count; step++) {
			flags[step] = step;
			for (let at = this.columnStarts[step] ?? 0; at < (this.columnStarts[step + 1] ?? 0); at++)
				for (let row = this.rows[at] ?? 0; flags[row] !== step; row = parents[row] ?? -1) {
					if (parents[row] === -1) parents[row] = step;
					counts[row] = (counts[row] ?? 0) + 1;
					flags[row] = step;
				}
		}
		return { parents, counts };
	}
}

/** Always the unknown that has to do with fewest others next: a tree is taken from its leaves, and nothing fills in. */
function orderSparsely(count: number, pairs: readonly (readonly [number, number])[]): Int32Array {
	const order = new Int32Array(count);
	const isTaken = new Uint8Array(count);
	const taken = takeLeaves(count, pairs, order, isTaken);
	if (taken < count) takeFewest(count, pairs, order, isTaken, taken);
	return order;
}

/** Takes what hangs on at most one other, again and again: most of a place's wiring. Gives how many were taken. */
function takeLeaves(
	count: number,
	pairs: readonly (readonly [number, number])[],
	order: Int32Array,
	isTaken: Uint8Array,
): number {
	// A leaf's one neighbour is what is left when those that were taken are struck out of all that it ever had.
	const degrees = new Int32Array(count);
	const neighbours = new Int32Array(count);
	for (const [one, other] of pairs) {
		if (one === other) continue;
		degrees[one] = (degrees[one] ?? 0) + 1;
		degrees[other] = (degrees[other] ?? 0) + 1;
		neighbours[one] = (neighbours[one] ?? 0) ^ other;
		neighbours[other] = (neighbours[other] ?? 0) ^ one;
	}
	let taken = 0;
	const take = (first: number): void => {
		for (let leaf = first; (degrees[leaf] ?? 0) <= 1 && isTaken[leaf] === 0; ) {
			isTaken[leaf] = 1;
			order[taken++] = leaf;
			if (degrees[leaf] === 0) return;
			const next = neighbours[leaf] ?? 0;
			degrees[next] = (degrees[next] ?? 0) - 1;
			neighbours[next] = (neighbours[next] ?? 0) ^ leaf;
			leaf = next;
		}
	};
	for (let unknown = 0; unknown < count; unknown++) take(unknown);
	return taken;
}

/** Orders what hangs together in rings. */
function takeFewest(
	count: number,
	pairs: readonly (readonly [number, number])[],
	order: Int32Array,
	isTaken: Uint8Array,
	before: number,
): void {
	const neighbours: (Set<number> | undefined)[] = [];
	for (let unknown = 0; unknown < count; unknown++) neighbours.push(isTaken[unknown] === 0 ? new Set() : undefined);
	for (const [one, other] of pairs) {
		if (one === other || isTaken[one] === 1 || isTaken[other] === 1) continue;
		neighbours[one]?.add(other);
		neighbours[other]?.add(one);
	}
	// Unknowns by how many others they have to do with; one may stand in several rows, and counts where it is right.
	const byDegree: number[][] = [];
	const put = (unknown: number): void => {
		const degree = neighbours[unknown]?.size ?? 0;
		while (byDegree.length <= degree) byDegree.push([]);
		byDegree[degree]?.push(unknown);
	};
	for (let unknown = count - 1; unknown >= 0; unknown--) if (isTaken[unknown] === 0) put(unknown);
	let taken = before;
	for (let degree = 0; taken < count; ) {
		const unknown = byDegree[degree]?.pop();
		if (unknown === undefined) {
			degree++;
			continue;
		}
		const around = neighbours[unknown];
		if (around === undefined || isTaken[unknown] === 1 || around.size !== degree) continue;
		isTaken[unknown] = 1;
		order[taken++] = unknown;
		for (const other of around) neighbours[other]?.delete(unknown);
		for (const one of around) for (const other of around) if (one !== other) neighbours[one]?.add(other);
		for (const other of around) put(other);
		degree = Math.max(0, degree - 1);
		around.clear();
	}
}
