// `ferrule show`: every box with its conductors, joints and landings, said or inferred, in words or as JSON.
import { summarise } from "../report/report.ts";
import { writeText } from "../report/text.ts";
import { visibleLines } from "../report/visible.ts";
import { status } from "../status.ts";
import { readInputs } from "./inputs.ts";
import { type Judgement, judgeAll, statusOfWork } from "./judge.ts";
import { asOption, colourOption, failOnOption, forms, libraryOption, stdinNameOption } from "./options.ts";
import { chooseSetting } from "./setting.ts";
import { type Call, choiceOf, type Option, type Verb } from "./verb.ts";
import type { World } from "./world.ts";

const writtenOutOption: Option = {
	name: "written-out",
	summary: "print the plan itself with everything said that was inferred; read back it is the same circuit",
};

export const show: Verb = {
	name: "show",
	summary: "tell how each box is wired, said and inferred",
	operands: { words: "PLAN...", least: 1, most: Number.POSITIVE_INFINITY },
	about: [
		"Tells, box by box, which conductor lands on which terminal, what is joined, and which of it you said and which was inferred by the trade's convention. A PLAN is a file, a folder, or `-` for standard input.",
		"What was found decides the exit status, as with check.",
	],
	options: [asOption, writtenOutOption, failOnOption, libraryOption, stdinNameOption, colourOption],
	examples: [
		{ call: "ferrule show van.ferrule", says: "box by box, to follow with the plan in hand" },
		{ call: "ferrule show van.ferrule --as json", says: "the whole circuit, for programs" },
		{
			call: "ferrule show van.ferrule --written-out",
			says: "a plan as built, to correct where you built it otherwise",
		},
	],
	run: async (call, world) => {
		const inputs = await readInputs(call, world);
		if (inputs.status === status.interrupted || inputs.plans.length === 0) return inputs.status;
		const fault = call.options.has(writtenOutOption.name) ? findFault(inputs.plans.length, call) : undefined;
		if (fault !== undefined) {
			world.messages.write(`ferrule: ${fault}\n`);
			return status.call;
		}
		const judgements = await judgeAll(inputs.plans, world);
		if (judgements === undefined) return status.interrupted;
		if (call.options.has(writtenOutOption.name)) await writePlans(judgements, world);
		else writeShown(judgements, call, world);
		for (const judgement of judgements) tellFindings(judgement, call, world);
		return inputs.status === status.fine ? statusOfWork(judgements, call) : inputs.status;
	},
};

/** What is wrong with a call that asks for a plan written out. */
function findFault(plans: number, call: Call): string | undefined {
	if (plans > 1) return "Several plans cannot be written out together; name one.";
	if (choiceOf(call, asOption.name, forms) === "text") return undefined;
	return "`--written-out` gives the text of a plan; leave `--as` out.";
}

/** Byte for byte to a file or another program; to a terminal without anything that could steer it. */
async function writePlans(judgements: readonly Judgement[], world: World): Promise<void> {
	for (const { checked } of judgements) {
		if (checked === undefined) continue;
		const text = await checked.writeOut();
		world.output.write(world.output.columns === undefined ? text : visibleLines(text));
	}
}

function writeShown(judgements: readonly Judgement[], call: Call, world: World): void {
	const form = choiceOf(call, asOption.name, forms);
	if (form === "json") {
		const plans = judgements.map(({ file, checked }) => ({ file, circuit: checked?.show().json ?? null }));
		world.output.write(`${JSON.stringify({ schema: 1, plans }, undefined, 2)}\n`);
		return;
	}
	for (const { checked } of judgements) {
		if (checked === undefined) continue;
		const { text, short } = checked.show();
		world.output.write(visibleLines(form === "short" ? short : text));
	}
}

/** A few words on what was found; all of it where nothing can be shown. */
function tellFindings(judgement: Judgement, call: Call, world: World): void {
	if (judgement.checked === undefined)
		world.messages.write(writeText([judgement], chooseSetting(call, world, world.messages)));
	else if (judgement.findings.length > 0)
		world.messages.write(`${summarise([judgement], 0)}; \`ferrule check\` tells about each\n`);
}
