// A report as SARIF 2.1.0, the OASIS format for results of static analysis. Every finding is in it, with the page of its rule.
import type { Level, NumberedFinding } from "../../base/finding.ts";
import type { Span } from "../../base/span.ts";
import type { Page } from "../reference/page.ts";
import type { PlanReport } from "./report.ts";

/** The report of all plans; `pages` give the rules' descriptions. */
export function writeSarif(plans: readonly PlanReport[], pages: readonly Page[], version: string): string {
	const findings = plans.flatMap((plan) => plan.findings);
	const codes = [...new Set(findings.map(({ code }) => code))];
	const pageOf = new Map(pages.map((page) => [page.name, page]));
	const log = {
		// The place of the schema is recalled; the tests hold a report against what of it is recalled too.
		$schema: "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
		version: "2.1.0",
		runs: [
			{
				tool: {
					driver: {
						name: "Ferrule",
						semanticVersion: version,
						rules: codes.map((code) => describeRule(code, pageOf.get(code))),
					},
				},
				invocations: [{ executionSuccessful: true }],
				columnKind: "utf16CodeUnits",
				artifacts: [...new Set(plans.map(({ file }) => uriOf(file)))].map((uri) => ({ location: { uri } })),
				results: findings.map((finding) => tellResult(finding, codes.indexOf(finding.code))),
			},
		],
	};
	return `${JSON.stringify(log, undefined, 2)}\n`;
}

function describeRule(code: string, page: Page | undefined) {
	if (page === undefined) return { id: code };
	const { summary, slots, level, rule, group } = page;
	return {
		id: code,
		shortDescription: { text: escapeMessage(summary) },
		fullDescription: { text: escapeMessage([summary, ...slots.slice(0, 1).map(({ text }) => text)].join(" ")) },
		help: { text: escapeMessage(slots.map(({ word, text }) => (word === "" ? text : `${word}: ${text}`)).join("\n")) },
		...(level === undefined ? {} : { defaultConfiguration: { level: levelWords[level] } }),
		properties: { tags: [rule?.group ?? group] },
	};
}

function tellResult(finding: NumberedFinding, ruleIndex: number) {
	const { code, level, title, why, help, span, label, also, marks, path, accepted, key } = finding;
	const aside = accepted === undefined ? "" : ` Accepted by the builder, and as bad as before: "${accepted}"`;
	return {
		ruleId: code,
		ruleIndex,
		level: levelWords[level],
		message: { text: escapeMessage(`${title}. ${why} ${help}${aside}`) },
		locations: [
			{
				physicalLocation: tellPlace(span),
				...(marks.length === 0
					? {}
					: { logicalLocations: [...new Set(marks)].map((mark) => ({ fullyQualifiedName: mark })) }),
				...(label === "" ? {} : { message: { text: escapeMessage(label) } }),
			},
		],
		relatedLocations: also.map((place, index) => ({
			id: index + 1,
			physicalLocation: tellPlace(place.span),
			...(place.label === "" ? {} : { message: { text: escapeMessage(place.label) } }),
		})),
		...(path.length === 0 ? {} : { codeFlows: [{ threadFlows: [{ locations: path.map(tellStep) }] }] }),
		partialFingerprints: { "findingKey/v1": key },
		// What is suppressed, readers hide: an accepted danger must be seen.
		...(accepted === undefined || level === "danger"
			? {}
			: { suppressions: [{ kind: "inSource", status: "accepted", justification: accepted }] }),
		properties: tellBesides(finding),
	};
}

/** What SARIF has no place for. */
function tellBesides(finding: NumberedFinding) {
	const { level, number, modes, figures, basis, consequenceOf, accepted, unchecked, repair } = finding;
	return {
		level,
		number,
		modes,
		figures,
		basis,
		...(consequenceOf === undefined ? {} : { consequenceOf }),
		...(accepted === undefined ? {} : { accepted }),
		...(unchecked === undefined ? {} : { unchecked }),
		// No `fixes`: a tool that applies them changes what a plan says of wires that nobody has moved.
		...(repair === undefined ? {} : { repair }),
	};
}

function tellPlace({ file, line, column, endColumn }: Span) {
	return {
		artifactLocation: { uri: uriOf(file) },
		region: { startLine: line, startColumn: column, endColumn },
	};
}

function tellStep({ point, by }: NumberedFinding["path"][number]) {
	return {
		location: {
			logicalLocations: [{ fullyQualifiedName: point }],
			message: { text: escapeMessage(by === "" ? point : `${by} to ${point}`) },
		},
	};
}

/** SARIF knows three levels. */
const levelWords: Readonly<Record<Level, "error" | "warning" | "note">> = {
	danger: "error",
	error: "error",
	warning: "warning",
	note: "note",
};

/** In a message, braces stand for what is put in and brackets for links (sections 3.11.5 and 3.11.6, recalled). */
function escapeMessage(text: string): string {
	return text.replace(/[{}]/g, "$&$&").replace(/[[\]\\]/g, "\\$&");
}

/** A relative name with `/` as a URI reference; half of a character pair cannot stand in one. */
function uriOf(file: string): string {
	return file
		.replace(/\p{Cs}/gu, "\ufffd")
		.split("/")
		.map(encodeURIComponent)
		.join("/");
}
