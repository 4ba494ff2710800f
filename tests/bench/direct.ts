// What a direct-current sheet costs from cold, and what the layout engine costs by itself for the same graph: one of them a process.
import { prepareDirect } from "../../src/drawing/direct-current/direct-sheet.ts";
import { makeGraph } from "../../src/drawing/direct-current/lay-out-net.ts";
import { drawSheets } from "../../src/drawing/sheet-set.ts";
import { partSystems } from "../../src/drawing/system-parts.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { planOfDirect } from "./plans.ts";

/** Milliseconds for the whole sheet of a checked plan, laid out and composed. */
export async function measureDirectSheet(circuits: number): Promise<number> {
	const { analysis, findings } = checkPlan(planOfDirect(circuits), "direct.ferrule");
	const start = performance.now();
	for await (const _ of drawSheets(analysis, findings, "direct-current"));
	return performance.now() - start;
}

/** Milliseconds for loading the engine and one layout of that sheet's graph. */
export async function measureDirectEngine(circuits: number): Promise<number> {
	const { analysis } = checkPlan(planOfDirect(circuits), "direct.ferrule");
	const { direct } = partSystems(analysis.circuit);
	if (direct === undefined) throw new Error("the plan has no direct-current side");
	const { net, order, boxes, storeys } = prepareDirect(direct, new Map(), () => "");
	const { graph } = makeGraph(net, order, boxes, storeys);
	const start = performance.now();
	const { layOutGraph } = await import("../../src/drawing/wiring/layered.ts");
	await layOutGraph(graph);
	return performance.now() - start;
}
