// What generated plans do not say, and why not: by kind, or by `kind: attribute`.
const makeshift = "a makeshift: it brings a note, or asks for what a careful builder would not do";
const late = "opens late, so it protects no people; said of mains only";
const onlyOnBoards = "tied handles are said of plain breakers here";

export const unsaid: ReadonlyMap<string, string> = new Map([
	["dimmer: negative", "of direct current"],
	["end: coiled", "a cable end that waits is said plainly"],
	["end: state", "a cable end that waits is said plainly"],
	["splice: connector", "joints are said for the whole plan"],
	["splice: ports", "joints are said for the whole plan"],
	["splice: rating", "joints are said for the whole plan"],
	["generator: breaker", makeshift],
	["inlet: adapter", makeshift],
	["inlet: floating", makeshift],
	["neutral-bar: apart", "nothing lands on it by itself"],
	["neutral-bar: bonded", "said at the panel instead"],
	["gfci: selective", late],
	["ground-fault-breaker: selective", late],
	["residual-current-device: selective", late],
	["ground-fault-breaker: tied", onlyOnBoards],
]);
