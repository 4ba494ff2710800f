// A ground-fault receptacle: fed on its line side; only what hangs on its load side, and its own slots, is protected.

import type { Kind } from "./kind.ts";
import { residualAttributes, residualOf, usualTrip } from "./residual-current.ts";
import { deviceScrew } from "./terminals.ts";

export const gfci: Kind = {
	name: "gfci",
	also: ["ground-fault-receptacle"],
	summary:
		"A receptacle that opens on a ground fault. The feed lands on LINE; what it protects further on hangs on LOAD.",
	example: `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci 20 A
   5 ft to g2: receptacle
`,
	stands: ["top", "hop", "box"],
	attributes: [
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 5,
			most: 32,
			summary: "what it is rated for; 20 A if not said",
		},
		...residualAttributes,
		{ name: "weatherproof", takes: "flag", summary: "has a cover for wet places" },
	],
	build: (said) => {
		const rating = said.quantity("rating")?.value ?? 20;
		const screw = (name: string, role: "hot" | "neutral", side: "line" | "load") =>
			deviceScrew(said.region, name, role, `${side}-${role}`, {
				side,
				also: [`${side}.${role === "hot" ? "brass" : "silver"}`],
				...(said.region === "us" ? { clamp: "plate" as const, capacity: 2 } : {}),
			});
		return {
			terminals: [
				screw("line.hot", "hot", "line"),
				screw("line.neutral", "neutral", "line"),
				screw("load.hot", "hot", "load"),
				screw("load.neutral", "neutral", "load"),
				deviceScrew(said.region, "ground", "ground", "ground", { also: ["green"] }),
			],
			links: (["hot", "neutral"] as const).map((pole) => ({
				between: [`line.${pole}`, `load.${pole}`],
				nature: "contact",
				contact: { group: "trip", positions: 2, closed: [1] },
			})),
			loads: [{ between: ["load.hot", "load.neutral"], continuous: false, outlet: true }],
			groundFault: {
				line: { hot: "line.hot", neutral: "line.neutral" },
				load: { hot: "load.hot", neutral: "load.neutral" },
				ownOutlet: true,
				...residualOf(said, usualTrip(said)),
			},
			sides: [
				{ name: "line", knots: { hot: "line-hot", hot2: "^hot2", neutral: "line-neutral", ground: "ground" } },
				{ name: "load", knots: { hot: "load-hot", hot2: "^hot2", neutral: "load-neutral", ground: "ground" } },
			],
			onward: "load",
			face: {
				text: `${rating} A ground-fault receptacle`,
				wiring: said.region === "us" ? "receptacle-gfci-face" : "socket-outlet-protected-face",
				oneLine: "ground-fault",
				traits: ["receptacle", "ground-fault"],
				rating,
				outlets: 2,
			},
		};
	},
};
