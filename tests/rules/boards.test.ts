// Boards whose devices open hot and neutral: by a leak or too much current, for the whole board, a group of circuits or one.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { checkMarked, checkRight } from "../check-plan.ts";

const hut = `plan "Hut"
  region iec
  rules building
inlet supply 40 A 230 V
panel DB main 40 A two-pole from supply by 3G10, 8 m
  R1: rcd 40 A 30 mA type A
    slot 1: breaker 16 A
    slot 2: breaker 10 A
  R2: rcd 40 A 30 mA
circuit sockets from DB.1 by 3G2.5
  6 m to a1: socket
circuit lights from DB.2 by 3G1.5
  4 m to l1: light 9 W
circuit shed from R2 breaker 16 A two-pole by 3G2.5
  6 m to s1: socket
`;

describe("groups of breakers behind residual-current devices", () => {
	test("each lands its neutrals on the bar of its own device", () => {
		const { circuit } = checkRight(hut).analysis;
		const bars = circuit.conductors.flatMap(({ name, ends }) =>
			ends.flatMap(({ point }) => {
				const at = circuit.points[point ?? -1]?.name ?? "";
				return /^R\d\.neutral\./.test(at) ? [`${name} on ${at.replace(/\.\d+$/, "")}`] : [];
			}),
		);
		expect(bars).toEqual([
			"sockets-1.blue on R1.neutral",
			"lights-1.blue on R1.neutral",
			"R1~load.neutral on R1.neutral",
			"R2~load.neutral on R2.neutral",
			"DB.3~line.neutral on R2.neutral",
		]);
	});

	test("a breaker said behind a device takes the next slot of the panel", () => {
		expect(checkRight(hut).analysis.circuit.partByName.has("DB.3")).toBe(true);
	});

	test("a bar of the builder's own takes the place of the one a device brings", () => {
		const named = hut.replace("  R2: rcd", "    N1: neutral-bar 6\n  R2: rcd");
		const { circuit } = checkRight(named).analysis;
		expect(circuit.partByName.has("N1")).toBe(true);
		expect(circuit.partByName.has("R1.neutral")).toBe(false);
	});

	test("a neutral on the bar of the other device", () => {
		const { findings } = checkMarked(`${hut}at DB
  lights-1.blue on R2.neutral.4
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-borrowed "l1 goes out through R1 and back through R2"
`);
		expect(findings.find(({ code }) => code === "neutral-borrowed")?.help).toContain(
			"Land lights-1.blue on R1.neutral, the neutral bar behind R1.",
		);
	});

	test("a neutral on the board's bar, past every device", () => {
		checkMarked(`${hut}at DB
  sockets-1.blue on DB.neutral.9
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-borrowed "The hot of a1 goes through R1, the neutral does not"
// also ground-fault-missing
`);
	});

	test("the lead of a two-pole breaker on the bar of the other device", () => {
		const { findings } = checkPlan(`${hut}at DB\n  DB.3.tail on R1.neutral.5\n`, "plan");
		expect(findings.filter(({ level }) => level !== "note").map(({ code, title }) => `${code}: ${title}`)).toEqual([
			expect.stringContaining("neutral-borrowed: s1 goes out through R2 and back through R1"),
		]);
	});
});

