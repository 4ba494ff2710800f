// Names of temporary files, and the removal of those that a killed run has left beside its target.
import { join } from "node:path";
import type { FileSystem } from "./system.ts";

/** A name for a temporary file beside `base`; it tells which process it belongs to. */
export function temporaryName(base: string, process: number, salt: string): string {
	return `${prefix(base)}${process}.${salt}.part`;
}

/** Removes the temporary files of `base` in `folder` whose process is gone. A file that cannot be removed stays. */
export function sweepStale(
	files: FileSystem,
	folder: string,
	base: string,
	isRunning: (process: number) => boolean,
): void {
	let names: string[];
	try {
		names = files.readdirSync(folder);
	} catch {
		// A folder that may be written but not listed.
		return;
	}
	for (const name of names) {
		if (!name.startsWith(prefix(base))) continue;
		const owner = /^([0-9]{1,10})\.[0-9a-z]{1,32}\.part$/.exec(name.slice(prefix(base).length))?.[1];
		if (owner === undefined || isRunning(Number(owner))) continue;
		try {
			files.unlinkSync(join(folder, name));
		} catch {
			// Somebody else swept it, or it is not ours to remove: neither hinders the writing.
		}
	}
}

/** Hidden, so that a folder of plans shows nothing of it; short, because the base may be nearly as long as a name can be. */
function prefix(base: string): string {
	return `.${base.slice(0, 100)}.`;
}
