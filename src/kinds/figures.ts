// Figures that many kinds are said with, each in one shape: amperes of a rating, volts, the volts of two legs.
import type { AttributeSpec } from "./kind.ts";

/** Amperes of its rating, which must be said. */
export function rated(least: number, most: number, summary: string): AttributeSpec {
	return { name: "rating", takes: "quantity", dimension: "current", least, most, required: true, summary };
}

/** Nominal volts of what is for direct current. */
export function directVoltage(summary: string): AttributeSpec {
	return { name: "voltage", takes: "quantity", dimension: "voltage", least: 6, most: 60, summary };
}

/** Volts of a supply for alternating current, from its hot to its neutral. */
export function mainsVoltage(summary: string): AttributeSpec {
	return { name: "voltage", takes: "quantity", dimension: "voltage", least: 100, most: 250, summary };
}

/** Volts from leg to neutral and from leg to leg. */
export const legVoltages: AttributeSpec = {
	name: "legs",
	takes: "pair",
	dimension: "voltage",
	least: 5,
	most: 600,
	summary: "`120 V / 240 V` for two hot legs",
};
