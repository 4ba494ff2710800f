// What everything is bonded to: the chassis, the hull, a ground rod, and the conductors that lead there.
import { kindsFor } from "../kind-parts.ts";
import { crankingFuse } from "./charging.ts";
import type { DirectSide } from "./direct-side.ts";

/** An earth of the site, and a bond to it from the minus, the boards' grounds and the cases. */
export function writeEarth(side: DirectSide, minuses: readonly string[]): void {
	const { site, wires } = side;
	const { wish, chance } = site;
	const words = wish.rules === "camper" ? ["chassis"] : wish.rules === "boat" ? ["hull"] : ["rod", "chassis"];
	const name = side.declare(chance.pick(kindsFor("earth").filter((kind) => words.includes(kind.name))), "E", {});
	const bond = (from: string, fuse: number): void => {
		side.lines.push({
			text: `bond ${site.names.fresh("g")} from ${from} by ${wires.bond(fuse)}`,
			below: [side.arrive(name, side.length(0.5, 2))],
		});
	};
	// The bond of a minus is as thick as its own leads: those of an engine, or of the bank.
	for (const minus of minuses) bond(minus, Math.max(side.main, minuses.length > 1 ? crankingFuse : 0));
	for (const ground of site.grounds) bond(ground, 60);
	for (const lug of site.cases) bond(lug, side.main);
	// On a boat the mains' ground is on the metal that the minus is on; in a van every case that a positive enters. Nothing is drawn
	// by chance for them, so that what follows stays as it is.
	const tie = (from: string, fuse: number, index: number): void => {
		side.lines.push({
			text: `bond tie-${index} from ${from} by ${wires.bond(fuse)}`,
			below: [{ text: `1 m to ${name}` }],
		});
	};
	const cases = site.machines.map((machine) => `${machine.name}.case`);
	if (wish.rules === "boat" && site.grounds.length + site.cases.length === 0)
		for (const ground of [...site.boards, ...cases].slice(0, 1)) tie(ground, 60, 0);
	if (wish.rules === "camper")
		for (const [index, lug] of cases.entries()) if (!site.cases.includes(lug)) tie(lug, side.main, index);
}
