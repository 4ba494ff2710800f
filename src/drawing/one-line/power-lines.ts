// What a one-line diagram follows of a circuit: the cables that bring power, and straps between studs as cables without a core.
import { certain } from "../../base/certain.ts";
import type { Cable, Circuit, Conductor, End, Link } from "../../circuit/circuit.ts";

/** The circuit with each strap as a cable of its own, and without the cables that only bring current back or bond. */
export function powerLines(circuit: Circuit): Circuit {
	const isPower = (cable: Cable): boolean =>
		cable.runSort !== "bond" && cable.conductors.some((index) => !isReturn(circuit.conductors[index]));
	const straps = strapsOf(circuit).filter((link) => !isReturnStrap(circuit, link));
	const cables = circuit.cables.filter(isPower);
	const [model] = circuit.conductors;
	if (straps.length === 0 || model === undefined) return { ...circuit, cables };
	const cores = straps.map((link, index) => coreOf(circuit, link, model, circuit.conductors.length + index));
	return {
		...circuit,
		conductors: [...circuit.conductors, ...cores],
		cables: [...cables, ...cores.map((core, index) => strapCable(core, certain(straps[index], "a strap"), circuit))],
	};
}

/** Names of the boxes that only returning current or bonds lead to, and of every chassis: they stand on no line. */
export function returnBoxes(circuit: Circuit, lines: Circuit): ReadonlySet<string> {
	const met = (cables: readonly Cable[]): Set<string> =>
		new Set(cables.flatMap(({ from, to }) => [from.name, to.name]));
	const returned = met(circuit.cables.filter((cable) => cable.runSort !== "bond"));
	for (const link of strapsOf(circuit)) for (const point of link.between) returned.add(boxAt(circuit, point));
	const bonded = met(circuit.cables.filter((cable) => cable.runSort === "bond"));
	for (const { face, enclosure } of circuit.parts)
		if (face.oneLine === "bus" && bonded.has(enclosure.name)) returned.add(enclosure.name);
	for (const name of met(lines.cables)) returned.delete(name);
	for (const { face, enclosure } of circuit.parts) if (face.oneLine === "chassis-bond") returned.add(enclosure.name);
	for (const { part } of circuit.sources) returned.delete(circuit.partByName.get(part)?.enclosure.name ?? "");
	return returned;
}

/** Links between studs of different boxes. */
function strapsOf(circuit: Circuit): Link[] {
	return circuit.links.filter(({ between: [one, other] }) => boxAt(circuit, one) !== boxAt(circuit, other));
}

function isReturnStrap({ points }: Circuit, { between }: Link): boolean {
	return between.some((point) => points[point]?.role === "negative");
}

function isReturn(conductor: Conductor | undefined): boolean {
	return conductor?.role === "negative" || conductor?.role === "ground";
}

function boxAt({ points }: Circuit, index: number): string {
	return points[index]?.enclosure.name ?? "";
}

function coreOf({ points }: Circuit, link: Link, model: Conductor, index: number): Conductor {
	const endAt = (point: number): End => ({
		...model.ends[0],
		point,
		state: "landed",
		enclosure: certain(points[point], "a stud").enclosure,
		span: link.span,
	});
	const [from, to] = link.between;
	return {
		...model,
		index,
		name: `strap ${link.index}`,
		role: "positive",
		length: undefined,
		ends: [endAt(from), endAt(to)],
	};
}

function strapCable({ index, ends: [from, to] }: Conductor, link: Link, { points }: Circuit): Cable {
	return {
		tag: `${points[link.between[0]]?.name ?? ""} on ${points[link.between[1]]?.name ?? ""}`,
		make: "bolted",
		run: "",
		runSort: "feed",
		system: "dc",
		from: from.enclosure,
		to: to.enclosure,
		lengthText: "",
		slack: undefined,
		conductors: [index],
		flexible: false,
		span: link.span,
	};
}
