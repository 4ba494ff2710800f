// Circuits with something in them changed: ends on other points, conductors more, fewer or other, links other. The given one stays as it is.
import { certain } from "../base/certain.ts";
import type { Circuit, Conductor, End, Link, Part, Point, Protection } from "../circuit/circuit.ts";
import { usualTermination } from "../circuit/terminations.ts";

/** An end that goes to another point, or comes off what it is on. */
export interface Move {
	readonly conductor: Conductor;
	readonly which: 0 | 1;
	/** Undefined: it hangs loose. */
	readonly to: number | undefined;
}

/** The circuit with ends on other points; a joint that gets more of them than it has ports is one of a larger size. */
export function moveEnds(circuit: Circuit, moves: readonly Move[]): Circuit {
	const conductors = [...circuit.conductors];
	for (const { conductor, which, to } of moves) {
		const now = certain(conductors[conductor.index], "a conductor");
		const end = to === undefined ? loosen(now.ends[which]) : land(circuit, now, which, to);
		conductors[conductor.index] = { ...now, ends: which === 0 ? [end, now.ends[1]] : [now.ends[0], end] };
	}
	return { ...circuit, conductors, points: widenJoints(circuit, conductors, moves) };
}

/** The circuit with one conductor more, from one point to another of a box. Both points take it, so that it is no question of room. */
export function addJumper(circuit: Circuit, one: Point, other: Point): Circuit {
	// Of the wire that is in use there.
	const like =
		circuit.conductors.find(({ ends }) => ends.some(({ point }) => point === one.index || point === other.index)) ??
		certain(circuit.conductors[0], "a conductor");
	const end = (point: Point): End => ({
		point: point.index,
		state: "landed",
		enclosure: point.enclosure,
		termination: usualTermination(like.stranded, point, circuit.plan.settings),
		marked: undefined,
		at: undefined,
		said: true,
		span: point.span,
	});
	const jumper: Conductor = {
		...like,
		index: circuit.conductors.length,
		name: `${one.name}~${other.name}`,
		role: one.role,
		length: undefined,
		sort: "jumper",
		cable: undefined,
		ends: [end(one), end(other)],
		span: one.span,
	};
	const points = circuit.points.map((point) => (point === one || point === other ? withRoom(point) : point));
	return {
		...circuit,
		points,
		conductors: [...circuit.conductors, jumper],
		conductorByName: new Map(circuit.conductorByName).set(jumper.name, jumper.index),
	};
}

/** The circuit with some conductors as `change` makes them. */
export function changeConductors(
	circuit: Circuit,
	which: ReadonlySet<number>,
	change: (conductor: Conductor) => Conductor,
): Circuit {
	return {
		...circuit,
		conductors: circuit.conductors.map((conductor) => (which.has(conductor.index) ? change(conductor) : conductor)),
	};
}

/** The circuit without some conductors. */
export function removeConductors(circuit: Circuit, which: ReadonlySet<number>): Circuit {
	const places = new Map<number, number>();
	for (const { index } of circuit.conductors) if (!which.has(index)) places.set(index, places.size);
	const conductors = circuit.conductors.flatMap((conductor) => {
		const index = places.get(conductor.index);
		return index === undefined ? [] : [{ ...conductor, index }];
	});
	const cables = circuit.cables.map((cable) => ({
		...cable,
		conductors: cable.conductors.flatMap((index) => places.get(index) ?? []),
	}));
	return {
		...circuit,
		conductors,
		cables,
		conductorByName: new Map(conductors.map(({ name, index }) => [name, index])),
		cableByTag: new Map(cables.map((cable) => [cable.tag, cable])),
	};
}

/** The circuit with some links as `change` makes them; they keep their positions. */
export function changeLinks(circuit: Circuit, which: ReadonlySet<number>, change: (link: Link) => Link): Circuit {
	return { ...circuit, links: circuit.links.map((link) => (which.has(link.index) ? change(link) : link)) };
}

/** The circuit with one part as `change` makes it. */
export function changePart(circuit: Circuit, part: Part, change: (part: Part) => Part): Circuit {
	const changed = change(part);
	return {
		...circuit,
		parts: circuit.parts.map((each) => (each === part ? changed : each)),
		partByName: new Map(circuit.partByName).set(part.name, changed),
	};
}

/** The circuit with a bolt in place of a protective device: its ways are closed for good, and it opens on nothing. */
export function boltOver(circuit: Circuit, device: Protection): Circuit {
	const { links: own, index } = device;
	const later = (protection: number | undefined): number | undefined =>
		protection === undefined || protection < index ? protection : protection === index ? undefined : protection - 1;
	return {
		...circuit,
		links: circuit.links.map((link) => ({
			...link,
			...(own.includes(link.index) ? closed : {}),
			protection: later(link.protection),
		})),
		protections: circuit.protections
			.filter((protection) => protection !== device)
			.map((protection) => ({ ...protection, index: later(protection.index) ?? index })),
	};
}

/** What a way through a part is that never opens. */
export const closed = { nature: "solid", contact: undefined } as const satisfies Partial<Link>;

function loosen(end: End): End {
	return { ...end, point: undefined, state: "loose", said: true };
}

function land(circuit: Circuit, conductor: Conductor, which: 0 | 1, to: number): End {
	const point = certain(circuit.points[to], "a point");
	const termination = usualTermination(conductor.stranded, point, circuit.plan.settings);
	return { ...conductor.ends[which], point: to, state: "landed", enclosure: point.enclosure, termination, said: true };
}

/** A hand that puts a wire more into a joint takes a connector with room for it. */
function widenJoints(circuit: Circuit, conductors: readonly Conductor[], moves: readonly Move[]): readonly Point[] {
	const joints = moves.filter(({ to }) => to !== undefined && circuit.points[to]?.kind === "splice");
	if (joints.length === 0) return circuit.points;
	const points = [...circuit.points];
	for (const { to } of joints) {
		const joint = to === undefined ? undefined : points[to];
		if (joint?.kind !== "splice") continue;
		const wires = conductors.flatMap(({ ends }) => ends.filter(({ point }) => point === joint.index)).length;
		if (wires > joint.ports) points[joint.index] = { ...joint, ports: wires };
	}
	return points;
}

function withRoom(point: Point): Point {
	switch (point.kind) {
		case "terminal":
			return { ...point, capacity: point.capacity + 1 };
		case "splice":
			return { ...point, ports: point.ports + 1 };
		case "body":
			return point;
	}
}
