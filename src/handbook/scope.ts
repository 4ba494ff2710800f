// What a row of the handbook holds for: the region's conventions, and the kind of place that is wired.

/** North American (`us`) or IEC conventions. */
export type Region = "us" | "iec";

/** Whose rules govern the place. */
export type RuleSet = "camper" | "boat" | "building";
