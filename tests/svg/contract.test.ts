// The guard refuses everything outside the contract, and lets a real drawing pass.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkSvg } from "../../src/svg/index.ts";
import { idFrom, xmlText } from "../../src/svg/names.ts";

const shell = (inside: string, root = ""): string =>
	`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"${root}>${inside}</svg>`;

test("lets pass what the writer writes", () => {
	expect(() =>
		checkSvg(
			shell(
				'<g id="a_s_b"><path d="M0 0H1" fill="#ffffff" class="fe-sheet"></path><text x="1" y="2">a &lt; b &amp; c</text></g>',
			),
		),
	).not.toThrow();
});

test.each([
	["a script", "<script>f()</script>"],
	["a handler", '<g onload="f()"></g>'],
	["a style attribute", '<g style="fill:red"></g>'],
	["a foreign object", "<foreignObject></foreignObject>"],
	["an image", '<image href="#a"></image>'],
	["a link", '<a href="#a"></a>'],
	["an animation", '<animate attributeName="x"></animate>'],
	["a filter", '<filter id="f"></filter>'],
	["a reference elsewhere", '<use href="//host#a"></use>'],
	["a script reference", '<use href="javascript:f()"></use>'],
	["an old reference", '<use xlink:href="#a"></use>'],
	["a colour by address", '<path d="M0 0" fill="url(//host#a)"></path>'],
	["a colour by name", '<path d="M0 0" fill="red"></path>'],
	["another font", '<text x="1" y="1" font-family="Evil">x</text>'],
	["an attribute twice", '<g id="a" id="b"></g>'],
	["an attribute without quotes", "<g id=a></g>"],
	["a comment", "<!-- x -->"],
	["a processing instruction", "<?x y?>"],
	["a document type", "<!DOCTYPE svg>"],
	["character data", "<![CDATA[x]]>"],
	["an unknown entity", "<title>&nbsp;</title>"],
	["a bare ampersand", "<title>a & b</title>"],
	["a control character", "<title>\u0001</title>"],
	["a lone surrogate", "<title>\ud800</title>"],
	["a style sheet with an address", "<style>.fe-sheet{background:url(//h)}</style>"],
	["a style sheet with an import", '<style>@import "//h";</style>'],
	["wrong nesting", "<g><title></g></title>"],
	["an open element", "<g>"],
	["a closing without opening", "</g>"],
	["a second root", "</svg><svg>"],
])("refuses %s", (_, inside) => {
	expect(() => checkSvg(shell(inside))).toThrow("the drawing holds what it may not");
});

test.each([
	["nothing", ""],
	["text before", `x${shell("")}`],
	["text after", `${shell("")}x`],
	["another root", '<html xmlns="http://www.w3.org/2000/svg"></html>'],
	["a cut-off drawing", shell("<g></g>").slice(0, -4)],
])("refuses %s", (_, text) => {
	expect(() => checkSvg(text)).toThrow("the drawing holds what it may not");
});

test("time grows with the text, not faster", () => {
	const time = (text: string): number => {
		let best = Number.POSITIVE_INFINITY;
		for (let run = 0; run < 5; run++) {
			const start = performance.now();
			try {
				checkSvg(text);
			} catch {
				// Bad text may be refused; only the time counts here.
			}
			best = Math.min(best, performance.now() - start);
		}
		return best;
	};
	for (const make of [
		(n: number) => shell(`<text x="1" y="1">${"&amp;".repeat(n)}</text>`),
		(n: number) => shell(`<g ${" ".repeat(n)}>`),
		(n: number) => shell(`<path d="${"M0 0".repeat(n)}"></path>`),
	])
		expect(time(make(80_000))).toBeLessThan(8 * time(make(20_000)) + 5);
});

describe("ids", () => {
	test("are valid and differ when the names differ", () => {
		fc.assert(
			fc.property(
				fc.tuple(fc.string({ unit: "binary" }), fc.string()),
				fc.tuple(fc.string({ unit: "binary" }), fc.string()),
				(one, other) => {
					const [first, second] = [idFrom(...one), idFrom(...other)];
					expect(first).toMatch(/^[A-Za-z_][A-Za-z0-9_-]*$/);
					expect(first === second).toBe(one[0] === other[0] && one[1] === other[1]);
				},
			),
			{ numRuns: 2000 },
		);
	});

	test("of near names do not run into each other", () => {
		const names = ["a", "A", "a b", "a_20_b", "a_s_b", "1a", "_31_a", "-a", "a-", "_", "__proto__", ""];
		const ids = names.flatMap((one) => names.map((other) => idFrom(one, other)));
		expect(new Set(ids).size).toBe(ids.length);
	});
});

test("text is kept, but for what XML cannot hold", () => {
	fc.assert(
		fc.property(fc.string({ unit: "binary" }), (text) => {
			expect(() => checkSvg(shell(`<title>${xmlText(text).replace(/[&<>"]/g, "")}</title>`))).not.toThrow();
		}),
		{ numRuns: 1000 },
	);
	expect(xmlText("π \u{1f50c} ü")).toBe("π \u{1f50c} ü");
	expect(xmlText("a\ud83db")).toBe("a\ufffdb");
});
