// What can be wrong with a text before anything electrical is asked: one entry for each code that reading gives.
import { limits } from "./vocabulary.ts";

/** What `explain` tells about a code. */
export interface SyntaxProblem {
	readonly code: string;
	/** What it means, in a few sentences. */
	readonly meaning: string;
	/** What happens if it stays. */
	readonly why: string;
	/** How to put it right. */
	readonly help: string;
}

/** A line that was not understood is left out of the plan: said in one way wherever it holds. */
const leftOut = "Until it is put right the line is left out of the plan, and nothing on it is checked or drawn.";

/** Every code that reading gives, in the order of the alphabet. */
export const syntaxProblems = [
	{
		code: "character-hidden",
		meaning:
			"The line holds a character that cannot be seen: one that turns the direction of writing, one without width, or a control character. Such characters come along when text is copied from a page or a message.",
		why: "A plan with hidden characters can read differently to you and to the tool.",
		help: "Delete the character; retyping the word is the surest way.",
	},
	{
		code: "character-look-alike",
		meaning:
			"The line holds a character that only looks like one of the notation: a long dash for a hyphen, a curved quote for a straight one, a digit of another script, a space that does not break. It is read as the one it looks like, so that the rest of the line can be checked.",
		why: "Two names or figures that look the same would not be the same to the tool.",
		help: "Type the character again on the keyboard.",
	},
	{
		code: "character-unknown",
		meaning:
			"The line holds a mark that the notation has no use for. The marks it knows are the colon, comma, dot, two dots, round brackets, slash, question mark, double quotes, `#` before a wire gauge, `@` for a cable's end, `%`, and `//` before a comment.",
		why: leftOut,
		help: "Leave the mark out. Free text stands in double quotes, a comment behind `//`.",
	},
	{
		code: "colon-missing",
		meaning:
			"Behind a new name on a hop, in a panel or in a box comes a colon, and behind the colon the kind: `b1: receptacle`. Here a word follows the name without the colon. It is read as if the colon stood there.",
		why: "Without the colon the tool has to guess where the name ends and the kind begins.",
		help: "Write a colon behind the name: `b1: receptacle`.",
	},
	{
		code: "colon-unexpected",
		meaning:
			"A colon stands where none belongs. At the left edge a thing is written with its kind first and without a colon: `inlet shore 30 A 120 V`. With name and colon a thing is written on a hop (`14 ft to b1: receptacle`) and as a part of something, indented below it.",
		why: leftOut,
		help: "Write it as a hop below its circuit, `14 ft to b1: receptacle`, or indent the line below what it is a part of. At the left edge write the kind, then the name, without a colon.",
	},
	{
		code: "direction-unclosed",
		meaning:
			"A label or a comment turns the direction of writing (as for Hebrew or Arabic) and does not turn it back. What follows on the same line may then be shown in a wrong order.",
		why: "The line can look as if it said something else than it does.",
		help: "Close the direction in the text, or delete the hidden character.",
	},
	{
		code: "end-second",
		meaning: "A hop names two ends, such as the plus and the minus of a thing. One cable goes to one thing.",
		why: "Where each conductor of the cable lands would be anyone's guess.",
		help: "Lead a pair to the plus, `to ch.+`: its minus goes to the minus beside it. Write a hop of its own for another cable.",
	},
	{
		code: "figures-unlike",
		meaning:
			"Two figures with a slash between them are two ratings of one sort, such as `12 V / 120 V`. Here they measure different things, or one of them has no figure.",
		why: "A pair of different sorts has no meaning.",
		help: "Give both sides the same sort of unit, or write the figures apart.",
	},
	{
		code: "file-in-circle",
		meaning: "A file uses another that, over one or more files, uses the first.",
		why: "Nobody can say which of them comes first, so the circle is cut at this line.",
		help: "Take one `use` line of the circle out; put what both need into a third file.",
	},
	{
		code: "file-missing",
		meaning: "A `use` line names a file that is neither beside the file that uses it nor in the library folder.",
		why: "What it describes is missing from the plan, so the names that it declares are not known.",
		help: "Correct the name; it stands from the folder of the file that uses it, with `/` between folders.",
	},
	{
		code: "file-refused",
		meaning:
			"A `use` line names something that is not read: a file outside the plan's folder and the library folder, a link that leads out of them, a folder, a device, a file that is too large or is no plan.",
		why: "A plan that comes from somebody else must not reach into the rest of a machine.",
		help: "Put the file below the folder of the plan, or into a folder of its own that `--library` names.",
	},
	{
		code: "file-settings-left-out",
		meaning: "A used file has a `plan` line with settings. They hold when that file is checked by itself.",
		why: "One plan has one region and one set of rules, and those are said in the plan that uses the others.",
		help: "Nothing is to be done if both are meant for the same region and rules; otherwise look at what you use.",
	},
	{
		code: "files-too-many",
		meaning: `A plan uses more than ${limits.usedFiles} files, more than ${limits.useDepth} deep, or with more than ${limits.usedText} characters together.`,
		why: "What stands in the files that are left out is missing from the plan.",
		help: "Put small files together, and use each where it is needed.",
	},
	{
		code: "hop-misplaced",
		meaning:
			"A hop (a length, and `to` what) or a branch (`from` what) stands where there is no chain it could belong to. Hops stand indented below a `circuit`, a `feed`, a `bond`, or a `from` within one of these.",
		why: "A cable that belongs to no chain comes from nowhere: it is neither checked nor drawn.",
		help: "Indent the hop below its circuit. Where there is none yet, write `circuit NAME from PANEL.SLOT by CABLE` above it.",
	},
	{
		code: "indentation-mixed",
		meaning:
			"Some lines are indented with tabs and others with spaces. A tab counts up to the next multiple of four columns here, but editors show tabs at many widths.",
		why: "What looks indented alike may not be, so a line could end up below the wrong one.",
		help: "Indent the whole file with spaces, or the whole file with tabs.",
	},
	{
		code: "indentation-too-deep",
		meaning: `Lines stand below lines in more than ${limits.depth} steps. A plan needs four or five: a circuit, its hops, a branch, a box and the devices in it.`,
		why: leftOut,
		help: "Move the line to the left, to the line it belongs to.",
	},
	{
		code: "indentation-uneven",
		meaning:
			"Lines that belong together begin in the same column. Hops may instead have the ends of their lengths in one column, as in a list of figures. This line does neither, so it is not clear what it belongs to; it is read as a line of the nearest one above that it can stand below.",
		why: "A line that is read at the wrong depth joins the wrong circuit or the wrong box.",
		help: "Begin the line in the same column as its neighbours. To branch off, write `from NAME` and indent the hops below that.",
	},
	{
		code: "indentation-unexpected",
		meaning:
			"The line is indented below one that takes no lines of its own. It is read as if it stood where such a line may stand.",
		why: "What is meant to be part of something would be left out of it.",
		help: "Move the line to the left, or indent it below the line it belongs to.",
	},
	{
		code: "label-too-long",
		meaning: "A label has more than 200 characters. Labels are printed on the drawing beside the thing.",
		why: "A label of this length does not fit on any sheet.",
		help: "Shorten the label; longer remarks belong in the plan's `notes` or in a comment.",
	},
	{
		code: "landing-misplaced",
		meaning:
			"A landing (`CONDUCTOR on TERMINAL`, `join`, `link`) stands outside an `at` block. Landings say how one box is wired, so they stand indented below `at BOX`.",
		why: leftOut,
		help: "Write `at` and the name of the box above it, and indent the landing below that line.",
	},
	{
		code: "length-unexpected",
		meaning:
			"A length stands where nothing has one: twice on one hop, or on a hop that is `bolted to` its neighbour and so has no cable.",
		why: "Only one of the lengths could be used, and the tool must not choose.",
		help: "Keep one length for each hop. Write `2 ft through PLACE` for a part of it that runs elsewhere.",
	},
	{
		code: "line-too-long",
		meaning: "The line has more than 10,000 characters and is not read.",
		why: leftOut,
		help: "Break it into several lines, one statement each.",
	},
	{
		code: "name-dotted",
		meaning:
			"A new name has a dot, a bracket or an `@` in it. The dot leads inside a thing: `LC.1A` is slot 1A of the panel LC. So it can stand where a name is used, never where one is given.",
		why: "The tool could not tell the new thing from a part of another one.",
		help: "Give a plain name of letters, digits, `-` and `_`.",
	},
	{
		code: "name-hyphen",
		meaning: "A name begins or ends with a hyphen. Within a name hyphens are fine: `bunk-left`.",
		why: "A hyphen at the edge of a name is easily taken for a minus sign or the negative pole.",
		help: "Leave out the hyphen at the edge of the name.",
	},
	{
		code: "name-missing",
		meaning: "The line breaks off, or goes on with something else, where a name is needed.",
		why: leftOut,
		help: "Write the name. A name has letters, digits, `-` and `_`.",
	},
	{
		code: "name-mixed-script",
		meaning:
			"A name mixes letters of two scripts that look alike, such as a Latin `a` and a Cyrillic one. It is allowed, but it is seldom meant.",
		why: "Two names that look the same may be two different names.",
		help: "Type the name again with one keyboard layout.",
	},
	{
		code: "name-reserved",
		meaning:
			"A word of the notation is used as a name. Only the words that begin a statement and those that join a line together are kept back; every other word is free.",
		why: "The tool could not tell the name from the word it is.",
		help: "Choose another name, or add to it: `at-door` instead of `at`.",
	},
	{
		code: "name-too-long",
		meaning: "A name has more than 64 characters. Names are printed at every end of a cable.",
		why: "A name of this length does not fit on the drawing or on a cable's label.",
		help: "Give a short name, and say the rest in a label in double quotes.",
	},
	{
		code: "number-unclear",
		meaning:
			"A word begins with a digit but is no figure the notation knows. Figures are written `1500` or `0.8`; wire sizes `12 AWG`, `#12`, `4/0`, `2.5 mm2`; cables `12-2`, `3G2.5`, `2x1.5`. A comma is white space, so it cannot stand within a number.",
		why: "A figure that is read wrongly gives wrong sums without a sign of it.",
		help: "Write the number with a dot for decimals and nothing between thousands.",
	},
	{
		code: "quote-unclosed",
		meaning:
			"A text begins with a double quote and the line ends without the closing one. The text is taken to reach to the end of the line.",
		why: "Whatever was meant to follow the text is taken to be part of it.",
		help: "Close the text with a double quote. Inches are written `in`, never with a quote mark.",
	},
	{
		code: "reading-stopped",
		meaning:
			"More than 5,000 problems were found, and reading stopped there. A text with so many problems is seldom a plan: perhaps another sort of file was given, or one mistake repeats itself on every line.",
		why: "Nothing from this line on is checked or drawn.",
		help: "Check that the file is a plan. Put right what the first findings say, and read it again.",
	},
	{
		code: "reason-missing",
		meaning: "An `accept` line gives no reason. The reason is printed on the sheet beside the accepted deviation.",
		why: "Whoever works on the wiring later must be able to see why the deviation was accepted.",
		help: 'Write `because` and the reason in double quotes: `because "..."`.',
	},
	{
		code: "reason-too-long",
		meaning: "A reason, a note or another quoted text has more than 500 characters.",
		why: "A text of this length does not fit on the sheet.",
		help: "Shorten the text, or split it over several lines.",
	},
	{
		code: "row-unclear",
		meaning:
			"Two dots make a row of names: `l1..l6` is l1, l2 and so on up to l6. Both names must be alike up to the number at their end, the first number must be the smaller one, and a row has at most 1,000 names.",
		why: "The tool cannot tell which names are meant.",
		help: "Write the first and the last name of the row, such as `l1..l6`.",
	},
	{
		code: "text-missing",
		meaning: "A text in double quotes is needed here, such as the file name behind `use`.",
		why: leftOut,
		help: "Write the text in double quotes.",
	},
	{
		code: "text-too-long",
		meaning: "The whole text has more than 2,000,000 characters and is not read.",
		why: "Nothing of it is checked or drawn.",
		help: "Split the plan into several files and bring them together with `use`.",
	},
	{
		code: "unit-missing",
		meaning:
			"A figure stands without its unit where one is needed. Units are always written, so that feet are never taken for metres or watts for amperes.",
		why: "Without its unit nobody can tell what the figure measures.",
		help: "Write the unit behind the figure: `14 ft`, `3.6 m`, `20 A`.",
	},
	{
		code: "unit-unfit",
		meaning: "A figure has a unit, but one that measures something else than what is needed here.",
		why: "The figure cannot be used for what the line says.",
		help: "Check the figure, and write it with a unit that fits.",
	},
	{
		code: "unit-unknown",
		meaning:
			"A word stands where a unit is needed, or right behind a figure, and it is no unit of the notation. Upper and lower case differ in units: `mA` is a thousandth of an ampere.",
		why: "Without its unit nobody can tell what the figure measures.",
		help: "Write one of the units: A, V, W, VA, Ah, Wh, ft, in, m, cm, mm, AWG, mm2, cuin, C, F, ohm, s, min, h, Hz, %.",
	},
	{
		code: "word-missing",
		meaning: "A word that holds the line together is missing: `from` on a run, `to` on a hop, `on` in a landing.",
		why: leftOut,
		help: "Write the line after the example that the finding shows.",
	},
	{
		code: "word-unexpected",
		meaning:
			"The line is understood up to a word or mark that cannot stand there. On a hop, everything about the cable stands left of `to`, everything about the thing right of it.",
		why: leftOut,
		help: "Write the line after the example that the finding shows.",
	},
	{
		code: "word-unknown",
		meaning:
			"The first word of a line is no word that begins a statement, and the line, or what stands below it, shows that one was meant.",
		why: "A misspelt first word changes what the whole line, and every line below it, is taken for.",
		help: "Correct the spelling of the word.",
	},
] as const satisfies readonly SyntaxProblem[];

/** The code of a problem that reading can give. */
export type SyntaxCode = (typeof syntaxProblems)[number]["code"];
