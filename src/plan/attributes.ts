// Reads the words behind a thing against what its kind takes; gives what was said, and a finding for each word that says nothing.

import { certain } from "../base/certain.ts";
import type { Finding } from "../base/finding.ts";
import { type Gauge, squareMillimetres } from "../base/gauge.ts";
import { findUnit, formatQuantity, type Quantity, quantity, unitsOf } from "../base/quantity.ts";
import { withArticle } from "../base/wording.ts";
import type { AttributeSpec, Kind } from "../kinds/kind.ts";
import type { NameTerm, Term } from "../syntax/tree.ts";
import { tellQuantities, unknownAttribute } from "./attribute-wording.ts";
import { planFinding } from "./codes.ts";
import { fitFigure, isInRange, tellRange } from "./figure-fit.ts";
import { keptOnly } from "./kept-only.ts";
import { type SharedAttributes, SharedWords } from "./shared-words.ts";

/** What was said of a thing, by attribute name; `shared` is what any thing can have. */
export interface ReadAttributes {
	readonly values: ReadonlyMap<string, AttributeValue>;
	readonly shared: SharedAttributes;
}
export type AttributeValue =
	| { readonly sort: "quantity"; readonly quantity: Quantity }
	| { readonly sort: "pair"; readonly pair: readonly [Quantity, Quantity] }
	| { readonly sort: "count"; readonly count: number }
	| { readonly sort: "word"; readonly word: string }
	| { readonly sort: "flag"; readonly flag: boolean }
	| { readonly sort: "gauge"; readonly gauge: Gauge }
	| { readonly sort: "unknown" };
/** Reads `terms` against the attributes of `kind`; what is wrong goes to `findings`. `label` stands before them. */
export function readAttributes(
	kind: Kind,
	terms: readonly Term[],
	{ at, label }: { readonly at: NameTerm; readonly label: string | undefined },
	findings: Finding[],
): ReadAttributes {
	const reader = new AttributeReader(kind, terms, findings);
	if (label !== undefined) reader.shared.label = label;
	reader.readAll();
	for (const spec of kind.attributes)
		if (
			spec.takes === "quantity" &&
			spec.required === true &&
			!reader.values.has(spec.name) &&
			!reader.values.has(spec.instead ?? spec.name) &&
			!reader.refusedFigure
		)
			findings.push(
				planFinding("quantity-missing", {
					title: `${at.text} does not say its ${spec.name}`,
					span: at.span,
					label: `${spec.name} missing`,
					help: `Write ${spec.summary}: a figure in ${unitsOf(spec.dimension).join(", ")}, or \`?\` if you do not know it yet.`,
				}),
			);
	return reader;
}

class AttributeReader implements ReadAttributes {
	readonly values = new Map<string, AttributeValue>();
	/** A figure that could not be taken up; it was most likely meant for what is missing. */
	refusedFigure = false;
	private readonly sharedWords: SharedWords;
	private position = 0;
	private readonly kind: Kind;
	private readonly terms: readonly Term[];
	private readonly findings: Finding[];

	constructor(kind: Kind, terms: readonly Term[], findings: Finding[]) {
		this.kind = kind;
		this.terms = terms;
		this.findings = findings;
		this.sharedWords = new SharedWords(terms, findings);
	}

	get shared(): SharedAttributes {
		return this.sharedWords.said;
	}

	readAll(): void {
		for (let term = this.take(); term !== undefined; term = this.take()) this.readTerm(term);
	}

	private take(): Term | undefined {
		return this.terms[this.position++];
	}

	private peek(): Term | undefined {
		return this.terms[this.position];
	}

