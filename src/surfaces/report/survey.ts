// What came of every single mistake, as a table with a row for each sort of slip, as one line each, and as JSON.
import { Counter, type JudgedMistake, type Tally } from "../checker.ts";
import { visible, widthOf } from "./visible.ts";

/** The mistakes of one plan. */
export interface SurveyedPlan {
	readonly file: string;
	readonly mistakes: readonly JudgedMistake[];
}

/** A table for each plan, with every mistake below it where `every` asks for that; what was missed is always told. */
export function writeSurvey(plans: readonly SurveyedPlan[], every: boolean): string {
	return plans.map((plan) => writePlan(plan, every)).join("\n");
}

function writePlan({ file, mistakes }: SurveyedPlan, every: boolean): string {
	const tallies = count(mistakes);
	const listed = every ? mistakes : mistakes.filter(({ verdict }) => verdict === "missed");
	return [
		`${visible(file)}: ${summariseSurvey(mistakes)}`,
		"",
		...writeTallies(tallies),
		...(listed.length === 0 ? [] : ["", ...listed.map(writeMistake)]),
		"",
	].join("\n");
}

/** `812 single mistakes: 790 found, 20 harmless, 2 missed`. */
export function summariseSurvey(mistakes: readonly JudgedMistake[]): string {
	const told = verdicts.flatMap((verdict) => {
		const number = countOf(mistakes, verdict);
		return number === 0 ? [] : [`${number} ${words[verdict]}`];
	});
	return `${mistakes.length} single ${mistakes.length === 1 ? "mistake" : "mistakes"}${told.length === 0 ? "" : `: ${told.join(", ")}`}`;
}

/** By the schema published in `grammar/mistakes.schema.json`. */
export function writeSurveyJson(plans: readonly SurveyedPlan[]): string {
	const all = plans.flatMap((plan) => plan.mistakes);
	const report = {
		schema: 1,
		mistakes: plans.flatMap(({ file, mistakes }) =>
			mistakes.map((mistake) => ({
				file,
				operator: mistake.operator,
				at: mistake.at,
				verdict: mistake.verdict,
				by: mistake.verdict === "found" ? mistake.by : null,
				named: mistake.verdict === "found" && mistake.named,
				reason: mistake.verdict === "harmless" ? mistake.reason : null,
				reading: mistake.verdict === "meter-only" ? mistake.reading : null,
			})),
		),
		summary: {
			made: all.length,
			...Object.fromEntries(verdicts.map((verdict) => [verdict, countOf(all, verdict)])),
			operators: count(all).map(({ operator, made, verdicts: counts, named, harmlessShare }) => ({
				operator,
				made,
				...counts,
				named,
				harmlessShare: Math.round(harmlessShare * 1000) / 1000,
			})),
		},
	};
	return `${JSON.stringify(report, undefined, 2)}\n`;
}

function countOf(mistakes: readonly JudgedMistake[], verdict: JudgedMistake["verdict"]): number {
	return mistakes.filter((mistake) => mistake.verdict === verdict).length;
}

function count(mistakes: readonly JudgedMistake[]): readonly Tally[] {
	const counter = new Counter();
	for (const mistake of mistakes) counter.count(mistake);
	return counter.tallies;
}

const verdicts = ["found", "same", "harmless", "meter-only", "missed"] as const;
const words = {
	found: "found",
	same: "the same as the plan",
	harmless: "harmless",
	"meter-only": "for the meter only",
	missed: "missed",
} as const satisfies Record<(typeof verdicts)[number], string>;

/** Slips down, what came of them across. */
export function writeTallies(tallies: readonly Tally[]): string[] {
	const head = ["slip", "made", "found", "by name", "same", "harmless", "meter", "missed"];
	const rows = tallies.map(({ operator, made, verdicts: counts, named, harmlessShare }) => [
		operator,
		String(made),
		String(counts.found),
		String(named),
		String(counts.same),
		counts.harmless === 0 ? "0" : `${counts.harmless} (${tellShare(harmlessShare)})`,
		String(counts["meter-only"]),
		String(counts.missed),
	]);
	const widths = head.map((word, column) => Math.max(...[head, ...rows].map((row) => widthOf(row[column] ?? word))));
	return [head, ...rows].map((row) =>
		row
			.map((cell, column) => (column === 0 ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0)))
			.join("  ")
			.trimEnd(),
	);
}

function tellShare(share: number): string {
	return share < 0.01 ? "under 1 %" : `${Math.round(share * 100)} %`;
}

function writeMistake(mistake: JudgedMistake): string {
	return visible(`${mistake.verdict}: ${mistake.operator}: ${mistake.at}${tellWhy(mistake)}`);
}

function tellWhy(mistake: JudgedMistake): string {
	switch (mistake.verdict) {
		case "found":
			return ` (${mistake.by}${mistake.named ? "" : ", by what follows from it"})`;
		case "harmless":
			return ` (${mistake.reason})`;
		case "meter-only":
			return ` (${mistake.reading})`;
		case "same":
		case "missed":
			return "";
	}
}
