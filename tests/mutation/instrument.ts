// Puts every mutant of a source text into one text: each is a choice that asks the switchboard whether it is on.
// TypeScript 7 has no parser to call, so the tree is that of the bundler, which reads types as well.
import { parseAst } from "rolldown/parseAst";

/** One small change to a source, as a slip of the keyboard would make it. */
export interface Mutant {
	readonly id: number;
	readonly file: string;
	readonly line: number;
	readonly operator: string;
	/** The text that is changed, and what it becomes. */
	readonly was: string;
	readonly is: string;
}

/** A source with all its mutants in it. */
export interface Instrumented {
	readonly code: string;
	readonly mutants: readonly Mutant[];
}

/** Mutants of what stands inside functions; numbers begin at `firstId`. Words and types stay as they are. */
export function instrument(source: string, file: string, firstId: number): Instrumented {
	const mutants: Mutant[] = [];
	const textOf = ({ start, end }: Node): string => source.slice(start, end);
	const add = (node: Node, operator: string, is: string): number => {
		const id = firstId + mutants.length;
		const line = source.slice(0, node.start).split("\n").length;
		mutants.push({ id, file, line, operator, was: shorten(textOf(node)), is: shorten(is) });
		return id;
	};

	/** The text of a node with its mutants; outside functions only what is below is looked at. */
	function render(node: Node, isInside: boolean, parent: Node | undefined): string {
		if (isType(node)) return textOf(node);
		const inner = weave(node, isInside || isFunction(node));
		if (!isInside) return inner;
		if (node.type === "ExpressionStatement") return `{ if (!$on(${add(node, "statement removed", "")})) { ${inner} } }`;
		if (isLoop(node)) return inner;
		return changesOf(node, parent).reduce(
			(text, { operator, is }) => `($on(${add(node, operator, is)}) ? (${is}) : ${text})`,
			isExpression(node, parent) ? `(${inner})` : inner,
		);
	}

	function weave(node: Node, isInside: boolean): string {
		let at = node.start;
		let text = "";
		for (const child of childrenOf(node)) {
			if (child.start < at) continue;
			text += source.slice(at, child.start);
			const rendered = render(child, isInside, node);
			text += isLoop(node) && child === node.body ? `{ $tick(); ${rendered} }` : rendered;
			at = child.end;
		}
		return swapMethod(node, text + source.slice(at, node.end), isInside);
	}

	/** `a.some(b)` also as `a.every(b)`: only the name changes, so that a chain with `?.` stays one. */
	function swapMethod(node: Node, text: string, isInside: boolean): string {
		const property = node.property;
		if (!isInside || node.type !== "MemberExpression" || node.computed === true || !isNode(property)) return text;
		const other = methods.get(textOf(property));
		if (other === undefined) return text;
		const name = textOf(property);
		const id = add(property, "method", other);
		const before = text.slice(0, text.length - name.length).replace(/\.\s*$/, "");
		const dot = before.endsWith("?") ? "." : "";
		return `${before}${dot}[$on(${id}) ? "${other}" : "${name}"]`;
	}

	function changesOf(node: Node, parent: Node | undefined): { operator: string; is: string }[] {
		const { left, right, operator } = node;
		if ((node.type === "BinaryExpression" || node.type === "LogicalExpression") && isNode(left) && isNode(right)) {
			const changes = operators.get(String(operator)) ?? [];
			return changes.map(([name, other]) => ({ operator: name, is: `(${textOf(left)}) ${other} (${textOf(right)})` }));
		}
		if (node.type === "ArrayExpression" && childrenOf(node).length > 0) return [{ operator: "list emptied", is: "[]" }];
		const isTest = parent !== undefined && parent.test === node && parent.type !== "ForStatement";
		if (isTest) return [{ operator: "condition negated", is: `!(${textOf(node)})` }];
		const { argument } = node;
		if (node.type === "UnaryExpression" && operator === "!" && isNode(argument))
			return [{ operator: "condition negated", is: textOf(argument) }];
		return [];
	}

	const program: unknown = parseAst(source, { lang: "ts" });
	if (!isNode(program)) throw new Error(`${file} has no tree`);
	return { code: render(program, false, undefined), mutants };
}

/** What each operator becomes: its contrary, and where it is a limit the same with the other side of it. */
const operators: ReadonlyMap<string, readonly (readonly [string, string])[]> = new Map([
	["===", [["comparison flipped", "!=="]]],
	["!==", [["comparison flipped", "==="]]],
	[
		"<",
		[
			["comparison flipped", ">="],
			["boundary moved", "<="],
		],
	],
	[
		"<=",
		[
			["comparison flipped", ">"],
			["boundary moved", "<"],
		],
	],
	[
		">",
		[
			["comparison flipped", "<="],
			["boundary moved", ">="],
		],
	],
	[
		">=",
		[
			["comparison flipped", "<"],
			["boundary moved", ">"],
		],
	],
	["&&", [["and, or", "||"]]],
	["||", [["and, or", "&&"]]],
	["*", [["sum", "/"]]],
	["/", [["sum", "*"]]],
	["-", [["sum", "+"]]],
]);
const methods: ReadonlyMap<string, string> = new Map([
	["some", "every"],
	["every", "some"],
	["min", "max"],
	["max", "min"],
	["filter", "slice"],
]);

interface Node {
	readonly type: string;
	readonly start: number;
	readonly end: number;
	readonly [key: string]: unknown;
}

function isNode(value: unknown): value is Node {
	return typeof value === "object" && value !== null && "type" in value && "start" in value && "end" in value;
}

/** Children in the order of the text. */
function childrenOf(node: Node): Node[] {
	return Object.values(node)
		.flatMap((value): unknown[] => (Array.isArray(value) ? value : [value]))
		.filter(isNode)
		.toSorted((one, other) => one.start - other.start);
}

function isFunction({ type }: Node): boolean {
	return type === "ArrowFunctionExpression" || type === "FunctionExpression" || type === "FunctionDeclaration";
}

function isLoop({ type }: Node): boolean {
	return type === "WhileStatement" || type === "DoWhileStatement" || /^For(?:In|Of)?Statement$/.test(type);
}

/** Types, and what only names something. */
function isType({ type }: Node): boolean {
	const wraps = ["TSAsExpression", "TSSatisfiesExpression", "TSNonNullExpression"];
	return (type.startsWith("TS") && !wraps.includes(type)) || type === "ImportDeclaration" || type === "TemplateElement";
}

/** Whether a node that is changed has to be in brackets. */
function isExpression(node: Node, parent: Node | undefined): boolean {
	const isTest = parent !== undefined && parent.test === node;
	return isTest || ["BinaryExpression", "LogicalExpression", "ArrayExpression", "UnaryExpression"].includes(node.type);
}

function shorten(text: string): string {
	const line = text.replaceAll(/\s+/g, " ");
	return line.length > 80 ? `${line.slice(0, 77)}...` : line;
}
