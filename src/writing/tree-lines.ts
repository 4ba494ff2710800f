// The lines of a text that were understood, from its tree: how deep each belongs, among which others, and its figures.
import type { Span } from "../base/span.ts";
import { spellTerm } from "../syntax/spelling.ts";
import type { Landing, Link, Member, Setting, Statement, Term, Tree } from "../syntax/tree.ts";
import type { SpeltFigure } from "./set-words.ts";

/** A line that was understood. */
export interface TreeLine {
	/** Counted from 1. */
	readonly line: number;
	/** How many lines it stands below. */
	readonly depth: number;
	/** The lines that belong to one line have one number. */
	readonly group: number;
	/** A hop: its length stands under those of the others. */
	readonly isHop: boolean;
	readonly figures: readonly SpeltFigure[];
}

/** Every line of the tree, by its number. */
export function listTreeLines(tree: Tree): ReadonlyMap<number, TreeLine> {
	const lister = new Lister();
	lister.addStatements(tree.statements);
	return lister.lines;
}

class Lister {
	readonly lines = new Map<number, TreeLine>();
	#groups = 0;

	addStatements(statements: readonly Statement[]): void {
		const add = this.#group(0);
		for (const statement of statements) {
			if (statement.kind === "broken") continue;
			add(statement.span, termsOf(statement));
			switch (statement.kind) {
				case "plan":
					this.#addSettings(statement.settings);
					break;
				case "definition":
					this.#addSettings(statement.lines);
					break;
				case "thing":
					this.#addMembers(statement.members, 1);
					break;
				case "run":
					this.#addLinks(statement.links, 1);
					break;
				case "at":
					this.#addLandings(statement.landings);
					break;
			}
		}
	}

	#addSettings(settings: readonly Setting[]): void {
		const add = this.#group(1);
		for (const setting of settings) add(setting.span, setting.terms);
	}

	#addMembers(members: readonly Member[], depth: number): void {
		const add = this.#group(depth);
		for (const member of members) {
			add(member.span, member.terms);
			this.#addMembers(member.members, depth + 1);
		}
	}

	#addLinks(links: readonly Link[], depth: number): void {
		const add = this.#group(depth);
		for (const link of links) {
			if (link.kind === "branch") {
				add(link.span, link.cable);
				this.#addLinks(link.links, depth + 1);
				continue;
			}
			const lengths = [link.length, ...link.through.map((part) => part.length)];
			add(link.span, [...present(lengths), ...link.cable, ...link.terms, ...link.attributes], true);
			this.#addMembers(link.members, depth + 1);
		}
	}

	#addLandings(landings: readonly Landing[]): void {
		const add = this.#group(1);
		for (const landing of landings)
			add(landing.span, landing.kind === "join" ? landing.connector : landing.kind === "link" ? landing.cable : []);
	}

	/** Takes in lines of one group, one by one. */
	#group(depth: number): (span: Span, terms: readonly Term[], isHop?: boolean) => void {
		const group = this.#groups++;
		return ({ line }, terms, isHop = false) => {
			this.lines.set(line, { line, depth, group, isHop, figures: terms.flatMap(spellFigure) });
		};
	}
}

/** The words and figures on the first line of a statement. */
function termsOf(statement: Statement): readonly Term[] {
	switch (statement.kind) {
		case "plan":
		case "place":
		case "definition":
		case "reading":
			return statement.terms;
		case "thing": {
			const { terms, supply } = statement;
			return [...terms, ...(supply?.cable ?? []), ...present([supply?.length])];
		}
		case "run":
			return [...statement.terms, ...statement.cable];
		default:
			return [];
	}
}

/** A figure with its unit; anything else is set as it stands. */
function spellFigure(term: Term): SpeltFigure[] {
	if (term.kind !== "quantity" && term.kind !== "pair" && term.kind !== "gauge" && term.kind !== "unknown") return [];
	return [{ start: term.span.column - 1, end: term.span.endColumn - 1, spelling: spellTerm(term) }];
}

function present<Value>(values: readonly (Value | undefined)[]): Value[] {
	return values.flatMap((value) => (value === undefined ? [] : [value]));
}
