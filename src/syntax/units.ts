// Units and gauges as they are spelt, rightly or wrongly: what a spelling stands for, and what it may have meant.
import type { Finding } from "../base/finding.ts";
import { awg, type Gauge } from "../base/gauge.ts";
import { nearestWords } from "../base/nearest.ts";
import { type Dimension, findUnit, type Unit, units, unitsOf } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import { problem, quoted } from "./problem.ts";
import { gaugeWords } from "./vocabulary.ts";

/** The unit that is spelt so but for its capitals, where only one is: `20 a`, `14 FT`. */
export function unitInOtherCase(spelling: string): Unit | undefined {
	if (findUnit(spelling) !== undefined) return undefined;
	const alike = byLowerCase.get(spelling.toLowerCase());
	return alike?.length === 1 ? alike[0] : undefined;
}

/** The unit that a misspelt one looks most like, of one dimension or of all. */
export function nearUnit(spelling: string, dimension?: Dimension): Unit | undefined {
	const table = spellingsOf(dimension);
	const [near] = nearestWords(spelling, table.keys());
	return near === undefined ? undefined : table.get(near);
}

/** The finding for a word that should be a unit; offers the nearest one and, where known, the dimension's units. */
export function unknownUnit(spelling: string, span: Span, near: Unit | undefined, dimension?: Dimension): Finding {
	const offer = near ? [`Did you mean \`${near.symbol}\`?`] : [];
	const fitting = dimension ? [`Units that fit here: ${unitsOf(dimension).join(", ")}.`] : [];
	return problem("unit-unknown", span, {
		title: `${quoted(spelling)} is no unit`,
		label: near ? `perhaps ${near.symbol}` : "no unit",
		help: [...offer, ...fitting, "Capitals count: `mA` is a thousandth of an ampere."].join(" "),
	});
}

/** Whether a word behind a number makes it a gauge. */
export function isGaugeWord(word: string): boolean {
	return gaugeWords.some((gaugeWord) => gaugeWord === word);
}

/** The gauge of a number (noughts as 0, -1, -2, -3), or undefined where there is no such size. */
export function gaugeByNumber(number: number): Gauge | undefined {
	return Number.isInteger(number) && number >= -3 && number <= 40 ? awg(number) : undefined;
}

/** A figure without the digits that only come from calculating with it. */
export function rounded(value: number): number {
	return Number(value.toPrecision(9));
}

/** Units by all their spellings; kept, because a name such as `1B` is looked up as well. */
function spellingsOf(dimension: Dimension | undefined): Map<string, Unit> {
	const known = tables.get(dimension);
	if (known) return known;
	const fitting = units.filter((unit) => dimension === undefined || unit.dimension === dimension);
	const table = new Map(
		fitting.flatMap((unit) => [unit.symbol, ...(unit.also ?? [])].map((word): [string, Unit] => [word, unit])),
	);
	tables.set(dimension, table);
	return table;
}

const tables = new Map<Dimension | undefined, Map<string, Unit>>();
const byLowerCase = new Map<string, Unit[]>();
for (const unit of units)
	for (const spelling of [unit.symbol, ...(unit.also ?? [])]) {
		const alike = byLowerCase.get(spelling.toLowerCase()) ?? [];
		if (!alike.includes(unit)) alike.push(unit);
		byLowerCase.set(spelling.toLowerCase(), alike);
	}
