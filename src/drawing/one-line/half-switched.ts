// Which split receptacles have one half behind a switch and the other always on: read off the circuit, as the face cannot know.
import { JoinedSets } from "../../analysis/joined-sets.ts";
import type { Circuit, Part } from "../../circuit/circuit.ts";

/** The names of the split receptacles of which a switch opens one half only. */
export function findHalfSwitched(circuit: Circuit): ReadonlySet<string> {
	const split = circuit.parts.filter((part) => part.face.oneLine === "receptacle-split");
	if (split.length === 0) return new Set();
	const switches = new Set(circuit.parts.filter(isSwitch).map(({ name }) => name));
	const sets = new JoinedSets(circuit.points.length);
	const beyond: number[] = [];
	for (const { ends } of circuit.conductors) {
		const [one, other] = [ends[0].point, ends[1].point];
		if (one !== undefined && other !== undefined) sets.join(one, other);
	}
	for (const { part, nature, between } of circuit.links) {
		if (nature === "bond") continue;
		if (nature === "contact" && switches.has(part)) beyond.push(...between);
		else sets.join(...between);
	}
	const alwaysOn = new Set(circuit.sources.flatMap(({ hot }) => hot).map((point) => sets.find(point)));
	const switched = new Set(beyond.map((point) => sets.find(point)));
	const isHalf = (part: Part): boolean => {
		const hots = part.points
			.filter((point) => hotRoles.has(circuit.points[point]?.role ?? ""))
			.map((point) => sets.find(point));
		return hots.some((net) => alwaysOn.has(net)) && hots.some((net) => switched.has(net) && !alwaysOn.has(net));
	};
	return new Set(split.filter(isHalf).map(({ name }) => name));
}

function isSwitch({ face: { traits } }: Part): boolean {
	return traits.includes("switch") || traits.includes("dimmer");
}

const hotRoles: ReadonlySet<string> = new Set(["hot", "hot2", "hot3"]);
