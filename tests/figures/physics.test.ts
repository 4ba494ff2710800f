// What must hold of any place: more length, more current and less copper lose more; units change nothing; a source that is asked for
// more than it can give says so. Nothing absurd ever comes out as a figure.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type State, setUpMode, solveMode } from "../../src/figures/steady-state.ts";
import { generatePlan } from "../generator/generate-plan.ts";
import { analysisOf, loadings, stateOf, steadyOf } from "./plan-states.ts";

const shed = (length: string, cable: string, load: string) =>
	`inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\ncircuit shed from LC breaker 15 A by ${cable}\n  ${length} to h1: ${load}\n`;
const lost = (text: string): number => {
	const [load] = steadyOf(text).loads;
	return load === undefined ? Number.NaN : load.quiet - load.across;
};
const battery = (more: string, length: string, load: string) =>
	`battery house lithium 12.8 V 100 Ah${more}\nfeed one from house.+, house.- by pair 14 AWG\n  ${length} to l1: load ${load}\n`;

describe("a drop", () => {
	test("is what the handbook's row comes to", () => {
		// 12 ft of 10 AWG and 50 ft of 14 AWG solid, out and back: (24 x 1.21 + 100 x 3.07) / 1000 = 0.33604 ohm.
		expect(lost(shed("50 ft", "14-2", "load 10 A"))).toBeCloseTo(3.3604, 9);
	});

	test("grows with length and current, falls with area", () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 15 }), (feet, amperes) => {
				const here = lost(shed(`${feet} ft`, "14-2", `load ${amperes} A`));
				expect(here).toBeGreaterThan(0);
				expect(lost(shed(`${feet + 1} ft`, "14-2", `load ${amperes} A`))).toBeGreaterThan(here);
				expect(lost(shed(`${feet} ft`, "14-2", `load ${amperes + 1} A`))).toBeGreaterThan(here);
				expect(lost(shed(`${feet} ft`, "12-2", `load ${amperes} A`))).toBeLessThan(here);
			}),
			{ numRuns: 40 },
		);
	});

	test("is the same in feet and in metres", () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 500 }), (feet) => {
				const metres = Number((feet * 0.3048).toFixed(4));
				expect(lost(shed(`${metres} m`, "14-2", "heater 1200 W"))).toBeCloseTo(
					lost(shed(`${feet} ft`, "14-2", "heater 1200 W")),
					9,
				);
			}),
			{ numRuns: 40 },
		);
	});

	test("a fixed power draws more at fewer volts, a resistance less, a fixed current neither", () => {
		const drawn = (load: string) => steadyOf(shed("100 ft", "14-2", load)).loads[0]?.drawn ?? Number.NaN;
		expect(drawn("load 1200 W")).toBeGreaterThan(10);
		expect(drawn("heater 1200 W")).toBeLessThan(10);
		expect(drawn("load 10 A")).toBe(10);
	});
});

describe("what is on both sides of a machine", () => {
	test("outlets at 1500 W are amperes in the battery cable", () => {
		const { sources, loads } = steadyOf(`battery house lithium 12.8 V 280 Ah, fault 5 kA
inverter inv 2000 W 12 V / 120 V, efficiency 90 %, bonds neutral when inverting
feed plus from house.+ by single 2/0 red
  6 in to F1: fuse class-T 250 A
  3 ft to inv.+
feed minus from house.- by single 2/0 black
  3 ft to inv.-
panel LC main 20 A from inv by 12-2, 6 ft
circuit one from LC breaker 15 A by 14-2
  10 ft to h1: load 1500 W
`);
		const inverter = sources.find(({ source }) => source.name === "inv");
		const input = loads.find(({ load }) => load.part === "inv");
		expect(inverter?.power).toBeGreaterThan(1500);
		expect(input?.used).toBeCloseTo((inverter?.power ?? 0) / 0.9, 6);
		expect(sources.find(({ source }) => source.name === "house")?.given).toBeCloseTo(input?.drawn ?? Number.NaN, 9);
		expect(input?.drawn).toBeGreaterThan(1500 / 0.9 / 12.8);
	});

	test("batteries share by their leads: the nearer one gives more", () => {
		const { sources } = steadyOf(`battery near lithium 12.8 V 100 Ah, fault 5 kA
battery far lithium 12.8 V 100 Ah, fault 5 kA
feed a from near.+ by single 6 AWG red
  1 ft to plus: bus 250 A
feed b from far.+ by single 6 AWG red
  6 ft to plus
feed c from near.- by single 6 AWG black
  1 ft to minus: bus 250 A
feed d from far.- by single 6 AWG black
  6 ft to minus
feed e from plus, minus by pair 8 AWG
  2 ft to l1: load 60 A
`);
		const [near, far] = sources;
		// Each by its own 12.8 V / 5 kA and its leads, 0.491 ohm per 1000 ft.
		const own = 12.8 / 5000;
		const [one, other] = [own + (0.491 * 2) / 1000, own + (0.491 * 12) / 1000];
		expect(near?.given).toBeCloseTo((60 * other) / (one + other), 6);
		expect((near?.given ?? 0) + (far?.given ?? 0)).toBeCloseTo(60, 9);
	});
});

