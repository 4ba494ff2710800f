// The set of sheets of a plan, numbered: the wiring sheets, then the one-line.
import type { Analysis } from "../analysis/analysis.ts";
import type { NumberedFinding } from "../base/finding.ts";
import { drawOneLine } from "./one-line/one-line-sheet.ts";
import type { Sheet } from "./scene.ts";

/** The sheets that can be asked for. */
export type SheetChoice = "all" | "wiring" | "one-line";

/** The sheets asked for. A sheet has the same number whether it is drawn alone or with all the others. */
export async function drawSheets(
	analysis: Analysis,
	findings: readonly NumberedFinding[],
	choice: SheetChoice,
): Promise<Sheet[]> {
	const wiring: Sheet[] = [];
	const of = wiring.length + 1;
	const oneLine = choice === "wiring" ? [] : [drawOneLine(analysis, findings, { number: of, of })];
	return [...(choice === "one-line" ? [] : wiring), ...oneLine];
}
