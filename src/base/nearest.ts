// Did-you-mean: the few words of a list that look most like one that was not understood.

/** At most three of `words` within a small edit distance of `word`, nearest first, ties in list order. */
export function nearestWords(word: string, words: Iterable<string>): string[] {
	const wanted = word.toLowerCase().slice(0, longestCompared);
	const most = Math.max(1, Math.floor(wanted.length / 3));
	const ranked: { word: string; distance: number }[] = [];
	for (const candidate of new Set(words)) {
		if (Math.abs(candidate.length - wanted.length) > most) continue;
		const distance = editDistance(wanted, candidate.toLowerCase());
		if (distance <= most) ranked.push({ word: candidate, distance });
	}
	return ranked
		.sort((one, other) => one.distance - other.distance)
		.slice(0, 3)
		.map((entry) => entry.word);
}

/** A sentence that offers the nearest words, or an empty text when nothing is near. */
export function didYouMean(word: string, words: Iterable<string>): string {
	const near = nearestWords(word, words).map((entry) => `\`${entry}\``);
	const last = near.pop();
	if (last === undefined) return "";
	return near.length === 0 ? `Did you mean ${last}?` : `Did you mean ${near.join(", ")} or ${last}?`;
}

/** Letters beyond this do not help to guess what was meant. */
const longestCompared = 64;

/** Edits (insert, delete, replace, exchange neighbours) from one word to the other; optimal string alignment. */
function editDistance(one: string, other: string): number {
	let beforeLast: number[] = [];
	let last = Array.from({ length: other.length + 1 }, (_, column) => column);
	for (let row = 1; row <= one.length; row++) {
		const current = [row];
		for (let column = 1; column <= other.length; column++) {
			const same = one[row - 1] === other[column - 1];
			let best = Math.min(
				(last[column] ?? 0) + 1,
				(current[column - 1] ?? 0) + 1,
				(last[column - 1] ?? 0) + (same ? 0 : 1),
			);
			if (row > 1 && column > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1])
				best = Math.min(best, (beforeLast[column - 2] ?? 0) + 1);
			current.push(best);
		}
		beforeLast = last;
		last = current;
	}
	return last[other.length] ?? 0;
}
