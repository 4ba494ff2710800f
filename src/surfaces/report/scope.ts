// What a check looked at and what it could not, in a sentence each: silence about a thing is no verdict on it.
import { listNames } from "../../base/wording.ts";
import { type PlanReport, tellNumber } from "./report.ts";
import { visible } from "./visible.ts";

/** `Checked: 57 rules on 9 parts and 34 conductors, on shore and on inv.` and what was left out; nothing where nothing was read. */
export function tellScope(plans: readonly PlanReport[]): string {
	const scopes = plans.flatMap(({ scope }) => scope ?? []);
	const [only] = scopes;
	if (only === undefined) return "";
	const parts = scopes.reduce((sum, scope) => sum + scope.parts, 0);
	const conductors = scopes.reduce((sum, scope) => sum + scope.conductors, 0);
	const where = `${tellNumber(parts, "part")} and ${tellNumber(conductors, "conductor")}`;
	const how =
		scopes.length > 1
			? `${tellNumber(scopes.length, "plan")} with ${where}`
			: `${tellNumber(only.rules, "rule")} on ${where}${tellModes(only.modes)}`;
	const unread = scopes.some(({ incomplete }) => incomplete)
		? " Lines that were not understood are left out, with what hangs on them."
		: "";
	return `Checked: ${how}.${unread}${tellUnchecked(plans)}`;
}

function tellModes(modes: readonly string[]): string {
	return modes.length === 0 ? "" : `, ${listNames(modes.map((mode) => `on ${visible(mode)}`))}`;
}

/** The numbers of what tells that a fact is missing, plan by plan where there are several. */
function tellUnchecked(plans: readonly PlanReport[]): string {
	const gaps = plans.flatMap(({ file, findings }) => {
		const numbers = findings.filter(({ unchecked }) => unchecked === true).map(({ number }) => String(number));
		if (numbers.length === 0) return [];
		return [plans.length === 1 ? listNames(numbers) : `${listNames(numbers)} of ${visible(file)}`];
	});
	return gaps.length === 0 ? "" : ` Not checked for want of facts: see ${gaps.join(", ")}.`;
}
