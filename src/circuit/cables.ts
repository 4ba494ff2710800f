// Second step: every hop becomes a cable, every core of it a conductor with two ends that wait in a knot.
import { certain } from "../base/certain.ts";
import type { Span } from "../base/span.ts";
import type { SideSpec } from "../kinds/kind.ts";
import { markedRole } from "../plan/marked-role.ts";
import type { Core, CoreMarking, Hop, HopEnd, Run, Thing } from "../plan/plan.ts";
import { knotName, thingNamed } from "./devices.ts";
import type { Draft, DraftConductor, DraftEnd } from "./draft.ts";
import { findHomeCircuits, type HomeCircuits } from "./home-circuits.ts";

/** Adds every cable of the plan's runs to the draft. */
export function pullCables(draft: Draft): void {
	const homes = findHomeCircuits(draft);
	for (const run of draft.plan.runs) for (const hop of run.hops) pullCable(draft, homes, run, hop);
	for (const thing of draft.plan.things) addLeads(draft, thing);
}

function pullCable(draft: Draft, homes: HomeCircuits, run: Run, hop: Hop): void {
	const from = thingNamed(draft, hop.from.thing);
	const to = thingNamed(draft, hop.to.thing);
	const [fromBox, toBox] = [enclosureOf(draft, from), enclosureOf(draft, to)];
	const leaving = sideOf(from, hop.from, from.blueprint.onward);
	const arriving = sideOf(to, hop.to, to.blueprint.sides[0]?.name);
	const [leavingAt, arrivingAt] = fromBox === toBox ? namesOfEnds(from, leaving, to, arriving) : [];
	const looped = draft.loops.knotsOf(hop);
	const conductors = hop.cable.cores.map((bought, place) => {
		const [fromKnot, toKnot] =
			looped?.[place] === undefined
				? [knotFor(from, leaving, bought, hop), knotFor(to, arriving, bought, hop)]
				: [nameKnot(from, looped[place][0]), nameKnot(to, looped[place][1])];
		const core = { ...bought, role: markedRole(bought, hop.cable, hop.markings) };
		const conductor = draft.addConductor({
			index: draft.conductors.length,
			name: draft.conductorName(`${hop.tag}.${core.colour}`),
			colour: core.colour,
			role: core.role,
			gauge: core.gauge,
			material: hop.cable.material,
			stranded: core.stranded,
			insulation: hop.cable.insulation,
			length: hop.length?.value,
			sort: "core",
			cable: hop.tag,
			ends: [
				waitingEnd(fromBox, hop, core, keepApart(homes, run, fromBox, fromKnot), 0, leavingAt),
				waitingEnd(
					toBox,
					hop,
					core,
					hop.to.side === undefined ? keepApart(homes, run, toBox, toKnot) : toKnot,
					1,
					arrivingAt,
				),
			],
			span: hop.span,
		});
		for (const end of conductor.ends) waitInKnot(draft, conductor, end);
		return conductor.index;
	});
	draft.cables.push({
		tag: hop.tag,
		make: hop.cable.text,
		run: run.name,
		runSort: run.sort,
		system: hop.cable.system,
		from: fromBox,
		to: toBox,
		...(hop.length === undefined ? {} : { length: hop.length.value }),
		lengthText: hop.lengthText,
		conductors,
		flexible: hop.cable.flexible,
		span: hop.span,
	});
}

/** Two circuits in one box share their grounds and nothing else: a stranger's hots and neutrals go through by themselves. */
function keepApart(
	homes: HomeCircuits,
	run: Run,
	enclosure: DraftEnd["enclosure"],
	knot: string | undefined,
): string | undefined {
	const isShared = knot === "hot" || knot === "hot2" || knot === "hot3" || knot === "neutral";
	if (!isShared || !homes.isStranger(run, enclosure.name)) return knot;
	return `${knot}@${homes.circuitOf(run) ?? ""}`;
}

