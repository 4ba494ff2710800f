// The lines of a text that were understood, from its tree: how deep each belongs, among which others, and its figures.
import type { Span } from "../base/span.ts";
import { spellTerm } from "../syntax/spelling.ts";
import type { Landing, Link, Member, Setting, Statement, Term, Tree } from "../syntax/tree.ts";
import type { SpeltFigure } from "./set-words.ts";

/** A line that was understood. */
export interface TreeLine {
	/** Counted from 1. */
	readonly line: number;
	/** The line it stands below; undefined at the left edge. */
	readonly above: TreeLine | undefined;
	/** How many lines it stands below. */
	readonly depth: number;
	/** The lines that belong to one line have one number. */
	readonly group: number;
	/** What of it stands under that of its neighbours: the end of a hop's length, the kind of what a slot holds. */
	readonly sort: "hop" | "slot" | "other";
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
		const add = this.#group(undefined);
		for (const statement of statements) {
			if (statement.kind === "broken") continue;
			const line = add(statement.span, termsOf(statement));
			switch (statement.kind) {
				case "plan":
					this.#addSettings(statement.settings, line);
					break;
				case "definition":
					this.#addSettings(statement.lines, line);
					break;
				case "thing":
					this.#addMembers(statement.members, line);
					break;
				case "run":
					this.#addLinks(statement.links, line);
					break;
				case "at":
					this.#addLandings(statement.landings, line);
					break;
			}
		}
	}

	#addSettings(settings: readonly Setting[], above: TreeLine): void {
		const add = this.#group(above);
		for (const setting of settings) add(setting.span, setting.terms);
	}

	#addMembers(members: readonly Member[], above: TreeLine): void {
		const add = this.#group(above);
		for (const { span, terms, role, members: inner } of members)
			this.#addMembers(inner, add(span, terms, role === undefined ? "other" : "slot"));
	}

	#addLinks(links: readonly Link[], above: TreeLine): void {
		const add = this.#group(above);
		for (const link of links) {
			if (link.kind === "branch") this.#addLinks(link.links, add(link.span, link.cable));
			else {
				const lengths = [link.length, ...link.through.map((part) => part.length)];
				const terms = [...present(lengths), ...link.cable, ...link.terms, ...link.attributes];
				this.#addMembers(link.members, add(link.span, terms, "hop"));
			}
		}
	}

	#addLandings(landings: readonly Landing[], above: TreeLine): void {
		const add = this.#group(above);
		for (const landing of landings)
			add(landing.span, landing.kind === "join" ? landing.connector : landing.kind === "link" ? landing.cable : []);
	}

	/** Takes in lines of one group, one by one. */
	#group(above: TreeLine | undefined): (span: Span, terms: readonly Term[], sort?: TreeLine["sort"]) => TreeLine {
		const group = this.#groups++;
		const depth = above === undefined ? 0 : above.depth + 1;
		return ({ line }, terms, sort = "other") => {
			const known: TreeLine = { line, above, depth, group, sort, figures: terms.flatMap(spellFigure) };
			this.lines.set(line, known);
			return known;
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
