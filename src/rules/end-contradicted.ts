// An end that is said to be a solid wire's on a conductor that is stranded: one of the two is not so.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Conductor, End } from "../circuit/circuit.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const endContradicted: Rule = {
	code: "end-contradicted",
	level: "warning",
	what: "An end is said to be solid, and its conductor is said to be stranded.",
	why: "How the end is to be made up cannot be judged: bare strands under a screw creep out, a solid wire does not.",
	help: "Look at the wire, and say of the cable or of the end what it is.",
	basis: "common practice",
	meter: [byEye("look at the cut end of the wire")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
at b1
  bunks-1.black solid on b1.hot
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  bunks-1.black solid on b1.hot
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
at b1
  bunks-1.black fork on b1.hot
`,
	],
	check: ({ circuit }: Analysis) =>
		circuit.conductors.flatMap((conductor) =>
			conductor.stranded
				? conductor.ends.flatMap((end) => (end.termination === "solid" ? [tell(conductor, end)] : []))
				: [],
		),
};

function tell({ name, cable, span }: Conductor, end: End): Finding {
	const of = cable ?? name;
	return finding({
		code: endContradicted.code,
		level: "warning",
		title: `${name} is said to be solid in ${end.enclosure.name}, and ${of} to be stranded`,
		span: end.span,
		label: "solid here",
		also: [{ span, label: "stranded" }],
		marks: [name, ...(cable === undefined ? [] : [cable])],
		why: endContradicted.why,
		help: `If the wires of ${of} are stranded, say how this end is made up, such as \`fork\` or \`ferrule\`; if they are solid, take \`stranded\` from ${of}.`,
		basis: endContradicted.basis,
		key: `${endContradicted.code}@${name}@${end.enclosure.name}`,
	});
}
