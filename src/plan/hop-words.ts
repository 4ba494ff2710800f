// Words of a cable left of `to` beside its length, tag and make: what is left over at each end, and what it lies together with.
import type { Finding } from "../base/finding.ts";
import type { Quantity } from "../base/quantity.ts";
import type { Term } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { keptOnly } from "./kept-only.ts";

/** The length that is left over at each end of a cable, in metres and as written; the other words are given back. */
export function readSlack(
	terms: readonly Term[],
	findings: { push(finding: Finding): unknown },
): { readonly slack: Quantity | undefined; readonly others: readonly Term[] } {
	const at = terms.findIndex((term) => term.kind === "name" && term.text === "slack");
	const word = terms[at];
	if (word === undefined) return { slack: undefined, others: terms };
	const figure = terms[at + 1];
	const isLength = figure?.kind === "quantity" && figure.quantity.dimension === "length";
	const taken = isLength || figure?.kind === "quantity" || figure?.kind === "number" || figure?.kind === "unknown";
	const others = terms.filter((_, index) => index !== at && !(taken && index === at + 1));
	if (figure?.kind === "unknown") return { slack: undefined, others };
	if (!isLength)
		findings.push(
			planFinding(taken ? "unit-wrong" : "quantity-missing", {
				title: "`slack` does not say how much is left at each end",
				span: taken ? figure.span : word.span,
				help: "Write a length behind it: `slack 8 in`, or `slack ?` if you do not know it yet.",
			}),
		);
	else if (figure.quantity.value <= 0 || figure.quantity.value > mostSlack)
		findings.push(
			planFinding("quantity-out-of-range", {
				title: `${figure.text} is no likely slack at the end of a cable`,
				span: figure.span,
				label: "out of range",
			}),
		);
	else return { slack: figure.quantity, others };
	return { slack: undefined, others };
}

/** More than this in metres is a coil, which an `end` says. */
const mostSlack = 10;

/** With how many other cables it lies in one bundle, counting itself; the other words are given back. */
export function readBundle(
	terms: readonly Term[],
	findings: { push(finding: Finding): unknown },
): { readonly bundled: number | undefined; readonly others: readonly Term[] } {
	const at = terms.findIndex((term) => term.kind === "name" && term.text === "bundled");
	const word = terms[at];
	if (word === undefined) return { bundled: undefined, others: terms };
	const count = terms[at + 1];
	const isCount = count?.kind === "number" && Number.isInteger(count.value) && count.value >= 2 && count.value <= 60;
	findings.push(
		isCount
			? keptOnly("number of cables in a bundle", word.span)
			: planFinding("quantity-missing", {
					title: "`bundled` does not say how many cables lie together",
					span: count?.span ?? word.span,
					help: "Write their number, this one among them: `bundled 3`.",
				}),
	);
	const taken = count?.kind === "number" || count?.kind === "quantity" || count?.kind === "unknown";
	return {
		bundled: isCount ? count.value : undefined,
		others: terms.filter((_, index) => index !== at && !(taken && index === at + 1)),
	};
}
