// The plans a call names: files, all plans of a folder, or standard input. Read one by one, each under its relative name.
import { basename, dirname, isAbsolute, join, relative, resolve, sep } from "node:path";
import type { Finding } from "../../base/finding.ts";
import type { FindSource } from "../../syntax/sources.ts";
import { decodePlan, findTooLarge } from "../files/decode.ts";
import { type FileIdentity, largestPlan, type Reading, readBytes } from "../files/read.ts";
import { explainError } from "../files/system.ts";
import { findUsed, type Root } from "../files/used.ts";
import { visible } from "../report/visible.ts";
import { status } from "../status.ts";
import { asOption, libraryOption, stdinNameOption } from "./options.ts";
import type { Call } from "./verb.ts";
import type { World } from "./world.ts";

/** A plan as it was read. */
export interface PlanInput {
	/** Relative to the working folder, with `/`; for a person, what lies outside of that folder goes by what the call says. */
	readonly name: string;
	/** Where it lies, and the folder of it as the call says it; undefined for standard input. */
	readonly path: string | undefined;
	readonly folder: string | undefined;
	/** Whether it was found in a folder, and not named itself. */
	readonly found: boolean;
	/** Undefined where it cannot be read as text. */
	readonly text: string | undefined;
	/** As they were read; none of a file that is too large. */
	readonly bytes: Uint8Array;
	/** What there is to say about its bytes. */
	readonly findings: readonly Finding[];
	/** Where the files that it uses may lie. */
	readonly roots: readonly [Root, ...Root[]];
	/** Finds the files that it uses. */
	readonly find: FindSource;
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
	const name = formsForPrograms.has(call.options.get(asOption.name) ?? "") ? relativeNameOf : nameOf;
	let worst: number = status.fine;
	const fail = (why: string): void => {
		world.messages.write(`ferrule: ${visible(why)}.\n`);
		worst = status.input;
	};
	const library = findLibrary(call, name, world);
	if (library === "missing")
		fail(`${nameOf(call.options.get(libraryOption.name) ?? "", world)} is no folder to use files from`);
	const others = library === "missing" ? [] : library;
	for (const operand of new Set(call.operands)) {
		if (await world.interrupted()) return { plans, status: status.interrupted };
		if (operand === "-") {
			const said = call.options.get(stdinNameOption.name) ?? "standard-input";
			const plan = { name: name(said, world), path: undefined };
			const roots = [ownFolder(plan.name, resolve(world.folder, said)), ...others] as const;
			const find = findUsed(world.files, plan, roots);
			const input = asPlan(await world.readInput(largestPlan), {
				...plan,
				folder: undefined,
				found: false,
				roots,
				find,
			});
			if (typeof input === "string") fail(`standard input cannot be read: ${input}`);
			else plans.push(input);
			continue;
		}
		const found = findFiles(operand, world);
		if (typeof found === "string") {
			fail(`${nameOf(operand, world)} cannot be read: ${found}`);
			continue;
		}
		for (const given of found) {
			const path = resolve(world.folder, given);
			const plan = { name: name(given, world), path };
			const roots = [ownFolder(plan.name, path), ...others] as const;
			const find = findUsed(world.files, plan, roots);
			const place = { ...plan, folder: dirname(given), found: given !== operand, roots, find };
			const input = asPlan(readBytes(world.files, path, largestPlan), place);
			if (typeof input === "string") fail(`${nameOf(given, world)} cannot be read: ${input}`);
			else plans.push(input);
		}
	}
	return { plans, status: worst };
}

/** Forms in which names are relative wherever a plan lies. */
const formsForPrograms: ReadonlySet<string> = new Set(["json", "sarif", "github"]);

/** The extension of a plan. */
export const planExtension = ".ferrule";

/** A path as it is spoken of: relative with `/` below the working folder, and elsewhere as the call gives it. */
export function nameOf(given: string, world: World): string {
	const name = relativeNameOf(given, world);
	return name === ".." || name.startsWith("../") ? given : name;
}

/** A path as programs are told of it, wherever it is: relative to the working folder, with `/`. */
function relativeNameOf(path: string, world: World): string {
	const name = relative(world.folder, resolve(world.folder, path));
	if (name === "") return ".";
	// On another drive there is no relative name, and folders of the machine are told to nobody.
	return isAbsolute(name) ? basename(name) : name.split(sep).join("/");
}

/** The files behind an operand by the operand's own words, or why there are none. */
function findFiles(operand: string, world: World): readonly string[] | string {
	const path = resolve(world.folder, operand);
	try {
		if (world.files.statSync(path, { throwIfNoEntry: false })?.isDirectory() !== true) return [operand];
		const plans = [...plansBelow(operand, path, world)];
		return plans.length > 0 ? plans : `there is no plan (*${planExtension}) in this folder or below it`;
	} catch (error) {
		return explainError(error);
	}
}

/**
 * The plans of a folder and of the folders in it, by names that begin with `given`: its own first, each in the order of their names.
 * Folders that are hidden or belong to packages are not looked into, and no link to a folder is followed.
 */
function* plansBelow(given: string, path: string, world: World): Generator<string> {
	const entries = world.files
		.readdirSync(path, { withFileTypes: true })
		.toSorted((one, other) => (one.name < other.name ? -1 : 1));
	for (const entry of entries)
		if (entry.name.endsWith(planExtension) && !entry.isDirectory()) yield join(given, entry.name);
	for (const entry of entries)
		if (entry.isDirectory() && !entry.name.startsWith(".") && entry.name !== packagesFolder)
			yield* plansBelow(join(given, entry.name), join(path, entry.name), world);
}

const packagesFolder = "node_modules";

/** The folder of a plan, as used files may be read from it. */
function ownFolder(name: string, path: string): Root {
	return { path: dirname(path), name: name.split("/").slice(0, -1).join("/"), words: "the plan's folder" };
}

/** The library folder of a call; none where none was named. */
function findLibrary(
	call: Call,
	name: (path: string, world: World) => string,
	world: World,
): readonly Root[] | "missing" {
	const given = call.options.get(libraryOption.name);
	if (given === undefined) return [];
	const path = resolve(world.folder, given);
	const isFolder = world.files.statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
	return isFolder ? [{ path, name: name(given, world).replace(/\/$/, ""), words: "the library folder" }] : "missing";
}

/** A plan from what was read, or why nothing was. */
function asPlan(
	reading: Reading,
	place: Pick<PlanInput, "name" | "path" | "folder" | "found" | "roots" | "find">,
): PlanInput | string {
	switch (reading.kind) {
		case "unreadable":
			return reading.why;
		case "too-large":
			return {
				...place,
				identity: reading.identity,
				text: undefined,
				bytes: new Uint8Array(),
				findings: [findTooLarge(reading.size, place.name)],
			};
		case "bytes":
			return { ...place, ...decodePlan(reading.bytes, place.name), bytes: reading.bytes, identity: reading.identity };
	}
}
