// What closed contacts make of a box: from the potential that is fed, over each device on the line, to what leads on.
import type { Cable, Circuit, Enclosure, Part } from "../../circuit/circuit.ts";
import type { BoxNets } from "./box-nets.ts";

/** One state of a box: potentials that closed contacts join, what taps them, and what leads on. */
export interface State {
	readonly nets: ReadonlySet<number>;
	readonly taps: Part[];
	/** Parts whose contacts lead to a further state. */
	readonly onward: { readonly part: Part; readonly state: State }[];
	readonly cables: Cable[];
	/** A panel's bus lies on this potential. */
	panel?: Part;
}

/** A box to be followed: what feeds it, the devices on its lines, and the cables that may lead on. */
export interface BoxToFollow {
	readonly enclosure: Enclosure;
	readonly incoming: Cable | undefined;
	readonly source: Part | undefined;
	readonly parts: readonly Part[];
	readonly cables: readonly Cable[];
}

/** The state that is fed; the others hang from it. Every part and every cable is in exactly one. */
export function statesOf(circuit: Circuit, nets: BoxNets, box: BoxToFollow): State {
	const root = newState(fedNets(circuit, nets, box));
	const states = [root];
	const placed = new Set<Part>();
	for (const state of states) {
		for (const part of box.parts) {
			if (placed.has(part) || !part.points.some((point) => state.nets.has(nets.netOf(point)))) continue;
			placed.add(part);
			if (part.face.traits.includes("panel") || part.face.oneLine === "bus") {
				state.panel = part;
				continue;
			}
			const beyond = netsBeyond(nets, part, state, states);
			if (beyond.size === 0) {
				state.taps.push(part);
				continue;
			}
			const next = newState(beyond);
			state.onward.push({ part, state: next });
			states.push(next);
		}
	}
	// A device that nothing hot reaches is still there: beside the line, where the finding points.
	root.taps.push(...box.parts.filter((part) => !placed.has(part)));
	for (const cable of box.cables) {
		// It leaves from the state furthest from the feed that one of its hot conductors is on; from the first when none is.
		const from = hotPoints(circuit, cable, box.enclosure).map((point) => nets.netOf(point));
		(states.findLast((state) => from.some((net) => state.nets.has(net))) ?? root).cables.push(cable);
	}
	return root;
}

function newState(nets: ReadonlySet<number>): State {
	return { nets, taps: [], onward: [], cables: [] };
}

function fedNets(circuit: Circuit, nets: BoxNets, { enclosure, incoming, source }: BoxToFollow): Set<number> {
	const arriving = incoming === undefined ? [] : hotPoints(circuit, incoming, enclosure);
	const own = circuit.sources.find((candidate) => candidate.part === source?.name)?.hot ?? [];
	return new Set([...arriving, ...own].map((point) => nets.netOf(point)));
}

/** Where the contacts of a part lead from a state, but for where it has been. */
function netsBeyond(nets: BoxNets, part: Part, state: State, states: readonly State[]): Set<number> {
	const beyond = new Set<number>();
	for (const net of state.nets)
		for (const { link, to } of nets.contactsFrom(net))
			if (link.part === part.name && !states.some((known) => known.nets.has(to))) beyond.add(to);
	return beyond;
}

function hotPoints(circuit: Circuit, cable: Cable, enclosure: Enclosure): number[] {
	return cable.conductors.flatMap((index) => {
		const conductor = circuit.conductors[index];
		if (conductor === undefined || !hotRoles.has(conductor.role)) return [];
		return conductor.ends.flatMap((end) => (end.enclosure === enclosure && end.point !== undefined ? [end.point] : []));
	});
}

const hotRoles: ReadonlySet<string> = new Set(["hot", "hot2", "hot3", "positive"]);
