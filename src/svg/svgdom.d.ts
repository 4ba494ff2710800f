// The part of svgdom that is used; the package brings no types of its own.
declare module "svgdom" {
	interface SvgNode {
		appendChild(node: SvgNode): void;
	}
	interface SvgAttribute {
		value: string;
	}
	interface SvgElementNode extends SvgNode {
		removeAttribute(name: string): void;
		setAttributeNode(attribute: SvgAttribute): void;
		readonly outerHTML: string;
	}
	interface SvgDocument {
		readonly documentElement: SvgElementNode;
		createTextNode(text: string): SvgNode;
		/** `local` keeps the name as it is written. */
		createAttributeNS(namespace: null, name: string, local: boolean): SvgAttribute;
	}
	interface SvgWindow {
		readonly document: SvgDocument;
	}
	/** A window whose document holds one empty `svg`. */
	export function createSVGWindow(): SvgWindow;
}
