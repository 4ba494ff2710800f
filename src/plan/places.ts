// The places of a plan: where things are, and what that asks of them.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Quantity } from "../base/quantity.ts";
import type { PlaceStatement, QuantityTerm, Term } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { foldName } from "./names.ts";
import type { Place } from "./plan.ts";

/** Words a place can have, and the traits they stand for. */
export const placeWords = ["wet", "damp", "dry", "outdoor", "engine-space", "bath", "basin", "sink"];

/** A place from its statement. `sink 3 ft` and `basin 3 ft` say how far the nearest basin edge is. */
export function readPlace(statement: PlaceStatement, findings: Finding[]): Place {
	const traits = new Set<string>();
	let basin: number | undefined;
	let temperature: number | undefined;
	const sayOnce = (known: number | undefined, term: Term, what: string): void => {
		if (known !== undefined)
			findings.push(
				planFinding("attribute-twice", { title: `The ${what} is said twice`, span: term.span, label: "said again" }),
			);
	};
	for (let index = 0; index < statement.terms.length; index++) {
		const term = statement.terms[index];
		const next = statement.terms[index + 1];
		if (term?.kind === "name" && (term.text === "sink" || term.text === "basin")) {
			sayOnce(basin, term, "nearest basin");
			let distance = 0;
			if (next?.kind === "quantity" && next.quantity.dimension === "length") {
				index++;
				if (!isLikely(next.quantity)) {
					refuseFigure(next, findings);
					continue;
				}
				distance = next.quantity.value;
			}
			// Of two the nearer decides.
			basin = Math.min(distance, basin ?? distance);
		} else if (term?.kind === "name" && placeWords.includes(term.text)) traits.add(term.text);
		else if (term?.kind === "quantity" && term.quantity.dimension === "temperature") {
			sayOnce(temperature, term, "temperature");
			if (isLikely(term.quantity)) temperature = Math.max(term.quantity.value, temperature ?? term.quantity.value);
			else refuseFigure(term, findings);
		} else if (term !== undefined) {
			const word = "text" in term ? term.text : "";
			findings.push(
				planFinding("place-word-unknown", {
					title: `\`${word}\` says nothing about a place`,
					span: term.span,
					help: `${didYouMean(word, placeWords)} A place takes: ${placeWords.join(", ")} and a temperature.`.trim(),
				}),
			);
		}
	}
	return {
		name: statement.name.text,
		label: statement.label?.text ?? statement.name.text,
		traits,
		...(basin === undefined ? {} : { basin }),
		...(temperature === undefined ? {} : { temperature }),
		span: statement.span,
	};
}

/** Where people live and wires run it is between -60 and 100 °C; a basin beyond 30 m is no neighbour. */
export function isLikely({ dimension, value }: Quantity): boolean {
	if (dimension === "temperature") return value >= -60 && value <= 100;
	return dimension === "length" && value >= 0 && value <= 30;
}

function refuseFigure(term: QuantityTerm, findings: Finding[]): void {
	findings.push(
		planFinding("quantity-out-of-range", {
			title: `${term.text} is no likely figure of a place`,
			span: term.span,
			label: "out of range",
		}),
	);
}

/** Every place by its folded name; a name used twice is a finding. */
export function readPlaces(statements: readonly PlaceStatement[], findings: Finding[]): ReadonlyMap<string, Place> {
	const places = new Map<string, Place>();
	for (const statement of statements) {
		const key = foldName(statement.name.text);
		const first = places.get(key);
		if (first === undefined) places.set(key, readPlace(statement, findings));
		else
			findings.push(
				planFinding("name-twice", {
					title: `The place ${statement.name.text} is declared twice`,
					span: statement.name.span,
					also: [{ span: first.span, label: "first here" }],
				}),
			);
	}
	return places;
}
