// Says of a thing what is to be said, in the words, units and limits that its kind gives.
import type { AttributeSpec, Kind, Region } from "../../src/kinds/kind.ts";
import type { Chance } from "./chance.ts";
import { favouritesOf, habits } from "./habits.ts";
import type { Spelling } from "./spelling.ts";
import type { Wish } from "./wish.ts";

/** What is to be said of a thing, by the names of its kind's attributes; figures in base units. */
export type Facts = Readonly<Record<string, number | boolean | string | readonly [number, number] | undefined>>;

/** Writes things as one builder does, and keeps account of what has been said of each kind. */
export class Words {
	readonly said = new Set<string>();
	private readonly chance: Chance;
	private readonly spelling: Spelling;

	private readonly region: Region;

	private readonly favourites: ReadonlySet<string>;

	constructor(chance: Chance, spelling: Spelling, { region, seed }: Wish) {
		this.chance = chance;
		this.spelling = spelling;
		this.region = region;
		this.favourites = favouritesOf(seed);
	}

	/** The kind's word, or another word of the trade for it, and what is said behind it: `receptacle 15 A duplex`. */
	thing(kind: Kind, facts: Facts = {}): string {
		const word = this.chance.maybe(0.85) ? kind.name : this.chance.pick([kind.name, ...(kind.also ?? [])]);
		this.said.add(kind.name);
		return `${word} ${this.attributes(kind, facts)}`.trim();
	}

	/** What is said behind the kind's word alone. */
	attributes(kind: Kind, facts: Facts): string {
		const known = new Set(kind.attributes.map(({ name }) => name));
		const foreign = Object.keys(facts).filter((name) => facts[name] !== undefined && !known.has(name));
		if (foreign.length > 0) throw new Error(`${kind.name} takes no ${foreign.join(", ")}`);
		const told = kind.attributes.flatMap((spec) => {
			const habit = this.chance.maybe(this.favourites.has(spec.name) ? 0.6 : 0.02) ? habits.get(spec.name) : undefined;
			const fact = facts[spec.name] ?? habit?.(this.chance, this.region, kind, spec);
			if (fact === undefined) return [];
			this.said.add(`${kind.name}: ${spec.name}`);
			return [this.attribute(kind, spec, fact)];
		});
		return this.spelling.list(this.chance.maybe(0.6) ? told : this.chance.shuffle(told));
	}

	private attribute(kind: Kind, spec: AttributeSpec, fact: NonNullable<Facts[string]>): string {
		const misfit = (): Error => new Error(`${kind.name} cannot have ${String(fact)} as its ${spec.name}`);
		switch (spec.takes) {
			case "quantity": {
				if (typeof fact === "string") return `${spec.word ?? ""} ${fact}`.trim();
				if (typeof fact !== "number" || fact < (spec.least ?? 0) || fact > (spec.most ?? Number.MAX_VALUE))
					throw misfit();
				const figure = this.spelling.quantity(fact, spec.dimension);
				return spec.word === undefined ? figure : `${spec.word} ${figure}`;
			}
			case "count":
				if (typeof fact !== "number" || fact < spec.least || fact > spec.most) throw misfit();
				return spec.bare === true && this.chance.maybe(0.5) ? `${fact}` : `${spec.word} ${fact}`;
			case "flag":
				if (typeof fact !== "boolean") throw misfit();
				return fact ? spec.name : `no ${spec.name}`;
			case "choice":
				if (typeof fact !== "string" || !spec.words.includes(fact)) throw misfit();
				return fact;
			case "phrase":
				if (typeof fact !== "string" || !spec.phrases.includes(fact)) throw misfit();
				return fact;
			case "name":
			case "gauge":
				if (typeof fact !== "string") throw misfit();
				return `${spec.word} ${fact}`;
			case "pair": {
				if (typeof fact !== "object") throw misfit();
				const [one, other] = fact;
				return this.chance.maybe(0.7)
					? `${this.spelling.quantity(one, spec.dimension)} / ${this.spelling.quantity(other, spec.dimension)}`
					: `${one}/${other} V`;
			}
		}
	}
}
