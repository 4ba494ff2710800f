// How text is set on a stream: its width and whether it has colours.
import type { Setting } from "../report/note.ts";
import { choosePaint } from "../report/paint.ts";
import { colourChoices, colourOption } from "./options.ts";
import { type Call, choiceOf } from "./verb.ts";
import type { Stream, World } from "./world.ts";

/** The setting for `stream`: as wide as its terminal within reason, 80 columns elsewhere. */
export function chooseSetting(call: Call, world: World, stream: Stream): Setting {
	const width = Math.min(widest, Math.max(narrowest, stream.columns ?? usual));
	return { width, paint: choosePaint(hasColours(call, world, stream)) };
}

function hasColours(call: Call, world: World, stream: Stream): boolean {
	const choice = choiceOf(call, colourOption.name, colourChoices);
	if (choice !== "auto") return choice === "always";
	const refused = (world.environment("NO_COLOR") ?? "") !== "" || world.environment("TERM") === "dumb";
	return stream.columns !== undefined && !refused;
}

const narrowest = 50;
const usual = 80;
/** Longer lines of prose are hard to read. */
const widest = 110;
