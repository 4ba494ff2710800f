// Boards with devices that open the neutral, and transfer switches: every conductor on its terminal, readable, with their letters.
import { describe, expect, test } from "vitest";
import { boundsOfMark, boxesMeet, marksInPlace } from "../../../src/drawing/bounds.ts";
import { brokenMeasures } from "../../../src/drawing/measures/index.ts";
import type { Sheet } from "../../../src/drawing/scene.ts";
import { draw } from "./drawn.ts";
import { untruths } from "./drawn-truth.ts";

const board = `plan "Boat-house"
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
const van = `plan "Van"
  region iec
inlet shore 16 A 230 V TT
feed entry from shore by 3G2.5
  1 m to R1: rcd 25 A 30 mA
  2 m to DB: panel main 16 A two-pole
circuit a from DB breaker 10 A two-pole by 3G1.5
  3 m to a1: socket
`;
const sources = `inlet shore 30 A 120 V
generator gen 3600 W 120 V, bonding plug
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
transfer-switch TS 30 A two-pole centre off
feed line from shore by 10-2
  12 ft to TS.1
feed backup from gen by 10-2
  8 ft to TS.2
feed entry from TS by 10-2
  3 ft to inv.in
panel LC main 30 A two-pole 30 mA from inv.out by 10-2, 6 ft
  slot 1: ground-fault-breaker 20 A
circuit bunks from LC.1 by 12-2
  14 ft to b1: receptacle
`;
const legs = `inlet pole 50 A 120/240 V
generator gen 50 A 120/240 V, bonds neutral to frame
transfer-switch TS 50 A 120/240 V three-pole
feed line from pole by 6-3
  12 ft to TS.1
feed backup from gen by 6-3
  8 ft to TS.2
panel LC legs 2, main 50 A 30 mA from TS by 6-3, 6 ft
  slot 1: ground-fault-breaker two-pole 20 A
circuit heat from LC.1 by 12-3
  14 ft to k1: receptacle split
`;

/** Averages that a plan of a few boxes need not reach. */
const ofWholeSheets: ReadonlySet<string> = new Set([
	"bends a cable between boxes",
	"empty share",
	"largest empty rectangle",
]);

const wordsIn = (sheet: Sheet | undefined, name: string): string[] =>
	(sheet?.groups ?? [])
		.filter((group) => group.name === name)
		.flatMap((group) => marksInPlace(group))
		.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));

test.each([
	["groups behind residual-current devices", board],
	["a neutral on the wrong bar", `${board}at DB\n  lights-1.blue on R2.neutral.4\n`],
	["a device on the way", van],
	["a transfer switch", sources],
	["a transfer switch on two legs", legs],
])("%s is drawn conductor by conductor, within every measure", async (_, text) => {
	const { circuit, sheets } = await draw(text);
	expect(untruths(circuit, sheets)).toEqual([]);
	expect(sheets.flatMap(brokenMeasures).filter(({ name }) => !ofWholeSheets.has(name))).toEqual([]);
});

describe("a board", () => {
	test("says at each bar whose it is, and at each device the leak it opens on", async () => {
		const { sheets } = await draw(board);
		const words = wordsIn(sheets[0], "box DB");
		expect(words).toEqual(expect.arrayContaining(["of R1", "of R2", "isolated", "30 mA type A", "R1 · 40 A", "N out"]));
	});

	test("has a comb from each device to the breakers behind it, apart from the bus", async () => {
		const { sheets } = await draw(board);
		const bars = (sheets[0]?.groups ?? [])
			.flatMap((group) => marksInPlace(group))
			.flatMap((mark) =>
				mark.kind === "rectangle" && mark.as === "bar" && mark.fill === "hot-bus" ? [boundsOfMark(mark)] : [],
			);
		const uprights = bars.filter(({ width, height }) => height > 2 * width);
		expect(uprights.length).toBe(3);
		expect(uprights.some((one, index) => uprights.some((other, at) => at > index && boxesMeet(one, other)))).toBe(
			false,
		);
	});
});

test("a transfer switch says which input each terminal belongs to", async () => {
	const { sheets } = await draw(sources);
	expect(wordsIn(sheets[0], "box TS")).toEqual(
		expect.arrayContaining(["1H", "1N", "1G", "2H", "2N", "2G", "H", "N", "G"]),
	);
});

test("the notes say where neutral and ground meet for what is live, not for what the switch leaves apart", async () => {
	const { sheets } = await draw(sources);
	const words = (sheets[0]?.groups ?? [])
		.flatMap((group) => marksInPlace(group))
		.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
	expect(words).toContain("Mode shore: neutral and ground meet at shore.");
	expect(words).toContain("Mode gen: neutral and ground meet at gen.");
});
