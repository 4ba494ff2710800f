// A circuit parted by what is drawn where: alternating current on the wiring sheets, direct current on a sheet of its own, grounds with what they serve.
import type { Cable, Circuit, Enclosure, Part } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import type { Role, System } from "../kinds/kind.ts";

/** What the sheets of one system draw. Points and conductors keep their numbers. */
export interface SystemPart {
	readonly circuit: Circuit;
	/** Conductors and splices of `circuit` that these sheets show. */
	readonly shows: Shows;
	/** Names of the boxes that sheets of the other system draw too. */
	readonly shared: ReadonlySet<string>;
}
/** Which conductors and which splices are shown, by their numbers. */
export interface Shows {
	readonly conductor: (index: number) => boolean;
	readonly splice: (index: number) => boolean;
}

/** Nothing is left out. */
export const showsAll: Shows = { conductor: () => true, splice: () => true };

/** Both parts; the first holds everything where nothing is wired for direct current. */
export interface SystemParts {
	readonly alternating: SystemPart;
	readonly direct: SystemPart | undefined;
}

/** Parts a circuit. */
export function partSystems(circuit: Circuit): SystemParts {
	if (!circuit.points.some(({ role }) => systemOfRole(role) === "dc"))
		return { alternating: wholeOf(circuit), direct: undefined };
	const carried = systemsByEnclosure(circuit);
	const carries = (box: Enclosure, system: System): boolean => carried.get(box.name)?.has(system) === true;
	const isDirect =
		circuit.cables.some((cable) => systemOf(circuit, cable) === "dc") ||
		circuit.enclosures.some((box) => carries(box, "dc") && !carries(box, "ac"));
	if (!isDirect)
		return { alternating: pickPart(circuit, "ac", circuit.cables, carried, () => true), direct: undefined };
	const hasAlternating = circuit.cables.some((cable) => systemOf(circuit, cable) === "ac");
	const sheetsOf = (cable: Cable): readonly System[] => {
		const system = systemOf(circuit, cable);
		if (system !== undefined) return [system];
		// A ground is drawn where both its ends are; one between boxes of different sheets on both.
		const ends = endBoxes(circuit, cable);
		const fits = (one: System, other: System): boolean =>
			ends.every((box) => carries(box, one) || !carries(box, other)) && ends.some((box) => carries(box, one));
		if (ends.every((box) => !carries(box, "ac") && !carries(box, "dc"))) return [hasAlternating ? "ac" : "dc"];
		const isHome = fits("dc", "ac") && !ends.every((box) => carries(box, "ac"));
		return isHome ? ["dc"] : fits("ac", "dc") ? ["ac"] : ["ac", "dc"];
	};
	const cables: Record<System, Cable[]> = { ac: [], dc: [] };
	for (const cable of circuit.cables) for (const system of sheetsOf(cable)) cables[system].push(cable);
	const met = { ac: boxesMet(circuit, cables.ac), dc: boxesMet(circuit, cables.dc) };
	const isOn = (system: System, other: System, box: Enclosure): boolean => {
		if (carries(box, system)) return true;
		if (carries(box, other)) return false;
		// An earth or a chassis stands on each sheet that has something on it.
		return met[system].has(box.name) || (!met[other].has(box.name) && (system === "ac") === hasAlternating);
	};
	return {
		alternating: pickPart(circuit, "ac", cables.ac, carried, (box) => isOn("ac", "dc", box)),
		direct: pickPart(circuit, "dc", cables.dc, carried, (box) => isOn("dc", "ac", box)),
	};
}

function wholeOf(circuit: Circuit): SystemPart {
	return { circuit, shows: showsAll, shared: new Set() };
}

function boxesMet(circuit: Circuit, cables: readonly Cable[]): ReadonlySet<string> {
	return new Set(cables.flatMap((cable) => endBoxes(circuit, cable).map(({ name }) => name)));
}

/** What a cable is for; undefined where all its cores are grounds. */
function systemOf(circuit: Circuit, cable: Cable): System | undefined {
	for (const index of cable.conductors) {
		const system = systemOfRole(circuit.conductors[index]?.role ?? "ground");
		if (system !== undefined) return system;
	}
	return undefined;
}

