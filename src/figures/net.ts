// The circuit of one mode as equations want it: knots of what has no resistance between, and the resistances between knots.
import { JoinedSets } from "../analysis/joined-sets.ts";
import { PotentialSets } from "../analysis/potentials.ts";
import type { Circuit, Link } from "../circuit/circuit.ts";
import { ohmsOf } from "./conductor-ohms.ts";
import type { Draw } from "./draws.ts";
import type { Supplies, Supply } from "./supplies.ts";

/** A resistance between two points, with volts of its own in it where it is a battery's. */
export interface Resistor {
	readonly from: number;
	readonly to: number;
	readonly siemens: number;
	/** Volts by which `from` would stand above `to` with no current. */
	readonly rise: number;
	readonly by:
		| { readonly kind: "conductor"; readonly index: number }
		| { readonly kind: "supply"; readonly supply: Supply }
		| { readonly kind: "load"; readonly draw: Draw };
}
/** A way without resistance between two points; what flows in it follows from what must go through. */
export interface Bridge {
	readonly from: number;
	readonly to: number;
	readonly by:
		| { readonly kind: "conductor"; readonly index: number }
		| { readonly kind: "link"; readonly index: number }
		| { readonly kind: "supply"; readonly supply: Supply };
}

/** Knots are numbered from 0; every point is in one, so many volts above it. */
export interface Net {
	readonly circuit: Circuit;
	readonly knots: number;
	readonly knotOf: Int32Array;
	readonly risesOf: Float64Array;
	readonly resistors: readonly Resistor[];
	readonly bridges: readonly Bridge[];
	/** A knot of each part that hangs together, at which volts are counted from 0; -1 at every other knot. */
	readonly isReference: Uint8Array;
	/** The point whose volts are 0, for each knot's part. */
	readonly zeroOf: Int32Array;
	/** Cables in which a conductor's length is missing: what is lost there is not counted. */
	readonly unmeasured: ReadonlySet<string>;
}

/** The net of a circuit: its conductors, the links that conduct, its supplies, and loads that are resistances. */
export function buildNet(
	circuit: Circuit,
	links: readonly Link[],
	{ supplies }: Supplies,
	draws: readonly Draw[],
): Net {
	const resistors: Resistor[] = [];
	const bridges: Bridge[] = [];
	const unmeasured = new Set<string>();
	for (const conductor of circuit.conductors) {
		const [from, to] = [conductor.ends[0].point, conductor.ends[1].point];
		if (from === undefined || to === undefined) continue;
		const ohms = ohmsOf(circuit, conductor);
		const by = { kind: "conductor", index: conductor.index } as const;
		if (ohms === undefined && conductor.cable !== undefined) unmeasured.add(conductor.cable);
		if (ohms === undefined || ohms < leastOhms) bridges.push({ from, to, by });
		else resistors.push({ from, to, siemens: 1 / ohms, rise: 0, by });
	}
	for (const { between, index } of links)
		bridges.push({ from: between[0], to: between[1], by: { kind: "link", index } });
	for (const supply of supplies) {
		const { plus, minus, volts, ohms } = supply;
		const by = { kind: "supply", supply } as const;
		if (ohms < leastOhms) bridges.push({ from: plus, to: minus, by });
		else resistors.push({ from: plus, to: minus, siemens: 1 / ohms, rise: volts, by });
	}
	for (const draw of draws)
		if (draw.nature === "resistance") {
			const [from, to] = draw.load.between;
			resistors.push({ from, to, siemens: 1 / draw.amount, rise: 0, by: { kind: "load", draw } });
		}
	return { circuit, resistors, bridges, unmeasured, ...tieKnots(circuit, resistors, bridges, supplies) };
}

/** Less than a millimetre of the thickest wire has: taken for none, for its current would be lost in rounding. */
const leastOhms = 1e-8;

function tieKnots(
	circuit: Circuit,
	resistors: readonly Resistor[],
	bridges: readonly Bridge[],
	supplies: readonly Supply[],
): Pick<Net, "knots" | "knotOf" | "risesOf" | "isReference" | "zeroOf"> {
	const count = circuit.points.length;
	const sets = new PotentialSets(count);
	for (const { from, to, by } of bridges) sets.join(from, to, by.kind === "supply" ? by.supply.volts : 0);
	const numbers = new Map<number, number>();
	const knotOf = new Int32Array(count);
	const risesOf = new Float64Array(count);
	for (let point = 0; point < count; point++) {
		const { root, volts } = sets.at(point);
		const number = numbers.get(root) ?? numbers.size;
		numbers.set(root, number);
		knotOf[point] = number;
		risesOf[point] = volts;
	}
	const knots = numbers.size;
	const parts = new JoinedSets(knots);
	for (const { from, to } of resistors) parts.join(knotOf[from] ?? 0, knotOf[to] ?? 0);
	// Volts are counted from the neutral or minus of a part's first source.
	const zeros = new Map<number, number>();
	for (const { minus } of supplies) {
		const part = parts.find(knotOf[minus] ?? 0);
		if (!zeros.has(part)) zeros.set(part, minus);
	}
	for (let point = 0; point < count; point++) {
		const part = parts.find(knotOf[point] ?? 0);
		if (!zeros.has(part)) zeros.set(part, point);
	}
	const isReference = new Uint8Array(knots);
	for (const point of zeros.values()) isReference[knotOf[point] ?? 0] = 1;
	const zeroOf = Int32Array.from({ length: knots }, (_, knot) => zeros.get(parts.find(knot)) ?? 0);
	return { knots, knotOf, risesOf, isReference, zeroOf };
}
