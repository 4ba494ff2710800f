// The part of svgdom that is used; the package brings no types of its own.
declare module "svgdom" {
	interface SvgElementNode {
		setAttribute(name: string, value: string): void;
		removeAttribute(name: string): void;
		readonly outerHTML: string;
	}
	interface SvgDocument {
		readonly documentElement: SvgElementNode;
	}
	interface SvgWindow {
		readonly document: SvgDocument;
	}
	/** A window whose document holds one empty `svg`. */
	export function createSVGWindow(): SvgWindow;
}