/** Leads that come with a device and land in what it sits in, such as the neutral tail of a ground-fault breaker. */
function addLeads(draft: Draft, thing: Thing): void {
	for (const lead of thing.blueprint.leads ?? []) {
		const enclosure = enclosureOf(draft, thing);
		const point = certain(draft.terminalOf(thing, lead.mine), `${thing.name}.${lead.mine}`);
		const terminal = certain(draft.points[point], "the lead's terminal");
		const end = (knot: string | undefined): DraftEnd => ({
			point: undefined,
			state: "loose",
			enclosure,
			termination: "bare",
			marked: undefined,
			at: undefined,
			said: false,
			span: thing.span,
			knot,
		});
		const conductor = draft.addConductor({
			index: draft.conductors.length,
			name: draft.conductorName(`${thing.name}~${lead.mine}`),
			colour: lead.colour,
			role: terminal.role,
			gauge: lead.gauge,
			material: "copper",
			stranded: true,
			insulation: 90,
			length: undefined,
			sort: "pigtail",
			cable: undefined,
			ends: [end(undefined), end(lead.ownerKnot)],
			span: thing.span,
		});
		draft.leads.set(terminal.name, conductor);
		draft.land(conductor, 0, point, false, "bare", thing.span);
		waitInKnot(draft, conductor, conductor.ends[1]);
	}
}

function waitInKnot(draft: Draft, conductor: DraftConductor, end: DraftEnd): void {
	if (end.knot !== undefined) draft.knot(end.enclosure, end.knot).ends.push({ conductor, end });
}

function waitingEnd(
	enclosure: DraftEnd["enclosure"],
	hop: Hop,
	core: Core,
	knot: string | undefined,
	which: 0 | 1,
	at: string | undefined,
): DraftEnd {
	const marked =
		hop.markings.length === 0
			? undefined
			: hop.markings.find((marking) => marking.core === core.colour && marksEnd(marking, hop, which));
	return {
		point: undefined,
		state: knot === undefined ? "capped" : "loose",
		enclosure,
		termination: core.stranded ? "bare" : "solid",
		marked: marked?.colour,
		said: false,
		span: spanOfEnd(hop, which),
		knot,
		at,
	};
}

/** What tells the two ends of a cable apart within one enclosure: the things they are at, or the sides of the one thing. */
function namesOfEnds(
	from: Thing,
	leaving: SideSpec | undefined,
	to: Thing,
	arriving: SideSpec | undefined,
): readonly [string, string] {
	if (from !== to) return [from.name, to.name];
	return [`${from.name}.${leaving?.name ?? ""}`, `${to.name}.${arriving?.name ?? ""}`];
}

function marksEnd(marking: CoreMarking, hop: Hop, which: 0 | 1): boolean {
	return marking.at === undefined || marking.at === (which === 0 ? hop.from.thing : hop.to.thing);
}

function spanOfEnd(hop: Hop, which: 0 | 1): Span {
	return which === 0 ? hop.from.span : hop.to.span;
}

function sideOf(thing: Thing, end: HopEnd, usual: string | undefined): SideSpec | undefined {
	const name = end.side ?? usual;
	return thing.blueprint.sides.find((side) => side.name === name);
}

/** The knot a core goes to at a side; undefined where it is capped. */
function knotFor(thing: Thing, side: SideSpec | undefined, bought: Core, hop: Hop): string | undefined {
	const roles = hop.cable.cores.map((core) => markedRole(core, hop.cable, hop.markings));
	const knots =
		(roles.includes("hot3") ? side?.withThirdHot : undefined) ??
		(roles.includes("hot2") ? side?.withSecondHot : undefined) ??
		side?.knots;
	return nameKnot(thing, knots?.[markedRole(bought, hop.cable, hop.markings)]);
}

function nameKnot(thing: Thing, knot: string | undefined): string | undefined {
	return knot === undefined ? undefined : knotName(thing, knot);
}

function enclosureOf(draft: Draft, thing: Thing): DraftEnd["enclosure"] {
	return certain(draft.enclosureOfThing.get(thing.name), `the enclosure of ${thing.name}`);
}
