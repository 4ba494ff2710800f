// Every attribute of every kind: said rightly it is silent; missing, doubled, in a wrong unit, negative, zero or out of
// range it is one finding, under the word that is wrong.
import { describe, expect, test } from "vitest";
import { certain } from "../../src/base/certain.ts";
import { type Dimension, units, unitsOf } from "../../src/base/quantity.ts";
import { kinds } from "../../src/kinds/index.ts";
import type { AttributeSpec, Kind } from "../../src/kinds/kind.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { planCodes } from "../../src/plan/codes.ts";

type QuantitySpec = AttributeSpec & { takes: "quantity" };
type CountSpec = AttributeSpec & { takes: "count" };
type PairSpec = AttributeSpec & { takes: "pair" };

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";

/** Where a thing of a kind is declared: the text before it, and the words up to its attributes. */
function placeFor(kind: Kind): { before: string; words: string } {
	if (kind.stands.includes("top")) return { before: "", words: `${kind.name} x ` };
	if (kind.stands.includes("panel"))
		return kind.name.endsWith("bar")
			? { before: supply, words: `  x: ${kind.name} ` }
			: { before: supply, words: `  slot 1: ${kind.name} ` };
	return { before: `${supply}circuit one from LC breaker 15 A by 14-2\n`, words: `  3 ft to x: ${kind.name} ` };
}

/** Codes of what is wrong with the text itself, not with the wiring. */
const ours = new Set<string>(planCodes.map((entry) => entry.code));

/** What is found wrong with a plan text whose last line declares a thing of the kind with these attributes. */
function findingsOn(kind: Kind, attributes: string): { code: string; at: string }[] {
	const { before, words } = placeFor(kind);
	const last = words + attributes;
	return checkPlan(`${before}${last}\n`, "plan")
		.findings.filter(({ code, level }) => level === "error" && ours.has(code))
		.map(({ code, span }) => ({
			code,
			at:
				span.line === before.split("\n").length ? last.slice(span.column - 1, span.endColumn - 1) : `line ${span.line}`,
		}));
}

/** What the finding on the last line tells to do, where there is one. */
function helpOn(kind: Kind, attributes: string): string {
	const { before, words } = placeFor(kind);
	const { findings } = checkPlan(`${before}${words}${attributes}\n`, "plan");
	return findings.find(({ code, span }) => ours.has(code) && span.line === before.split("\n").length)?.help ?? "";
}

/** A figure in the first unit of a dimension. */
function figure(value: number, dimension: Dimension): string {
	const unit = certain(
		units.find((candidate) => candidate.dimension === dimension),
		dimension,
	);
	return `${decimal(Number((value / unit.factor).toPrecision(6)))} ${unit.symbol}`;
}

/** As people write it, without an exponent. */
function decimal(value: number): string {
	return Math.abs(value) < 1e-6 && value !== 0 ? value.toFixed(9).replace(/0+$/, "") : String(value);
}

function middle({ least = 1, most = 2 * least }: { least?: number; most?: number }): number {
	return Number((least > 0 ? Math.sqrt(least * most) : (least + most) / 2).toPrecision(2));
}

/** Far above the most. */
function beyond({ most = 5e8 }: QuantitySpec): number {
	return most + 2 * Math.abs(most);
}

/** Figures that no such thing can have; below nought only where what it is cannot be. */
function unlikely(spec: QuantitySpec): [string, number][] {
	const { least = 1 } = spec;
	if (least <= 0)
		return [
			["far too low", least - Math.abs(least)],
			["far too large", beyond(spec)],
		];
	return [
		["zero", 0],
		["negative", -least],
		["far too small", least * 0.5],
		["far too large", beyond(spec)],
	];
}

function say(spec: QuantitySpec, value: number): string {
	return `${spec.word === undefined ? "" : `${spec.word} `}${figure(value, spec.dimension)}`;
}

/** What else must be said so that nothing is missing. */
function othersNeeded(kind: Kind, spec: AttributeSpec): string {
	const needed = kind.attributes.filter(
		(other): other is QuantitySpec => other !== spec && other.takes === "quantity" && other.required === true,
	);
	return needed.map((other) => `${say(other, middle(other))} `).join("");
}

/** A dimension that no attribute of the kind takes. */
function foreignDimension(kind: Kind): Dimension {
	const taken = kind.attributes.flatMap((spec) => ("dimension" in spec ? [spec.dimension] : []));
	return certain(
		(["time", "frequency", "torque"] as const).find((dimension) => !taken.includes(dimension)),
		"a dimension that does not fit",
	);
}

function specsOf<Takes extends AttributeSpec["takes"]>(
	takes: Takes,
): [string, Kind, Extract<AttributeSpec, { takes: Takes }>][] {
	return kinds.flatMap((kind) =>
		kind.attributes
			.filter((spec): spec is Extract<AttributeSpec, { takes: Takes }> => spec.takes === takes)
			.map((spec): [string, Kind, Extract<AttributeSpec, { takes: Takes }>] => [
				`${kind.name}: ${spec.name}`,
				kind,
				spec,
			]),
	);
}

