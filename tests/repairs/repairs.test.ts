// Lines that are offered as a repair, written into the plan: the finding is gone, and nothing new is found.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkPlan, repairPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";
import { offer, tryOffers } from "./try-offers.ts";

/** Rules of which a wrong plan comes with the lines that put it right. */
const offered = [
	"back-feed-unfastened",
	"bond-doubled",
	"charging-reversed",
	"circuit-mislabelled",
	"colour-misleading",
	"enclosure-unbonded",
	"end-loose",
	"ground-broken",
	"ground-fault-missing",
	"joint-size-wrong",
	"leg-left-live",
	"line-load-reversed",
	"main-bypassed",
	"neutral-borrowed",
	"neutral-ground-exchanged",
	"neutral-not-isolated",
	"neutral-shared-unsafely",
	"one-pole-opened",
	"polarity-dc-reversed",
	"polarity-reversed",
	"poles-joined",
	"protection-missing",
	"protection-too-large",
	"strands-unterminated",
	"switch-in-neutral",
	"switch-without-effect",
	"systems-mixed",
	"terminal-overfilled",
];

describe("what is offered puts the wrong plans of a rule right", () => {
	const found = new Set<string>();

	test.each(rules.map((rule) => [rule.code, rule] as const))("%s", async (code, { wrong }) => {
		for (const text of wrong) if ((await tryOffers(text)).includes(code)) found.add(code);
		expect(found.has(code)).toBe(offered.includes(code));
	});
});

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const chain = `${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
`;

const folder = join(import.meta.dirname, "../../samples");
/** Samples with the first receptacle on which a hot and a neutral of one cable are landed direct wired the wrong way round. */
const slips = readdirSync(folder)
	.filter((name) => name.endsWith(".ferrule") && !name.includes("faulty"))
	.flatMap((name) => {
		const text = readFileSync(join(folder, name), "utf8");
		const { circuit } = checkPlan(text, "plan").analysis;
		const coreAt = (terminal: string) => {
			const point = circuit.pointByName.get(terminal);
			return circuit.conductors.find(
				({ cable, ends }) => cable !== undefined && ends.some((end) => end.point === point && !end.said),
			);
		};
		const [slip] = circuit.loads.flatMap(({ part, outlet }) => {
			const [hot, neutral] = [coreAt(`${part}.hot`), coreAt(`${part}.neutral`)];
			return outlet && hot !== undefined && hot.cable === neutral?.cable
				? [`at ${part}\n  ${hot.name} on ${part}.neutral\n  ${neutral?.name} on ${part}.hot\n`]
				: [];
		});
		return slip === undefined ? [] : [[name, `${text.trimEnd()}\n${slip}`] as const];
	});

describe("a slip of the hand in a sample is undone by what is offered", () => {
	test("there are samples to try it on", () => {
		expect(slips.length).toBeGreaterThan(5);
	});

	test.each(slips)("%s", async (_, text) => {
		expect(await tryOffers(text)).toContain("polarity-reversed");
	});
});

test("the finding is told with what to write", async () => {
	const text = `${chain}at b2
  bunks-2.black on b2.neutral
  bunks-2.white on b2.hot
`;
	expect([...(await offer(text)).values()]).toEqual([
		[{ line: 7, instead: 2, lines: ["  bunks-2.white on b2.neutral", "  bunks-2.black on b2.hot"] }],
	]);
});

describe("nothing is offered", () => {
	const large = chain.replace("12-2", "14-2");

	test("of what is accepted, and of what follows from something else", async () => {
		expect([...(await offer(large)).keys()]).toHaveLength(1);
		expect([...(await offer(`${large}accept protection-too-large because "Bench"\n`)).keys()]).toEqual([]);
	});

	test("that only the builder can know", async () => {
		const text = `${supply}circuit bunks from LC breaker 20 A by cord 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.black solid on b1.hot
`;
		const { findings } = checkPlan(text, "plan");
		expect(findings.map(({ code }) => code)).toContain("end-contradicted");
		const offers = await offer(text);
		for (const { key, code } of findings) if (code === "end-contradicted") expect(offers.has(key)).toBe(false);
	});

	test("that brings something else about", async () => {
		// With 15 A for the thin cable the heater is too much.
		const text = `${supply}circuit heat from LC breaker 20 A by 14-2
  14 ft to h1: heater 1900 W
`;
		const codes = checkPlan(text, "plan").findings.map(({ code }) => code);
		expect(codes).toContain("protection-too-large");
		expect([...(await offer(text)).keys()]).toEqual([]);
	});

	test("that only takes an end off", async () => {
		const text = `${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to j1: box
circuit bunks from LC breaker 15 A by 14-2
  9 ft to j1
at j1
  join lights-1.black, bunks-1.black
`;
		expect(checkPlan(text, "plan").findings.map(({ code }) => code)).toContain("circuits-joined");
		expect([...(await offer(text)).keys()]).toEqual([]);
	});

	test("where no text may be tried any more", async () => {
		expect([...(await offer(large, 0)).keys()]).toEqual([]);
	});

	test("in a file that the plan uses", async () => {
		const find = () => ({ kind: "text" as const, file: "used", text: large, findings: [] });
		const text = 'use "used.ferrule"\n';
		const result = checkPlan(text, "plan", find);
		expect(result.findings.map(({ code }) => code)).toContain("protection-too-large");
		expect([...(await repairPlan(result, text, find, { left: 100 })).keys()]).toEqual([]);
	});
});

test("lines end as they did, and a figure spelt otherwise is found or left alone", async () => {
	const text = `\ufeff${chain.replace("12-2", "14-2").replaceAll("\n", "\r\n")}`;
	const offers = await offer(text);
	expect([...offers.values()]).toEqual([
		[{ line: 3, instead: 1, lines: ["circuit bunks from LC breaker 15 A by 14-2"] }],
	]);
});
