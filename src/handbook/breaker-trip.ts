// How circuit breakers trip: IEC bands, and the calibration points of North American ones.
import { certain } from "../base/certain.ts";
import type { Known, Provenance, Sourced } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** Instantaneous trip band of an IEC breaker, in multiples of its rating. */
export interface TripBand {
	readonly type: "B" | "C" | "D";
	readonly above: number;
	readonly upTo: number;
}

const bandSource: Provenance = {
	source: "IEC 60898-1",
	known: "read",
	note: "in a summary of the identical Indian edition",
};

/** Instantaneous bands. */
export const tripBands: Table<TripBand> = table<TripBand>(
	"trip-bands",
	"Instantaneous trip bands of circuit breakers, multiples of rated current",
	[
		["type", (row) => row.type],
		["above", (row) => row.above],
		["up to", (row) => row.upTo],
	],
	[
		{ type: "B", above: 3, upTo: 5, provenance: bandSource },
		{ type: "C", above: 5, upTo: 10, provenance: bandSource },
		{ type: "D", above: 10, upTo: 20, provenance: bandSource },
	],
);

/** A point of a breaker's time-current curve. */
export interface TripPoint {
	readonly standard: "IEC 60898-1" | "UL 489";
	/** Current in multiples of the rating. */
	readonly multiple: number;
	/** Ratings it holds for: above the first, up to the second, amperes. */
	readonly above: number;
	readonly upTo: number;
	/** Seconds: no sooner than, no later than. Infinity in `soonest` is a current that must be held. */
	readonly soonest: number | undefined;
	readonly latest: number | undefined;
}

const any = Number.MAX_SAFE_INTEGER;
type Cell = number | undefined;
type Row = readonly [TripPoint["standard"], number, number, number, Cell, Cell, Known, string?];
const note = "1.13 and 1.45 were read, the conventional time is recalled";
const rows: readonly Row[] = [
	["IEC 60898-1", 1.13, 0, 63, 3600, undefined, "read", note],
	["IEC 60898-1", 1.13, 63, any, 7200, undefined, "read", note],
	["IEC 60898-1", 1.45, 0, 63, undefined, 3600, "read", note],
	["IEC 60898-1", 1.45, 63, any, undefined, 7200, "read", note],
	["IEC 60898-1", 2.55, 0, 32, 1, 60, "recalled"],
	["IEC 60898-1", 2.55, 32, any, 1, 120, "recalled"],
	["UL 489", 1, 0, any, Number.POSITIVE_INFINITY, undefined, "read"],
	["UL 489", 1.35, 0, 50, undefined, 3600, "read"],
	["UL 489", 1.35, 50, any, undefined, 7200, "recalled"],
	["UL 489", 2, 0, 30, undefined, 120, "read"],
	["UL 489", 2, 30, 50, undefined, 240, "recalled"],
	["UL 489", 2, 50, 100, undefined, 360, "recalled"],
	["UL 489", 2, 100, 150, undefined, 480, "recalled"],
	["UL 489", 2, 150, 225, undefined, 600, "recalled"],
];

/** Points of time-current curves. */
export const tripPoints: Table<TripPoint> = table<TripPoint>(
	"trip-points",
	"Time-current points of circuit breakers",
	[
		["standard", (row) => row.standard],
		["multiple", (row) => row.multiple],
		["rating above, A", (row) => row.above],
		["up to, A", (row) => (row.upTo === any ? "more" : row.upTo)],
		["no sooner than, s", (row) => (row.soonest === Number.POSITIVE_INFINITY ? "never trips" : row.soonest)],
		["no later than, s", (row) => row.latest],
	],
	rows.map(([standard, multiple, above, upTo, soonest, latest, known, text]) => ({
		standard,
		multiple,
		above,
		upTo,
		soonest,
		latest,
		provenance: { source: standard, known, ...(text === undefined ? {} : { note: text }) },
	})),
);

/** Interrupting ratings met on alternating current. */
export interface InterruptingRating {
	readonly what: string;
	readonly amperes: readonly number[];
}

/** Interrupting ratings of alternating-current breakers. The one marked on the device decides. */
export const breakerInterrupting: Table<InterruptingRating> = table<InterruptingRating>(
	"breaker-interrupting",
	"Usual interrupting ratings of alternating-current breakers",
	[
		["breaker", (row) => row.what],
		["A", (row) => row.amperes],
	],
	[
		{ what: "IEC household breaker", amperes: [6000, 10000], provenance: bandSource },
		{
			what: "North American branch breaker, as marked",
			amperes: [10000],
			provenance: { source: "usual marking at 120/240 V", known: "recalled" },
		},
		{
			what: "North American breaker without marking",
			amperes: [5000],
			provenance: { source: "NFPA 70 240.83(C)", known: "recalled" },
		},
	],
);

/** The instantaneous band of a breaker type. */
export function tripBand(type: TripBand["type"]): Sourced<TripBand> {
	return certain(
		tripBands.rows.find((row) => row.type === type),
		`the band of type ${type}`,
	);
}

/** The points that hold for a breaker of `rating` amperes, lowest multiple first. */
export function tripPointsFor(standard: TripPoint["standard"], rating: number): readonly Sourced<TripPoint>[] {
	return tripPoints.rows.filter((row) => row.standard === standard && rating > row.above && rating <= row.upTo);
}
