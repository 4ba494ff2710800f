// Parts that the builder describes: `part NAME` with a line for each terminal, link, load, rating and text, made into kinds.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Quantity } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import { findKind } from "../kinds/index.ts";
import type { Kind } from "../kinds/kind.ts";
import { kindOfPart, type PartTerminal, partSorts } from "../kinds/own-part.ts";
import type { DefinitionStatement, Setting, Term } from "../syntax/tree.ts";
import { calledTwice, planFinding } from "./codes.ts";
import { foldName } from "./names.ts";
import { readPartTerminal } from "./part-terminals.ts";
import { PartWays } from "./part-ways.ts";

/** Own parts as kinds, by folded names; undefined stands for one that is described and could not be understood. */
export type OwnParts = ReadonlyMap<string, Kind | undefined>;

/** Reads every `part` statement; what is wrong goes to `findings`, and what is right of a part is kept. */
export function readOwnParts(statements: readonly DefinitionStatement[], findings: Finding[]): OwnParts {
	const parts = new Map<string, Kind | undefined>();
	const firsts = new Map<string, Span>();
	for (const statement of statements) {
		const { text, span } = statement.name;
		const first = firsts.get(foldName(text));
		if (first !== undefined) findings.push(calledTwice("parts", text, span, first));
		else if (findKind(text) !== undefined)
			findings.push(
				planFinding("name-twice", {
					title: `\`${text}\` is a kind of thing already`,
					span,
					help: `Give the part a name of its own: \`own-${text}\`.`,
				}),
			);
		else {
			firsts.set(foldName(text), span);
			parts.set(foldName(text), new PartReader(statement, findings).read());
		}
	}
	return parts;
}

/** Words that begin a line below a part; any other first word is the name of a terminal. */
const lineWords = ["link", "draws", "outlet", "states", "case", "room", "text"];

/** Figures of a part: amperes and volts up to what a vehicle, boat or cabin has, room in cm3 up to that of a large box. */
const limits = { current: 1000, voltage: 1000, volume: 30_000 };

class PartReader {
	private readonly statement: DefinitionStatement;
	private readonly findings: Finding[];
	private readonly terminals: PartTerminal[] = [];
	private readonly spanByName = new Map<string, Span>();
	private readonly first: FirstLine = {};
	private readonly seen = new Set<string>();
	private text: string | undefined;
	private room: Quantity | undefined;
	private ownCase: { readonly metal: boolean; readonly volume?: Quantity } | undefined;

	constructor(statement: DefinitionStatement, findings: Finding[]) {
		this.statement = statement;
		this.findings = findings;
	}

	read(): Kind | undefined {
		const { name, label, lines } = this.statement;
		this.readFirstLine();
		for (const line of lines) if (!lineWords.includes(line.key.text)) this.readTerminal(line);
		const ways = new PartWays(name.text, this.terminals, this.findings);
		// A link may name its states before they are listed.
		for (const line of lines) if (line.key.text === "states") ways.readStates(line);
		for (const line of lines) this.readLine(line, ways);
		if (this.terminals.length === 0) {
			if (!lines.some(({ key }) => !lineWords.includes(key.text)))
				this.findings.push(
					planFinding("part-without-terminals", { title: `${name.text} has no terminals`, span: name.span }),
				);
			return undefined;
		}
		return kindOfPart({
			name: name.text,
			text: this.text ?? label?.text ?? name.text,
			...this.first,
			terminals: this.terminals,
			links: ways.links,
			loads: ways.loads,
			...(ways.protection === undefined ? {} : { protection: ways.protection }),
			...(this.ownCase === undefined ? {} : { case: this.ownCase }),
			...(this.room === undefined ? {} : { room: this.room }),
		});
	}

	/** What it is, and for how many amperes and volts. */
	private readFirstLine(): void {
		for (const term of this.statement.terms) {
			if (term.kind === "quantity" && term.quantity.dimension === "current") this.setFigure("rating", term);
			else if (term.kind === "quantity" && term.quantity.dimension === "voltage") this.setFigure("volts", term);
			else if (term.kind === "unknown") continue;
			else if (term.kind === "name" && partSorts.includes(term.text)) {
				if (this.first.sort !== undefined) this.twice("What it is", term.span);
				this.first.sort ??= term.text;
			} else if (term.kind === "quantity" || term.kind === "number")
				this.findings.push(
					planFinding("unit-wrong", {
						title: `${term.text} does not fit behind the name of a part`,
						span: term.span,
						help: "There stand the amperes and the volts it is made for; what it draws is a line below: `draws 60 W from line to neutral`.",
					}),
				);
			else this.refuse(term, "a part", [...partSorts, ...lineWords]);
		}
	}

