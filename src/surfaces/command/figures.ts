// `ferrule figures`: volts, amperes and losses of every cable in each source mode, and the working of one thing.
import type { FigureWish } from "../checker.ts";
import { writeFiguresCsv, writeFiguresJson } from "../report/figure-data.ts";
import { type FiguredPlan, writeFigures } from "../report/figures.ts";
import { summarise } from "../report/report.ts";
import { writeText } from "../report/text.ts";
import { visible } from "../report/visible.ts";
import { status } from "../status.ts";
import { readInputs } from "./inputs.ts";
import { judgeAll, statusOfWork } from "./judge.ts";
import { asOption, colourOption, failOnOption, libraryOption, stdinNameOption } from "./options.ts";
import { chooseSetting } from "./setting.ts";
import { type Call, choiceOf, type Option, type Verb } from "./verb.ts";

const figureForms = ["text", "json", "csv"] as const;
const units = ["feet", "metres"] as const;
const asFigureOption: Option = {
	name: asOption.name,
	value: { word: "FORM", choices: figureForms },
	summary: "text to read, json for programs, csv for a spreadsheet",
};
const ofOption: Option = {
	name: "of",
	value: { word: "THING" },
	summary: "the working of one load, outlet, cable, circuit or source, line by line",
};
const modeOption: Option = {
	name: "mode",
	value: { word: "MODE" },
	summary: "in this source mode only; in all if not said",
};
const drawOption: Option = {
	name: "draw",
	value: { word: "NAME=A" },
	summary: "as if so much were drawn there: `b2=12 A`; several with commas",
};
const lengthOption: Option = {
	name: "length",
	value: { word: "CABLE=L" },
	summary: "as if a cable were so long: `bunks-2=40 ft`; several with commas",
};
const onOption: Option = {
	name: "on",
	value: { word: "NAMES" },
	summary: "only these loads run: `k1,h1`",
};
const limitOption: Option = {
	name: "limit",
	value: { word: "SOURCE=A" },
	summary: "as if a source gave so much: `shore=15 A`",
};
const faultsOption: Option = {
	name: "faults",
	summary: "what a fault lets flow at the end of each cable, and when its device opens",
};
const unitsOption: Option = {
	name: "units",
	value: { word: "UNIT", choices: units },
	summary: "lengths in feet or metres; by the plan's region if not said",
};

export const figures: Verb = {
	name: "figures",
	summary: "volts, amperes and losses of every cable, with their working",
	operands: { words: "PLAN...", least: 1, most: Number.POSITIVE_INFINITY },
	about: [
		"Solves the steady state of each source mode on the circuit itself and tells, circuit by circuit, what flows in each cable, how many volts are lost in it there and back, and how many are left at its end, with the drop against the guide of the place. A PLAN is a file, a folder, or `-` for standard input.",
		"On are all fixed loads; what is plugged in is asked for with `--draw`. Where chargers make a difference, each cable has the figures of whatever loads it most: everything on, loads without chargers, or chargers alone. Wires are taken at the temperature they work at: 75 °C by the North American table, 70 °C by the international one.",
		"What was found decides the exit status, as with check.",
	],
	options: [
		ofOption,
		modeOption,
		onOption,
		drawOption,
		lengthOption,
		limitOption,
		faultsOption,
		unitsOption,
		asFigureOption,
		failOnOption,
		libraryOption,
		stdinNameOption,
		colourOption,
	],
	examples: [
		{ call: "ferrule figures van.ferrule", says: "a table for each circuit" },
		{ call: "ferrule figures van.ferrule --of b2 --draw b2=12A", says: "how the drop at an outlet comes about" },
		{
			call: "ferrule figures van.ferrule --of b2 --draw b2=12A --length bunks-2=40ft",
			says: "the same with a longer second run",
		},
		{
			call: "ferrule figures van.ferrule --on wh --draw b1=12.5A --limit shore=15A",
			says: "whether two things may run together on a smaller supply",
		},
		{ call: "ferrule figures van.ferrule --as json", says: "for programs; see grammar/figures.schema.json" },
	],
	run: async (call, world) => {
		const inputs = await readInputs(call, world);
		if (inputs.status === status.interrupted || inputs.plans.length === 0) return inputs.status;
		const judgements = await judgeAll(inputs.plans, world);
		if (judgements === undefined) return status.interrupted;
		const plans: FiguredPlan[] = [];
		for (const judgement of judgements) {
			if (judgement.checked === undefined) {
				world.messages.write(writeText([judgement], chooseSetting(call, world, world.messages)));
				continue;
			}
			const answer = await judgement.checked.figures(wishOf(call));
			if (answer.kind === "refused") {
				world.messages.write(`ferrule: ${visible(`${judgement.file}: ${answer.why}`)}\n`);
				return status.call;
			}
			plans.push({ file: judgement.file, answer });
			if (judgement.findings.length > 0)
				world.messages.write(`${summarise([judgement], 0)}; \`ferrule check\` tells about each\n`);
		}
		const form = choiceOf(call, asFigureOption.name, figureForms);
		const write = { text: writeFigures, json: writeFiguresJson, csv: writeFiguresCsv }[form];
		if (plans.length > 0 || form === "json") world.output.write(write(plans));
		return inputs.status === status.fine ? statusOfWork(judgements, call) : inputs.status;
	},
};

function wishOf({ options }: Call): FigureWish {
	return {
		of: options.get(ofOption.name),
		mode: options.get(modeOption.name),
		units: units.find((unit) => unit === options.get(unitsOption.name)),
		draws: options.get(drawOption.name),
		lengths: options.get(lengthOption.name),
		on: options.get(onOption.name),
		limits: options.get(limitOption.name),
		faults: options.has(faultsOption.name),
	};
}
