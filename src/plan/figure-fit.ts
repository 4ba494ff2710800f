// Which attribute of a kind a figure is for: by the word before it, or, where it stands bare, by its dimension and its size.
import type { Quantity } from "../base/quantity.ts";
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
	return spec.takes === "quantity" && value >= (spec.least ?? 0) && value <= (spec.most ?? Number.MAX_VALUE);
}
