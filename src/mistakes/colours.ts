// Why another colour of a wire misleads nobody.
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { type ColourRole, colourSuits, coloursOf } from "../handbook/colour-roles.ts";
import { colourParts, findColour } from "../handbook/colours.ts";

/** The reason why wires may have the colours they have now; undefined where there is none. */
export function judgeColours(wrong: Circuit, recoloured: readonly Conductor[]): string | undefined {
	if (recoloured.length === 0) return undefined;
	if (recoloured.every((conductor) => isSeriesLead(wrong, conductor) && saysPole(wrong, conductor)))
		return "it lies on the plus of one source and the minus of another: either colour says something true";
	return recoloured.every((conductor) => isBond(wrong, conductor) && isGreen(conductor))
		? "a bond to the metal may be green"
		: undefined;
}

/** Whether it leads from the minus of a source to the plus of another. */
function isSeriesLead({ sources }: Circuit, { ends }: Conductor): boolean {
	const sorts = ends.map(({ point }) => {
		const source = sources.find(
			({ hot, neutral }) => point !== undefined && (neutral === point || hot.includes(point)),
		);
		return source === undefined ? undefined : source.neutral === point ? "minus" : "plus";
	});
	return sorts.includes("minus") && sorts.includes("plus");
}

function saysPole({ plan: { settings } }: Circuit, { colour }: Conductor): boolean {
	const found = findColour(colour);
	const roles: readonly ColourRole[] = ["positive", "negative"];
	return (
		found !== undefined && roles.some((role) => colourSuits(coloursOf(settings.region, role, settings.rules), found))
	);
}

function isBond({ cableByTag, points }: Circuit, { cable, ends }: Conductor): boolean {
	return (
		cableByTag.get(cable ?? "")?.runSort === "bond" && ends.some(({ point }) => points[point ?? -1]?.role === "ground")
	);
}

function isGreen({ colour }: Conductor): boolean {
	const found = findColour(colour);
	return found !== undefined && colourParts(found).base === "green";
}