	private setFigure(which: "rating" | "volts", term: Term & { kind: "quantity" }): void {
		const { value, dimension } = term.quantity;
		const most = dimension === "current" ? limits.current : limits.voltage;
		if (value <= 0 || value > most) return this.outOfRange(term);
		if (this.first[which] !== undefined) this.twice(which === "rating" ? "The current" : "The voltage", term.span);
		this.first[which] ??= value;
	}

	private readTerminal(line: Setting): void {
		const terminal = readPartTerminal(line, this.findings);
		if (terminal === undefined) return;
		const names = [terminal.name, ...terminal.also];
		const taken = names.find((name) => this.spanByName.has(name));
		const first = taken === undefined ? undefined : this.spanByName.get(taken);
		if (taken !== undefined && first !== undefined) {
			this.findings.push(
				planFinding("terminal-twice", {
					title: `Two terminals of ${this.statement.name.text} are called ${taken}`,
					span: line.key.span,
					label: "again",
					also: [{ span: first, label: "first here" }],
				}),
			);
			return;
		}
		for (const name of names) this.spanByName.set(name, line.key.span);
		this.terminals.push(terminal);
	}

	private readLine(line: Setting, ways: PartWays): void {
		const word = line.key.text;
		if (word === "link") ways.readLink(line);
		else if (word === "draws") ways.readLoad(line);
		else if (word === "outlet") ways.readOutlet(line);
		else if (word === "case" || word === "room" || word === "text") {
			if (this.seen.has(word)) return this.twice(`\`${word}\``, line.key.span);
			this.seen.add(word);
			if (word === "case") this.readCase(line);
			else if (word === "room") this.room = this.readVolume(line.terms, line);
			else this.readText(line);
		}
	}

	/** `case metal, 40 cuin`. */
	private readCase(line: Setting): void {
		const [word, ...rest] = line.terms;
		const isKnown = word?.kind === "name" && (word.text === "metal" || word.text === "plastic");
		if (!isKnown)
			this.findings.push(
				planFinding("attribute-unknown", {
					title: "`case` does not say of what it is",
					span: word?.span ?? line.key.span,
					help: "Write `case metal` or `case plastic`.",
				}),
			);
		const volume = rest.length === 0 ? undefined : this.readVolume(rest, line);
		this.ownCase = { metal: isKnown && word.text === "metal", ...(volume === undefined ? {} : { volume }) };
	}

	private readVolume([figure, extra]: readonly Term[], line: Setting): Quantity | undefined {
		if (extra !== undefined) this.refuse(extra, `\`${line.key.text}\``, []);
		if (figure?.kind !== "quantity" || figure.quantity.dimension !== "volume") {
			this.findings.push(
				planFinding(figure === undefined ? "quantity-missing" : "unit-wrong", {
					title: `\`${line.key.text}\` needs a volume`,
					span: figure?.span ?? line.key.span,
					help: `Write it in cuin or cm3: \`${line.key.text} 4 cuin\`.`,
				}),
			);
			return undefined;
		}
		const { value } = figure.quantity;
		if (value <= 0 || value > limits.volume) {
			this.outOfRange(figure);
			return undefined;
		}
		return figure.quantity;
	}

	private readText(line: Setting): void {
		const [text, extra] = line.terms;
		if (extra !== undefined) this.refuse(extra, "`text`", []);
		if (text?.kind === "text") this.text = text.text;
		else
			this.findings.push(
				planFinding("attribute-unknown", {
					title: "`text` needs a text in quotes",
					span: text?.span ?? line.key.span,
					help: 'Write what the parts list is to say: `text "Timer, 16 A, two keys"`.',
				}),
			);
	}

	private outOfRange(term: Term & { kind: "quantity" }): void {
		this.findings.push(
			planFinding("quantity-out-of-range", {
				title: `${term.text} is no likely figure of a part`,
				span: term.span,
				label: "out of range",
			}),
		);
	}

	private twice(what: string, span: Span): void {
		this.findings.push(
			planFinding("attribute-twice", {
				title: `${what} is said twice of ${this.statement.name.text}`,
				span,
				label: "said again",
			}),
		);
	}

	private refuse(term: Term, what: string, known: readonly string[]): void {
		const word = "text" in term ? term.text : "?";
		const help =
			known.length === 0
				? "Take it out."
				: `${didYouMean(word, known)} Behind its name a part takes ${partSorts.join(", ")}, its amperes and its volts.`;
		this.findings.push(
			planFinding("attribute-unknown", {
				title: `\`${word}\` says nothing about ${what}`,
				span: term.span,
				label: "not understood",
				help: help.trim(),
			}),
		);
	}
}

interface FirstLine {
	sort?: string;
	rating?: number;
	volts?: number;
}
