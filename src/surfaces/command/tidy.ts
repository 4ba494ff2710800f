// `ferrule tidy`: each plan in the one layout of all plans, to standard output, as what would change, or back into its file.
import type { NumberedFinding } from "../../base/finding.ts";
import type { TidiedPlan } from "../checker.ts";
import { replaceFile } from "../files/replace.ts";
import { writeDifference } from "../report/difference.ts";
import { writeText } from "../report/text.ts";
import { visible, visibleLines } from "../report/visible.ts";
import { status } from "../status.ts";
import { type PlanInput, readInputs } from "./inputs.ts";
import { colourOption, libraryOption, stdinNameOption } from "./options.ts";
import { chooseSetting } from "./setting.ts";
import type { Call, Option, Verb } from "./verb.ts";
import type { World } from "./world.ts";

const writeOption: Option = { name: "write", summary: "put the tidied text into the plan's file" };
const diffOption: Option = { name: "diff", summary: "show what would change, and write nothing" };
const pinTagsOption: Option = {
	name: "pin-tags",
	summary: "write down each cable's automatic tag, so that it stays when hops are put in",
};

export const tidy: Verb = {
	name: "tidy",
	summary: "lay plans out in one way; they say the same as before",
	operands: { words: "PLAN...", least: 1, most: Number.POSITIVE_INFINITY },
	about: [
		"Prints a PLAN (a file, a folder, or `-` for standard input) in the one layout of all plans: two blanks a level, the ends of a chain's lengths in one column, comments in one column, one blank between words, and the usual spelling of units. Every word and every comment stays, in its order, and so does the circuit.",
		"A statement with something in it that cannot be read stays exactly as it is, which is told and gives status 1; the rest is tidied. With --diff, status 1 also says that something would change.",
	],
	options: [writeOption, diffOption, pinTagsOption, libraryOption, stdinNameOption, colourOption],
	examples: [
		{ call: "ferrule tidy van.ferrule", says: "the tidied text, to standard output" },
		{ call: "ferrule tidy plans --write", says: "all plans of a folder, each in its place" },
		{ call: "ferrule tidy van.ferrule --diff", says: "what would change" },
		{ call: "ferrule tidy van.ferrule --pin-tags --write", says: "with a tag on every cable" },
	],
	run: async (call, world) => {
		const inputs = await readInputs(call, world);
		if (inputs.status === status.interrupted || inputs.plans.length === 0) return inputs.status;
		const fault = findFault(inputs.plans, call);
		if (fault !== undefined) {
			world.messages.write(`ferrule: ${fault}\n`);
			return status.call;
		}
		let worst = inputs.status;
		for (const input of inputs.plans) {
			if (await world.interrupted()) return status.interrupted;
			const outcome = await tidyOne(input, call, world);
			if (outcome > status.findings) return outcome;
			worst ||= outcome;
		}
		return worst;
	},
};

/** What is wrong with a call for these plans. */
function findFault(plans: readonly PlanInput[], call: Call): string | undefined {
	const [isWrite, isDiff] = [call.options.has(writeOption.name), call.options.has(diffOption.name)];
	if (isWrite && isDiff) return "`--diff` shows what would change and writes nothing; leave it or `--write` out.";
	if (isWrite && plans.some((plan) => plan.path === undefined))
		return "Standard input has no file to write to; leave `--write` out, and the tidied text goes to standard output.";
	if (plans.length > 1 && !isWrite && !isDiff)
		return "Several plans cannot go to standard output together; add `--write` or `--diff`, or name one plan.";
	return undefined;
}

/** Tidies one plan, and gives the status that it asks for. */
async function tidyOne(input: PlanInput, call: Call, world: World): Promise<number> {
	const { name, text } = input;
	if (text === undefined || input.findings.length > 0) {
		const findings = input.findings.map((finding, index): NumberedFinding => ({ ...finding, number: index + 1 }));
		const setting = chooseSetting(call, world, world.messages);
		world.messages.write(writeText([{ file: name, text: text ?? "", findings }], setting));
		world.messages.write(`${visible(name)} is not tidied: it stays as it is.\n`);
		return status.findings;
	}
	const pinTags = call.options.has(pinTagsOption.name);
	const tidied = await world.tidyPlan(text, name, { pinTags, find: input.find });
	const handed = handOut(input, text, tidied, call, world);
	if (tidied.kept.length === 0) return handed;
	world.messages.write(
		`${visible(name)}: ${tellLines(tidied.kept)} as before, because something there cannot be read; \`ferrule check\` tells what\n`,
	);
	return Math.max(handed, status.findings);
}

function handOut(input: PlanInput, before: string, { text }: TidiedPlan, call: Call, world: World): number {
	if (call.options.has(diffOption.name)) {
		const difference = writeDifference(before, text, input.name);
		writeResult(difference, world);
		return difference === "" ? status.fine : status.findings;
	}
	if (call.options.has(writeOption.name)) return writeBack(input, before, text, world);
	writeResult(text, world);
	return status.fine;
}

/** Into the file it came from, unless that has changed since; a text that is tidy already is left alone. */
function writeBack({ name, path = "", bytes }: PlanInput, before: string, text: string, world: World): number {
	if (text === before) {
		world.messages.write(`tidy already: ${visible(name)}\n`);
		return status.fine;
	}
	// Reading takes the byte order mark off.
	const mark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? "\ufeff" : "";
	const failure = replaceFile(world.files, world.writer, path, mark + text, { inputs: [], replace: { only: bytes } });
	if (failure !== undefined) {
		world.messages.write(`ferrule: ${visible(name)} cannot be written: ${failure.why}.\n`);
		return failure.status;
	}
	world.messages.write(`tidied: ${visible(name)}\n`);
	return status.fine;
}

/** To a file or another program byte for byte; to a terminal without anything that could steer it. */
function writeResult(text: string, world: World): void {
	if (text !== "") world.output.write(world.output.columns === undefined ? text : visibleLines(text));
}

/** `lines 4 to 7 and 12 stay`; of many the first few. */
function tellLines(lines: readonly number[]): string {
	const stretches: { first: number; last: number }[] = [];
	for (const line of lines) {
		const stretch = stretches.at(-1);
		if (stretch !== undefined && stretch.last === line - 1) stretch.last = line;
		else stretches.push({ first: line, last: line });
	}
	const told = stretches
		.slice(0, mostTold)
		.map(({ first, last }) => (first === last ? `${first}` : `${first} to ${last}`));
	if (stretches.length > mostTold) told.push("others");
	const all = told.length > 1 ? `${told.slice(0, -1).join(", ")} and ${told.at(-1)}` : told.join("");
	return lines.length === 1 ? `line ${all} stays` : `lines ${all} stay`;
}

/** Further stretches of lines help nobody: the check tells each. */
const mostTold = 8;
