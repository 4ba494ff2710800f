// Lines below a `part` that lead from one of its terminals to another: links by state, fuses in them, what it draws, outlets.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Dimension } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import type { LinkSpec, LoadSpec, ProtectionSpec, Role } from "../kinds/kind.ts";
import type { PartTerminal } from "../kinds/own-part.ts";
import type { QuantityTerm, Setting, Term } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";

/** The ways through a part, as its lines say them. */
export class PartWays {
	readonly loads: LoadSpec[] = [];
	protection: ProtectionSpec | undefined;
	private readonly part: string;
	private readonly terminals: readonly PartTerminal[];
	private readonly findings: Finding[];
	private readonly told: { readonly between: readonly [string, string]; readonly way: LinkWay }[] = [];
	/** States by the name of what moves between them, in the order in which they are said. */
	private readonly states = new Map<string, string[]>();
	private readonly statesSaid = new Set<string>();

	constructor(part: string, terminals: readonly PartTerminal[], findings: Finding[]) {
		this.part = part;
		this.terminals = terminals;
		this.findings = findings;
	}

	/** The links, contacts with their positions; asked for when every line has been read. */
	get links(): LinkSpec[] {
		return this.told.map(({ between, way }): LinkSpec => {
			if (way.sort !== "contact") return { between, nature: way.sort };
			if (way.protects)
				return { between, nature: "contact", contact: { group: "trip", positions: 2, closed: [1] }, protects: true };
			const states = this.statesOf(way.group);
			const closed = way.states.map((state) => states.indexOf(state)).toSorted((one, other) => one - other);
			return { between, nature: "contact", contact: { group: way.group, positions: states.length, closed } };
		});
	}

	/** `states off, on` or `states left at off, on`: every position, in order. */
	readStates(line: Setting): void {
		const { group, words } = this.readPositions(line.terms);
		if (this.statesSaid.has(group))
			this.findings.push(
				planFinding("attribute-twice", { title: "The states are said twice", span: line.span, label: "said again" }),
			);
		this.statesSaid.add(group);
		this.states.set(group, [...new Set(words.map(({ text }) => text))]);
		if (words.length < 2)
			this.findings.push(
				planFinding("quantity-missing", {
					title: "A contact has two states at least",
					span: line.span,
					help: "Write all of them: `states off, on`.",
				}),
			);
	}

	/** `link A B`, `link A B when on`, `link A B fuse 10 A`, `link A B bonded`. */
	readLink(line: Setting): void {
		const ends = this.readEnds(line, line.terms.slice(0, 2));
		const [word, ...rest] = line.terms.slice(2);
		const text = word?.kind === "name" ? word.text : "";
		let way: LinkWay = { sort: "solid" };
		if (text === "when") {
			const { group, words } = this.readPositions(rest);
			if (words.length === 0) this.missing("`when` does not say in which state", word?.span ?? line.span, "when on");
			way = { sort: "contact", group, states: words.map((state) => this.stateOf(group, state)), protects: false };
		} else if (text === "fuse" || text === "breaker") {
			this.readProtection(text, rest, word?.span ?? line.span);
			way = { sort: "contact", group: "trip", states: [], protects: true };
		} else if (text === "bonded") {
			way = { sort: "bond" };
			this.refuseRest(rest);
		} else this.refuseRest(line.terms.slice(2));
		if (ends === undefined || !this.isPossible(ends, way, line)) return;
		this.told.push({ between: [ends[0].name, ends[1].name], way });
	}

	/** `draws 60 W from A to B`. */
	readLoad(line: Setting): void {
		const names = line.terms.filter((term) => !isFigure(term) && !isWord(term, "continuous"));
		const ends = this.readEnds(
			line,
			names.filter((term) => !joinWords.some((word) => isWord(term, word))),
		);
		const power = figureOf(line.terms, "power");
		const volts = figureOf(line.terms, "voltage");
		const amperes = figureOf(line.terms, "current");
		for (const term of line.terms)
			if (isFigure(term) && ![power, volts, amperes].some((known) => known?.span === term.span))
				this.findings.push(
					planFinding("unit-wrong", {
						title: `${"text" in term ? term.text : "?"} does not say what the part draws`,
						span: term.span,
						help: "Write it in W, or in A with the volts it is made for: `draws 5 A 12 V from + to -`.",
					}),
				);
		for (const figure of [power, volts, amperes])
			if (figure !== undefined && (figure.quantity.value <= 0 || figure.quantity.value > largestFigure))
				this.findings.push(
					planFinding("quantity-out-of-range", {
						title: `${figure.text} is no likely figure of a part`,
						span: figure.span,
						label: "out of range",
					}),
				);
		if (ends === undefined || !this.isPossible(ends, { sort: "load" }, line)) return;
		const isUsable = (value: number | undefined): value is number =>
			value !== undefined && value > 0 && value <= largestFigure;
		const volt = volts?.quantity.value;
		const watts =
			power?.quantity.value ??
			(amperes === undefined || volt === undefined ? undefined : amperes.quantity.value * volt);
		this.loads.push({
			between: [ends[0].name, ends[1].name],
			...(isUsable(watts) ? { watts } : {}),
			...(isUsable(volt) ? { volts: volt } : {}),
			continuous: line.terms.some((term) => isWord(term, "continuous")),
			outlet: false,
		});
	}

