// What generated plans do not say, and why not: by kind, or by `kind: attribute`.
const makeshift = "a makeshift: it brings a note, or asks for what a careful builder would not do";
const late = "opens late, so it protects no people; said of mains only";
const asInlet = "wired as the pedestal is, which is said";
const onPlates = "watts are said";
const seldom = "seldom said, and not yet in the plans of a test run";
const onlyOnBoards = "tied handles are said of plain breakers here";

export const unsaid: ReadonlyMap<string, string> = new Map([
	["end: coiled", "a cable end that waits is said plainly"],
	["end: state", "a cable end that waits is said plainly"],
	["generator: breaker", makeshift],
	["inlet: adapter", makeshift],
	["inlet: floating", makeshift],
	["neutral-bar: apart", "nothing lands on it by itself"],
	["neutral-bar: bond", "said at the panel instead"],
	["gfci: selective", late],
	["ground-fault-breaker: selective", late],
	["residual-current-device: selective", late],
	["gfci: delay", late],
	["ground-fault-breaker: delay", late],
	["panel: delay", late],
	["residual-current-device: delay", late],
	["residual-current-device: poles", "every one has two"],
	["ground-fault-breaker: tied", onlyOnBoards],
	["battery: cells", seldom],
	["battery: resistance", seldom],
	["galvanic-isolator", seldom],
	["galvanic-isolator: rating", seldom],
	["heater: legs", seldom],
	["light: legs", seldom],
	["pump: neutral", seldom],
	["splice: smallest", seldom],
	["usb-outlet: legs", seldom],
	...["apparent power", "dedicated", "legs", "neutral", "power-factor"].map(
		(name) => [`outlet-12v: ${name}`, "of alternating current"] as const,
	),
	["utility", asInlet],
	...["rating", "voltage", "legs", "earthing", "ground"].map((name) => [`utility: ${name}`, asInlet] as const),
	...["light", "fan", "pump", "heater", "fridge", "usb-outlet", "load"].flatMap((kind) => [
		[`${kind}: apparent power`, onPlates] as const,
		[`${kind}: power-factor`, onPlates] as const,
		[`${kind}: dedicated`, "said of receptacles"] as const,
	]),
]);
