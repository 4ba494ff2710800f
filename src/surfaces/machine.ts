// The world of the real command: this process with its streams, files and signals.
import * as fs from "node:fs";
import { availableParallelism } from "node:os";
import { basename, join } from "node:path";
import facts from "../../package.json" with { type: "json" };
import { kinds } from "../kinds/index.ts";
import {
	checkPlan,
	drawPlan,
	figurePlan,
	makeMistakes,
	openHandbook,
	repairPlan,
	showPlan,
	sizePlan,
	tidyPlan,
	writeOutPlan,
} from "../pipeline.ts";
import { planCodes } from "../plan/codes.ts";
import { ruleGroups } from "../rules/index.ts";
import { syntaxProblems } from "../syntax/codes.ts";
import type { Stream, World } from "./command/world.ts";
import { expectCheck } from "./engine.ts";
import { notText, textNotUtf8 } from "./files/codes.ts";
import type { Reading } from "./files/read.ts";
import type { Writer } from "./files/replace.ts";
import { errorCode, explainError } from "./files/system.ts";
import { makePages } from "./reference/pages.ts";

/** The version of this package. */
export const { version } = facts;

/** The world of this process, writing where it is told to; `stopped` tells whether the user wants to stop. */
export function openWorld(output: Stream, messages: Stream, stopped: () => boolean): World {
	return {
		version,
		checkPlan: (text, file, find) => {
			expectCheck(text);
			const result = checkPlan(text, file, find);
			// Ids in a drawing begin with the plan's name; with its folders they would differ by where the user stands.
			const drawable = { ...result, file: basename(file) };
			return {
				...result,
				draw: (sheets) => drawPlan(drawable, sheets),
				show: () => showPlan(result),
				figures: (wish) => figurePlan(result, wish),
				sizes: (circuit) => sizePlan(result, circuit),
				repairs: (budget) => repairPlan(result, text, find, budget),
				writeOut: () => writeOutPlan(result, text),
				makeMistakes: () => makeMistakes(result),
			};
		},
		checkInThreads: async (texts, threads) => {
			// Threads are for many plans; a check of one is not to wait for them.
			const { checkInThreads } = await import("./threads/check-in-threads.ts");
			return checkInThreads(texts, threads, join(__dirname, "ferrule.cjs"), stopped);
		},
		processors: availableParallelism,
		tidyPlan,
		pages: () => makePages({ ruleGroups, problems: [notText, textNotUtf8, ...syntaxProblems, ...planCodes], kinds }),
		handbook: openHandbook,
		files: fs,
		writer,
		folder: process.cwd(),
		environment: (name) => process.env[name],
		output,
		messages,
		readInput,
		interrupted: async () => {
			// A turn of the loop, in which a signal that has come in is delivered.
			await new Promise((resolve) => setImmediate(resolve));
			return stopped();
		},
	};
}

const writer: Writer = {
	process: process.pid,
	salt: () => process.hrtime.bigint().toString(36),
	isRunning: (number) => {
		try {
			process.kill(number, 0);
			return true;
		} catch (error) {
			// One that belongs to somebody else may not be signalled, but it runs.
			return errorCode(error) === "EPERM";
		}
	},
};

/** Standard input to its end or to the limit. */
async function readInput(limit: number): Promise<Reading> {
	const chunks: Uint8Array[] = [];
	const identity = { device: -1n, inode: -1n };
	let length = 0;
	try {
		// Node takes a folder for an input without content.
		if (fs.fstatSync(process.stdin.fd).isDirectory()) return { kind: "unreadable", why: "it is a folder" };
		for await (const chunk of process.stdin) {
			if (!(chunk instanceof Uint8Array)) continue;
			chunks.push(chunk);
			length += chunk.length;
			if (length > limit) return { kind: "too-large", size: length, identity };
		}
		return { kind: "bytes", bytes: Buffer.concat(chunks), identity };
	} catch (error) {
		return { kind: "unreadable", why: explainError(error) };
	}
}
