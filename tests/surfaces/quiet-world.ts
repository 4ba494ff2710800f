// The world of the real command, but for its streams: what is written to them is dropped.
import type { Stream, World } from "../../src/surfaces/command/world.ts";
import { openWorld } from "../../src/surfaces/machine.ts";

const nowhere: Stream = { write: () => {}, columns: undefined };

export function quietWorld(): World {
	return openWorld(nowhere, nowhere, () => false);
}
