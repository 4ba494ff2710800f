// How `npm run mutation` runs: the rules are loaded with all their mutants in them, and their tests are taken down to be run at will.
import { join } from "node:path";
import { defineConfig } from "vitest/config";
import { instrumentRules } from "./rule-sources.ts";

const here = import.meta.dirname;
const sources = instrumentRules();
const collector = join(here, "collector.ts");

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
			resolveId: (source, importer) =>
				source === "vitest" && importer !== undefined && !importer.startsWith(here) ? collector : undefined,
			transform: (_code, id) => {
				const instrumented = sources.get(id);
				if (instrumented === undefined) return undefined;
				const board = JSON.stringify(join(here, "switchboard.ts"));
				return { code: `import { $on, $tick } from ${board};\n${instrumented.code}`, map: null };
			},
		},
	],
});
