// The sizes in which conductors are sold, thinnest first.
import { compareGauges, type Gauge, squareMillimetres } from "../base/gauge.ts";
import { awgOf } from "./sizes.ts";

/** By the trade (common practice): of American sizes the even ones, 1, and the aughts; of metric ones those of IEC 60228. */
const sold: Readonly<Record<Gauge["system"], readonly Gauge[]>> = {
	awg: (["18", "16", "14", "12", "10", "8", "6", "4", "2", "1", "1/0", "2/0", "3/0", "4/0"] as const).map(awgOf),
	mm2: [0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120].map(squareMillimetres),
};

/** The next thinner size that is sold; the thinnest itself where there is none. */
export function oneSizeBelow(gauge: Gauge): Gauge | undefined {
	const sizes = sold[gauge.system];
	const at = sizes.findLastIndex((size) => compareGauges(size, gauge) <= 0);
	return sizes[Math.max(0, at - 1)];
}
