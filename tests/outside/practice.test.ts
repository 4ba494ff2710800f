// Against the outside: what the trade does in a box, checked on the circuit that a plan becomes.
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { reachFrom } from "../../src/analysis/network.ts";
import { notABond } from "../../src/analysis/poles.ts";
import type { Circuit } from "../../src/circuit/circuit.ts";
import { systemOfRole } from "../../src/circuit/systems.ts";
import { checkPlan, drawPlan } from "../../src/pipeline.ts";
import { findingsOf, nameOf } from "./published.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
const circuitOf = (text: string): Circuit => checkPlan(text, "plan").analysis.circuit;
const folder = new URL("../../samples/", import.meta.url);
const samples = readdirSync(folder)
	.filter((name) => name.endsWith(".ferrule") && !name.startsWith("faulty-"))
	.map((name) => [name, readFileSync(new URL(name, folder), "utf8")] as const);

/** Terminals that the hot of the first mode reaches, with the contacts of some parts open. */
function fedWithout(text: string, open: readonly string[]): string[] {
	const { analysis } = checkPlan(text, "plan");
	const [state] = analysis.states;
	if (state === undefined) return [];
	const hots = analysis.circuit.sources.flatMap((source) => source.hot);
	const reach = reachFrom(
		state.network,
		hots,
		(edge) =>
			notABond(edge) &&
			!(edge.by.kind === "link" && edge.by.link.nature === "contact" && open.includes(edge.by.link.part)),
	);
	return reach.points.map((point) => analysis.circuit.points[point]?.name ?? "");
}

describe("switches", () => {
	const lights = `${supply}circuit one from LC breaker 15 A by 14-2
  7 ft to s1: switch
  9 ft to l1: light 9 W
  4 ft to l2: light 9 W
  from s1.line
    5 ft to b1: receptacle
`;

	test(
		nameOf(
			{ source: "contributor notes on wiring", known: "common practice" },
			"a switch first in line governs everything after it",
		),
		() => {
			expect(fedWithout(lights, [])).toEqual(expect.arrayContaining(["l1.hot", "l2.hot", "b1.hot"]));
			const left = fedWithout(lights, ["s1"]);
			expect(left).not.toContain("l1.hot");
			expect(left).not.toContain("l2.hot");
			expect(left).toContain("b1.hot");
		},
	);

	test(nameOf({ source: "24 CFR 3280.815(a)(1)", known: "read" }, "the neutral is the wire without a switch"), () => {
		const { links, points } = circuitOf(lights);
		const switched = links.filter((link) => link.nature === "contact" && link.part === "s1");
		expect(switched.flatMap((link) => link.between.map((point) => points[point]?.role))).toEqual(["hot", "hot"]);
		expect(findingsOf(lights, "switch-in-neutral")).toEqual([]);
	});

	test(nameOf({ source: "24 CFR 3280.815(a)(1)", known: "read" }, "a switch put into the neutral is found"), () => {
		const wrong = `${supply}circuit one from LC breaker 15 A by 14-2
  7 ft to s1: switch
  9 ft to l1: light 9 W
at s1
  join one-1.black, one-2.black
  one-1.white on s1.line
  one-2.white on s1.load
`;
		expect(findingsOf(wrong, "switch-in-neutral").length).toBe(1);
	});
});

describe("ground-fault receptacles", () => {
	const chain = `place porch outdoor
${supply}circuit one from LC breaker 20 A by 12-2
  11 ft to g1: gfci
  from g1.load
    5 ft to b1: receptacle in porch
  from g1.line
    5 ft to b2: receptacle in porch
`;

	test(
		nameOf(
			{ source: "wiring pages on ground-fault receptacles", known: "read" },
			"one protects what hangs on its load side, and nothing on its line side",
		),
		() => {
			const open = fedWithout(chain, ["g1"]);
			expect(open).not.toContain("b1.hot");
			expect(open).toContain("b2.hot");
			const found = findingsOf(chain, "ground-fault-missing");
			expect(found.map((finding) => finding.marks.some((mark) => mark.startsWith("b2")))).toEqual([true]);
			expect(found.map((finding) => finding.marks.some((mark) => mark.startsWith("b1")))).toEqual([false]);
		},
	);

	test(nameOf({ source: "UL 943, class A", known: "read" }, "it opens between 4 and 6 mA"), () => {
		const [device] = circuitOf(chain).groundFaults;
		expect(device?.trip).toBeGreaterThanOrEqual(4);
		expect(device?.trip).toBeLessThanOrEqual(6);
	});

	test(
		nameOf({ source: "NFPA 70 551.41(C)", known: "recalled" }, "a basin within 6 ft asks for one, one beyond does not"),
		() => {
			const near = (distance: string) => `place galley basin ${distance}
${supply}circuit one from LC breaker 20 A by 12-2
  11 ft to b1: receptacle in galley
`;
			expect(findingsOf(near("6 ft"), "ground-fault-missing").length).toBe(1);
			expect(findingsOf(near("7 ft"), "ground-fault-missing")).toEqual([]);
		},
	);
});

describe("lights over a bath", () => {
	const bath = (breaker: string) => `place shower bath
${supply}circuit one from LC ${breaker} by 14-2
  11 ft to l1: light 9 W in shower
`;

	test(nameOf({ source: "NFPA 70 551.53(B)", known: "read" }, "are behind a ground-fault device"), () => {
		expect(findingsOf(bath("breaker 15 A"), "ground-fault-missing").length).toBe(1);
		expect(findingsOf(bath("ground-fault-breaker 15 A"), "ground-fault-missing")).toEqual([]);
	});
});

