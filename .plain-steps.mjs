// Writes loops over arrays, and arrays taken apart, as plain steps by number. Code that runs once, as nearly all of a check does, is not
// optimised by the engine, and then each step of an iterator is a call and an object more: a twentieth of a check went into that.
// Types tell what is an array; what may be anything else stays as it is written.
import { join } from "node:path";
import {
	isArrayBindingPattern,
	isArrayLiteralExpression,
	isArrowFunction,
	isBlock,
	isCallExpression,
	isForOfStatement,
	isFunctionDeclaration,
	isFunctionExpression,
	isMethodDeclaration,
	isObjectBindingPattern,
	isOmittedExpression,
	isPropertyAccessExpression,
	isSpreadElement,
	isVariableDeclaration,
	isVariableDeclarationList,
	NodeFlags,
} from "typescript/unstable/ast";
import { API } from "typescript/unstable/sync";

/** Gives a function from a file of ours to its text with plain steps in place; undefined for a file the project does not know. */
export function plainSteps(root) {
	let project;
	return (file) => {
		if (project === undefined) {
			const settings = join(root, "tsconfig.json");
			project = new API({ cwd: root }).updateSnapshot({ openProjects: [settings] }).getProject(settings);
		}
		const source = project.program.getSourceFile(file);
		return source === undefined ? undefined : new Rewriting(source, arraysAmong(project.checker, source)).text;
	};
}

/** The loops over arrays of a file, and the patterns that take arrays apart. */
function arraysAmong(checker, source) {
	const asked = [];
	const gather = (node) => {
		if (isForOfStatement(node)) asked.push([node, node.expression]);
		if (isEntries(node)) asked.push([node, node.expression.expression]);
		if (isArrayBindingPattern(node)) asked.push([node, node]);
		node.forEachChild(gather);
	};
	gather(source);
	const types = checker.getTypeAtLocation(asked.map(([, typed]) => typed));
	return new Set(asked.flatMap(([node], index) => (isArray(checker, types[index]) ? [node] : [])));
}

const answers = new Map();

function isArray(checker, type) {
	if (type === undefined) return false;
	const known = answers.get(type.id);
	if (known !== undefined) return known;
	const answer = checker.isArrayLikeType(type) || numbered.has(type.getSymbol()?.name);
	answers.set(type.id, answer);
	return answer;
}

const numbered = new Set(["Uint8Array", "Uint16Array", "Uint32Array", "Int32Array", "Float64Array"]);

/** One file as it is written anew. The names it needs begin with a sign that no name of ours begins with. */
class Rewriting {
	constructor(source, arrays) {
		this.source = source;
		this.arrays = arrays;
		this.names = 0;
		this.text = this.copy(source, 0);
	}

	/** A node with what is in it written anew. */
	copy(node, from = node.getStart(this.source)) {
		let text = "";
		let at = from;
		node.forEachChild((child) => {
			const start = child.getStart(this.source);
			text += this.source.text.slice(at, start) + this.write(child);
			at = child.end;
		});
		return text + this.source.text.slice(at, node.end);
	}

	write(node) {
		if (isForOfStatement(node) && node.awaitModifier === undefined && isVariableDeclarationList(node.initializer))
			return this.loop(node);
		if (isVariableDeclaration(node) && node.initializer !== undefined && node.type === undefined) {
			if (isSideBySide(node)) return this.alone(node);
			const { pattern, after } = this.open(node.name);
			return [`${pattern} = ${this.write(node.initializer)}`, ...after].join(", ");
		}
		if (node.body !== undefined && functions.some((isOne) => isOne(node))) return this.takeIn(node);
		return this.copy(node);
	}

	loop(node) {
		const { name } = node.initializer.declarations[0];
		if (this.arrays.has(node.expression) && isArrayBindingPattern(name) && name.elements.every(isPlain))
			return this.numbered(node, name.elements);
		const { pattern, after } = this.open(name);
		const list = this.write(node.expression);
		const keyword = node.initializer.flags & NodeFlags.Const ? "const" : "let";
		if (!this.arrays.has(node))
			return after.length === 0
				? this.copy(node)
				: `for (${keyword} ${pattern} of ${list}) { ${keyword} ${after.join(", ")}; ${this.write(node.statement)} }`;
		const [all, index] = [this.name(), this.name()];
		const taken = [`${pattern} = ${all}[${index}]`, ...after].join(", ");
		return `for (let ${index} = 0, ${all} = ${list}; ${index} < ${all}.length; ${index}++) { ${keyword} ${taken}; ${this.write(node.statement)} }`;
	}

