// The fenced blocks of the reference page, with what their first lines say of them.
import { readFileSync } from "node:fs";

/** One fenced block. A `text` block right behind an example is what the example is read as. */
export interface Example {
	/** The line of the page that the block begins on. */
	readonly line: number;
	readonly plan: string;
	/** Findings that the example shows, by code; empty for one without. */
	readonly finds: readonly string[];
	/** Findings that its wiring shows, by code; empty for one without. */
	readonly shows: readonly string[];
	/** Is it a whole plan that checks clean, is it read without a meaning yet, or does it show findings of reading or of wiring? */
	readonly says: "whole" | "later" | "finds" | "shows" | "nothing";
	readonly readAs?: string;
	/** The name of the file that it is, for the examples that use it. */
	readonly file?: string;
}

/** Every example of the page, in order. */
export function examples(): Example[] {
	const page = readFileSync(new URL("../../grammar/reference.md", import.meta.url), "utf8");
	const blocks = [...page.matchAll(/^```(\S+)([^\n]*)\n(.*?)^```$/gms)].map((match) => ({
		language: match[1],
		info: (match[2] ?? "").split(" ").filter((word) => word !== ""),
		text: match[3] ?? "",
		line: page.slice(0, match.index).split("\n").length,
	}));
	return blocks.flatMap(({ language, info, text, line }, index) => {
		if (language !== "ferrule") return [];
		const next = blocks[index + 1];
		const finds = info.find((word) => word.startsWith("finds="))?.slice("finds=".length) ?? "";
		const shows = info.find((word) => word.startsWith("shows="))?.slice("shows=".length) ?? "";
		const readAs = next?.language === "text" ? { readAs: next.text.trimEnd() } : {};
		const said = (["whole", "later"] as const).find((word) => info.includes(word));
		const says = said ?? (finds !== "" ? "finds" : shows !== "" ? "shows" : "nothing");
		const codesOf = (codes: string): string[] => codes.split(",").filter(Boolean);
		const file = info.find((word) => word.startsWith("file="))?.slice("file=".length);
		const named = file === undefined ? {} : { file };
		return [{ line, plan: text, ...named, finds: codesOf(finds), shows: codesOf(shows), says, ...readAs }];
	});
}
