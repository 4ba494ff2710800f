// A thread of the command that checks plans and nothing else: texts come in, what was found goes out, in the same order.
import * as fs from "node:fs";
import type { MessagePort } from "node:worker_threads";
import { checkPlan } from "../../pipeline.ts";
import type { CheckedFacts, PlanText } from "../checker.ts";
import { findUsed } from "../files/used.ts";

/** The word by which the command knows that it is such a thread. */
export const threadWord = "--check-thread";

/** Answers every message of texts with what was found in them. */
export function answerChecks(port: MessagePort): void {
	port.on("message", (texts: readonly PlanText[]) => {
		port.postMessage(texts.map(checkText));
	});
}

function checkText({ text, name, path, roots }: PlanText): CheckedFacts {
	const { findings, understood, used, scope } = checkPlan(text, name, findUsed(fs, { name, path }, roots));
	return { findings, understood, used, scope };
}
