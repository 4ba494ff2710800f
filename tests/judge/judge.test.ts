// A second judge, by simulation alone, against the rules: what endangers is found, and what is called a danger can be shown to hurt.
import { describe, expect, test } from "vitest";
import type { NumberedFinding } from "../../src/base/finding.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";
import { generatePlan } from "../generator/generate-plan.ts";
import type { Harm, HarmSort } from "./harms.ts";
import { judge } from "./judge.ts";
import { miswire } from "./miswire.ts";

/** The rules on shock and overload, of which every danger must be shown. What direct current does is not simulated. */
const judged: ReadonlySet<string> = new Set([
	"bond-doubled",
	"circuits-joined",
	"conductors-too-few",
	"enclosure-unbonded",
	"end-loose",
	"ground-broken",
	"inlet-live",
	"leg-left-live",
	"neutral-borrowed",
	"neutral-ground-exchanged",
	"neutral-not-isolated",
	"polarity-reversed",
	"poles-joined",
	"sources-paralleled",
	"protection-missing",
	"protection-too-large",
	"switch-in-neutral",
	"switch-without-effect",
]);

function harmsOf(text: string): readonly Harm[] {
	return judge(checkPlan(text, "plan").analysis.circuit) ?? [];
}

function sortsOf(text: string): HarmSort[] {
	return [...new Set(harmsOf(text).map(({ sort }) => sort))].toSorted();
}

function tell({ sort, at, figure, fault = "", state }: Harm): string {
	return `${sort}: ${at}, ${figure.toFixed(1)}, ${state.mode.name} ${fault}`.trimEnd();
}

/** What is a danger by itself, of the rules that are judged. */
function dangersIn(findings: readonly NumberedFinding[]): NumberedFinding[] {
	const keys = new Set(findings.map(({ key }) => key));
	return findings.filter(
		({ level, code, consequenceOf }) =>
			level === "danger" && judged.has(code) && (consequenceOf === undefined || !keys.has(consequenceOf)),
	);
}

const shore = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";
const outlet = `${shore}circuit one from LC breaker 20 A by 12-2\n  14 ft to b1: receptacle\n`;
const light = `${shore}circuit one from LC breaker 15 A by 14-2\n  9 ft to s1: switch\n  9 ft to l1: light 9 W\n`;

describe("the judge sees each sort of harm, and none in a right plan", () => {
	const plans: readonly (readonly [string, string, readonly HarmSort[]])[] = [
		["an outlet", outlet, []],
		["a switched light", light, []],
		["no ground at an outlet", `${outlet}at b1\n  one-1.bare capped\n`, ["case"]],
		["a neutral that is lost", `${outlet}at b1\n  one-1.white capped\n`, ["shell"]],
		["hot and neutral exchanged", `${outlet}at b1\n  one-1.black on b1.neutral\n  one-1.white on b1.hot\n`, ["shell"]],
		[
			"the switch in the neutral",
			`${light}at s1\n  one-1.white on s1.line\n  one-2.white on s1.load\n  join one-1.black, one-2.black\n`,
			["live when off", "shell"],
		],
		["a live end left bare", `${outlet}at b1\n  one-1.black loose\n`, ["bare end"]],
		["hot and ground joined", `${outlet}at b1\n  link b1.hot, b1.ground by 12 AWG black\n`, ["short"]],
		["neutral and ground joined", `${outlet}at b1\n  link b1.neutral, b1.ground by 12 AWG bare\n`, ["ground current"]],
		["20 A ahead of 14 AWG", outlet.replace("12-2", "14-2"), ["overload"]],
		[
			"two breakers on one wire",
			`${outlet}circuit two from LC breaker 20 A by 12-2\n  14 ft to b1\nat b1\n  one-1.black, two-1.black on b1.hot\n  two-1.white capped\n`,
			["live past its device", "overload"],
		],
	];

	test.each(plans)("%s", (_, text, sorts) => {
		expect(sortsOf(text)).toEqual(sorts);
	});

	test("an inlet that is not plugged in, on a bus that another source feeds", () => {
		const text = `inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 30 A from shore by 10-2, 12 ft
circuit back from LC breaker 15 A by 14-2
  6 ft to inv
`;
		expect(sortsOf(text)).toContain("pins");
	});

	test("60 generated plans, as they are, endanger nobody", () => {
		for (let seed = 0; seed < 60; seed++) {
			const { text } = generatePlan(seed, { devices: 2 + (seed % 7), sides: "ac" });
			expect(harmsOf(text).map(tell), text).toEqual([]);
		}
	});
});

describe("300 miswired circuits", () => {
	const seeds = Array.from({ length: 300 }, (_, seed) => seed);
	const verdicts = seeds.map((seed) => {
		const { text, done } = miswire(seed);
		const { analysis, findings } = checkPlan(text, "plan");
		return { text, done, findings, harms: judge(analysis.circuit) };
	});

	test("none has too many states to go through, and most endanger someone", () => {
		expect(verdicts.filter(({ harms }) => harms === undefined)).toEqual([]);
		expect(verdicts.filter(({ harms = [] }) => harms.length > 0).length).toBeGreaterThan(150);
	});

	test("endangered: a danger or an error is found", () => {
		for (const { text, findings, harms = [] } of verdicts) {
			const levels = findings.map(({ level }) => level);
			if (harms.length > 0)
				expect(levels.includes("danger") || levels.includes("error"), `${harms.map(tell).join("\n")}\n${text}`).toBe(
					true,
				);
		}
	});

	// Of several mistakes one can hide what another would do: the one that is found stays a danger all the same.
	test("a danger after one mistake: there is a state that shows the harm", () => {
		const single = verdicts.filter(({ done, findings }) => done.length === 1 && dangersIn(findings).length > 0);
		expect(single.length).toBeGreaterThan(75);
		for (const { text, findings, harms = [] } of single)
			expect(
				harms.length,
				`${dangersIn(findings)
					.map(({ title }) => title)
					.join("\n")}\n${text}`,
			).toBeGreaterThan(0);
	});
});

describe("the wrong plans of the rules", () => {
	const plans = rules
		.filter(({ code }) => judged.has(code))
		.flatMap(({ code, wrong }) => wrong.map((text, index) => [`${code} ${index + 1}`, text] as const))
		.filter(([, text]) => checkPlan(text, "plan").analysis.circuit.sources.every(({ system }) => system === "ac"));

	test.each(plans)("%s: a state shows the harm, where it is a danger", (_, text) => {
		const dangers = dangersIn(checkPlan(text, "plan").findings);
		if (dangers.length > 0)
			expect(harmsOf(text).map(tell), dangers.map(({ title }) => title).join("\n")).not.toEqual([]);
	});
});
