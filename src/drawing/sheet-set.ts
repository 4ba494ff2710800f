// The set of sheets of a plan, numbered: the wiring sheets, then the one-line.
import type { Analysis } from "../analysis/analysis.ts";
import type { NumberedFinding } from "../base/finding.ts";
import { alternatingPart } from "./alternating-part.ts";
import { drawOneLine } from "./one-line/one-line-sheet.ts";
import type { Sheet } from "./scene.ts";
import { drawWiring } from "./wiring/draw-wiring.ts";
import { shareSheets } from "./wiring/feed-graph.ts";

/** The sheets that can be asked for. */
export type SheetChoice = "all" | "wiring" | "one-line";

/** The sheets asked for, one after the other. A sheet has the same number whether it is drawn alone or with all the others. */
export async function* drawSheets(
	analysis: Analysis,
	findings: readonly NumberedFinding[],
	choice: SheetChoice,
): AsyncGenerator<Sheet> {
	let count = 0;
	if (choice !== "one-line")
		for await (const sheet of drawWiring(analysis, findings, { before: 0, after: 1 })) {
			count += 1;
			yield sheet;
		}
	if (choice === "wiring") return;
	const last = (choice === "all" ? count : shareSheets(alternatingPart(analysis.circuit).circuit).length) + 1;
	yield drawOneLine(analysis, findings, { number: last, of: last });
}
