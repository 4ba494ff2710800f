// Conductors of aluminium on terminals and in joints that are made for copper alone.
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Conductor, End, Point } from "../circuit/circuit.ts";
import { byEye, live } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const terminalMetalWrong: Rule = {
	code: "terminal-metal-wrong",
	level: "error",
	what: "A conductor of aluminium is on a terminal or in a joint that is made for copper alone.",
	why: "Aluminium creeps and grows an oxide under such a terminal: the joint gets hot under load and can start a fire.",
	help: "Use a device marked for aluminium, or run copper to it; between the two metals belongs a connector marked for both.",
	basis: "NFPA 70 110.14, 404.14(C) and 406.3(C), recalled; common practice",
	meter: [
		byEye("look for the marking CU-AL or AL-CU on the device or the connector"),
		live(
			"thermometer that does not touch",
			"pointed at the joint, under full load",
			"a joint that is warmer than those around it",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 15 A by 12-2 aluminium
  14 ft to b1: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 8-2 aluminium, 12 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
circuit dryer from LC breaker 25 A by 10-2 aluminium
  14 ft to b2: receptacle 30 A single, copper and aluminium
`,
	],
	check: ({ circuit }) => {
		const wrong = circuit.conductors.flatMap((conductor): Wrong[] =>
			conductor.material === "aluminium" ? conductor.ends.flatMap((end) => judge(circuit, conductor, end)) : [],
		);
		return [...groupBy(wrong, ({ place }) => place)].map(([place, group]) => tell(place, group));
	},
};

/** An end of aluminium on what is made for copper. */
interface Wrong {
	readonly conductor: Conductor;
	readonly end: End;
	readonly point: Point;
	/** The part it is on, or the box of the joint. */
	readonly place: string;
}

function judge(circuit: Circuit, conductor: Conductor, end: End): Wrong[] {
	const point = circuit.points[end.point ?? -1];
	if (point === undefined || point.kind === "body") return [];
	const takes = point.kind === "terminal" ? point.aluminium || point.clamp === "lead" : point.connector === "crimp";
	if (takes) return [];
	return [{ conductor, end, point, place: point.kind === "terminal" ? point.part : `joints in ${end.enclosure.name}` }];
}

function tell(place: string, group: readonly Wrong[]): Finding {
	const { end, point } = certain(group[0], "an end of aluminium");
	const names = [...new Set(group.map(({ conductor }) => conductor.name))];
	const isJoint = point.kind === "splice";
	const one = names.length === 1;
	return finding({
		code: terminalMetalWrong.code,
		level: "error",
		title: `${listNames(names)} ${one ? "is" : "are"} aluminium, and ${isJoint ? `the ${place} are` : `${place} is`} made for copper`,
		span: end.span,
		label: "aluminium",
		marks: [point.name, ...names],
		why: terminalMetalWrong.why,
		help: isJoint
			? "Join them in connectors that are marked for aluminium, or crimp them with the tool their marking names."
			: `Use one that is marked for aluminium in place of ${place} and say \`copper and aluminium\` behind it, or run copper to it.`,
		basis: terminalMetalWrong.basis,
		key: `${terminalMetalWrong.code}@${place}`,
	});
}
