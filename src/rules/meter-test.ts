// The test that shows a fault on the finished wiring: what to measure, dead or live, and the reading that betrays it.

/** What a reading is taken with, because the same wiring reads otherwise on another. */
export type Instrument =
	| "continuity meter"
	| "clamp meter"
	/** Draws next to nothing: wires that hang in the air read anything on it. */
	| "digital voltmeter"
	/** Draws some milliamperes, so that only a pole that can feed something reads on it. */
	| "loading voltage tester"
	| "plug-in tester"
	| "residual-current tester"
	| "thermometer that does not touch";

/** One reading that betrays the fault; or, where none does, what to look at or pull at. */
export type MeterTest =
	| {
			/** Whether everything is isolated and proved dead, or under power. */
			readonly how: "dead" | "live";
			readonly using: Instrument;
			/** Between which points, and what is switched or taken off for it. */
			readonly measure: string;
			/** What is read where the fault is. */
			readonly betrays: string;
	  }
	| { readonly how: "eye"; readonly look: string };

/** A test with every source isolated and proved dead. */
export function dead(measure: string, betrays: string): MeterTest {
	return { how: "dead", using: "continuity meter", measure, betrays };
}

/** A test under power. */
export function live(using: Instrument, measure: string, betrays: string): MeterTest {
	return { how: "live", using, measure, betrays };
}

/** What no meter shows. */
export function byEye(look: string): MeterTest {
	return { how: "eye", look };
}

/** The test in a sentence or two. */
export function tellMeterTest(test: MeterTest): string {
	if (test.how === "eye") return `No meter shows it, only the eye and the hand: ${test.look}.`;
	const first = test.how === "dead" ? "Dead" : "Live";
	return `${first}, with a ${test.using}, ${test.measure}. The fault shows as ${test.betrays}.`;
}
