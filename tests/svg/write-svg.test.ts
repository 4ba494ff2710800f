// What a written drawing holds and what it never holds, read back by an XML parser of its own.
import { describe, expect, test } from "vitest";
import { conductorLook, hueTone, paintValue } from "../../src/drawing/palette.ts";
import type { Group, Mark, Sheet } from "../../src/drawing/scene.ts";
import { colourNames } from "../../src/handbook/colours.ts";
import { writeSvg } from "../../src/svg/index.ts";
import { openInkPot } from "../../src/svg/ink.ts";
import { hostileStrings } from "./hostile-strings.ts";
import { type ReadElement, readSvg, walk } from "./read-svg.ts";

const elements =
	"svg title desc defs style g path rect circle line polyline polygon text tspan symbol use pattern marker clipPath".split(
		" ",
	);
const attributes =
	"xmlns viewBox width height role aria-labelledby aria-label aria-hidden lang id class d x y fill stroke color stroke-width stroke-dasharray stroke-linecap stroke-linejoin font-family font-size font-weight text-anchor transform href data-line data-column".split(
		" ",
	);

const paints = [
	"ink",
	"soft",
	"faint",
	"paper",
	"enclosure",
	"panel",
	"item",
	"gland",
	"brass",
	"silver",
	"green",
	"dark",
	"engraving",
	"hot-bus",
	"neutral-bar",
	"ground-bar",
	"caution",
	"caution-line",
	"fault",
	"fault-soft",
	"casing",
	"joint",
	"warning",
] as const;

