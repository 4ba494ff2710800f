// The exit statuses of the command, by name. Scripts rely on them: they may be added to, never changed.

/** What the command ends with. */
export const status = {
	/** Done, and nothing found at the level asked for. */
	fine: 0,
	/** Findings at that level; a plan that cannot be understood is one. */
	findings: 1,
	/** A wrong call: an unknown verb, option or value. */
	call: 64,
	/** An input cannot be read. */
	input: 66,
	/** A fault of Ferrule itself. */
	internal: 70,
	/** An output cannot be created. */
	create: 73,
	/** Writing or reading broke off. */
	transfer: 74,
	/** Bad settings. */
	settings: 78,
	/** Interrupted by the user. */
	interrupted: 130,
	/** Whoever read the output went away. */
	readerGone: 141,
} as const;
