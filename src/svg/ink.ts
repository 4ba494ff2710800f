// Paints as attributes: literal values are the light theme; the style sheet turns each value that was used into its dark one.
import { InternalFault } from "../base/certain.ts";
import { type Hue, hueTone, jacketTones, type Pigment, paintTone, type Tone } from "../drawing/palette.ts";
import type { Attributes } from "./canvas.ts";

/** Gives paint attributes and remembers what the dark theme must restate. */
export interface InkPot {
	fill(paint: Pigment): Attributes;
	/** A fill inside a symbol's definition. */
	symbolFill(paint: Pigment): Attributes;
	stroke(paint: Pigment): Attributes;
	/** Both on one element; none where there is neither. */
	fillAndStroke(fill: Pigment | undefined, stroke: Pigment | undefined): Attributes;
	/** What `currentColor` means inside. */
	colour(paint: Pigment): Attributes;
	/** A conductor's insulation. */
	hue(hue: Hue): Attributes;
	jacketSurface(colour: string): Attributes;
	jacketEdge(colour: string): Attributes;
	/** The style sheet for everything given so far. */
	styleSheet(): string;
}

/** An ink pot from which nothing has been taken. */
export function openInkPot(): InkPot {
	const darks = new Map<string, string>();
	const inSymbols = new Set<string>();
	const take = (property: "fill" | "stroke" | "color", [light, dark]: Tone): Attributes => {
		const key = `${property}=\\${light}`;
		const known = darks.get(key);
		if (known === undefined) darks.set(key, `${property}:${dark}`);
		// One light value can become only one dark value: the palette keeps them apart.
		else if (known !== `${property}:${dark}`) throw new InternalFault(`${key} has two dark values`);
		return { [property]: light };
	};
	const fill = (paint: Pigment): Attributes => take("fill", paintTone(paint));
	const symbolFill = (paint: Pigment): Attributes => {
		inSymbols.add(`fill=\\${paintTone(paint)[0]}`);
		return fill(paint);
	};
	const stroke = (paint: Pigment): Attributes => take("stroke", paintTone(paint));
	return {
		fill,
		symbolFill,
		stroke,
		fillAndStroke: (inside, edge) => ({
			...(inside === undefined ? {} : fill(inside)),
			...(edge === undefined ? {} : stroke(edge)),
		}),
		colour: (paint) => take("color", paintTone(paint)),
		hue: (hue) => take("stroke", hueTone(hue)),
		jacketSurface: (colour) => take("stroke", jacketTones(colour).surface),
		jacketEdge: (colour) => take("stroke", jacketTones(colour).edge),
		styleSheet: () => {
			// Sorted, so that the order of painting does not show in it.
			const rules = [...darks]
				.sort(([one], [other]) => (one < other ? -1 : 1))
				.map(([key, rule]) => {
					// What is used lives in a tree of its own, where nothing stands inside the sheet.
					const symbols = inSymbols.has(key) ? `,.fe-symbol [${key}]` : "";
					return `.fe-sheet [${key}]${symbols}{${rule}}`;
				});
			const ink = `.fe-sheet{color:${paintTone("ink")[1]}}`;
			return `.fe-sheet{print-color-adjust:exact;forced-color-adjust:none}@media screen and (prefers-color-scheme:dark){${ink}${rules.join("")}}`;
		},
	};
}
