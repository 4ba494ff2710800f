// What a hop says of its cable, gathered piece by piece in any order. What is said twice is reported, the first holds.
import type { Finding } from "../base/finding.ts";
import { findUnit } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import { problem, quoted } from "./problem.ts";
import type { HopStatement, Marking, NewName, QuantityTerm, Term, UnknownTerm } from "./tree.ts";
import { rounded } from "./units.ts";

type Length = QuantityTerm | UnknownTerm;

/** The left side of one hop while it is read. */
export class LeftOfTo {
	readonly through: HopStatement["through"][number][] = [];
	readonly markings: Marking[] = [];
	readonly terms: Term[] = [];
	readonly #report: (finding: Finding) => void;
	#length: { readonly length: Length | undefined; readonly span: Span } | undefined;
	#within: { readonly length: Length | undefined; readonly span: Span } | undefined;
	#tag: NewName | undefined;
	#cable: readonly Term[] = [];

	constructor(report: (finding: Finding) => void) {
		this.#report = report;
	}

	/** Whether the hop has its length. */
	get hasLength(): boolean {
		return this.#length !== undefined || this.#within !== undefined;
	}

	/** The length of the hop; undefined where one was written that could not be read. */
	setLength(length: Length | undefined, span: Span): void {
		if (this.#length) this.#reportLength(span, "A hop has one length, and this is a second one");
		else this.#length = { length: this.#positive(length), span };
	}

	/** `within 7 in`. */
	setWithin(length: Length | undefined, span: Span): void {
		if (this.#within) this.#reportLength(span, "`within` stands twice on one hop");
		else this.#within = { length: this.#positive(length), span };
	}

	setTag(tag: NewName): void {
		if (this.#tag) this.#reportWord(tag.span, "A hop has one tag, and this is a second one");
		else this.#tag = tag;
	}

	setCable(cable: readonly Term[], span: Span): void {
		if (this.#cable.length > 0) this.#reportWord(span, "A hop goes by one cable, and this is a second one");
		else this.#cable = cable;
	}

	/** All of it, once the word is known that joins the hop to what it arrives at. */
	resolve(word: "to" | "via" | "bolted", span: Span) {
		if (this.#within && (word !== "to" || this.#length))
			this.#reportLength(this.#within.span, "`within` is for a hop `to` something, and is its only length");
		if (this.#length && word === "bolted")
			this.#reportLength(this.#length.span, "What is bolted together has no cable between, so it has no length");
		if (this.#cable.length > 0 && word === "bolted")
			this.#reportWord(span, "What is bolted together has no cable between");
		const isWithin = this.#within !== undefined && word === "to";
		const length = isWithin ? this.#within?.length : this.#length ? this.#length.length : this.#lengthOfParts();
		return {
			manner: isWithin ? ("within" as const) : word,
			...(length === undefined || word === "bolted" ? {} : { length }),
			...(this.#tag ? { tag: this.#tag } : {}),
			cable: this.#cable,
			through: this.through,
			markings: this.markings,
			terms: this.terms,
		};
	}

	/** Where no length of the whole is said, the parts through other places are the whole. */
	#lengthOfParts(): QuantityTerm | undefined {
		const lengths = this.through.map((part) => part.length);
		const [first] = lengths;
		if (first === undefined || lengths.includes(undefined)) return undefined;
		const value = rounded(lengths.reduce((sum, part) => sum + (part?.quantity.value ?? 0), 0));
		const written = rounded(value / (findUnit(first.quantity.unit)?.factor ?? 1));
		return lengths.length === 1 ? first : { ...first, quantity: { ...first.quantity, value, written } };
	}

	/** A cable is longer than nought; the length, where it is one. */
	#positive(length: Length | undefined): Length | undefined {
		if (length?.kind !== "quantity" || length.quantity.value > 0) return length;
		this.#report(
			problem("number-unclear", length.span, {
				title: `${quoted(length.text)} is no length of a cable`,
				label: "not more than nought",
				help: "Write how long the cable is, or `?` as long as that is not known.",
			}),
		);
		return undefined;
	}

	#reportLength(span: Span, title: string): void {
		this.#report(problem("length-unexpected", span, { title, label: "not this one" }));
	}

	#reportWord(span: Span, title: string): void {
		this.#report(problem("word-unexpected", span, { title, label: "not here", help: "Keep one of the two." }));
	}
}
