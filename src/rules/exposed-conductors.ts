// Conductors behind a larger device than published tables allow, or behind none: grouped so that one cause is one group.
// What each group means is for the rules that ask; nothing is told here.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { type ConductorLimit, carefulLimit, conductorLimit } from "../analysis/conductor-limit.ts";
import { sortOfRole } from "../analysis/poles.ts";
import type { Exposure } from "../analysis/protection.ts";
import type { Cable, Conductor, Point, Protection } from "../circuit/circuit.ts";
import type { Trait } from "../kinds/kind.ts";

/** One conductor that more can come to than it may have, in the mode in which most comes. */
export interface ExposedConductor {
	readonly conductor: Conductor;
	readonly cable: Cable | undefined;
	/** Undefined where the handbook has no table for it. */
	readonly limit: ConductorLimit | undefined;
	readonly exposure: Exposure;
	/**
	 * The device to blame: the last one before it where that is too large, else the one that limits what comes.
	 * Undefined where there is none.
	 */
	readonly device: Protection | undefined;
	/** Whether the hot reaches it, or it only leads back. */
	readonly carries: "hot" | "return";
	readonly state: ModeState;
	readonly modes: ReadonlySet<string>;
	/** Steps from the source. */
	readonly distance: number;
}
/** Exposed conductors that hang together behind one device, nearest the source first. */
export interface ExposedGroup {
	/**
	 * `no-device`: nothing opens at all; `no-own-device`: only the device of a supply or of a whole board stands before
	 * loads; `device-too-large`; `enclosed`: too large only where heat stays in; `not-known`: a rating or table is missing.
	 */
	readonly sort: "no-device" | "no-own-device" | "device-too-large" | "enclosed" | "not-known";
	readonly first: ExposedConductor;
	readonly all: readonly ExposedConductor[];
	readonly modes: ReadonlySet<string>;
}

/** Every group of a circuit, in the order of its conductors. Worked out once for an analysis. */
export function exposedGroups(analysis: Analysis): readonly ExposedGroup[] {
	const known = groupsOf.get(analysis);
	if (known !== undefined) return known;
	const groups = findGroups(analysis);
	groupsOf.set(analysis, groups);
	return groups;
}

const groupsOf = new WeakMap<Analysis, readonly ExposedGroup[]>();

function findGroups(analysis: Analysis): ExposedGroup[] {
	const exposed = analysis.circuit.conductors.flatMap((conductor) => exposedIn(analysis, conductor) ?? []);
	const joints = new Joints();
	for (const { conductor } of exposed)
		for (const place of placesOf(analysis, conductor)) joints.join(`conductor ${conductor.index}`, place);
	const groups = new Map<string, ExposedConductor[]>();
	const groupOfPlace = new Map<string, ExposedConductor[]>();
	// Hots first: what leads back joins the group of the hots it hangs together with, whatever device let it out.
	for (const one of [...exposed.filter(isHot), ...exposed.filter((other) => !isHot(other))]) {
		const place = `${joints.rootOf(`conductor ${one.conductor.index}`)} | ${certaintyOf(one)}`;
		const key = `${place} | ${one.device?.index ?? one.exposure.source}`;
		const group = groups.get(key) ?? (isHot(one) ? undefined : groupOfPlace.get(place));
		if (group !== undefined) group.push(one);
		else {
			const started = [one];
			groups.set(key, started);
			if (!groupOfPlace.has(place)) groupOfPlace.set(place, started);
		}
	}
	return [...groups.values()].flatMap((group) => {
		const all = group.toSorted(compareExposed);
		const [first] = all;
		if (first === undefined) return [];
		return [{ sort: sortOf(analysis, first), first, all, modes: new Set(all.flatMap(({ modes }) => [...modes])) }];
	});
}

function isHot({ carries }: ExposedConductor): boolean {
	return carries === "hot";
}

/** What leads back is told with the hots beside it, so these go first at the same distance. */
function compareExposed(one: ExposedConductor, other: ExposedConductor): number {
	if (one.carries !== other.carries) return one.carries === "hot" ? -1 : 1;
	return one.distance - other.distance;
}

/** What comes to a conductor at worst, where that is more than it may have. */
function exposedIn(analysis: Analysis, conductor: Conductor): ExposedConductor | undefined {
	const { circuit } = analysis;
	// A lead that comes with a device is its maker's to size.
	const [one, other] = conductor.ends;
	if (isLead(pointAt(analysis, one.point)) || isLead(pointAt(analysis, other.point))) return undefined;
	if (!carriesAny(analysis, conductor)) return undefined;
	const cable = conductor.cable === undefined ? undefined : circuit.cableByTag.get(conductor.cable);
	const limit = conductorLimit(circuit, conductor);
	const careful = limit === undefined ? 0 : carefulLimit(limit);
	let worst: Pick<ExposedConductor, "exposure" | "carries" | "state"> | undefined;
	const modes: string[] = [];
	for (const state of analysis.states) {
		const hot = hotAt(state, conductor);
		const exposure = hot ?? state.waysBack.neutral.get(conductor.index);
		if (exposure === undefined || (exposure.amperes <= careful && limit?.beyondTable !== true)) continue;
		modes.push(state.mode.name);
		if (worst === undefined || exposure.amperes > worst.exposure.amperes)
			worst = { exposure, carries: hot === undefined ? "return" : "hot", state };
	}
	if (worst === undefined) return undefined;
	const device = blamedDevice(worst.exposure, limit);
	return {
		...worst,
		device,
		conductor,
		cable,
		limit,
		modes: new Set(modes),
		distance: distanceOf(worst.state, conductor),
	};
}

