// Reads the EBNF file into rules, and makes up plan texts that follow them.
import { readFileSync } from "node:fs";

/** One symbol of a rule. */
export type Part =
	| { readonly sort: "terminal"; readonly text: string }
	| { readonly sort: "rule"; readonly name: string }
	| { readonly sort: "described"; readonly text: string }
	| { readonly sort: "choice"; readonly parts: readonly Part[] }
	| { readonly sort: "row"; readonly parts: readonly Part[] }
	| { readonly sort: "optional" | "repeated"; readonly part: Part }
	/** Whatever `part` is, but not this text. */
	| { readonly sort: "except"; readonly part: Part; readonly text: string };

/** The rules of the file by name, in its order. */
export function readEbnf(): Map<string, Part> {
	const text = readFileSync(new URL("../../grammar/ferrule.ebnf", import.meta.url), "utf8").replace(
		/\(\*.*?\*\)/gs,
		"",
	);
	const words = text.match(/"[^"]+"|'[^']+'|\? [^?]+ \?|[a-z]+(?: [a-z]+)*|[=|,;{}[\]()-]/g) ?? [];
	let at = 0;
	const take = (wanted?: string): string => {
		const word = words[at++] ?? "the end";
		if (wanted !== undefined && word !== wanted) throw new Error(`${wanted} is missing before ${word}`);
		return word;
	};
	const choice = (): Part => {
		const parts = [row()];
		while (words[at] === "|") {
			take();
			parts.push(row());
		}
		return parts.length === 1 ? (parts[0] ?? { sort: "row", parts: [] }) : { sort: "choice", parts };
	};
	const row = (): Part => {
		const parts = [symbol()];
		while (words[at] === ",") {
			take();
			parts.push(symbol());
		}
		return parts.length === 1 ? (parts[0] ?? { sort: "row", parts: [] }) : { sort: "row", parts };
	};
	const within = (end: string): Part => {
		const part = choice();
		take(end);
		return part;
	};
	const symbol = (): Part => {
		const word = take();
		if (word === "[") return { sort: "optional", part: within("]") };
		if (word === "{") return { sort: "repeated", part: within("}") };
		if (word === "(") return within(")");
		if (/^["']/.test(word)) return { sort: "terminal", text: word.slice(1, -1) };
		if (word.startsWith("?")) return { sort: "described", text: word.slice(2, -2) };
		const rule = { sort: "rule", name: word } as const;
		if (words[at] !== "-") return rule;
		take();
		return { sort: "except", part: rule, text: take().slice(1, -1) };
	};
	const rules = new Map<string, Part>();
	while (at < words.length) {
		const name = take();
		take("=");
		rules.set(name, choice());
		take(";");
	}
	return rules;
}

/** Rules whose symbols stand close together. */
const close = new Set(["word", "label", "number", "digits", "make up", "gauge", "aught", "new names"]);
/** What stands for rules that are spelt letter by letter. */
const spelt = new Map([
	["plain word", ["b1", "LC", "b-2", "Küche", "_x", "grey"]],
	["digits", ["2", "12"]],
	["number", ["2", "12", "0.5"]],
	["label", ['""', '"Left, of // door"']],
]);

/** A text that follows a rule. `pick` gives a number below its argument, and so decides everything. */
export function makeUp(rules: ReadonlyMap<string, Part>, name: string, pick: (below: number) => number): string {
	let depth = 0;
	const make = (part: Part, glue: string): string => {
		switch (part.sort) {
			case "terminal":
				return part.text;
			case "described":
				return part.text.startsWith("the start of a line") ? `\n${"  ".repeat(depth)}` : "";
			case "choice": {
				const chosen = part.parts[pick(part.parts.length)];
				return chosen ? make(chosen, glue) : "";
			}
			case "row": {
				const opens = part.parts.some((inner) => inner.sort === "rule" && inner.name === "below");
				if (opens) depth++;
				const text = part.parts.map((inner) => make(inner, glue)).filter((inner) => inner !== "");
				if (opens) depth--;
				return text.join(glue);
			}
			case "optional":
				return pick(2) === 0 ? "" : make(part.part, glue);
			case "repeated": {
				// What a hop says of its cable is said once, and lines within lines come to an end.
				const isLimited = depth > 2 || (part.part.sort === "rule" && part.part.name === "cable side");
				const count = pick(isLimited ? 2 : 3);
				return Array.from({ length: count }, () => make(part.part, glue)).join(glue);
			}
			case "except": {
				for (;;) {
					const text = make(part.part, glue);
					if (text !== part.text) return text;
				}
			}
			case "rule": {
				const spellings = spelt.get(part.name);
				const rule = rules.get(part.name);
				if (part.name === "new names") return pick(3) === 0 ? "l1..l6" : `b${pick(9) + 1}`;
				if (spellings) return spellings[pick(spellings.length)] ?? "";
				return rule ? make(rule, close.has(part.name) ? "" : " ") : "";
			}
		}
	};
	return make({ sort: "rule", name }, " ");
}
