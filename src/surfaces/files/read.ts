// Reads the bytes of one file: regular files only, never more than a limit. What the bytes say is for others.
import { constants } from "node:fs";
import { explainError, type FileSystem } from "./system.ts";

/** The largest plan that is read, in bytes. */
export const largestPlan = 2_000_000;

/** What came of reading: the bytes, the size of a file above the limit, or why it cannot be read. */
export type Reading =
	| { readonly kind: "bytes"; readonly bytes: Uint8Array; readonly identity: FileIdentity }
	| { readonly kind: "too-large"; readonly size: number; readonly identity: FileIdentity }
	| { readonly kind: "unreadable"; readonly why: string };

/** Which file it is on this machine, whatever its name. */
export interface FileIdentity {
	readonly device: bigint;
	readonly inode: bigint;
}

/** The bytes of the file at `path`, if there are at most `limit`. It is opened once, and what was opened is judged. */
export function readBytes(files: FileSystem, path: string, limit: number): Reading {
	let handle: number;
	try {
		// Without waiting: a pipe that nobody writes to would hold us up for ever.
		handle = files.openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
	} catch (error) {
		return { kind: "unreadable", why: explainError(error) };
	}
	try {
		const facts = files.fstatSync(handle, { bigint: true });
		if (facts.isDirectory()) return { kind: "unreadable", why: "it is a folder" };
		if (!facts.isFile()) return { kind: "unreadable", why: "it is not a regular file" };
		const identity = { device: facts.dev, inode: facts.ino };
		// One byte of room more than is stated, to notice a file that grows or states no size.
		let bytes = new Uint8Array(Math.min(Number(facts.size), limit) + 1);
		let length = 0;
		for (;;) {
			const count = files.readSync(handle, bytes, length, bytes.length - length, null);
			if (count === 0) return { kind: "bytes", bytes: bytes.subarray(0, length), identity };
			length += count;
			if (length > limit) return { kind: "too-large", size: Math.max(length, Number(facts.size)), identity };
			if (length === bytes.length) {
				const larger = new Uint8Array(Math.min(2 * length, limit) + 1);
				larger.set(bytes);
				bytes = larger;
			}
		}
	} catch (error) {
		return { kind: "unreadable", why: explainError(error) };
	} finally {
		files.closeSync(handle);
	}
}
