// Two conductors exchanged at a device of a generated plan: what the check finds, it offers to put right.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { generatePlan } from "../generator/generate-plan.ts";
import { tryOffers } from "./try-offers.ts";

const pairs = [
	["hot", "neutral"],
	["neutral", "ground"],
	["+", "-"],
] as const;

/** A generated plan with a slip of the hand at one of its devices, another one for each seed; none where it has no such device. */
function slipIn(seed: number): string[] {
	// Plans that are indented with tabs would need a block that is, too.
	const text = generatePlan(seed, { devices: 16 }).text.replaceAll("\t", "    ");
	const { circuit } = checkPlan(text, "plan").analysis;
	const coreAt = (name: string) => {
		const point = circuit.pointByName.get(name);
		return circuit.conductors.find(
			({ cable, ends }) =>
				cable !== undefined && ends.some((end) => point !== undefined && end.point === point && !end.said),
		);
	};
	const slips = circuit.parts.flatMap(({ name, enclosure }) =>
		pairs.flatMap(([one, other]) => {
			const [first, second] = [coreAt(`${name}.${one}`), coreAt(`${name}.${other}`)];
			if (first === undefined || second === undefined) return [];
			const wrong = `${text.trimEnd()}\nat ${enclosure.name}\n  ${first.name} on ${name}.${other}\n  ${second.name} on ${name}.${one}\n`;
			const { findings } = checkPlan(wrong, "plan");
			return findings.some(({ level }) => level === "danger") ? [wrong] : [];
		}),
	);
	const slip = slips[seed % Math.max(1, slips.length)];
	return slip === undefined ? [] : [slip];
}

const slips = Array.from({ length: 16 }, (_, index) => index + 1).flatMap((seed) =>
	slipIn(seed).map((text) => [seed, text] as const),
);

describe("a slip in a generated plan", () => {
	test("is found in most of them", () => {
		expect(slips.length).toBeGreaterThan(10);
	});

	test.each(slips)(
		"number %i is put right by what is offered",
		async (_, text) => {
			expect((await tryOffers(text)).length).toBeGreaterThan(0);
		},
		30_000,
	);
});
