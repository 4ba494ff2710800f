// As built: a plan written out has everything said, and is the same circuit.
import { describe, expect, test } from "vitest";
import { buildCircuit } from "../../src/circuit/build-circuit.ts";
import type { Circuit } from "../../src/circuit/circuit.ts";
import { canonicalCircuit } from "../../src/documents/circuit-record.ts";
import { buildPlan } from "../../src/plan/build-plan.ts";
import { readText } from "../../src/syntax/read.ts";
import { sayLandings } from "../../src/writing/say-landings.ts";
import { writeOut } from "../../src/writing/write-out.ts";
import { supply } from "../circuit/wire-plan.ts";
import { chancePlans, finishedPlans, shownPlans } from "./plan-texts.ts";

function wire(text: string) {
	const read = readText(text, "plan");
	const planned = buildPlan(read.tree);
	const built = buildCircuit(planned.plan);
	const findings = [...read.findings, ...planned.findings, ...built.findings].map(({ code }) => code);
	return { read: { text, ...read }, circuit: built.circuit, findings };
}

function written(text: string): string {
	const { read, circuit } = wire(text);
	return writeOut(read, circuit);
}

/** The ends that nobody said; where a device's own lead begins there is nothing to say. */
function inferredEnds(circuit: Circuit): string[] {
	const leads = new Set(
		circuit.plan.things.flatMap((thing) => (thing.blueprint.leads ?? []).map((lead) => `${thing.name}~${lead.mine}`)),
	);
	return circuit.conductors.flatMap(({ name, ends }) =>
		ends.flatMap((end, which) => (end.said || (which === 0 && leads.has(name)) ? [] : [`${name} ${which}`])),
	);
}

/** What laying out and writing down tags put right. */
const healed: ReadonlySet<string> = new Set(["indentation-mixed", "tag-automatic"]);

describe("a plan written out", () => {
	test.each([...finishedPlans, ...shownPlans])("$name is the same circuit, with every landing said", ({ text }) => {
		const before = wire(text);
		const after = wire(written(text));
		expect(canonicalCircuit(after.circuit)).toBe(canonicalCircuit(before.circuit));
		expect(after.findings).toEqual(before.findings.filter((code) => !healed.has(code)));
		expect(inferredEnds(after.circuit)).toEqual([]);
		expect(written(after.read.text)).toBe(after.read.text);
	});

	test.each(finishedPlans)("$name stays the same circuit when any one line of it is said", ({ text }) => {
		const before = wire(text);
		const [whole, inferred] = [canonicalCircuit(before.circuit), new Set(inferredEnds(before.circuit))];
		const remaining = new Set<string>();
		const lines = [...sayLandings(before.circuit)].flatMap(([box, said]) =>
			said.map((line) => `at ${box}\n  ${line}\n`),
		);
		for (const line of lines) {
			const after = wire(text + line);
			expect(canonicalCircuit(after.circuit), line).toBe(whole);
			const left = inferredEnds(after.circuit);
			expect(left.length, line).toBeLessThan(inferred.size);
			for (const end of left) expect(inferred, line).toContain(end);
			for (const end of left) remaining.add(end);
		}
		// Each end was said by some line alone, and by no other.
		expect(remaining.size).toBe(inferred.size);
	});

	test("the same holds for plans by chance, rightly and wrongly wired", () => {
		for (const { name, text } of chancePlans(300)) {
			const before = wire(text);
			const after = wire(written(text));
			expect(canonicalCircuit(after.circuit), name).toBe(canonicalCircuit(before.circuit));
			expect(inferredEnds(after.circuit), name).toEqual([]);
			expect(written(after.read.text), name).toBe(after.read.text);
		}
	});
});

