// First step: every thing becomes a part with terminals in an enclosure, its internal ways become links.
import { certain } from "../base/certain.ts";
import type { Finding } from "../base/finding.ts";
import type { Role } from "../kinds/kind.ts";
import { foldName } from "../plan/names.ts";
import type { Thing } from "../plan/plan.ts";
import { strapBars } from "./bar-straps.ts";
import type { Enclosure, GroundFaultDevice, Link, Load, Part, Protection, Source, Switchovers } from "./circuit.ts";
import type { Draft } from "./draft.ts";
import { tieHandles } from "./handle-ties.ts";

/** What the devices bring besides points and links. */
export interface Equipment {
	readonly loads: Load[];
	readonly sources: Source[];
	readonly protections: Protection[];
	readonly groundFaults: GroundFaultDevice[];
	/** Resolved when the modes are known. */
	readonly switchovers: { readonly conditions: Entries<"conditions">; readonly transfers: Entries<"transfers"> };
}

/** One of the lists of switchovers while it grows. */
type Entries<List extends keyof Switchovers> = Map<
	number,
	Switchovers[List] extends ReadonlyMap<number, infer Entry> ? Entry : never
>;

/** Adds every thing of the plan to the draft. */
export function placeDevices(draft: Draft, findings: Finding[]): Equipment {
	const equipment: Equipment = {
		loads: [],
		sources: [],
		protections: [],
		groundFaults: [],
		switchovers: { conditions: new Map(), transfers: new Map() },
	};
	const ties = tieHandles(draft.plan, findings);
	for (const thing of draft.plan.things) placeDevice(draft, thing, equipment, ties);
	for (const thing of draft.plan.things) plugIn(draft, thing);
	strapBars(draft);
	return equipment;
}

function placeDevice(draft: Draft, thing: Thing, equipment: Equipment, ties: ReadonlyMap<string, string>): void {
	const enclosure = enclosureFor(draft, thing);
	draft.enclosureOfThing.set(thing.name, enclosure);
	const { blueprint } = thing;
	const coming = draft.coming.has(thing.name);
	const points = coming ? [] : blueprint.terminals.map((spec) => draft.addTerminal(thing, spec, enclosure));
	const part: Part = {
		name: thing.name,
		label: thing.label,
		kind: thing.kind.name,
		enclosure,
		points,
		face: blueprint.face,
		owner: thing.owner,
		run: thing.run,
		coming,
		span: thing.span,
	};
	draft.parts.push(part);
	draft.partByName.set(part.name, part);
	if (coming) {
		draft.comingBoxes.add(enclosure.name);
		return tieBody(draft, thing, enclosure);
	}
	const pointOf = (terminal: string): number => certain(draft.terminalOf(thing, terminal), `${thing.name}.${terminal}`);
	tieTerminals(draft, thing, enclosure, points);
	const protection = blueprint.protection === undefined ? undefined : equipment.protections.length;
	const protecting: number[] = [];
	for (const spec of blueprint.links ?? []) {
		const [from, to] = spec.between.map((terminal) => (terminal === "^case" ? enclosure.body : pointOf(terminal)));
		if (from === undefined || to === undefined) continue;
		const link: Link = {
			index: draft.links.length,
			between: [from, to],
			part: thing.name,
			nature: spec.nature,
			contact: spec.contact && {
				group: `${ties.get(thing.name) ?? thing.name}:${spec.contact.group}`,
				positions: spec.contact.positions,
				closed: spec.contact.closed,
			},
			modes: undefined,
			protection: spec.protects === true ? protection : undefined,
			span: thing.span,
		};
		if (link.protection !== undefined) protecting.push(link.index);
		if (spec.contact !== undefined && spec.contact.group === blueprint.transfer?.group)
			equipment.switchovers.transfers.set(link.index, { thing, closed: spec.contact.closed });
		if (spec.when !== undefined) equipment.switchovers.conditions.set(link.index, { thing, when: spec.when });
		draft.links.push(link);
	}
	if (blueprint.protection !== undefined)
		equipment.protections.push({
			index: equipment.protections.length,
			part: thing.name,
			...blueprint.protection,
			links: protecting,
			span: thing.span,
		});
	for (const load of blueprint.loads ?? [])
		equipment.loads.push({ ...load, part: thing.name, between: [pointOf(load.between[0]), pointOf(load.between[1])] });
	if (blueprint.groundFault !== undefined) {
		const { line, load, ownOutlet, trip, selective } = blueprint.groundFault;
		const pair = ({ hot, hot2, neutral }: typeof line): GroundFaultDevice["line"] => ({
			hot: pointOf(hot),
			...(hot2 === undefined ? {} : { hot2: pointOf(hot2) }),
			neutral: pointOf(neutral),
		});
		equipment.groundFaults.push({
			part: thing.name,
			line: pair(line),
			load: pair(load),
			ownOutlet,
			trip,
			selective: selective === true,
			span: thing.span,
		});
	}
	if (blueprint.source !== undefined) addSource(thing, blueprint.source, pointOf, equipment);
}

