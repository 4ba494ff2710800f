// Where the neutral has to be opened together with the hot.
import type { Provenance, Sourced } from "./provenance.ts";
import type { RuleSet } from "./scope.ts";
import { type Clause, clauseTable, type Table } from "./table.ts";

const guide: Provenance = { source: "IEC 60364-7-721, in a UK guide to the wiring regulations", known: "read" };
const craft: Provenance = {
	source: "ISO 13297",
	known: "recalled",
	note: "where nothing keeps the supply's hot and neutral from being exchanged",
};

const caravan: Sourced<Clause> = {
	clause: "721 two-pole breakers",
	topic: "disconnection",
	says: "the residual-current device is two-pole, and breakers open all live conductors",
	provenance: guide,
};
const boat: Sourced<Clause> = {
	clause: "small craft, two-pole breakers",
	topic: "disconnection",
	says: "breakers of a system without fixed polarity open both current-carrying conductors",
	provenance: craft,
};

/** What asks for it. */
export const twoPoleClauses: Table<Clause> = clauseTable(
	"two-pole-opening",
	"Where hot and neutral open together, IEC",
	[caravan, boat],
);

/** The clause of a rule set; undefined where the hot may be opened alone. */
export function twoPoleClauseFor(rules: RuleSet): Sourced<Clause> | undefined {
	return rules === "camper" ? caravan : rules === "boat" ? boat : undefined;
}
