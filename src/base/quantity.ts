// Units as a builder writes them, and quantities held in one base unit per dimension. Knows no device words.

/** What a quantity measures. Every dimension has one base unit in which its value is held. */
export type Dimension =
	| "current"
	| "voltage"
	| "power"
	| "apparent-power"
	| "charge"
	| "energy"
	| "length"
	| "area"
	| "volume"
	| "temperature"
	| "resistance"
	| "time"
	| "frequency"
	| "share"
	| "torque";

/** A unit: how it is written, what it measures, and how a figure in it becomes one in the base unit. */
export interface Unit {
	readonly symbol: string;
	readonly dimension: Dimension;
	/** Base units in one of this unit. */
	readonly factor: number;
	/** Base units at zero of this unit; only a temperature in Fahrenheit has one. */
	readonly offset?: number;
	/** Other spellings that are read and tidied to `symbol`. */
	readonly also?: readonly string[];
}

/**
 * Every unit of the notation; the first of a dimension is the base unit.
 * Factors: the international yard and pound (1 ft = 0.3048 m exactly); 1 cubic inch = 16.387064 cm3 exactly.
 */
export const units: readonly Unit[] = [
	{ symbol: "A", dimension: "current", factor: 1, also: ["amp", "amps"] },
	{ symbol: "mA", dimension: "current", factor: 0.001 },
	{ symbol: "kA", dimension: "current", factor: 1000 },
	{ symbol: "V", dimension: "voltage", factor: 1, also: ["volt", "volts"] },
	{ symbol: "mV", dimension: "voltage", factor: 0.001 },
	{ symbol: "kV", dimension: "voltage", factor: 1000 },
	{ symbol: "W", dimension: "power", factor: 1, also: ["watt", "watts"] },
	{ symbol: "kW", dimension: "power", factor: 1000 },
	{ symbol: "VA", dimension: "apparent-power", factor: 1 },
	{ symbol: "kVA", dimension: "apparent-power", factor: 1000 },
	{ symbol: "Ah", dimension: "charge", factor: 1 },
	{ symbol: "Wh", dimension: "energy", factor: 1 },
	{ symbol: "kWh", dimension: "energy", factor: 1000 },
	{ symbol: "m", dimension: "length", factor: 1 },
	{ symbol: "cm", dimension: "length", factor: 0.01 },
	{ symbol: "mm", dimension: "length", factor: 0.001 },
	{ symbol: "ft", dimension: "length", factor: 0.3048, also: ["foot", "feet"] },
	{ symbol: "in", dimension: "length", factor: 0.0254, also: ["inch", "inches"] },
	{ symbol: "mm2", dimension: "area", factor: 1, also: ["mm²"] },
	{ symbol: "kcmil", dimension: "area", factor: 0.506707479 },
	{ symbol: "cm3", dimension: "volume", factor: 1, also: ["cm³"] },
	{ symbol: "cuin", dimension: "volume", factor: 16.387064, also: ["in3"] },
	{ symbol: "C", dimension: "temperature", factor: 1, also: ["°C"] },
	{ symbol: "F", dimension: "temperature", factor: 5 / 9, offset: -160 / 9, also: ["°F"] },
	{ symbol: "ohm", dimension: "resistance", factor: 1, also: ["ohms", "Ω"] },
	{ symbol: "mohm", dimension: "resistance", factor: 0.001, also: ["mΩ"] },
	{ symbol: "s", dimension: "time", factor: 1 },
	{ symbol: "ms", dimension: "time", factor: 0.001 },
	{ symbol: "min", dimension: "time", factor: 60 },
	{ symbol: "h", dimension: "time", factor: 3600 },
	{ symbol: "Hz", dimension: "frequency", factor: 1 },
	{ symbol: "%", dimension: "share", factor: 0.01 },
	{ symbol: "Nm", dimension: "torque", factor: 1 },
	{ symbol: "lbin", dimension: "torque", factor: 0.1129848 },
];

/** A figure with its unit. `value` is in the base unit of the dimension; `written` and `unit` are what the builder wrote. */
export interface Quantity {
	readonly dimension: Dimension;
	readonly value: number;
	readonly written: number;
	readonly unit: string;
}

/** The unit written as `spelling`, or undefined. Upper and lower case differ: `mA` is not `MA`. */
export function findUnit(spelling: string): Unit | undefined {
	return unitBySpelling.get(spelling);
}

/** A quantity from a figure and a unit of the table above. */
export function quantity(written: number, unit: Unit): Quantity {
	return {
		dimension: unit.dimension,
		value: written * unit.factor + (unit.offset ?? 0),
		written,
		unit: unit.symbol,
	};
}

/** The symbols of a dimension's units, for a message that says which fit. */
export function unitsOf(dimension: Dimension): readonly string[] {
	return units.filter((unit) => unit.dimension === dimension).map((unit) => unit.symbol);
}

/** A quantity as text: `30 A`, `4.5 ft`. At most three decimals, no exponent. */
export function formatQuantity(value: Quantity): string {
	return value.unit === "%" ? `${formatNumber(value.written)} %` : `${formatNumber(value.written)} ${value.unit}`;
}

/** A number as text with at most `decimals` decimals, no exponent and no negative zero. */
export function formatNumber(value: number, decimals = 3): string {
	const text = value.toFixed(decimals);
	const trimmed = text.includes(".") ? text.replace(/0+$/, "").replace(/\.$/, "") : text;
	return trimmed === "-0" ? "0" : trimmed;
}

const unitBySpelling = new Map<string, Unit>(
	units.flatMap((unit) => [unit.symbol, ...(unit.also ?? [])].map((spelling) => [spelling, unit] as const)),
);
