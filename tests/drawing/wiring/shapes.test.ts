// Each shape of box by the text that asks for it: crossings and bends of the templates, counted on the layout itself.
import { describe, expect, test } from "vitest";
import { certain } from "../../../src/base/certain.ts";
import type { Circuit } from "../../../src/circuit/circuit.ts";
import { type Approach, fillBox, takeStock } from "../../../src/drawing/wiring/box-content.ts";
import { planLane } from "../../../src/drawing/wiring/box-lane.ts";
import type { BoxPlan } from "../../../src/drawing/wiring/box-plan.ts";
import { countCrossings } from "../../../src/drawing/wiring/crossings.ts";
import { shareSheets } from "../../../src/drawing/wiring/feed-graph.ts";
import { layOutBox } from "../../../src/drawing/wiring/lay-out-box.ts";
import { orderStrands } from "../../../src/drawing/wiring/strand-order.ts";
import { draw, panel } from "./drawn.ts";

/** A box of a plan laid out by itself: what arrives on the left, what leaves on the right. */
function layOut(circuit: Circuit, name: string): { plan: BoxPlan; onRows: boolean } {
	const stock = certain(takeStock(circuit).get(name), name);
	const approaches = stock.meetings.map(
		(meeting): Approach => ({ ...meeting, side: meeting.end === 1 ? "left" : "right" }),
	);
	const strands = orderStrands(
		circuit,
		shareSheets(circuit).flatMap(({ roots }) => roots),
	);
	const content = fillBox(circuit, stock, approaches, strands);
	return { plan: layOutBox(content, 0), onRows: planLane(content) !== undefined };
}

/** Corners of all wires, those of the fans at the walls left out. */
function bends({ routes }: BoxPlan): number {
	return routes.reduce((sum, { wire, points }) => {
		const fan =
			wire.from.at === "wall" ? points.findIndex(({ y }, index) => index > 0 && y === points[index + 1]?.y) : 0;
		return sum + Math.max(0, points.length - 2 - Math.max(0, fan));
	}, 0);
}

const cases: readonly (readonly [
	shape: string,
	chain: string,
	box: string,
	onRows: boolean,
	crossings: number,
	bends: number,
])[] = [
	["end box", "9 ft to b1: receptacle", "b1", true, 0, 0],
	["end box of a ground-fault receptacle", "9 ft to b1: gfci", "b1", true, 0, 0],
	["tap box", "9 ft to b1: receptacle\n  9 ft to b2: receptacle", "b1", false, 3, 0],
	["tap box of metal", "9 ft to b1: receptacle, box 18 cuin metal\n  9 ft to b2: receptacle", "b1", false, 3, 1],
	["series box: ground-fault receptacle", "9 ft to b1: gfci\n  9 ft to b2: receptacle", "b1", true, 0, 0],
	["series box: switch", "9 ft to b1: switch\n  9 ft to b2: light 9 W", "b1", true, 1, 0],
	["series box: disconnect of two poles", "9 ft to b1: disconnect 20 A\n  9 ft to b2: heater 900 W", "b1", true, 0, 0],
	["switch with the live hot going on", "9 ft to b1: switch\n  9 ft by 12-3 to b2: receptacle split", "b1", true, 2, 1],
	[
		"one cable in, two out",
		"9 ft to b1: box\n  9 ft to b2: receptacle\n  from b1\n    9 ft to b3: receptacle",
		"b1",
		false,
		3,
		3,
	],
	[
		"two receptacles in one box",
		"9 ft to b1: box\n    r1: receptacle\n    r2: receptacle\n  9 ft to b2: receptacle",
		"b1",
		false,
		6,
		0,
	],
];

describe("boxes", () => {
	test.each(cases)("%s", async (_shape, chain, box, onRows, crossings, corners) => {
		const { circuit } = await draw(`${panel}circuit a from LC.1 by 12-2\n  ${chain}\n`);
		const laid = layOut(circuit, box);
		expect(laid.onRows).toBe(onRows);
		expect(countCrossings(laid.plan.routes)).toBeLessThanOrEqual(crossings);
		expect(bends(laid.plan)).toBeLessThanOrEqual(corners);
	});

	test("a load centre's circuits pass straight over its bars", async () => {
		const { circuit } = await draw(
			`${panel}circuit a from LC.1 by 12-2\n  9 ft to b1: receptacle\ncircuit b from LC.2 by 12-2\n  9 ft to b2: receptacle\n`,
		);
		const { plan } = layOut(circuit, "LC");
		expect(countCrossings(plan.routes)).toBe(0);
		const circuits = plan.routes.filter(({ wire }) => wire.conductor.cable !== "LC-1");
		expect(circuits.every(({ points }) => points.slice(-2)[0]?.y === points.at(-1)?.y)).toBe(true);
	});

	test("an inverter-charger has its input on the left and its output on the right", async () => {
		const { circuit, sheets } = await draw(`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
`);
		expect(layOut(circuit, "inv").onRows).toBe(true);
		const marks = sheets[0]?.groups.find(({ name }) => name === "box inv")?.marks ?? [];
		const x = (text: string): number =>
			marks.flatMap((mark) => (mark.kind === "text" && mark.text === text ? [mark.x] : []))[0] ?? 0;
		expect(x("IN")).toBeLessThan(x("OUT"));
	});

	test("swapped conductors cross on their way to their screws", async () => {
		const { circuit } = await draw(
			`${panel}circuit a from LC.1 by 12-2\n  9 ft to b1: receptacle\nat b1\n  a-1.black on b1.neutral\n  a-1.white on b1.hot\n`,
		);
		const { plan, onRows } = layOut(circuit, "b1");
		expect(onRows).toBe(false);
		expect(countCrossings(plan.routes)).toBeGreaterThan(0);
	});
});
