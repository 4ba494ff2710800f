// Switches as groups of contacts that one handle moves; breakers and ground-fault devices are none.
import { groupBy } from "../base/group.ts";
import type { Circuit, Link } from "../circuit/circuit.ts";
import { sortOfRole } from "./poles.ts";

/** One switch, dimmer or disconnect. */
export interface Switch {
	readonly part: string;
	readonly contacts: readonly Link[];
	/** Made to open a neutral together with its hot. */
	readonly opensNeutral: boolean;
}

/** Every switch of a circuit. Worked out once for a circuit. */
export function findSwitches(circuit: Circuit): readonly Switch[] {
	const known = switchesOf.get(circuit) ?? gatherSwitches(circuit);
	switchesOf.set(circuit, known);
	return known;
}

const switchesOf = new WeakMap<Circuit, readonly Switch[]>();

function gatherSwitches(circuit: Circuit): readonly Switch[] {
	const tripping = new Set([
		...circuit.protections.map((protection) => protection.part),
		...circuit.groundFaults.map((device) => device.part),
	]);
	// A transfer stands where the mode says.
	const contacts = circuit.links.filter(
		(link) => link.contact !== undefined && link.modes === undefined && !tripping.has(link.part),
	);
	return [...groupBy(contacts, (link) => link.contact?.group).values()].map((group) => {
		const isNeutral = ({ between }: Link): boolean =>
			between.some((point) => sortOfRole(circuit.points[point]?.role ?? "hot") === "neutral");
		return {
			part: group[0]?.part ?? "",
			contacts: group,
			opensNeutral: group.some(isNeutral) && !group.every(isNeutral),
		};
	});
}

/** The terminals that a switch's contacts join. */
export function terminalsOf({ contacts }: Switch): readonly number[] {
	return [...new Set(contacts.flatMap((contact) => contact.between))];
}
