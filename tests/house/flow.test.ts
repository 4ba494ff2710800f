// The doors between the rooms: data flows one way, and every room imports only what stands to its left.
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { describe, expect, test } from "vitest";

const source = join(import.meta.dirname, "../../src");

/** What each room may import from, besides itself. */
const doors: Record<string, readonly string[]> = {
	base: [],
	syntax: ["base"],
	handbook: ["base"],
	symbols: ["base"],
	kinds: ["base", "handbook", "symbols"],
	plan: ["base", "syntax", "handbook", "kinds"],
	circuit: ["base", "syntax", "handbook", "kinds", "plan"],
	analysis: ["base", "handbook", "kinds", "plan", "circuit"],
	figures: ["base", "handbook", "kinds", "plan", "circuit", "analysis"],
	rules: ["base", "handbook", "kinds", "plan", "circuit", "analysis", "figures"],
	drawing: ["base", "handbook", "symbols", "kinds", "plan", "circuit", "analysis"],
	svg: ["base", "handbook", "symbols", "drawing"],
	writing: ["base", "syntax", "kinds", "plan", "circuit"],
	repairs: ["base", "syntax", "handbook", "plan", "circuit", "writing"],
	documents: ["base", "handbook", "kinds", "plan", "circuit", "analysis"],
	mistakes: ["base", "handbook", "kinds", "plan", "circuit", "analysis", "documents"],
};

interface Import {
	readonly file: string;
	readonly room: string;
	readonly from: string;
}

const files = readdirSync(source, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));
const imports: Import[] = files.flatMap((file) => {
	const text = readFileSync(join(source, file), "utf8");
	return [...text.matchAll(/(?:from|import\()\s*"([^"]+)"/g)].map((match) => ({
		file,
		room: file.includes("/") ? (file.split("/")[0] ?? "") : "",
		from: match[1] ?? "",
	}));
});

function roomOf(entry: Import): string {
	const target = relative(source, join(source, entry.file, "..", entry.from));
	return target.includes("/") ? (target.split("/")[0] ?? "") : target;
}

describe("the doors between rooms", () => {
	test("every room imports only what stands to its left", () => {
		const wrong = imports
			.filter((entry) => entry.from.startsWith(".") && doors[entry.room] !== undefined)
			.filter((entry) => roomOf(entry) !== entry.room && !doors[entry.room]?.includes(roomOf(entry)))
			.map((entry) => `${entry.file} -> ${entry.from}`);
		expect(wrong).toEqual([]);
	});

	test("only surfaces touch the machine", () => {
		const wrong = imports
			.filter((entry) => entry.from.startsWith("node:") && entry.room !== "surfaces")
			.map((entry) => `${entry.file} -> ${entry.from}`);
		expect(wrong).toEqual([]);
	});

	test.each([
		["chevrotain", "syntax"],
		["elkjs", "drawing"],
		["@svgdotjs/svg.js", "svg"],
		["svgdom", "svg"],
	])("%s is known to %s alone", (library, room) => {
		const users = imports.filter((entry) => entry.from === library || entry.from.startsWith(`${library}/`));
		expect(users.filter((entry) => entry.room !== room).map((entry) => entry.file)).toEqual([]);
	});

	test("every room is named here", () => {
		const rooms = new Set(imports.map((entry) => entry.room).filter((room) => room !== "" && room !== "surfaces"));
		expect([...rooms].filter((room) => doors[room] === undefined)).toEqual([]);
	});

	test("no file is over 400 lines", () => {
		const long = files.filter((file) => readFileSync(join(source, file), "utf8").split("\n").length > 401);
		expect(long).toEqual([]);
	});
});
