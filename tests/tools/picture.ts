// SVG text to PNG, for looking at drawings in tests and by hand. The rasteriser reads no media queries, so dark is put in.
import { readFileSync } from "node:fs";
import { Resvg } from "@resvg/resvg-js";

/** The picture of an SVG text, `zoom` pixels a unit. `dark` shows what a screen with a dark preference shows. */
export function pictureOf(svg: string, zoom: number, theme: "light" | "dark" = "light"): Uint8Array {
	const text = theme === "dark" ? withDarkRules(svg) : svg;
	const width = Number(/viewBox="0 0 ([\d.]+)/.exec(text)?.[1] ?? 1000);
	return new Resvg(text, {
		fitTo: { mode: "width", value: Math.round(width * zoom) },
		font: { fontFiles: pictureFonts, loadSystemFonts: false, defaultFontFamily: "Liberation Sans" },
	})
		.render()
		.asPng();
}

/** Whether the font the pictures are made with is installed. */
export const fontsThere: boolean = fontsReadable();

const folder = "/usr/share/fonts/truetype/liberation";
/** The font files that pictures are made with. */
export const pictureFonts: string[] = [`${folder}/LiberationSans-Regular.ttf`, `${folder}/LiberationSans-Bold.ttf`];

/** Puts the dark value of the style sheet in place of each light one, as a screen would. */
function withDarkRules(svg: string): string {
	const darks = new Map<string, string>();
	for (const [, property = "", light = "", dark = ""] of svg.matchAll(/\[(\w+)=\\(#\w+)\]\{\w+:(#\w+)\}/g))
		darks.set(`${property}="${light}"`, `${property}="${dark}"`);
	const ink = /\{\.fe-sheet\{color:(#\w+)\}/.exec(svg)?.[1] ?? "#000000";
	return svg
		.replace(/(<svg [^>]*)color="#\w+"/, `$1color="${ink}"`)
		.replace(/(?:fill|stroke|color)="#\w+"/g, (attribute) => darks.get(attribute) ?? attribute);
}

function fontsReadable(): boolean {
	try {
		return readFileSync("/usr/share/fonts/truetype/liberation/LiberationSans-Regular.ttf").length > 0;
	} catch {
		return false;
	}
}
