// What hangs on the buses themselves: inverters, a winch behind a contactor, a pump that stays live when the bank is off.
import { takes } from "../branch.ts";
import { kindsFor } from "../kind-parts.ts";
import type { Bank } from "./bank.ts";
import { fuseFor } from "./charging.ts";
import type { DirectSide } from "./direct-side.ts";

/** The leads of every inverter, as a pair or one by one. */
export function writeInverters(side: DirectSide, { plus, minus }: Bank): void {
	const { site, wires } = side;
	const { chance } = site;
	for (const { name, power } of site.machines) {
		const fuse = machineFuse(power, site.bankVolts);
		const amperes = power / 0.85 / site.bankVolts;
		const length = side.length(0.5, 1.5);
		if (fuse <= 60 && chance.maybe(0.5))
			side.feed("inv", `${plus}, ${minus}`, wires.pair({ fuse, amperes, metres: 2 }), [
				side.fuse(fuse, "bolted").line,
				side.arrive(`${name}.+`, length),
			]);
		else {
			const lead = wires.two({ fuse });
			side.feed("inv", plus, lead.plus, [side.fuse(fuse, "bolted").line, side.arrive(`${name}.+`, length)]);
			side.feed("inv", minus, lead.minus, [side.arrive(`${name}.-`, length)]);
		}
	}
}

/** The fuse that a machine of so many watts needs at so many volts. */
export function machineFuse(power: number, volts: number): number {
	return fuseFor((power / 0.85 / volts) * 1.25);
}

/** A winch, a thruster: behind a contactor whose coil a circuit calls; gives the contactor's name. */
export function writeWinch(side: DirectSide, { plus, minus }: Bank): string | undefined {
	const { site, wires } = side;
	const { chance, bankVolts } = site;
	const fuse = chance.pick([80, 100].filter((amperes) => amperes <= side.main));
	const kind = chance.pick(kindsFor("load").filter((one) => one.name === "load"));
	const facts = { power: Math.round(fuse * 0.6) * bankVolts, ...side.volts(kind) };
	const isCalled = chance.maybe(0.7);
	const coil = bankVolts === 12 && chance.maybe(0.3) ? undefined : bankVolts;
	const contactor = isCalled ? side.hop("relay", "K", { rating: 150, coil }, side.length(1, 4)) : undefined;
	const last = side.hop(kind, "w", facts, side.length(0.5, 2));
	side.feed("haul", `${plus}, ${minus}`, wires.pair({ fuse, amperes: fuse * 0.6, metres: 6 }), [
		side.fuse(fuse, "bolted").line,
		...(contactor === undefined ? [] : [contactor.line]),
		last.line,
	]);
	site.left -= isCalled ? 2 : 1;
	return contactor?.name;
}

/** A bilge pump on its float switch, ahead of the bank's disconnect. */
export function writeKept(side: DirectSide, { post, minus }: Bank): void {
	const { site, wires } = side;
	const { chance } = site;
	const kind = chance.pick(kindsFor("load").filter(({ name }) => name === "pump"));
	const floats = chance.pick(kindsFor("switch").filter((one) => !takes(one, "ways")));
	side.feed("keep", `${post}, ${minus}`, wires.pair({ fuse: 15, amperes: 6, metres: 6 }), [
		side.fuse(15, "near", true).line,
		side.hop(floats, "fs", { rating: 20 }, side.length(1, 3)).line,
		side.hop(kind, "bp", { power: 5 * site.bankVolts, ...side.volts(kind) }, side.length(0.3, 1)).line,
	]);
	site.left -= 2;
}
