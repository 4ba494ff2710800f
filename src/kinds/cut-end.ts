// The end of a cable without a box: capped and tagged for later, left loose, or cut off in a wall.

import type { Kind } from "./kind.ts";

const coiled = { name: "coiled", dimension: "length" } as const;

export const cutEnd: Kind = {
	name: "end",
	summary:
		"The end of a cable that is not in a box: its cores are capped and the cable waits, tagged, in the wall, unless it is `loose` or `cut off`.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit later from LC breaker 20 A by 12-2
  14 ft to e1: end coiled 6 ft
`,
	stands: ["hop"],
	attributes: [
		{
			name: "state",
			takes: "phrase",
			phrases: ["capped", "loose", "cut off"],
			summary: "how its cores end; loose and cut off are bare ends that touch what comes near them",
		},
		{
			...coiled,
			takes: "quantity",
			word: "coiled",
			least: 0.05,
			most: 50,
			summary: "the cable that lies there coiled up for later, beside the length of the hop",
		},
	],
	build: (said) => {
		const state = said.choice("state") ?? "capped";
		const coil = said.quantity(coiled.name);
		return {
			terminals: [],
			sides: [{ name: "feed", knots: {}, ...(state === "capped" ? {} : { leaves: "loose" as const }) }],
			onward: "feed",
			enclosure: { sort: "open", metal: false },
			...(coil === undefined ? {} : { coil: coil.value }),
			face: {
				text: `cable end, ${state}${coil === undefined ? "" : `, ${coil.written} ${coil.unit} coiled`}`,
				wiring: state === "capped" ? "conductor-capped" : "conductor-loose",
				oneLine: "cable-end",
				traits: ["junction"],
			},
		};
	},
};
