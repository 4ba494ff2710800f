// The places of a generated plan, and what each asks of what is put into it.
import type { Chance } from "./chance.ts";
import type { NameBook } from "./names.ts";

/** A place. The careful builder protects every outlet where water may be, whatever the rule set leaves out. */
export interface GeneratedPlace {
	readonly name: string;
	/** Outlets there stand behind a ground-fault device; lights too. */
	readonly asksGroundFault: boolean;
	/** Outlets there have a cover. */
	readonly isOpen: boolean;
	readonly statement: string;
}

const sorts: readonly (readonly [words: readonly string[], asks: boolean, open: boolean])[] = [
	[["", "dry", "24 C", '"A dry place"'], false, false],
	[["sink 3 ft", "basin 0.5 m", "sink 18 in", "basin 1 ft 6 in"], true, false],
	[["sink 9 ft", "basin 3 m"], false, false],
	[["outdoor", '"Outside, door side" outdoor', "outdoor wet"], true, true],
	[["bath wet", "wet", "damp, basin 2 ft"], true, true],
	[["engine-space", "engine-space 30 C"], true, false],
];

/** One to six places, the first of them dry. */
export function drawPlaces(chance: Chance, names: NameBook): readonly GeneratedPlace[] {
	return Array.from({ length: chance.count(1, 6) }, (_, index) => {
		const [words, asksGroundFault, isOpen] = index === 0 ? (sorts[0] ?? chance.pick(sorts)) : chance.pick(sorts);
		const name = names.fresh(chance.pick(["hall", "galley", "cabin", "porch", "bay", "saloon"]));
		return { name, asksGroundFault, isOpen, statement: `place ${name} ${chance.pick(words)}`.trimEnd() };
	});
}
