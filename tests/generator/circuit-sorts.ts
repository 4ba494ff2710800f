// The sorts of circuits on a panel, which of them is drawn, and how each is written.

import { writeCall, writeCalled, writeCharger } from "./both-systems.ts";
import { type Branch, pickKind, type Stretch } from "./branch.ts";
import { writeFixedLoad, writeTwoLegLoad } from "./fixed-loads.ts";
import { writeLights, writeRow } from "./lights.ts";
import {
	writeDedicated,
	writeHalfSwitched,
	writeJunction,
	writeLater,
	writeOutlets,
	writeTwoHalves,
} from "./outlets.ts";
import { writeOwnLoad, writeOwnSwitch } from "./own-parts.ts";
import type { Site } from "./site.ts";

/** What a circuit of the mains is for. */
export type Sort =
	| "outlets"
	| "lights"
	| "fixed load"
	| "dedicated"
	| "junction"
	| "half switched"
	| "outlets and lights"
	| "later"
	| "two halves"
	| "charger"
	| "called by direct current"
	| "calls direct current"
	| "own part"
	| "two legs"
	| "shared neutral";

/** Writes the hops of a circuit of a sort. */
export function writeSort(branch: Branch, stretch: Stretch, sort: Sort): void {
	const { site } = branch;
	const { chance } = site;
	switch (sort) {
		case "outlets":
			return writeOutlets(branch, stretch, chance.count(1, 7));
		case "lights":
			return writeLights(branch, stretch, chance.count(1, 6));
		case "fixed load":
			return writeFixedLoad(branch, stretch);
		case "dedicated":
			return writeDedicated(branch, stretch);
		case "junction":
			return writeJunction(branch, stretch, (side) => writeOutlets(branch, side, chance.count(1, 3), 2));
		case "half switched":
			return writeHalfSwitched(branch, stretch);
		case "outlets and lights":
			writeOutlets(branch, stretch, chance.count(1, 2), 2);
			return writeLights(branch, stretch, chance.count(1, 3));
		case "later":
			return writeLater(branch, stretch);
		case "two halves":
			writeTwoHalves(branch, stretch);
			return;
		case "own part":
			if (chance.maybe(0.5)) return writeOwnLoad(branch, stretch);
			writeOwnSwitch(branch, stretch);
			return writeRow(branch, stretch, chance.count(1, 3));
		case "charger":
			return writeCharger(branch, stretch);
		case "called by direct current":
			return writeCalled(branch, stretch);
		case "calls direct current":
			return writeCall(branch, stretch);
		case "two legs":
			return writeTwoLegLoad(branch, stretch);
		case "shared neutral": {
			const kind = pickKind(site, "outlet", "shape");
			branch.hop(stretch, { kind, facts: { shape: "split" }, letter: "r" });
			return;
		}
	}
}

/** A sort that the devices left on the site allow. */
export function drawSort({ chance, left, wish }: Site): Sort {
	return chance.weigh<Sort>([
		[6, "outlets"],
		[left > 1 ? 4 : 0, "lights"],
		[2, "fixed load"],
		[1, "dedicated"],
		[left > 1 ? 0.5 : 0, "two halves"],
		[left > 1 ? 1 : 0, "junction"],
		[left > 1 ? 0.7 : 0, "half switched"],
		[left > 2 ? 1 : 0, "outlets and lights"],
		[0.3, "later"],
		// An inverter would feed the charger of its own battery.
		[wish.sides === "both" && !wish.supply.startsWith("inverter") ? 1 : 0, "charger"],
		[wish.sides === "both" && left > 2 ? 0.5 : 0, "called by direct current"],
		[wish.sides === "both" && left > 2 ? 0.5 : 0, "calls direct current"],
	]);
}
