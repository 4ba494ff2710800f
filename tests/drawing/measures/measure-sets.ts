// Names of measures that any sheet must keep to, whatever plan it is of, and of those that right wiring must keep to besides.

/** What holds on any sheet, however it is wired. The rest are averages and shapes that a plan by chance need not reach. */
export const never: ReadonlySet<string> = new Set([
	"text on text",
	"text on wire or line",
	"text on symbol",
	"text on an edge",
	"outside the frame",
	"smallest capital, mm",
	"wire through a foreign box or device",
	"wires on one line",
	"oblique wires outside fans",
	"kinks",
	"distance of wires side by side",
	"distance of wires side by side, fallback boxes",
	"cable crossings",
	"gap between enclosures",
	"symbol on symbol",
	"line through symbol",
	"group names used twice",
]);

/** What holds besides where nothing is miswired. */
export const asTheTradeWires: ReadonlySet<string> = new Set([
	"conductors with their letter code",
	"crossings in a box with its device beside the rows",
	"crossings in a box with its device in series",
	"crossings in an end box",
]);
