// A battery charger: takes mains, gives direct current up to its rating.

import { limitedSource } from "./direct-source.ts";
import { directVoltage, rated } from "./figures.ts";
import { stud } from "./in-line.ts";
import type { Kind } from "./kind.ts";
import { deviceTerminal } from "./terminals.ts";

export const charger: Kind = {
	name: "charger",
	summary: "Charges a battery from the mains. A mains cable arrives at its `in`; plus and minus are `+` and `-`.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
battery house agm 12 V 100 Ah
charger ch 20 A 12 V
circuit charge from LC breaker 15 A by 14-2
  5 ft to ch
feed plus from house.+ by single 10 AWG red
  within 6 in to F1: fuse 30 A
  3 ft to ch.+
feed minus from house.- by single 10 AWG black
  3 ft to ch.-
`,
	system: "both",
	stands: ["top", "hop"],
	attributes: [rated(0.5, 300, "the most it gives to the battery"), directVoltage("of the battery; 12 V if not said")],
	build: (said) => {
		const rating = said.quantity("rating")?.value;
		const volts = said.quantity("voltage")?.value ?? 12;
		const mains = said.region === "us" ? 120 : 230;
		const watts = rating === undefined ? undefined : (rating * volts) / usualEfficiency;
		const screw = (role: "hot" | "neutral" | "ground") =>
			deviceTerminal(said.region, (watts ?? 0) / mains, role, role, role);
		return {
			terminals: [
				screw("hot"),
				screw("neutral"),
				screw("ground"),
				stud(said, "+", "positive", "+"),
				stud(said, "-", "negative", "-"),
			],
			loads: [
				{
					between: ["hot", "neutral"],
					...(watts === undefined ? {} : { watts }),
					volts: mains,
					continuous: true,
					outlet: false,
				},
			],
			source: limitedSource(volts, rating),
			sides: [
				{ name: "in", knots: { hot: "hot", neutral: "neutral", ground: "ground" } },
				{ name: "+", system: "dc", knots: { positive: "+", negative: "-" }, lone: { knot: "+", role: "positive" } },
				{ name: "-", system: "dc", knots: { negative: "-" }, lone: { knot: "-", role: "negative" } },
			],
			onward: "in",
			enclosure: { sort: "equipment", metal: false },
			face: {
				text: `charger${rating === undefined ? "" : ` ${rating} A`} ${volts} V`,
				wiring: "charger-face",
				oneLine: "charger",
				traits: ["load"],
			},
		};
	},
};

/** Where it is not said (common practice). */
const usualEfficiency = 0.85;
