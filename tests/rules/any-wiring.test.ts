// Boxes wired any old way: no rule fails, every finding can be drawn, and the order in which the wiring is written says nothing.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CheckResult, checkPlan } from "../../src/pipeline.ts";

const plan = `place galley sink 3 ft
inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle, box metal
  9 ft to s1: switch
  9 ft by 12-3 to b2: receptacle split
circuit galley from LC ground-fault-breaker 20 A by 12-2
  11 ft to g1: gfci in galley
  5 ft to s2: switch three-way
  5 ft by 12-3 to s3: switch three-way
  5 ft by 12-2 to b3: light 9 W in galley
`;
const { circuit } = checkPlan(plan, "plan").analysis;
const boxes = circuit.enclosures.map(({ name }) => ({
	name,
	cores: circuit.conductors
		.filter(({ sort, ends }) => sort === "core" && ends.some((end) => end.enclosure.name === name))
		.map((conductor) => conductor.name),
	terminals: circuit.points
		.filter((point) => point.kind === "terminal" && point.enclosure.name === name && point.capacity > 0)
		.map((point) => point.name),
}));

/** A box with each of its cores in one place: on a terminal, in one of three joints, loose or capped; and perhaps a jumper. */
const wiring = fc.constantFrom(...boxes).chain(({ name, cores, terminals }) => {
	const spot = fc.oneof(
		fc.constantFrom(...terminals),
		fc.constantFrom("joint 1", "joint 2", "joint 3", "loose", "capped"),
	);
	const spots = fc.array(spot, { minLength: cores.length, maxLength: cores.length });
	const jumper = fc.option(fc.tuple(fc.constantFrom(...terminals), fc.constantFrom(...terminals)));
	return fc.record({ spots, jumper }).map(({ spots: chosen, jumper: ends }) => {
		const on = cores.flatMap((core, index) => {
			const at = chosen[index] ?? "loose";
			return at.startsWith("joint") ? [] : [at === "loose" || at === "capped" ? `${core} ${at}` : `${core} on ${at}`];
		});
		const joints = ["joint 1", "joint 2", "joint 3"]
			.map((joint) => cores.filter((_, index) => chosen[index] === joint))
			.flatMap((members) =>
				members.length > 1 ? [`join ${members.join(", ")}`] : members.map((core) => `${core} capped`),
			);
		const links = ends === null || ends[0] === ends[1] ? [] : [`link ${ends.join(", ")} by 12 AWG black`];
		return { name, lines: [...on, ...joints, ...links] };
	});
});

function write({ name, lines }: { readonly name: string; readonly lines: readonly string[] }): string {
	return `${plan}at ${name}\n${lines.map((line) => `  ${line}\n`).join("")}`;
}

function tell({ findings }: CheckResult): string[] {
	return findings.map(({ code, level, modes }) => `${code} ${level} ${modes.join()}`).toSorted();
}

const runs = { numRuns: 300, seed: 7 };

describe("any wiring of a box", () => {
	test("gives findings that are whole", () => {
		fc.assert(
			fc.property(wiring, (box) => {
				const { findings, analysis } = checkPlan(write(box), "plan");
				const names = new Set([
					...analysis.circuit.pointByName.keys(),
					...analysis.circuit.conductorByName.keys(),
					...analysis.circuit.cableByTag.keys(),
					...analysis.circuit.partByName.keys(),
					...analysis.circuit.enclosureByName.keys(),
				]);
				expect(new Set(findings.map(({ key }) => key)).size).toBe(findings.length);
				for (const { title, help, marks, path, span } of findings) {
					expect(`${title} ${help}`).not.toMatch(/undefined|\bof :|: $/);
					expect([...marks, ...path.map(({ point }) => point)].filter((name) => !names.has(name))).toEqual([]);
					expect(span.endColumn).toBeGreaterThan(span.column);
				}
			}),
			runs,
		);
	});

	test("is judged alike in whatever order it is written", () => {
		fc.assert(
			fc.property(wiring, (box) => {
				const turned = { ...box, lines: box.lines.toReversed() };
				expect(tell(checkPlan(write(turned), "plan"))).toEqual(tell(checkPlan(write(box), "plan")));
			}),
			runs,
		);
	});

	test("is told in the same words each time", () => {
		fc.assert(
			fc.property(wiring, (box) => {
				const text = write(box);
				expect(JSON.stringify(checkPlan(text, "plan").findings)).toBe(JSON.stringify(checkPlan(text, "plan").findings));
			}),
			{ ...runs, numRuns: 50 },
		);
	});
});
