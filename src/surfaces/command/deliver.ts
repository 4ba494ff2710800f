// Where the sheets of a plan go: a file, a folder, beside the plan, or standard output. Each file is written whole or not at all.
import { basename, extname, join, resolve } from "node:path";
import type { Sheet } from "../checker.ts";
import { isOwnDrawing } from "../files/own-drawing.ts";
import { type Permission, replaceFile } from "../files/replace.ts";
import { explainError, type Failure } from "../files/system.ts";
import { status } from "../status.ts";
import { nameOf, type PlanInput, planExtension } from "./inputs.ts";
import type { Judgement } from "./judge.ts";
import { forceOption, outOption } from "./options.ts";
import type { Call } from "./verb.ts";
import type { World } from "./world.ts";

/** Where everything of one call goes, in the words of the call, and what may be replaced there. */
export type Destination =
	| { readonly kind: "output" }
	| { readonly kind: "file"; readonly path: string; readonly permission: Permission }
	/** Undefined is beside each plan. */
	| { readonly kind: "folder"; readonly path: string | undefined; readonly permission: Permission };

/** The destination that a call names, or what is wrong with it for these plans. */
export function findDestination(plans: readonly PlanInput[], call: Call, world: World): Destination | Failure {
	const out = call.options.get(outOption.name);
	const permission: Permission = {
		inputs: plans.flatMap((plan) => plan.identity ?? []),
		replace: call.options.has(forceOption.name) ? "any" : isOwnDrawing,
	};
	const single = plans.length === 1;
	if (out === "-" || (out === undefined && single && plans[0]?.path === undefined))
		return single ? { kind: "output" } : wrong("Several plans cannot go to standard output together; name a folder");
	if (out?.toLowerCase().endsWith(drawingExtension) === true) {
		return single
			? { kind: "file", path: out, permission }
			: wrong("Several plans cannot go to one file; name a folder");
	}
	if (out !== undefined && otherSorts.has(extname(out).toLowerCase()) && !isFolder(out, world))
		return wrong(
			`${out} ends like a file of another sort, and Ferrule draws SVG; name a file ending in ${drawingExtension}, or a folder`,
		);
	const path = out;
	const places = plans.map((plan) => resolve(world.folder, folderOf(plan, path), stemOf(plan)).toLowerCase());
	const twice = places.findIndex((place, index) => places.indexOf(place) !== index);
	if (twice >= 0)
		return wrong(
			`Two plans would be drawn to the same files, ${plans[twice]?.name ?? ""} and another; draw one of them by itself`,
		);
	return { kind: "folder", path, permission };
}

/** What was written, by the names of the files, and why no more of it was. */
export interface Delivery {
	readonly written: readonly string[];
	readonly failure?: Failure;
}

/** Writes the sheets of one plan; stops at the first that cannot be written. */
export function deliver(
	sheets: readonly Sheet[],
	judgement: Judgement,
	destination: Destination,
	world: World,
): Delivery {
	const [only] = sheets;
	if (destination.kind === "folder") return deliverToFolder(sheets, judgement, destination, world);
	if (sheets.length > 1) {
		const names = sheets.map((sheet) => sheet.name).join(", ");
		const advice = "choose one with --sheet, or name a folder with --out";
		return { written: [], failure: wrong(`This plan makes ${sheets.length} sheets (${names}); ${advice}`) };
	}
	if (only === undefined) return { written: [] };
	if (destination.kind === "file")
		return writeAll([{ path: destination.path, svg: only.svg }], destination.permission, world);
	world.output.write(only.svg);
	return { written: [] };
}

function deliverToFolder(
	sheets: readonly Sheet[],
	judgement: Judgement,
	destination: Destination & { readonly kind: "folder" },
	world: World,
): Delivery {
	const folder = folderOf(judgement.input, destination.path);
	try {
		world.files.mkdirSync(resolve(world.folder, folder), { recursive: true });
	} catch (error) {
		const why = `The folder ${nameOf(folder, world)} cannot be made: ${explainError(error)}.`;
		return { written: [], failure: { status: status.create, why } };
	}
	const drawings = sheets.map(({ name, svg }) => ({
		path: join(folder, `${stemOf(judgement.input)}-${fileSafe(name)}${drawingExtension}`),
		svg,
	}));
	return writeAll(drawings, destination.permission, world);
}

function writeAll(
	drawings: readonly { readonly path: string; readonly svg: string }[],
	permission: Permission,
	world: World,
): Delivery {
	const written: string[] = [];
	for (const { path, svg } of drawings) {
		const name = nameOf(path, world);
		const failure = replaceFile(world.files, world.writer, resolve(world.folder, path), svg, permission);
		if (failure !== undefined)
			return { written, failure: { ...failure, why: `${name} cannot be written: ${failure.why}.` } };
		written.push(name);
	}
	return { written };
}

const drawingExtension = ".svg";
/** Endings of files that someone may want a drawing to be, and of those that a drawing must not fall on. */
const otherSorts = new Set(
	[".png", ".pdf", ".jpg", ".jpeg", ".gif", ".webp", ".bmp", ".tif", ".tiff", ".ps", ".eps", ".dxf", ".dwg"].concat([
		".svgz",
		".html",
		".htm",
		".xml",
		".json",
		".txt",
		".md",
		".csv",
		".zip",
		planExtension,
	]),
);

function isFolder(path: string, world: World): boolean {
	return world.files.statSync(resolve(world.folder, path), { throwIfNoEntry: false })?.isDirectory() === true;
}

/** The folder for the sheets of a plan; without one that is named, the plan's own. */
function folderOf(plan: PlanInput, named: string | undefined): string {
	return named ?? plan.folder ?? "";
}

/** The plan's file name without its extension. */
function stemOf(plan: PlanInput): string {
	const name = basename(plan.name);
	return fileSafe(name.slice(0, name.length - extname(name).length)) || "plan";
}

/** Letters, digits, dots, underscores and hyphens of any script; the rest cannot stand in every file name. */
function fileSafe(name: string): string {
	return name.replace(/[^\p{L}\p{M}\p{N}._-]/gu, "_").slice(0, 100);
}

function wrong(why: string): Failure {
	return { status: status.call, why: `${why}.` };
}