/** Whether anything may come to a conductor at all: most grounds are done with here. */
function carriesAny({ states }: Analysis, { index, ends: [{ point: one }, { point: other }] }: Conductor): boolean {
	for (const { exposure, waysBack } of states) {
		if (one !== undefined && exposure.has(one)) return true;
		if (other !== undefined && exposure.has(other)) return true;
		if (waysBack.neutral.has(index)) return true;
	}
	return false;
}

/** The exposure of a conductor that a hot reaches; one that its own pole reaches too is part of a short circuit, told elsewhere. */
function hotAt(state: ModeState, conductor: Conductor): Exposure | undefined {
	let most: Exposure | undefined;
	for (const { point } of conductor.ends) {
		if (point === undefined) continue;
		const here = state.exposure.get(point);
		if (here === undefined || (most !== undefined && most.amperes >= here.amperes)) continue;
		const isOwn = sortOfRole(conductor.role) === "hot";
		if (isOwn || !state.poles.rolesAt(point).has(conductor.role)) most = here;
	}
	return most;
}

function blamedDevice({ device, nearest }: Exposure, limit: ConductorLimit | undefined): Protection | undefined {
	const last = nearest?.device;
	return last?.rating !== undefined && last.rating > (limit === undefined ? 0 : carefulLimit(limit)) ? last : device;
}

/** Whether it is a fault, one only where heat stays in, or cannot be told. */
function certaintyOf({ exposure, limit }: ExposedConductor): "fault" | "enclosed" | "not-known" {
	const { amperes, device, unrated } = exposure;
	if (limit === undefined) return device === undefined && unrated === undefined ? "fault" : "not-known";
	if (amperes <= limit.largest) return limit.beyondTable === true ? "not-known" : "enclosed";
	return unrated === undefined ? "fault" : "not-known";
}

function sortOf(analysis: Analysis, one: ExposedConductor): ExposedGroup["sort"] {
	const certainty = certaintyOf(one);
	if (certainty !== "fault") return certainty;
	if (one.device === undefined) return "no-device";
	const points = one.conductor.ends.flatMap((end) => end.point ?? []);
	const feedsLoads = points.some((point) => pointsBeforeLoads(one.state).has(point));
	const behindBoard = one.exposure.nearest?.device.sort === "supply" || leadsOverBus(analysis, one.state, points[0]);
	return feedsLoads && behindBoard ? "no-own-device" : "device-too-large";
}

/** Whether the way from the device that limits a point leads over the bus of a panel: what hangs there has no breaker of its own. */
function leadsOverBus(analysis: Analysis, state: ModeState, point: number | undefined): boolean {
	for (let here = point; here !== undefined; ) {
		const target = pointAt(analysis, here);
		if (target?.kind === "terminal" && hasTrait(analysis, target, ["panel"])) return true;
		const by = state.exposure.get(here)?.by;
		if (by === undefined || (by.by.kind === "link" && by.by.link.protection !== undefined)) return false;
		here = by.from;
	}
	return false;
}

/** Points from which a load can be reached without passing another protective device. */
function pointsBeforeLoads(state: ModeState): ReadonlySet<number> {
	const known = beforeLoads.get(state);
	if (known !== undefined) return known;
	const before = new Set(state.network.circuit.loads.flatMap((load) => load.between));
	for (const [point, { by }] of [...state.exposure].reverse())
		if (before.has(point) && by !== undefined && (by.by.kind === "conductor" || by.by.link.protection === undefined))
			before.add(by.from);
	beforeLoads.set(state, before);
	return before;
}

const beforeLoads = new WeakMap<ModeState, ReadonlySet<number>>();

/** Where exposed conductors hang together: their cable, and the points they meet in, panels and their parts left out. */
function placesOf(analysis: Analysis, conductor: Conductor): string[] {
	const points = conductor.ends.flatMap(({ point }) => {
		const target = pointAt(analysis, point);
		if (target === undefined) return [];
		if (target.kind !== "terminal") return [`point ${target.index}`];
		// What goes through a switch or an outlet goes on as the same circuit.
		return hasTrait(analysis, target, boardTraits) ? [] : [`part ${target.part}`];
	});
	return conductor.cable === undefined ? points : [...points, `cable ${conductor.cable}`];
}

const boardTraits: readonly Trait[] = ["panel", "breaker", "neutral-bar", "ground-bar", "hot-bus", "source"];

function hasTrait(analysis: Analysis, terminal: Point & { kind: "terminal" }, traits: readonly Trait[]): boolean {
	const face = analysis.circuit.partByName.get(terminal.part)?.face;
	return face?.traits.some((trait) => traits.includes(trait)) === true;
}

function isLead(point: Point | undefined): boolean {
	return point?.kind === "terminal" && point.clamp === "lead";
}

function pointAt(analysis: Analysis, point: number | undefined): Point | undefined {
	return point === undefined ? undefined : analysis.circuit.points[point];
}

function distanceOf(state: ModeState, conductor: Conductor): number {
	const distances = conductor.ends.flatMap(({ point }) =>
		point === undefined ? [] : state.poles.reaches.flatMap((reach) => reach.distance(point) ?? []),
	);
	return Math.min(...distances, Number.MAX_SAFE_INTEGER);
}

/** Sets of places that hang together. */
class Joints {
	private readonly parents = new Map<string, string>();

	join(one: string, other: string): void {
		this.parents.set(this.rootOf(other), this.rootOf(one));
	}

	rootOf(place: string): string {
		let root = place;
		for (let next = this.parents.get(root); next !== undefined && next !== root; next = this.parents.get(root))
			root = next;
		// Shorten the way for the next who asks.
		for (let here = place; here !== root; ) {
			const next = this.parents.get(here) ?? root;
			this.parents.set(here, root);
			here = next;
		}
		return root;
	}
}
