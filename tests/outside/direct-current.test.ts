// Against the outside: where a fuse stands on the direct-current side, how large it may be, what it must be able to open.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";
import { findingsOf, nameOf } from "./published.ts";

const boat = 'plan "p"\n  rules boat\n';
const camper = 'plan "p"\n  rules camper\n';

/** A bank with a fuse some way along a lead of its own, to a bus. */
const bank = ({
	head = boat,
	battery = "lithium 12.8 V 280 Ah, fault 5 kA",
	inches = 7,
	cable = "single 2 AWG red",
	fuse = "fuse class-T 150 A",
}: {
	readonly head?: string;
	readonly battery?: string;
	readonly inches?: number;
	readonly cable?: string;
	readonly fuse?: string;
}) => `${head}battery house ${battery}
feed main from house.+ by ${cable}
  ${inches} in to F1: ${fuse}
  1 ft to plus: bus 250 A
feed back from house.- by single 2 AWG black
  1 ft to minus: bus 250 A
`;
const law = { source: "33 CFR 183.455", known: "read" } as const;
const worse = (text: string, ...codes: string[]) => codes.flatMap((code) => findingsOf(text, code, true));

describe("where the device stands", () => {
	test(nameOf(law, "within 7 in of the source, measured along the conductor"), () => {
		expect(worse(bank({ inches: 7 }), "protection-too-far", "protection-missing")).toEqual([]);
		expect(worse(bank({ inches: 8 }), "protection-too-far", "protection-missing").length).toBe(1);
	});

	test(
		nameOf({ source: "ABYC E-11, on two marine pages", known: "read" }, "sheathed at a battery: up to 72 in"),
		() => {
			const levels = (inches: number) =>
				findingsOf(bank({ inches }), "protection-too-far", true).map(({ level }) => level);
			expect([8, 72, 73].map(levels)).toEqual([["note"], ["note"], ["error"]]);
		},
	);

	test(nameOf(law, "every ungrounded conductor has one"), () => {
		const bare = bank({}).replace("to F1: fuse class-T 150 A\n  1 ft to plus", "to plus");
		const fed = `${bare}feed lamp from plus, minus by pair 14 AWG\n  3 ft to l1: light 6 W\n`;
		expect(findingsOf(fed, "protection-missing").length).toBeGreaterThan(0);
	});

	test(
		nameOf({ source: "ABYC E-11, in a marine article", known: "read" }, "cranking-motor conductors are exempt"),
		() => {
			const crank = (what: string) => `${boat}battery engine flooded 12 V 80 Ah
${what}
feed crank from engine.+ by single 2/0 red
  4 ft to st.+
feed ground from engine.- by single 2/0 black
  4 ft to st.-
`;
			expect(findingsOf(crank("starter st 200 A"), "protection-missing")).toEqual([]);
			expect(findingsOf(crank("pump st 200 A"), "protection-missing").length).toBe(1);
		},
	);
});

describe("how large it may be", () => {
	// 33 CFR 183.425 Table 5, 105 C: 16 AWG carries 25 A, 10 AWG 60 A, 2 AWG 210 A.
	test.each([
		["single 16 AWG red 105 C", 35, 40],
		["single 10 AWG red 105 C", 90, 100],
		["single 2 AWG red 105 C", 300, 350],
	])(nameOf(law, "under 50 V at most one and a half times the table: %s"), (cable, fits, beyond) => {
		const text = (rating: number) => bank({ cable, fuse: `fuse class-T ${rating} A` });
		expect(findingsOf(text(fits), "protection-too-large")).toEqual([]);
		expect(findingsOf(text(beyond), "protection-too-large").length).toBe(1);
	});

	test(
		nameOf({ source: "ABYC E-11, in marine articles", known: "read" }, "it is sized to the smallest wire behind it"),
		() => {
			const small = (gauge: string) =>
				`${bank({})}feed small from plus, minus by pair ${gauge}\n  3 ft to l1: light 6 W\n`;
			expect(findingsOf(small("16 AWG"), "protection-too-large").map(({ marks }) => marks[0])).toEqual(["small-1"]);
		},
	);
});

describe("what it must be able to do", () => {
	test(
		nameOf({ source: "boating course page on interrupting ratings", known: "read" }, "lithium: 20 kA, as class T has"),
		() => {
			const at = (fuse: string) => bank({ battery: "lithium 12.8 V 280 Ah, fault 15 kA", fuse });
			expect(findingsOf(at("fuse class-T 150 A interrupting 20 kA"), "interrupting-rating-low", true)).toEqual([]);
			expect(findingsOf(at("fuse ANL 150 A interrupting 6 kA"), "interrupting-rating-low", true).length).toBe(1);
		},
	);

	test(
		nameOf(
			{ source: "ABYC E-11, in a boating forum", known: "read" },
			"short-circuit currents of batteries in parallel add, in series they do not",
		),
		() => {
			const two = (series: boolean) => `${boat}battery A1 flooded 6 V 200 Ah, fault 2400 A
battery A2 flooded 6 V 200 Ah, fault 2400 A
feed one from A1.+ by single 2/0 red
  5 in to F1: fuse ANL 150 A interrupting 3 kA
  1 ft to plus: bus 400 A
${
	series
		? "feed link from A1.- by single 2/0 black\n  1 ft to A2.+\nfeed back from A2.- by single 2/0 black\n  1 ft to minus: bus 400 A\n"
		: "feed link from A2.+ by single 2/0 red\n  5 in to A1.+\nfeed low from A2.- by single 2/0 black\n  5 in to A1.-\nfeed back from A1.- by single 2/0 black\n  1 ft to minus: bus 400 A\n"
}`;
			expect(findingsOf(two(true), "interrupting-rating-low", true)).toEqual([]);
			expect(findingsOf(two(false), "interrupting-rating-low", true).length).toBe(1);
		},
	);
});

describe("the negative", () => {
	test(
		nameOf(
			{ source: "33 CFR 183.455 and 46 CFR, the rest common practice", known: "read" },
			"of a grounded system has no fuse of its own",
		),
		() => {
			const text = (negative: string) => `${bank({}).replace("1 ft to minus", `${negative}1 ft to minus`)}chassis frame
bond tie from minus by single 2 AWG black
  2 ft to frame
feed lamp from plus, minus by pair 14 AWG
  bolted to F3: fuse 10 A
  3 ft to l1: light 6 W
`;
			expect(findingsOf(text(""), "negative-fused", true)).toEqual([]);
			expect(findingsOf(text("6 in to F2: fuse 150 A\n  "), "negative-fused", true).length).toBe(1);
		},
	);

	test(nameOf({ source: "NFPA 70 Article 552", known: "read" }, "a metal chassis may be the return path"), () => {
		const text = `${camper.trim()}
${bank({ head: "" })}chassis frame
bond tie from minus by single 2 AWG black
  2 ft to frame
load horn 60 W
feed blow from plus by single 14 AWG red
  bolted to F3: fuse 10 A
  6 ft to horn.+
feed home from horn.- by single 14 AWG black
  1 ft to frame
`;
		expect(checkPlan(text, "plan").findings.filter(({ level }) => level === "danger" || level === "error")).toEqual([]);
	});
});
