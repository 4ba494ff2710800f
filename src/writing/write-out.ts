// A plan text with everything said: every slot of a circuit, every tag of a cable, and every landing, joint and end that was inferred.
import type { Circuit } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";
import { readText } from "../syntax/read.ts";
import type { AtStatement, Tree } from "../syntax/tree.ts";
import type { ReadPlan } from "./kept-lines.ts";
import { pinSlots } from "./pin-slots.ts";
import { pinTags } from "./pin-tags.ts";
import { sayLandings } from "./say-landings.ts";
import { joinLines, splitLines, type TextLine } from "./text-lines.ts";
import { tidyText } from "./tidy-text.ts";

/**
 * The text of a plan as built, laid out. What its `at` blocks say stays word for word; what was inferred in their boxes follows
 * it, and each other box gets a block of its own at the end. Read back it gives the same circuit.
 */
export function writeOut(read: ReadPlan, circuit: Circuit): string {
	const { text, tree } = read;
	const tagged = pinTags({ ...read, text: pinSlots(read, circuit.plan) }, circuit.plan);
	const lines = splitLines(tagged);
	const landings = new Map(sayLandings(circuit));
	const inserted = new Map<number, readonly string[]>();
	for (const block of lastBlocks(tree, circuit)) {
		const said = landings.get(block.enclosure) ?? [];
		landings.delete(block.enclosure);
		const last = block.statement.landings.at(-1) ?? block.statement;
		inserted.set(last.span.line, indent(said, startOf(lines, block.statement)));
	}
	const added = [...landings].flatMap(([box, said]) => ["", `at ${box}`, ...indent(said, "  ")]);
	const written = [
		...lines.flatMap((line, index) => [line, ...asLines(inserted.get(index + 1) ?? [], line.ending)]),
		...asLines(added, lines[0]?.ending ?? ""),
	];
	const whole = joinLines(written, text);
	return tidyText({ text: whole, ...readText(whole, tree.file) }).text;
}

/** The last `at` block of each enclosure that has one. */
function lastBlocks(tree: Tree, circuit: Circuit): { readonly enclosure: string; readonly statement: AtStatement }[] {
	const blocks = new Map<string, AtStatement>();
	for (const statement of tree.statements) {
		if (statement.kind !== "at") continue;
		const part = circuit.partByName.get(circuit.plan.thingByName.get(foldName(statement.box.text))?.name ?? "");
		if (part !== undefined) blocks.set(part.enclosure.name, statement);
	}
	return [...blocks].map(([enclosure, statement]) => ({ enclosure, statement }));
}

/** The white space before the landings of a block. */
function startOf(lines: readonly TextLine[], { landings: [first] }: AtStatement): string {
	return first === undefined ? "  " : (lines[first.span.line - 1]?.words.slice(0, first.span.column - 1) ?? "");
}

function indent(lines: readonly string[], start: string): string[] {
	return lines.map((line) => start + line);
}

function asLines(words: readonly string[], ending: string): TextLine[] {
	return words.map((line) => ({ words: line, ending }));
}
