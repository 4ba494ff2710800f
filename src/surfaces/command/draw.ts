// `ferrule draw`: the sheets of each plan as SVG files, plan by plan; faults are drawn as they are wired.
import { sheetChoices } from "../checker.ts";
import { summarise } from "../report/report.ts";
import { writeText } from "../report/text.ts";
import { visible } from "../report/visible.ts";
import { status } from "../status.ts";
import { type Destination, deliver, findDestination } from "./deliver.ts";
import { readInputs } from "./inputs.ts";
import { type Judgement, judgeAll, statusOfWork } from "./judge.ts";
import {
	colourOption,
	failOnOption,
	forceOption,
	libraryOption,
	outOption,
	sheetOption,
	stdinNameOption,
} from "./options.ts";
import { chooseSetting } from "./setting.ts";
import { type Call, choiceOf, type Verb } from "./verb.ts";
import type { World } from "./world.ts";

export const draw: Verb = {
	name: "draw",
	summary: "draw the wiring sheets, alternating and direct current, and the one-line sheet",
	operands: { words: "PLAN...", least: 1, most: Number.POSITIVE_INFINITY },
	about: [
		"Draws each PLAN (a file, a folder, or `-` for standard input) as SVG: the wiring sheet with every conductor, one of its own for the direct-current side where there is one, and the one-line sheet. The files are named after the plan and the sheet, such as van-wiring.svg.",
		"A plan with faults is drawn as it is wired, each fault marked with its number. A plan in which nothing can be wired is not drawn. What was found decides the exit status, as with check.",
	],
	options: [sheetOption, outOption, forceOption, failOnOption, libraryOption, stdinNameOption, colourOption],
	examples: [
		{
			call: "ferrule draw van.ferrule",
			says: "van-wiring.svg, van-direct-current.svg, van-one-line.svg beside the plan",
		},
		{ call: "ferrule draw van.ferrule --sheet wiring --out van.svg", says: "one sheet, to a file of this name" },
		{ call: "ferrule draw plans --out drawings", says: "all plans of a folder, into another folder" },
		{ call: "ferrule draw van.ferrule --sheet one-line --out -", says: "to standard output" },
	],
	run: async (call, world) => {
		const inputs = await readInputs(call, world);
		if (inputs.status === status.interrupted || inputs.plans.length === 0) return inputs.status;
		const destination = findDestination(inputs.plans, call, world);
		if ("why" in destination) {
			world.messages.write(`ferrule: ${visible(destination.why)}\n`);
			return destination.status;
		}
		const judgements = await judgeAll(inputs.plans, world);
		if (judgements === undefined) return status.interrupted;
		for (const judgement of judgements) {
			if (await world.interrupted()) return status.interrupted;
			const failed = await drawOne(judgement, destination, call, world);
			if (failed !== status.fine) return failed;
		}
		return inputs.status === status.fine ? statusOfWork(judgements, call) : inputs.status;
	},
};

/** Draws and writes the sheets of one plan, and says what became of it. */
async function drawOne(judgement: Judgement, destination: Destination, call: Call, world: World): Promise<number> {
	if (judgement.checked === undefined) {
		world.messages.write(writeText([judgement], chooseSetting(call, world, world.messages)));
		world.messages.write(
			`Nothing is drawn of ${visible(judgement.file)}: what is found above leaves nothing to draw.\n`,
		);
		return status.fine;
	}
	const sheets = await judgement.checked.draw(choiceOf(call, sheetOption.name, sheetChoices));
	if (await world.interrupted()) return status.interrupted;
	if (sheets.length === 0)
		world.messages.write(`Nothing is drawn of ${visible(judgement.file)}: it has nothing for the sheet asked for.\n`);
	const { written, failure } = deliver(sheets, judgement, destination, world);
	const hint = judgement.findings.length > 0 ? "; `ferrule check` tells about each" : "";
	world.messages.write(`${summarise([judgement], 0)}${hint}\n`);
	if (written.length > 0) world.messages.write(`drawn: ${written.map(visible).join(", ")}\n`);
	if (failure !== undefined) {
		world.messages.write(`ferrule: ${visible(failure.why)}\n`);
		return failure.status;
	}
	return status.fine;
}
