// The grammar itself: nothing in it is ambiguous or out of reach, which is not looked at when a plan is read.
import { Lexer } from "chevrotain";
import { describe, expect, it } from "vitest";
import { LineParser } from "../../src/syntax/parser.ts";
import { lexed } from "../../src/syntax/tokens.ts";

describe("the line grammar", () => {
	it("passes all checks of the parser library", () => {
		expect(() => new LineParser(false)).not.toThrow();
	});

	it("has a lexer that passes all checks and needs no slow path", () => {
		const lexer = new Lexer(lexed, { ensureOptimizations: true, positionTracking: "onlyOffset" });
		expect(lexer.lexerDefinitionErrors).toEqual([]);
	});

	it("has a token for every character there is", () => {
		const lexer = new Lexer(lexed, { ensureOptimizations: true, positionTracking: "onlyOffset" });
		for (let code = 0; code < 0x10000; code += 1) {
			const { errors } = lexer.tokenize(`${String.fromCharCode(code)} x`);
			expect(errors.map(() => code.toString(16))).toEqual([]);
		}
	});
});
