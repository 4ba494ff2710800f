// Draws a plan text's direct-current sheet for a test, and holds it against the circuit.
import type { Circuit } from "../../../src/circuit/circuit.ts";
import { marksInPlace } from "../../../src/drawing/bounds.ts";
import type { Mark, Sheet, WireMark, XY } from "../../../src/drawing/scene.ts";
import { drawSheets } from "../../../src/drawing/sheet-set.ts";
import { partSystems } from "../../../src/drawing/system-parts.ts";
import { type CheckResult, checkPlan } from "../../../src/pipeline.ts";

/** A plan with its direct-current sheet; undefined where it has none. */
export interface Drawn {
	readonly circuit: Circuit;
	readonly findings: CheckResult["findings"];
	readonly sheet: Sheet | undefined;
}

/** Draws it as `draw --sheet direct-current` does: checked first. */
export async function draw(text: string): Promise<Drawn> {
	const { analysis, findings } = checkPlan(text, "test.ferrule");
	const sheets: Sheet[] = [];
	for await (const sheet of drawSheets(analysis, findings, "direct-current")) sheets.push(sheet);
	return { circuit: analysis.circuit, findings, sheet: sheets[0] };
}

/** All marks of a sheet in their places. */
export function marksOf(sheet: Sheet | undefined): Mark[] {
	return (sheet?.groups ?? []).flatMap((group) => [...marksInPlace(group)]);
}

/** All texts of a sheet. */
export function textsOf(sheet: Sheet | undefined): string[] {
	return marksOf(sheet).flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
}

/** Names of the sheet's groups. */
export function groupNames(sheet: Sheet | undefined): string[] {
	return (sheet?.groups ?? []).map(({ name }) => name);
}

/** What of the direct-current part is not drawn from point to point, in words; empty when all is. */
export function untruths({ circuit, sheet }: Drawn): string[] {
	const part = partSystems(circuit).direct;
	if (part === undefined || sheet === undefined) return ["there is no sheet"];
	const marks = marksOf(sheet);
	const wires = new Map<string, WireMark[]>();
	for (const mark of marks) if (mark.kind === "wire") wires.set(mark.of, [...(wires.get(mark.of) ?? []), mark]);
	const wrong: string[] = [];
	for (const conductor of circuit.conductors) {
		if (!part.shows.conductor(conductor.index)) continue;
		const tips = (wires.get(conductor.name) ?? []).flatMap(({ points }) => [points[0], points.at(-1)]);
		for (const { point, enclosure } of conductor.ends) {
			if (!part.circuit.enclosureByName.has(enclosure.name)) continue;
			const name = point === undefined ? undefined : circuit.points[point]?.name;
			if (name === undefined) {
				if (!marks.some((mark) => mark.kind === "symbol" && mark.of === conductor.name))
					wrong.push(`${conductor.name} is on nothing in ${enclosure.name}, and no mark says so`);
				continue;
			}
			if (!tips.some((tip) => tip !== undefined && marks.some((mark) => isOn(tip, mark, name))))
				wrong.push(`${conductor.name} should end on ${name}`);
		}
	}
	for (const box of part.circuit.enclosures)
		if (!groupNames(sheet).some((name) => name === `box ${box.name}`)) wrong.push(`${box.name} is not drawn`);
	return wrong;
}

function isOn(tip: XY, mark: Mark, name: string): boolean {
	if (mark.of !== name) return false;
	if (mark.kind === "circle" && mark.as === "terminal") return near(tip, mark, 0.8);
	if (mark.kind === "symbol") return near(tip, mark, 0.8);
	if (mark.kind === "rectangle" && mark.as === "item")
		return tip.x > mark.x && tip.x < mark.x + mark.width && tip.y > mark.y && tip.y < mark.y + mark.height;
	return false;
}

function near(one: XY, other: XY, most: number): boolean {
	return Math.abs(one.x - other.x) <= most && Math.abs(one.y - other.y) <= most;
}
