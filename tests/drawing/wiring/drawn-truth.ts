// Holds a drawing against its circuit: every conductor must end where it is, and nothing may be missing.
import type { Circuit, Conductor } from "../../../src/circuit/circuit.ts";
import type { Group, Mark, Sheet, WireMark, XY } from "../../../src/drawing/scene.ts";
import { partSystems } from "../../../src/drawing/system-parts.ts";

/** What is wrong with a plan's wiring sheets, in words; empty when every conductor that is not for direct current is drawn from point to point. */
export function untruths(whole: Circuit, sheets: readonly Sheet[]): string[] {
	const { circuit, shows } = partSystems(whole).alternating;
	const groups = new Map<string, Group[]>();
	for (const sheet of sheets)
		for (const group of sheet.groups) groups.set(group.name, [...(groups.get(group.name) ?? []), group]);
	const wrong: string[] = [];
	for (const enclosure of circuit.enclosures) {
		const drawn = groups.get(`box ${enclosure.name}`) ?? [];
		if (drawn.length === 0) wrong.push(`${enclosure.name} is not drawn`);
	}
	for (const conductor of circuit.conductors.filter(({ index }) => shows.conductor(index)))
		for (const end of [0, 1] as const) {
			const { enclosure, point, state } = conductor.ends[end];
			const found = (groups.get(`box ${enclosure.name}`) ?? []).some((group) =>
				endsRight(circuit, group, conductor, end),
			);
			if (!found)
				wrong.push(
					`${conductor.name} end ${end} in ${enclosure.name} should be ${point === undefined ? state : (circuit.points[point]?.name ?? "")}`,
				);
		}
	for (const group of sheets.flatMap((sheet) => sheet.groups))
		if (group.name.startsWith("box ")) wrong.push(...strays(circuit, group));
	for (const cable of circuit.cables) {
		const strands = new Set(
			(groups.get(`cable ${cable.tag}`) ?? []).flatMap(({ marks }) =>
				marks.flatMap((mark) => (mark.kind === "wire" ? [mark.of] : [])),
			),
		);
		for (const index of cable.conductors)
			if (!strands.has(circuit.conductors[index]?.name ?? "")) wrong.push(`${cable.tag} lacks strand ${index}`);
	}
	return wrong;
}

/** Wires of a box that end on something that is not theirs, or on nothing. */
function strays(circuit: Circuit, group: Group): string[] {
	const wall = group.marks.find((mark) => mark.kind === "rectangle" && mark.as === "enclosure");
	if (wall?.kind !== "rectangle") return [`${group.name} has no walls`];
	return group.marks.flatMap((mark) => {
		if (mark.kind !== "wire") return [];
		const conductor = circuit.conductors[circuit.conductorByName.get(mark.of) ?? -1];
		if (conductor === undefined) return [`${group.name} draws ${mark.of}, which is no conductor`];
		// A sleeve of another colour lies on its wire and ends nowhere by itself.
		if (mark.colour !== conductor.colour) return [];
		const own = new Set(conductor.ends.map(({ point }) => (point === undefined ? "" : circuit.points[point]?.name)));
		return [mark.points[0], mark.points.at(-1)].flatMap((tip) => {
			if (tip === undefined) return [`${mark.of} has no ends`];
			const atWall = Math.abs(tip.x - wall.x) < 1 || Math.abs(tip.x - wall.x - wall.width) < 1;
			const onOwn = group.marks.some((other) => "of" in other && own.has(other.of ?? "") && touches(tip, other));
			const free = group.marks.some((other) => other.kind === "symbol" && other.of === mark.of && near(tip, other, 10));
			// A jumper from a point to itself is a stump.
			return atWall || onOwn || free || own.size === 1 ? [] : [`${mark.of} strays in ${group.name}`];
		});
	});
}

/** Whether the group holds a way of the conductor that ends on the mark of its point, or on the mark of a free end. */
function endsRight(circuit: Circuit, group: Group, conductor: Conductor, end: 0 | 1): boolean {
	const { point, state } = conductor.ends[end];
	const ways = group.marks.filter((mark): mark is WireMark => mark.kind === "wire" && mark.of === conductor.name);
	const tips = ways.flatMap(({ points }) => [points[0], points.at(-1)].filter((tip) => tip !== undefined));
	if (point === undefined) {
		const symbol = state === "capped" ? "conductor-capped" : "conductor-loose";
		return group.marks.some(
			(mark) =>
				mark.kind === "symbol" &&
				mark.symbol === symbol &&
				mark.of === conductor.name &&
				tips.some((tip) => near(tip, mark, 10)),
		);
	}
	const name = circuit.points[point]?.name;
	return group.marks.some((mark) => "of" in mark && mark.of === name && tips.some((tip) => touches(tip, mark)));
}

function touches(tip: XY, mark: Mark): boolean {
	if (mark.kind === "circle" && mark.as === "terminal") return near(tip, mark, 0.6);
	if (mark.kind === "symbol") return near(tip, mark, 0.6);
	if (mark.kind === "rectangle" && mark.as === "item")
		return tip.x > mark.x && tip.x < mark.x + mark.width && tip.y > mark.y && tip.y < mark.y + mark.height;
	return false;
}

function near(one: XY, other: XY, most: number): boolean {
	return Math.abs(one.x - other.x) <= most && Math.abs(one.y - other.y) <= most;
}
