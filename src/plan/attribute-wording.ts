// What to say of a word or figure behind a thing that does not fit its kind.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import { unitsOf } from "../base/quantity.ts";
import { startSentence, withArticle } from "../base/wording.ts";
import type { Kind } from "../kinds/kind.ts";
import type { Term } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { placeWords } from "./places.ts";

/** The finding for a word behind a thing that says nothing its kind can have. */
export function unknownAttribute(kind: Kind, term: Term, text: string): Finding {
	const known = kind.attributes.flatMap((spec) =>
		spec.takes === "choice"
			? spec.words
			: spec.takes === "phrase"
				? spec.phrases
				: "word" in spec && spec.word !== undefined
					? [spec.word]
					: [spec.name],
	);
	const words = [...known, "in", "box", "metal", "plastic", "gangs", "clamps", "cover", "terminals"];
	return planFinding("attribute-unknown", {
		title: `\`${text}\` says nothing about ${withArticle(kind.name)}`,
		span: term.span,
		label: "not understood",
		help: [
			// What a place is like is said of the place, not of each thing in it.
			placeWords.includes(text) ? `Say it of the place: \`place here ${text}\`, and \`in here\` behind the thing.` : "",
			didYouMean(text, words),
			`${startSentence(withArticle(kind.name))} takes: ${known.length === 0 ? "nothing of its own" : known.join(", ")}.`,
		]
			.filter((sentence) => sentence !== "")
			.join(" "),
	});
}

/** The figures that a kind takes, as a sentence. */
export function tellQuantities(kind: Kind): string {
	const told = kind.attributes.flatMap((spec) =>
		spec.takes === "quantity"
			? [`${spec.word === undefined ? "" : `\`${spec.word}\` `}${spec.name} in ${unitsOf(spec.dimension).join(" or ")}`]
			: [],
	);
	return told.length === 0
		? `${startSentence(withArticle(kind.name))} takes no figure.`
		: `${startSentence(withArticle(kind.name))} takes ${told.join("; ")}.`;
}
