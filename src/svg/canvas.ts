// The one file that knows the SVG library: elements are made and nested through it, on a document without a browser.
import { create, Element, G, Path, Rect, Text, Use, withWindow } from "@svgdotjs/svg.js";
import { createSVGWindow } from "svgdom";
import { xmlAttribute, xmlText } from "./names.ts";

/** The elements that a drawing uses. */
export type Tag = "title" | "desc" | "style" | "defs" | "g" | "path" | "rect" | "circle" | "text" | "use";

/** Attributes by name; names are ours, never the plan's. */
export type Attributes = Readonly<Record<string, string | undefined>>;

/** An element that others can be put into. */
export interface Canvas {
	/** A new element inside this one, after those already there. */
	add(tag: Tag, attributes: Attributes, text?: string): Canvas;
	/** The text of this element. */
	write(text: string): void;
}

/** The text of an SVG document whose root has `attributes` and whose content is put in by `paint`. */
export function drawDocument(attributes: Attributes, paint: (root: Canvas) => void): string {
	const window = createSVGWindow();
	const root = window.document.documentElement;
	// The empty document declares what the contract does not allow.
	root.removeAttribute("xmlns:xlink");
	root.removeAttribute("version");
	withWindow(window, () => {
		const element = new Element(root);
		setAttributes(element, attributes);
		paint(canvasOf(element));
	});
	return root.outerHTML;
}

function canvasOf(element: Element): Canvas {
	return {
		add: (tag, attributes, text) => {
			const child = elementOf(tag);
			setAttributes(child, attributes);
			if (text !== undefined) writeText(child, text);
			element.node.appendChild(child.node);
			return canvasOf(child);
		},
		write: (text) => writeText(element, text),
	};
}

function elementOf(tag: Tag): Element {
	switch (tag) {
		case "g":
			return new G();
		case "path":
			return new Path();
		case "rect":
			return new Rect();
		case "text":
			return new Text();
		case "use":
			return new Use();
		default:
			return new Element(create(tag));
	}
}

function writeText(element: Element, text: string): void {
	if (element instanceof Text) element.plain(xmlText(text));
	else element.words(xmlText(text));
}

/** Set on the node itself: the library's own setter takes a value that looks like a colour or a number for one and rewrites it. */
function setAttributes(element: Element, attributes: Attributes): void {
	for (const [name, value] of Object.entries(attributes))
		if (value !== undefined) element.node.setAttribute(name, xmlAttribute(value));
}
