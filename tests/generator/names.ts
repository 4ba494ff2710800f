// Names, labels and remarks, each name once whatever its case.
import type { Chance } from "./chance.ts";

const stems = [
	"bunk",
	"desk",
	"shelf",
	"door",
	"step",
	"loft",
	"aft",
	"fore",
	"nook",
	"bow",
	"stove",
	"rack",
	"port",
	"hatch",
	"tür",
	"säng",
	"ванна",
	"窓",
];
const labels = [
	"Left of the door",
	"Below the long shelf, by the window",
	"Galley, aft",
	"Bunk, upper",
	"Ω and ☃: any sign but the double quote",
	"Reading lamp",
	"12 in above the floor",
	"For the kettle // not for the heater",
];
const remarks = [
	"as measured",
	"ask again",
	"label by hand",
	"12-2 would do: 14 AWG is enough",
	"in the wall",
	"#12 left over",
];

/** Gives names that are not taken, and words that are free. */
export class NameBook {
	private readonly chance: Chance;
	private readonly taken = new Set<string>();

	constructor(chance: Chance) {
		this.chance = chance;
	}

	/** A name that nothing has yet: short with a number, or a word with one. */
	fresh(letter: string): string {
		const { chance } = this;
		for (let number = 1; ; number++) {
			const stem = chance.weigh([
				[5, letter],
				[2, chance.pick(stems)],
				[1, `${letter}${chance.pick(["-", "_"])}`],
			]);
			const name = `${chance.maybe(0.1) ? stem.toUpperCase() : stem}${number}`;
			if (this.take(name)) return name;
		}
	}

	/** The first of so many names in a row, all of them free: `l1` of `l1..l4`. */
	freshRow(letter: string, count: number): { readonly text: string; readonly names: readonly string[] } {
		for (let first = 1; ; first++) {
			const names = Array.from({ length: count }, (_, index) => `${letter}${first + index}`);
			if (names.some((name) => this.taken.has(name.toLowerCase()))) continue;
			for (const name of names) this.take(name);
			return { text: `${names[0] ?? ""}..${names.at(-1) ?? ""}`, names };
		}
	}

	/** Takes a name; false where it is taken already. */
	take(name: string): boolean {
		const key = name.toLowerCase();
		if (this.taken.has(key)) return false;
		this.taken.add(key);
		return true;
	}

	/** A label in quotes, or nothing. */
	label(share = 0.3): string {
		return this.chance.maybe(share) ? `"${this.chance.pick(labels)}"` : "";
	}

	/** A remark behind a line, or nothing. */
	remark(share = 0.08): string {
		return this.chance.maybe(share)
			? `${this.chance.pick([" ", "  ", "      "])}//${this.chance.pick(["", " "])}${this.chance.pick(remarks)}`
			: "";
	}
}
