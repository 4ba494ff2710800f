// Two hots that share a neutral as they must not: on one leg, behind devices that open singly, or with the neutral led through a device.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { findBorrowings } from "../analysis/borrowings.ts";
import { findSharedPassages, type Passage } from "../analysis/passages.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import { tellBorrowing } from "./borrowing-wording.ts";
import { dead, live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import { namesOf, tellJoin } from "./passage-wording.ts";
import type { Rule } from "./rule.ts";

export const neutralSharedUnsafely: Rule = {
	code: "neutral-shared-unsafely",
	level: "danger",
	what: "Two hots share a neutral, and are on one leg, or do not open together, or the neutral goes on through a device.",
	why: "The neutral carries more than any breaker allows, stays live with one breaker off, or opens and puts the voltage of both legs on what is plugged in.",
	help: "Put the two hots on two legs behind one two-pole breaker, and splice the shared neutral in every box.",
	basis: "NFPA 70 210.4(B) and 300.13(B), recalled",
	meter: [
		dead("from the neutral further on to the neutral bar, with the device taken off its wires", "no continuity"),
		live("loading voltage tester", "from hot to hot of the shared cable", "0 V in place of about 240 V"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet pole 50 A 120/240 V
panel LC main 50 A 120/240 V from pole by 6-3, 20 ft
  slot 1: breaker 20 A
  slot 3: breaker 20 A
circuit counter from LC.1, LC.3 by 12-3
  14 ft to k1: receptacle split
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit counter from LC breaker 20 A two-pole by 12-3
  14 ft to k1: receptacle split
`,
		`inlet pole 50 A 120/240 V
panel LC main 50 A 120/240 V from pole by 6-3, 20 ft
circuit counter from LC breaker 20 A two-pole by 12-3
  14 ft to k1: receptacle split
   9 ft to k2: receptacle split
at k1
  counter-1.white, counter-2.white on k1.neutral
`,
	],
	right: [
		`inlet pole 50 A 120/240 V
panel LC main 50 A 120/240 V from pole by 6-3, 20 ft
circuit counter from LC breaker 20 A two-pole by 12-3
  14 ft to k1: receptacle split
   9 ft to k2: receptacle split
circuit room from LC breaker 20 A by 12-2
  14 ft to r1: receptacle
   9 ft to r2: receptacle
at r1
  room-1.white, room-2.white on r1.neutral
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	return [
		...findBorrowings(analysis.circuit, state)
			.filter(({ kind }) => kind === "not-tied" || kind === "one-leg")
			.map((borrowing) => tellBorrowing(neutralSharedUnsafely, analysis, state, borrowing)),
		...findSharedPassages(state, analysis.landings).map((passage) => tellPassage(state, passage)),
	];
}

function tellPassage({ network: { circuit } }: ModeState, passage: Passage): Finding {
	const { part, terminal, conductors, victims } = passage;
	const names = listNames(namesOf(circuit, victims));
	const wires = conductors.flatMap((index) => circuit.conductors[index]?.name ?? []);
	const end = conductors
		.flatMap((index) => circuit.conductors[index]?.ends ?? [])
		.findLast(({ point, said }) => point === terminal.index && said);
	return finding({
		code: neutralSharedUnsafely.code,
		level: neutralSharedUnsafely.level,
		title: `The shared neutral of ${names} goes through ${terminal.name}, and opens when ${part.name} is taken off`,
		span: end?.span ?? part.span,
		label: "goes on through the device",
		marks: [terminal.name, ...wires],
		why: `Without it what is plugged in at ${names} lies in a row between the two hots: one of them can get nearly 240 V and burn.`,
		help: tellJoin(passage, wires),
		basis: neutralSharedUnsafely.basis,
		key: `${neutralSharedUnsafely.code}@${part.name}/passage`,
	});
}
