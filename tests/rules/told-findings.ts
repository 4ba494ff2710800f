// Findings in full, as a text to read: every slot that is not empty, so that none changes unseen.
import type { NumberedFinding } from "../../src/base/finding.ts";
import type { Span } from "../../src/base/span.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";
import { casesOf } from "./cases/index.ts";

/** What a rule says of each plan that shows its fault, with all that else is found there by name. */
export function tellRule(code: string): string {
	const rule = rules.find((one) => one.code === code);
	const plans = [...(rule?.wrong ?? []), ...casesOf(code).fires];
	return plans
		.map((text, index) => {
			const { findings } = checkPlan(text, "plan");
			const own = findings.filter((finding) => finding.code === code);
			const others = findings
				.filter((finding) => finding.code !== code && finding.level !== "note")
				.map(({ key, level }) => `${level} ${key}`);
			return [`plan ${index + 1}`, ...own.map((finding) => tell(finding, rule?.why)), ...others].join("\n");
		})
		.join("\n\n")
		.concat("\n");
}

function tell(finding: NumberedFinding, usualWhy: string | undefined): string {
	const { level, title, span, label, also, marks, path, figures, why, help, modes, key, consequenceOf } = finding;
	const slots: readonly (readonly [string, string])[] = [
		["at", `${place(span)} ${label}`],
		["also", also.map((other) => `${place(other.span)} ${other.label}`).join("; ")],
		["marks", marks.join(" ")],
		["path", path.map(({ point, by }) => (by === "" ? point : `-${by}- ${point}`)).join(" ")],
		["figures", figures.map(({ name, found, limit, unit }) => `${name} ${found} ${unit} of ${limit}`).join("; ")],
		["why", why === usualWhy ? "" : why],
		["help", help],
		["modes", modes.join(" ")],
		["key", key],
		["follows", consequenceOf ?? ""],
	];
	const told = slots.filter(([, value]) => value !== "").map(([name, value]) => `  ${name}: ${value}`);
	return [`${level}: ${title}`, ...told].join("\n");
}

function place({ line, column, endColumn }: Span): string {
	return `${line}:${column}-${endColumn}`;
}
