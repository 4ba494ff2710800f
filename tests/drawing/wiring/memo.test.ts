// Drawing a box from the memo of its shape gives what drawing it afresh gives, mark for mark.
import { expect, test } from "vitest";
import { certain } from "../../../src/base/certain.ts";
import type { Circuit } from "../../../src/circuit/circuit.ts";
import { type Approach, fillBox, takeStock } from "../../../src/drawing/wiring/box-content.ts";
import { shareSheets } from "../../../src/drawing/wiring/feed-graph.ts";
import { drawInterior, type ShapeMemo } from "../../../src/drawing/wiring/interior.ts";
import { orderStrands } from "../../../src/drawing/wiring/strand-order.ts";
import { draw } from "./drawn.ts";
import { randomPlan } from "./random-plan.ts";

/** Every box of a circuit, drawn with one memo for all or with a new one each; anchors in the order of their names. */
function drawAll(circuit: Circuit, memoFor: () => ShapeMemo): unknown[] {
	const strands = orderStrands(
		circuit,
		shareSheets(circuit).flatMap(({ roots }) => roots),
	);
	return [...takeStock(circuit).values()].map((stock) => {
		const approaches = stock.meetings.map(
			(meeting): Approach => ({ ...meeting, side: meeting.end === 1 ? "left" : "right" }),
		);
		const interior = drawInterior(fillBox(circuit, stock, approaches, strands), new Map(), memoFor());
		const { content: _content, anchors, ...drawn } = interior;
		return { ...drawn, anchors: [...anchors()] };
	});
}

test.each([1, 2, 3, 5, 8, 13])("plan %i", async (seed) => {
	for (const asBuilt of [false, true]) {
		const { circuit } = await draw(randomPlan(seed, { asBuilt }));
		const shared: ShapeMemo = new Map();
		expect(drawAll(circuit, () => shared)).toEqual(drawAll(circuit, () => new Map()));
	}
});

test("boxes that differ in nothing but their names are laid out once", async () => {
	const { circuit } = await draw(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  9 ft to b2: receptacle
  9 ft to b3: receptacle
  9 ft to b4: receptacle
`);
	const shared: ShapeMemo = new Map();
	drawAll(circuit, () => shared);
	// The inlet, the tap box and the end box; a panel has names in its drawing and is never shared.
	expect(certain(shared, "the memo").size).toBe(3);
});
