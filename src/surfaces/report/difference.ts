// What differs between a text and its tidied form, in the lines that `diff -u` writes: they can be read, and applied with `patch`.

/** Empty where nothing differs. `name` is that of the file. A tidied text has the lines of its origin, but for blank ones left out. */
export function writeDifference(before: string, after: string, name: string): string {
	const steps = compare(splitText(before), splitText(after));
	const hunks = findHunks(steps);
	if (hunks.length === 0) return "";
	return [`--- ${name}`, `+++ ${name}`, ...hunks.flatMap((hunk) => writeHunk(steps, hunk)), ""].join("\n");
}

/** A line that stays, goes or comes; with its numbers before and after, counted from 1. */
interface Step {
	readonly mark: " " | "-" | "+";
	readonly line: string;
	readonly before: number;
	readonly after: number;
}
/** Steps from one to before another. */
interface Hunk {
	readonly from: number;
	readonly to: number;
}

function compare(before: readonly string[], after: readonly string[]): Step[] {
	const steps: Step[] = [];
	let [old, now] = [0, 0];
	while (old < before.length || now < after.length) {
		const [gone, come] = [before[old], after[now]];
		const place = { before: old + 1, after: now + 1 };
		if (gone !== undefined && gone === come) steps.push({ mark: " ", line: gone, ...place });
		else {
			const isLeftOut = gone !== undefined && idle.test(gone) && !idle.test(come ?? "words");
			if (gone !== undefined) steps.push({ mark: "-", line: gone, ...place });
			if (come !== undefined && !isLeftOut) steps.push({ mark: "+", line: come, ...place });
			else now--;
		}
		old++;
		now++;
	}
	return gatherChanges(steps);
}

/** In a row of changed lines those that go stand before those that come. */
function gatherChanges(steps: readonly Step[]): Step[] {
	const gathered: Step[] = [];
	let come: Step[] = [];
	const bring = (): void => {
		for (const step of come) gathered.push(step);
		come = [];
	};
	for (const step of steps) {
		if (step.mark === " ") bring();
		(step.mark === "+" ? come : gathered).push(step);
	}
	bring();
	return gathered;
}

/** Changes with the lines around them; changes that are near each other stand in one hunk. */
function findHunks(steps: readonly Step[]): Hunk[] {
	const hunks: { from: number; to: number }[] = [];
	for (const [index, step] of steps.entries()) {
		if (step.mark === " ") continue;
		const last = hunks.at(-1);
		const to = Math.min(steps.length, index + 1 + around);
		if (last !== undefined && index - around <= last.to) last.to = to;
		else hunks.push({ from: Math.max(0, index - around), to });
	}
	return hunks;
}

function writeHunk(steps: readonly Step[], { from, to }: Hunk): string[] {
	const shown = steps.slice(from, to);
	const count = (mark: "-" | "+") => shown.filter((step) => step.mark === " " || step.mark === mark).length;
	const start = (first: number, length: number) => `${length === 0 ? first - 1 : first},${length}`;
	const [first] = shown;
	const before = start(first?.before ?? 1, count("-"));
	const after = start(first?.after ?? 1, count("+"));
	return [`@@ -${before} +${after} @@`, ...shown.map(({ mark, line }) => `${mark}${line}`)];
}

/** Its lines; a note of `diff` stands behind a last one that is not ended. */
function splitText(text: string): string[] {
	const lines = text.split(/\r\n|\r|\n/);
	const last = lines.pop() ?? "";
	return last === "" ? lines : [...lines, `${last}\n\\ No newline at end of file`];
}

/** A line without words. */
const idle = /^[ \t,]*$/;
/** Unchanged lines shown before and behind a change. */
const around = 3;