describe("the head of a board", () => {
	const van = (main: string, breaker = "breaker 10 A two-pole"): string => `plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main ${main} from shore by 3G2.5, 4 m
circuit a from DB ${breaker} by 3G1.5
  3 m to a1: socket
`;
	const partsOf = (text: string): string[] =>
		checkRight(text).analysis.circuit.parts.flatMap(({ name, face }) => (name === "DB.main" ? [face.text] : []));

	test.each([
		["16 A rcbo 30 mA", "16 A two-pole ground-fault main 30 mA"],
		["16 A trip 30 mA type A", "16 A two-pole ground-fault main 30 mA type A"],
		["25 A rcd 30 mA type B", "25 A two-pole residual-current main 30 mA type B"],
	])("main %s", (main, text) => {
		expect(partsOf(van(main))).toEqual([text]);
	});

	test("a main switch, with the protection behind it", () => {
		expect(partsOf(van("40 A switch", "rcbo 10 A 30 mA"))).toEqual(["40 A two-pole main switch"]);
	});

	test("one that opens hot and neutral opens the neutral of all that is behind it", () => {
		const { circuit } = checkRight(van("16 A rcbo 30 mA")).analysis;
		const names = circuit.links
			.filter(({ part, nature }) => part === "DB.main" && nature === "contact")
			.map(({ between }) => between.map((point) => circuit.points[point]?.name).join(" = "));
		expect(names).toEqual(["DB.main.line.hot = DB.main.stab", "DB.main.line.neutral = DB.main.load.neutral"]);
	});

	test("hot and neutral exchanged at its terminals", () => {
		const found = checkPlan(
			`${van("16 A rcbo 30 mA")}at DB\n  DB-1.brown on DB.main.line.neutral\n  DB-1.blue on DB.main.line.hot\n`,
			"plan",
		).findings.filter(({ level }) => level === "danger");
		expect(found.map(({ code }) => code)).toContain("polarity-reversed");
	});

	test("a device that a circuit's neutral passes by", () => {
		checkMarked(`${van("16 A two-pole", "rcbo 10 A 30 mA")}at DB
  a-1.blue on DB.neutral.5
//^^^^^^^^^^^^^^^^^^^^^^^^ neutral-borrowed "The hot of a1 goes through DB.1, the neutral does not"
// also ground-fault-missing
`);
	});

	test("a boat's main that opens both at 30 mA", () => {
		checkRight(`plan "Sloop"
  rules boat
inlet dock 30 A 120 V
panel AC main 30 A two-pole 30 mA from dock by triplex 10 AWG, 8 ft
circuit heater from AC breaker 15 A by triplex 14 AWG
  8 ft to h1: heater 900 W
`);
	});
});

describe("residual-current devices on the way", () => {
	const plan = (trip: string): string => `plan "Van"
  region iec
inlet shore 16 A 230 V
feed entry from shore by 3G2.5
  1 m to R1: rcd 25 A ${trip}
  2 m to DB: panel main 16 A two-pole
circuit a from DB breaker 10 A two-pole by 3G1.5
  3 m to a1: socket
`;
	test("stand for all behind them", () => {
		checkRight(plan("30 mA"));
	});
	test("one that opens too late for a person", () => {
		const found = checkPlan(plan("100 mA"), "plan").findings.filter(({ level }) => level === "error");
		expect(found.map(({ code }) => code)).toEqual(["ground-fault-missing"]);
	});
	test("fed on its load side", () => {
		const found = checkPlan(
			`${plan("30 mA")}at R1
  entry-1.brown on R1.load.hot
  entry-1.blue on R1.load.neutral
  entry-2.brown on R1.line.hot
  entry-2.blue on R1.line.neutral
`,
			"plan",
		).findings.filter(({ level }) => level === "danger");
		expect(found.map(({ code }) => code)).toEqual(["line-load-reversed"]);
	});
});

describe("ground-fault breakers", () => {
	const panel = (landings: string): string => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  slot 1: ground-fault-breaker 20 A
circuit bath from LC.1 by 12-2
  14 ft to b1: receptacle
at LC
${landings}`;
	test("the load's neutral on the breaker, the tail on the bar", () => {
		checkRight(panel("  bath-1.white on LC.1.load.neutral\n  LC.1.tail on LC.neutral.4\n"));
	});
	test("the load's neutral on the bar", () => {
		checkMarked(
			panel(`  bath-1.white on LC.neutral.4
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-borrowed "The hot of b1 goes through LC.1, the neutral does not"
`),
		);
	});
	test("the tail left loose", () => {
		const found = checkPlan(panel("  LC.1.tail loose\n"), "plan").findings.filter(({ level }) => level !== "note");
		expect(found.map(({ code }) => code)).toContain("end-loose");
	});
	test("two poles with a shared neutral", () => {
		const tub = `inlet pole 50 A 120/240 V
panel LC legs 2, main 50 A from pole by 6-3, 12 ft
  slot 1: ground-fault-breaker two-pole 20 A
circuit tub from LC.1 by 12-3
  14 ft to k1: receptacle split
`;
		checkRight(tub);
		checkMarked(`${tub}at LC
  tub-1.white on LC.neutral.5
//^^^^^^^^^^^^^^^^^^^^^^^^^^^ neutral-borrowed "The hot of k1 goes through LC.1, the neutral does not"
`);
	});
});
