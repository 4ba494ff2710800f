// Which attribute of a kind a figure is for: by the word before it, or, where it stands bare, by its dimension and its size.
import { findUnit, formatNumber, type Quantity } from "../base/quantity.ts";
import type { AttributeSpec } from "../kinds/kind.ts";

/** The attribute; a bare figure that is out of the range of the bare one may be for one whose word was left out. Undefined: for none. */
export function fitFigure(
	attributes: readonly AttributeSpec[],
	quantity: Quantity,
	word: string | undefined,
): AttributeSpec | undefined {
	const specs = attributes.filter((spec) => spec.takes === "quantity" && spec.dimension === quantity.dimension);
	const own = specs.find((spec) => ("word" in spec ? spec.word === word : word === undefined));
	if (word !== undefined || (own !== undefined && isInRange(own, quantity))) return own;
	return specs.find((spec) => spec.takes === "quantity" && spec.bare === true && isInRange(spec, quantity)) ?? own;
}

/** Whether a figure is one that an attribute can have. */
export function isInRange(spec: AttributeSpec, { value }: Quantity): boolean {
	if (spec.takes !== "quantity" && spec.takes !== "pair") return false;
	return value >= (spec.least ?? 0) && value <= (spec.most ?? Number.MAX_VALUE);
}

/** What an attribute can have, in the unit that was written: `From 5 A to 100 A fit.`; nothing where it has no limits. */
export function tellRange(spec: AttributeSpec, { unit }: Quantity): string {
	if (spec.takes !== "quantity" && spec.takes !== "pair") return "";
	const { least, most } = spec;
	const tell = (value: number): string => {
		const { factor = 1, offset = 0 } = findUnit(unit) ?? {};
		return `${formatNumber((value - offset) / factor, 6)} ${unit}`;
	};
	if (least === undefined) return most === undefined ? "" : `Up to ${tell(most)} fits.`;
	return most === undefined ? `${tell(least)} and more fits.` : `From ${tell(least)} to ${tell(most)} fits.`;
}
