// Which ways through parts conduct in a mode while everything is switched on.
import type { ModeState } from "../analysis/analysis.ts";
import { findChoices, tryClusters } from "../analysis/choices.ts";
import { liveSources, type Network } from "../analysis/network.ts";
import { notABond } from "../analysis/poles.ts";
import type { Link } from "../circuit/circuit.ts";

/**
 * The links that conduct in a mode: what is solid there, every contact that can be closed, and of contacts that exclude one
 * another those of the setting that brings power to most terminals of loads, the first of equals.
 */
export function standingLinks({ mode, network, direct }: ModeState): readonly Link[] {
	const { circuit } = network;
	const networks = direct === undefined ? [network] : [network, direct.network];
	const choices = new Set(networks.flatMap((each) => [...findChoices(each, notABond).keys()]));
	const positions = choices.size === 0 ? undefined : new Map(networks.flatMap(positionsIn));
	return circuit.links.filter(({ modes, contact, index }) => {
		if (modes !== undefined && !modes.has(mode.name)) return false;
		if (contact === undefined) return true;
		if (!choices.has(index)) return contact.closed.length > 0;
		return contact.closed.includes(positions?.get(contact.group) ?? 0);
	});
}

/** The positions of the switches of a network that exclude ways of one another. */
function positionsIn(network: Network): readonly (readonly [string, number])[] {
	const starts = liveSources(network).flatMap(({ hot }) => hot);
	const terminals = new Set(network.circuit.loads.flatMap(({ between }) => between));
	return tryClusters(network, starts, notABond).flatMap(({ groups, settings }) => {
		let best = settings[0];
		let most = -1;
		for (const setting of settings) {
			let fed = 0;
			for (const point of setting.reached.keys()) if (terminals.has(point)) fed++;
			if (fed > most) [best, most] = [setting, fed];
		}
		return groups.map((group, at): readonly [string, number] => [group, best?.positions[at] ?? 0]);
	});
}
