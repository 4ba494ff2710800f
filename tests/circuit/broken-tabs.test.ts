// Duplex receptacles with tabs broken off: halves with hots of their own, with neutrals of their own, or with both.
import { describe, expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";
import { truthTable } from "../outside/truth-table.ts";
import { endsIn, wireRight } from "./wire-plan.ts";

const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";
const one = `${supply}circuit one from LC breaker 15 A by 14-2\n`;
const marked = "white marked black at both ends";

describe("a receptacle half of which is switched", () => {
	test.each([
		["power at the switch", `  9 ft to s1: switch\n  6 ft by 14-3 to r1: receptacle split\n`],
		["in the words of the screws", `  9 ft to s1: switch\n  6 ft by 14-3 to r1: receptacle no brass tab\n`],
		["power at the receptacle", `  9 ft to r1: receptacle no hot tab\n  6 ft, ${marked} to s1: switch\n`],
	])("%s", (_, wiring) => {
		checkRight(one + wiring);
		const table = truthTable(one + wiring);
		expect(table.map(({ on }) => on.has("r1.hot.lower"))).toEqual([true, true]);
		expect(table.map(({ on }) => on.has("r1.hot.upper"))).toEqual([false, true]);
	});

	test("a socket-outlet of IEC countries whose tab is said to be broken off has two outlets", () => {
		const metric =
			'plan "Hut"\n  region iec\n  rules building\ninlet shore 16 A 230 V\npanel DB main 16 A from shore by 3G6, 5 m\n';
		const circuit = "circuit one from DB ground-fault-breaker 10 A by 3G1.5\n";
		const table = truthTable(`${metric}${circuit}  3 m to s1: switch\n  2 m by 4G1.5 to r1: socket no hot tab\n`);
		expect(table.map(({ on }) => on.has("r1.hot.upper"))).toEqual([false, true]);
	});

	test("the tab left in: the switch has no effect", () => {
		checkMarked(`${one}  9 ft to s1: switch
//        ^^ switch-without-effect
  6 ft by 14-3 to r1: receptacle
at r1
  one-2.red, one-2.black on r1.hot
`);
	});

	test("the tab broken off where one hot comes in", () => {
		checkMarked(`${one}  9 ft to r1: receptacle no hot tab
//        ^^ conductors-too-few "one-1 (14-2) has no second hot for r1.hot.upper"
// also end-loose
`);
	});
});

describe("two circuits on one receptacle", () => {
	const two = (tabs: string) => `${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to r1: receptacle ${tabs}
circuit two from LC breaker 15 A by 14-2
  9 ft to r1.upper
`;

	test("with both tabs broken off each half has its own hot and neutral", () => {
		const circuit = wireRight(two("no hot tab, no neutral tab"));
		expect(endsIn(circuit, "r1").filter((end) => !end.includes("ground"))).toEqual([
			"one-1.black on r1.hot.lower",
			"one-1.white on r1.neutral.lower",
			"two-1.black on r1.hot.upper",
			"two-1.white on r1.neutral.upper",
		]);
		checkRight(two("no hot tab, no neutral tab"));
	});

	test("the neutral tab left in: two circuits share it", () => {
		checkMarked(`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to r1: receptacle no hot tab
circuit two from LC breaker 15 A by 14-2
  9 ft to r1.upper
//        ^^^^^^^^ neutral-borrowed
`);
	});

	test("the neutral tab broken off, and no neutral for the upper half", () => {
		checkMarked(`${one}  9 ft to r1: receptacle no silver tab
//        ^^ end-loose "r1.neutral.upper has no way back"
`);
	});
});
