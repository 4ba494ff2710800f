// A plan of 2,000 boxes in a process of its own, so that its memory is its own too. Prints what it measured as JSON.
import { drawSheets } from "../../src/drawing/sheet-set.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { writeSvg } from "../../src/svg/index.ts";
import { planOf } from "./plans.ts";

/** Seconds and megabytes of one run. */
export interface LargeFigures {
	/** Parsed, checked and laid out. */
	readonly laidOut: number;
	/** Parsed, checked, laid out and all sheets written, one at a time. */
	readonly written: number;
	readonly sheets: number;
	/** The most memory the process held. */
	readonly memory: number;
}

/** Measures a plan of `boxes` boxes, from cold. */
export async function measureLarge(boxes: number): Promise<LargeFigures> {
	const text = planOf(boxes);
	const start = performance.now();
	const { analysis, findings } = checkPlan(text, "large.ferrule");
	const checked = performance.now();
	let sheets = 0;
	for await (const _ of drawSheets(analysis, findings, "all")) sheets += 1;
	const laidOut = performance.now();
	for await (const sheet of drawSheets(analysis, findings, "all")) await writeSvg(sheet, "large.ferrule");
	const written = performance.now();
	return {
		laidOut: (laidOut - start) / 1000,
		written: (checked - start + written - laidOut) / 1000,
		sheets,
		memory: process.resourceUsage().maxRSS / 1024,
	};
}
