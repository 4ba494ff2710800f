// Whether a slip changed anything at all: circuits that differ only in the ports of a bar on which the same wires are.
import type { Circuit, Conductor, End } from "../circuit/circuit.ts";
import { canonicalCircuit } from "../documents/circuit-record.ts";
import { isBar } from "./wire-ends.ts";

/** Whether two circuits are the same, one made from the other: their canonical texts are equal, wires on a bar taken in the order of their names. */
export function isSame(one: Circuit, other: Circuit): boolean {
	// Most slips change something else, or move an end to another part, and a glance tells that.
	const isRewired =
		others.every((list) => one[list] === other[list]) && one.conductors.length === other.conductors.length;
	if (!isRewired || !one.conductors.every((conductor, index) => isAlike(one, conductor, other.conductors[index])))
		return false;
	return canonicalCircuit(inPortOrder(one)) === canonicalCircuit(inPortOrder(other));
}

/** The lists that a slip with wires alone leaves as they are. */
const others = ["plan", "parts", "links", "loads", "sources", "protections", "groundFaults"] as const;

function isAlike(circuit: Circuit, one: Conductor, other: Conductor | undefined): boolean {
	if (one === other) return true;
	if (other === undefined || one.gauge !== other.gauge || one.colour !== other.colour) return false;
	return one.ends.every(
		(end, which) => end.point === other.ends[which]?.point || isOnSameBar(circuit, end, other.ends[which]),
	);
}

function isOnSameBar(circuit: Circuit, one: End, other: End | undefined): boolean {
	const bar = barAt(circuit, one.point);
	return bar !== undefined && bar === barAt(circuit, other?.point);
}

function barAt(circuit: Circuit, index: number | undefined): string | undefined {
	const point = index === undefined ? undefined : circuit.points[index];
	return point?.kind === "terminal" && isBar(circuit, point.part) ? point.part : undefined;
}

/** The circuit with the wires of each bar on its taken ports in the order of their names; as many on each port as before. */
function inPortOrder(circuit: Circuit): Circuit {
	const onBars = new Map<string, { readonly conductor: Conductor; readonly which: 0 | 1; readonly point: number }[]>();
	for (const conductor of circuit.conductors)
		for (const which of [0, 1] as const) {
			const { point } = conductor.ends[which];
			const bar = barAt(circuit, point);
			if (bar === undefined || point === undefined) continue;
			const here = onBars.get(bar);
			if (here === undefined) onBars.set(bar, [{ conductor, which, point }]);
			else here.push({ conductor, which, point });
		}
	const conductors = [...circuit.conductors];
	for (const [bar, ends] of onBars) {
		const counts = new Map<number, number>();
		for (const { point } of ends) counts.set(point, (counts.get(point) ?? 0) + 1);
		// A port with two wires goes before one with one; free ports stay free.
		const filling = [...counts.values()].toSorted((one, other) => other - one);
		const ports = filling.flatMap((count, index) =>
			Array<number | undefined>(count).fill(circuit.partByName.get(bar)?.points[index]),
		);
		const named = ends.toSorted((one, other) =>
			one.conductor.name < other.conductor.name
				? -1
				: one.conductor.name > other.conductor.name
					? 1
					: one.which - other.which,
		);
		for (const [index, { conductor, which }] of named.entries()) {
			const now = conductors[conductor.index] ?? conductor;
			const end: End = { ...now.ends[which], point: ports[index] };
			conductors[conductor.index] = { ...now, ends: which === 0 ? [end, now.ends[1]] : [now.ends[0], end] };
		}
	}
	return { ...circuit, conductors };
}
