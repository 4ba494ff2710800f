// The JavaScript engine under this process, set for the work that is coming.

/** Characters of plans from which a run is no longer over before the engine's ways of growing fast pay, nor their loading. */
const longRun = 4000;

/** What takes long even of a small plan. */
const longVerbs = new Set(["draw", "mistakes"]);

let settled = false;
let checked = 0;

/** To be told of the words of the call. */
export function expectCall([verb = ""]: readonly string[]): void {
	if (longVerbs.has(verb)) expectLongRun();
}

/** To be told of each text before it is checked. */
export function expectCheck(text: string): void {
	checked += text.length;
	if (checked > longRun) expectLongRun();
}

/**
 * Half of a longer run went into optimising code that was hardly used again: this lets the engine wait seven times longer before it
 * does. And a run is over before clearing up in small steps pays, but would wait for the step that is under way.
 * What was compiled ahead under other settings is refused: the build compiles each part under those that it is loaded under.
 */
function expectLongRun(): void {
	// Later engines may not know the words and would complain.
	if (settled || Number.parseInt(process.versions.v8, 10) >= 14) return;
	settled = true;
	// Loading this module takes longer than all it could save a short run. The first releases of Node 22 cannot be asked for it.
	process.getBuiltinModule?.("node:v8").setFlagsFromString("--interrupt-budget=1000000 --no-incremental-marking");
}
