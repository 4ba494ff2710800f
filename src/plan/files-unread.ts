// What follows from a file that could not be read: names it may declare are not known, so what is told of them is told behind it.
import type { Finding } from "../base/finding.ts";

/** The findings, those that may come of a file that is missing as consequences of the first such file. */
export function followUnreadFiles(findings: readonly Finding[]): readonly Finding[] {
	const cause = findings.find(({ code }) => unread.has(code));
	if (cause === undefined) return findings;
	return findings.map((finding) =>
		mayFollow.has(finding.code) && finding.consequenceOf === undefined
			? { ...finding, consequenceOf: cause.key }
			: finding,
	);
}

/** A file that the plan uses and that was not read. */
const unread: ReadonlySet<string> = new Set(["file-missing", "file-refused", "files-too-many"]);

/** What any plan would be told that lacks some of its statements. */
const mayFollow: ReadonlySet<string> = new Set([
	"name-unknown",
	"kind-unknown",
	"place-unknown",
	"cable-unknown",
	"core-unknown",
	"mode-source-unknown",
	"source-missing",
	"plan-empty",
]);