	/** `outlet from A to B`: something may be plugged in between them. */
	readOutlet(line: Setting): void {
		const ends = this.readEnds(
			line,
			line.terms.filter((term) => !joinWords.some((word) => isWord(term, word))),
		);
		if (ends === undefined || !this.isPossible(ends, { sort: "load" }, line)) return;
		this.loads.push({ between: [ends[0].name, ends[1].name], continuous: false, outlet: true });
	}

	private readProtection(sort: "fuse" | "breaker", [figure, ...rest]: readonly Term[], span: Span): void {
		const isAmperes = figure?.kind === "quantity" && figure.quantity.dimension === "current";
		const isUnknown = figure?.kind === "unknown";
		if (!isAmperes && !isUnknown)
			this.findings.push(
				planFinding(figure === undefined ? "quantity-missing" : "unit-wrong", {
					title: `The ${sort} does not say at what current it opens`,
					span: figure?.span ?? span,
					help: `Write it in A: \`${sort} 10 A\`, or \`${sort} ?\` if you do not know it yet.`,
				}),
			);
		else this.refuseRest(rest);
		const rating = isAmperes ? figure.quantity.value : undefined;
		const isLikely = rating === undefined || (rating > 0 && rating <= largestFuse);
		if (isAmperes && !isLikely)
			this.findings.push(
				planFinding("quantity-out-of-range", {
					title: `${figure.text} is no likely rating of a ${sort}`,
					span: figure.span,
					label: "out of range",
				}),
			);
		const known = this.protection;
		if (known !== undefined && isAmperes && isLikely && known.rating !== undefined && known.rating !== rating)
			this.findings.push(
				planFinding("attribute-twice", {
					title: `${this.part} opens at ${known.rating} A on one link and at ${figure.text} on another`,
					span: figure.span,
					help: "A part has one fuse or breaker, with as many poles as it needs; make the other a part of its own.",
				}),
			);
		const kept = known?.rating ?? (isLikely ? rating : undefined);
		this.protection = { ...(kept === undefined ? {} : { rating: kept }), sort, poles: (known?.poles ?? 0) + 1 };
	}

	/** The two terminals that a line names; undefined, with a finding, where it names others or too few. */
	private readEnds(line: Setting, names: readonly Term[]): readonly [PartTerminal, PartTerminal] | undefined {
		const [first, second, ...others] = names;
		if (first === undefined || second === undefined) {
			this.missing(`\`${line.key.text}\` needs two terminals`, line.span, `${line.key.text} ${this.example()}`);
			return undefined;
		}
		for (const term of others)
			this.findings.push(
				planFinding("attribute-unknown", {
					title: `\`${textOf(term)}\` is one terminal too many`,
					span: term.span,
					help: "A way leads from one terminal to another; write a line for each.",
				}),
			);
		const found = [first, second].map((term) => this.findTerminal(term));
		const [from, to] = found;
		return from === undefined || to === undefined ? undefined : [from, to];
	}

	private findTerminal(term: Term): PartTerminal | undefined {
		const text = textOf(term);
		const found = this.terminals.find(({ name, also }) => name === text || also.includes(text));
		if (found !== undefined) return found;
		const known = this.terminals.map(({ name }) => name);
		this.findings.push(
			planFinding("terminal-unknown", {
				title: `${this.part} has no terminal ${text}`,
				span: term.span,
				label: "no such terminal",
				help: `${didYouMean(text, known)} Its terminals are: ${known.join(", ")}.`.trim(),
			}),
		);
		return undefined;
	}

	/** A way that no part can have, or that would make a short, is told and left out. */
	private isPossible([from, to]: readonly [PartTerminal, PartTerminal], way: Way, line: Setting): boolean {
		const why = impossible(from, to, way);
		if (why === undefined) return true;
		this.findings.push(
			planFinding("link-impossible", {
				title: `${from.name} and ${to.name} of ${this.part}: ${why}`,
				span: line.span,
				label: `${from.role} and ${to.role}`,
			}),
		);
		return false;
	}

