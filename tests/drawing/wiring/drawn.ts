// Draws a plan text's wiring sheets for a test.
import type { Circuit } from "../../../src/circuit/circuit.ts";
import type { Sheet } from "../../../src/drawing/scene.ts";
import { partSystems } from "../../../src/drawing/system-parts.ts";
import { drawWiring, planWiring } from "../../../src/drawing/wiring/draw-wiring.ts";
import { type CheckResult, checkPlan } from "../../../src/pipeline.ts";

/** The circuit of a plan and its wiring sheets, findings marked. */
export interface Drawn {
	readonly circuit: Circuit;
	readonly findings: CheckResult["findings"];
	readonly sheets: readonly Sheet[];
}

/** Draws it as `draw` does: checked first. */
export async function draw(text: string): Promise<Drawn> {
	const { analysis, findings } = checkPlan(text, "test.ferrule");
	const wiring = planWiring(partSystems(analysis.circuit).alternating, "direct-current");
	const sheets: Sheet[] = [];
	for await (const sheet of drawWiring(analysis, wiring, findings, { before: 0, after: 0 })) sheets.push(sheet);
	return { circuit: analysis.circuit, findings, sheets };
}

/** A panel with its feed; circuits follow. */
export const panel = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
  slot 1: breaker 20 A
  slot 2: breaker 20 A
  slot 3: breaker 20 A
`;
