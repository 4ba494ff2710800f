// Mains of panels whose bus is fed otherwise than through them.
import type { Circuit, Link } from "../circuit/circuit.ts";
import type { Reach } from "./network.ts";
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
	return mains.flatMap((main): BypassedMain[] => {
		const [line, bus] = main.between;
		const past = hots.find((reach) => {
			// A bus that its other pole feeds across a bridge is not passed by.
			const way = reach.edgesTo(bus);
			return way.length > 0 && !way.some(({ by }) => by.kind === "link" && by.link.protection === main.protection);
		});
		return past === undefined ? [] : [{ main, line, bus, past }];
	});
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
