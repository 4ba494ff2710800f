// Names: how they compare, and how a dotted name leads to a thing and on into it.
import type { NameTerm } from "../syntax/tree.ts";

/** The form in which names are compared: composed, and without regard to case. */
export function foldName(name: string): string {
	return (/^[\x20-\x7e]*$/.test(name) ? name : name.normalize("NFC")).toLowerCase();
}

/** What a dotted name leads to: the thing, and the steps that remain inside it. */
export interface Resolved<Found> {
	readonly thing: Found;
	readonly rest: readonly string[];
}

/** The thing that the longest beginning of a dotted name stands for, or undefined. `LC.1A` is a thing; `inv.out` is `inv` and `out`. */
export function resolveName<Found>(name: NameTerm, things: ReadonlyMap<string, Found>): Resolved<Found> | undefined {
	for (let taken = name.steps.length; taken >= 0; taken--) {
		const thing = things.get(foldName([name.head, ...name.steps.slice(0, taken)].join(".")));
		if (thing !== undefined) return { thing, rest: name.steps.slice(taken) };
	}
	return undefined;
}
