// A text and all that it uses, read into one tree: each `use` line gives way to the statements of its file, each file once.
import type { Finding } from "../base/finding.ts";
import type { Span } from "../base/span.ts";
import { problem, quoted } from "./problem.ts";
import { readText } from "./read.ts";
import type { PlanStatement, Statement, Tree, UseStatement } from "./tree.ts";
import { resolveUse } from "./use-path.ts";
import { limits } from "./vocabulary.ts";

/** What came of looking for a used file. */
export type FoundSource =
	/** `file` is its name in findings, the same whichever way it is reached. */
	| { readonly kind: "text"; readonly file: string; readonly text: string; readonly findings?: readonly Finding[] }
	| { readonly kind: "missing"; readonly help: string }
	/** `why` ends a sentence that says that the file cannot be used. */
	| { readonly kind: "refused"; readonly why: string; readonly help: string };

/** Finds the file that a `use` line names by `path` in the file `from`. Never throws. */
export type FindSource = (path: string, from: string) => FoundSource;

/** A text with all that it uses. */
export interface ReadSources {
	readonly tree: Tree;
	readonly findings: readonly Finding[];
	/** The used texts by the names of their files. */
	readonly used: ReadonlyMap<string, string>;
}

/** The tree of a text and of what it uses, and what is wrong with any of them. Never throws. */
export function readSources(text: string, file: string, find: FindSource = findNothing): ReadSources {
	const gathering = new Gathering(find);
	const tree = gathering.read(text, file, []);
	return { tree, findings: gathering.findings, used: gathering.used };
}

/** Finds files by a function from their paths to their texts; paths have `/` and stand where `file`, the plan's own name, does. */
export function findByPath(read: (path: string) => string | undefined, file: string): FindSource {
	const root = file.split("/").slice(0, -1);
	return (path, from) => {
		const resolved = resolveUse(path, from.split("/").slice(root.length, -1));
		if ("why" in resolved) return { kind: "refused", ...resolved };
		const name = [...root, ...resolved.steps].join("/");
		const text = read(name);
		return text === undefined ? { kind: "missing", help: "" } : { kind: "text", file: name, text };
	};
}

/** For a plan that comes by itself. */
function findNothing(): FoundSource {
	return {
		kind: "refused",
		why: "this plan comes without other files",
		help: "Put what it says into the plan itself.",
	};
}

class Gathering {
	readonly findings: Finding[] = [];
	readonly used = new Map<string, string>();
	private readonly find: FindSource;
	private characters = 0;

	constructor(find: FindSource) {
		this.find = find;
	}

	/** The tree of a text that was reached over the files `above`, the plan first. */
	read(text: string, file: string, above: readonly string[]): Tree {
		const read = readText(text, file);
		this.findings.push(...read.findings);
		if (above.length > 0) this.reportSettings(read.tree.statements, file);
		if (!read.tree.statements.some(({ kind }) => kind === "use") && above.length === 0) return read.tree;
		const doubtful = new Set(read.tree.doubtful);
		const statements = read.tree.statements.flatMap((statement): readonly Statement[] => {
			if (statement.kind === "plan" && above.length > 0) return [];
			if (statement.kind !== "use") return [statement];
			const tree = this.use(statement, [...above, file]);
			for (const name of tree?.doubtful ?? []) doubtful.add(name);
			return tree?.statements ?? [];
		});
		return { file, statements, doubtful: [...doubtful] };
	}

	/** The tree of what a `use` line names; undefined where there is none, or where it has been taken up already. */
	private use({ path }: UseStatement, chain: readonly string[]): Tree | undefined {
		const found = this.find(path.text, chain.at(-1) ?? "");
		if (found.kind === "missing")
			return this.report("file-missing", path.span, `There is no file ${quoted(path.text)}`, found.help);
		if (found.kind === "refused")
			return this.report("file-refused", path.span, `${quoted(path.text)} cannot be used: ${found.why}`, found.help);
		const start = chain.indexOf(found.file);
		if (start >= 0)
			return this.report(
				"file-in-circle",
				path.span,
				start === chain.length - 1
					? `${found.file} uses itself`
					: `${[...chain.slice(start), found.file].join(" uses ")}: that is a circle`,
			);
		// Reached a second way: what it says holds once.
		if (this.used.has(found.file)) return undefined;
		this.characters += found.text.length;
		if (chain.length > limits.useDepth || this.used.size >= limits.usedFiles || this.characters > limits.usedText)
			return this.report(
				"files-too-many",
				path.span,
				`${quoted(path.text)} is not read: ${
					chain.length > limits.useDepth
						? `files use one another more than ${limits.useDepth} deep`
						: this.used.size >= limits.usedFiles
							? `the plan uses more than ${limits.usedFiles} files`
							: `the files of the plan have more than ${limits.usedText} characters together`
				}`,
			);
		this.used.set(found.file, found.text);
		this.findings.push(...(found.findings ?? []));
		return this.read(found.text, found.file, chain);
	}

	/** What a used file says of itself as a plan holds for it alone; told where it says anything. */
	private reportSettings(statements: readonly Statement[], file: string): void {
		const plan = statements.find((statement): statement is PlanStatement => statement.kind === "plan");
		if (plan === undefined || plan.settings.length === 0) return;
		this.findings.push(
			problem("file-settings-left-out", plan.span, {
				level: "note",
				title: `The settings of ${file} do not hold in the plan that uses it`,
				label: "only for this file by itself",
			}),
		);
	}

	private report(code: Parameters<typeof problem>[0], span: Span, title: string, help = ""): undefined {
		this.findings.push(problem(code, span, { title, ...(help === "" ? {} : { help }) }));
	}
}
