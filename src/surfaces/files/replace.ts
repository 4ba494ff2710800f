// Writes one file whole or not at all: a temporary file beside it takes its place only once all of it is on the disk.
import { constants } from "node:fs";
import { basename, dirname, join } from "node:path";
import { status } from "../status.ts";
import { type FileIdentity, readBytes } from "./read.ts";
import { sweepStale, temporaryName } from "./stale.ts";
import { errorCode, explainError, type Failure, type FileSystem } from "./system.ts";

/** What may be replaced, and what never. */
export interface Permission {
	/** Files that were read for this result: never replaced. */
	readonly inputs: readonly FileIdentity[];
	/** Whether a file that is there may be replaced: `never`, `any`, one whose bytes pass a test, or `only` one with these bytes. */
	readonly replace: "never" | "any" | ((bytes: Uint8Array) => boolean) | { readonly only: Uint8Array };
}

/** The process that writes: its number, something no other run has, and which numbers are alive. */
export interface Writer {
	readonly process: number;
	readonly salt: () => string;
	readonly isRunning: (process: number) => boolean;
}

/** Puts `text` at `path`. Undefined: it is there whole. A failure: what was there before is untouched. */
export function replaceFile(
	files: FileSystem,
	writer: Writer,
	path: string,
	text: string,
	permission: Permission,
): Failure | undefined {
	const target = findTarget(files, path, permission);
	if (target.kind === "refused") return { status: status.create, why: target.why };
	const folder = dirname(target.path);
	sweepStale(files, folder, basename(target.path), writer.isRunning);
	const temporary = join(folder, temporaryName(basename(target.path), writer.process, writer.salt()));
	let handle: number;
	try {
		handle = files.openSync(temporary, "wx");
	} catch (error) {
		return { status: status.create, why: explainError(error) };
	}
	try {
		fill(files, handle, new TextEncoder().encode(text), target.mode);
		if (stateOf(files, target.path) !== target.state)
			throw new Error("something else changed it while it was being written");
		files.renameSync(temporary, target.path);
	} catch (error) {
		remove(files, temporary);
		return { status: status.transfer, why: explainError(error) };
	}
	syncFolder(files, folder);
	return undefined;
}

/** Where the bytes will go and what stands there now, or why they may not. */
type Target =
	| { readonly kind: "target"; readonly path: string; readonly state: string; readonly mode: number | undefined }
	| { readonly kind: "refused"; readonly why: string };

/** The real place behind `path`. */
function findTarget(files: FileSystem, path: string, permission: Permission): Target {
	try {
		if (files.lstatSync(path, { throwIfNoEntry: false }) === undefined) {
			const folder = files.realpathSync(dirname(path));
			return { kind: "target", path: join(folder, basename(path)), state: "absent", mode: undefined };
		}
		const real = files.realpathSync(path);
		const facts = files.statSync(real);
		const state = stateOf(files, real);
		if (facts.isDirectory()) return refuse("it is a folder");
		if (!facts.isFile()) return refuse("it is not a regular file");
		if (facts.nlink > 1) return refuse("the file has a second name (a hard link), which would keep the old content");
		files.accessSync(real, constants.W_OK);
		if (isInput(files, real, permission.inputs))
			return refuse("it is a plan that was read; a plan is never written over");
		if (!mayReplace(files, real, permission)) return refuse(notOurs(permission));
		return { kind: "target", path: real, state, mode: facts.mode & 0o7777 };
	} catch (error) {
		return refuse(errorCode(error) === "ENOENT" ? "the folder it should go to does not exist" : explainError(error));
	}
}

function refuse(why: string): Target {
	return { kind: "refused", why };
}

function isInput(files: FileSystem, path: string, inputs: readonly FileIdentity[]): boolean {
	const { dev, ino } = files.statSync(path, { bigint: true });
	return inputs.some((input) => input.device === dev && input.inode === ino);
}

function mayReplace(files: FileSystem, path: string, permission: Permission): boolean {
	if (permission.replace === "never" || permission.replace === "any") return permission.replace === "any";
	const reading = readBytes(files, path, largestOwn);
	if (reading.kind !== "bytes") return false;
	return typeof permission.replace === "function"
		? permission.replace(reading.bytes)
		: areSame(reading.bytes, permission.replace.only);
}

function areSame(one: Uint8Array, other: Uint8Array): boolean {
	return one.length === other.length && one.every((byte, index) => byte === other[index]);
}

function notOurs(permission: Permission): string {
	if (typeof permission.replace === "object") return "something else changed it after it was read";
	return permission.replace === "never"
		? "there is a file already"
		: "the file there was not made by Ferrule; `--force` replaces it";
}

/** No file of ours is larger, in bytes. */
const largestOwn = 20_000_000;

/** Which bytes stand at `path`, as far as the system tells: another value means that something has changed them. */
function stateOf(files: FileSystem, path: string): string {
	const facts = files.lstatSync(path, { bigint: true, throwIfNoEntry: false });
	return facts === undefined ? "absent" : `${facts.dev} ${facts.ino} ${facts.size} ${facts.mtimeNs}`;
}

/** Writes all of `bytes`, sees that they are all there and on the disk, and closes. */
function fill(files: FileSystem, handle: number, bytes: Uint8Array, mode: number | undefined): void {
	try {
		for (let written = 0; written < bytes.length; ) {
			const count = files.writeSync(handle, bytes, written, bytes.length - written, null);
			if (count === 0) throw new Error("the disk takes no more");
			written += count;
		}
		if (files.fstatSync(handle).size !== bytes.length) throw new Error("not all of it reached the disk");
		if (mode !== undefined) files.fchmodSync(handle, mode);
		files.fsyncSync(handle);
	} finally {
		files.closeSync(handle);
	}
}

function remove(files: FileSystem, path: string): void {
	try {
		files.unlinkSync(path);
	} catch {
		// The error that led here is the one to report; the next run sweeps what stayed.
	}
}

/** Makes the new name last through a power cut, where the system lets a folder be synced. */
function syncFolder(files: FileSystem, folder: string): void {
	let handle: number;
	try {
		handle = files.openSync(folder, constants.O_RDONLY);
	} catch {
		return;
	}
	try {
		files.fsyncSync(handle);
	} catch {
		// Some file systems sync no folders; the file itself is whole either way.
	} finally {
		files.closeSync(handle);
	}
}
