// The side of a thing that a hop meets.
import type { SideSpec } from "../kinds/kind.ts";
import type { HopEnd, Thing } from "./plan.ts";

/** As said, else where a chain goes on, or where it arrives. */
export function sideAt(thing: Thing, end: HopEnd, way: "onward" | "arrival"): SideSpec | undefined {
	const { sides, onward } = thing.blueprint;
	const usual = way === "onward" ? onward : sides[0]?.name;
	return sides.find((side) => side.name === (end.side ?? usual));
}
