// `ferrule size`: the thinnest cable that keeps every limit of a circuit at once, and what to write for it.
import { didYouMean } from "../../base/nearest.ts";
import { type SizedPlan, writeSizes, writeSizesJson } from "../report/sizes.ts";
import { writeText } from "../report/text.ts";
import { visible } from "../report/visible.ts";
import { status } from "../status.ts";
import { readInputs } from "./inputs.ts";
import { judge } from "./judge.ts";
import { asOption, colourOption, libraryOption, stdinNameOption } from "./options.ts";
import { chooseSetting } from "./setting.ts";
import { choiceOf, type Option, type Verb } from "./verb.ts";

const sizeForms = ["text", "json"] as const;
const asSizeOption: Option = {
	name: asOption.name,
	value: { word: "FORM", choices: sizeForms },
	summary: "text to read, json for programs",
};

export const size: Verb = {
	name: "size",
	summary: "the thinnest cable and the right protection for each circuit",
	operands: { words: "PLAN [CIRCUIT]", least: 1, most: 2 },
	about: [
		"Tries usual sizes on each circuit of a PLAN, or on one CIRCUIT, from the thinnest on, until one keeps every limit at once: what its device may be at most, and what may be lost on the way, solved with all else as it is. It names the limit that governs, what the present cable would do for, the smallest standard rating that is enough for the fixed loads, and the line to write.",
		"A circuit with outlets is counted with four fifths of its device's rating drawn at the farthest of them. The plan itself is never changed. The status is 0 whatever was found; `ferrule check` judges.",
	],
	options: [asSizeOption, libraryOption, stdinNameOption, colourOption],
	examples: [
		{ call: "ferrule size van.ferrule", says: "every circuit" },
		{ call: "ferrule size van.ferrule --as json", says: "for programs; see grammar/sizes.schema.json" },
	],
	run: async (call, world) => {
		const [plan = "", circuit] = call.operands;
		const inputs = await readInputs({ ...call, operands: [plan] }, world);
		if (inputs.status !== status.fine) return inputs.status;
		const sized: SizedPlan[] = [];
		let worst: number = status.fine;
		for (const input of inputs.plans) {
			if (await world.interrupted()) return status.interrupted;
			const judgement = judge(input, world);
			if (judgement.checked === undefined) {
				world.messages.write(writeText([judgement], chooseSetting(call, world, world.messages)));
				worst = status.findings;
				continue;
			}
			const { sizes, circuits, units } = await judgement.checked.sizes(circuit);
			if (circuit !== undefined && !circuits.some((name) => name.toLowerCase() === circuit.toLowerCase())) {
				const hint = didYouMean(circuit, circuits) || `It has: ${circuits.join(", ") || "none"}.`;
				world.messages.write(`ferrule: ${visible(`${input.name} has no circuit \`${circuit}\`. ${hint}`)}\n`);
				return status.call;
			}
			sized.push({ file: input.name, text: input.text ?? "", units, sizes });
		}
		const write = choiceOf(call, asSizeOption.name, sizeForms) === "json" ? writeSizesJson : writeSizes;
		if (sized.length > 0) world.output.write(write(sized));
		return worst;
	},
};
