// An accepted deviation stays in the list with its reason; one that silences nothing is a finding itself.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";

const faulty = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 14-2
  14 ft to b1: receptacle
circuit lights from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W
`;
const check = (line: string) =>
	checkPlan(`${faulty}${line}\n`, "plan").findings.filter(({ level }) => level !== "note");

describe("a deviation is accepted", () => {
	test.each(["LC", "LC.1", "lc.1", "bunks", "bunks-1", "BUNKS-1"])("at %s", (place) => {
		const found = check(`accept protection-too-large at ${place} because "Changed before power is put on"`);
		expect(found.map(({ code, accepted, level }) => [code, accepted, level])).toEqual([
			["protection-too-large", "Changed before power is put on", "danger"],
		]);
	});

	test.each(rules.map((rule) => [rule.code, rule] as const))("of the rule %s", (code, { wrong }) => {
		const { findings } = checkPlan(`${wrong[0]}accept ${code} because "Looked at"\n`, "plan");
		const own = findings.filter((finding) => finding.code === code);
		expect(own.length).toBeGreaterThan(0);
		expect(own.filter(({ accepted }) => accepted !== "Looked at")).toEqual([]);
		expect(findings.map((finding) => finding.code)).not.toContain("accept-unused");
	});

	test("anywhere, where no place is said", () => {
		expect(check('accept protection-too-large because "Bench"')[0]?.accepted).toBe("Bench");
	});
});

describe("a deviation is not accepted", () => {
	test.each(["lights", "lights-1", "LC.2", "LC.10", "bunk", "bunks-10", "b2"])("at %s", (place) => {
		const found = check(`accept protection-too-large at ${place} because "Bench"`);
		expect(found.map(({ code, accepted }) => [code, accepted])).toEqual([
			["protection-too-large", undefined],
			["accept-unused", undefined],
		]);
	});

	test("for another rule", () => {
		expect(check('accept ground-broken at LC because "Bench"').map(({ code }) => code)).toEqual([
			"protection-too-large",
			"accept-unused",
		]);
	});

	test("for a rule that does not exist; the nearest is offered", () => {
		const found = check('accept protection-to-large at LC because "Bench"');
		expect(found.map(({ code }) => code)).toContain("rule-unknown");
		expect(found.find(({ code }) => code === "rule-unknown")?.help).toContain("Did you mean `protection-too-large`");
	});

	test("of an error in the text, which is there to be put right", () => {
		const found = check(
			'circuit x from LC breaker 15 A by 14-2\n  9 ft to x1: thing\naccept kind-unknown because "Later"',
		);
		expect(found.find(({ code }) => code === "kind-unknown")?.accepted).toBe(undefined);
		expect(found.find(({ code }) => code === "rule-unknown")?.title).toBe(
			"kind-unknown is no rule on the wiring, and cannot be accepted",
		);
	});

	test("a second time; the line that accepts it is named", () => {
		const found = check(
			'accept protection-too-large at bunks because "One"\naccept protection-too-large at LC.1 because "Two"',
		);
		expect(found.map(({ code, accepted, title }) => [code, accepted ?? title])).toEqual([
			["protection-too-large", "One"],
			["accept-unused", "protection-too-large at LC.1 is accepted by line 7 already"],
		]);
	});

	test("at another place; the place where it is found is named", () => {
		expect(check('accept protection-too-large at b1 because "Bench"')[1]?.help).toContain("It is found at bunks-1");
	});
});
