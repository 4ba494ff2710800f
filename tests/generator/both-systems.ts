// Circuits of the mains that meet direct current: battery chargers, and relays with their coil on the one side and their contact on the other.
import { type Branch, pickKind, type Stretch } from "./branch.ts";
import { kindsFor } from "./kind-parts.ts";

/** A battery charger that the breaker carries for hours; its leads are written with the bank. */
export function writeCharger(branch: Branch, stretch: Stretch): void {
	const { site, amperes } = branch;
	const { chance, bankVolts, volts } = site;
	// A charger turns 85 % of what it takes into what it gives (common practice).
	const fitting = [5, 10, 15, 20, 30, 40].filter((given) => (given * bankVolts) / 0.85 / volts <= amperes * 0.75);
	const given = chance.pick(fitting);
	const name = branch.hop(stretch, {
		kind: chance.pick(kindsFor("charger")),
		facts: { rating: given, voltage: bankVolts === 12 ? chance.pick([undefined, 12]) : bankVolts },
		letter: "ch",
		hasNoBox: true,
		maySeparate: true,
	});
	site.chargers.push({ name, amperes: given });
}

/** A load behind the contact of a relay whose coil a circuit of direct current puts on. */
export function writeCalled(branch: Branch, stretch: Stretch): void {
	const { site } = branch;
	const { chance, bankVolts } = site;
	const name = branch.hop(stretch, {
		kind: chance.pick(kindsFor("relay")),
		facts: {
			rating: chance.pick([30, 40]),
			coil: bankVolts === 12 ? chance.pick([undefined, 12]) : bankVolts,
		},
		letter: "K",
		hasNoBox: true,
	});
	const kind = pickKind(site, "load", "power", "continuous");
	branch.hop(stretch, { kind, facts: { power: branch.drawPower(kind, 0.7) }, letter: "h" });
	site.coils.push(name);
}

/** A switch in the mains that puts on the coil of a relay in direct current, which stands by itself. */
export function writeCall(branch: Branch, stretch: Stretch): void {
	const { site } = branch;
	const { chance } = site;
	const facts = { rating: chance.pick([30, 40, undefined]), coil: site.volts };
	const { name, line } = site.declare(chance.pick(kindsFor("relay")), "K", facts);
	site.standing.push(line);
	branch.hop(stretch, { kind: pickKind(site, "switch", "ways"), letter: "s" });
	stretch.lines.push({ length: site.spelling.length(chance.count(2, 60) / 10), text: `to ${name}.coil` });
	site.calledByMains.push(name);
	site.left -= 2;
}