function endBoxes(circuit: Circuit, cable: Cable): Enclosure[] {
	return cable.conductors.flatMap((index) => circuit.conductors[index]?.ends.map(({ enclosure }) => enclosure) ?? []);
}

function pickPart(
	circuit: Circuit,
	system: System,
	cables: readonly Cable[],
	carried: ReadonlyMap<string, ReadonlySet<System>>,
	isKept: (box: Enclosure) => boolean,
): SystemPart {
	const other = system === "ac" ? "dc" : "ac";
	const isForeign = (role: Role): boolean => systemOfRole(role) === other;
	const drawn = new Set(cables.flatMap(({ conductors }) => conductors));
	const elsewhere = splicesOfOthers(circuit, drawn);
	for (const { index, cable, role, ends } of circuit.conductors)
		if (
			cable === undefined &&
			!isForeign(role) &&
			!ends.some(({ point }) => point !== undefined && elsewhere.has(point))
		)
			drawn.add(index);
	const landed = new Set<number>();
	for (const index of drawn)
		for (const { point } of circuit.conductors[index]?.ends ?? []) if (point !== undefined) landed.add(point);
	const isShown = (part: Part, index: number): boolean => {
		const point = circuit.points[index];
		if (point === undefined) return false;
		if (landed.has(index)) return true;
		// The lug of a case that nothing is on is for the direct-current side.
		const isSpareLug = point.kind === "terminal" && point.terminal === "lug" && part.points.length > 1;
		return !isForeign(point.role) && !(isSpareLug && system === "ac");
	};
	const enclosures = circuit.enclosures.filter(isKept);
	const parts = circuit.parts
		.filter((part) => isKept(part.enclosure))
		.flatMap((part): Part[] => {
			const points = part.points.filter((index) => isShown(part, index));
			return points.length > 0 || part.points.length === 0 ? [{ ...part, points }] : [];
		});
	const isThere = (index: number): boolean =>
		landed.has(index) || (!isForeign(circuit.points[index]?.role ?? "ground") && !elsewhere.has(index));
	const kept: Circuit = {
		...circuit,
		enclosures,
		parts,
		cables,
		links: circuit.links.filter(({ between }) => between.every(isThere)),
		sources: circuit.sources.filter((source) => source.system === system),
		loads: circuit.loads.filter(({ between }) => between.every(isThere)),
		partByName: new Map(parts.map((part) => [part.name, part])),
		enclosureByName: new Map(enclosures.map((enclosure) => [enclosure.name, enclosure])),
		cableByTag: new Map(cables.map((cable) => [cable.tag, cable])),
	};
	return {
		circuit: kept,
		shows: { conductor: (index) => drawn.has(index), splice: isThere },
		shared: new Set(enclosures.flatMap(({ name }) => (carried.get(name)?.size === 2 ? [name] : []))),
	};
}

/** Splices, of grounds too, in which only cables of the other system's sheets meet. */
function splicesOfOthers({ points, conductors }: Circuit, drawn: ReadonlySet<number>): ReadonlySet<number> {
	const met = new Set<number>();
	const own = new Set<number>();
	for (const { index, cable, ends } of conductors) {
		if (cable === undefined) continue;
		for (const { point } of ends)
			if (point !== undefined && points[point]?.kind === "splice") (drawn.has(index) ? own : met).add(point);
	}
	return new Set([...met].filter((point) => !own.has(point)));
}

/** What each enclosure's terminals, joints and cores are for. */
function systemsByEnclosure(circuit: Circuit): ReadonlyMap<string, ReadonlySet<System>> {
	const found = new Map<string, Set<System>>();
	const note = (name: string, role: Role): void => {
		const system = systemOfRole(role);
		if (system !== undefined) found.set(name, (found.get(name) ?? new Set()).add(system));
	};
	for (const { enclosure, role } of circuit.points) note(enclosure.name, role);
	for (const { ends, role } of circuit.conductors)
		for (const { enclosure, point } of ends) {
			// A negative that returns through the chassis makes the chassis no box of one system.
			const landed = point === undefined ? undefined : circuit.points[point];
			if (landed?.role !== "ground") note(enclosure.name, role);
		}
	return found;
}
