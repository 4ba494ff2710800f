// What was said of a thing, as its kind asks for it.
import type { Quantity } from "../base/quantity.ts";
import type { Said } from "../kinds/kind.ts";
import type { AttributeValue } from "./attributes.ts";
import type { Settings } from "./plan.ts";

/** The values of one thing, asked for by attribute name. */
export class SaidValues implements Said {
	readonly name: string;
	readonly region: Said["region"];
	readonly rules: Said["rules"];
	readonly slot?: NonNullable<Said["slot"]>;
	readonly arriving?: NonNullable<Said["arriving"]>;
	private readonly values: ReadonlyMap<string, AttributeValue>;

	constructor(
		name: string,
		settings: Settings,
		values: ReadonlyMap<string, AttributeValue>,
		{ slot, arriving }: Pick<Said, "slot" | "arriving">,
	) {
		this.name = name;
		this.region = settings.region;
		this.rules = settings.rules;
		this.values = values;
		if (slot !== undefined) this.slot = slot;
		if (arriving !== undefined) this.arriving = arriving;
	}

	quantity(attribute: string): Quantity | undefined {
		const value = this.values.get(attribute);
		return value?.sort === "quantity" ? value.quantity : undefined;
	}

	flag(attribute: string): boolean | undefined {
		const value = this.values.get(attribute);
		return value?.sort === "flag" ? value.flag : undefined;
	}

	choice(attribute: string): string | undefined {
		const value = this.values.get(attribute);
		return value?.sort === "word" ? value.word : undefined;
	}

	count(attribute: string): number | undefined {
		const value = this.values.get(attribute);
		return value?.sort === "count" ? value.count : undefined;
	}

	pair(attribute: string): readonly [Quantity, Quantity] | undefined {
		const value = this.values.get(attribute);
		return value?.sort === "pair" ? value.pair : undefined;
	}
}
