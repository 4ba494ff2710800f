// What each of a row of things draws, where it is said for all of them together.
import type { Finding } from "../base/finding.ts";
import type { NameTerm } from "../syntax/tree.ts";
import type { AttributeValue } from "./attributes.ts";
import { planFinding } from "./codes.ts";
import type { SharedAttributes } from "./shared-words.ts";

/** In a row of things a power is that of `each`, or of all `together`; a row that does not say which is not clear. */
export function shareInRow(
	values: ReadonlyMap<string, AttributeValue>,
	shares: SharedAttributes["shares"],
	{ row: count = 1, type }: { readonly row?: number; readonly type: NameTerm },
	findings: Finding[],
): ReadonlyMap<string, AttributeValue> {
	if (count === 1) return values;
	const drawn = [...values].filter(([name, value]) => sharedInRow.has(name) && value.sort === "quantity");
	if (drawn.length === 0) return values;
	if (shares === undefined)
		findings.push(
			planFinding("quantity-missing", {
				title: "It is not said whether this is for each of them or for all together",
				span: type.span,
				label: "each or together?",
				help: "Write `each` or `together` behind the figure.",
			}),
		);
	if (shares !== "together") return values;
	const split = drawn.map(([name, value]): [string, AttributeValue] => [name, divide(value, count)]);
	return new Map([...values, ...split]);
}

/** What a row of things may draw each or together. */
const sharedInRow: ReadonlySet<string> = new Set(["power", "current"]);

function divide(value: AttributeValue, count: number): AttributeValue {
	if (value.sort !== "quantity") return value;
	const { quantity } = value;
	return {
		sort: "quantity",
		quantity: { ...quantity, value: quantity.value / count, written: quantity.written / count },
	};
}
