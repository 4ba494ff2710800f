// The rows of a box: one height for each conductor that comes through a wall, straight through where left and right belong together.
import { type BoxContent, type Entry, pointOf, type Wire } from "./box-content.ts";

/** One height inside a box. */
export interface Row {
	readonly left?: Wire;
	readonly right?: Wire;
	/** Rows of one group belong to cables that enter at one height; between groups is more room. */
	readonly group: number;
}

/** The rows of a box and what stands on them. */
export interface RowPlan {
	readonly rows: readonly Row[];
	/** The row of each wire that comes through a wall. */
	readonly rowOf: ReadonlyMap<Wire, number>;
	/** The row each splice stands on. */
	readonly homeOf: ReadonlyMap<number, number>;
}

/** Which wire of the first cable on the right goes on with a wire of the first on the left. */
export type Pairing = (left: Wire, right: readonly Wire[]) => Wire | undefined;

/** Rows for a box. Splices no wall wire lands on get rows of their own, below the others. */
export function planRows(content: BoxContent, pairing: Pairing): RowPlan {
	const rows: Row[] = mergeFirst(content.left[0]?.wires ?? [], content.right[0]?.wires ?? [], pairing);
	let group = 0;
	const addEntry = (entry: Entry): void => {
		group++;
		for (const wire of entry.wires) rows.push(entry.side === "left" ? { left: wire, group } : { right: wire, group });
	};
	for (const entry of content.right.slice(1)) addEntry(entry);
	for (const entry of content.left.slice(1)) addEntry(entry);

	const rowOf = new Map<Wire, number>();
	for (const [index, row] of rows.entries()) {
		if (row.left !== undefined) rowOf.set(row.left, index);
		if (row.right !== undefined) rowOf.set(row.right, index);
	}
	const homeOf = findHomes(content, rows);
	group++;
	for (const splice of content.splices) {
		if (homeOf.has(splice.index) || !content.landings.has(splice.index)) continue;
		homeOf.set(splice.index, rows.length);
		rows.push({ group });
	}
	return { rows, rowOf, homeOf };
}

/** Left and right wires pair where one splice holds both. */
export function pairBySplice(content: BoxContent): Pairing {
	return (left, right) => {
		const point = pointOf(left.to);
		if (point === undefined || content.circuit.points[point]?.kind !== "splice") return undefined;
		return right.find((wire) => pointOf(wire.to) === point);
	};
}

/** A splice stands where it joins left and right straight, else with the first wire that lands on it. */
function findHomes(content: BoxContent, rows: readonly Row[]): Map<number, number> {
	const homes = new Map<number, number>();
	const settle = (wire: Wire | undefined, row: number): void => {
		const point = wire === undefined ? undefined : pointOf(wire.to);
		if (point !== undefined && content.circuit.points[point]?.kind === "splice" && !homes.has(point))
			homes.set(point, row);
	};
	for (const [index, row] of rows.entries())
		if (row.left !== undefined && row.right !== undefined) {
			settle(row.left, index);
			settle(row.right, index);
		}
	for (const [index, row] of rows.entries()) {
		settle(row.left, index);
		settle(row.right, index);
	}
	return homes;
}

/** Two strand orders in one: pairs share a row as long as no two pairs cross. */
function mergeFirst(left: readonly Wire[], right: readonly Wire[], pairing: Pairing): Row[] {
	const pairs = straightPairs(left, right, pairing);
	const rows: Row[] = [];
	let next = 0;
	for (const wire of left) {
		const other = pairs.get(wire);
		if (other === undefined) {
			rows.push({ left: wire, group: 0 });
			continue;
		}
		for (; next < other; next++) pushRight(rows, right[next]);
		const mate = right[next++];
		rows.push(mate === undefined ? { left: wire, group: 0 } : { left: wire, right: mate, group: 0 });
	}
	for (; next < right.length; next++) pushRight(rows, right[next]);
	return rows;
}

function pushRight(rows: Row[], wire: Wire | undefined): void {
	if (wire !== undefined) rows.push({ right: wire, group: 0 });
}

/** The most pairs that keep both orders: a longest common subsequence. */
function straightPairs(left: readonly Wire[], right: readonly Wire[], pairing: Pairing): Map<Wire, number> {
	const mates = left.map((wire) => {
		const mate = pairing(wire, right);
		return mate === undefined ? -1 : right.indexOf(mate);
	});
	let best: number[] = [];
	const grow = (from: number, after: number, taken: number[]): void => {
		if (taken.length > best.length) best = taken;
		for (let index = from; index < mates.length; index++) {
			const mate = mates[index] ?? -1;
			if (mate > after) grow(index + 1, mate, [...taken, index]);
		}
	};
	// Every choice is tried in an ordinary cable; a freak of many cores is taken greedily.
	if (mates.length <= 8) grow(0, -1, []);
	else best = greedy(mates);
	const pairs = new Map<Wire, number>();
	for (const index of best) {
		const wire = left[index];
		const mate = mates[index];
		if (wire !== undefined && mate !== undefined) pairs.set(wire, mate);
	}
	return pairs;
}

function greedy(mates: readonly number[]): number[] {
	const taken: number[] = [];
	let last = -1;
	for (const [index, mate] of mates.entries())
		if (mate > last) {
			taken.push(index);
			last = mate;
		}
	return taken;
}
