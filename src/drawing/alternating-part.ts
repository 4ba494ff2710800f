// The part of a circuit that carries alternating current, with the grounds it shares: what the wiring sheets draw.
import type { Cable, Circuit, Enclosure, Part } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import type { Role } from "../kinds/kind.ts";

/** The part, and the names of the boxes that are left out because only direct current is in them. */
export interface AlternatingPart {
	readonly circuit: Circuit;
	readonly leftOut: readonly string[];
}

/** Points and conductors keep their numbers; the circuit itself where nothing in it is for direct current. */
export function alternatingPart(circuit: Circuit): AlternatingPart {
	const isDirect = (role: Role): boolean => systemOfRole(role) === "dc";
	if (!circuit.points.some(({ role }) => isDirect(role))) return { circuit, leftOut: [] };
	const carried = systemsByEnclosure(circuit);
	const isKept = ({ name }: Enclosure): boolean => {
		const systems = carried.get(name);
		return systems === undefined || systems.has("ac") || !systems.has("dc");
	};
	const isCarrier = (cable: Cable): boolean =>
		isKept(cable.from) &&
		isKept(cable.to) &&
		!cable.conductors.some((index) => isDirect(circuit.conductors[index]?.role ?? "ground"));
	const cables = circuit.cables.filter(isCarrier);
	const enclosures = circuit.enclosures.filter(isKept);
	const landed = new Set(
		circuit.conductors
			.filter(({ cable }) => cable === undefined || cables.some(({ tag }) => tag === cable))
			.flatMap(({ ends }) => ends.map(({ point }) => point)),
	);
	// A lug for the case that nothing is on is for the direct-current side.
	const isDrawn = (part: Part, index: number): boolean => {
		const point = circuit.points[index];
		if (point === undefined || isDirect(point.role)) return false;
		return point.kind !== "terminal" || point.terminal !== "lug" || part.points.length === 1 || landed.has(index);
	};
	const parts = circuit.parts
		.filter((part) => isKept(part.enclosure))
		.map((part) => ({ ...part, points: part.points.filter((index) => isDrawn(part, index)) }))
		.filter((part, at) => part.points.length > 0 || circuit.parts[at]?.points.length === 0);
	const kept: Circuit = {
		...circuit,
		enclosures,
		parts,
		cables,
		links: circuit.links.filter(({ between }) => between.every((index) => isThere(circuit, index, isDirect))),
		sources: circuit.sources.filter(({ system }) => system === "ac"),
		loads: circuit.loads.filter(({ between }) => between.every((index) => isThere(circuit, index, isDirect))),
		partByName: new Map(parts.map((part) => [part.name, part])),
		enclosureByName: new Map(enclosures.map((enclosure) => [enclosure.name, enclosure])),
		cableByTag: new Map(cables.map((cable) => [cable.tag, cable])),
	};
	return { circuit: kept, leftOut: circuit.enclosures.filter((box) => !isKept(box)).map(({ name }) => name) };
}

/** What each enclosure's terminals, joints and cores are for. */
function systemsByEnclosure(circuit: Circuit): ReadonlyMap<string, ReadonlySet<"ac" | "dc">> {
	const found = new Map<string, Set<"ac" | "dc">>();
	const note = (name: string, role: Role): void => {
		const system = systemOfRole(role);
		if (system !== undefined) found.set(name, (found.get(name) ?? new Set()).add(system));
	};
	for (const { enclosure, role } of circuit.points) note(enclosure.name, role);
	for (const { ends, role } of circuit.conductors) for (const { enclosure } of ends) note(enclosure.name, role);
	return found;
}

function isThere({ points }: Circuit, index: number, isDirect: (role: Role) => boolean): boolean {
	const point = points[index];
	return point !== undefined && !isDirect(point.role);
}
