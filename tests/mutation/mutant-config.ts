// How `npm run mutation` runs: the rules are loaded with all their mutants in them, and their tests are taken down to be run at will.
import { join } from "node:path";
import { defineConfig } from "vitest/config";
import { instrumentRules } from "./rule-sources.ts";

const here = import.meta.dirname;
const sources = instrumentRules();
const collector = join(here, "collector.ts");
const kept = join(here, "kept.ts");
const pipeline = join(here, "../../src/pipeline.ts");

/** What the pipeline takes from `kept.ts` instead. */
const keptModules: ReadonlySet<string> = new Set([
	"./analysis/analysis.ts",
	"./circuit/build-circuit.ts",
	"./plan/build-plan.ts",
	"./rules/index.ts",
	"./syntax/sources.ts",
]);

export default defineConfig({
	test: {
		root: join(here, "../.."),
		include: ["tests/mutation/mutants.run.ts"],
		testTimeout: 0,
		disableConsoleIntercept: true,
		reporters: ["dot"],
	},
	plugins: [
		{
			name: "mutants",
			enforce: "pre",
			resolveId: (source, importer) => {
				if (source === "vitest" && importer !== undefined && !importer.startsWith(here)) return collector;
				return importer === pipeline && keptModules.has(source) ? kept : undefined;
			},
			transform: (_code, id) => {
				const instrumented = sources.get(id);
				if (instrumented === undefined) return undefined;
				const board = JSON.stringify(join(here, "switchboard.ts"));
				return { code: `import { $on, $tick, RoundMap as WeakMap } from ${board};\n${instrumented.code}`, map: null };
			},
		},
	],
});
