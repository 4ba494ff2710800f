// Conductor sizes: American wire gauge and square millimetres, side by side and comparable by area.

/** A conductor size as written. `mm2` is its copper area in mm², by which all sizes compare. */
export interface Gauge {
	readonly system: "awg" | "mm2";
	/** `12`, `4/0`, `2.5`: the size as it is written, without its unit. */
	readonly label: string;
	readonly mm2: number;
}

/**
 * A gauge by number; aughts are negative: 1/0 is 0, 2/0 is -1, 4/0 is -3.
 * Diameter in mm = 0.127 x 92^((36 - n) / 39) (ASTM B258, the formula as published).
 */
export function awg(number: number): Gauge {
	const diameter = 0.127 * 92 ** ((36 - number) / 39);
	return { system: "awg", label: number > 0 ? String(number) : `${1 - number}/0`, mm2: (Math.PI / 4) * diameter ** 2 };
}

/** A metric size in mm². */
export function squareMillimetres(mm2: number): Gauge {
	return { system: "mm2", label: String(mm2), mm2 };
}

/** A gauge as text: `12 AWG`, `4/0 AWG`, `2.5 mm2`. */
export function formatGauge(gauge: Gauge): string {
	return `${gauge.label} ${gauge.system === "awg" ? "AWG" : "mm2"}`;
}

/** Negative when `one` is thinner than `other`; sizes within 0.1 % are the same size. */
export function compareGauges(one: Gauge, other: Gauge): number {
	const difference = one.mm2 - other.mm2;
	return Math.abs(difference) <= 0.001 * other.mm2 ? 0 : difference;
}
