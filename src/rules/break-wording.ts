// How a lost way is told: where it ends, what goes without, and what to land where.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Break } from "../analysis/breaks.ts";
import type { Landings } from "../analysis/landings.ts";
import type { PoleSort } from "../analysis/poles.ts";
import { certain } from "../base/certain.ts";
import type { Finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { keyOfMistake, tellConductor, tellLanded, tellPoint } from "./mistake-wording.ts";

/** What is where it should not be: `bunks-1.bare is on nothing in b1`. */
export function tellBreak({ circuit, landings }: Analysis, { cause, sort }: Break): string {
	switch (cause.kind) {
		case "core":
			return `${cause.cable} has no ${sort} conductor`;
		case "empty":
			return `${tellLeftOut(circuit, landings, cause.point, sort) ?? `no ${sort} is on ${tellPoint(circuit, cause.point, sort)}`}`;
		default: {
			const conductor = certain(circuit.conductors[cause.conductor], "a conductor");
			const { point, state, enclosure } = conductor.ends[cause.which];
			const name = tellConductor(circuit, cause.conductor);
			if (cause.kind === "apart") return `${name} is not joined to the other ${sort}s in ${enclosure.name}`;
			if (point === undefined) return `${name} is ${state === "capped" ? "capped" : "on nothing"} in ${enclosure.name}`;
			return `${name} is ${tellLanded(circuit, point, landings.sortAt(point))}`;
		}
	}
}

/** What to do about it. */
export function cureBreak({ circuit, landings }: Analysis, { cause, sort, victims }: Break): string {
	const first = tellPoint(circuit, victims[0] ?? -1, sort);
	switch (cause.kind) {
		case "core":
			return `Put ${cause.cable} right first: see what is said of the cable.`;
		case "empty":
			return cureLeftOut(circuit, landings, cause.point, sort) ?? `Join ${first} to the ${sort}s of its box.`;
		default: {
			const conductor = certain(circuit.conductors[cause.conductor], "a conductor");
			const { enclosure } = conductor.ends[cause.which];
			// A pigtail is on its own terminal already: what is wrong is the joint it is in.
			if (conductor.sort === "pigtail")
				return `In ${enclosure.name}, move ${tellConductor(circuit, cause.conductor)} to the ${sort}s of ${enclosure.name}.`;
			const together = cause.kind === "off" ? joinable(circuit, landings, conductor, cause.which, sort) : undefined;
			if (together !== undefined) return `In ${enclosure.name}, write \`join ${together.join(", ")}\`.`;
			const isHere = circuit.points[victims[0] ?? -1]?.enclosure.name === enclosure.name;
			const target = isHere && victims.length === 1 ? first : `the ${sort}s of ${enclosure.name}`;
			return `In ${enclosure.name}, land ${conductor.name} on ${target}.`;
		}
	}
}

/** The names a drawing marks: the end or point at which the way is lost, then what goes without. */
export function markBreak({ circuit }: Analysis, { cause, victims }: Break): readonly string[] {
	const hit = victims.slice(0, mostShown).map((point) => circuit.points[point]?.name ?? "");
	if (cause.kind === "core") return [cause.cable, ...hit];
	if (cause.kind === "empty") return hit;
	const conductor = certain(circuit.conductors[cause.conductor], "a conductor");
	const { point } = conductor.ends[cause.which];
	return [...(point === undefined ? [] : [circuit.points[point]?.name ?? ""]), conductor.name, ...hit];
}

/** The places of what goes without, where they are not the place of the break itself. */
export function pointAtVictims({ circuit }: Analysis, { victims, span }: Break): Finding["also"] {
	const places = new Map<string, Finding["also"][number]>();
	for (const index of victims) {
		const point = circuit.points[index];
		if (point === undefined || places.size >= mostShown) continue;
		const { line, column } = point.span;
		if (line !== span.line || column !== span.column)
			places.set(`${line}:${column}`, { span: point.span, label: point.name });
	}
	return [...places.values()];
}

/** The key of the finding that a break follows from: a mix-up of wires in that box, or a cable that lacks one. */
export function keyBehindBreak({ crossings, network }: ModeState, { cause }: Break): string | undefined {
	if (cause.kind === "core") return `conductors-too-few@${cause.cable}`;
	if (cause.kind === "off" || cause.kind === "empty") return undefined;
	const own = cause.kind === "misplaced" ? keyOfMistake(crossings, cause.root) : undefined;
	if (own !== undefined) return own;
	const box = network.circuit.conductors[cause.conductor]?.ends[cause.which].enclosure.name;
	const roots = [...crossings.bridges, ...(cause.kind === "misplaced" ? crossings.strays : [])].map(({ root }) => root);
	const nearby = roots.find((root) => root.enclosure === box);
	return nearby === undefined ? undefined : keyOfMistake(crossings, nearby.key);
}

/**
 * Every wire of a sort in a box, where they may all be joined: of one circuit, past no switch, in no panel, and of hots only two,
 * for of more one may come back from a switch.
 */
function joinable(
	circuit: Circuit,
	landings: Landings,
	off: Conductor,
	which: 0 | 1,
	sort: PoleSort,
): readonly string[] | undefined {
	const box = off.ends[which].enclosure;
	const runs = new Set(circuit.cables.filter(({ from, to }) => from === box || to === box).map(({ run }) => run));
	const carries = (wire: Conductor): boolean =>
		([0, 1] as const).some((end) => wire.ends[end].enclosure === box && landings.carriedBy(wire, end) === sort);
	const here = circuit.conductors.filter((wire) => wire.sort !== "jumper" && carries(wire));
	// What a switch or ground-fault device in the box parts must not be joined past it.
	const parts = circuit.links.some(
		({ contact, part }) => contact !== undefined && circuit.partByName.get(part)?.enclosure === box,
	);
	if (parts && sort !== "ground") return undefined;
	const isPlain = sort !== "hot" || (here.length === 2 && here.every((wire) => wire.sort === "core"));
	return box.sort === "panel" || runs.size > 1 || here.length < 2 || !isPlain
		? undefined
		: here.map(({ index }) => tellConductor(circuit, index));
}

function tellLeftOut(circuit: Circuit, landings: Landings, point: number, sort: PoleSort): string | undefined {
	const members = joinedElsewhere(circuit, landings, point, sort);
	return members === undefined
		? undefined
		: `the joint of ${listNames(members)} leaves out ${nameToWrite(circuit, point)}`;
}

function cureLeftOut(circuit: Circuit, landings: Landings, point: number, sort: PoleSort): string | undefined {
	const members = joinedElsewhere(circuit, landings, point, sort);
	const box = circuit.points[point]?.enclosure.name;
	return members === undefined
		? undefined
		: `In ${box ?? "the box"}, add ${nameToWrite(circuit, point)} to the joint: \`join ${[...members, nameToWrite(circuit, point)].join(", ")}\`.`;
}

/** A point as a plan writes it: the metal of a box is its case. */
function nameToWrite(circuit: Circuit, index: number): string {
	const point = circuit.points[index];
	return point?.kind === "body" ? `${point.enclosure.name}.case` : (point?.name ?? "");
}

/** What the one joint of its sort in a point's box was said to be made of; undefined where nothing was said. */
function joinedElsewhere(
	circuit: Circuit,
	landings: Landings,
	index: number,
	sort: PoleSort,
): readonly string[] | undefined {
	const box = circuit.points[index]?.enclosure.name;
	const joints = circuit.points.filter(
		(point) => point.kind === "splice" && point.enclosure.name === box && landings.sortAt(point.index) === sort,
	);
	const [joint] = joints;
	if (joints.length !== 1 || joint?.kind !== "splice" || !joint.said) return undefined;
	return circuit.conductors.flatMap(({ index: at, ends }) =>
		ends.some(({ point }) => point === joint.index) ? [tellConductor(circuit, at)] : [],
	);
}

const mostShown = 8;
