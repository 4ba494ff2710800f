// The volts of every knot of a net: Newton's method on its sparse equations, for loads whose current hangs on their volts.
import { Elimination } from "./elimination.ts";
import type { Net } from "./net.ts";

/** A current between two points that is none of a resistance: a fixed one, or that of a fixed power. */
export interface Flow {
	readonly from: number;
	readonly to: number;
	readonly nature: "power" | "current";
	/** Watts, or amperes from `from` to `to`. */
	readonly amount: number;
	/** Volts of `from` above `to` while nothing is drawn; 0 for a current that is pushed in. */
	readonly quiet: number;
}

/** Solves one net for changing flows between the same points. */
export class KnotVolts {
	private readonly net: Net;
	private readonly ends: readonly (readonly [number, number])[];
	/** The equation of each knot; -1 for a reference. */
	private readonly unknownOf: Int32Array;
	private readonly count: number;
	private readonly elimination: Elimination;

	/** For flows between the points `ends`, in their order. */
	constructor(net: Net, ends: readonly (readonly [number, number])[]) {
		this.net = net;
		this.ends = ends;
		this.unknownOf = new Int32Array(net.knots).fill(-1);
		let count = 0;
		for (let knot = 0; knot < net.knots; knot++) if (net.isReference[knot] === 0) this.unknownOf[knot] = count++;
		this.count = count;
		const pairs: (readonly [number, number])[] = [];
		for (const { from, to } of net.resistors) pairs.push(this.pairOf(from, to));
		for (const [from, to] of ends) pairs.push(this.pairOf(from, to));
		this.elimination = new Elimination(count, pairs);
	}

	/** The volts of each knot above its part's reference; undefined where nothing balances: more is asked for than can come. */
	solve(flows: readonly Flow[]): Float64Array | undefined {
		const idle = this.step(new Float64Array(this.net.knots), []);
		let volts = idle;
		for (let turn = 0; turn < mostTurns && volts !== undefined; turn++) {
			const next = this.step(volts, flows);
			if (next === undefined) return undefined;
			let change = 0;
			let highest = 0;
			for (let knot = 0; knot < next.length; knot++) {
				change = Math.max(change, Math.abs((next[knot] ?? 0) - (volts[knot] ?? 0)));
				highest = Math.max(highest, Math.abs(next[knot] ?? 0));
			}
			volts = next;
			if (!Number.isFinite(change)) return undefined;
			if (change <= settled * Math.max(1, highest)) return this.bears(volts, flows) ? volts : undefined;
		}
		return undefined;
	}

	/** Volts of the first point above the second. */
	across(volts: Float64Array, from: number, to: number): number {
		const { knotOf, risesOf } = this.net;
		const high = (volts[knotOf[from] ?? 0] ?? 0) + (risesOf[from] ?? 0);
		return high - ((volts[knotOf[to] ?? 0] ?? 0) + (risesOf[to] ?? 0));
	}

	/** One of Newton's steps from `volts`; undefined where there is none to take. */
	private step(volts: Float64Array, flows: readonly Flow[]): Float64Array | undefined {
		const { resistors, knotOf, risesOf, knots } = this.net;
		const diagonal = new Float64Array(this.count);
		const right = new Float64Array(this.count);
		const pairs = new Float64Array(resistors.length + this.ends.length);
		const enter = (from: number, to: number, siemens: number, leaving: number, at: number): void => {
			const [one, other] = [this.unknownOf[knotOf[from] ?? 0] ?? -1, this.unknownOf[knotOf[to] ?? 0] ?? -1];
			if (one === other) return;
			pairs[at] = -siemens;
			if (one >= 0) {
				diagonal[one] = (diagonal[one] ?? 0) + siemens;
				right[one] = (right[one] ?? 0) - leaving;
			}
			if (other >= 0) {
				diagonal[other] = (diagonal[other] ?? 0) + siemens;
				right[other] = (right[other] ?? 0) + leaving;
			}
		};
		for (let at = 0; at < resistors.length; at++) {
			const resistor = resistors[at];
			if (resistor === undefined) continue;
			const { from, to, siemens, rise } = resistor;
			enter(from, to, siemens, siemens * ((risesOf[from] ?? 0) - (risesOf[to] ?? 0) - rise), at);
		}
		for (let at = 0; at < flows.length; at++) {
			const flow = flows[at];
			if (flow === undefined) continue;
			const { from, to, nature, amount, quiet } = flow;
			if (nature === "current") {
				enter(from, to, 0, amount, resistors.length + at);
				continue;
			}
			const across = this.across(volts, from, to);
			// Below this nothing balances; and dividing by less would give figures without meaning.
			if (amount !== 0 && !(across / quiet > leastShare)) return undefined;
			const amperes = amount === 0 ? 0 : amount / across;
			const slope = amount === 0 ? 0 : -amperes / across;
			const shift = (risesOf[from] ?? 0) - (risesOf[to] ?? 0);
			enter(from, to, slope, amperes - slope * across + slope * shift, resistors.length + at);
		}
		if (!this.elimination.factor(diagonal, pairs)) return undefined;
		const solved = this.elimination.solve(right);
		const next = new Float64Array(knots);
		for (let knot = 0; knot < knots; knot++) {
			const unknown = this.unknownOf[knot] ?? -1;
			if (unknown >= 0) next[knot] = solved[unknown] ?? 0;
		}
		return next;
	}

	/** Whether nothing that draws is left with volts the wrong way round. */
	private bears(volts: Float64Array, flows: readonly Flow[]): boolean {
		return flows.every(
			({ from, to, quiet, amount }) => quiet === 0 || amount === 0 || this.across(volts, from, to) / quiet > leastShare,
		);
	}

	/** Two references are as good as one: both stand at 0, and what is between them is in no equation. */
	private pairOf(from: number, to: number): readonly [number, number] {
		const one = this.unknownOf[this.net.knotOf[from] ?? 0] ?? -1;
		const other = this.unknownOf[this.net.knotOf[to] ?? 0] ?? -1;
		return one < 0 || other < 0 ? [Math.max(one, other, 0), Math.max(one, other, 0)] : [one, other];
	}
}

const mostTurns = 60;
/** Volts by which a step may still change the highest of 1 V or more. */
const settled = 1e-12;
/** The least share of its quiet volts that a load is ever left with where there is a balance. */
const leastShare = 0.02;
