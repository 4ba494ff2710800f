// What flows where there is no resistance to reckon with: what must go through, and an even split where there are several ways.
import { JoinedSets } from "../analysis/joined-sets.ts";
import { Elimination } from "./elimination.ts";
import type { Net } from "./net.ts";

/** Solves the currents in the bridges of a net. */
export class BridgeCurrents {
	private readonly net: Net;
	/** The equation of each point; -1 for one that no bridge leads to, and for the first of each knot. */
	private readonly unknownOf: Int32Array;
	private readonly count: number;
	private readonly elimination: Elimination;

	constructor(net: Net) {
		this.net = net;
		const { bridges, circuit } = net;
		const points = circuit.points.length;
		const sets = new JoinedSets(points);
		const isBridged = new Uint8Array(points);
		for (const { from, to } of bridges) {
			sets.join(from, to);
			isBridged[from] = 1;
			isBridged[to] = 1;
		}
		this.unknownOf = new Int32Array(points).fill(-1);
		let count = 0;
		for (let point = 0; point < points; point++)
			if (isBridged[point] === 1 && sets.find(point) !== point) this.unknownOf[point] = count++;
		this.count = count;
		const diagonal = new Float64Array(count);
		const pairs: (readonly [number, number])[] = [];
		const values = new Float64Array(bridges.length);
		bridges.forEach(({ from, to }, at) => {
			const [one, other] = [this.unknownOf[from] ?? -1, this.unknownOf[to] ?? -1];
			const lone = Math.max(one, other, 0);
			pairs.push(one < 0 || other < 0 ? [lone, lone] : [one, other]);
			if (one === other) return;
			values[at] = -1;
			if (one >= 0) diagonal[one] = (diagonal[one] ?? 0) + 1;
			if (other >= 0) diagonal[other] = (diagonal[other] ?? 0) + 1;
		});
		this.elimination = new Elimination(count, pairs);
		this.elimination.factor(diagonal, values);
	}

	/** Amperes in each bridge from `from` to `to`, where `arriving` come to each point by other ways. */
	solve(arriving: Float64Array): Float64Array {
		const right = new Float64Array(this.count);
		for (let point = 0; point < arriving.length; point++) {
			const unknown = this.unknownOf[point] ?? -1;
			if (unknown >= 0) right[unknown] = arriving[point] ?? 0;
		}
		const levels = this.elimination.solve(right);
		const levelOf = (point: number): number => {
			const unknown = this.unknownOf[point] ?? -1;
			return unknown < 0 ? 0 : (levels[unknown] ?? 0);
		};
		return Float64Array.from(this.net.bridges, ({ from, to }) => levelOf(from) - levelOf(to));
	}
}
