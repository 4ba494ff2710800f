// How a switch loop is put right: a cable to a switch and back, whose two wires must never be joined with each other.
import type { Analysis } from "../analysis/analysis.ts";
import type { PoleSort } from "../analysis/poles.ts";
import { findSwitches, terminalsOf } from "../analysis/switching.ts";
import type { Conductor } from "../circuit/circuit.ts";

/**
 * What to do in a box with a switch loop and a load, by the name of the box: the feed's hot to the one wire of the loop,
 * the other to the load. Undefined where the box has none, or where it is not plain which wires these are.
 */
export function cureSwitchLoop({ circuit, landings }: Analysis, box: string): string | undefined {
	const here = circuit.conductors.filter(({ cable, ends }) => cable !== undefined && ends.some(isIn(box)));
	const loops = findSwitches(circuit).flatMap((found) => {
		const terminals = new Set(terminalsOf(found));
		const wires = here.filter(({ ends }) => ends.some(({ point }) => point !== undefined && terminals.has(point)));
		return wires.length === 2 && wires[0]?.cable === wires[1]?.cable ? [wires] : [];
	});
	const [wires] = loops;
	if (loops.length !== 1 || wires === undefined) return undefined;
	const [one, other] = wires;
	const loads = circuit.loads.filter(({ between }) => between.some((at) => circuit.points[at]?.enclosure.name === box));
	const [load] = loads;
	if (loads.length !== 1 || load === undefined || one === undefined || other === undefined) return undefined;
	const terminalFor = (sort: PoleSort): string | undefined =>
		load.between.flatMap((at) => (landings.sortAt(at) === sort ? (circuit.points[at]?.name ?? []) : []))[0];
	const feed = (sort: PoleSort): Conductor[] =>
		here.filter(
			(wire) =>
				wire.cable !== one.cable && landings.carriedBy(wire, wire.ends.findIndex(isIn(box)) === 0 ? 0 : 1) === sort,
		);
	const [hot, neutral] = [feed("hot"), feed("neutral")];
	const [toLoad, toNeutral] = [terminalFor("hot"), terminalFor("neutral")];
	if (hot.length !== 1 || neutral.length !== 1 || toLoad === undefined || toNeutral === undefined) return undefined;
	// By custom the marked white takes the hot to the switch, and the black brings it back.
	const away = one.role === "hot" ? other : one;
	const back = away === one ? other : one;
	return `In ${box}, join the hot of the feed with one wire of the switch loop and lead the other to the load: \`join ${hot[0]?.name ?? ""}, ${away.name}\`, \`${back.name} on ${toLoad}\` and \`${neutral[0]?.name ?? ""} on ${toNeutral}\`.`;
}

function isIn(box: string): (end: { readonly enclosure: { readonly name: string } }) => boolean {
	return ({ enclosure }) => enclosure.name === box;
}
