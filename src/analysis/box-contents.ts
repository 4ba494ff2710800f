// What is in each device box and the room it takes, by the published volume of each thing. Panels and cases are not boxes.
import { certain } from "../base/certain.ts";
import { compareGauges, formatGauge, type Gauge } from "../base/gauge.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Circuit, Conductor, Enclosure, Part } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { boxAllowance, conductorVolume } from "../handbook/box-fill.ts";

/** A box with what it holds. Volumes are in cubic inches. */
export interface BoxFill {
	readonly enclosure: Enclosure;
	/** Set where a device of it is still to come. */
	readonly isComing: boolean;
	/** The devices in it that are held by a yoke, by name. */
	readonly parts: readonly string[];
	/** What everything takes; undefined where a conductor is thicker than the table goes. */
	readonly needed: number | undefined;
	/** The same with clamps inside, where it was not said where they are and the box is of metal; else `needed`, or 0. */
	readonly ifClamped: number;
	/** How it adds up, as a sentence without its stop. */
	readonly sum: string;
}

/** Every box that a conductor of alternating current comes into from outside, in the order of the circuit. */
export function fillBoxes(circuit: Circuit): readonly BoxFill[] {
	const contents = new Map<Enclosure, Contents>();
	for (const conductor of circuit.conductors) {
		if (conductor.sort !== "core") continue;
		const [one, other] = conductor.ends;
		// What begins and ends in one box is wholly inside.
		if (one.enclosure === other.enclosure) continue;
		for (const { enclosure } of conductor.ends) if (enclosure.sort === "box") keep(contents, enclosure, conductor);
	}
	if (contents.size === 0) return [];
	for (const part of circuit.parts) if (part.enclosure.sort === "box") contents.get(part.enclosure)?.parts.push(part);
	const largest = largestOn(circuit);
	return [...contents].flatMap(([enclosure, held]) => (held.isAlternating ? [fillOf(enclosure, held, largest)] : []));
}

interface Contents {
	readonly conductors: Conductor[];
	readonly grounds: Conductor[];
	readonly parts: Part[];
	isAlternating: boolean;
}

function keep(contents: Map<Enclosure, Contents>, enclosure: Enclosure, conductor: Conductor): void {
	let held = contents.get(enclosure);
	if (held === undefined) {
		held = { conductors: [], grounds: [], parts: [], isAlternating: false };
		contents.set(enclosure, held);
	}
	if (conductor.role === "ground") held.grounds.push(conductor);
	else {
		held.conductors.push(conductor);
		if (systemOfRole(conductor.role) === "ac") held.isAlternating = true;
	}
}

/** The thickest conductor on each part. */
function largestOn({ conductors, points }: Circuit): ReadonlyMap<string, Gauge> {
	const largest = new Map<string, Gauge>();
	for (const { ends, gauge } of conductors)
		for (const { point } of ends) {
			const found = point === undefined ? undefined : points[point];
			if (found?.kind !== "terminal") continue;
			const known = largest.get(found.part);
			if (known === undefined || compareGauges(known, gauge) < 0) largest.set(found.part, gauge);
		}
	return largest;
}

function fillOf(enclosure: Enclosure, held: Contents, largest: ReadonlyMap<string, Gauge>): BoxFill {
	const { conductors, grounds, parts } = held;
	const thickest = thickestOf([...conductors, ...grounds].map(({ gauge }) => gauge));
	const inside = conductorVolume(thickest)?.cubicInches;
	const devices = parts.filter(isYoke);
	const items = [
		...sizesOf(conductors),
		...(grounds.length === 0 ? [] : [groundsItem(grounds)]),
		...(enclosure.fittings?.clamps === "inside"
			? [{ what: "clamps", volume: inside && inside * boxAllowance("internal clamps").allowances }]
			: []),
		...devices.map((part) => ({ what: part.name, volume: roomOf(part, largest.get(part.name) ?? thickest) })),
	];
	const isKnown = items.every(({ volume }) => volume !== undefined);
	const needed = isKnown ? items.reduce((total, { volume }) => total + (volume ?? 0), 0) : undefined;
	const isOpen = enclosure.metal && enclosure.fittings?.clamps === undefined;
	return {
		enclosure,
		isComing: parts.some(({ coming }) => coming),
		parts: devices.map(({ name }) => name),
		needed,
		ifClamped: (needed ?? 0) + (isOpen ? (inside ?? 0) : 0),
		sum: items.map(({ what, volume }) => `${what} ${formatNumber(volume ?? 0, 2)}`).join(" + "),
	};
}

/** Conductors that end or are spliced, those of one size together: `4 of 12 AWG`. */
function sizesOf(conductors: readonly Conductor[]): { what: string; volume: number | undefined }[] {
	const counts = new Map<string, { gauge: Gauge; count: number }>();
	for (const { gauge } of conductors) {
		const known = counts.get(formatGauge(gauge));
		if (known === undefined) counts.set(formatGauge(gauge), { gauge, count: 1 });
		else known.count += 1;
	}
	const each = boxAllowance("conductor that ends or is spliced").allowances;
	return [...counts].map(([size, { gauge, count }]) => {
		const volume = conductorVolume(gauge)?.cubicInches;
		return { what: `${count} of ${size}`, volume: volume && volume * each * count };
	});
}

function groundsItem(grounds: readonly Conductor[]): { what: string; volume: number | undefined } {
	const volume = conductorVolume(thickestOf(grounds.map(({ gauge }) => gauge)))?.cubicInches;
	const allowances =
		boxAllowance("equipment grounds, up to four").allowances +
		Math.max(0, grounds.length - 4) * boxAllowance("each equipment ground over four").allowances;
	return { what: grounds.length === 1 ? "the ground" : "grounds", volume: volume && volume * allowances };
}

function thickestOf(gauges: readonly Gauge[]): Gauge {
	const first = certain(gauges[0], "a conductor in a box");
	return gauges.reduce((thick, gauge) => (compareGauges(thick, gauge) < 0 ? gauge : thick), first);
}

/** What is screwed into a box by its yoke; what stands on a box has its wires under its own canopy. */
function isYoke({ face }: Part): boolean {
	return (
		face.room !== undefined ||
		face.traits.some((trait) => trait === "receptacle" || trait === "switch" || trait === "dimmer")
	);
}

/** What a device takes: what was said of it, else two allowances of the thickest conductor on it. */
function roomOf({ face }: Part, gauge: Gauge): number | undefined {
	if (face.room !== undefined) return face.room.value / 16.387064;
	const volume = conductorVolume(gauge)?.cubicInches;
	return volume && volume * boxAllowance("device yoke").allowances;
}
