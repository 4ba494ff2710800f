// The wrong device in the right place: a plain one where ground-fault protection belongs, one pole where two must open.
import { groupBy } from "../../base/group.ts";
import type { Circuit } from "../../circuit/circuit.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { changeLinks, changePart, closed } from "../rewire.ts";
import { placesOfPart } from "../wire-ends.ts";

export const plainDevice: Operator = {
	name: "a plain device instead of a ground-fault one",
	*find(circuit): Iterable<Mistake> {
		for (const device of circuit.groundFaults) {
			const part = circuit.partByName.get(device.part);
			if (part === undefined) continue;
			const isBreaker = circuit.protections.some(({ part: name }) => name === part.name);
			const own = new Set(circuit.links.flatMap((link) => (link.part === part.name && !isBreaker ? [link.index] : [])));
			yield {
				at: part.name,
				wrong: () => ({
					...changePart(
						changeLinks(circuit, own, (link) => ({ ...link, ...closed })),
						part,
						(old) => ({
							...old,
							face: { ...old.face, traits: old.face.traits.filter((trait) => trait !== "ground-fault") },
						}),
					),
					groundFaults: circuit.groundFaults.filter((other) => other !== device),
				}),
				places: [...placesOfPart(circuit, part), ...behind(circuit, device.load.hot)],
			};
		}
	},
};

export const onePole: Operator = {
	name: "one pole opened where two must be",
	*find(circuit): Iterable<Mistake> {
		const contacts = circuit.links.filter(({ contact, modes }) => contact !== undefined && modes === undefined);
		for (const [group, links] of groupBy(contacts, ({ contact }) => contact?.group ?? "")) {
			const [first, ...others] = links;
			const part = circuit.partByName.get(first?.part ?? "");
			const isTwoPole =
				first?.contact?.positions === 2 &&
				others.length > 0 &&
				!circuit.groundFaults.some(({ part: name }) => name === part?.name);
			if (part === undefined || !isTwoPole) continue;
			const parts = [...new Set(links.flatMap((link) => circuit.partByName.get(link.part) ?? []))];
			yield {
				at: parts.map(({ name }) => name).join(" and "),
				wrong: () =>
					changeLinks(circuit, new Set(others.map(({ index }) => index)), (link) =>
						link.protection === undefined
							? { ...link, ...closed }
							: { ...link, contact: { positions: 2, closed: [1], group: `${group}, pole ${link.index}` } },
					),
				places: parts.flatMap((each) => placesOfPart(circuit, each)),
			};
		}
	},
};

/** The parts that hang on a point further on, as far as one conductor leads. */
function behind(circuit: Circuit, point: number): readonly string[] {
	return circuit.conductors.flatMap(({ ends }) =>
		ends.some((end) => end.point === point) ? ends.map(({ enclosure }) => enclosure.name) : [],
	);
}
