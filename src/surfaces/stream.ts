// A stream of this process, such as standard output, as the command writes to it.
import { fstatSync, writeSync } from "node:fs";
import type { Stream } from "./command/world.ts";

/**
 * Standard output is 1, standard error 2; `open` gives Node's own stream of it. That takes longer to load than a small plan takes to
 * check: what can be written at once is, and Node's stream is opened only for a terminal, or where the reader is slow or gone.
 */
export function streamOf(descriptor: number, open: () => NodeJS.WriteStream): Stream {
	let stream = mayBeTerminal(descriptor) ? open() : undefined;
	return {
		write: (text) => {
			const rest = stream === undefined ? writeAtOnce(descriptor, Buffer.from(text)) : text;
			if (rest.length === 0) return;
			stream ??= open();
			stream.write(rest);
		},
		// A terminal that does not know its width says 0.
		columns: stream?.isTTY ? stream.columns || 80 : undefined,
	};
}

/** Writes what it can, and gives what is left; Node's stream then waits, or meets the same trouble and tells of it. */
function writeAtOnce(descriptor: number, bytes: Buffer): Buffer {
	let rest = bytes;
	try {
		while (rest.length > 0) rest = rest.subarray(writeSync(descriptor, rest));
	} catch {
		return rest;
	}
	return rest;
}

function mayBeTerminal(descriptor: number): boolean {
	try {
		return fstatSync(descriptor).isCharacterDevice();
	} catch {
		// It is closed: Node's stream knows what to do about that.
		return true;
	}
}
