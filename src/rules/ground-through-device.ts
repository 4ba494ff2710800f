// Grounds that go on through a device: what hangs behind it loses its ground when the device is taken off.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { findGroundPassages, type Passage } from "../analysis/passages.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import { dead } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import { namesOf, tellJoin } from "./passage-wording.ts";
import type { Rule } from "./rule.ts";

export const groundThroughDevice: Rule = {
	code: "ground-through-device",
	level: "error",
	what: "The ground of what lies further on goes through a device's ground screw, and is lost when the device is taken off.",
	why: "Whoever changes the device later cuts the ground of everything behind it, and nothing tells them.",
	help: "Join the grounds in the box, and take one pigtail to the device.",
	basis: "NFPA 70 250.148(B), recalled; common practice in IEC countries",
	meter: [dead("from a ground further on to the ground bar, with the device taken off its wires", "no continuity")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle terminals plate
   9 ft to b2: receptacle
at b1
  bunks-1.bare, bunks-2.bare on b1.ground
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
   9 ft to b2: receptacle
at b1
  join bunks-1.bare, bunks-2.bare, b1.ground
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode({ landings }: Analysis, state: ModeState): Finding[] {
	return findGroundPassages(state, landings).map((passage) => tell(state, passage));
}

function tell({ network: { circuit } }: ModeState, passage: Passage): Finding {
	const { part, terminal, conductors, victims } = passage;
	const names = namesOf(circuit, victims);
	const wires = conductors.flatMap((index) => circuit.conductors[index]?.name ?? []);
	const end = conductors
		.flatMap((index) => circuit.conductors[index]?.ends ?? [])
		.findLast(({ point, said }) => point === terminal.index && said);
	return finding({
		code: groundThroughDevice.code,
		level: groundThroughDevice.level,
		title: `The ground of ${listNames(names)} goes through ${terminal.name}, and is lost when ${part.name} is taken off`,
		span: end?.span ?? part.span,
		label: "goes on through the device",
		marks: [terminal.name, ...wires],
		why: groundThroughDevice.why,
		help: tellJoin(passage, wires),
		basis: groundThroughDevice.basis,
		key: `${groundThroughDevice.code}@${part.name}`,
	});
}
