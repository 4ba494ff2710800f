// Where sheets of generated plans fall short of what every sample keeps to: known gaps of the drawing, to be made smaller.

/** Lanes that meet again in one box are laid out as a net, whose cables cross and at times lie on one line. */
export const gapsOfNets: readonly string[] = ["cable crossings", "wires on one line"];

/** The share of sheets on which a measure may be broken, by its name: a quarter more than on the day it was counted. */
export const knownGaps: ReadonlyMap<string, number> = new Map<string, number>([
	["empty share", 0.41],
	["crossings in a fallback box, each onward cable", 0.22],
	["largest empty rectangle", 0.17],
	["bends a cable between boxes", 0.07],
	["crossings in a box with its device beside the rows", 0.05],
	["crossings in a panel", 0.04],
	["bends a conductor in boxes", 0.02],
]);