	private readTerm(term: Term): void {
		switch (term.kind) {
			case "quantity":
				return this.readQuantity(term.quantity, term, undefined);
			case "pair":
				return this.readPair(term.first.quantity, term.second.quantity, term);
			case "unknown":
				return this.readUnknown(term);
			case "name":
				return this.readWord(term);
			case "text":
				if (this.shared.label !== undefined)
					return this.refuse(
						planFinding("attribute-twice", { title: "The label is said twice", span: term.span, label: "said again" }),
					);
				this.shared.label = term.text;
				return;
			case "number":
				if (this.readBareCount(term)) return;
				this.refusedFigure = true;
				return this.refuse(
					planFinding("unit-wrong", {
						title: `${term.text} has no unit`,
						span: term.span,
						label: "unit missing",
						help: `Write it with a unit. ${tellQuantities(this.kind)}`,
					}),
				);
			default:
				return this.refuse(unknownAttribute(this.kind, term, "text" in term ? term.text : ""));
		}
	}

	private readQuantity(quantity: Quantity, term: Term, word: string | undefined): void {
		const spec = fitFigure(this.kind.attributes, quantity, word);
		if (spec?.takes !== "quantity") {
			// A volume can only be that of the box around it, wherever it stands: `box metal 18 cuin`.
			if (quantity.dimension === "volume" && word === undefined) return this.sharedWords.takeVolume(quantity, term);
			this.refusedFigure = true;
			return this.refuse(
				planFinding("unit-wrong", {
					title: `${formatQuantity(quantity)} does not fit ${withArticle(this.kind.name)}`,
					span: term.span,
					label: withArticle(quantity.dimension),
					help: tellQuantities(this.kind),
				}),
			);
		}
		if (!isInRange(spec, quantity)) return this.refuseRange(spec, quantity, term);
		this.set(spec, { sort: "quantity", quantity }, term);
	}

	/** Nothing is to be judged by a figure that cannot be. */
	private refuseRange(spec: AttributeSpec, quantity: Quantity, term: Term): void {
		this.refuse(
			planFinding("quantity-out-of-range", {
				title: `${formatQuantity(quantity)} is no likely ${spec.name} of ${withArticle(this.kind.name)}`,
				span: term.span,
				label: "out of range",
				help: `${tellRange(spec, quantity)} Check the figure and its unit.`.trim(),
			}),
		);
		this.set(spec, { sort: "unknown" }, term);
	}

	/** The number of a kind that is counted: the 8 of `neutral-bar 8`. */
	private readBareCount(term: Term & { kind: "number" }): boolean {
		// `4 cells` says the same as `cells 4`.
		const next = this.peek();
		const named = this.kind.attributes.find(
			(spec) => spec.takes === "count" && next?.kind === "name" && spec.word === next.text,
		);
		const behind = this.terms[this.position + 1]?.kind;
		if (named?.takes === "count" && next?.kind === "name" && behind !== "number") {
			this.position++;
			this.takeCountOf(named, next, term);
			return true;
		}
		const spec = this.kind.attributes.find((candidate) => candidate.takes === "count" && candidate.bare === true);
		if (spec?.takes !== "count") return false;
		this.position--;
		this.readCount(spec, term);
		return true;
	}

	private readPair(first: Quantity, second: Quantity, term: Term): void {
		const spec = this.kind.attributes.find(
			(candidate) => candidate.takes === "pair" && candidate.dimension === first.dimension,
		);
		if (spec === undefined)
			return this.refuse(unknownAttribute(this.kind, term, `${formatQuantity(first)} / ${formatQuantity(second)}`));
		const unlikely = [first, second].find((each) => !isInRange(spec, each));
		if (unlikely !== undefined) return this.refuseRange(spec, unlikely, term);
		this.set(spec, { sort: "pair", pair: [first, second] }, term);
	}

	private readUnknown(term: Term): void {
		const open = this.kind.attributes.find(
			(candidate) => candidate.takes === "quantity" && candidate.word === undefined && !this.values.has(candidate.name),
		);
		if (open === undefined) this.refuse(unknownAttribute(this.kind, term, "?"));
		else this.set(open, { sort: "unknown" }, term);
	}

