// A protective device of another size than was planned, or a device that may carry less.
import type { Circuit, Protection } from "../../circuit/circuit.ts";
import { fuseFamilies } from "../../handbook/dc-fuses.ts";
import { standardRatings } from "../../handbook/standard-ratings.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { changePart } from "../rewire.ts";
import { placesOfPart } from "../wire-ends.ts";

export const tooBig: Operator = {
	name: "a protective device too big",
	find: (circuit) => resize(circuit, (ratings, rating) => ratings.filter((other) => other > rating).slice(0, 3)),
};

export const tooSmall: Operator = {
	name: "a protective device too small",
	find: (circuit) => resize(circuit, (ratings, rating) => ratings.filter((other) => other < rating).slice(-2)),
};

export const lowerRating: Operator = {
	name: "a device that may carry less",
	*find(circuit): Iterable<Mistake> {
		const protecting = new Set(circuit.protections.map(({ part }) => part));
		for (const part of circuit.parts) {
			const { rating } = part.face;
			// What a panel may carry is its main's to say.
			if (rating === undefined || protecting.has(part.name) || part.face.traits.includes("panel")) continue;
			for (const less of deviceRatings.filter((other) => other < rating).slice(-2))
				yield {
					at: `${part.name}, ${less} A instead of ${rating} A`,
					wrong: () => changePart(circuit, part, (old) => ({ ...old, face: { ...old.face, rating: less } })),
					places: placesOfPart(circuit, part),
				};
		}
	},
};

/** Amperes that outlets, switches and disconnects are made for, of both regions (common practice). */
const deviceRatings = [5, 10, 15, 16, 20, 30, 32, 50, 60, 100, 150, 200, 300, 400, 600];

function* resize(
	circuit: Circuit,
	choose: (ratings: readonly number[], rating: number) => readonly number[],
): Iterable<Mistake> {
	for (const device of circuit.protections) {
		const part = circuit.partByName.get(device.part);
		// The device in a far supply is not the builder's.
		if (device.rating === undefined || device.sort === "supply" || part === undefined) continue;
		const { rating } = device;
		for (const other of choose(ratingsFor(circuit, device), rating))
			yield {
				at: `${part.name}, ${other} A instead of ${rating} A`,
				wrong: () => withRating(circuit, device, other),
				places: [...placesOfPart(circuit, part), ...runsOf(circuit, part.name)],
			};
	}
}

/** The circuit with a protective device of another rating; what its face says of that goes with it. */
function withRating(circuit: Circuit, device: Protection, rating: number): Circuit {
	return {
		...circuit,
		protections: circuit.protections.map((other) => (other === device ? { ...device, rating } : other)),
	};
}

/** Ratings that a drawer holds: standard ones for mains, those that fuses of any family are made in for direct current. */
function ratingsFor(circuit: Circuit, { sort, links }: Protection): readonly number[] {
	const { region } = circuit.plan.settings;
	const isDirect = links.some((index) =>
		circuit.links[index]?.between.some((point) => ["positive", "negative"].includes(circuit.points[point]?.role ?? "")),
	);
	const ratings = isDirect
		? fuseFamilies.rows.flatMap((family) => family.ratings)
		: standardRatings.rows
				.filter((row) => row.region === region && (sort === "fuse" || row.device !== "fuse"))
				.map((row) => row.ampere);
	return [...new Set(ratings)].toSorted((one, other) => one - other);
}

/** The cables and boxes of the runs that a device is the protection of. */
function runsOf(circuit: Circuit, part: string): readonly string[] {
	const runs = new Set(circuit.plan.runs.flatMap((run) => (run.protection === part ? [run.name] : [])));
	return circuit.cables.filter(({ run }) => runs.has(run)).flatMap(({ tag, from, to }) => [tag, from.name, to.name]);
}
