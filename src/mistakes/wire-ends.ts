// Wire ends as a hand finds them: in which box, on which point, and which of them can come off or go elsewhere.
import { bothEnds } from "../analysis/landings.ts";
import { groupBy } from "../base/group.ts";
import type { Circuit, Conductor, Enclosure, Part, Point } from "../circuit/circuit.ts";

/** One end of a conductor that is on a point. */
export interface WireEnd {
	readonly conductor: Conductor;
	readonly which: 0 | 1;
	readonly point: Point;
}

/** The ends that a hand can take off, by the enclosures they are in. A lead that comes with a device stays on it. */
export function endsByEnclosure(circuit: Circuit): ReadonlyMap<Enclosure, readonly WireEnd[]> {
	return groupBy(
		circuit.conductors.flatMap((conductor) =>
			bothEnds.flatMap((which) => {
				const { point } = conductor.ends[which];
				const on = point === undefined ? undefined : circuit.points[point];
				return on === undefined || isFixed(conductor, on) ? [] : [{ conductor, which, point: on }];
			}),
		),
		({ conductor, which }) => conductor.ends[which].enclosure,
	);
}

/** The points of each enclosure that a wire can be put on; of a bar the first free port stands for all that are free. */
export function spotsByEnclosure(circuit: Circuit): ReadonlyMap<Enclosure, readonly Point[]> {
	const taken = new Set(circuit.conductors.flatMap(({ ends }) => ends.map((end) => end.point)));
	const offered = new Set<string>();
	const spots = circuit.points.filter((point) => {
		if (point.kind !== "terminal") return true;
		if (point.capacity === 0 || point.clamp === "lead") return false;
		if (!isBar(circuit, point.part)) return true;
		if (taken.has(point.index) || offered.has(point.part)) return false;
		offered.add(point.part);
		return true;
	});
	return groupBy(spots, (point) => point.enclosure);
}

/** Whether a part is a bar, all ports of which are one. */
export function isBar(circuit: Circuit, part: string): boolean {
	const traits = circuit.partByName.get(part)?.face.traits ?? [];
	return traits.includes("neutral-bar") || traits.includes("ground-bar");
}

/** The ends on a point that a hand can take off. */
export function endsOn(circuit: Circuit, point: number): readonly WireEnd[] {
	const on = circuit.points[point];
	if (on === undefined) return [];
	return circuit.conductors.flatMap((conductor) =>
		bothEnds.flatMap((which) =>
			conductor.ends[which].point === point && !isFixed(conductor, on) ? [{ conductor, which, point: on }] : [],
		),
	);
}

/** The names of a part and of what is on its terminals. */
export function placesOfPart(circuit: Circuit, { name, enclosure, points }: Part): readonly string[] {
	const mine = new Set(points);
	const wires = circuit.conductors.filter(({ ends }) =>
		ends.some(({ point }) => point !== undefined && mine.has(point)),
	);
	return [
		...[name, enclosure.name, ...points.map((point) => circuit.points[point]?.name ?? "")],
		...wires.flatMap((wire) => [wire.name, ...(wire.cable === undefined ? [] : [wire.cable])]),
	];
}

/** The names of what a slip at an end is a slip at. */
export function placesOf(end: WireEnd): readonly string[] {
	const { name, cable } = end.conductor;
	return [name, ...(cable === undefined ? [] : [cable]), ...placesOfPoint(end.point)];
}

/** The names of a point, its part and its box. */
export function placesOfPoint(point: Point): readonly string[] {
	return [point.name, ...(point.kind === "terminal" ? [point.part] : []), point.enclosure.name];
}

function isFixed(conductor: Conductor, point: Point): boolean {
	return conductor.sort === "pigtail" && point.kind === "terminal" && point.clamp === "lead";
}
