// Breakers behind a device of their panel: those plugged on to its bus instead of the panel's, drawn below it with a comb.
import { groupBy } from "../../base/group.ts";
import type { Circuit, Link, Part } from "../../circuit/circuit.ts";
import type { Bar } from "./box-plan.ts";
import type { PoleRows } from "./panel-rows.ts";

/** Parts with those that hang on another directly behind it, else in their order. */
export function sortByHead(circuit: Circuit, parts: readonly Part[], links: readonly Link[]): Part[] {
	const heads = headsOf(circuit, links);
	const behind = groupBy(parts, ({ name }) => {
		const head = heads.get(name);
		return head === undefined || head.face.traits.includes("panel") ? undefined : head;
	});
	const withThose = (part: Part): Part[] => [part, ...(behind.get(part) ?? []).flatMap(withThose)];
	return (behind.get(undefined) ?? []).flatMap(withThose);
}

/** The comb from each head to the breakers behind it: an upright left of them with a stub to each. */
export function placeCombs(circuit: Circuit, links: readonly Link[], poles: readonly PoleRows[], edge: number): Bar[] {
	const combs: Bar[] = [];
	const heads = headsOf(circuit, links);
	const behind = groupBy(poles, ({ part }) => heads.get(part.name));
	for (const head of poles) {
		const heights = (behind.get(head.part) ?? []).map((pole) => pole.targets[0]?.y ?? pole.top);
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

/** The part of its panel that each part is plugged on to, by the part's name; none for what is plugged on to nothing. */
function headsOf(circuit: Circuit, links: readonly Link[]): ReadonlyMap<string, Part> {
	const heads = new Map<string, Part>();
	for (const { part, nature, between } of links) {
		if (nature !== "solid" || heads.has(part)) continue;
		const owner = circuit.points[between[0]];
		if (owner?.kind !== "terminal" || owner.part === part) continue;
		const head = circuit.partByName.get(owner.part);
		if (head !== undefined) heads.set(part, head);
	}
	return heads;
}

/** How far left of the breakers the comb stands, how wide it is, half the height of a stub, and where it leaves its head. */
const reach = 9;
const width = 5;
const half = 3;
const rise = 10;
