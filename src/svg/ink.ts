// Paints as attributes: literal values are the light theme, a class carries the dark one; the style sheet holds only what was used.
import { type Hue, hueTone, jacketTones, type Pigment, paintTone, type Tone } from "../drawing/palette.ts";
import type { Attributes } from "./canvas.ts";

/** Gives paint attributes and remembers which classes the dark theme must restate. */
export interface InkPot {
	fill(paint: Pigment): Attributes;
	stroke(paint: Pigment): Attributes;
	/** Both on one element. */
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
	const rules = new Map<string, string>();
	const take = (property: "fill" | "stroke" | "color", name: string, tone: Tone): Attributes => {
		const className = `fe-${property[0]}-${name}`;
		rules.set(className, `${property}:${tone[1]}`);
		return { [property]: tone[0], class: className };
	};
	const pot: Omit<InkPot, "fillAndStroke" | "styleSheet"> = {
		fill: (paint) => take("fill", paint, paintTone(paint)),
		stroke: (paint) => take("stroke", paint, paintTone(paint)),
		colour: (paint) => take("color", paint, paintTone(paint)),
		hue: (hue) => take("stroke", `hue-${hue}`, hueTone(hue)),
		jacketSurface: (colour) => {
			const tones = jacketTones(colour);
			return take("stroke", `jacket-${tones.name}`, tones.surface);
		},
		jacketEdge: (colour) => {
			const tones = jacketTones(colour);
			return take("stroke", `sheath-${tones.name}`, tones.edge);
		},
	};
	return {
		...pot,
		fillAndStroke: (fill, stroke) => {
			const inside: Attributes = fill === undefined ? {} : pot.fill(fill);
			const outside: Attributes = stroke === undefined ? {} : pot.stroke(stroke);
			return { ...inside, ...outside, class: joinClasses(inside.class, outside.class) };
		},
		styleSheet: () => {
			// Sorted, so that the order of painting does not show in it.
			const dark = [...rules]
				.sort(([one], [other]) => (one < other ? -1 : 1))
				.map(([name, rule]) => `.${name}{${rule}}`);
			return `.fe-sheet{print-color-adjust:exact;forced-color-adjust:none}@media screen and (prefers-color-scheme:dark){${dark.join("")}}`;
		},
	};
}

function joinClasses(...names: readonly (string | undefined)[]): string | undefined {
	const used = names.filter((name) => name !== undefined);
	return used.length === 0 ? undefined : used.join(" ");
}
