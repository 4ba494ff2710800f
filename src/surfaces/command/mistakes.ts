// `ferrule mistakes`: every single slip of a hand in a plan, and what would find it.
import type { JudgedMistake } from "../checker.ts";
import { type SurveyedPlan, summariseSurvey, writeSurvey, writeSurveyJson } from "../report/survey.ts";
import { writeText } from "../report/text.ts";
import { visible } from "../report/visible.ts";
import { status } from "../status.ts";
import { readInputs } from "./inputs.ts";
import { judge, statusOf } from "./judge.ts";
import { asOption, colourOption, failOnOption, libraryOption, stdinNameOption } from "./options.ts";
import { chooseSetting } from "./setting.ts";
import { type Call, choiceOf, type Option, type Verb } from "./verb.ts";
import type { World } from "./world.ts";

const surveyForms = ["text", "json"] as const;
const surveyAsOption: Option = {
	name: asOption.name,
	value: { word: "FORM", choices: surveyForms },
	summary: "text to read, json for programs",
};
const everyOption: Option = { name: "every", summary: "list each mistake with what came of it, not only those missed" };

export const mistakes: Verb = {
	name: "mistakes",
	summary: "make every single slip of a hand in a plan, and say what finds it",
	operands: { words: "PLAN...", least: 1, most: Number.POSITIVE_INFINITY },
	about: [
		"How safe is a plan from one slip? Takes each PLAN (a file, a folder, or `-` for standard input) and makes every single mistake that a hand can make in it, one at a time: wires exchanged, ends left loose or put in the wrong place, jumpers too many. Each is checked, and a table tells how many were found by a rule (`by name`: by the one that names the fault itself), change nothing, do no harm, are for a meter to find, or are missed.",
		"A large plan takes a while: some hundreds of mistakes are checked in a second. The status is 1 where a mistake is missed, and where the plan itself has findings, as with check.",
	],
	options: [surveyAsOption, everyOption, failOnOption, libraryOption, stdinNameOption, colourOption],
	examples: [
		{ call: "ferrule mistakes van.ferrule", says: "a table of what would be found" },
		{ call: "ferrule mistakes van.ferrule --every", says: "each mistake on a line of its own" },
		{ call: "ferrule mistakes van.ferrule --as json", says: "for programs; see grammar/mistakes.schema.json" },
	],
	run: async (call, world) => {
		const inputs = await readInputs(call, world);
		if (inputs.status === status.interrupted || inputs.plans.length === 0) return inputs.status;
		const surveyed: SurveyedPlan[] = [];
		let worst = inputs.status;
		for (const input of inputs.plans) {
			const judgement = judge(input, world);
			worst ||= statusOf([judgement], call);
			if (judgement.checked === undefined) {
				world.messages.write(writeText([judgement], chooseSetting(call, world, world.messages)));
				continue;
			}
			const found = await collect(await judgement.checked.makeMistakes(), world);
			if (found === undefined) return status.interrupted;
			surveyed.push({ file: input.name, mistakes: found });
			if (found.some(({ verdict }) => verdict === "missed")) worst ||= status.findings;
		}
		writeResult(surveyed, call, world);
		return worst;
	},
};

/** Every mistake, judged; undefined when the user interrupted. */
async function collect(judged: Iterable<JudgedMistake>, world: World): Promise<readonly JudgedMistake[] | undefined> {
	const all: JudgedMistake[] = [];
	for (const mistake of judged) {
		if (all.length % betweenLooks === 0 && (await world.interrupted())) return undefined;
		all.push(mistake);
	}
	return all;
}

/** Mistakes that are judged before it is asked again whether the user wants to stop. */
const betweenLooks = 50;

function writeResult(plans: readonly SurveyedPlan[], call: Call, world: World): void {
	if (choiceOf(call, surveyAsOption.name, surveyForms) === "json") {
		world.output.write(writeSurveyJson(plans));
		for (const { file, mistakes: all } of plans) world.messages.write(`${visible(file)}: ${summariseSurvey(all)}\n`);
	} else world.output.write(writeSurvey(plans, call.options.has(everyOption.name)));
}
