import { describe, expect, test } from "vitest";
import { kinds } from "../../src/kinds/index.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { planCodes } from "../../src/plan/codes.ts";
import { byEye, dead } from "../../src/rules/meter-test.ts";
import type { Rule } from "../../src/rules/rule.ts";
import { makePages } from "../../src/surfaces/reference/pages.ts";
import { syntaxProblems } from "../../src/syntax/codes.ts";
import { makeFolder, run } from "./stand-in.ts";

const rule: Rule = {
	code: "ground-broken",
	level: "danger",
	what: "A ground does not lead back to where its supply is bonded.",
	why: "A fault leaves a case live.",
	help: "Join the ground in every box.",
	basis: "common practice",
	meter: [dead("from the case to the ground bar", "more than 1 ohm"), byEye("look for the green screw")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"], differs: "Stricter on boats." },
	wrong: ['plan "Wrong"\n'],
	right: ['plan "Right"\n', 'plan "Also right"\n'],
	check: () => [],
};
const pages = makePages({
	ruleGroups: [{ name: "ground", rules: [rule] }],
	problems: [...syntaxProblems, ...planCodes],
	kinds,
});
const explain = (...words: readonly string[]) => run(makeFolder(), ["explain", ...words], { pages: () => pages });

test("a rule's page tells all that the rule says of itself", async () => {
	const { output } = await explain("ground-broken");
	expect(output).toBe(`ground-broken (ground rule, danger)

A ground does not lead back to where its supply is bonded.

   if left  A fault leaves a case live.
     to do  Join the ground in every box.
     meter  Dead, with a continuity meter, from the case to the ground bar. The
            fault shows as more than 1 ohm.
            No meter shows it, only the eye and the hand: look for the green
            screw.
    clause  common practice
   applies  in region us: camper, boat, building
            in region iec: camper, boat, building
            Stricter on boats.

Wrong:

    plan "Wrong"

Right 1:

    plan "Right"

Right 2:

    plan "Also right"
`);
});

test("every code and kind has a page, and the list names each once", async () => {
	const { output } = await explain();
	const names = output.split("\n").flatMap((line) => /^ {2}([a-z0-9-]+)(?: \(\w+\))?$/.exec(line)?.[1] ?? []);
	expect(new Set(names).size).toBe(names.length);
	for (const name of ["ground-broken", ...syntaxProblems.map(({ code }) => code), ...kinds.map((kind) => kind.name)]) {
		expect(names).toContain(name);
		const page = await explain(name);
		expect(page.status).toBe(0);
		expect(page.output.startsWith(`${name} (`)).toBe(true);
		for (const line of page.output.split("\n"))
			if (!line.startsWith("    ")) expect(line.length).toBeLessThanOrEqual(80);
	}
});

describe("a kind's page", () => {
	const pageOf = async (name: string) => (await explain(name)).output.replace(/\n {12}/g, " ");

	test("tells its terminals with their other names and screws, also those that a word gives it", async () => {
		const receptacle = await pageOf("receptacle");
		expect(receptacle).toContain(" terminals  hot or brass: hot, brass screw, up to 2 wires of 14 AWG to 10 AWG");
		expect(receptacle).toMatch(/ with {2}split:\n terminals {2}hot\.lower or brass\.lower: hot/);
		expect(await pageOf("panel")).toMatch(/ with {2}legs 2:\n terminals {2}bus\.A or .* bus\.B or lug2: second hot/);
		expect(await pageOf("neutral-bar")).toContain("1 to 14: neutral, silver");
		expect(await pageOf("inlet")).toMatch(/ with {2}120 V \/ 240 V:\n terminals .* hot2: second hot/);
	});

	test("tells terminals that landings take", () => {
		for (const { name, text } of [
			{ name: "line.brass", text: "gfci" },
			{ name: "load.silver", text: "gfci" },
			{ name: "switched", text: "switch" },
		]) {
			expect(pages.find((page) => page.name === text)?.slots.some((slot) => slot.text.includes(name))).toBe(true);
			const plan = `panel LC main 30 A\ncircuit c from LC breaker 15 A by 14-2\n  9 ft to x: ${text}\nat x\n  c-1.black on x.${name}\n`;
			const codes = checkPlan(plan, "p").findings.map(({ code }) => code);
			expect(codes).not.toContain("terminal-unknown");
		}
	});

	test("tells its sides, where it stands, and its figures with units and limits", async () => {
		const text = await pageOf("switch");
		expect(text).toContain(
			"`from NAME.line` or `from NAME.load`; an arriving cable lands on line, a chain goes on from",
		);
		expect(text).toContain("on a hop, `14 ft to NAME: switch`");
		expect(text).toContain("... A (or mA, kA; 1 A to 63 A)");
		expect(text).toContain("single-pole (if not said) or two-pole");
		expect(await pageOf("inverter-charger")).toContain("efficiency ... % (30 % to 100 %)");
		expect(await pageOf("breaker")).toContain("must be said");
	});
});

describe("what is inside a kind", () => {
	const pageOf = async (name: string) => (await explain(name)).output.replace(/\n {12}/g, " ");

	test("where cables land and go on, by what each conductor is for", async () => {
		const text = await pageOf("switch");
		expect(text).toContain("coming to line: hot on line; second hot and neutral past it; ground on ground");
		expect(text).toContain("going on from load: hot on load; neutral past it; ground on ground");
		expect(text).toContain("coming to line, with two hots: hot on traveller.1; second hot on traveller.2");
		expect(await pageOf("galvanic-isolator")).toContain(
			"coming to line: hot, second hot and neutral past it; ground on line",
		);
	});

	test("what is joined inside, in which state and mode", async () => {
		expect(await pageOf("switch")).toContain("common to traveller.2: a contact, closed in state 2 of 2");
		const inverter = await pageOf("inverter-charger");
		expect(inverter).toContain("in.hot to out.hot: joined while its input is live");
		expect(inverter).toContain("out.neutral to out.ground: bonded while it inverts");
	});

	test("what comes with it, and what its slots take", async () => {
		const block = await pageOf("fuse-block");
		expect(block).toContain("positive on bus.+; negative on its negative bar");
		expect(block).toContain("brings  `NAME.negative`, a negative-bar");
		expect(block).toContain("slots  said below it, `slot 1: fuse 10 A`; a circuit goes `from NAME.1`");
		expect(await pageOf("panel")).toMatch(/ with {2}main \.\.\. A:.* brings {2}`NAME\.main`, a breaker/s);
		expect(await pageOf("panel")).toContain("hot and second hot on its main; neutral on its neutral bar");
	});

	test("what of it no check counts", async () => {
		expect(await pageOf("fridge")).toMatch(/surge \.\.\. A .*; kept, and counted by no check/);
	});
});

test("a kind is found under its other words", async () => {
	expect((await explain("outlet")).output).toMatch(/^receptacle \(kind of thing\)/);
});

describe("an unknown code", () => {
	test("offers the nearest", async () => {
		expect((await explain("groundbroken")).messages).toContain("Did you mean `ground-broken`?");
	});

	test("points at the list where nothing is near", async () => {
		expect((await explain("xyzzy-plugh")).messages).toContain("`ferrule explain` lists all codes and kinds.");
	});
});
