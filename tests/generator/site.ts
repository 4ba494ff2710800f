// What every part of a plan is written with: the wish, the luck, the hand that writes, and what has been declared so far.
import { certain } from "../../src/base/certain.ts";
import type { Kind } from "../../src/kinds/kind.ts";
import type { CableSet } from "./cables.ts";
import { cablesFor } from "./cables.ts";
import { Chance } from "./chance.ts";
import type { Line } from "./lines.ts";
import { NameBook } from "./names.ts";
import { drawPlaces, type GeneratedPlace } from "./places.ts";
import { Spelling } from "./spelling.ts";
import type { Wish } from "./wish.ts";
import { type Facts, Words } from "./words.ts";

/** The site on which one plan is built. */
export class Site {
	readonly wish: Wish;
	readonly chance: Chance;
	readonly spelling: Spelling;
	readonly words: Words;
	readonly names: NameBook;
	readonly places: readonly GeneratedPlace[];
	/** Devices that are still to be put on circuits. */
	left: number;
	/** Statements of own cables, each once. */
	readonly ownCables = new Set<string>();
	/** Parts of the builder's own. */
	readonly ownParts: Line[] = [];
	/** Blocks that say how something is landed. */
	readonly landings: Line[] = [];
	/** Things declared at the left edge that a hop arrives at. */
	readonly standing: Line[] = [];
	/** What waits on the mains side for its wires of direct current: inverters, chargers, coils, what is to be bonded. */
	readonly machines: { readonly name: string; readonly power: number }[] = [];
	readonly chargers: { readonly name: string; readonly amperes: number }[] = [];
	/** Relays in the mains whose coils are for direct current, and names of relays for direct current whose coils the mains call. */
	readonly coils: string[] = [];
	readonly calledByMains: string[] = [];
	readonly grounds: string[] = [];
	/** The ground bars of all boards. */
	readonly boards: string[] = [];
	readonly cases: string[] = [];
	/** Nominal volts of the bank. */
	bankVolts: number;
	private turns = 0;
	private readonly cables = new Map<number, CableSet>();
	private readonly namesOfCables = new Map<string, string>();

	constructor(wish: Wish) {
		this.wish = wish;
		this.chance = new Chance(wish.seed ^ 0x51f1_5e5d);
		this.spelling = new Spelling(this.chance, wish.region);
		this.words = new Words(this.chance, this.spelling, wish);
		this.names = new NameBook(this.chance);
		this.places = drawPlaces(this.chance, this.names);
		this.left = wish.devices;
		this.bankVolts = this.chance.weigh([
			[6, 12],
			[3, 24],
			[1, 48],
		]);
	}

	/** Volts between hot and neutral. */
	get volts(): number {
		return this.wish.region === "us" ? 120 : 230;
	}

	/** Volts of a bank that feeds so many watts without wires as thick as a wrist: those of the bank, or more. */
	bankFor(watts: number): number {
		return Math.max(this.bankVolts, watts > 5500 ? 48 : watts > 2700 ? 24 : 12);
	}

	/** The cables behind a breaker, the same wherever that rating comes again. */
	cablesFor(amperes: number): CableSet {
		const known = this.cables.get(amperes) ?? cablesFor(this.wish, this.chance, amperes);
		this.cables.set(amperes, known);
		return known;
	}

	/** A cable by its words; the statement that describes it goes into the plan. */
	use(cables: CableSet, cable: string): string {
		for (const statement of cables.statements) if (statement.split(" ")[1] === cable) this.ownCables.add(statement);
		return cable;
	}

	/** A cable of the builder's own, by what is said of it; gives its name. */
	ownCable(make: string): string {
		const known = this.namesOfCables.get(make);
		if (known !== undefined) return known;
		const name = this.names.fresh("cable");
		this.namesOfCables.set(make, name);
		this.ownCables.add(`cable ${name} ${make}`);
		return name;
	}

	/** A part of the builder's own, by what is said of it and of its terminals; gives its name. */
	ownPart(what: string, below: readonly string[]): string {
		const name = this.names.fresh("part");
		this.ownParts.push({
			text: `part ${name} ${`${this.names.label(0.5)} ${what}`.trim()}`,
			below: below.map((text) => ({ text })),
		});
		return name;
	}

	/** A thing at the left edge, in a place of its own at times. */
	declare(kind: Kind, letter: string, facts: Facts): { readonly name: string; readonly line: Line } {
		const name = this.names.fresh(letter);
		const place = this.placeFor(true);
		const [word = "", ...others] = this.words.thing(kind, facts).split(" ");
		const words = [word, name, this.names.label(), others.join(" "), place === undefined ? "" : `in ${place.name}`];
		return { name, line: { text: words.filter((each) => each !== "").join(" ") } };
	}

	/** One of several, each in its turn: over many plans none is left out. */
	next<Item>(items: readonly Item[]): Item {
		this.turns += 1;
		return certain(items[(this.wish.seed + this.turns) % items.length], "an item");
	}

	/** One of several; each plan has one that it takes more often than the others. */
	favour<Item>(items: readonly Item[]): Item {
		const favourite = items[this.wish.seed % items.length];
		return favourite !== undefined && this.chance.maybe(0.4) ? favourite : this.chance.pick(items);
	}

	/** A place for something that asks for no protection it has not got. */
	placeFor(isProtected: boolean): GeneratedPlace | undefined {
		const fitting = this.places.filter((place) => isProtected || !place.asksGroundFault);
		return this.chance.maybe(0.6) && fitting.length > 0 ? this.chance.pick(fitting) : undefined;
	}
}
