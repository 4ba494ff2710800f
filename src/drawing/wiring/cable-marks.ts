// A cable between two walls as marks: its jacket, its strands side by side in it, and its tag.
import type { Circuit } from "../../circuit/circuit.ts";
import type { Mark, XY } from "../scene.ts";
import { glandReach } from "./box-marks.ts";
import { jacketRadius, strandPitch, strandWidth } from "./dimensions.ts";
import type { PlacedCable } from "./lanes.ts";
import type { Strands } from "./strand-order.ts";
import { jacketWidth } from "./tags.ts";

/** Jacket and strands of a placed cable, from gland to gland. */
export function cableMarks(
	placed: PlacedCable,
	circuit: Circuit,
	strands: Strands,
	lit: ReadonlyMap<string, number>,
): Mark[] {
	const { cable } = placed;
	const way = trimEnds(placed);
	const conductors = strands(cable);
	const jacket: Mark = {
		kind: "jacket",
		of: cable.tag,
		points: way,
		width: jacketWidth(conductors.length),
		radius: jacketRadius,
		colour: jacketColour(circuit, conductors[0]?.gauge.label, cable.flexible),
	};
	return [
		jacket,
		...conductors.map((conductor, index): Mark => {
			const aside = (index - (conductors.length - 1) / 2) * strandPitch;
			const finding = lit.get(conductor.name);
			return {
				kind: "wire",
				of: conductor.name,
				points: shiftWay(way, aside),
				colour: conductor.colour,
				width: strandWidth,
				radius: Math.max(3, jacketRadius),
				run: "strand",
				finding,
			};
		}),
	];
}

/**
 * The way beside a way of level and upright stretches: `aside` is measured downward where it starts. Corners stay on both neighbours, so that strands keep their distance and their order.
 */
export function shiftWay(points: readonly XY[], aside: number): XY[] {
	const [start, next] = points;
	const sign = start !== undefined && next !== undefined && next.x < start.x ? -1 : 1;
	return points.map((point, index) => {
		const before = points[index - 1];
		const after = points[index + 1];
		const inward = before === undefined ? undefined : normal(before, point);
		const outward = after === undefined ? undefined : normal(point, after);
		const first = inward ?? outward ?? { x: 0, y: 1 };
		const second = outward ?? first;
		const straight = first.x === second.x && first.y === second.y;
		const shift = straight ? first : { x: first.x + second.x, y: first.y + second.y };
		return { x: point.x + shift.x * aside * sign, y: point.y + shift.y * aside * sign };
	});
}

/** The way's right-hand side: down where it goes right, left where it goes down. */
function normal(from: XY, to: XY): XY {
	const [dx, dy] = [Math.sign(to.x - from.x), Math.sign(to.y - from.y)];
	return { x: dy === 0 ? 0 : -dy, y: dx };
}

/** Jackets end at the outer edge of their glands; a flag has none. */
function trimEnds({ points, from, to }: PlacedCable): XY[] {
	return points.map((point, index) => {
		const isEnd = index === 0 || index === points.length - 1;
		const box = index === 0 ? from : to;
		const neighbour = points[index === 0 ? 1 : index - 1];
		if (!isEnd || neighbour === undefined || box.flagTo !== undefined) return point;
		return { x: point.x + Math.sign(neighbour.x - point.x) * glandReach, y: point.y };
	});
}

/**
 * Jacket colour as cable of that size is commonly sold in North America: 14 white, 12 yellow, 10 orange, larger and cord
 * black (common practice); elsewhere grey.
 */
export function jacketColour(circuit: Circuit, size: string | undefined, flexible: boolean): string {
	if (flexible) return "black";
	if (circuit.plan.settings.region !== "us") return "grey";
	return (size === undefined ? undefined : jacketBySize.get(size)) ?? "black";
}

const jacketBySize: ReadonlyMap<string, string> = new Map([
	["16", "white"],
	["14", "white"],
	["12", "yellow"],
	["10", "orange"],
]);
