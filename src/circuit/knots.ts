// Last step of wiring: what is not said lands by the trade's convention, knot by knot.
import { certain } from "../base/certain.ts";
import type { Enclosure } from "./circuit.ts";
import type { Draft, DraftConductor, DraftEnd, Knot } from "./draft.ts";

/** A core that still waits in a knot. */
type Waiting = Knot["ends"][number];

/** Lands every end that waits. Two that meet land direct; more are spliced, with a pigtail to each terminal; one alone is capped. */
export function tieKnots(draft: Draft): void {
	for (const enclosure of draft.enclosures)
		for (const knot of draft.knots.get(enclosure.name)?.values() ?? []) tieKnot(draft, enclosure, knot);
}

function tieKnot(draft: Draft, enclosure: Enclosure, knot: Knot): void {
	const waiting = knot.ends.filter(({ end }) => end.state === "loose" && !end.said);
	const first = waiting[0];
	if (first === undefined) return;
	if (knot.members.some((member) => member.gathers)) return gather(draft, knot, waiting);
	const terminals = openTerminals(draft, knot);
	const [only] = terminals;
	if (waiting.length === 1 && terminals.length === 0) {
		first.end.state = "capped";
		return;
	}
	if (waiting.length === 1 && terminals.length === 1 && only !== undefined && !draft.plan.settings.splicesAlways)
		return landOn(draft, first, only.point);
	splice(
		draft,
		enclosure,
		knot,
		waiting,
		terminals.map((member) => member.point),
	);
}

/**
 * The terminals that what waits is tied to. One that the builder joined into a splice by hand is served and takes no part;
 * one on which a core was landed by hand still does, for the rest of its knot must reach it.
 */
function openTerminals(draft: Draft, knot: Knot): Knot["members"] {
	return knot.members.filter((member) => !draft.joinedByHand.has(member.point));
}

/** On a bar or bus each core takes the next port that has room; when all are full the last takes too many. */
function gather(draft: Draft, knot: Knot, waiting: readonly Waiting[]): void {
	const ports = knot.members.filter((member) => member.gathers);
	for (const core of waiting) {
		const free =
			ports.find(({ point }) => (draft.landed[point] ?? 0) === 0) ??
			ports.find(({ point }) => (draft.landed[point] ?? 0) < capacityOf(draft, point));
		landOn(draft, core, certain(free ?? ports.at(-1), "a port of the bar").point);
	}
}

function splice(
	draft: Draft,
	enclosure: Enclosure,
	knot: Knot,
	waiting: readonly Waiting[],
	terminals: readonly number[],
): void {
	const { conductor, end } = certain(waiting[0], "a core to splice");
	const point = draft.addSplice(enclosure, knot.name, conductor.role, {
		members: waiting.length + terminals.length,
		said: false,
		span: end.span,
	});
	for (const core of waiting) landOn(draft, core, point);
	for (const terminal of terminals) {
		const target = certain(draft.points[terminal], "a terminal");
		const name =
			target.kind === "terminal" ? `${target.part}~${target.terminal}` : target.name.replace(/\.case$/, "~case");
		draft.addPigtail(name, conductor, enclosure, terminal, point, false, target.span);
	}
}

function landOn(draft: Draft, { conductor, end }: Waiting, point: number): void {
	draft.land(conductor, whichEnd(conductor, end), point, false, undefined, end.span);
}

function whichEnd(conductor: DraftConductor, end: DraftEnd): 0 | 1 {
	return conductor.ends[0] === end ? 0 : 1;
}

function capacityOf(draft: Draft, point: number): number {
	const found = draft.points[point];
	return found?.kind === "terminal" ? found.capacity : 1;
}
