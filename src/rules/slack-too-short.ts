// Cables of which too little is left at their ends: the conductors do not reach out of the box to be worked on.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatQuantity } from "../base/quantity.ts";
import type { Cable } from "../circuit/circuit.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

/** Metres: 6 in of free conductor at each box (NFPA 70 300.14, recalled). */
const leastSlack = 0.1524;

export const slackTooShort: Rule = {
	code: "slack-too-short",
	level: "warning",
	what: "Less than 6 in of a cable is left at its ends.",
	why: "Conductors that do not reach out of their box cannot be made up properly, and a second try finds them too short.",
	help: "Leave at least 6 in of free conductor from where the sheath ends, 3 in of it outside of the box.",
	basis: "NFPA 70 300.14, recalled",
	meter: [byEye("pull the conductors out of the box, and measure them")],
	applies: { regions: ["us"], rules: ["camper", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 15 A by 14-2
  9 ft slack 4 in to b1: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 15 A by 14-2
  9 ft slack 6 in to b1: receptacle
  9 ft slack ? to b2: receptacle
`,
	],
	check: ({ circuit }: Analysis) =>
		circuit.cables.flatMap((cable) =>
			cable.system === "ac" && cable.slack !== undefined && cable.slack.value < leastSlack * (1 - 1e-9)
				? [tell(cable, cable.slack)]
				: [],
		),
};

function tell(cable: Cable, slack: NonNullable<Cable["slack"]>): Finding {
	return finding({
		code: slackTooShort.code,
		level: slackTooShort.level,
		title: `${cable.tag} has ${formatQuantity(slack)} left at each end, and 6 in are needed to work on it`,
		span: cable.span,
		label: "too short at its ends",
		marks: [cable.tag],
		figures: [
			{ name: "slack", found: slack.value * 100, limit: leastSlack * 100, unit: "cm", source: slackTooShort.basis },
		],
		why: slackTooShort.why,
		help: slackTooShort.help,
		basis: slackTooShort.basis,
		key: `${slackTooShort.code}@${cable.tag}`,
	});
}
