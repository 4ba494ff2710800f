// Three or more strings of solar modules in parallel, of which one has no fuse of its own.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { findUnfusedStrings } from "../analysis/parallel-strings.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import { byEye } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const strings = (fuse: string): string =>
	[1, 2, 3]
		.map(
			(number) => `solar m${number} 200 W, open 22 V, short 11 A
feed up${number} from m${number}.+ by single 10 AWG red
${number === 3 ? fuse : `  1 ft to S${number}: fuse 15 A\n`}  6 ft to roof-plus${number === 1 ? ": bus 100 A" : ""}
feed down${number} from m${number}.- by single 10 AWG black
  6 ft to roof-minus${number === 1 ? ": bus 100 A" : ""}
`,
		)
		.join("");
const rest = `solar-controller mppt 50 A 12 V, limit 50 V
feed sun from roof-plus, roof-minus by pair 8 AWG
  12 ft to D1: disconnect 60 A
  2 ft to mppt.in
`;

export const stringsUnfused: Rule = {
	code: "strings-unfused",
	level: "error",
	what: "Of three or more strings of solar modules in parallel one has no fuse of its own.",
	why: "Into a fault in that string the others drive all they give, more than its modules and their leads bear.",
	help: "Put a fuse into each string, of the size that the modules' plates allow at most.",
	basis:
		"NFPA 70 690.9(A), recalled: no device is needed where the other strings give no more than the conductors bear",
	meter: [byEye("count the strings, and the fuses ahead of where they meet")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [`${strings("")}${rest}`],
	right: [`${strings("  1 ft to S3: fuse 15 A\n")}${rest}`],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	return findUnfusedStrings(circuit, direct).map(({ module, others, amperes }) =>
		finding({
			code: stringsUnfused.code,
			level: "error",
			title: `The string of ${module.name} has no fuse of its own, and ${listNames(others.map(({ name }) => name))} can drive ${formatNumber(amperes, 1)} A back through it`,
			span: module.span,
			label: "no fuse of its own",
			marks: [module.name],
			why: stringsUnfused.why,
			help: `Put a fuse between ${module.name} and where the strings meet.`,
			basis: stringsUnfused.basis,
			key: `${stringsUnfused.code}@${module.name}`,
		}),
	);
}