describe("what is said in a box stays word for word, and what is left to the convention follows it", () => {
	const plan = `${supply}circuit one from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  join one-2.black, one-1.black ferrule, b1.hot ring by push-in 4 // mine
at b2
  one-2.green loose
`;

	test("in one `at` block for each box", () => {
		expect(written(plan)).toBe(`${supply}circuit one from LC.1 breaker 20 A by 12-2 stranded
  14 ft as one-1 to b1: receptacle
   9 ft as one-2 to b2: receptacle
at b1
  join one-2.black, one-1.black ferrule, b1.hot ring by push-in 4  // mine
  join one-1.white, one-2.white, b1.neutral fork by lever 3
  join one-1.green, one-2.green, b1.ground fork by lever 3
at b2
  one-2.green loose
  one-2.black fork on b2.hot
  one-2.white fork on b2.neutral

at shore
  LC-1.black on shore.hot
  LC-1.white on shore.neutral
  LC-1.bare on shore.ground

at LC
  LC-1.black on LC.main.line
  LC-1.white on LC.neutral.1
  LC-1.bare on LC.ground.1
  one-1.black ferrule on LC.1.load
  one-1.white ferrule on LC.neutral.2
  one-1.green ferrule on LC.ground.2
`);
	});

	test.each([
		["a second block for the same box", "at b1\n  one-1.white capped\nat b1\n  one-1.green loose\n"],
		["a block of a device in the box", "at r1\n  one-1.black on r1.hot\n"],
		["a block that says nothing", "at b1\n"],
		["tabs", "at b1\n\tone-1.white capped\n"],
		["a landing that cannot be made", "at b1\n  one-9.white capped\n  one-1.black on b1.nowhere\n"],
		["a line that cannot be read", "at b1\n  one-1.white ((\n  one-1.green loose\n"],
		["an end said twice", "at b1\n  one-1.black loose\n  one-1.black capped\n"],
		[
			"jumpers and shared ports",
			"at b1\n  join (one-1.black one-2.black), b1.hot\n  link b1.hot, b1.neutral by 12 AWG red\n",
		],
	])("with %s", (_, block) => {
		const text = `${supply}circuit one from LC breaker 20 A by 12-2 stranded
  14 ft to b1: box
    r1: receptacle
    r2: switch
   9 ft by 12-3 to b2: gfci 20 A, box metal
  from r1
    1 ft to r2
${block}`.replaceAll("b1.", "r1.");
		const [before, after] = [wire(text), wire(written(text))];
		expect(canonicalCircuit(after.circuit)).toBe(canonicalCircuit(before.circuit));
		expect(after.findings).toEqual(before.findings.filter((code) => !healed.has(code)));
		expect(inferredEnds(after.circuit)).toEqual([]);
	});
});

test("a cable that meets a box twice, leads of devices, and spare cores are said as they are", () => {
	const text = `${supply}circuit one from LC ground-fault-breaker 20 A by 12-3
  14 ft to j1: box
    r1: receptacle
    g1: gfci 20 A
  from r1
    1 ft to g1
`;
	const said = written(text);
	expect(said).toContain("  LC.1.tail.white ferrule on LC.neutral.2\n");
	expect(said).toContain("  one-1.red capped\n");
	expect(said).toMatch(/ join one-1\.black, one-2@r1\.black, one-2@g1\.black, /);
	const [before, after] = [wire(text), wire(said)];
	expect(canonicalCircuit(after.circuit)).toBe(canonicalCircuit(before.circuit));
	expect(inferredEnds(after.circuit)).toEqual([]);
});

test("each lead of a device with several goes by the terminal it comes from", () => {
	const text = `plan "Boat-house"
  region iec
  rules building
inlet shore 16 A 230 V
panel DB main 16 A two-pole from shore by 3G6, 5 m
  R1: residual-current-device 25 A
    slot 1: breaker 10 A
circuit lights from DB.1 by 3G1.5
  5 m to l1: light 9 W
`;
	const said = written(text);
	expect(said).toContain("  R1.line.neutral ferrule on DB.neutral.1\n");
	expect(said).toContain("  R1.load.neutral ferrule on R1.neutral.2\n");
	const [before, after] = [wire(text), wire(said)];
	expect(after.findings).toEqual([]);
	expect(canonicalCircuit(after.circuit)).toBe(canonicalCircuit(before.circuit));
});

test("the metal of a roughed-in box, grounded, does not put its device on", () => {
	const text = `${supply}circuit one roughed in from LC breaker 20 A by 12-2
  14 ft to b1: receptacle box 18 cuin metal
`;
	const said = written(text);
	expect(said).toContain("\n  one-1.bare on b1.case\n");
	const [before, after] = [wire(text), wire(said)];
	expect(before.circuit.partByName.get("b1")?.coming).toBe(true);
	expect(canonicalCircuit(after.circuit)).toBe(canonicalCircuit(before.circuit));
});

test("joints come back in their order, where a neutral passes by a switch", () => {
	const text = `${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to s1: switch
   9 ft to l1: light 9 W
   9 ft to l2: light 9 W
`;
	const splices = ({ circuit }: ReturnType<typeof wire>): string[] =>
		circuit.points.filter(({ kind }) => kind === "splice").map(({ name }) => name);
	const before = splices(wire(text));
	expect(before.length).toBeGreaterThan(2);
	expect(splices(wire(written(text)))).toEqual(before);
});