describe.each(specsOf("quantity"))("%s", (_, kind, spec) => {
	const others = othersNeeded(kind, spec);
	const said = (value: number): string => say(spec, value);
	const bare = (value: number): string => figure(value, spec.dimension);

	test("said once is silent", () => {
		expect(findingsOn(kind, others + said(middle(spec)))).toEqual([]);
	});

	// A lone `?` stands for the first bare figure that is not said.
	const firstBare = kind.attributes.find((other) => other.takes === "quantity" && other.word === undefined);
	if (spec.word !== undefined || firstBare === spec)
		test("is read as unknown", () => {
			expect(findingsOn(kind, `${others}${spec.word === undefined ? "" : `${spec.word} `}?`)).toEqual([]);
		});

	test("said twice is one finding, on the second", () => {
		const twice = `${others}${said(middle(spec))} ${said(middle(spec))}`;
		expect(findingsOn(kind, twice)).toEqual([{ code: "attribute-twice", at: bare(middle(spec)) }]);
	});

	test("in a unit that does not fit is one finding", () => {
		const wrong = figure(5, foreignDimension(kind));
		const word = spec.word === undefined ? "" : `${spec.word} `;
		expect(findingsOn(kind, others + word + wrong)).toEqual([{ code: "unit-wrong", at: wrong }]);
	});

	test("without a unit is one finding", () => {
		const word = spec.word === undefined ? "" : `${spec.word} `;
		expect(findingsOn(kind, `${others}${word}7`)).toEqual([{ code: "unit-wrong", at: "7" }]);
	});

	test.each(unlikely(spec))("%s is one finding", (_name, value) => {
		expect(findingsOn(kind, others + said(value))).toEqual([{ code: "quantity-out-of-range", at: bare(value) }]);
	});

	test("what does not fit is answered with what does", () => {
		const limit = spec.most ?? spec.least;
		if (limit !== undefined) expect(helpOn(kind, others + said(beyond(spec)))).toContain(bare(limit));
		expect(helpOn(kind, others + said(7).replace(/ [^ ]+$/, ""))).toMatch(
			spec.word === undefined ? (unitsOf(spec.dimension)[0] ?? "") : spec.summary,
		);
	});

	test.each([
		["the least", spec.least],
		["the most", spec.most],
	])("%s that fits is silent", (_name, value) => {
		if (value !== undefined) expect(findingsOn(kind, others + said(value))).toEqual([]);
	});

	test("missing is one finding where it is needed, and silent else", () => {
		const expected =
			spec.required === true ? [{ code: "quantity-missing", at: kind.stands.includes("top") ? "x" : "1" }] : [];
		expect(findingsOn(kind, others)).toEqual(expected);
	});
});

describe.each(specsOf("flag"))("%s", (_, kind, spec) => {
	const others = othersNeeded(kind, spec);

	test.each([spec.name, `no ${spec.name}`])("%s is silent", (words) => {
		expect(findingsOn(kind, others + words)).toEqual([]);
	});

	test("said twice is one finding, on the second", () => {
		expect(findingsOn(kind, `${others}${spec.name} ${spec.name}`)).toEqual([
			{ code: "attribute-twice", at: spec.name },
		]);
	});

	test("misspelt is one finding", () => {
		const wrong = `${spec.name}x`;
		expect(findingsOn(kind, others + wrong)).toEqual([{ code: "attribute-unknown", at: wrong }]);
	});
});

describe.each(specsOf("choice"))("%s", (_, kind, spec) => {
	const others = othersNeeded(kind, spec);

	test.each([...spec.words])("%s is silent", (word) => {
		expect(findingsOn(kind, others + word)).toEqual([]);
	});

	test("two of them are one finding, on the second", () => {
		const [first = "", second = ""] = spec.words;
		expect(findingsOn(kind, `${others}${first} ${second}`)).toEqual([{ code: "attribute-twice", at: second }]);
	});
});

describe.each(specsOf("phrase"))("%s", (_, kind, spec) => {
	const others = othersNeeded(kind, spec);

	test.each([...spec.phrases])("`%s` is silent", (phrase) => {
		expect(findingsOn(kind, others + phrase)).toEqual([]);
	});

	test("said twice is one finding", () => {
		const [first = ""] = spec.phrases;
		const found = findingsOn(kind, `${others}${first} ${first}`);
		expect(found.map(({ code }) => code)).toEqual(["attribute-twice"]);
	});
});

describe.each<[string, Kind, CountSpec]>(specsOf("count"))("%s", (_, kind, spec) => {
	const others = othersNeeded(kind, spec);

	test.each([spec.least, spec.most])("%d is silent", (value) => {
		expect(findingsOn(kind, `${others}${spec.word} ${value}`)).toEqual([]);
	});

	test.each([
		["one too few", String(spec.least - 1)],
		["one too many", String(spec.most + 1)],
	])("%s is one finding", (_name, value) => {
		expect(findingsOn(kind, `${others}${spec.word} ${value}`)).toEqual([{ code: "quantity-out-of-range", at: value }]);
	});

	test.each(["1.5", "3 A"])("%s is no count", (value) => {
		expect(findingsOn(kind, `${others}${spec.word} ${value}`)).toEqual([{ code: "quantity-missing", at: value }]);
	});

	test("without its number is one finding", () => {
		expect(findingsOn(kind, `${others}${spec.word}`)).toEqual([{ code: "quantity-missing", at: spec.word }]);
	});

	test("said twice is one finding", () => {
		const found = findingsOn(kind, `${others}${spec.word} ${spec.least} ${spec.word} ${spec.least}`);
		expect(found.map(({ code }) => code)).toEqual(["attribute-twice"]);
	});
});

