// The one file that knows the SVG library: elements are made, nested and serialised through it, on a document without a browser.
import { create, withWindow } from "@svgdotjs/svg.js";
import { createSVGWindow, type SvgAttribute, type SvgDocument, type SvgElementNode } from "svgdom";
import { InternalFault } from "../base/certain.ts";
import { xmlAttribute, xmlText } from "./names.ts";

/** The elements that a drawing uses. */
export type Tag = "title" | "desc" | "style" | "defs" | "g" | "path" | "text" | "use";

/** Attributes by name; names are ours, never the plan's. */
export type Attributes = Readonly<Record<string, string | undefined>>;

/** An element that others can be put into. */
export interface Canvas {
	/** A new element inside this one, after those already there. */
	add(tag: Tag, attributes: Attributes, text?: string): Canvas;
	/** The text of this element. */
	write(text: string): void;
}

/** A part of the drawing: one group with what is painted in it. */
export interface Part {
	readonly attributes: Attributes;
	readonly paint: (canvas: Canvas) => void;
}

/**
 * The text of an SVG document: `parts` in their order inside a root with `attributes`, and before them what `head` puts there.
 * The head is written last, as it tells what the parts have used.
 */
export function drawDocument(
	attributes: () => Attributes,
	head: (root: Canvas) => void,
	parts: Iterable<Part>,
): string {
	const window = createSVGWindow();
	const { document } = window;
	const maker: Maker = { document, shared: new Map(oftenAlike.map((name) => [name, new Map()])) };
	const root = document.documentElement;
	// The empty document declares what the contract does not allow.
	root.removeAttribute("xmlns:xlink");
	root.removeAttribute("version");
	let body = "";
	withWindow(window, () => {
		// Part by part, so that a large drawing never stands in memory as a whole: a node weighs a hundred times its text.
		for (const part of parts) {
			const group: SvgElementNode = create("g");
			setAttributes(maker, group, part.attributes);
			part.paint(canvasOf(maker, group));
			body += group.outerHTML;
		}
		setAttributes(maker, root, attributes());
		head(canvasOf(maker, root));
	});
	const text = root.outerHTML;
	const end = text.lastIndexOf("</svg>");
	return text.slice(0, end) + body + text.slice(end);
}

function canvasOf(maker: Maker, element: SvgElementNode): Canvas {
	return {
		add: (tag, attributes, text) => {
			const child: SvgElementNode = create(tag);
			setAttributes(maker, child, attributes);
			if (text !== undefined) child.appendChild(maker.document.createTextNode(xmlText(text)));
			element.appendChild(child);
			// Most elements are never asked for more.
			return tag === "path" || tag === "text" || tag === "use" ? leaf : canvasOf(maker, child);
		},
		write: (text) => {
			element.appendChild(maker.document.createTextNode(xmlText(text)));
		},
	};
}

/** An element that nothing goes into. */
const leaf: Canvas = {
	add: () => {
		throw new InternalFault("a leaf of a drawing was asked to hold an element");
	},
	write: () => {
		throw new InternalFault("a leaf of a drawing was written to twice");
	},
};

/** Makes and fills the elements of one document. */
interface Maker {
	readonly document: SvgDocument;
	/** Attributes that many elements have alike, by name and value: one node serves them all, as it is only read. */
	readonly shared: ReadonlyMap<string, Map<string, SvgAttribute>>;
}

/** The attributes that take few values on a sheet. */
const oftenAlike = [
	"stroke",
	"fill",
	"color",
	"stroke-width",
	"stroke-dasharray",
	"stroke-linecap",
	"font-size",
	"font-weight",
	"text-anchor",
	"role",
	"href",
];

/**
 * Set as nodes: the library's own setter takes a value that looks like a colour or a number for one and rewrites it,
 * and the document's looks through all attributes first for one of the same name, which a record cannot hold.
 */
function setAttributes(maker: Maker, node: SvgElementNode, attributes: Attributes): void {
	for (const name in attributes) {
		const value = attributes[name];
		if (value !== undefined) node.setAttributeNode(attributeNode(maker, name, value));
	}
}

function attributeNode({ document, shared }: Maker, name: string, value: string): SvgAttribute {
	const alike = shared.get(name);
	const known = alike?.get(value);
	if (known !== undefined) return known;
	const attribute = document.createAttributeNS(null, name, true);
	// Every other value is made of figures and words of ours.
	attribute.value = name === "aria-label" ? xmlAttribute(value) : value;
	alike?.set(value, attribute);
	return attribute;
}
