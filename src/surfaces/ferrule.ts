// The command: takes the words of the call, runs them, and ends with their status. Never ends early: what was written must get out.
import { runCommand, tellInternalFault } from "./command/run.ts";
import { expectCall } from "./engine.ts";
import { errorCode, explainError } from "./files/system.ts";
import { openWorld, version } from "./machine.ts";
import { status } from "./status.ts";
import { streamOf } from "./stream.ts";
import { answerChecks, threadWord } from "./threads/check-thread.ts";

/** A status that overrules that of the call: a stream broke, or something failed behind its back. */
let forced: number | undefined;
let stopped = false;

void start();

/** The threads that the command starts for itself run this very file. */
async function start(): Promise<void> {
	if (process.argv[2] === threadWord) {
		const { parentPort } = await import("node:worker_threads");
		if (parentPort !== null) return answerChecks(parentPort);
	}
	runAsCommand();
}

function runAsCommand(): void {
	const messages = streamOf(2, () =>
		process.stderr.on("error", () => {
			forced ??= status.readerGone;
		}),
	);
	const output = streamOf(1, () =>
		process.stdout.on("error", (error) => {
			if (errorCode(error) !== "EPIPE" && forced === undefined)
				messages.write(`ferrule: the output cannot be written: ${explainError(error)}.\n`);
			forced ??= errorCode(error) === "EPIPE" ? status.readerGone : status.transfer;
		}),
	);
	process.on("uncaughtException", (error) => {
		if (forced === undefined) messages.write(tellInternalFault(error, version));
		forced ??= status.internal;
	});
	process.on("exit", () => {
		if (forced !== undefined) process.exitCode = forced;
	});
	const interruption = new Promise<number>((resolve) => {
		// Once: a second signal ends the process at once, whatever it is doing.
		process.once("SIGINT", () => {
			stopped = true;
			process.stdin.destroy();
			resolve(status.interrupted);
		});
	});

	const words = process.argv.slice(2);
	expectCall(words);
	void Promise.race([
		runCommand(
			words,
			openWorld(output, messages, () => stopped),
		),
		interruption,
	]).then((code) => {
		process.exitCode = code;
	});
}
