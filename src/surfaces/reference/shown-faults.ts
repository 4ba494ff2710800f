// What a check says of the plans on a rule's page, so that the page shows the finding and its figures as they are printed.
import type { NumberedFinding } from "../../base/finding.ts";
import type { CheckPlan } from "../checker.ts";
import type { Page, PagePlan } from "./page.ts";

/** The rule's own findings in one of its wrong plans; of any other plan none. */
export function findShown(page: Page, plan: PagePlan, check: CheckPlan): readonly NumberedFinding[] {
	if (plan.sort !== "wrong") return [];
	const { findings } = check(plan.text, page.name, () => ({ kind: "missing", help: "" }));
	return findings.filter(({ code }) => code === page.name);
}
