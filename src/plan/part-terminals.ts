// One line below a `part` that describes a terminal: its name, what it is for, and what it takes.
import type { Finding } from "../base/finding.ts";
import { formatGauge, type Gauge, squareMillimetres } from "../base/gauge.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Clamp } from "../kinds/kind.ts";
import type { PartTerminal } from "../kinds/own-part.ts";
import type { NameTerm, Setting, Term } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { roleOfTerm, roleWords } from "./role-words.ts";

/** How a terminal of a part may hold its conductors. */
export const clampWords = ["screw", "plate", "cage", "stud", "port", "lead"] as const satisfies readonly Clamp[];
const screwColours = ["brass", "silver", "green", "dark"];
/** Sides have any name; these two need no `on`. */
const plainSides = ["line", "load", "in", "out"];
const mostWires = 60;

/** The terminal that a line describes; undefined, with a finding, where it does not say what the terminal is for. */
export function readPartTerminal(line: Setting, findings: Finding[]): PartTerminal | undefined {
	const [first, ...rest] = line.terms;
	const role = roleOfTerm(first);
	if (role === undefined) {
		const word = first?.kind === "name" ? first.text : "";
		findings.push(
			planFinding("role-missing", {
				title: `It is not said what the terminal ${line.key.text} is for`,
				span: first?.span ?? line.key.span,
				label: "for what?",
				help: `${didYouMean(word, roleWords)} Write it behind the name: ${roleWords.join(", ")}.`.trim(),
			}),
		);
		return undefined;
	}
	const words = new TerminalWords(rest, findings);
	words.readAll();
	const { smallest, largest, ...said } = words.said;
	return {
		name: line.key.text,
		role,
		...said,
		...(largest === undefined ? {} : { smallest: smallest ?? largest, largest }),
	};
}

type Draft = { -readonly [Key in keyof PartTerminal]?: PartTerminal[Key] } & { also: string[] };

class TerminalWords {
	readonly said: Draft = { also: [] };
	private readonly terms: readonly Term[];
	private readonly findings: Finding[];
	private position = 0;

	constructor(terms: readonly Term[], findings: Finding[]) {
		this.terms = terms;
		this.findings = findings;
	}

	readAll(): void {
		for (let term = this.take(); term !== undefined; term = this.take()) {
			const gauge = gaugeOf(term);
			if (gauge !== undefined) this.readSize(gauge, term);
			else if (term.kind === "name") this.readWord(term);
			else this.refuse(term, "text" in term ? term.text : "?");
		}
	}

	private take(): Term | undefined {
		return this.terms[this.position++];
	}

	/** One size is the largest and the smallest it takes; of two the thinner is the smallest. */
	private readSize(gauge: Gauge, term: Term): void {
		const known = this.said.largest;
		if (this.said.smallest !== undefined) return this.twice("size", term);
		if (known === undefined) {
			this.said.largest = gauge;
			return;
		}
		const [thin, thick] = gauge.mm2 < known.mm2 ? [gauge, known] : [known, gauge];
		if (thin.mm2 === thick.mm2)
			this.findings.push(
				planFinding("attribute-twice", {
					title: `From ${formatGauge(known)} to ${formatGauge(gauge)} is one size`,
					span: term.span,
				}),
			);
		this.said.smallest = thin;
		this.said.largest = thick;
	}

	private readWord(term: NameTerm): void {
		const word = term.text;
		const clamp = clampWords.find((known) => known === word);
		// `brass screw`: the colour says that it is one.
		if (clamp !== undefined) {
			if (this.isNew("sort of terminal", this.said.clamp, term)) this.said.clamp = clamp;
		} else if (screwColours.includes(word)) {
			if (this.isNew("colour of the screw", this.said.screw, term)) this.said.screw = word;
		} else if (plainSides.includes(word)) this.setSide(word, term);
		else if (word === "to" || word === "from") return;
		else if (word === "on") this.readNamed(term, "side");
		else if (word === "also") this.readNamed(term, "also");
		else if (word === "takes") this.readCount(term);
		else this.refuse(term, word);
	}

	private readNamed(term: NameTerm, what: "side" | "also"): void {
		const name = this.take();
		if (name?.kind !== "name" && name?.kind !== "number" && name?.kind !== "sign")
			this.findings.push(
				planFinding("attribute-unknown", {
					title: `\`${term.text}\` needs a name behind it`,
					span: name?.span ?? term.span,
					label: "which?",
				}),
			);
		else if (what === "side") this.setSide(name.text, name);
		else this.said.also.push(name.text);
	}

	private readCount(term: NameTerm): void {
		const next = this.take();
		if (next?.kind !== "number" || !Number.isInteger(next.value))
			this.findings.push(
				planFinding("quantity-missing", {
					title: "`takes` needs a whole number",
					span: next?.span ?? term.span,
					label: "how many wires?",
					help: "Write how many wires it takes: `takes 2`.",
				}),
			);
		else if (next.value < 1 || next.value > mostWires)
			this.findings.push(
				planFinding("quantity-out-of-range", {
					title: `takes ${next.text} is out of range`,
					span: next.span,
					label: "out of range",
					help: `From 1 to ${mostWires} fit.`,
				}),
			);
		else if (this.isNew("number of wires", this.said.capacity, term)) this.said.capacity = next.value;
	}

	private setSide(side: string, term: Term): void {
		if (this.isNew("side", this.said.side, term)) this.said.side = side;
	}

	private isNew(what: string, known: string | number | undefined, term: Term): boolean {
		if (known !== undefined) this.twice(what, term);
		return known === undefined;
	}

	private twice(what: string, term: Term): void {
		this.findings.push(
			planFinding("attribute-twice", { title: `The ${what} is said twice`, span: term.span, label: "said again" }),
		);
	}

	private refuse(term: Term, word: string): void {
		const known = [...clampWords, ...screwColours, ...plainSides, "on", "also", "takes"];
		this.findings.push(
			planFinding("attribute-unknown", {
				title: `\`${word}\` says nothing about a terminal`,
				span: term.span,
				label: "not understood",
				help: `${didYouMean(word, known)} Behind what it is for a terminal takes: ${known.join(", ")} and sizes such as \`14 AWG to 10 AWG\`.`.trim(),
			}),
		);
	}
}

function gaugeOf(term: Term): Gauge | undefined {
	if (term.kind === "gauge") return term.gauge;
	return term.kind === "quantity" && term.quantity.dimension === "area"
		? squareMillimetres(term.quantity.value)
		: undefined;
}
