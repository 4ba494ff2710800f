// Against the outside: receptacle ratings by circuit, continuous loads, conductors under one terminal.
import { describe, expect, test } from "vitest";
import { findingsOf, nameOf, type Published } from "./published.ts";

const legs = "inlet pole 100 A, 120 V / 240 V\npanel LC main 100 A, legs 2 from pole by 2-3, 20 ft\n";
const cables = new Map([
	[15, "14-2"],
	[20, "12-2"],
	[30, "10-2"],
	[40, "8-2"],
	[50, "6-2"],
]);
const circuit = (amperes: number, things: string) =>
	`${legs}circuit one from LC breaker ${amperes} A by ${cables.get(amperes) ?? "2-2"}\n${things}`;

describe("receptacles on a circuit with several outlets", () => {
	const rows: readonly Published<{ amperes: number; fitting: readonly number[] }>[] = (
		[
			[15, [15], "read"],
			[20, [15, 20], "read"],
			[30, [30], "recalled"],
			[40, [40, 50], "read"],
			[50, [50], "read"],
		] as const
	).map(([amperes, fitting, known]) => ({ amperes, fitting, source: "NFPA 70 Table 210.21(B)(3)", known }));

	test.each(rows.map((row) => [nameOf(row, `${row.amperes} A takes ${row.fitting.join(" and ")} A`), row] as const))(
		"%s",
		(_, row) => {
			const silent = [15, 20, 30, 40, 50].filter(
				(rating) =>
					findingsOf(
						circuit(row.amperes, `  8 ft to b1: receptacle ${rating} A duplex\n`),
						"receptacle-rating-wrong",
						true,
					).length === 0,
			);
			expect(silent).toEqual(row.fitting);
		},
	);

	test(
		nameOf(
			{ source: "NFPA 70 Table 210.21(B)(3)", known: "read" },
			"one duplex counts as two: 15 A on a 20 A circuit is right",
		),
		() => {
			expect(
				findingsOf(circuit(20, "  8 ft to b1: receptacle 15 A duplex\n"), "receptacle-rating-wrong", true),
			).toEqual([]);
		},
	);

	test(
		nameOf({ source: "NFPA 70 210.21(B)(1)", known: "read" }, "one alone is rated not less than its circuit"),
		() => {
			const alone = (rating: number) =>
				findingsOf(circuit(20, `  8 ft to b1: receptacle ${rating} A single\n`), "receptacle-rating-wrong");
			expect(alone(15).length).toBe(1);
			expect(alone(20)).toEqual([]);
		},
	);

	test(
		nameOf({ source: "NFPA 70 210.3", known: "read" }, "circuits with several outlets are 15, 20, 30, 40 or 50 A"),
		() => {
			const text = `${legs}circuit one from LC breaker 25 A by 10-2\n  8 ft to b1: receptacle 20 A\n  8 ft to b2: receptacle 20 A\n`;
			expect(findingsOf(text, "receptacle-rating-wrong").map((finding) => finding.basis)).toEqual([
				"NFPA 70 210.3 (2011)",
			]);
		},
	);
});

describe("loads that run for three hours or more", () => {
	const row = {
		source: "NFPA 70 210.20(A), with the published examples 16 A on 20 A and 24 A on 30 A",
		known: "read",
	} as const;

	test.each([
		[20, 16],
		[30, 24],
	])(nameOf(row, "a %d A breaker carries %d A, and no more"), (amperes, load) => {
		const heater = (draw: number) => circuit(amperes, `  8 ft to h1: heater ${draw} A continuous\n`);
		expect(findingsOf(heater(load), "circuit-overloaded")).toEqual([]);
		expect(findingsOf(heater(load + 0.1), "circuit-overloaded").length).toBe(1);
	});

	test(nameOf({ source: "UL 489, as quoted in trade articles", known: "read" }, "that is 80 % of its rating"), () => {
		const [found] = findingsOf(circuit(15, "  8 ft to h1: heater 12.1 A continuous\n"), "circuit-overloaded");
		expect(found?.figures).toMatchObject([{ limit: 15, unit: "A" }]);
		expect(found?.figures[0]?.found).toBeCloseTo(12.1 / 0.8, 6);
	});

	test(nameOf({ source: "IEC 60364-4-43", known: "recalled" }, "in IEC countries the sum alone counts"), () => {
		const text = (draw: number) => `plan "x"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A from shore by 3G2.5, 3 m
circuit heat from DB ground-fault-breaker 16 A trip 30 mA by 3G2.5
  5 m to h1: heater ${draw} A continuous
`;
		expect(findingsOf(text(16), "circuit-overloaded")).toEqual([]);
		expect(findingsOf(text(16.1), "circuit-overloaded").length).toBe(1);
	});
});

describe("conductors under one terminal", () => {
	test(nameOf({ source: "NFPA 70 110.14(A)", known: "read" }, "one, unless it is made for more"), () => {
		const text = circuit(15, "  8 ft to l1: light 9 W\n  6 ft to l2: light 9 W\n");
		expect(findingsOf(text, "terminal-overfilled")).toEqual([]);
		expect(findingsOf(`${text}at l1\n  one-1.black, one-2.black on l1.hot\n`, "terminal-overfilled").length).toBe(1);
	});

	test(nameOf({ source: "NFPA 70 408.41", known: "recalled" }, "one neutral in a port of a bar"), () => {
		const text = circuit(15, "  8 ft to l1: light 9 W\n");
		expect(findingsOf(`${text}at LC\n  LC-1.white, one-1.white on LC.neutral.1\n`, "terminal-overfilled").length).toBe(
			1,
		);
	});

	test(nameOf({ source: "NFPA 70 110.14(A)", known: "read" }, "a binding screw is for 10 AWG or smaller"), () => {
		const text = (gauge: number) => `${legs}circuit one from LC breaker 20 A by ${gauge}-2\n  8 ft to b1: receptacle\n`;
		expect(findingsOf(text(10), "terminal-overfilled")).toEqual([]);
		expect(findingsOf(text(8), "terminal-overfilled").length).toBe(3);
	});
});
