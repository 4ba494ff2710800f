// Every kind shows itself in a plan that checks clean, under each of its words, and is told apart by its traits.
import { describe, expect, test } from "vitest";
import { findKind, kinds, kindWords } from "../../src/kinds/index.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { checkRight } from "../check-plan.ts";

describe("examples", () => {
	test.each(kinds.map((kind) => [kind.name, kind] as const))("the example of %s checks clean", (_, kind) => {
		checkRight(kind.example);
	});

	test.each(kinds.map((kind) => [kind.name, kind] as const))("the example of %s holds one", (_, kind) => {
		const { circuit } = checkPlan(kind.example, "plan").analysis;
		expect(circuit.parts.map((part) => part.kind)).toContain(kind.name);
	});

	test.each(kinds.flatMap((kind) => (kind.also ?? []).map((word) => [word, kind] as const)))(
		"%s is read as its kind",
		(word, kind) => {
			const plan = kind.example.replaceAll(new RegExp(`\\b${kind.name}\\b(?!-)`, "g"), word);
			expect(plan).not.toBe(kind.example);
			const { circuit } = checkRight(plan).analysis;
			expect(circuit.parts.map((part) => part.kind)).toContain(kind.name);
		},
	);
});

describe("words", () => {
	test("no word stands for two kinds", () => {
		expect(new Set(kindWords).size).toBe(kindWords.length);
	});

	test("a word that is no kind finds none", () => {
		expect(["constructor", "__proto__", "toString", "receptacles", ""].map(findKind)).toEqual(Array(5).fill(undefined));
	});
});

describe("blueprints", () => {
	const roles = ["hot", "hot2", "hot3", "neutral", "ground"];
	const blueprints = kinds.flatMap((kind) =>
		checkPlan(kind.example, "plan").analysis.circuit.plan.things.map(
			(thing) => [thing.kind.name, thing.blueprint] as const,
		),
	);

	test.each(blueprints)("every name inside %s leads to a terminal or knot of its own", (_, blueprint) => {
		const terminals = new Set(["^case", ...blueprint.terminals.map((terminal) => terminal.name)]);
		const named = [
			...(blueprint.links ?? []).flatMap((link) => link.between),
			...(blueprint.loads ?? []).flatMap((load) => load.between),
			...(blueprint.plugs ?? []).map((plug) => plug.mine),
			...(blueprint.leads ?? []).map((lead) => lead.mine),
			...(blueprint.source === undefined ? [] : blueprint.source.hot),
		];
		expect(named.filter((name) => !terminals.has(name))).toEqual([]);
		expect(blueprint.sides.map((side) => side.name)).toContain(blueprint.onward);
		// A side may pass a role on to the box's own knot of that name; any other knot has a terminal in it, or gets the device's
		// own hot where a switch loop leaves it.
		const knots = new Set([...roles, "switched", ...blueprint.terminals.map((terminal) => terminal.knot)]);
		const own = blueprint.sides.flatMap((side) => Object.values(side.knots)).filter((knot) => !knot.startsWith("^"));
		expect(own.filter((knot) => !knots.has(knot))).toEqual([]);
	});

	test.each(blueprints)("no two terminals of %s have the same name", (_, blueprint) => {
		const names = blueprint.terminals.flatMap((terminal) => [terminal.name, ...(terminal.also ?? [])]);
		expect(names.length).toBe(new Set(names).size);
	});
});
