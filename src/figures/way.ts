// The way of a load's current through a solved mode: from one of its terminals by wires and sources round to the other.
import type { Conductor } from "../circuit/circuit.ts";
import type { Steady } from "./steady-state.ts";
import type { Supply } from "./supplies.ts";

/** A step of the way: a conductor, or a source. `isForward`: it is passed from its first end, or its plus, to the other. */
export type WayStep =
	| { readonly kind: "conductor"; readonly conductor: Conductor; readonly isForward: boolean }
	| { readonly kind: "supply"; readonly supply: Supply; readonly isForward: boolean };

/** The steps from one point to another, fewest first; undefined where no source lies on the way. */
export function findWay({ net, circuit }: Steady, from: number, to: number): readonly WayStep[] | undefined {
	const ways: { readonly to: number; readonly step: WayStep | undefined }[][] = Array.from(circuit.points, () => []);
	const join = (one: number, other: number, step?: (isForward: boolean) => WayStep): void => {
		ways[one]?.push({ to: other, step: step?.(true) });
		ways[other]?.push({ to: one, step: step?.(false) });
	};
	const enter = ({ from: one, to: other, by }: (typeof net.resistors)[number] | (typeof net.bridges)[number]): void => {
		if (by.kind === "load") return;
		if (by.kind === "link") join(one, other);
		else if (by.kind === "supply") join(one, other, (isForward) => ({ kind: "supply", supply: by.supply, isForward }));
		else {
			const conductor = circuit.conductors[by.index];
			if (conductor !== undefined) join(one, other, (isForward) => ({ kind: "conductor", conductor, isForward }));
		}
	};
	for (const resistor of net.resistors) enter(resistor);
	for (const bridge of net.bridges) enter(bridge);
	// Without a source there is no volt: the two sides of that are searched as if they were two floors.
	const cameBy = new Map<number, { readonly key: number; readonly step: WayStep | undefined }>();
	const start = from * 2;
	const queue = [start];
	const goal = to * 2 + 1;
	for (const key of queue) {
		if (key === goal) break;
		const floor = key % 2;
		for (const { to: next, step } of ways[(key - floor) / 2] ?? []) {
			const there = next * 2 + (step?.kind === "supply" ? 1 : floor);
			if (there === start || cameBy.has(there)) continue;
			cameBy.set(there, { key, step });
			queue.push(there);
		}
	}
	if (!cameBy.has(goal)) return undefined;
	const steps: WayStep[] = [];
	for (let at = cameBy.get(goal); at !== undefined; at = cameBy.get(at.key))
		if (at.step !== undefined) steps.push(at.step);
	return steps.reverse();
}