	private readWord(term: NameTerm): void {
		const word = term.text;
		if (this.readShared(term)) return;
		const phrase = this.matchPhrase(term);
		if (phrase !== undefined) return;
		for (const spec of this.kind.attributes) {
			if (spec.takes === "flag" && spec.name === word) return this.set(spec, { sort: "flag", flag: true }, term);
			if (spec.takes === "choice" && spec.words.includes(word)) return this.set(spec, { sort: "word", word }, term);
			if (spec.takes === "quantity" && spec.word === word) return this.readWordedQuantity(this.measured(spec), term);
			if (spec.takes === "count" && spec.word === word) return this.readCount(spec, term);
			if (spec.takes === "name" && spec.word === word) return this.readName(spec, term);
			if (spec.takes === "gauge" && spec.word === word) return this.readGauge(spec, term);
		}
		if (word === "no") return this.readNegation(term);
		this.refuse(unknownAttribute(this.kind, term, word));
	}

	/** `in PLACE`, `box 18 cuin metal`, `each`, `roughed in`, `note "..."`. */
	private readShared(term: NameTerm): boolean {
		// Of a panel it says what its own case is, not what the box around it is.
		if (term.text === "plastic" && this.kind.attributes.some(({ name }) => name === "plastic")) return false;
		const behind = this.sharedWords.read(term, this.position);
		this.position = behind ?? this.position;
		return behind !== undefined;
	}

	private matchPhrase(term: NameTerm): string | undefined {
		for (const spec of this.kind.attributes) {
			if (spec.takes !== "phrase") continue;
			for (const phrase of spec.phrases) {
				const words = phrase.split(" ");
				const found = [term, ...this.terms.slice(this.position, this.position + words.length - 1)];
				if (!words.every((word, index) => found[index]?.kind === "name" && textOf(found[index]) === word)) continue;
				this.position += words.length - 1;
				this.set(spec, { sort: "word", word: phrase }, term);
				return phrase;
			}
		}
		return undefined;
	}

	private unitsBehind(word: string | undefined): string[] {
		return this.kind.attributes.flatMap((spec) =>
			spec.takes === "quantity" && spec.word === word ? unitsOf(spec.dimension) : [],
		);
	}

	/** Of attributes with one word, such as a surge in amperes or in watts, the one that the figure behind it measures. */
	private measured(first: AttributeSpec & { takes: "quantity" }): AttributeSpec & { takes: "quantity" } {
		const next = this.peek();
		if (next?.kind !== "quantity" || next.quantity.dimension === first.dimension) return first;
		for (const spec of this.kind.attributes)
			if (spec.takes === "quantity" && spec.word === first.word && spec.dimension === next.quantity.dimension)
				return spec;
		return first;
	}

	private readWordedQuantity(spec: AttributeSpec & { takes: "quantity" }, term: NameTerm): void {
		const next = this.take();
		if (next?.kind === "unknown") return this.set(spec, { sort: "unknown" }, term);
		// A share is written as a part of one as well: `power-factor 0.8`.
		if (next?.kind === "number" && spec.dimension === "share" && next.value > 0 && next.value <= 1)
			return this.readQuantity(quantity(next.value * 100, percent), next, spec.word);
		if (next?.kind === "quantity" && next.quantity.dimension === spec.dimension)
			return this.readQuantity(next.quantity, next, spec.word);
		if (next !== undefined && next.kind !== "quantity" && next.kind !== "number") this.position--;
		this.refusedFigure = true;
		this.refuse(
			planFinding("unit-wrong", {
				title: `\`${term.text}\` needs a figure in ${this.unitsBehind(spec.word).join(" or ")}`,
				span: next?.span ?? term.span,
				label: "unit missing",
				help: `Write \`${term.text}\` and the figure: ${spec.summary}.`,
			}),
		);
	}

	/** The name behind a word; that of a slot may be a number. */
	private readName(spec: AttributeSpec & { takes: "name" }, term: NameTerm): void {
		const next = this.peek();
		if (next?.kind !== "name" && next?.kind !== "number")
			return this.refuse(
				planFinding("quantity-missing", {
					title: `\`${term.text}\` does not say what with`,
					span: term.span,
					help: `Write \`${term.text}\` and ${spec.summary}.`,
				}),
			);
		this.position++;
		this.set(spec, { sort: "word", word: next.text }, next);
	}

