// Colour on a terminal. It never carries a meaning alone: every level is also a word.
import type { Level } from "../../base/finding.ts";

/** How words are set off. Without colour each gives its text back unchanged. */
export interface Paint {
	readonly level: (level: Level, text: string) => string;
	readonly strong: (text: string) => string;
	readonly quiet: (text: string) => string;
}

/** Paint for a terminal that takes colours, or for one that does not. */
export function choosePaint(colours: boolean): Paint {
	if (!colours) return { level: (_, text) => text, strong: (text) => text, quiet: (text) => text };
	return {
		level: (level, text) => colour(levelCodes[level], text),
		strong: (text) => colour("1", text),
		quiet: (text) => colour("2", text),
	};
}

/** Numbers of ISO 6429 (select graphic rendition): bold, faint, reversed, and the named colours. */
const levelCodes = { danger: "1;7;31", error: "1;31", warning: "1;33", note: "1;36" } as const;

function colour(code: string, text: string): string {
	return text === "" ? "" : `\u001b[${code}m${text}\u001b[0m`;
}
