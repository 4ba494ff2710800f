// `ferrule new`: a commented starter as a new file. What stands there already is never replaced.
import { extname, resolve } from "node:path";
import { replaceFile } from "../files/replace.ts";
import { visible } from "../report/visible.ts";
import { firstStarter, starters } from "../starters.ts";
import { status } from "../status.ts";
import { nameOf, planExtension } from "./inputs.ts";
import type { Option, Verb } from "./verb.ts";

const fromOption: Option = {
	name: "from",
	value: { word: "STARTER", choices: starters.map((starter) => starter.name) },
	summary: `what to begin from; ${firstStarter.name} if not said`,
};

export const newPlan: Verb = {
	name: "new",
	summary: "begin a plan from a commented starter",
	operands: { words: "FILE", least: 1, most: 1 },
	about: [
		"Writes a starter to FILE: a small plan that checks and draws as it stands, with comments that teach the notation. A name without an extension gets .ferrule. A file that is there already stays as it is.",
	],
	options: [fromOption],
	examples: [
		{ call: "ferrule new van.ferrule", says: "one circuit on a bench" },
		{ call: "ferrule new van.ferrule --from camper-shore", says: "a camper fed by shore power" },
	],
	run: async (call, world) => {
		const starter = starters.find(({ name }) => name === call.options.get(fromOption.name)) ?? firstStarter;
		const [operand = ""] = call.operands;
		const given = extname(operand) === "" ? operand + planExtension : operand;
		const path = resolve(world.folder, given);
		const name = nameOf(given, world);
		const failure = replaceFile(world.files, world.writer, path, starter.text, { inputs: [], replace: "never" });
		if (failure !== undefined) {
			world.messages.write(`ferrule: ${visible(name)} cannot be written: ${failure.why}.\n`);
			return failure.status;
		}
		world.messages.write(`wrote ${visible(name)} from ${starter.name}; next: ferrule check ${visible(name)}\n`);
		return status.fine;
	},
};
