// The words that any thing may have behind it, whatever its kind: its place, the box around it, what its terminals are.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import { formatQuantity, type Quantity } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import type { Clamp } from "../kinds/kind.ts";
import type { NameTerm, Term } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { keptOnly } from "./kept-only.ts";
import type { BoxFittings } from "./plan.ts";

/** What any thing can have: its place, its box, whether a row of things shares its figure. */
export interface SharedAttributes {
	place?: NameTerm;
	metal?: boolean;
	volume?: Quantity;
	/** What the box has, and the words that say so. */
	readonly fittings: { -readonly [Key in keyof BoxFittings]: BoxFittings[Key] };
	readonly fittingWords: NameTerm[];
	/** What holds the wires on its terminals, where that is not what is usual. */
	terminals?: { readonly clamp: Clamp; readonly span: Span };
	/** Its terminals are said to be marked for a temperature. */
	marked?: true;
	shares?: "each" | "together";
	roughedIn?: boolean;
	/** Quoted text anywhere among the attributes, where none stands behind the name. */
	label?: string;
	note?: string;
}

/** What a box's clamps, and its cover, may be. */
const clampPlaces = ["inside", "outside"] as const;
const covers = ["blank", "plastic", "metal", "raised", "weatherproof"] as const;
/** What a device's terminals may be, where the builder says it. */
const terminalSorts = ["screw", "plate", "cage", "stud", "port"] as const satisfies readonly Clamp[];
/** Devices that stand side by side in the widest boxes that are sold (common practice). */
const mostGangs = 10;

/** Whether a box can have such a volume: from a handy box to a large cabinet, in cubic centimetres. */
export function isLikelyVolume({ dimension, value }: Quantity): boolean {
	return dimension === "volume" && value >= 30 && value <= 30_000;
}

/** Every word that any thing may have behind it. */
export const sharedWords: readonly string[] = [
	...["in", "box", "metal", "plastic", "each", "together", "roughed", "note", "gangs", "clamps", "cover", "partition"],
	...["terminals", ...clampPlaces, ...covers, ...terminalSorts],
];

/** Reads shared words out of the terms behind a thing. */
export class SharedWords {
	readonly said: SharedAttributes = { fittings: {}, fittingWords: [] };
	private readonly terms: readonly Term[];
	private readonly findings: Finding[];

	constructor(terms: readonly Term[], findings: Finding[]) {
		this.terms = terms;
		this.findings = findings;
	}

	/** Reads a word and what belongs to it from `position` on; gives the position behind it, undefined where the word is none of these. */
	read(term: NameTerm, position: number): number | undefined {
		const next = this.terms[position];
		switch (term.text) {
			case "in":
				return this.readPlace(term, next, position);
			case "box":
				if (next?.kind === "number" || (next?.kind === "quantity" && next.quantity.dimension !== "volume")) {
					this.refuseVolume(next);
					return position + 1;
				}
				if (next?.kind !== "quantity") return position;
				this.takeVolume(next.quantity, next);
				return position + 1;
			case "metal":
			case "plastic":
				if (this.said.metal !== undefined) this.twice("box's material", term.span);
				this.said.metal ??= term.text === "metal";
				return position;
			case "each":
			case "together":
				if (this.said.shares !== undefined) this.twice("`each` or `together`", term.span);
				this.said.shares ??= term.text;
				return position;
			case "roughed":
				if (next?.kind !== "name" || next.text !== "in") return undefined;
				if (this.said.roughedIn === true) this.twice("stage", term.span);
				this.said.roughedIn = true;
				return position + 1;
			case "note":
				if (next?.kind !== "text") return undefined;
				if (this.said.note !== undefined) this.twice("note", next.span);
				this.said.note ??= next.text;
				return position + 1;
			case "gangs":
				return this.readGangs(term, next, position);
			case "clamps":
				return this.readClamps(term, next, position);
			case "cover":
				return this.readCover(term, next, position);
			case "partition":
				if (this.isNew("partition", term)) this.said.fittings.partition = true;
				return position;
			case "terminals":
				return this.readTerminals(term, next, position);
			case "no":
				return this.readNegation(next, position);
			default:
				return undefined;
		}
	}

	/** The volume of the box around a thing; no box is larger or smaller than those that are sold. */
	takeVolume(volume: Quantity, { span }: Pick<Term, "span">): void {
		if (this.said.volume !== undefined) return this.twice("volume", span);
		if (isLikelyVolume(volume)) this.said.volume = volume;
		else
			this.findings.push(
				planFinding("quantity-out-of-range", {
					title: `${formatQuantity(volume)} is no likely volume of a box`,
					span,
					label: "out of range",
					help: "From 2 cuin to 1800 cuin fits. Check the figure and its unit.",
				}),
			);
	}

