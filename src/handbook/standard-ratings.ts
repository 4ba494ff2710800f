// Standard ampere ratings of fuses and breakers, North American and IEC.
import type { Provenance, Sourced } from "./provenance.ts";
import type { Region } from "./scope.ts";
import { type Table, table } from "./table.ts";

/** One standard rating of a protective device. */
export interface StandardRating {
	readonly region: Region;
	readonly ampere: number;
	/** Some small ratings are standard for fuses only. */
	readonly device: "breaker or fuse" | "fuse";
}

const inverseTime: Provenance = { source: "NFPA 70 240.6(A)", known: "read" };
const inverseTimeRecalled: Provenance = { ...inverseTime, known: "recalled" };
const breakerPreferred: Provenance = {
	source: "IEC 60898-1 preferred values of rated current",
	known: "read",
	note: "read in a summary of the identical Indian edition",
};
const breakerPreferredRecalled: Provenance = { source: breakerPreferred.source, known: "recalled" };

const rows: readonly (readonly [Region, StandardRating["device"], Provenance, readonly number[]])[] = [
	["us", "fuse", inverseTimeRecalled, [1, 3, 6, 10]],
	["us", "breaker or fuse", inverseTime, [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100]],
	["us", "breaker or fuse", inverseTime, [110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600]],
	["us", "fuse", inverseTimeRecalled, [601]],
	["us", "breaker or fuse", inverseTimeRecalled, [700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000]],
	["iec", "breaker or fuse", breakerPreferred, [6, 10]],
	["iec", "breaker or fuse", breakerPreferredRecalled, [13]],
	["iec", "breaker or fuse", breakerPreferred, [16, 20, 25, 32, 40, 50, 63]],
	["iec", "breaker or fuse", breakerPreferredRecalled, [80, 100, 125]],
];

/** Standard ratings. The 2023 edition of NFPA 70 adds a 10 A breaker (recalled); it is kept as a fuse rating here. */
export const standardRatings: Table<StandardRating> = table<StandardRating>(
	"standard-ratings",
	"Standard ampere ratings of fuses and circuit breakers",
	[
		["region", (row) => row.region],
		["rating, A", (row) => row.ampere],
		["device", (row) => row.device],
	],
	rows.flatMap(([region, device, provenance, ratings]) =>
		ratings.map((ampere) => ({ region, ampere, device, provenance })),
	),
);

/** The row of a standard rating in amperes, or undefined where the region has none such for that device. */
export function standardRating(
	ampere: number,
	region: Region,
	device: "breaker" | "fuse" = "breaker",
): Sourced<StandardRating> | undefined {
	return standardRatings.rows.find((row) => row.ampere === ampere && isMadeAs(row, region, device));
}

/** Whether a rating in amperes is a standard one. */
export function isStandardRating(ampere: number, region: Region, device: "breaker" | "fuse" = "breaker"): boolean {
	return standardRating(ampere, region, device) !== undefined;
}

/** The smallest standard rating that is not below `ampere`; undefined beyond the largest. */
export function nextStandardRating(
	ampere: number,
	region: Region,
	device: "breaker" | "fuse" = "breaker",
): Sourced<StandardRating> | undefined {
	return standardRatings.rows.find((row) => row.ampere >= ampere && isMadeAs(row, region, device));
}

function isMadeAs(row: StandardRating, region: Region, device: "breaker" | "fuse"): boolean {
	return row.region === region && (device === "fuse" || row.device !== "fuse");
}
