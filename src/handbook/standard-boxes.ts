// Standard metal boxes: their volume, and how many conductors of one size the published table allows.
import type { Provenance, Sourced } from "./provenance.ts";
import { type Table, table } from "./table.ts";

/** Sizes of the published counts, AWG. */
export const countedSizes = ["18", "16", "14", "12", "10", "8", "6"] as const;

/** A standard box. Names are trade sizes in inches; multi-gang sorts are per gang. */
export interface StandardBox {
	readonly name: string;
	readonly sort: "round" | "square" | "device" | "masonry" | "cast";
	readonly cubicInches: number;
	/** Most conductors by size as printed, for each of `countedSizes`; undefined where no print was read. */
	readonly counts: readonly number[] | undefined;
}

const provenance: Provenance = {
	source: "NFPA 70 Table 314.16(A)",
	known: "read",
	note: "volumes in two reprints; counts hold without device, clamp, fitting or ground",
};
const odd: Provenance = {
	...provenance,
	note: "the printed five 8 AWG do not follow from 12.5 / 3.00; counts hold without device, clamp, fitting or ground",
};
type Row = readonly [string, StandardBox["sort"], number, (readonly number[])?, Provenance?];
const rows: readonly Row[] = [
	["4 x 1-1/4 round or octagonal", "round", 12.5, [8, 7, 6, 5, 5, 5, 2], odd],
	["4 x 1-1/2 round or octagonal", "round", 15.5, [10, 8, 7, 6, 6, 5, 3]],
	["4 x 2-1/8 round or octagonal", "round", 21.5, [14, 12, 10, 9, 8, 7, 4]],
	["4 x 1-1/4 square", "square", 18, [12, 10, 9, 8, 7, 6, 3]],
	["4 x 1-1/2 square", "square", 21, [14, 12, 10, 9, 8, 7, 4]],
	["4 x 2-1/8 square", "square", 30.3, [20, 17, 15, 13, 12, 10, 6]],
	["4-11/16 x 1-1/4 square", "square", 25.5, [17, 14, 12, 11, 10, 8, 5]],
	["4-11/16 x 1-1/2 square", "square", 29.5, [19, 16, 14, 13, 11, 9, 5]],
	["4-11/16 x 2-1/8 square", "square", 42, [28, 24, 21, 18, 16, 14, 8]],
	["3 x 2 x 1-1/2 device", "device", 7.5, [5, 4, 3, 3, 3, 2, 1]],
	["3 x 2 x 2 device", "device", 10, [6, 5, 5, 4, 4, 3, 2]],
	["3 x 2 x 2-1/4 device", "device", 10.5, [7, 6, 5, 4, 4, 3, 2]],
	["3 x 2 x 2-1/2 device", "device", 12.5],
	["3 x 2 x 2-3/4 device", "device", 14],
	["3 x 2 x 3-1/2 device", "device", 18],
	["4 x 2-1/8 x 1-1/2 device", "device", 10.3],
	["4 x 2-1/8 x 1-7/8 device", "device", 13],
	["4 x 2-1/8 x 2-1/8 device", "device", 14.5],
	["3-3/4 x 2 x 2-1/2 masonry, per gang", "masonry", 14],
	["3-3/4 x 2 x 3-1/2 masonry, per gang", "masonry", 21],
	["1-3/4 deep cast, single cover", "cast", 13.5],
	["2-3/8 deep cast, single cover", "cast", 18],
	["1-3/4 deep cast, multiple cover, per gang", "cast", 18],
	["2-3/8 deep cast, multiple cover, per gang", "cast", 24],
];

/** Standard boxes. A nonmetallic box is marked with its own volume; rings add theirs. */
export const standardBoxes: Table<StandardBox> = table<StandardBox>(
	"boxes",
	"Smallest volume of standard metal boxes, and conductors of one size in them",
	[
		["box", (row) => row.name],
		["volume, in3", (row) => row.cubicInches],
		...countedSizes.map((size, index) => [`${size} AWG`, (row: StandardBox) => row.counts?.[index]] as const),
	],
	rows.map(([name, sort, cubicInches, counts, own]) => ({
		name,
		sort,
		cubicInches,
		counts,
		provenance: own ?? provenance,
	})),
);

/** The smallest box of a sort that holds a volume in cubic inches; undefined when none does. */
export function smallestBox(cubicInches: number, sort: StandardBox["sort"]): Sourced<StandardBox> | undefined {
	return standardBoxes.rows
		.filter((row) => row.sort === sort && row.cubicInches >= cubicInches)
		.sort((one, other) => one.cubicInches - other.cubicInches)[0];
}
