// Text from a plan made safe and countable for a terminal: nothing in it can move the cursor or turn the line round.

/** Control characters as `\x1b`; marks that reorder, hide or break text, and lone surrogates, as `\u{202e}`. */
export function visible(text: string): string {
	if (/^[\x20-\x7e]*$/.test(text)) return text;
	return text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu, (character) => {
		const code = (character.codePointAt(0) ?? 0).toString(16);
		return code.length <= 2 ? `\\x${code.padStart(2, "0")}` : `\\u{${code}}`;
	});
}

/** Text of several lines, each made safe, with a newline at its end. */
export function visibleLines(text: string): string {
	const lines = text.endsWith("\n") ? text.slice(0, -1) : text;
	return `${lines.split("\n").map(visible).join("\n")}\n`;
}

/** Columns that a text takes on a terminal: none for combining marks, two for wide characters (Unicode annex 11, recalled). */
export function widthOf(text: string): number {
	let width = 0;
	for (const character of text) width += widthOfCharacter(character);
	return width;
}

/** Words of `text` in lines of at most `width` columns; a word that is longer is broken. Never empty. */
export function wrap(text: string, width: number): string[] {
	const lines: string[] = [];
	let line = "";
	for (const word of text.split(/ +/).flatMap((word) => breakWord(word, width))) {
		if (line !== "" && widthOf(line) + 1 + widthOf(word) > width) {
			lines.push(line);
			line = word;
		} else line = line === "" ? word : `${line} ${word}`;
	}
	lines.push(line);
	return lines;
}

function widthOfCharacter(character: string): number {
	if (character <= "~") return 1;
	if (/^[\p{Mn}\p{Me}]/u.test(character)) return 0;
	return isWide(character) ? 2 : 1;
}

/** Whether a character takes two columns. */
function isWide(character: string): boolean {
	return /^[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97c\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}\p{Emoji_Presentation}]/u.test(
		character,
	);
}

function breakWord(word: string, width: number): string[] {
	if (widthOf(word) <= width) return [word];
	const pieces: string[] = [];
	let piece = "";
	for (const character of word) {
		if (piece !== "" && widthOf(piece) + widthOfCharacter(character) > width) {
			pieces.push(piece);
			piece = "";
		}
		piece += character;
	}
	return [...pieces, piece];
}
