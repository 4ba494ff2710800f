// Nodal analysis of a resistive network: eliminates node after node and keeps the steps, so that many loadings of one network cost little.

/** A way for current between two nodes, in siemens. */
export interface Way {
	readonly from: number;
	readonly to: number;
	readonly siemens: number;
}

/** A network made ready to be solved. */
export interface Eliminated {
	readonly count: number;
	readonly reference: number;
	readonly steps: readonly Step[];
}
interface Step {
	readonly node: number;
	/** The sum of all conductances at the node when it was taken out. */
	readonly sum: number;
	readonly neighbours: readonly (readonly [number, number])[];
}

/** Takes out one node after another, the one with fewest neighbours first; `leak` joins each to the reference. */
export function eliminate(count: number, ways: readonly Way[], reference: number, leak: number): Eliminated {
	const rows: Map<number, number>[] = Array.from({ length: count }, () => new Map());
	const join = (one: number, other: number, siemens: number): void => {
		if (one === other) return;
		rows[one]?.set(other, (rows[one]?.get(other) ?? 0) + siemens);
		rows[other]?.set(one, (rows[other]?.get(one) ?? 0) + siemens);
	};
	for (const { from, to, siemens } of ways) join(from, to, siemens);
	for (let node = 0; node < count; node++) join(node, reference, leak);
	const left = new Set(rows.keys());
	left.delete(reference);
	const steps: Step[] = [];
	while (left.size > 0) {
		let node = -1;
		let fewest = Number.POSITIVE_INFINITY;
		for (const candidate of left) {
			const degree = rows[candidate]?.size ?? 0;
			if (degree < fewest) [node, fewest] = [candidate, degree];
		}
		left.delete(node);
		const neighbours = [...(rows[node] ?? [])];
		let sum = 0;
		for (const [, siemens] of neighbours) sum += siemens;
		steps.push({ node, sum, neighbours });
		for (const [index, [one, first]] of neighbours.entries()) {
			rows[one]?.delete(node);
			for (const [other, second] of neighbours.slice(index + 1)) join(one, other, (first * second) / sum);
		}
	}
	return { count, reference, steps };
}

/** The volts of every node against the reference, for the amperes that are put in at each. */
export function solve({ count, reference, steps }: Eliminated, amperes: ReadonlyMap<number, number>): Float64Array {
	const volts = new Float64Array(count);
	const put = new Float64Array(count);
	for (const [node, value] of amperes) put[node] = (put[node] ?? 0) + value;
	for (const { node, sum, neighbours } of steps)
		for (const [other, siemens] of neighbours) put[other] = (put[other] ?? 0) + ((put[node] ?? 0) * siemens) / sum;
	for (const { node, sum, neighbours } of steps.toReversed()) {
		let current = put[node] ?? 0;
		for (const [other, siemens] of neighbours) current += siemens * (volts[other] ?? 0);
		volts[node] = current / sum;
	}
	volts[reference] = 0;
	return volts;
}
