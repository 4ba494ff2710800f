// Everything the plan room may have to say, each with its meaning, so that it can be explained without a plan at hand.

import { type Finding, type FindingSlots, finding } from "../base/finding.ts";
import type { Span } from "../base/span.ts";

/** One thing that can be wrong with what a plan says, as distinct from how it is wired. */
export interface PlanCode {
	readonly code: string;
	readonly level: "error" | "warning" | "note";
	readonly meaning: string;
	readonly why: string;
	readonly help: string;
}

/** Every code of this room and of the circuit room, in the order in which a text is taken up. */
export const planCodes = [
	{
		code: "not-understood-yet",
		level: "warning",
		meaning: "A line is well written, but Ferrule does not know its meaning yet.",
		why: "What it describes is neither checked nor drawn.",
		help: "Leave it in; check that part of the wiring by hand.",
	},
	{
		code: "setting-unknown",
		level: "error",
		meaning: "A line below `plan` is no setting.",
		why: "The plan would be judged by other rules than you meant.",
		help: "Use a setting of the reference page.",
	},
	{
		code: "setting-wrong",
		level: "error",
		meaning: "A setting has a value it cannot take.",
		why: "The plan would be judged by other rules than you meant.",
		help: "Write one of the values that fit.",
	},
	{
		code: "name-twice",
		level: "error",
		meaning: "Two things have the same name; upper and lower case do not tell names apart.",
		why: "A tag on a cable or box would point at two places.",
		help: "Give one of them another name.",
	},
	{
		code: "name-unknown",
		level: "error",
		meaning: "A name is used that nothing in the plan has.",
		why: "The wire would lead nowhere, and what hangs on it cannot be checked.",
		help: "Correct the name, or declare the thing.",
	},
	{
		code: "kind-unknown",
		level: "error",
		meaning: "The word for what a thing is is not known.",
		why: "Its terminals are not known, so nothing about its wiring can be checked.",
		help: "Use a kind of the list that `ferrule explain` prints.",
	},
	{
		code: "kind-misplaced",
		level: "error",
		meaning: "A thing stands where its kind cannot stand.",
		why: "It would have no terminals to wire there.",
		help: "Put it where its kind belongs.",
	},
	{
		code: "kind-missing",
		level: "error",
		meaning: "A cable goes to something new without saying what it is.",
		why: "Nothing is known of what the cable would land on.",
		help: "Write `to NAME: KIND`, or the name of a thing declared before.",
	},
	{
		code: "attribute-unknown",
		level: "error",
		meaning: "A word behind a thing says nothing that its kind can have.",
		why: "It cannot be taken into account, so the thing may be judged wrongly.",
		help: "Correct the word or take it out.",
	},
	{
		code: "attribute-twice",
		level: "error",
		meaning: "The same is said twice of one thing.",
		why: "Only one of them can be true.",
		help: "Keep the one that holds.",
	},
	{
		code: "quantity-missing",
		level: "error",
		meaning: "A figure that must be known is not given.",
		why: "Without it the wiring cannot be judged.",
		help: "Write the figure with its unit, or `?` if you do not know it yet.",
	},
	{
		code: "unit-wrong",
		level: "error",
		meaning: "A figure has no unit, or one that does not fit there.",
		why: "Amperes read as watts would size a wire wrongly.",
		help: "Write the figure with a unit that fits.",
	},
	{
		code: "quantity-out-of-range",
		level: "error",
		meaning: "A figure lies far outside what such a thing can have.",
		why: "It is most likely a slip of the pen, and everything computed from it would be wrong.",
		help: "Check the figure and its unit.",
	},
	{
		code: "place-unknown",
		level: "error",
		meaning: "A thing is `in` a place that is not declared.",
		why: "Whether it is wet or hot there decides what is allowed.",
		help: "Declare it with `place`, or correct the name.",
	},
	{
		code: "place-word-unknown",
		level: "error",
		meaning: "A word behind a place is not known.",
		why: "Whether a place is wet or hot decides what is allowed there.",
		help: "Use one of the words of the reference page.",
	},
	{
		code: "stud-missing",
		level: "error",
		meaning: "Something is bolted to a thing that has no stud.",
		why: "Only studs and lugs can be bolted to one another; this joint cannot be built.",
		help: "Bolt it to a battery post, a bus, a fuse or another stud, or use a cable.",
	},
	{
		code: "slot-twice",
		level: "error",
		meaning: "Two breakers are in one slot.",
		why: "Only one fits; the other circuit would have no protection.",
		help: "Move one to a free slot, or use half-size breakers: `1A` and `1B`.",
	},
	{
		code: "slot-unknown",
		level: "error",
		meaning: "A circuit comes from a slot in which there is no breaker.",
		why: "Nothing would protect the circuit.",
		help: "Declare the breaker in the slot, or write it behind the slot.",
	},
	{
		code: "slot-shared",
		level: "warning",
		meaning: "Two circuits hang on one breaker.",
		why: "Both are dead when it opens, and two cables under its one screw is more than it takes.",
		help: "Give the second its own breaker, or branch it off from the first.",
	},
	{
		code: "panel-full",
		level: "error",
		meaning: "A panel has no free slot left.",
		why: "The circuit has no place to be protected from.",
		help: "Use a panel with more spaces, or half-size breakers.",
	},
	{
		code: "side-unknown",
		level: "error",
		meaning: "A name leads to a side or terminal that the thing does not have.",
		why: "The wire would lead nowhere.",
		help: "Use a side or terminal the kind has.",
	},
	{
		code: "cable-carried-over",
		level: "note",
		meaning: "A branch says no cable, and takes the one that was said last on the way before it.",
		why: "A branch from a thing farther back may be meant to go on in the cable that came to that thing.",
		help: "Write the cable of the branch: `from s1 by 12-2`.",
	},
	{
		code: "cable-missing",
		level: "error",
		meaning: "A run does not say by which cable it goes.",
		why: "Whether its wires are thick enough cannot be judged.",
		help: "Write `by` and the cable behind where the run comes from.",
	},
	{
		code: "cable-unknown",
		level: "error",
		meaning: "The words for a cable are not understood.",
		why: "Its conductors are not known, so nothing on them can be checked.",
		help: "Write a make-up such as `12-2`, `3G2.5` or `triplex 14 AWG`.",
	},
	{
		code: "role-missing",
		level: "error",
		meaning: "It is not said what a conductor of an own cable or a terminal of an own part is for.",
		why: "Nobody can tell whether what lands there belongs there.",
		help: "Write behind its name what it is for: hot, neutral, ground, positive or negative.",
	},
	{
		code: "part-without-terminals",
		level: "error",
		meaning: "A part of the builder's own has no terminal that could be understood.",
		why: "Nothing could be wired to it.",
		help: "Write a line for each terminal below it: its name and what it is for, such as `line hot`.",
	},
	{
		code: "terminal-twice",
		level: "error",
		meaning: "Two terminals of one part have the same name.",
		why: "A landing on that name could mean either.",
		help: "Give one of them another name.",
	},
	{
		code: "link-impossible",
		level: "error",
		meaning: "A part is said to have a way inside that no part can have, or that would be a short circuit.",
		why: "Everything behind it would be judged wrongly.",
		help: "Look at the part's own diagram, and correct the terminals of the link or what they are for.",
	},
	{
		code: "cable-goes-nowhere",
		level: "error",
		meaning: "A run starts but goes to nothing.",
		why: "Its wires would end in the open.",
		help: "Add a hop below it: `14 ft to b1: receptacle`.",
	},
	{
		code: "cable-to-itself",
		level: "error",
		meaning: "A cable goes from a thing to the same thing.",
		why: "It would lead nowhere, or short what it meets.",
		help: "Name the thing it really goes to.",
	},
	{
		code: "loop-misplaced",
		level: "error",
		meaning: "A `loop` does not go from what is switched to its switch.",
		why: "Which of its wires brings the hot and which takes it back cannot be told.",
		help: "Begin it at the light, receptacle or box that is switched, and end it at a switch; a plain run needs no `loop`.",
	},
	{
		code: "tag-twice",
		level: "error",
		meaning: "Two cables have the same tag.",
		why: "Whoever finds the tag in the wall cannot tell which cable it is.",
		help: "Give one of them another tag with `as`.",
	},
	{
		code: "tag-automatic",
		level: "note",
		meaning: "A cable of a roughed-in run has a running number for its tag.",
		why: "The tag is on the cable in the wall, and the number in the plan changes when a hop is put in before it.",
		help: "Write the tag with `as`.",
	},
	{
		code: "panel-fed-by-itself",
		level: "error",
		meaning: "Following the cables from a panel leads back into it.",
		why: "Power would go in a circle, and no breaker would stand between the panel and itself.",
		help: "Feed the panel from a source.",
	},
	{
		code: "core-unknown",
		level: "error",
		meaning: "A landing names a conductor that does not come into that box.",
		why: "The landing cannot be built as written.",
		help: "Use a cable tag and colour that enter the box.",
	},
	{
		code: "tags-too-many",
		level: "error",
		meaning: "A hop has a row of tags with more tags than the hop has cables.",
		why: "A tag that is on no cable will be looked for in vain.",
		help: "Write one tag for each thing the hop arrives at: `as bunks-1..bunks-3 to l1..l3: light 2 W each`.",
	},
	{
		code: "terminal-unknown",
		level: "error",
		meaning: "A landing, or a link of an own part, names a terminal that is not there.",
		why: "It cannot be built as written.",
		help: "Use a terminal of a device in the box, or of the part.",
	},
	{
		code: "landed-twice",
		level: "error",
		meaning: "One end of a conductor is said to be in two places.",
		why: "A wire's end can only be under one terminal or in one joint.",
		help: "Keep the landing that is true.",
	},
	{
		code: "mode-source-unknown",
		level: "error",
		meaning: "A mode names something that is no source.",
		why: "What is live in that mode would not be known.",
		help: "Name sources of the plan.",
	},
	{
		code: "mode-load-unknown",
		level: "error",
		meaning: "A mode says that something runs which uses no power.",
		why: "What its source has to give in that mode would not be known.",
		help: "Name loads of the plan behind `with`.",
	},
	{
		code: "mode-position-unknown",
		level: "error",
		meaning: "A mode says a position of something that is no transfer switch, or that the switch does not have.",
		why: "What is live in that mode would not be known.",
		help: "Write the name of a transfer switch, `at`, and one of its positions or the source it is to pass on.",
	},
	{
		code: "modes-too-many",
		level: "warning",
		meaning: "A plan has more source modes than are judged.",
		why: "What is wrong only while one of the left-out sources is live stays unseen.",
		help: "Name the modes that matter with `mode` lines, or split the plan.",
	},
	{
		code: "plan-empty",
		level: "warning",
		meaning: "Nothing in the text is a thing that can be wired.",
		why: "There is nothing to check and nothing to draw.",
		help: "Begin from a starter: `ferrule new van.ferrule` writes one.",
	},
	{
		code: "source-missing",
		level: "note",
		meaning: "Nothing in the plan feeds it.",
		why: "Without a source there is nothing to trace, so most checks cannot be made.",
		help: "Declare an inlet, a generator or an inverter.",
	},
	{
		code: "accept-unused",
		level: "warning",
		meaning: "An `accept` line silences nothing.",
		why: "A deviation that is written down but not there misleads who reads the plan.",
		help: "Take the line out, or correct its rule or place.",
	},
	{
		code: "reason-empty",
		level: "error",
		meaning: "The reason of an `accept` line says nothing.",
		why: "A deviation without a reason cannot be judged by who comes after you.",
		help: 'Write `because "..."`.',
	},
	{
		code: "rule-unknown",
		level: "error",
		meaning: "An `accept` line names a rule that does not exist.",
		why: "It would silence nothing.",
		help: "Use a rule's name as the findings print it.",
	},
] as const satisfies readonly PlanCode[];

/** A code of the list above. */
export type PlanCodeName = (typeof planCodes)[number]["code"];

/** A finding of this room; level, why, help and basis come from the list unless given. */
export function planFinding(
	code: PlanCodeName,
	slots: Pick<FindingSlots, "title" | "span"> & Partial<FindingSlots>,
): Finding {
	const entry = planCodes.find((candidate) => candidate.code === code) ?? planCodes[0];
	return finding({
		level: entry.level,
		why: entry.why,
		help: entry.help,
		basis: "the notation, grammar/reference.md",
		...slots,
		code,
	});
}

/** Two of one sort share a name: told where the second stands, with the first beside it. */
export function calledTwice(
	sort: "cables" | "parts" | "runs" | "modes",
	name: string,
	span: Span,
	first: Span,
): Finding {
	return planFinding("name-twice", {
		title: `Two ${sort} are called ${name}`,
		span,
		also: [{ span: first, label: "first here" }],
	});
}
