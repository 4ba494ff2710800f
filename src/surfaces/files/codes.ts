// What there may be to say about the bytes of a plan, before anything in it is understood; explained like every other code.

/** Bytes that are no text. */
export const textNotUtf8 = {
	code: "text-not-utf8",
	level: "error",
	meaning: "Some bytes of the plan are not UTF-8 text.",
	why: "What stands there is unknown to the check and may be part of a name or a figure.",
	help: "Save the plan as UTF-8 text in your editor and look at these places.",
} as const;

/** A file of another sort: not one finding for each odd character, but this alone. */
export const notText = {
	code: "text-unreadable",
	level: "error",
	meaning:
		"The file holds bytes that no text has: zeros, or many control characters. It is a picture, a program, a document of a word processor, or text in another encoding such as UTF-16.",
	why: "Nothing of it can be read, so nothing is checked or drawn.",
	help: "Check the name of the file. A plan is plain UTF-8 text, as a text editor writes it.",
} as const;
