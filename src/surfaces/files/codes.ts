// What there may be to say about how a plan was read, before anything in it is understood; explained like every other code.

/** A problem with the file itself. */
export interface ReadingCode {
	readonly code: string;
	readonly level: "error";
	readonly meaning: string;
	readonly why: string;
	readonly help: string;
}

/** Bytes that are no text. */
export const textNotUtf8 = {
	code: "text-not-utf8",
	level: "error",
	meaning: "Some bytes of the plan are not UTF-8 text.",
	why: "What stands there is unknown to the check and may be part of a name or a figure.",
	help: "Save the plan as UTF-8 text in your editor and look at these places.",
} as const satisfies ReadingCode;

/** More than is read. */
export const planTooLarge = {
	code: "plan-too-large",
	level: "error",
	meaning: "The file is larger than any plan that is read.",
	why: "Nothing in it has been checked.",
	help: "Split it into plans of one panel each, or see whether it is a plan at all.",
} as const satisfies ReadingCode;

/** Every code of this room. */
export const readingCodes: readonly ReadingCode[] = [textNotUtf8, planTooLarge];
