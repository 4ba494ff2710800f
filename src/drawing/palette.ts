// What every named paint and conductor colour looks like on light and on dark paper. Own palette; contrast is held by the measures.
import { colourParts, findColour } from "../handbook/colours.ts";
import type { Paint } from "./scene.ts";

export type Theme = "light" | "dark";

/** A light and a dark value, `#rrggbb`. */
export type Tone = readonly [light: string, dark: string];

/** A paint of the sheet, or one that only the writer of wires and symbols uses. */
export type Pigment = Paint | "casing" | "joint" | "warning";

/** The tone of a paint. */
export function paintTone(paint: Pigment): Tone {
	return paints[paint];
}

/** The value of a paint in one theme. */
export function paintValue(paint: Pigment, theme: Theme): string {
	return paints[paint][theme === "light" ? 0 : 1];
}

/** How a conductor of that colour is painted: its core, and a stripe or a pattern over it. An unknown colour is grey. */
export function conductorLook(colour: string): ConductorLook {
	const known = findColour(colour);
	if (known === undefined) return { core: "grey" };
	if (known === "green-yellow") return { core: "green", stripe: "yellow", pattern: "blocks" };
	const { base, stripe } = colourParts(known);
	if (base === "bare") return { core: "bare", pattern: "ticks" };
	return stripe === undefined ? { core: base } : { core: base, stripe, pattern: "line" };
}
export type ConductorLook =
	| { readonly core: Hue; readonly pattern?: undefined }
	/** `blocks`: green-and-yellow, half and half along the run; `line`: a stripe along it. */
	| { readonly core: Hue; readonly pattern: "blocks" | "line"; readonly stripe: Hue }
	/** Bare metal. */
	| { readonly core: Hue; readonly pattern: "ticks" };
export type Hue = keyof typeof hues;

/** The tone of one hue of insulation. */
export function hueTone(hue: Hue): Tone {
	return hues[hue];
}

/** A sheath's tones: its surface and its edge. An unknown colour is grey. */
export function jacketTones(colour: string): { readonly name: string; readonly surface: Tone; readonly edge: Tone } {
	const name = isJacket(colour) ? colour : "grey";
	const [surface, edge] = jackets[name];
	return { name, surface, edge };
}

/** Contrast of two `#rrggbb` values by the formula of WCAG 2: 1 to 21. */
export function contrast(one: string, other: string): number {
	const [first, second] = [luminance(one), luminance(other)];
	return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
}

function isJacket(colour: string): colour is keyof typeof jackets {
	return Object.hasOwn(jackets, colour);
}

/** Relative luminance of WCAG 2. */
function luminance(value: string): number {
	const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((start) => {
		const share = Number.parseInt(value.slice(start, start + 2), 16) / 255;
		return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** No light value of one property has two dark ones: a drawing finds the dark value by the light one. */
const paints: Readonly<Record<Pigment, Tone>> = {
	ink: ["#1a1d21", "#e6e9ed"],
	soft: ["#4a515a", "#b7bec7"],
	faint: ["#8a9099", "#6b737d"],
	paper: ["#ffffff", "#14181d"],
	enclosure: ["#f7f9fb", "#1b2129"],
	panel: ["#f2f5f9", "#1b2129"],
	item: ["#fefefe", "#242c36"],
	gland: ["#c9d0d8", "#5d6772"],
	brass: ["#d9a03f", "#dba440"],
	silver: ["#dfe4e9", "#c4cbd3"],
	green: ["#2f9a58", "#37a862"],
	dark: ["#4a515b", "#7d8791"],
	// On what is bright in both themes: screws, the yellow of a warning.
	engraving: ["#1b1e22", "#14181d"],
	"hot-bus": ["#c98d50", "#8c5e31"],
	"neutral-bar": ["#e1e6eb", "#3a4450"],
	"ground-bar": ["#bfe2ca", "#22513a"],
	caution: ["#fff5d2", "#352b0f"],
	"caution-line": ["#9a7400", "#c79a2c"],
	fault: ["#b00020", "#ff8a8a"],
	"fault-soft": ["#fadde1", "#4d1f27"],
	casing: ["#3a3f47", "#c9ced6"],
	joint: ["#d6dbe1", "#46505b"],
	warning: ["#f2c501", "#e0b93a"],
};

const hues = {
	black: ["#16181c", "#05070a"],
	brown: ["#6a3a12", "#a5672f"],
	red: ["#d01824", "#ff5a5f"],
	orange: ["#db6100", "#ff9a3d"],
	yellow: ["#f2c500", "#f7da4a"],
	green: ["#127a3e", "#3dbe6b"],
	blue: ["#2468d0", "#6aa5ff"],
	violet: ["#5b2a8c", "#b07ce8"],
	grey: ["#6a6e75", "#8d939b"],
	white: ["#fdfefe", "#f7f7f5"],
	pink: ["#e2649c", "#ffa3c7"],
	turquoise: ["#12a0a0", "#4fd6d2"],
	tan: ["#c9a36b", "#d8ba8a"],
	bare: ["#c27a3c", "#d9a06c"],
} as const satisfies Readonly<Record<string, Tone>>;

/** Surface and edge. The trade's sheath colours, paled so that the strands inside lead. */
const jackets = {
	white: [
		["#fdfdfd", "#262d35"],
		["#8a909a", "#a9b1ba"],
	],
	yellow: [
		["#fbf1c4", "#3d3716"],
		["#a98f2c", "#c2a945"],
	],
	orange: [
		["#fbe0c2", "#472f17"],
		["#b8742b", "#cf8f4a"],
	],
	grey: [
		["#e4e7eb", "#2c323a"],
		["#7c848d", "#8d959e"],
	],
	black: [
		["#c3c8ce", "#0b0d10"],
		["#3a3f48", "#8d959e"],
	],
	blue: [
		["#dbe7fa", "#1c2c46"],
		["#4a78bd", "#6f9bdc"],
	],
	red: [
		["#f9dcdd", "#452023"],
		["#b9474e", "#d8767b"],
	],
} as const satisfies Readonly<Record<string, readonly [Tone, Tone]>>;
