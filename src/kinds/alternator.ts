// An alternator: a source of direct current that gives no more than its rating, whatever hangs on it.

import { limitedSource, twoPostSource } from "./direct-source.ts";
import { directVoltage, rated } from "./figures.ts";
import type { Kind } from "./kind.ts";

export const alternator: Kind = {
	name: "alternator",
	summary: "Makes direct current while the engine runs, up to its rating.",
	example: `battery engine flooded 12 V 80 Ah
alternator alt 90 A 14 V
feed charge from engine.+ by single 4 AWG red
  within 7 in to F1: fuse ANL 100 A
  4 ft to alt.+
feed back from engine.- by single 4 AWG black
  4 ft to alt.-
`,
	system: "dc",
	stands: ["top", "hop"],
	attributes: [rated(5, 500, "the most it gives"), directVoltage("12 V if not said")],
	build: (said) => {
		const rating = said.quantity("rating")?.value;
		const volts = said.quantity("voltage")?.value ?? 12;
		return {
			...twoPostSource(said),
			source: limitedSource(volts, rating),
			face: {
				text: `alternator${rating === undefined ? "" : ` ${rating} A`} ${volts} V`,
				wiring: "alternator-face",
				oneLine: "alternator",
				traits: ["source"],
			},
		};
	},
};
