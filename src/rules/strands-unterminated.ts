// Bare stranded ends under plain screws and on studs, where strands creep out; in cages and bars a ferrule is good practice.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Conductor, End, Terminal } from "../circuit/circuit.ts";
import { endsFor, terminationFit } from "../handbook/terminals.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const strandsUnterminated: Rule = {
	code: "strands-unterminated",
	level: "warning",
	what: "A stranded conductor lies with bare strands under a plain screw.",
	why: "Strands creep out from under the head, the rest runs hot, and a loose strand can touch the next part.",
	help: "Crimp a fork or ring on for a screw, a ring for a stud, a ferrule for a cage; or use a device with clamp plates.",
	basis:
		"common practice; published views differ (device listings, NFPA 70 110.14(A), BS 7671 526.8, ABYC E-11), recalled",
	meter: [byEye("look under every screw, and with everything dead pull at every conductor")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
at b1
  bunks-1.black bare on b1.hot
`,
		`plan "Bare ends"
  ends bare
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to g1: gfci
at g1
  bunks-1.black bare on g1.line.hot
`,
	],
	check: (analysis) => {
		const groups = new Map<string, BareEnd[]>();
		for (const bare of bareEnds(analysis)) {
			const key = `${bare.run} ${bare.isWarned}`;
			const group = groups.get(key);
			if (group === undefined) groups.set(key, [bare]);
			else group.push(bare);
		}
		return [...groups.values()].flatMap((group) => tell(group));
	},
};

/** A bare stranded end where it should be made up. */
interface BareEnd {
	readonly conductor: Conductor;
	readonly end: End;
	readonly terminal: Terminal;
	/** The run it belongs to: one choice of cable and ends. */
	readonly run: string;
	readonly isWarned: boolean;
}

function bareEnds(analysis: Analysis): BareEnd[] {
	const { circuit } = analysis;
	const found: BareEnd[] = [];
	for (const conductor of circuit.conductors) {
		if (!conductor.stranded) continue;
		for (const end of conductor.ends) {
			const terminal = end.point === undefined ? undefined : circuit.points[end.point];
			// Nothing is made to lie on a stab: that it does is the fault to tell.
			if (end.termination !== "bare" || terminal?.kind !== "terminal" || terminal.clamp === "stab") continue;
			const fit = terminationFit(terminal.clamp, "bare");
			if (fit === "well" || (fit === "acceptable" && terminal.clamp !== "cage")) continue;
			const cable = conductor.cable === undefined ? undefined : circuit.cableByTag.get(conductor.cable);
			const run = cable?.run ?? circuit.partByName.get(terminal.part)?.run ?? terminal.enclosure.name;
			found.push({ conductor, end, terminal, run, isWarned: fit === "unsuited" });
		}
	}
	return found;
}

/** One finding for a run: its cable and the way its ends are made up are one choice. What was said goes first. */
function tell(group: readonly BareEnd[]): Finding[] {
	const sorted = [...group.filter(({ end }) => end.said), ...group.filter(({ end }) => !end.said)];
	const [first] = sorted;
	if (first === undefined) return [];
	const names = [...new Set(sorted.map(({ terminal }) => terminal.name))];
	const fitting = endsFor(first.terminal.clamp)?.well.filter((end) => end !== "solid") ?? [];
	return [
		finding({
			code: strandsUnterminated.code,
			level: first.isWarned ? "warning" : "note",
			title: `Bare strands lie under ${listNames(names)}`,
			span: first.end.span,
			label: "bare strands",
			also: sorted.slice(1, 8).map(({ end, terminal }) => ({ span: end.span, label: terminal.name })),
			marks: [first.terminal.name, ...new Set(sorted.map(({ conductor }) => conductor.name))],
			why: first.isWarned
				? strandsUnterminated.why
				: "A ferrule keeps the strands from spreading and breaking under the screw.",
			help: `Crimp on a ${listNames(fitting).replace(" and ", " or ")} for ${first.terminal.name}${names.length > 1 ? ", and so on" : ""}; look at what the device is marked for.`,
			basis: strandsUnterminated.basis,
		}),
	];
}
