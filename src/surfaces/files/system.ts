// The calls on the file system that surfaces make, so that a test can hand in one that fails.
import type * as fs from "node:fs";

/** Node's own synchronous calls by their own names; `node:fs` itself fits. */
export type FileSystem = Pick<
	typeof fs,
	| "accessSync"
	| "closeSync"
	| "fchmodSync"
	| "fstatSync"
	| "fsyncSync"
	| "lstatSync"
	| "mkdirSync"
	| "openSync"
	| "readSync"
	| "readdirSync"
	| "realpathSync"
	| "renameSync"
	| "statSync"
	| "unlinkSync"
	| "writeSync"
>;

/** Why something could not be done, and the exit status that says so. */
export interface Failure {
	readonly status: number;
	/** The reason in a few plain words, without a closing stop. */
	readonly why: string;
}

/** The system's code of an error (`ENOENT`), or an empty text. */
export function errorCode(error: unknown): string {
	return error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : "";
}

/** What the system's code means, in plain words. */
export function explainError(error: unknown): string {
	const code = errorCode(error);
	if (code !== "") return meanings.get(code) ?? `the system says ${code}`;
	return error instanceof Error ? error.message : String(error);
}

const meanings = new Map([
	["ENOENT", "there is no such file"],
	["EACCES", "you have no permission for it"],
	["EPERM", "you have no permission for it"],
	["EROFS", "the disk can only be read"],
	["EISDIR", "it is a folder"],
	["ENOTDIR", "a part of its path is not a folder"],
	["ENOSPC", "the disk is full"],
	["EDQUOT", "your share of the disk is used up"],
	["EFBIG", "the file would be too large for the disk"],
	["EIO", "the disk reports a fault"],
	["ELOOP", "its links lead round in a circle"],
	["ENAMETOOLONG", "its name is too long"],
	["EMFILE", "too many files are open"],
	["ENXIO", "it is not a file that can be read"],
]);
