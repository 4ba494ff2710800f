// Against the outside: switches that govern a light from several places, in every order of the boxes that is met in practice.
import { describe, expect, test } from "vitest";
import { checkRight } from "../check-plan.ts";
import { nameOf } from "./published.ts";
import { thrown, truthTable } from "./truth-table.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit one from LC breaker 15 A by 14-2
`;
const marked = "white marked black at both ends";

/** Each order by what it is called, with the switches that govern `l1`. */
const orders: readonly (readonly [string, number, string])[] = [
	[
		"power at the first of two switches, the light behind the last",
		2,
		`  9 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch three-way
  6 ft by 14-2 to l1: light 9 W
`,
	],
	[
		"three switches between power and light",
		3,
		`  9 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch four-way
  9 ft to s3: switch three-way
  6 ft by 14-2 to l1: light 9 W
`,
	],
	[
		"four switches between power and light",
		4,
		`  9 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch four-way
  9 ft to s3: switch four-way
  9 ft to s4: switch three-way
  6 ft by 14-2 to l1: light 9 W
`,
	],
	[
		"power at the light, two switches in a loop",
		2,
		`  9 ft to l1: light 9 W
  6 ft loop, ${marked} to s1: switch three-way
  9 ft loop by 14-3, ${marked} to s2: switch three-way
`,
	],
	[
		"power at the light, three switches in a loop",
		3,
		`  9 ft to l1: light 9 W
  6 ft loop, ${marked} to s1: switch three-way
  9 ft loop by 14-3, ${marked} to s2: switch four-way
  9 ft loop, ${marked} to s3: switch three-way
`,
	],
	[
		"power at the light, a loop with a neutral in every box",
		3,
		`  9 ft to l1: light 9 W
  6 ft loop by 14-3 to s1: switch three-way
  9 ft loop by 14-4 to s2: switch four-way
  9 ft loop to s3: switch three-way
`,
	],
	[
		"power at the first switch, the light between the two",
		2,
		`  9 ft to s1: switch three-way
  9 ft by 14-3 to l1: light 9 W
  6 ft loop, ${marked} to s2: switch three-way
`,
	],
	[
		"power at the first switch, the light before the last two of four",
		4,
		`  9 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch four-way
  9 ft to l1: light 9 W
  6 ft loop, ${marked} to s3: switch four-way
  6 ft loop, ${marked} to s4: switch three-way
`,
	],
	[
		"power at the light, the light between the two switches",
		2,
		`  9 ft to l1: light 9 W
  from l1
    9 ft loop by 14-3, ${marked} to s1: switch three-way
  from l1
    6 ft loop by 14-3, ${marked} to s2: switch three-way
`,
	],
	[
		"power at the light, a neutral with both switches",
		3,
		`  9 ft to l1: light 9 W
  from l1
    9 ft loop by 14-4 to s1: switch three-way
  from l1
    6 ft loop by 14-4 to s2: switch four-way
    6 ft loop to s3: switch three-way
`,
	],
	[
		"power and light at a junction box between the switches",
		2,
		`  9 ft to j1: box
  from j1
    9 ft loop by 14-3, ${marked} to s1: switch three-way
  from j1
    6 ft loop by 14-3, ${marked} to s2: switch three-way
  from j1.switched
    4 ft to l1: light 9 W
`,
	],
	[
		"a loop through a junction box",
		2,
		`  9 ft to l1: light 9 W
  6 ft loop, ${marked} to s1: switch three-way
  6 ft loop by 14-3, ${marked} to j1: box
  6 ft loop, ${marked} to s2: switch three-way
`,
	],
	[
		"four conductors between the switches, for what stays live beyond them",
		3,
		`  9 ft to s1: switch three-way
  9 ft by 14-4 to s2: switch four-way
  9 ft to s3: switch three-way
  6 ft by 14-2 to l1: light 9 W
  from s3.line
    6 ft to r1: receptacle
`,
	],
	[
		"one switch in a loop",
		1,
		`  9 ft to l1: light 9 W
  6 ft loop, ${marked} to s1: switch
`,
	],
	[
		"one switch in a loop with a neutral",
		1,
		`  9 ft to l1: light 9 W
  6 ft loop by 14-3 to s1: switch
`,
	],
	[
		"two switches in one box, each for a light of its own",
		1,
		`  9 ft to b1: box 34 cuin
    s1: switch
    s2: switch
  from s1
    6 ft to l1: light 9 W
  from s2
    6 ft to l2: light 9 W
`,
	],
];

describe("a light switched from several places", () => {
	test.each(orders)(
		nameOf({ source: "common practice", known: "common practice" }, "is on by an even or an odd number thrown: %s"),
		(_, governing, wiring) => {
			const text = supply + wiring;
			checkRight(text);
			const table = truthTable(text);
			const mine = (part: string): boolean => governing > 1 || part === "s1";
			const parity = (row: (typeof table)[number]): number =>
				thrown({ ...row, positions: new Map([...row.positions].filter(([part]) => mine(part))) }) % 2;
			const onAt = new Set(table.filter(({ on }) => on.has("l1.hot")).map(parity));
			const offAt = new Set(table.filter(({ on }) => !on.has("l1.hot")).map(parity));
			expect([onAt.size, offAt.size]).toEqual([1, 1]);
			expect([...onAt]).not.toEqual([...offAt]);
			const switches = [...(table[0]?.positions.keys() ?? [])].filter(mine);
			expect(switches.length).toBe(governing);
		},
	);

	test("what stays live beyond the switches is on in every position", () => {
		const live = orders.find(([name]) => name.includes("stays live"))?.[2] ?? "";
		expect(truthTable(supply + live).filter(({ on }) => !on.has("r1.hot"))).toEqual([]);
	});

	test("a common and a traveller exchanged: not by the number alone any more", () => {
		const text = `${supply}  9 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch three-way
  6 ft by 14-2 to l1: light 9 W
at s2
  one-2.red on s2.common
  one-3.black on s2.traveller.2
`;
		const table = truthTable(text);
		const offAt = new Set(table.filter(({ on }) => !on.has("l1.hot")).map((row) => thrown(row) % 2));
		expect(offAt.size).toBe(2);
	});
});
