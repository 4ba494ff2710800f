// The note on what is said of a thing and kept for lists alone.
import type { Finding } from "../base/finding.ts";
import type { Span } from "../base/span.ts";
import { planFinding } from "./codes.ts";

/** So that nobody relies on it: no check counts what is said there. */
export function keptOnly(name: string, span: Span): Finding {
	return planFinding("not-understood-yet", {
		title: `What is said of the ${name} is kept, and no check counts it yet`,
		span,
		level: "note",
		why: "Nothing is judged by it: neither what a wire must carry nor what a device may be used for.",
		help: "Leave it in; weigh it by hand where it matters.",
	});
}