describe("more than a source can give", () => {
	test("is said with the largest load that settles", () => {
		// 40 ft of 14 AWG stranded out and back: 0.2512 ohm; 12.8 V can push 12.8 x 12.8 / 4 / 0.2512 = 163.06 W through it.
		const state = stateOf(battery("", "40 ft", "400 W"));
		expect(state.kind).toBe("unsettled");
		if (state.kind !== "unsettled") return;
		expect(state.share * 400).toBeCloseTo(163.06, 0);
		expect(state.share * 400).toBeLessThanOrEqual(163.06);
		expect(state.weakest?.load.part).toBe("l1");
		expect(state.weakest?.across).toBeGreaterThan(6.4);
	});

	test("just under it, it settles", () => {
		expect(stateOf(battery("", "40 ft", "163 W")).kind).toBe("steady");
		expect(stateOf(battery("", "40 ft", "164 W")).kind).toBe("unsettled");
	});

	test("a source whose poles are joined gives nothing and says why", () => {
		const { supplies, loads } = steadyOf(
			`${shed("10 ft", "14-2", "load 100 W")}at h1\n  shed-1.black on h1.hot\n  shed-1.white on h1.hot\n`,
		);
		expect(supplies.faults.map(({ source, why }) => `${source.name}: ${why}`)).toEqual([
			"shore: its poles are joined with one another",
		]);
		expect(loads.every(({ drawn }) => drawn === 0)).toBe(true);
	});
});

describe("no figure is absurd, whatever is asked", () => {
	const hold = (state: State): void => {
		const steady = state.kind === "steady" ? state : state.last;
		if (state.kind === "unsettled") expect(state.share >= 0 && state.share < 1).toBe(true);
		if (steady === undefined) return;
		for (const { across, drawn, quiet } of steady.loads) {
			expect([across, drawn, quiet].every(Number.isFinite)).toBe(true);
			if (steady.supplies.chargers.length === 0) expect(quiet - across).toBeGreaterThanOrEqual(-1e-9);
		}
		for (const conductor of steady.circuit.conductors)
			expect(Number.isFinite(steady.amperesIn(conductor.index))).toBe(true);
		expect(steady.lost).toBeGreaterThanOrEqual(0);
	};

	test.each(["0 ft", "0.001 mm", "100000 km", "1 ft"])("a run of %s", (length) => {
		for (const load of ["load 1200 W", "heater 1200 W", "load 12 A", "load"]) hold(stateOf(shed(length, "14-2", load)));
	});

	test("plans with words and figures thrown about", () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 1, max: 400 }),
				fc.array(fc.tuple(fc.nat(), fc.constantFrom("0", "1e308", "99999", "-40", "lost", "")), { maxLength: 6 }),
				(seed, changes) => {
					const words = generatePlan(seed, { devices: 8 }).text.split(" ");
					for (const [at, word] of changes) words[at % words.length] = word;
					for (const state of analysisOf(words.join(" ")).states)
						for (const loading of loadings) hold(solveMode(setUpMode(state), loading));
				},
			),
			{ numRuns: 120 },
		);
	});
});
