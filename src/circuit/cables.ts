// Second step: every hop becomes a cable, every core of it a conductor with two ends that wait in a knot.
import { certain } from "../base/certain.ts";
import type { Span } from "../base/span.ts";
import type { Role, SideSpec, System } from "../kinds/kind.ts";
import { markedRole } from "../plan/marked-role.ts";
import type { Core, CoreMarking, Fastening, Hop, HopEnd, Run, Thing } from "../plan/plan.ts";
import { sideAt } from "../plan/sides.ts";
import { knotName, thingNamed } from "./devices.ts";
import type { Draft, DraftConductor, DraftEnd } from "./draft.ts";
import { findHomeCircuits, type HomeCircuits } from "./home-circuits.ts";
import { systemOfRole } from "./systems.ts";

/** Adds every cable of the plan's runs to the draft. */
export function pullCables(draft: Draft): void {
	const homes = findHomeCircuits(draft);
	for (const run of draft.plan.runs) {
		for (const hop of run.hops) pullCable(draft, homes, run, hop);
		for (const fastening of run.fastenings) fasten(draft, fastening);
	}
	for (const thing of draft.plan.things) addLeads(draft, thing);
}

function pullCable(draft: Draft, homes: HomeCircuits, run: Run, hop: Hop): void {
	const to = thingNamed(draft, hop.to.thing);
	const toBox = enclosureOf(draft, to);
	const arriving = sideAt(to, hop.to, "arrival");
	const first = startAt(draft, hop.from);
	const looped = draft.loops.knotsOf(hop);
	const roles = hop.cable.cores.map((core) => markedRole(core, hop.cable, hop.markings));
	const conductors = hop.cable.cores.map((bought, place) => {
		const start = hop.others.length === 0 ? first : startAt(draft, poleOf(draft, hop, place));
		const { thing: from, box: fromBox, side: leaving } = start;
		const [leavingAt, arrivingAt] = fromBox === toBox ? namesOfEnds(from, leaving, to, arriving) : [];
		const system = leaving?.system ?? from.said.system;
		const role = roleOnRun(draft, hop, roles[place] ?? bought.role, { leaving, arriving, system });
		const [fromWired, toWired] =
			looped?.[place] === undefined
				? [knotAtPole(start, first, role, roles), knotFor(to, arriving, role, roles)]
				: [nameKnot(from, looped[place][0]), nameKnot(to, looped[place][1])];
		const [fromKnot, toKnot] = [atStage(draft, fromBox, role, fromWired), atStage(draft, toBox, role, toWired)];
		const conductor = draft.addConductor({
			index: draft.conductors.length,
			name: draft.conductorName(`${hop.tag}.${bought.colour}`),
			colour: bought.colour,
			role,
			gauge: bought.gauge,
			material: hop.cable.material,
			stranded: bought.stranded,
			insulation: hop.cable.insulation,
			length: lengthOf(hop, to),
			sort: "core",
			cable: hop.tag,
			ends: [
				waitingEnd(fromBox, hop, bought, keepApart(homes, run, fromBox, fromKnot), 0, leavingAt, leaving),
				waitingEnd(
					toBox,
					hop,
					bought,
					hop.to.side === undefined ? keepApart(homes, run, toBox, toKnot) : toKnot,
					1,
					arrivingAt,
					arriving,
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
		system: systemOfCores(draft, conductors, first.thing),
		from: first.box,
		to: toBox,
		...(hop.length === undefined ? {} : { length: hop.length.value }),
		lengthText: hop.lengthText,
		slack: hop.slack,
		conductors,
		flexible: hop.cable.flexible,
		span: hop.span,
	});
}

/** The length of a cable's conductors in metres, with what is left over at its ends and coiled up for later. */
function lengthOf({ length, slack }: Hop, to: Thing): number | undefined {
	return length === undefined ? undefined : length.value + 2 * (slack?.value ?? 0) + (to.blueprint.coil ?? 0);
}

/** Where cores leave from: the thing, its box and its side. */
function startAt(draft: Draft, end: HopEnd) {
	const thing = thingNamed(draft, end.thing);
	return { thing, box: enclosureOf(draft, thing), side: sideAt(thing, end, "onward") };
}

/** Where devices are still to come only the grounds are made up; all else waits, capped (common practice for a rough-in). */
function atStage(
	draft: Draft,
	enclosure: DraftEnd["enclosure"],
	role: Role,
	knot: string | undefined,
): string | undefined {
	if (!draft.comingBoxes.has(enclosure.name)) return knot;
	return role === "ground" ? "ground" : undefined;
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

/** Where a core starts, of poles that run together: at the first that is for it, else at the one in its place; a ground with the first. */
function poleOf(draft: Draft, hop: Hop, position: number): HopEnd {
	const core = hop.cable.cores[position];
	if (hop.others.length === 0 || core === undefined || core.role === "ground") return hop.from;
	const poles = [hop.from, ...hop.others];
	const fitting = poles.filter((pole) => {
		const thing = thingNamed(draft, pole.thing);
		const side = sideAt(thing, pole, "onward");
		const role = side?.lone?.role ?? draft.loneRoles.get(thing.name);
		return role === undefined ? side?.knots[core.role] !== undefined : role === core.role;
	});
	return (fitting.length === 1 ? fitting[0] : undefined) ?? poles[position] ?? hop.others.at(-1) ?? hop.from;
}

/** Where a core leaves from; a second hot takes the only hot of a further pole, as that of the breaker beside the first. */
function knotAtPole(
	{ thing, side }: ReturnType<typeof startAt>,
	first: ReturnType<typeof startAt>,
	role: Role,
	roles: readonly Role[],
): string | undefined {
	const own = knotFor(thing, side, role, roles);
	return own === undefined && role === "hot2" && thing !== first.thing ? knotFor(thing, side, "hot", roles) : own;
}

/** What a core is for whose colour says `role`: one that runs by itself is what it is put to, any other what it says where it begins. */
function roleOnRun(
	draft: Draft,
	hop: Hop,
	role: Role,
	at: { readonly leaving: SideSpec | undefined; readonly arriving: SideSpec | undefined; readonly system: System },
): Role {
	const byColour = at.system === "dc" ? inDirectCurrent[role] : role;
	if (hop.cable.cores.length > 1) return byColour;
	const inLine = draft.loneRoles.get(hop.from.thing) ?? draft.loneRoles.get(hop.to.thing);
	return at.leaving?.lone?.role ?? at.arriving?.lone?.role ?? inLine ?? byColour;
}

/** House cable and cord on direct current: what would be hot is positive, what would be neutral is negative (common practice). */
const inDirectCurrent: Readonly<Record<Role, Role>> = {
	hot: "positive",
	hot2: "positive",
	hot3: "positive",
	neutral: "negative",
	ground: "ground",
	positive: "positive",
	negative: "negative",
};

/** A cable belongs to the system of what its cores are for; grounds alone to that of what they come from. */
function systemOfCores(draft: Draft, conductors: readonly number[], from: Thing): System {
	for (const index of conductors) {
		const system = systemOfRole(certain(draft.conductors[index], "a core").role);
		if (system !== undefined) return system;
	}
	return from.said.system;
}

/** Two studs on one another: a joint without a conductor. */
function fasten(draft: Draft, { from, to, span }: Fastening): void {
	const [first, second] = [loneTerminal(draft, from, "onward"), loneTerminal(draft, to, "arrival")];
	if (first === undefined || second === undefined) return;
	draft.links.push({
		index: draft.links.length,
		between: [first, second],
		part: to.thing,
		nature: "solid",
		contact: undefined,
		modes: undefined,
		protection: undefined,
		span,
	});
}

/** The terminal at which a side takes a conductor that runs by itself. */
function loneTerminal(draft: Draft, end: HopEnd, way: "onward" | "arrival"): number | undefined {
	const thing = thingNamed(draft, end.thing);
	const knot = sideAt(thing, end, way)?.lone?.knot;
	const place = thing.blueprint.terminals.findIndex((spec) => spec.knot !== undefined && spec.knot === knot);
	return draft.partByName.get(thing.name)?.points[place];
}

/** Leads that come with a device and land in what it sits in, such as the neutral tail of a ground-fault breaker. */
function addLeads(draft: Draft, thing: Thing): void {
	if (draft.coming.has(thing.name)) return;
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
	side: SideSpec | undefined,
): DraftEnd {
	const marked =
		hop.markings.length === 0
			? undefined
			: hop.markings.find((marking) => marking.core === core.colour && marksEnd(marking, hop, which));
	return {
		point: undefined,
		state: knot === undefined ? (side?.leaves ?? "capped") : "loose",
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

/** The knot a core of a role goes to at a side, beside others for `roles`; undefined where it is capped. */
function knotFor(thing: Thing, side: SideSpec | undefined, role: Role, roles: readonly Role[]): string | undefined {
	if (roles.length === 1 && side?.lone !== undefined) return knotName(thing, side.lone.knot);
	const knots =
		(roles.includes("hot3") ? side?.withThirdHot : undefined) ??
		(roles.includes("hot2") ? side?.withSecondHot : undefined) ??
		side?.knots;
	return nameKnot(thing, knots?.[role]);
}

function nameKnot(thing: Thing, knot: string | undefined): string | undefined {
	return knot === undefined ? undefined : knotName(thing, knot);
}

function enclosureOf(draft: Draft, thing: Thing): DraftEnd["enclosure"] {
	return certain(draft.enclosureOfThing.get(thing.name), `the enclosure of ${thing.name}`);
}