describe("grounds", () => {
	test(
		nameOf(
			{ source: "NFPA 70 551.55(E)", known: "read" },
			"are joined so that taking a device out does not break the ground of others",
		),
		() => {
			const { analysis } = checkPlan(
				`${supply}circuit one from LC breaker 20 A by 12-2\n  11 ft to b1: receptacle\n  5 ft to b2: receptacle\n`,
				"plan",
			);
			const [state] = analysis.states;
			const named = (name: string): number => analysis.circuit.pointByName.get(name) ?? -1;
			const without = (gone: number) =>
				state === undefined
					? undefined
					: reachFrom(state.network, [named("shore.ground")], (edge) => edge.from !== gone && edge.to !== gone);
			expect(without(named("b1.ground"))?.has(named("b2.ground"))).toBe(true);
			expect(without(named("b1/ground"))?.has(named("b2.ground"))).toBe(false);
		},
	);
});

describe("colours", () => {
	const coloursOf = (text: string, role: string) => [
		...new Set(circuitOf(text).conductors.flatMap((conductor) => (conductor.role === role ? [conductor.colour] : []))),
	];
	const iec = 'plan "x"\n  region iec\ninlet s 16 A\npanel P main 16 A from s by 3G2.5, 3 m\n';

	test.each([
		["hot", ["black"], "common practice", "common practice"],
		["neutral", ["white"], "NFPA 70 200.6", "read"],
		["ground", ["bare"], "NFPA 70 250.119", "read"],
	] as const)("North America: %s", (role, colours, source, known) => {
		expect([nameOf({ source, known }, role), coloursOf(supply, role)]).toEqual([
			nameOf({ source, known }, role),
			colours,
		]);
	});

	test.each([
		["hot", ["brown"], "IEC 60445", "read"],
		["neutral", ["blue"], "IEC 60445", "read"],
		["ground", ["green-yellow"], "IEC 60445", "read"],
	] as const)("IEC: %s", (role, colours, source, known) => {
		expect([nameOf({ source, known }, role), coloursOf(iec, role)]).toEqual([nameOf({ source, known }, role), colours]);
	});

	test(nameOf({ source: "24 CFR 3280.815(c)", known: "read" }, "green is ground only: a hot on it is found"), () => {
		const text = `${supply}circuit one from LC breaker 20 A by single 12 AWG green
  11 ft to p1: pump
at LC
  one-1.green on LC.1.load
at p1
  one-1.green on p1.hot
`;
		expect(findingsOf(text, "colour-misleading").map((finding) => finding.level)).toContain("danger");
	});

	test(nameOf({ source: "IEC 60757", known: "read" }, "letter codes stand at the wires of a drawing"), async () => {
		const [sheet] = await drawPlan(checkPlan(supply, "plan"), "wiring");
		const codes = new Set([...(sheet?.svg ?? "").matchAll(/>([A-Z]{2,4})</g)].map((match) => match[1]));
		expect([...codes]).toEqual(expect.arrayContaining(["BK", "WH"]));
	});
});

describe("screws", () => {
	const finishes = new Map([
		["hot", "brass"],
		["hot2", "brass"],
		["neutral", "silver"],
		["ground", "green"],
	]);

	test.each(samples)(
		nameOf(
			{ source: "wiring pages on North American receptacles", known: "read" },
			"%s: black lands on brass, white on silver, ground on green",
		),
		(_, text) => {
			const circuit = circuitOf(text);
			const landed = circuit.conductors.flatMap((conductor) =>
				conductor.ends.flatMap(({ point }) => {
					const terminal = point === undefined ? undefined : circuit.points[point];
					if (terminal?.kind !== "terminal" || terminal.screw === undefined || terminal.screw === "dark") return [];
					// What is wired to a battery has screws of its maker's choice.
					if (systemOfRole(conductor.role) === "dc" && systemOfRole(terminal.role) === "dc") return [];
					return [[conductor.name, conductor.role, terminal.screw] as const];
				}),
			);
			expect(landed.length > 0).toBe(circuit.cables.some(({ system }) => system === "ac"));
			const wrong = landed.filter(([, role, screw]) => finishes.get(role) !== screw);
			expect(wrong).toEqual([]);
		},
	);
});

describe("what the trade counts in a cable", () => {
	const rolesOf = (words: string) =>
		circuitOf(`${supply}circuit one from LC breaker 15 A by ${words}\n  3 ft to j1: box\n`)
			.conductors.filter((conductor) => conductor.cable === "one-1")
			.map((conductor) => conductor.role);

	test.each([
		["12-2", ["hot", "neutral", "ground"], "house cable: the insulated conductors, a ground on top"],
		["12-3", ["hot", "hot2", "neutral", "ground"], "house cable: the insulated conductors, a ground on top"],
		["cord 10-3", ["hot", "neutral", "ground"], "cord: all of them"],
		["3G2.5", ["hot", "neutral", "ground"], "metric cable: all of them"],
	])(nameOf({ source: "common practice", known: "common practice" }, "%s"), (words, roles) => {
		expect(rolesOf(words)).toEqual(roles);
	});
});
