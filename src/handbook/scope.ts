// What a row of the handbook holds for: the region's conventions, and the kind of place that is wired.

/** Both regions. */
export const regions = ["us", "iec"] as const;

/** North American (`us`) or IEC conventions. */
export type Region = (typeof regions)[number];

/** The kinds of places. */
export const ruleSets = ["camper", "boat", "building"] as const;

/** Whose rules govern the place. */
export type RuleSet = (typeof ruleSets)[number];