	/** `on`, `left at on`, `up down`: what moves, and the states behind it. */
	private readPositions(terms: readonly Term[]): { group: string; words: { text: string; span: Span }[] } {
		const names = terms.filter((term) => !isWord(term, "or"));
		const [first, at] = names;
		const isNamed = isWord(at, "at") && first !== undefined;
		const words = (isNamed ? names.slice(2) : names).map((term) => ({ text: textOf(term), span: term.span }));
		return { group: isNamed ? textOf(first) : usualGroup, words };
	}

	private stateOf(group: string, { text, span }: { text: string; span: Span }): string {
		const states = this.states.get(group) ?? [];
		if (states.includes(text)) return text;
		if (this.statesSaid.has(group))
			this.findings.push(
				planFinding("attribute-unknown", {
					title: `${this.part} has no state \`${text}\``,
					span,
					help: `${didYouMean(text, states)} Its states are: ${states.join(", ")}.`.trim(),
				}),
			);
		else this.states.set(group, [...states, text]);
		return text;
	}

	/** Where one state alone is named, there is another in which its contacts are open. */
	private statesOf(group: string): readonly string[] {
		const states = this.states.get(group) ?? [];
		return states.length === 1 ? [`not ${states[0] ?? ""}`, ...states] : states;
	}

	private refuseRest([extra]: readonly Term[]): void {
		if (extra === undefined) return;
		this.findings.push(
			planFinding("attribute-unknown", {
				title: `\`${textOf(extra)}\` says nothing about a link`,
				span: extra.span,
				label: "not understood",
				help: `${didYouMean(textOf(extra), linkWords)} Behind its two terminals a link takes: \`when\` and a state, \`fuse\` or \`breaker\` and its rating, or \`bonded\`.`.trim(),
			}),
		);
	}

	private missing(title: string, span: Span, example: string): void {
		this.findings.push(planFinding("quantity-missing", { title, span, help: `Write it like this: \`${example}\`.` }));
	}

	private example(): string {
		const [first, second] = this.terminals;
		return `${first?.name ?? "line"} ${second?.name ?? "load"}`;
	}
}

type Way = LinkWay | { readonly sort: "load" };
type LinkWay =
	| { readonly sort: "solid" | "bond" }
	| {
			readonly sort: "contact";
			readonly group: string;
			readonly states: readonly string[];
			readonly protects: boolean;
	  };

/** Why no part can have a way between two terminals; undefined where one can. */
function impossible(from: PartTerminal, to: PartTerminal, way: Way): string | undefined {
	if (from === to) return "a way leads from one terminal to another";
	const [one, other] = [sortOf(from.role), sortOf(to.role)];
	const pair = new Set([one, other]);
	if (way.sort === "load") {
		if (pair.has("ground") && pair.size > 1) return "what a part draws never returns through the ground";
		return pair.size === 1 && one !== "hot" ? "nothing flows between two terminals of one use" : undefined;
	}
	if (way.sort === "bond")
		return pair.has("ground") && (pair.has("neutral") || pair.has("negative"))
			? undefined
			: "`bonded` joins a neutral or a negative with the ground";
	if (pair.size === 1) return undefined;
	if (pair.has("ground") && (pair.has("neutral") || pair.has("negative")))
		return "a link between them is a bond; write `bonded` behind it if it is meant";
	return pair.has("ground")
		? "a link between them puts the ground under power"
		: "a link between them is a short circuit";
}

function sortOf(role: Role): Exclude<Role, "hot2" | "hot3"> {
	return role === "hot2" || role === "hot3" ? "hot" : role;
}

const usualGroup = "state";
const joinWords = ["from", "to", "between", "and"];
const linkWords = ["when", "fuse", "breaker", "bonded"];
/** Watts, volts and amperes beyond this are a slip of the pen in anything that a vehicle, boat or cabin holds. */
const largestFigure = 100_000;
const largestFuse = 1000;

function isFigure(term: Term): boolean {
	return term.kind === "quantity" || term.kind === "unknown" || term.kind === "pair" || term.kind === "gauge";
}

function figureOf(terms: readonly Term[], dimension: Dimension): QuantityTerm | undefined {
	return terms.find((term): term is QuantityTerm => term.kind === "quantity" && term.quantity.dimension === dimension);
}

function isWord(term: Term | undefined, word: string): boolean {
	return term?.kind === "name" && term.text === word;
}

function textOf(term: Term): string {
	return "text" in term ? term.text : "?";
}
