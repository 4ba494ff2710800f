// Finds where a word or a figure ends in a line, one character after the other, so that no text can slow it down.

/** Stands for a hidden character that was taken out of a line; reading skips it without moving the columns. */
export const hiddenMark = "\uffff";

/** The end of the word that begins at `offset`, dots, `(2)` and `@END` included; `offset` itself where none begins. */
export function scanWord(text: string, offset: number): number {
	return startsName(text, offset) ? scanPath(text, skipName(text, offset)) : offset;
}

/**
 * The end of the word that begins with a digit at `offset`: `12`, `0.8`, `12-2`, `3G2.5`, `4/0`, `30A`, `1A`, `10.black`.
 * A sign right before the first digit belongs to it.
 */
export function scanFigure(text: string, offset: number): number {
	let end = text[offset] === "-" || text[offset] === "+" ? offset + 1 : offset;
	if (!isDigit(text.charCodeAt(end))) return offset;
	for (;;) {
		const here = skipName(text, end);
		const mark = text[here];
		const next = text.charCodeAt(here + 1);
		const joins = mark === "/" ? isDigit(text.charCodeAt(here - 1)) && isDigit(next) : mark === "." && isDigit(next);
		if (joins) end = here + 1;
		else if (mark === "%") return here + 1;
		else return scanPath(text, here);
	}
}

/** Whether the code unit is one of the ten digits 0 to 9. */
export function isDigit(code: number): boolean {
	return code >= 48 && code <= 57;
}

/** What follows a first name: `.step`, `@end` and `(2)`, as often as they stand there. */
function scanPath(text: string, offset: number): number {
	let end = offset;
	for (;;) {
		const mark = text[end];
		if (mark === ".") {
			const step = scanStep(text, end + 1);
			if (step === end + 1) return end;
			end = step;
		} else if (mark === "@") {
			const name = skipName(text, end + 1);
			if (name === end + 1) return end;
			end = name;
		} else if (mark === "(") {
			const close = scanCount(text, end);
			if (close === end) return end;
			end = close;
		} else return end;
	}
}

/** A step behind a dot: a name, or `+` or `-` alone. */
function scanStep(text: string, offset: number): number {
	return text[offset] === "+" ? offset + 1 : skipName(text, offset);
}

/** The end of `(2)`. */
function scanCount(text: string, offset: number): number {
	let end = offset + 1;
	while (isDigit(text.charCodeAt(end))) end++;
	return end > offset + 1 && text[end] === ")" ? end + 1 : offset;
}

function skipName(text: string, offset: number): number {
	let end = offset;
	for (;;) {
		const width = nameWidth(text, end);
		if (width === 0) return end;
		end += width;
	}
}

/** Whether a name begins here: a letter, `_`, or the degree sign of a temperature's unit. */
function startsName(text: string, offset: number): boolean {
	const code = text.charCodeAt(offset);
	if (code < 128) return isLetter(code) || code === 95;
	if (code === 0xb0) return true;
	return /\p{L}/u.test(String.fromCodePoint(text.codePointAt(offset) ?? 0));
}

/** How many code units of a name stand here: 0, 1, or 2 for a letter beyond the first plane. */
function nameWidth(text: string, offset: number): number {
	const code = text.charCodeAt(offset);
	if (code < 128) return isLetter(code) || isDigit(code) || code === 95 || code === 45 ? 1 : 0;
	if (Number.isNaN(code)) return 0;
	if (text[offset] === hiddenMark || code === 0xb0) return 1;
	const character = String.fromCodePoint(text.codePointAt(offset) ?? 0);
	// Numbers of any script count, so that a look-alike digit stays in its word and is named in the finding.
	return /[\p{L}\p{M}\p{N}]/u.test(character) ? character.length : 0;
}

function isLetter(code: number): boolean {
	return (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
}