	/** A loop over what an array holds with the numbers of its places. */
	numbered(node, [place, held]) {
		const [all, index] = [this.name(), this.name()];
		const { pattern, after } = held === undefined ? { after: [] } : this.open(held.name);
		const taken = [
			...(place.name === undefined ? [] : [`${this.copy(place.name)} = ${index}`]),
			...(pattern === undefined ? [] : [`${pattern} = ${all}[${index}]`, ...after]),
		];
		const list = this.write(node.expression.expression.expression);
		const keyword = node.initializer.flags & NodeFlags.Const ? "const" : "let";
		return `for (let ${index} = 0, ${all} = ${list}; ${index} < ${all}.length; ${index}++) { ${keyword} ${taken.join(", ")}; ${this.write(node.statement)} }`;
	}

	/** Names that each get a value of their own, as in `[x, y] = [1, 2]`: no array is needed. */
	alone({ name, initializer }) {
		return name.elements
			.flatMap((one, index) => {
				const { pattern, after } = this.open(one.name);
				return [`${pattern} = ${this.write(initializer.elements[index])}`, ...after];
			})
			.join(", ");
	}

	/** A function with a body: what it takes apart of its parameters, it takes apart first of all. */
	takeIn(node) {
		const apart = [];
		let text = "";
		let at = node.getStart(this.source);
		for (const parameter of node.parameters) {
			if (parameter.initializer !== undefined || parameter.dotDotDotToken !== undefined) continue;
			const { pattern, after } = this.open(parameter.name);
			if (after.length === 0) continue;
			apart.push(...after);
			text += this.source.text.slice(at, parameter.name.getStart(this.source)) + pattern;
			at = parameter.name.end;
		}
		if (apart.length === 0) return this.copy(node);
		const first = `let ${apart.join(", ")};`;
		const body = isBlock(node.body) ? this.write(node.body) : `return ${this.write(node.body)};`;
		return `${text}${this.source.text.slice(at, node.body.getStart(this.source))}{ ${first} ${body} }`;
	}

	/** A pattern that takes no array apart, and the declarations that follow it in its stead. */
	open(pattern) {
		if (this.arrays.has(pattern) && pattern.elements.every(isPlain)) {
			const whole = this.name();
			const after = pattern.elements.flatMap((one, index) => {
				if (one.name === undefined) return [];
				const inner = this.open(one.name);
				return [`${inner.pattern} = ${whole}[${index}]`, ...inner.after];
			});
			return { pattern: whole, after };
		}
		if (!isObjectBindingPattern(pattern)) return { pattern: this.copy(pattern), after: [] };
		const after = [];
		const elements = pattern.elements.map((one) => {
			if (!isPlain(one) || one.propertyName === undefined) return this.copy(one);
			const inner = this.open(one.name);
			after.push(...inner.after);
			return `${this.copy(one.propertyName)}: ${inner.pattern}`;
		});
		return { pattern: `{ ${elements.join(", ")} }`, after };
	}

	name() {
		return `$${this.names++}`;
	}
}

const functions = [isArrowFunction, isFunctionDeclaration, isFunctionExpression, isMethodDeclaration];

/** Whether a node asks something for its entries. */
function isEntries(node) {
	return (
		isCallExpression(node) && isPropertyAccessExpression(node.expression) && node.expression.name.text === "entries"
	);
}

function isSideBySide({ name, initializer }) {
	return (
		isArrayBindingPattern(name) &&
		isArrayLiteralExpression(initializer) &&
		name.elements.length === initializer.elements.length &&
		name.elements.every((one) => one.name !== undefined && isPlain(one)) &&
		!initializer.elements.some((one) => isSpreadElement(one) || isOmittedExpression(one))
	);
}

function isPlain({ dotDotDotToken, initializer }) {
	return dotDotDotToken === undefined && initializer === undefined;
}
