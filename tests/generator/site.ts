// What every part of a plan is written with: the wish, the luck, the hand that writes, and what has been declared so far.
import type { CableSet } from "./cables.ts";
import { cablesFor } from "./cables.ts";
import { Chance } from "./chance.ts";
import type { Line } from "./lines.ts";
import { NameBook } from "./names.ts";
import { drawPlaces, type GeneratedPlace } from "./places.ts";
import { Spelling } from "./spelling.ts";
import type { Wish } from "./wish.ts";
import { Words } from "./words.ts";

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
	/** Things declared at the left edge that a hop arrives at. */
	readonly standing: Line[] = [];
	private readonly cables = new Map<number, CableSet>();

	constructor(wish: Wish) {
		this.wish = wish;
		this.chance = new Chance(wish.seed ^ 0x51f1_5e5d);
		this.spelling = new Spelling(this.chance, wish.region);
		this.words = new Words(this.chance, this.spelling, wish.region);
		this.names = new NameBook(this.chance);
		this.places = drawPlaces(this.chance, this.names);
		this.left = wish.devices;
	}

	/** Volts between hot and neutral. */
	get volts(): number {
		return this.wish.region === "us" ? 120 : 230;
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

	/** A place for something that asks for no protection it has not got. */
	placeFor(isProtected: boolean): GeneratedPlace | undefined {
		const fitting = this.places.filter((place) => isProtected || !place.asksGroundFault);
		return this.chance.maybe(0.6) && fitting.length > 0 ? this.chance.pick(fitting) : undefined;
	}
}
