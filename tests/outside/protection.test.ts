// Against the outside: which device published tables allow ahead of a conductor, asked of the whole tool by plan texts.
import { describe, expect, test } from "vitest";
import { findingsOf, nameOf, type Published } from "./published.ts";

interface Row {
	/** The cable of a feed. */
	readonly cable: string;
	/** Amperes of the largest device that fits, and of the next that is sold. */
	readonly fits: number;
	readonly next: number;
	/** The limit a finding must name, where it is no rating of a device. */
	readonly limit?: number;
}

const size = (
	source: string,
	rows: readonly (readonly [string, number, number, number?])[],
	known: Published<Row>["known"] = "read",
) =>
	rows.map(
		([cable, fits, next, limit]): Published<Row> => ({
			cable,
			fits,
			next,
			...(limit === undefined ? {} : { limit }),
			source,
			known,
		}),
	);

const unitedStates = [
	...size("NFPA 70 240.4(D), small conductors", [
		["14-2", 15, 20],
		["12-2", 20, 25],
		["10-2", 30, 35],
	]),
	...size("NFPA 70 Table 310.16, 60 C column, 240.4(B) and 240.6(A)", [
		["8-2", 40, 45],
		["6-2", 60, 70],
		["4-2", 70, 80],
		["2-2", 100, 110],
	]),
	...size("NFPA 70 Table 310.16, 75 C column, 240.4(B) and 240.6(A)", [
		["8-2 75 C", 50, 60],
		["6-2 75 C", 70, 80],
		["4-2 75 C", 90, 100],
		["2-2 75 C", 125, 150],
	]),
	...size("NFPA 70 240.4(D): no insulation lifts the limit of small conductors", [
		["14-2 90 C", 15, 20],
		["12-2 90 C", 20, 25],
		["10-2 90 C", 30, 35],
	]),
	...size("NFPA 70 Table 400.5(A)(1), column B", [
		["cord 14-3", 15, 20, 18],
		["cord 12-3", 25, 30],
		["cord 16-3", 10, 15, 13],
	]),
	...size("NFPA 70 Table 400.5(A)(1), column B", [["cord 10-3", 30, 35]], "recalled"),
];

/** ABYC E-11 has the same 105 C column. */
const boats = size("33 CFR 183.425 Table 5, 105 C, and 183.455", [
	["triplex 16 AWG", 25, 30],
	["triplex 14 AWG", 35, 40],
	["triplex 12 AWG", 45, 50],
	["triplex 10 AWG", 60, 70],
	["triplex 8 AWG", 80, 90],
]);

/** On a wall, the most a cable can carry: only beyond it is a device wrong however the cable runs. */
const metric = size(
	"IEC 60364-5-52 Table B.52.2, method C",
	[
		["3G1.5", 16, 20, 19.5],
		["3G2.5", 25, 32, 27],
		["3G4", 32, 40, 36],
		["3G6", 40, 50, 46],
		["3G10", 63, 80],
	],
	"recalled",
);

const plan = (head: string, amperes: number, cable: string) => `${head}generator g ${amperes} A, bonds neutral to frame
panel P lugs only from g by ${cable}, 3 m
`;
const heads = {
	us: 'plan "x"\n  region us\n  rules building\n',
	boat: 'plan "x"\n  region us\n  rules boat\n',
	iec: 'plan "x"\n  region iec\n  rules building\n',
};

describe.each([
	["North America", heads.us, unitedStates],
	["boats", heads.boat, boats],
	["IEC", heads.iec, metric],
] as const)("%s", (_, head, rows) => {
	test.each(rows.map((row) => [nameOf(row, `${row.cable} behind ${row.fits} A is right`), row] as const))(
		"%s",
		(_name, row) => {
			expect(findingsOf(plan(head, row.fits, row.cable), "protection-too-large")).toEqual([]);
		},
	);

	test.each(rows.map((row) => [nameOf(row, `${row.cable} behind ${row.next} A is not`), row] as const))(
		"%s",
		(_name, row) => {
			const [found, ...more] = findingsOf(plan(head, row.next, row.cable), "protection-too-large");
			expect(more).toEqual([]);
			expect(found?.level).toBe("danger");
			expect(found?.figures).toMatchObject([{ found: row.next, limit: row.limit ?? row.fits, unit: "A" }]);
			expect(found?.figures[0]?.source.includes("recalled")).toBe(
				row.known === "recalled" || (row.source.includes("310.16") && !row.source.includes("240.4(D)")),
			);
		},
	);
});

describe("a verdict on a recalled figure says so", () => {
	test.each([
		["a column of the table that a recalled clause picks", heads.us, 50, "8-2"],
		["a recalled row", heads.us, 35, "cord 10-3"],
		["a recalled table", heads.iec, 32, "3G2.5"],
	])("%s", (_, head, amperes, cable) => {
		expect(findingsOf(plan(head, amperes, cable), "protection-too-large")[0]?.why).toContain("recalled, not read");
	});

	test("a figure that was read does not", () => {
		expect(findingsOf(plan(heads.us, 20, "14-2"), "protection-too-large")[0]?.why).not.toContain("recalled");
	});
});

describe("what every builder knows", () => {
	test(
		nameOf({ source: "common practice", known: "common practice" }, "12 AWG goes with 20 A, 14 AWG with 15 A"),
		() => {
			const circuits = (thick: number, thin: number) => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit one from LC breaker ${thick} A by 12-2
  14 ft to b1: receptacle
circuit two from LC breaker ${thin} A by 14-2
  14 ft to l1: light 9 W
`;
			expect(findingsOf(circuits(20, 15), "protection-too-large")).toEqual([]);
			expect(findingsOf(circuits(20, 20), "protection-too-large").map((finding) => finding.marks[0])).toEqual([
				"two-1",
			]);
			expect(findingsOf(circuits(25, 15), "protection-too-large").map((finding) => finding.marks[0])).toEqual([
				"one-1",
			]);
		},
	);
});
