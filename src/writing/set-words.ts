// One line of a plan with its words set: one blank between them, commas close behind, figures in their usual spelling.

/** A figure of a line, by the offsets it stands at, in its usual spelling. */
export interface SpeltFigure {
	readonly start: number;
	readonly end: number;
	readonly spelling: string;
}

/** The words of a line, and the comment behind them or alone on it; each empty where there is none. */
export interface SetLine {
	readonly words: string;
	readonly comment: string;
}

/** Sets a line that was read without a problem. No word is changed, none moved, and no comma added or taken from between two. */
export function setWords(line: string, figures: readonly SpeltFigure[]): SetLine {
	const figureAt = new Map(figures.map((figure) => [figure.start, figure]));
	let words = "";
	let hasComma = false;
	for (let offset = 0; offset < line.length; ) {
		if (line.startsWith("//", offset)) return { words, comment: line.slice(offset).trimEnd() };
		const mark = line.charAt(offset);
		if (blanks.has(mark)) {
			hasComma ||= mark === ",";
			offset++;
			continue;
		}
		const figure = figureAt.get(offset);
		const end = figure?.end ?? endOfWord(line, offset);
		words +=
			gapBetween(words, mark, hasComma, line.startsWith("..", offset)) + (figure?.spelling ?? line.slice(offset, end));
		hasComma = false;
		offset = end;
	}
	return { words, comment: "" };
}

/** What is set between the words so far and the next: nothing at the left edge and around marks that stand close. */
function gapBetween(words: string, mark: string, hasComma: boolean, isRow: boolean): string {
	const isClose = words === "" || words.endsWith("(") || words.endsWith("..") || isRow || mark === ":" || mark === ")";
	return isClose ? "" : hasComma ? ", " : " ";
}

/** One past the word, text or mark that begins here. */
function endOfWord(line: string, start: number): number {
	const mark = line.charAt(start);
	if (line.startsWith("..", start)) return start + 2;
	if (mark === ":" || mark === "(" || mark === ")") return start + 1;
	if (mark === '"') {
		const quote = line.indexOf('"', start + 1);
		return quote < 0 ? line.length : quote + 1;
	}
	let end = start + 1;
	while (end < line.length && !endsWord(line, end)) {
		const count = /^\([0-9]+\)/.exec(line.slice(end, end + longestCount))?.[0].length;
		end += count ?? 1;
	}
	return end;
}

/** Whether a word that has begun ends before this character; the `(2)` of `black(2)` belongs to it. */
function endsWord(line: string, offset: number): boolean {
	const mark = line.charAt(offset);
	if (blanks.has(mark) || mark === '"' || mark === ":" || mark === ")") return true;
	if (mark === "(") return !/^\([0-9]+\)/.test(line.slice(offset, offset + longestCount));
	return line.startsWith("..", offset) || line.startsWith("//", offset);
}

/** White space of the notation. */
const blanks = new Set([" ", "\t", ","]);
/** A longer number counts nothing. */
const longestCount = 20;
