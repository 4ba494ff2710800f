// Mains of panels whose bus is fed otherwise than through them.
import type { Circuit, Link } from "../circuit/circuit.ts";
import { leadsPast } from "./idle-throws.ts";
import { type Reach, reachFrom } from "./network.ts";
import { isHot, type PoleMap } from "./poles.ts";

/** A main's contact, and the reach by which its bus is fed past it. */
export interface BypassedMain {
	readonly main: Link;
	readonly line: number;
	readonly bus: number;
	readonly past: Reach;
}

/** Every main of a mode that is passed by. */
export function findBypassedMains(circuit: Circuit, poles: PoleMap): readonly BypassedMain[] {
	const mains = circuit.links.filter((link) => isMain(circuit, link));
	if (mains.length === 0) return [];
	const hots = poles.reaches.filter((_, index) => isHot(poles.poles[index]?.role ?? "ground"));
	// Only what stays in a panel can lead from the line to the bus.
	const panels = new Set(mains.map(({ part }) => circuit.partByName.get(part)?.enclosure));
	const isJumped = circuit.conductors.some(({ sort, ends }) => sort !== "core" && panels.has(ends[0].enclosure));
	return mains.flatMap((main): BypassedMain[] => {
		const [line, bus] = main.between;
		const passing = hots.find((reach) => {
			// A bus that its other pole feeds across a bridge is not passed by.
			const way = reach.edgesTo(bus);
			return way.length > 0 && !way.some(({ by }) => by.kind === "link" && by.link.protection === main.protection);
		});
		const past = passing ?? (isJumped ? joinedPast(hots, main) : undefined);
		return past === undefined ? [] : [{ main, line, bus, past }];
	});
}

/** What a live main's line reaches over wires alone, where a jumper or a joint leads it to the bus beside the main. */
function joinedPast(hots: readonly Reach[], { between: [line, bus] }: Link): Reach | undefined {
	const network = hots.find((reach) => reach.has(line))?.network;
	if (network === undefined) return undefined;
	const joined = reachFrom(network, [line], (edge) => leadsPast(network, edge));
	return joined.has(bus) ? joined : undefined;
}

/** A protective contact that is fed on a terminal and feeds the bus it plugs on to; a branch breaker is the other way round. */
function isMain({ points }: Circuit, { protection, between: [line, bus] }: Link): boolean {
	const [from, to] = [points[line], points[bus]];
	return (
		protection !== undefined &&
		from?.kind === "terminal" &&
		from.side === "line" &&
		to?.kind === "terminal" &&
		to.side === "load" &&
		to.clamp === "stab"
	);
}
