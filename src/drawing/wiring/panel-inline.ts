// In a panel, a splice between one core and one conductor on to a screw lies in line with them: for the layout the three are one
// wire, which is cut in two again at the splice once its way is known.
import { certain } from "../../base/certain.ts";
import type { XY } from "../scene.ts";
import { type BoxContent, farTie, isCore, pointOf, type Wire } from "./box-content.ts";
import type { Joint, Route } from "./box-plan.ts";

/** A splice in line: what it joins. */
interface Inline {
	readonly core: Wire;
	readonly inner: Wire;
	readonly splice: number;
}
/** A panel's content with such splices left out, and what they were. */
export interface MergedPanel {
	readonly content: BoxContent;
	readonly inlines: ReadonlyMap<Wire, Inline>;
}

/** Makes one wire of each core that goes on through a splice of two. */
export function mergeInline(content: BoxContent): MergedPanel {
	const inlines = new Map<Wire, Inline>();
	const merged = new Map<Wire, Wire>();
	const gone = new Set<Wire>();
	for (const { index } of content.splices) {
		const landed = content.landings.get(index) ?? [];
		const core = landed.find(isCore);
		const inner = landed.find((wire) => !isCore(wire));
		if (landed.length !== 2 || core === undefined || inner === undefined) continue;
		const target = farTie(inner, index);
		const kind = content.circuit.points[pointOf(target) ?? -1]?.kind;
		if (kind !== "terminal") continue;
		const wire: Wire = { ...core, to: target };
		inlines.set(wire, { core, inner, splice: index });
		merged.set(core, wire);
		gone.add(inner);
	}
	if (inlines.size === 0) return { content, inlines };
	const swap = (wire: Wire): Wire => merged.get(wire) ?? wire;
	const byInner = new Map([...inlines].map(([wire, { inner }]) => [inner, wire]));
	const left = content.left.map((entry) => ({ ...entry, wires: entry.wires.map(swap) }));
	const right = content.right.map((entry) => ({ ...entry, wires: entry.wires.map(swap) }));
	const landings = new Map(
		[...content.landings].map(([point, wires]) => [point, wires.map((wire) => byInner.get(wire) ?? swap(wire))]),
	);
	for (const { splice } of inlines.values()) landings.delete(splice);
	return {
		content: { ...content, left, right, landings, wires: content.wires.filter((wire) => !gone.has(wire)).map(swap) },
		inlines,
	};
}

/** Cuts the ways of merged wires at `depth` from their wall, and puts the splices there. */
export function cutInline(
	routes: readonly Route[],
	inlines: MergedPanel["inlines"],
	rowOf: ReadonlyMap<Wire, number>,
	depth: (side: "left" | "right") => number,
): { routes: Route[]; joints: Joint[] } {
	const joints: Joint[] = [];
	const cut = routes.flatMap((route): Route[] => {
		const inline = inlines.get(route.wire);
		if (inline === undefined) return [route];
		const { core, inner, splice } = inline;
		const y = certain(rowOf.get(route.wire), "a core's row");
		const x = depth(core.from.at === "wall" ? core.from.side : "left");
		const turn = route.points.findIndex((point, index) => {
			const next = route.points[index + 1];
			return next !== undefined && point.y === y && next.y === y && (point.x - x) * (next.x - x) <= 0;
		});
		const at: XY = { x, y };
		joints.push({ point: splice, columns: [x], y });
		const rest = [at, ...route.points.slice(turn + 1)];
		return [
			{ wire: core, points: [...route.points.slice(0, turn + 1), at] },
			{ wire: inner, points: pointOf(inner.from) === splice ? rest : rest.toReversed() },
		];
	});
	return { routes: cut, joints };
}
