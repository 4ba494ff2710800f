// The runner of the mutants in small: one source with its mutants in it, and what each does when it is on.
import { describe, expect, test } from "vitest";
import { instrument } from "./instrument.ts";
import { mutantsOfRules } from "./rule-sources.ts";

const source = `export function grade(amperes: number, isOld: boolean): readonly string[] {
	const told: string[] = [];
	if (amperes > 20 && !isOld) told.push("too much");
	else told.push("fits");
	return told.some((word) => word === "fits") ? [] : [told.join()];
}
`;

/** What the source answers with one of its mutants on; -1 is none. */
function answer(active: number, amperes: number, isOld: boolean): unknown {
	const { code } = instrument(source, "grade.ts", 0);
	const plain = code.replaceAll(/: (?:readonly )?(?:string\[\]|number|boolean)/g, "").replace("export ", "");
	const run: unknown = new Function("$on", "$tick", "amperes", "isOld", `${plain}\nreturn grade(amperes, isOld);`);
	if (typeof run !== "function") throw new Error("no function");
	return Reflect.apply(run, undefined, [(id: number) => id === active, () => {}, amperes, isOld]);
}

describe("a source with all its mutants in it", () => {
	const { mutants } = instrument(source, "grade.ts", 0);

	test("does as it did while none is on", () => {
		expect(answer(-1, 21, false)).toEqual(["too much"]);
		expect(answer(-1, 20, false)).toEqual([]);
		expect(answer(-1, 21, true)).toEqual([]);
	});

	test("has each operator where it fits, and its line", () => {
		expect(mutants.map(({ operator, line }) => `${line} ${operator}`).toSorted()).toEqual([
			"3 and, or",
			"3 boundary moved",
			"3 comparison flipped",
			"3 condition negated",
			"3 statement removed",
			"4 statement removed",
			"5 comparison flipped",
			"5 condition negated",
			"5 list emptied",
			"5 method",
		]);
	});

	test("every mutant but one shows on five calls", () => {
		const calls = [
			[21, false],
			[20, false],
			[21, true],
			[19, false],
			[20, true],
		] as const;
		const quiet = mutants.filter(({ id }) =>
			calls.every(([amperes, isOld]) => {
				const healthy = JSON.stringify(answer(-1, amperes, isOld));
				return JSON.stringify(answer(id, amperes, isOld)) === healthy;
			}),
		);
		// Of a list with one word in it, some and every say the same.
		expect(quiet.map(({ operator }) => operator)).toEqual(["method"]);
	});
});

describe("the rules", () => {
	test("have mutants in every file that decides something, each with a number of its own", () => {
		const mutants = mutantsOfRules();
		expect(mutants.length).toBeGreaterThan(1_000);
		expect(new Set(mutants.map(({ id }) => id)).size).toBe(mutants.length);
	});
});
