// The quality of a sheet in figures. Nothing here mends anything: it says what is wrong and where.
import type { Sheet } from "../scene.ts";
import { isBroken, type Measure } from "./measure.ts";
import { readSheet } from "./sheet-facts.ts";
import { sheetMeasures } from "./sheet-measures.ts";
import { textMeasures } from "./text-measures.ts";
import { wireMeasures } from "./wire-measures.ts";

export { isBroken, type Measure } from "./measure.ts";

/** Every measure of a sheet, each with what was found and its limit. */
export function measureSheet(sheet: Sheet): Measure[] {
	const facts = readSheet(sheet);
	return [...textMeasures(facts), ...wireMeasures(facts), ...sheetMeasures(facts)];
}

/** The measures that are beyond their limit. */
export function brokenMeasures(sheet: Sheet): Measure[] {
	return measureSheet(sheet).filter(isBroken);
}
