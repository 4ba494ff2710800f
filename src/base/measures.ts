// Figures that carry their unit in their type: volts are no amperes, and mixing them does not compile. Plain numbers when they run.

/** Volts. */
export type Volts = number & { readonly unit: "V" };
/** Amperes. */
export type Amperes = number & { readonly unit: "A" };
/** Ohms. */
export type Ohms = number & { readonly unit: "ohm" };
/** Watts. */
export type Watts = number & { readonly unit: "W" };
/** Metres. */
export type Metres = number & { readonly unit: "m" };
/** Degrees Celsius. */
export type Celsius = number & { readonly unit: "C" };
/** Hundredths. */
export type Percent = number & { readonly unit: "%" };

/** A number of volts. */
export function volts(value: number): Volts;
export function volts(value: number): number {
	return value;
}

/** A number of amperes. */
export function amperes(value: number): Amperes;
export function amperes(value: number): number {
	return value;
}

/** A number of ohms. */
export function ohms(value: number): Ohms;
export function ohms(value: number): number {
	return value;
}

/** A number of watts. */
export function watts(value: number): Watts;
export function watts(value: number): number {
	return value;
}

/** A number of metres. */
export function metres(value: number): Metres;
export function metres(value: number): number {
	return value;
}

/** A temperature. */
export function celsius(value: number): Celsius;
export function celsius(value: number): number {
	return value;
}

/** A number of hundredths. */
export function percent(value: number): Percent;
export function percent(value: number): number {
	return value;
}

/** So many hundredths of the second figure, which is of the same unit; 0 of nothing. */
export function shareOf<Unit extends number>(part: Unit, whole: Unit): Percent;
export function shareOf(part: number, whole: number): number {
	return whole === 0 ? 0 : (part / whole) * 100;
}

/** The volts that a current loses in a resistance: V = I R. */
export function lostIn(current: Amperes, resistance: Ohms): Volts {
	return volts(current * resistance);
}

/** The current that a power takes at a voltage: I = P / V. */
export function drawnAt(power: Watts, across: Volts): Amperes {
	return amperes(power / across);
}

/** The power of a current at a voltage: P = V I. */
export function powerOf(across: Volts, current: Amperes): Watts {
	return watts(across * current);
}