function addSource(
	thing: Thing,
	spec: NonNullable<Thing["blueprint"]["source"]>,
	pointOf: (terminal: string) => number,
	equipment: Equipment,
): void {
	equipment.sources.push({
		name: thing.name,
		part: thing.name,
		sort: spec.sort,
		system: spec.system,
		volts: spec.volts,
		hot: spec.hot.map(pointOf),
		...(spec.neutral === undefined ? {} : { neutral: pointOf(spec.neutral) }),
		...(spec.ground === undefined ? {} : { ground: pointOf(spec.ground) }),
		...(spec.limit === undefined ? {} : { limit: spec.limit }),
		bonding: spec.bonding,
		ownEarth: spec.ownEarth === true,
		span: thing.span,
	});
	if (spec.supplyProtects)
		equipment.protections.push({
			index: equipment.protections.length,
			part: thing.name,
			...(spec.limit === undefined ? {} : { rating: spec.limit }),
			sort: "supply",
			poles: spec.hot.length,
			links: [],
			source: thing.name,
			span: thing.span,
		});
}

/** The owner's enclosure for what sits in something; else the thing's own case, or a box around it. */
function enclosureFor(draft: Draft, thing: Thing): Enclosure {
	const owner = thing.owner === undefined ? undefined : draft.enclosureOfThing.get(thing.owner);
	if (owner !== undefined) return owner;
	const own = thing.blueprint.enclosure;
	const volume = thing.box?.volume ?? own?.volume;
	return draft.addEnclosure({
		name: thing.name,
		label: thing.label,
		sort: own?.sort ?? "box",
		metal: thing.box?.metal ?? own?.metal ?? false,
		...(thing.place === undefined ? {} : { place: thing.place }),
		...(volume === undefined ? {} : { volume }),
		...(thing.box === undefined || (own?.sort ?? "box") !== "box" ? {} : { fittings: thing.box.fittings }),
		span: thing.span,
	});
}

/** Puts a device's terminals, which are at `points`, into the knots of its enclosure; a metal box is one more member of its ground knot. */
function tieTerminals(draft: Draft, thing: Thing, enclosure: Enclosure, points: readonly number[]): void {
	const [arrival] = thing.blueprint.sides;
	const switched = thing.blueprint.sides.find(({ name }) => name === "switched")?.knots.hot;
	const isSwitched = draft.loops.isSwitched(thing) && thing.blueprint.terminals.every(({ knot }) => knot !== switched);
	for (const [place, spec] of thing.blueprint.terminals.entries()) {
		const point = points[place];
		if (spec.knot === undefined || point === undefined) continue;
		const own = isSwitched && spec.knot === arrival?.knots.hot ? (switched ?? spec.knot) : spec.knot;
		const knot = draft.knot(enclosure, knotName(thing, own));
		knot.members.push({ point, gathers: spec.gathers === true });
	}
	tieBody(draft, thing, enclosure);
}

function tieBody(draft: Draft, thing: Thing, enclosure: Enclosure): void {
	const isOwner = thing.owner === undefined;
	if (isOwner && enclosure.sort === "box" && enclosure.body !== undefined)
		draft.knot(enclosure, "ground").members.push({ point: enclosure.body, gathers: false });
}

/**
 * The enclosure's name for a knot of a thing: `^neutral` and the knots of the thing's first side are the box's own, by role;
 * any other stays the thing's: `s1:load-hot`.
 */
export function knotName(thing: Thing, knot: string): string {
	if (knot.startsWith("^")) return knot.slice(1);
	const arrival = thing.blueprint.sides[0];
	// A device in a slot is fed by its bus, and its one side is where it feeds on.
	const isFed =
		thing.blueprint.protection === undefined || thing.said.slot === undefined || thing.said.slot.name === "main";
	if (isFed && arrival !== undefined) for (const role of roles) if (arrival.knots[role] === knot) return role;
	return `${thing.name}:${knot}`;
}

/** Every role a conductor can have. */
const roles = ["hot", "hot2", "hot3", "neutral", "ground", "positive", "negative"] as const satisfies readonly Role[];

/** Joins a plugged-in device to the bus it sits on. */
function plugIn(draft: Draft, thing: Thing): void {
	for (const { mine, owner } of thing.blueprint.plugs ?? []) {
		const bus = draft.plan.thingByName.get(foldName(thing.said.behind ?? thing.owner ?? ""));
		const from = draft.terminalOf(thing, mine);
		const to = bus === undefined ? undefined : draft.terminalOf(bus, owner);
		if (from === undefined || to === undefined) continue;
		draft.links.push({
			index: draft.links.length,
			between: [to, from],
			part: thing.name,
			nature: "solid",
			contact: undefined,
			modes: undefined,
			protection: undefined,
			span: thing.span,
		});
	}
}

/** The thing of a name the plan has resolved. */
export function thingNamed(draft: Draft, name: string): Thing {
	return certain(draft.plan.thingByName.get(foldName(name)), name);
}
