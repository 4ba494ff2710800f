// Rows of alike names: `l1..l6` stands for six things.
import type { NameTerm, NewName } from "../syntax/tree.ts";

/** The names of a row `l1..l6`, or the one name. */
export function namesOf(name: NewName): NameTerm[] {
	const { first, last } = name;
	if (last === undefined) return [first];
	const [from, to] = [splitNumber(first.text), splitNumber(last.text)];
	if (from === undefined || to === undefined || from.stem !== to.stem || to.number < from.number) return [first, last];
	const count = Math.min(to.number - from.number, longestRow - 1) + 1;
	return Array.from({ length: count }, (_, index) => {
		const text = `${from.stem}${from.number + index}`;
		return { ...first, text, head: text, steps: [] };
	});
}

/** A longer row is refused when the text is read. */
const longestRow = 1000;

function splitNumber(text: string): { stem: string; number: number } | undefined {
	let start = text.length;
	while (start > 0 && text.charAt(start - 1) >= "0" && text.charAt(start - 1) <= "9") start--;
	const digits = text.slice(start);
	return digits === "" || digits.length > 6 ? undefined : { stem: text.slice(0, start), number: Number(digits) };
}
