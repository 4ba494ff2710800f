// Where sheets of generated plans fall short of what every sample keeps to: known gaps of the drawing, to be made smaller.

/** Lanes that meet again in one box are laid out as a net, whose cables at times cross. */
export const gapsOfNets: readonly string[] = ["cable crossings"];

/** The share of sheets of a sort on which a measure may be broken: a quarter more than on the day it was counted. */
export const knownGaps: ReadonlyMap<string, number> = new Map<string, number>([
	["wiring: empty share", 0.37],
	["wiring: crossings in a fallback box, each onward cable", 0.09],
	["wiring: largest empty rectangle", 0.11],
	["wiring: bends a cable between boxes", 0.14],
	["wiring: bends a conductor in boxes", 0.05],
	["one-line: empty share", 0.26],
	["one-line: largest empty rectangle", 0.1],
	["direct-current: empty share", 0.62],
	["direct-current: largest empty rectangle", 0.16],
	["direct-current: distance of wires side by side", 0.02],
	["direct-current: bends a cable between boxes", 0.12],
	["direct-current: bends a conductor in boxes", 0.02],
]);
