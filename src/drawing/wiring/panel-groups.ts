// Breakers behind a device of their panel: those plugged on to its bus instead of the panel's, drawn below it with a comb.
import type { Circuit, Link, Part } from "../../circuit/circuit.ts";
import type { Bar } from "./box-plan.ts";
import type { PoleRows } from "./panel-rows.ts";

/** The part of its panel that a part is plugged on to; undefined where it is plugged on to nothing. */
export function headOf(circuit: Circuit, part: Part, links: readonly Link[]): Part | undefined {
	for (const { part: plugged, nature, between } of links) {
		if (plugged !== part.name || nature !== "solid") continue;
		const owner = circuit.points[between[0]];
		if (owner?.kind === "terminal" && owner.part !== part.name) return circuit.partByName.get(owner.part);
	}
	return undefined;
}

/** Parts with those that hang on another directly behind it, else in their order. */
export function sortByHead(circuit: Circuit, parts: readonly Part[], links: readonly Link[]): Part[] {
	const behind = new Map<Part, Part[]>();
	const first: Part[] = [];
	for (const part of parts) {
		const head = headOf(circuit, part, links);
		if (head === undefined || head.face.traits.includes("panel") || head === part) first.push(part);
		else behind.set(head, [...(behind.get(head) ?? []), part]);
	}
	const withThose = (part: Part): Part[] => [part, ...(behind.get(part) ?? []).flatMap(withThose)];
	return first.flatMap(withThose);
}

/** The comb from each head to the breakers behind it: an upright left of them with a stub to each. */
export function placeCombs(circuit: Circuit, links: readonly Link[], poles: readonly PoleRows[], edge: number): Bar[] {
	const combs: Bar[] = [];
	for (const head of poles) {
		const behind = poles.filter((pole) => pole !== head && headOf(circuit, pole.part, links) === head.part);
		const heights = behind.map((pole) => pole.targets[0]?.y ?? pole.top);
		const last = heights.at(-1);
		if (last === undefined) continue;
		const from = head.bottom - rise;
		const stub = (y: number): Bar => ({
			box: { x: edge - reach, y: y - half, width: reach, height: 2 * half },
			paint: "hot-bus",
			of: head.part.name,
		});
		combs.push(...[from, ...heights].map(stub), {
			box: { x: edge - reach - width / 2, y: from - half, width, height: last - from + 2 * half },
			paint: "hot-bus",
			of: head.part.name,
		});
	}
	return combs;
}

/** How far left of the breakers the comb stands, how wide it is, half the height of a stub, and where it leaves its head. */
const reach = 9;
const width = 5;
const half = 3;
const rise = 10;
