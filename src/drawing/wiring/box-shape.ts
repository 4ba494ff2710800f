// The shape of a box as a text: two boxes of one shape differ in their names only, so that one layout serves both.
import type { BoxContent, Tie } from "./box-content.ts";

/**
 * The shape, or undefined where names are part of the drawing: in a panel, in a box of several devices, where a finding lights
 * something up.
 */
export function shapeOf(content: BoxContent, width: number, lit: ReadonlyMap<string, number>): string | undefined {
	const { circuit, enclosure, devices, coming, left, right, wires, splices, links } = content;
	const [device] = devices;
	if (enclosure.sort === "panel" || devices.length + coming.length > 1) return undefined;
	if (lit.size > 0 && wires.some((wire) => lit.has(wire.conductor.name))) return undefined;
	const places = new Map<number, number>();
	for (const point of device?.points ?? []) places.set(point, places.size);
	for (const { index } of splices) places.set(index, places.size);
	if (enclosure.body !== undefined) places.set(enclosure.body, places.size);
	const tie = (end: Tie): string =>
		end.at === "point" ? `${places.get(end.point) ?? "?"}` : end.at === "wall" ? end.side : end.state;
	const points = (device?.points ?? []).map((index) => {
		const point = circuit.points[index];
		return point?.kind === "terminal" ? `${point.role}/${point.side ?? ""}/${point.clamp}/${point.screw ?? ""}` : "";
	});
	return JSON.stringify([
		width,
		circuit.plan.settings.region,
		enclosure.sort,
		enclosure.body !== undefined,
		enclosure.name === device?.name,
		coming.map(({ kind, face }) => [kind, face.text, face.wiring]),
		device === undefined ? "" : [device.kind, device.face.text, device.face.wiring, ...device.face.traits],
		points,
		splices.map((splice) => splice.connector),
		[...left, ...right].map((entry) => `${entry.side}${entry.wires.length}`),
		wires.map(({ conductor, from, to, end }) =>
			[conductor.colour, conductor.role, conductor.sort, conductor.ends[end].marked ?? "", tie(from), tie(to)].join(),
		),
		links.map(({ between, nature }) => `${places.get(between[0]) ?? "?"}${nature}${places.get(between[1]) ?? "?"}`),
	]);
}
