// The set of sheets of a plan, numbered: the wiring sheets, the direct-current sheet, then the one-line.
import type { Analysis } from "../analysis/analysis.ts";
import type { NumberedFinding } from "../base/finding.ts";
import { directSheetName, drawDirect } from "./direct-current/direct-sheet.ts";
import { drawOneLine } from "./one-line/one-line-sheet.ts";
import type { Sheet } from "./scene.ts";
import { partSystems } from "./system-parts.ts";
import { drawWiring, planWiring } from "./wiring/draw-wiring.ts";

/** The sheets that can be asked for. */
export type SheetChoice = "all" | "wiring" | "direct-current" | "one-line";

/** The sheets asked for, one after the other. A sheet has the same number whether it is drawn alone or with all the others. */
export async function* drawSheets(
	analysis: Analysis,
	findings: readonly NumberedFinding[],
	choice: SheetChoice,
): AsyncGenerator<Sheet> {
	const { alternating, direct } = partSystems(analysis.circuit);
	const wiring = planWiring(alternating, directSheetName);
	const before = wiring.shares.length;
	const of = before + (direct === undefined ? 0 : 1) + 1;
	const isAsked = (sheet: SheetChoice): boolean => choice === "all" || choice === sheet;
	if (isAsked("wiring")) yield* drawWiring(analysis, wiring, findings, { before: 0, after: of - before });
	if (isAsked("direct-current") && direct !== undefined)
		yield await drawDirect(analysis, direct, findings, wiring.sheetOf, { number: before + 1, of });
	if (isAsked("one-line")) yield drawOneLine(analysis, findings, { number: of, of });
}
