// The plans a call names: files, all plans of a folder, or standard input. Read one by one, each under its relative name.
import { basename, isAbsolute, relative, resolve, sep } from "node:path";
import type { Finding } from "../../base/finding.ts";
import { decodePlan, findTooLarge } from "../files/decode.ts";
import { type FileIdentity, largestPlan, type Reading, readBytes } from "../files/read.ts";
import { explainError } from "../files/system.ts";
import { visible } from "../report/visible.ts";
import { status } from "../status.ts";
import { stdinNameOption } from "./options.ts";
import type { Call } from "./verb.ts";
import type { World } from "./world.ts";

/** A plan as it was read. */
export interface PlanInput {
	/** Relative to the working folder, with `/`. */
	readonly name: string;
	/** Where it lies; undefined for standard input. */
	readonly path: string | undefined;
	/** Undefined where there is too much to read. */
	readonly text: string | undefined;
	/** What there is to say about its bytes. */
	readonly findings: readonly Finding[];
	readonly identity: FileIdentity | undefined;
}

/** What a call named, in order, and the exit status that failures ask for; each failure has been told. */
export interface Inputs {
	readonly plans: readonly PlanInput[];
	readonly status: number;
}

/** Reads every plan that the operands of `call` name, each once. */
export async function readInputs(call: Call, world: World): Promise<Inputs> {
	const plans: PlanInput[] = [];
	let worst: number = status.fine;
	const fail = (why: string): void => {
		world.messages.write(`ferrule: ${visible(why)}.\n`);
		worst = status.input;
	};
	for (const operand of new Set(call.operands)) {
		if (await world.interrupted()) return { plans, status: status.interrupted };
		if (operand === "-") {
			const name = call.options.get(stdinNameOption.name) ?? "standard-input";
			const input = asPlan(await world.readInput(largestPlan), nameOf(name, world), undefined);
			if (typeof input === "string") fail(`standard input cannot be read: ${input}`);
			else plans.push(input);
			continue;
		}
		const found = findFiles(operand, world);
		if (typeof found === "string") {
			fail(`${nameOf(operand, world)} cannot be read: ${found}`);
			continue;
		}
		for (const path of found) {
			const name = nameOf(path, world);
			const input = asPlan(readBytes(world.files, path, largestPlan), name, path);
			if (typeof input === "string") fail(`${name} cannot be read: ${input}`);
			else plans.push(input);
		}
	}
	return { plans, status: worst };
}

/** The extension of a plan. */
export const planExtension = ".ferrule";

/** A path as it is spoken of: relative to the working folder, with `/`. */
export function nameOf(path: string, world: World): string {
	const name = relative(world.folder, resolve(world.folder, path));
	if (name === "") return ".";
	// On another drive there is no relative name, and folders of the machine are told to nobody.
	return isAbsolute(name) ? basename(name) : name.split(sep).join("/");
}

/** The files behind an operand, or why there are none. */
function findFiles(operand: string, world: World): readonly string[] | string {
	const path = resolve(world.folder, operand);
	try {
		if (world.files.statSync(path, { throwIfNoEntry: false })?.isDirectory() !== true) return [path];
		const plans = world.files
			.readdirSync(path, { withFileTypes: true })
			.filter((entry) => entry.name.endsWith(planExtension) && !entry.isDirectory())
			.map((entry) => entry.name)
			.sort((one, other) => (one < other ? -1 : 1))
			.map((name) => resolve(path, name));
		return plans.length > 0 ? plans : `there is no plan (*${planExtension}) in this folder`;
	} catch (error) {
		return explainError(error);
	}
}

/** A plan from what was read, or why nothing was. */
function asPlan(reading: Reading, name: string, path: string | undefined): PlanInput | string {
	switch (reading.kind) {
		case "unreadable":
			return reading.why;
		case "too-large":
			return { name, path, text: undefined, findings: [findTooLarge(reading.size, name)], identity: reading.identity };
		case "bytes":
			return { name, path, ...decodePlan(reading.bytes, name), identity: reading.identity };
	}
}
