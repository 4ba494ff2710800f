// The voltage of a source as the trade writes it.
import type { Source } from "../circuit/circuit.ts";

/** `120 V`; with two legs half a turn apart both voltages that it gives: `120/240 V`. */
export function voltsText({ volts, hot }: Pick<Source, "volts" | "hot">): string {
	return hot.length === 2 ? `${volts}/${2 * volts} V` : `${volts} V`;
}
