// What generated plans do not say, and why not: by kind, or by `kind: attribute`.
const makeshift = "a makeshift: it brings a note, or asks for what a careful builder would not do";
const late = "opens late, so it protects no people; said of mains only";
const onlyOnBoards = "tied handles are said of plain breakers here";

export const unsaid: ReadonlyMap<string, string> = new Map([
	["generator: breaker", makeshift],
	["inlet: adapter", makeshift],
	["inlet: floating", makeshift],
	["neutral-bar: apart", "nothing lands on it by itself"],
	["gfci: selective", late],
	["ground-fault-breaker: selective", late],
	["residual-current-device: selective", late],
	["gfci: delay", late],
	["ground-fault-breaker: delay", late],
	["residual-current-device: delay", late],
	["ground-fault-breaker: tied", onlyOnBoards],
	...["apparent power", "dedicated", "legs", "neutral", "power-factor"].map(
		(name) => [`outlet-12v: ${name}`, "of alternating current"] as const,
	),
]);
