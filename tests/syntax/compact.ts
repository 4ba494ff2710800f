// A tree as a few short lines, for tests: one line a node, its parts by name, figures in angle brackets.
import { formatGauge } from "../../src/base/gauge.ts";
import { formatQuantity } from "../../src/base/quantity.ts";
import type {
	Landing,
	Link,
	Member,
	NameTerm,
	NewName,
	Setting,
	Statement,
	Term,
	Tree,
} from "../../src/syntax/tree.ts";

/** The whole tree; two blanks a level. Places in the text are left out. */
export function compact(tree: Tree): string {
	return tree.statements.flatMap(statement).join("\n");
}

function statement(node: Statement): string[] {
	switch (node.kind) {
		case "plan":
			return [line("plan", text(node.title), terms(node.terms)), ...below(node.settings, setting)];
		case "place":
			return [line("place", node.name.text, text(node.label), terms(node.terms))];
		case "thing": {
			const supply = node.supply && [names("from", node.supply.from), cable("by", node.supply.cable)];
			const length = node.supply?.length && `length ${term(node.supply.length)}`;
			const head = line("thing", `${newName(node.name)}: ${name(node.type)}`, text(node.label), terms(node.terms));
			return [line(head, ...(supply ?? []), length), ...below(node.members, member)];
		}
		case "run": {
			const head = line(node.sort, name(node.name), text(node.label), names("from", node.from), terms(node.terms));
			return [line(head, cable("by", node.cable)), ...below(node.links, link)];
		}
		case "at":
			return [line("at", name(node.box)), ...below(node.landings, landing)];
		case "mode": {
			const positions = node.positions.map((entry) => `${name(entry.thing)} at ${name(entry.position)}`);
			const lists = [names("live", node.sources), names("without", node.without), names("with", node.with)];
			return [line("mode", name(node.name), ...lists, ...positions)];
		}
		case "definition":
			return [line(node.sort, name(node.name), text(node.label), terms(node.terms)), ...below(node.lines, setting)];
		case "use":
			return [line("use", text(node.path))];
		case "accept":
			return [line("accept", name(node.rule), node.at && `at ${name(node.at)}`, text(node.because))];
		case "reading":
			return [line("reading", name(node.name), terms(node.terms))];
		case "broken":
			return [line("broken", node.text)];
	}
}

function setting(node: Setting): string[] {
	return [line("setting", name(node.key), terms(node.terms))];
}

function member(node: Member): string[] {
	const named = node.name ? `${newName(node.name)}: ${name(node.type)}` : name(node.type);
	return [
		line("member", node.role && name(node.role), named, text(node.label), terms(node.terms)),
		...below(node.members, member),
	];
}

function link(node: Link): string[] {
	if (node.kind === "branch")
		return [line("branch", names("from", node.from), cable("by", node.cable)), ...below(node.links, link)];
	const through = node.through.map((entry) =>
		line("through", name(entry.place), entry.length && `length ${term(entry.length)}`),
	);
	const marked = node.markings.map((entry) =>
		line(name(entry.core), "marked", name(entry.colour), `at ${entry.at ? name(entry.at) : "both ends"}`),
	);
	const far = node.length && `${node.manner === "within" ? "within" : "length"} ${term(node.length)}`;
	const head = line("hop", far, node.tag && `tag ${newName(node.tag)}`, cable("by", node.cable), ...through, ...marked);
	const arrival = { to: "to", via: "via", bolted: "bolted to", within: "to" }[node.manner];
	const arrived = node.type ? `${newName(node.name)}: ${name(node.type)}` : newName(node.name);
	return [
		line(head, terms(node.terms), arrival, arrived, text(node.label), terms(node.attributes)),
		...below(node.members, member),
	];
}

function landing(node: Landing): string[] {
	switch (node.kind) {
		case "land":
			return [
				line(
					"land",
					names("", node.cores),
					node.termination && `with ${name(node.termination)}`,
					`on ${name(node.on)}`,
				),
			];
		case "join": {
			const made = new Map(node.terminations.map(({ of, termination }) => [of, `with ${name(termination)}`]));
			const ports = node.members.map((port) => port.map((entry) => line(name(entry), made.get(entry))).join(", "));
			return [line("join", ports.join(" | "), cable("by", node.connector))];
		}
		case "link":
			return [line("link", names("", node.between), cable("by", node.cable))];
		case "free":
			return [line("free", name(node.core), node.state)];
	}
}

function newName(node: NewName): string {
	return node.last ? `${name(node.first)}..${name(node.last)}` : name(node.first);
}

/** A name with its steps told apart: `g1 > load > hot`, `bunks-1 [end at LC] > black [2nd]`. */
function name(node: NameTerm): string {
	const end = node.end === undefined ? "" : ` [end at ${node.end}]`;
	const nth = node.nth === undefined ? "" : ` [number ${node.nth}]`;
	return `${[`${node.head}${end}`, ...node.steps].join(" > ")}${nth}`;
}

function names(word: string, list: readonly NameTerm[]): string {
	return list.length === 0 ? "" : line(word, list.map(name).join(", "));
}

function cable(word: string, list: readonly Term[]): string {
	return list.length === 0 ? "" : `${word} ${list.map(term).join(" ")}`;
}

function terms(list: readonly Term[]): string {
	return list.length === 0 ? "" : `[${list.map(term).join(" ")}]`;
}

function text(node: { readonly text: string } | undefined): string {
	return node === undefined ? "" : `"${node.text}"`;
}

function term(node: Term): string {
	switch (node.kind) {
		case "name":
			return name(node);
		case "text":
			return `"${node.text}"`;
		case "quantity":
			return `<${formatQuantity(node.quantity)}>`;
		case "number":
			return `<${node.value}>`;
		case "gauge":
			return `<${formatGauge(node.gauge)}>`;
		case "pair":
			return `<${formatQuantity(node.first.quantity)} / ${formatQuantity(node.second.quantity)}>`;
		case "make-up":
			return `<${node.text}>`;
		case "unknown":
			return node.unit === undefined ? "<?>" : `<? ${node.unit}>`;
		case "sign":
			return `<${node.text}>`;
	}
}

function below<Node>(nodes: readonly Node[], show: (node: Node) => string[]): string[] {
	return nodes.flatMap(show).map((entry) => `  ${entry}`);
}

function line(...parts: readonly (string | undefined)[]): string {
	return parts.filter((part) => part !== undefined && part !== "").join(" ");
}
