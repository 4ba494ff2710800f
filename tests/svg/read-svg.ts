// SVG text read by a real XML parser into plain data, for tests.
import { SaxesParser } from "saxes";

export interface ReadElement {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string>>;
	readonly children: ReadElement[];
	text: string;
}

/** The root of a document; throws on anything that is not well-formed or that the contract forbids outright. */
export function readSvg(svg: string): ReadElement {
	const parser = new SaxesParser({ xmlns: false });
	const root: ReadElement = { name: "", attributes: {}, children: [], text: "" };
	const open = [root];
	const refuse = (what: string) => () => {
		throw new Error(what);
	};
	parser.on("error", (error) => {
		throw error;
	});
	parser.on("doctype", refuse("doctype"));
	parser.on("comment", refuse("comment"));
	parser.on("cdata", refuse("cdata"));
	parser.on("processinginstruction", refuse("processing instruction"));
	parser.on("opentag", (tag) => {
		const attributes = Object.fromEntries(Object.entries(tag.attributes).map(([name, value]) => [name, String(value)]));
		const element: ReadElement = { name: tag.name, attributes, children: [], text: "" };
		open.at(-1)?.children.push(element);
		open.push(element);
	});
	parser.on("text", (text) => {
		const top = open.at(-1);
		if (top !== undefined) top.text += text;
	});
	parser.on("closetag", () => open.pop());
	parser.write(svg).close();
	const [svgElement] = root.children;
	if (svgElement === undefined) throw new Error("no root");
	return svgElement;
}

/** An element and everything in it. */
export function walk(element: ReadElement): ReadElement[] {
	return [element, ...element.children.flatMap(walk)];
}