describe.each<[string, Kind, PairSpec]>(specsOf("pair"))("%s", (_, kind, spec) => {
	const others = othersNeeded(kind, spec);
	const pair = (unit: string): string => `12 ${unit} / 120 ${unit}`;

	test("said once is silent", () => {
		expect(findingsOn(kind, `${others}${pair(spec.dimension === "voltage" ? "V" : "A")}`)).toEqual([]);
	});

	test.each([
		["zero", 0],
		["negative", -12],
		["far too small", (spec.least ?? 1) * 0.5],
		["far too large", (spec.most ?? 1e6) * 2],
	])("%s on either side is one finding", (_name, value) => {
		const wrong = figure(value, spec.dimension);
		for (const words of [`${wrong} / ${figure(120, spec.dimension)}`, `${figure(120, spec.dimension)} / ${wrong}`])
			expect(findingsOn(kind, others + words)).toEqual([{ code: "quantity-out-of-range", at: words }]);
	});

	test("of another dimension is one finding", () => {
		expect(findingsOn(kind, `${others}${pair("s")}`)).toEqual([{ code: "attribute-unknown", at: pair("s") }]);
	});

	test("said twice is one finding, on the second", () => {
		expect(findingsOn(kind, `${others}${pair("V")} ${pair("V")}`)).toEqual([
			{ code: "attribute-twice", at: pair("V") },
		]);
	});
});

describe("what any thing can have", () => {
	const light = certain(
		kinds.find((kind) => kind.name === "light"),
		"the light",
	);

	test("a word it does not take offers the nearest", () => {
		const { findings } = checkPlan(
			`${supply}circuit one from LC breaker 15 A by 14-2\n  3 ft to x: light continous\n`,
			"plan",
		);
		expect(findings.find(({ code }) => code === "attribute-unknown")?.help).toContain("Did you mean `continuous`?");
	});

	test.each([
		["said again", 'note "a" note "b"', "attribute-twice", '"b"'],
		["a stage said again", "roughed in roughed in", "attribute-twice", "roughed"],
		["a label said again", '"a" "b"', "attribute-twice", '"b"'],
		["two materials", "box metal plastic", "attribute-twice", "plastic"],
		["two volumes", "box 18 cuin box 20 cuin", "attribute-twice", "20 cuin"],
		["no volume", "box 0 cuin", "quantity-out-of-range", "0 cuin"],
		["a volume below nought", "box -18 cuin", "quantity-out-of-range", "-18 cuin"],
		["a volume far too large", "box 90000 cuin", "quantity-out-of-range", "90000 cuin"],
		["a volume without its unit", "box 18", "unit-wrong", "18"],
		["a volume in amperes", "box 18 A", "unit-wrong", "18 A"],
		["no gangs", "gangs 0", "quantity-out-of-range", "0"],
		["gangs without their number", "gangs", "quantity-missing", "gangs"],
		["gangs said again", "gangs 2 gangs 3", "attribute-twice", "gangs"],
		["clamps nowhere", "clamps", "attribute-unknown", "clamps"],
		["clamps somewhere else", "clamps behind", "attribute-unknown", "behind"],
		["a cover of nothing", "cover", "attribute-unknown", "cover"],
		["a cover said again", "cover blank cover metal", "attribute-twice", "cover"],
		["a partition and none", "partition no partition", "attribute-twice", "partition"],
		["terminals of nothing", "terminals", "attribute-unknown", "terminals"],
		["terminals of gold", "terminals gold", "attribute-unknown", "gold"],
		["terminals far too hot", "terminals 300 C", "quantity-out-of-range", "300 C"],
		["terminals marked twice", "terminals 75 C terminals 60 C", "attribute-twice", "terminals"],
		["two places", "in here in there", "attribute-twice", "there"],
	])("%s is one finding", (_name, words, code, at) => {
		const told = findingsOn(light, words);
		expect(told.filter((one) => one.code !== "place-unknown")).toEqual([{ code, at }]);
	});

	test("a place that is not declared is one finding", () => {
		expect(findingsOn(light, "in nowhere")).toEqual([{ code: "place-unknown", at: "nowhere" }]);
	});

	test("`in` without a place is one finding", () => {
		expect(findingsOn(light, "in")).toEqual([{ code: "place-unknown", at: "in" }]);
	});

	test("`no` of what cannot be absent is one finding", () => {
		expect(findingsOn(light, "no handle")).toEqual([{ code: "attribute-unknown", at: "handle" }]);
	});
});
