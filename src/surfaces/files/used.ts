// Finds the files that a plan uses: below its own folder or the library folder, and nowhere else, whatever links say.
import { isAbsolute, join, relative, resolve, sep } from "node:path";
import { didYouMean } from "../../base/nearest.ts";
import type { FindSource, FoundSource } from "../../syntax/sources.ts";
import { resolveUse, usedExtension } from "../../syntax/use-path.ts";
import { decodePlan } from "./decode.ts";
import { largestPlan, readBytes } from "./read.ts";
import { errorCode, explainError, type FileSystem } from "./system.ts";

/** A folder that may be read below: where it lies, and what its files are called in findings, with `/` and nothing behind it. */
export interface Root {
	readonly path: string;
	readonly name: string;
	/** `the plan's folder`, for messages. */
	readonly words: string;
}

/** The plan that uses files: its name in findings and, unless it came from standard input, where it lies. */
export interface UsingPlan {
	readonly name: string;
	readonly path: string | undefined;
}

/** Finds used files for one plan; `roots` are its own folder and then the library folder, if there is one. */
export function findUsed(files: FileSystem, plan: UsingPlan, roots: readonly [Root, ...Root[]]): FindSource {
	const [own] = roots;
	/** Where each file that was found lies, by its name: names below it stand from its folder. */
	const places = new Map<string, Place>([[plan.name, { root: own, folder: [] }]]);
	const names = new Map<string, string>();
	const planPath = realPath(files, plan.path);
	if (planPath !== undefined) names.set(planPath, plan.name);
	return (path, from) => {
		const place = places.get(from) ?? { root: own, folder: [] };
		const tries = [place, ...roots.filter((root) => root !== place.root).map((root): Place => ({ root, folder: [] }))];
		let missing: FoundSource | undefined;
		for (const { root, folder } of tries) {
			const resolved = resolveUse(path, folder);
			// What leads out of one folder leads nowhere in another.
			if ("why" in resolved) return missing ?? { kind: "refused", ...resolved };
			const found = openBelow(files, root, resolved.steps, names);
			if ("found" in found) {
				places.set(found.found.file, { root, folder: found.folder });
				return found.found;
			}
			if (found.kind !== "missing") return found;
			if (missing === undefined || (missing.kind === "missing" && missing.help === "")) missing = found;
		}
		return missing ?? { kind: "missing", help: "" };
	};
}

interface Place {
	readonly root: Root;
	readonly folder: readonly string[];
}
type Opened =
	| Exclude<FoundSource, { kind: "text" }>
	| { readonly found: Extract<FoundSource, { kind: "text" }>; readonly folder: readonly string[] };

/** The file at `steps` below a root. Its real place is looked at before it is opened, and what was opened afterwards. */
function openBelow(files: FileSystem, root: Root, steps: readonly string[], names: Map<string, string>): Opened {
	const path = join(root.path, ...steps);
	let real: string;
	let base: string;
	try {
		base = files.realpathSync(root.path);
		real = files.realpathSync(path);
	} catch (error) {
		if (errorCode(error) === "ENOENT" || errorCode(error) === "ENOTDIR")
			return { kind: "missing", help: offerNearest(files, root, steps) };
		return { kind: "refused", why: explainError(error), help: lookAtIt };
	}
	const inside = stepsBelow(base, real);
	if (inside === undefined)
		return {
			kind: "refused",
			why: `a link leads out of ${root.words}`,
			help: "Put the file itself there: links that lead out are not followed.",
		};
	// Only a regular file is opened at all: opening some devices does something.
	const before = files.statSync(real, { throwIfNoEntry: false, bigint: true });
	if (before?.isFile() !== true)
		return {
			kind: "refused",
			why: before?.isDirectory() === true ? "it is a folder" : "it is not a regular file",
			help: lookAtIt,
		};
	const name = names.get(real) ?? [...(root.name === "" ? [] : [root.name]), ...inside].join("/");
	const reading = readBytes(files, real, largestPlan);
	if (reading.kind === "unreadable") return { kind: "refused", why: reading.why, help: lookAtIt };
	const { device, inode } = reading.identity;
	if (device !== before.dev || inode !== before.ino || realPath(files, path) !== real)
		return { kind: "refused", why: "it was exchanged while it was read", help: "Check again." };
	if (reading.kind === "too-large")
		return {
			kind: "refused",
			why: `it has ${reading.size} bytes, and at most ${largestPlan} are read`,
			help: "Split it into smaller files.",
		};
	names.set(real, name);
	const { text, findings } = decodePlan(reading.bytes, name);
	return { found: { kind: "text", file: name, text: text ?? "", findings }, folder: inside.slice(0, -1) };
}

const lookAtIt = "Look at what lies there, and name a plan.";

/** The steps from a folder to what lies below it; undefined where it lies elsewhere. Both are real paths. */
function stepsBelow(base: string, real: string): readonly string[] | undefined {
	const steps = relative(base, real);
	if (steps === "" || isAbsolute(steps) || steps === ".." || steps.startsWith(`..${sep}`)) return undefined;
	return steps.split(sep);
}

function realPath(files: FileSystem, path: string | undefined): string | undefined {
	try {
		return path === undefined ? undefined : files.realpathSync(path);
	} catch {
		return undefined;
	}
}

/** The nearest names of plans in the folder where a missing file would be, as long as that is below the root. */
function offerNearest(files: FileSystem, root: Root, steps: readonly string[]): string {
	const wanted = steps.at(-1) ?? "";
	const folder = steps.slice(0, -1);
	const base = realPath(files, root.path);
	const real = realPath(files, resolve(root.path, ...folder));
	if (base === undefined || real === undefined) return "";
	if (real !== base && stepsBelow(base, real) === undefined) return "";
	try {
		const plans = files
			.readdirSync(real, { withFileTypes: true })
			.filter((entry) => entry.name.endsWith(usedExtension))
			.map((entry) => entry.name)
			.sort((one, other) => (one < other ? -1 : 1));
		return didYouMean(
			[...folder, wanted].join("/"),
			plans.map((plan) => [...folder, plan].join("/")),
		);
	} catch {
		return "";
	}
}