	/** The size of a conductor behind a word. */
	private readGauge(spec: AttributeSpec & { takes: "gauge" }, term: NameTerm): void {
		const next = this.peek();
		const gauge =
			next?.kind === "gauge"
				? next.gauge
				: next?.kind === "quantity" && next.quantity.dimension === "area"
					? squareMillimetres(next.quantity.value)
					: undefined;
		if (gauge === undefined || next === undefined)
			return this.refuse(
				planFinding("unit-wrong", {
					title: `\`${term.text}\` needs the size of a conductor`,
					span: term.span,
					label: "size missing",
					help: `Write \`${term.text}\` and ${spec.summary}: \`${term.text} 2/0\`, \`${term.text} 16 mm2\`.`,
				}),
			);
		this.position++;
		this.set(spec, { sort: "gauge", gauge }, next);
	}

	private readCount(spec: AttributeSpec & { takes: "count" }, term: Term & { readonly text: string }): void {
		const next = this.takeCount();
		if (next === undefined || !Number.isInteger(next.value)) {
			// A figure with a unit was meant for this word, so it is not taken for anything else.
			const wrong = next === undefined && this.peek()?.kind === "quantity" ? this.take() : next;
			this.refuse(
				planFinding("quantity-missing", {
					title: `\`${term.text}\` needs a whole number`,
					span: wrong?.span ?? term.span,
					help: `Write \`${term.text}\` and ${spec.summary}.`,
				}),
			);
			return;
		}
		this.takeCountOf(spec, term, next);
	}

	private takeCountOf(
		spec: AttributeSpec & { takes: "count" },
		term: Term & { readonly text: string },
		next: { readonly value: number; readonly text: string; readonly span: Term["span"] },
	): void {
		if (!Number.isInteger(next.value) || next.value < spec.least || next.value > spec.most)
			return this.refuse(
				planFinding("quantity-out-of-range", {
					title: `${term.text} ${next.text} is out of range`,
					span: next.span,
					help: `From ${spec.least} to ${spec.most} fit.`,
				}),
			);
		this.set(spec, { sort: "count", count: next.value }, term);
	}

	/** The number behind a word. In `spaces 12 in galley` the `in` leads to a place: a count has no inches. */
	private takeCount(): { value: number; text: string; span: Term["span"] } | undefined {
		const [next, place] = [this.peek(), this.terms[this.position + 1]];
		if (next?.kind === "number") {
			this.position++;
			return next;
		}
		if (next?.kind !== "quantity" || next.quantity.unit !== "in" || place?.kind !== "name") return undefined;
		this.position += 2;
		this.shared.place = place;
		return { value: next.quantity.written, text: String(next.quantity.written), span: next.span };
	}

	private readNegation(term: NameTerm): void {
		const next = this.take();
		const spec = this.kind.attributes.find(
			(candidate) => candidate.takes === "flag" && next?.kind === "name" && candidate.name === next.text,
		);
		if (spec === undefined)
			return this.refuse(unknownAttribute(this.kind, next ?? term, next?.kind === "name" ? `no ${next.text}` : "no"));
		this.set(spec, { sort: "flag", flag: false }, term);
	}

	private set(spec: AttributeSpec, value: AttributeValue, term: Term): void {
		if (this.values.has(spec.name))
			return this.refuse(
				planFinding("attribute-twice", {
					title: `The ${spec.name} is said twice`,
					span: term.span,
					label: "said again",
				}),
			);
		this.values.set(spec.name, value);
		if (spec.kept === true) this.refuse(keptOnly(spec.name, term.span));
	}

	private refuse(problem: Finding): void {
		this.findings.push(problem);
	}
}

function textOf(term: Term | undefined): string {
	return term?.kind === "name" ? term.text : "";
}

const percent = certain(findUnit("%"), "per cent");