	private refuseVolume(term: Term & { readonly text: string }): void {
		this.findings.push(
			planFinding("unit-wrong", {
				title: `${term.text} is no volume of a box`,
				span: term.span,
				label: "unit missing",
				help: "Write the volume that is stamped in it, in cuin or cm3: `box 18 cuin`.",
			}),
		);
	}

	private readPlace(term: NameTerm, next: Term | undefined, position: number): number {
		if (next?.kind !== "name") {
			this.findings.push(
				planFinding("place-unknown", {
					title: "`in` does not say which place",
					span: term.span,
					help: "Write the name of a place behind `in`.",
				}),
			);
			return position;
		}
		if (this.said.place !== undefined) this.twice("place", next.span);
		this.said.place ??= next;
		return position + 1;
	}

	private readGangs(term: NameTerm, next: Term | undefined, position: number): number {
		if (next?.kind !== "number" || !Number.isInteger(next.value)) {
			this.findings.push(
				planFinding("quantity-missing", {
					title: "`gangs` needs a whole number",
					span: next?.span ?? term.span,
					help: "Write for how many devices side by side the box is made: `gangs 2`.",
				}),
			);
			return next?.kind === "number" || next?.kind === "quantity" ? position + 1 : position;
		}
		if (next.value >= 1 && next.value <= mostGangs) {
			if (this.isNew("gangs", term)) this.said.fittings.gangs = next.value;
		} else
			this.findings.push(
				planFinding("quantity-out-of-range", {
					title: `gangs ${next.text} is out of range`,
					span: next.span,
					help: `From 1 to ${mostGangs} fit.`,
				}),
			);
		return position + 1;
	}

	private readClamps(term: NameTerm, next: Term | undefined, position: number): number {
		const place = clampPlaces.find((known) => next?.kind === "name" && known === next.text);
		if (place === undefined) this.refuse(term, next, clampPlaces);
		else if (this.isNew("clamps", term)) this.said.fittings.clamps = place;
		return next?.kind === "name" ? position + 1 : position;
	}

	private readCover(term: NameTerm, next: Term | undefined, position: number): number {
		const cover = covers.find((known) => next?.kind === "name" && known === next.text);
		if (cover === undefined) this.refuse(term, next, covers);
		else if (this.isNew("cover", term)) this.said.fittings.cover = cover;
		return next?.kind === "name" ? position + 1 : position;
	}

	private readTerminals(term: NameTerm, next: Term | undefined, position: number): number {
		if (next?.kind === "quantity" && next.quantity.dimension === "temperature") {
			const { value } = next.quantity;
			if (this.said.marked === true) this.twice("marking of the terminals", term.span);
			this.said.marked = true;
			this.findings.push(
				value >= 60 && value <= 105
					? keptOnly("temperature that terminals are marked for", term.span)
					: planFinding("quantity-out-of-range", {
							title: `${next.text} is no likely marking of terminals`,
							span: next.span,
							help: "Terminals are marked for 60 C, 75 C or 90 C.",
						}),
			);
			return position + 1;
		}
		const clamp = terminalSorts.find((known) => next?.kind === "name" && known === next.text);
		if (clamp === undefined) this.refuse(term, next, terminalSorts);
		else if (this.said.terminals !== undefined) this.twice("terminals", term.span);
		else this.said.terminals = { clamp, span: term.span };
		return next?.kind === "name" ? position + 1 : position;
	}

	private readNegation(next: Term | undefined, position: number): number | undefined {
		if (next?.kind !== "name") return undefined;
		const { fittings } = this.said;
		if (next.text === "cover") {
			if (this.isNew("cover", next)) fittings.cover = "none";
		} else if (next.text === "clamps") {
			if (this.isNew("clamps", next)) fittings.clamps = "none";
		} else if (next.text === "partition") {
			if (this.isNew("partition", next)) fittings.partition = false;
		} else return undefined;
		return position + 1;
	}

	private isNew(key: keyof BoxFittings, term: NameTerm): boolean {
		const isNew = this.said.fittings[key] === undefined;
		if (isNew) this.said.fittingWords.push(term);
		else this.twice(key, term.span);
		return isNew;
	}

	private twice(what: string, span: Span): void {
		this.findings.push(
			planFinding("attribute-twice", { title: `The ${what} is said twice`, span, label: "said again" }),
		);
	}

	private refuse(term: NameTerm, next: Term | undefined, words: readonly string[]): void {
		const found = next?.kind === "name" ? next.text : "";
		this.findings.push(
			planFinding("attribute-unknown", {
				title: found === "" ? `\`${term.text}\` does not say which` : `\`${term.text}\` cannot be \`${found}\``,
				span: next?.kind === "name" ? next.span : term.span,
				help: `${didYouMean(found, words)} Behind \`${term.text}\` fits one of: ${words.join(", ")}.`.trim(),
			}),
		);
	}
}
