// A load whose way back is not that of its own hot: another circuit's neutral, or one past the ground-fault device of its hot.
import { findBorrowings } from "../analysis/borrowings.ts";
import { tellBorrowing } from "./borrowing-wording.ts";
import { dead, live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const neutralBorrowed: Rule = {
	code: "neutral-borrowed",
	level: "danger",
	what: "A load's current does not return with its own circuit: its neutral is another circuit's, or goes past the ground-fault device that its hot goes through.",
	why: "The neutral can carry more than any breaker allows, it stays live when its own breaker is off, and ground-fault devices trip at every use.",
	help: "Lead each load back by the neutral that lies in the cable of its own hot.",
	basis: "NFPA 70 200.4, 210.4(B) and 300.3(B), recalled; makers' instructions for ground-fault devices, recalled",
	meter: [
		dead("from the neutral of the circuit, taken off its bar, to the neutral bar, every load unplugged", "continuity"),
		live("clamp meter", "around hot and neutral of the circuit together, with its loads on", "anything but 0 A"),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit one from LC breaker 15 A by 14-2
  6 ft to j1: box
  9 ft to b1: receptacle
circuit two from LC breaker 15 A by 14-2
  6 ft to j1
  from j1
    9 ft to b2: receptacle
at j1
  join one-1.black, one-2.black
  join two-1.black, two-2.black
  join one-1.white, one-2.white, two-2.white
  two-1.white capped
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
   5 ft to g2: receptacle
at g1
  galley-2.white on g1.line.neutral
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit one from LC breaker 15 A by 14-2
  6 ft to j1: box
  9 ft to b1: receptacle
circuit two from LC breaker 15 A by 14-2
  6 ft to j1
  from j1
    9 ft to b2: receptacle
at j1
  join one-1.black, one-2.black
  join two-1.black, two-2.black
  join one-1.white, one-2.white
  join two-1.white, two-2.white
`,
		`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A two-pole by 12-3
  14 ft to b1: receptacle split
`,
	],
	check: (analysis) =>
		findOverModes(analysis, (state) =>
			findBorrowings(analysis.circuit, state)
				.filter(({ kind }) => kind === "other-circuit" || kind === "past-device")
				.map((borrowing) => tellBorrowing(neutralBorrowed, analysis, state, borrowing)),
		),
};