describe("a drawing", () => {
	test("says what it is before anything else, in words", async () => {
		const root = readSvg(await writeSvg(sheet(), "van"));
		expect(root.attributes).toMatchObject({
			role: "graphics-document",
			viewBox: "0 0 800 400",
			width: "200mm",
			height: "100mm",
		});
		const [title, desc] = root.children;
		expect([title?.name, desc?.name]).toEqual(["title", "desc"]);
		expect(root.attributes["aria-labelledby"]).toBe(`${title?.attributes.id} ${desc?.attributes.id}`);
		expect(desc?.text).toBe("All of it");
	});

	test("has opaque paper under everything, in both themes", async () => {
		const root = readSvg(await writeSvg(sheet(), "van"));
		const paper = root.children.find(({ name }) => name === "path");
		expect(paper?.attributes).toEqual({ d: "M0 0H800V400H0Z", fill: "#ffffff" });
		expect(darksOf(root).get("fill #ffffff")).toBe("#14181d");
	});

	test("is light by itself and dark by preference on a screen only", async () => {
		const bar: Mark = {
			kind: "rectangle",
			as: "bar",
			x: 20,
			y: 20,
			width: 20,
			height: 200,
			fill: "neutral-bar",
			stroke: "ink",
		};
		const root = readSvg(await writeSvg(sheet([bar, wire("black", 60), wire("white", 80)]), "van"));
		const style = styleOf(root);
		expect(style).toMatch(/^\.fe-sheet\{[^}]*\}@media screen and \(prefers-color-scheme:dark\)\{.*\}$/);
		expect(style).not.toContain("var(");
		expect(style).toContain(".fe-sheet{color:#");
		const darks = darksOf(root);
		for (const part of walk(root).slice(1))
			for (const property of ["fill", "stroke", "color"]) {
				const value = part.attributes[property];
				if (value === undefined || value === "none" || value === "currentColor") continue;
				expect(value).toMatch(/^#[0-9a-f]{6}$/);
				expect(darks.get(`${property} ${value}`), `${part.name} ${property}`).toMatch(/^#[0-9a-f]{6}$/);
			}
		expect(darks.get(`fill ${paintValue("neutral-bar", "light")}`)).toBe(paintValue("neutral-bar", "dark"));
	});

	test("turns dark inside what is used too, where no rule reaches that begins at the sheet", async () => {
		const symbols: Mark[] = ["receptacle-duplex-face", "splice-lever", "caution"].map((symbol, index) => ({
			kind: "symbol",
			symbol,
			x: 40 + index * 80,
			y: 40,
			scale: 1,
			paint: "ink",
		}));
		const root = readSvg(await writeSvg(sheet(symbols), "van"));
		const reached = new Set(
			[...styleOf(root).matchAll(/\.fe-symbol \[fill=\\(#\w+)\]\{fill:#\w+\}/g)].map(([, light]) => light),
		);
		const definitions = walk(root).filter(({ attributes: { id } }) => id?.includes("_symbol_") === true);
		expect(definitions.map(({ attributes: { class: look } }) => look)).toEqual(symbols.map(() => "fe-symbol"));
		const fills = definitions
			.flatMap(walk)
			.flatMap(({ attributes: { fill } }) => (fill?.startsWith("#") ? [fill] : []));
		expect(new Set(fills).size).toBe(3);
		for (const fill of fills) expect(reached, fill).toContain(fill);
	});

	test("has one dark value for each light one, whatever is on it", () => {
		const inks = openInkPot();
		for (const paint of paints) for (const put of [inks.fill, inks.stroke, inks.colour]) put(paint);
		for (const { name } of colourNames.rows) inks.hue(conductorLook(name).core);
		for (const name of ["white", "yellow", "orange", "grey", "black", "blue", "red"]) {
			inks.jacketEdge(name);
			inks.jacketSurface(name);
		}
		expect(inks.styleSheet().split("fill=").length).toBeGreaterThan(paints.length - 2);
	});

	test("is the same bytes each time", async () => {
		expect(await writeSvg(sheet(), "van")).toBe(await writeSvg(sheet(), "van"));
	});

	test("shares a page with another: ids of two plans and of two sheets differ", async () => {
		const ids = async (plan: string, name: string): Promise<string[]> =>
			walk(readSvg(await writeSvg({ ...sheet(), name }, plan))).flatMap(({ attributes }) => attributes.id ?? []);
		const all = [...(await ids("van", "wiring")), ...(await ids("boat", "wiring")), ...(await ids("van", "one-line"))];
		expect(new Set(all).size).toBe(all.length);
		for (const id of all) expect(id).toMatch(/^[A-Za-z_][A-Za-z0-9_-]*$/);
	});

	test("carries lines and columns of the plan, never its path", async () => {
		const span = { file: "/home/someone/secret/van.ferrule", line: 7, column: 3, endColumn: 9 };
		const svg = await writeSvg(
			{ ...sheet(), groups: [{ name: "box b1", sort: "object", label: "b1", span, marks: [] }] },
			"van",
		);
		expect(svg).toContain('data-line="7" data-column="3"');
		expect(svg).not.toContain("secret");
	});

	test("hides decoration from a reader, and names objects", async () => {
		const groups: Group[] = [
			{ name: "frame", sort: "decoration", marks: [] },
			{ name: "box b1", sort: "object", label: "b1, duplex receptacle", marks: [] },
		];
		const parts = readSvg(await writeSvg({ ...sheet(), groups }, "van")).children.filter(({ name }) => name === "g");
		expect(
			parts.map(({ attributes }) => [attributes["aria-hidden"], attributes.role, attributes["aria-label"]]),
		).toEqual([
			["true", undefined, undefined],
			[undefined, "graphics-object", "b1, duplex receptacle"],
		]);
	});

	test("has numbers of at most two decimals and no exponent", async () => {
		const odd: Mark = {
			kind: "rectangle",
			as: "plate",
			x: 1e-9,
			y: -0.0001,
			width: 100 / 3,
			height: 2e-7,
			stroke: "ink",
			strokeWidth: 1 / 3,
		};
		const svg = await writeSvg(sheet([odd, { ...wire("red", 1 / 3), width: 10 / 3 }]), "van");
		const figures = walk(readSvg(svg)).flatMap(({ attributes }) =>
			["d", "x", "y", "stroke-width", "transform"].flatMap((name) => attributes[name] ?? []),
		);
		expect(figures.join(" ")).toContain("33.33");
		expect(figures.join(" ")).not.toMatch(/\d\.\d{3}|e|-0(?![.\d])/);
	});
});

describe("wires", () => {
	const strokesOf = async (marks: readonly Mark[]): Promise<ReadElement[]> =>
		walk(readSvg(await writeSvg(sheet(marks), "van"))).filter(
			({ attributes }) => attributes["stroke-width"] !== undefined,
		);
	const paper = paintValue("paper", "light");
	const casing = paintValue("casing", "light");
	const core = (colour: string): string => hueTone(conductorLook(colour).core)[0];

	test("are casing and core, with one casing for those that do not cross", async () => {
		const strokes = await strokesOf([wire("black", 60), wire("white", 80)]);
		expect(strokes.map(({ attributes }) => [attributes.stroke, attributes["stroke-width"]])).toEqual([
			[casing, "4.9"],
			[core("black"), "3.4"],
			[core("white"), "3.4"],
		]);
	});

	test("keep a gap in a bar they pass over, and in a sheath", async () => {
		const bar: Mark = { kind: "rectangle", as: "bar", x: 40, y: 20, width: 20, height: 90, fill: "neutral-bar" };
		expect((await strokesOf([bar, wire("black", 60)])).map(({ attributes }) => attributes["stroke-width"])).toEqual([
			"8.4",
			"4.9",
			"3.4",
		]);
		const jacket = { kind: "jacket", width: 16, radius: 16, colour: "white" } as const;
		const level = { ...jacket, of: "c1", points: points(0, 50, 100, 50) };
		const upright = { ...jacket, of: "c2", points: points(50, 0, 50, 100) };
		expect((await strokesOf([level])).map(({ attributes }) => attributes["stroke-width"])).toEqual(["17.8", "16"]);
		expect(
			(await strokesOf([level, upright])).filter(({ attributes }) => attributes["stroke-width"] === "22.8"),
		).toHaveLength(1);
	});

	test("keep a gap where a later one crosses an earlier one", async () => {
		const across: Mark = {
			...wire("red", 0),
			of: "x",
			points: [
				{ x: 50, y: 0 },
				{ x: 50, y: 100 },
			],
		};
		const strokes = (await strokesOf([wire("black", 60), across])).map(({ attributes }) => attributes.stroke);
		expect(strokes.indexOf(core("red"))).toBeGreaterThan(strokes.lastIndexOf(paper));
		expect(strokes.filter((stroke) => stroke === paper)).toHaveLength(1);
		expect(strokes.lastIndexOf(paper)).toBeGreaterThan(strokes.indexOf(core("black")));
	});

	test("show two colours and bare metal by a pattern", async () => {
		const dashes = async (colour: string): Promise<(string | undefined)[]> =>
			(await strokesOf([wire(colour, 60)])).slice(1).map(({ attributes }) => attributes["stroke-dasharray"]);
		expect(await dashes("green-yellow")).toEqual([undefined, "5 5"]);
		expect(await dashes("bare")).toEqual([undefined, "1 5"]);
		expect(await dashes("white-black")).toEqual([undefined, undefined]);
		expect(await dashes("black")).toEqual([undefined]);
	});

	test("on a finding's path are ticked, which shows without colour", async () => {
		const strokes = await strokesOf([{ ...wire("black", 60), finding: 1 }]);
		const ticks = strokes.find(({ attributes }) => attributes.stroke === paintValue("fault", "light"));
		expect(ticks?.attributes["stroke-dasharray"]).toBeDefined();
		expect(Number(ticks?.attributes["stroke-width"])).toBeGreaterThan(3.4 + 5);
	});
});

describe("whatever stands in a text", () => {
	test.each(hostileStrings.map((text) => [JSON.stringify(text.slice(0, 40)), text]))(
		"%s stays text",
		async (_, text) => {
			const groups: Group[] = [
				{
					name: text,
					sort: "object",
					label: text,
					marks: [
						{ kind: "text", text, x: 10, y: 20, size: 11, anchor: "start", paint: "ink" },
						{ kind: "symbol", symbol: "switch", x: 50, y: 50, scale: 1, paint: "ink", label: text },
						{ ...wire(text, 60), of: text },
						{
							kind: "jacket",
							of: text,
							colour: text,
							points: [
								{ x: 0, y: 90 },
								{ x: 100, y: 90 },
							],
							width: 16,
							radius: 16,
						},
					],
				},
			];
			const svg = await writeSvg({ ...sheet(), name: text, title: text, description: text, groups }, text);
			const root = readSvg(svg);
			const clean = await writeSvg(
				{ ...sheet(), groups: [{ ...first(groups), name: "n", label: "l", marks: relabel(first(groups).marks) }] },
				"p",
			);
			expect(walk(root).map(({ name }) => name)).toEqual(walk(readSvg(clean)).map(({ name }) => name));
			for (const part of walk(root)) {
				expect(elements).toContain(part.name);
				for (const [name, value] of Object.entries(part.attributes)) {
					expect(attributes).toContain(name);
					if (name === "href") expect(value).toMatch(/^#[A-Za-z_][A-Za-z0-9_-]*$/);
					if (name !== "aria-label") expect(value).not.toMatch(/url\(|script:|\/\/h/);
				}
			}
			expect(walk(root).find(({ name }) => name === "text")?.text).toBe(asXml(text));
			expect(walk(root).find(({ attributes }) => attributes.role === "graphics-object")?.attributes["aria-label"]).toBe(
				asXml(text).replace(/[\n\t\r]/g, " "),
			);
		},
	);
});

/** What XML can hold of a text: the rest is the sign for an unknown letter. */
function asXml(text: string): string {
	return [...text].map((letter) => (isHeld(letter.codePointAt(0) ?? 0) ? letter : "\ufffd")).join("");
}

function isHeld(code: number): boolean {
	if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
	return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
}

function relabel(marks: readonly Mark[]): Mark[] {
	return marks.map((mark) => {
		if (mark.kind === "text") return { ...mark, text: "t" };
		if (mark.kind === "symbol") return { ...mark, label: "l" };
		if (mark.kind === "wire" || mark.kind === "jacket") return { ...mark, of: "o", colour: "no colour" };
		return mark;
	});
}

function first(groups: readonly Group[]): Group {
	const [group] = groups;
	if (group === undefined) throw new Error("no group");
	return group;
}

function sheet(marks: readonly Mark[] = []): Sheet {
	const groups: Group[] = [{ name: "drawing", sort: "object", label: "drawing", marks }];
	return { name: "wiring", title: "Van", description: "All of it", width: 800, height: 400, groups };
}

function points(...numbers: number[]): { x: number; y: number }[] {
	return numbers.flatMap((x, index) => (index % 2 === 0 ? [{ x, y: numbers[index + 1] ?? 0 }] : []));
}

function wire(colour: string, y: number) {
	const points = [
		{ x: 0, y },
		{ x: 100, y },
	];
	return { kind: "wire", of: colour, points, colour, width: 3.4, radius: 7, run: "run" } as const;
}

/** The dark value of each light one: `fill #ffffff`. */
function darksOf(root: ReadElement): Map<string, string> {
	const rules = styleOf(root).matchAll(/\.fe-sheet \[(\w+)=\\(#\w+)\](?:,[^{]+)?\{(\w+):(#\w+)\}/g);
	return new Map(
		[...rules].map(([, selected, light, property, dark]) => {
			expect(property).toBe(selected);
			return [`${property} ${light}`, dark ?? ""] as const;
		}),
	);
}

function styleOf(root: ReadElement): string {
	return root.children.find(({ name }) => name === "style")?.text ?? "";
}
