// A plan text in which every circuit says its slot: `from LC breaker 20 A` becomes `from LC.3 breaker 20 A`.
import { foldName } from "../plan/names.ts";
import type { Plan, Run } from "../plan/plan.ts";
import { findKeptLines, type ReadPlan } from "./kept-lines.ts";
import { joinLines, splitLines } from "./text-lines.ts";
import { listTreeLines } from "./tree-lines.ts";

/** Writes down the slots that were taken because they were the next free ones. */
export function pinSlots(read: ReadPlan, plan: Plan): string {
	const kept = findKeptLines(read, listTreeLines(read.tree));
	const here = plan.runs.filter((run) => run.span.file === read.tree.file);
	const runs = new Map(here.map((run) => [run.span.line, run]));
	const lines = splitLines(read.text);
	for (const statement of read.tree.statements) {
		const run = runs.get(statement.span.line);
		if (statement.kind !== "run" || run === undefined || kept.has(statement.span.line)) continue;
		const [from] = statement.from;
		const line = lines[statement.span.line - 1];
		if (from === undefined || line === undefined || !takesFreeSlot(run, from.text, plan)) continue;
		const { column, endColumn } = from.span;
		const words = `${line.words.slice(0, column - 1)}${run.protection ?? ""}${line.words.slice(endColumn - 1)}`;
		lines[statement.span.line - 1] = { ...line, words };
	}
	return joinLines(lines, read.text);
}

/** Whether a run that is said to come from a thing as a whole hangs on a device in it. */
function takesFreeSlot({ protection }: Run, from: string, plan: Plan): boolean {
	const device = plan.thingByName.get(foldName(protection ?? ""));
	return device?.owner !== undefined && foldName(device.owner) === foldName(from);
}
