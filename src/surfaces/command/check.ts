// `ferrule check`: what is miswired in each plan, in the form that is asked for.
import { writeGithub } from "../report/github.ts";
import { writeJson } from "../report/json.ts";
import { mostPrinted, summarise } from "../report/report.ts";
import { writeSarif } from "../report/sarif.ts";
import { writeShort } from "../report/short.ts";
import { writeText } from "../report/text.ts";
import { status } from "../status.ts";
import { threadsFor } from "../threads/threads-for.ts";
import { readInputs } from "./inputs.ts";
import { judgeEach, judgeInThreads, statusOf, type Verdict } from "./judge.ts";
import { asReportOption, colourOption, failOnOption, libraryOption, reportForms, stdinNameOption } from "./options.ts";
import { addRepairs, mostRepaired, mostTrials } from "./repairs.ts";
import { chooseSetting } from "./setting.ts";
import { type Call, choiceOf, type Verb } from "./verb.ts";
import type { World } from "./world.ts";

export const check: Verb = {
	name: "check",
	summary: "say what is miswired, why it matters and what to do",
	operands: { words: "PLAN...", least: 1, most: Number.POSITIVE_INFINITY },
	about: [
		"Reads each PLAN, traces every conductor, and reports what is wrong: the worst first. A PLAN is a file, a folder (all *.ferrule in it and below), or `-` for standard input.",
		`At most ${mostPrinted} findings are listed as text; how many there are is always told, and json holds them all.`,
	],
	options: [asReportOption, failOnOption, libraryOption, stdinNameOption, colourOption],
	examples: [
		{ call: "ferrule check van.ferrule", says: "a note on each finding" },
		{ call: "ferrule check plans --as short", says: "one line each, for all plans of a folder and below" },
		{ call: "ferrule check van.ferrule --as json", says: "for programs; see grammar/findings.schema.json" },
		{ call: "ferrule check plans --as sarif", says: "for programs that gather findings of many tools" },
		{ call: "ferrule check - --stdin-name van.ferrule < van.ferrule", says: "a text that is not yet saved" },
		{ call: "ferrule check van.ferrule --fail-on warning", says: "status 1 for warnings too" },
	],
	run: async (call, world) => {
		const inputs = await readInputs(call, world);
		if (inputs.status === status.interrupted) return status.interrupted;
		const form = choiceOf(call, asReportOption.name, reportForms);
		const budget = { left: formsWithRepairs.has(form) && inputs.plans.length <= mostRepaired ? mostTrials : 0 };
		const threads = threadsFor(inputs.plans.length, world.processors());
		const verdicts =
			threads > 1
				? await judgeInThreads(inputs.plans, threads, world)
				: await judgeEach(inputs.plans, world, (judgement) => addRepairs(judgement, budget));
		if (verdicts === undefined) return status.interrupted;
		if (verdicts.length > 0) writeReport(verdicts, form, call, world);
		return inputs.status === status.fine ? statusOf(verdicts, call) : inputs.status;
	},
};

/** Those in which there is room for lines to write. */
const formsWithRepairs: ReadonlySet<string> = new Set(["text", "json", "sarif"]);

function writeReport(verdicts: readonly Verdict[], form: (typeof reportForms)[number], call: Call, world: World): void {
	switch (form) {
		case "text":
			world.output.write(writeText(verdicts, chooseSetting(call, world, world.output)));
			break;
		case "short":
			writeLines(writeShort(verdicts), verdicts, world);
			break;
		case "github":
			writeLines(writeGithub(verdicts), verdicts, world);
			break;
		case "json":
			world.output.write(writeJson(verdicts));
			break;
		case "sarif":
			world.output.write(writeSarif(verdicts, world.pages(), world.version));
	}
}

/** A line a finding; how many there are is a message. */
function writeLines(
	{ text, leftOut }: { readonly text: string; readonly leftOut: number },
	verdicts: readonly Verdict[],
	world: World,
): void {
	world.output.write(text);
	world.messages.write(`${summarise(verdicts, leftOut)}\n`);
}
