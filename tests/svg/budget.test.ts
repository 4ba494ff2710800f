// How much a drawing weighs: elements and bytes a device, on a plan of fifty devices; and that its parts are drawn with few elements.
import { expect, test } from "vitest";
import { drawSheets } from "../../src/drawing/sheet-set.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { writeSvg } from "../../src/svg/index.ts";

const kinds = ["gfci", "receptacle", "receptacle", "switch", "light 9 W"];
const circuits = Array.from({ length: 10 }, (_, circuit) => [
	`circuit c${circuit} from LC breaker 20 A by 12-2`,
	...kinds.map((kind, hop) => `  ${4 + hop} ft to d${circuit}x${hop}: ${kind}`),
]).flat();
const plan = ["inlet shore 50 A 120 V", "panel LC main 50 A spaces 20 from shore by 6-2, 12 ft", ...circuits, ""].join(
	"\n",
);

test("fifty devices take at most 80 elements and 15 kB each, on all sheets together", async () => {
	const { analysis, findings } = checkPlan(plan, "fifty");
	const texts: string[] = [];
	for await (const sheet of drawSheets(analysis, findings, "all")) texts.push(await writeSvg(sheet, "fifty"));
	expect(texts.length).toBeGreaterThan(1);
	const bytes = texts.reduce((sum, text) => sum + new TextEncoder().encode(text).length, 0);
	const elements = texts.reduce((sum, text) => sum + (text.match(/<[a-z]/g) ?? []).length, 0);
	expect(elements / 50).toBeGreaterThan(10);
	expect(elements / 50).toBeLessThanOrEqual(80);
	expect(bytes / 50).toBeLessThanOrEqual(15_000);
});
