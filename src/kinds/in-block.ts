// A fuse or breaker in a way of a fuse block.
import type { Blueprint, Said } from "./kind.ts";
import { cage } from "./terminals.ts";

/** Fed from its bus, the load's negative lands on the block's negative bar. */
export function inBlock(said: Said): Omit<Blueprint, "face"> {
	return {
		terminals: [
			{ ...cage(said.region, "stab", "positive", undefined, { side: "line" }), clamp: "stab", capacity: 0 },
			{ ...cage(said.region, "load", "positive", "load", { side: "load" }), clamp: "screw" },
		],
		links: [
			{
				between: ["stab", "load"],
				nature: "contact",
				contact: { group: "trip", positions: 2, closed: [1] },
				protects: true,
			},
		],
		plugs: said.slot?.legs.slice(0, 1).map((owner) => ({ mine: "stab", owner })) ?? [],
		sides: [{ name: "load", knots: { positive: "load", negative: "^negative" } }],
		onward: "load",
	};
}
