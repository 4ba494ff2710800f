// What was said of a thing as its kind asks for it: values by attribute, and what the slot, the cable and the device ahead say.
import type { Gauge } from "../base/gauge.ts";
import type { Quantity } from "../base/quantity.ts";
import type { Said, System } from "../kinds/kind.ts";
import type { AttributeValue } from "./attributes.ts";
import type { Settings, Thing } from "./plan.ts";

/** What a thing's place in the plan says of it. */
export interface Wiring {
	readonly slot?: { readonly name: string; readonly legs: readonly string[] };
	/** What the cable that arrives carries. */
	readonly arriving?: NonNullable<Said["arriving"]>;
	/** The residual-current device in its panel that it stands behind. */
	readonly behind?: Thing;
	/** What the run carries that it stands on. */
	readonly system?: System;
}

/** What was said of one thing, with what its place in the plan adds to it. */
export class SaidValues implements Said {
	readonly name: string;
	readonly region: Said["region"];
	readonly rules: Said["rules"];
	readonly system: System;
	readonly slot?: NonNullable<Said["slot"]>;
	readonly behind?: string;
	readonly arriving?: NonNullable<Said["arriving"]>;
	private readonly values: ReadonlyMap<string, AttributeValue>;

	constructor(
		name: string,
		settings: Settings,
		values: ReadonlyMap<string, AttributeValue>,
		system: System,
		{ slot, arriving, behind }: Omit<Wiring, "system">,
	) {
		this.name = name;
		this.system = system;
		this.region = settings.region;
		this.rules = settings.rules;
		this.values = values;
		if (slot !== undefined) this.slot = slot;
		if (behind !== undefined) this.behind = behind.name;
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

	gauge(attribute: string): Gauge | undefined {
		const value = this.values.get(attribute);
		return value?.sort === "gauge" ? value.gauge : undefined;
	}

	pair(attribute: string): readonly [Quantity, Quantity] | undefined {
		const value = this.values.get(attribute);
		return value?.sort === "pair" ? value.pair : undefined;
	}
}
