// The words of the notation, as lists: what begins a statement and what stands within a line. Knows no device words.

/** Words that begin a statement at the left edge. A first word that is none of them is the kind of a thing. */
export const statementWords = [
	"plan",
	"place",
	"circuit",
	"feed",
	"bond",
	"at",
	"mode",
	"cable",
	"part",
	"use",
	"accept",
	"reading",
] as const;

/** Words that begin a line below `at`, beside the landings that begin with a conductor. */
export const landingWords = ["join", "link"] as const;

/** Words with a meaning of their own within a line. */
export const lineWords = [
	"from",
	"by",
	"to",
	"via",
	"bolted",
	"within",
	"as",
	"through",
	"marked",
	"on",
	"in",
	"with",
	"without",
	"because",
] as const;

/** Words with a meaning at one place only; anywhere else they are free for names. */
export const placeWords = ["loose", "capped", "both", "ends"] as const;

/** Words that cannot be the name of anything. */
export const reservedWords: readonly string[] = [...statementWords, ...landingWords, ...lineWords];

/** The marks of the notation, other than letters and digits. */
export const punctuation = [":", ",", "(", ")", "..", "/", "//", "?", '"', "#", ".", "@", "+", "-", "_"] as const;

/** Words behind a bare number that make it a wire gauge. */
export const gaugeWords = ["AWG", "awg"] as const;

/** Letters within the make-up of a metric cable: `3G2.5`, `2x1.5`. */
export const makeUpLetters = ["G", "x"] as const;

/** How much is read. Beyond it stands a finding, so that no text can hold the tool up. */
export const limits = {
	/** Characters of one text. */
	text: 2_000_000,
	/** Characters of one line. */
	line: 10_000,
	/** Findings on one text; reading stops at the next line. */
	findings: 5_000,
	/** Lines within lines. */
	depth: 32,
	/** Characters of a name, of a label, and of any other quoted text. */
	name: 64,
	label: 200,
	reason: 500,
	/** Things in a row such as `l1..l6`. */
	row: 1_000,
	/** Files that a plan uses, how deep they use one another, and the characters of all of them together. */
	usedFiles: 64,
	useDepth: 8,
	usedText: 8_000_000,
} as const;
