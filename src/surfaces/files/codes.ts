// What there may be to say about the bytes of a plan, before anything in it is understood; explained like every other code.

/** Bytes that are no text. */
export const textNotUtf8 = {
	code: "text-not-utf8",
	level: "error",
	meaning: "Some bytes of the plan are not UTF-8 text.",
	why: "What stands there is unknown to the check and may be part of a name or a figure.",
	help: "Save the plan as UTF-8 text in your editor and look at these places.",
} as const;
