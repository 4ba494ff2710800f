// Switches that do not switch: joined past, or thrown without effect in some settings of the others they work with.
import type { Circuit, Link } from "../circuit/circuit.ts";
import { findChoices, reachCertain, type Trial, tryClusters } from "./choices.ts";
import { joinWhere } from "./joined-sets.ts";
import type { Landings } from "./landings.ts";
import type { Edge, Network, Reach } from "./network.ts";
import { isHot, notABond, type PoleMap } from "./poles.ts";
import { findSwitches, type Switch } from "./switching.ts";

/** A contact both of whose terminals are joined whatever it does. */
export interface Bypass {
	readonly device: Switch;
	readonly contact: Link;
}

/** Every bypassed contact of a switch, dimmer or disconnect. */
export function findBypasses(network: Network): readonly Bypass[] {
	const sets = joinWhere(network, (edge) => leadsPast(network, edge));
	return findSwitches(network.circuit).flatMap((device) =>
		device.contacts
			.filter(({ between: [one, other] }) => sets.find(one) === sets.find(other))
			.map((contact) => ({ device, contact })),
	);
}

/** What joins past a switch: wires, and for direct current fuses too, for two of them on one bus join as surely as a wire does. */
export function leadsPast({ system }: Network, edge: Edge): boolean {
	if (edge.by.kind === "conductor") return true;
	const { contact, protection } = edge.by.link;
	return notABond(edge) && (contact === undefined || (system === "dc" && protection !== undefined));
}

/** A switch that is fed on one side and has nothing on the other, or nothing on any. */
export interface DeadEnd {
	readonly part: string;
	/** The empty terminal. */
	readonly point: number;
	/** The other one, where nothing is on that either. */
	readonly alsoEmpty: number | undefined;
	/** How many ways it has: one of a plain switch, several of one that works with others. */
	readonly throws: number;
}

/** Every such switch of a mode. */
export function findDeadEnds({ circuit }: Network, poles: PoleMap): readonly DeadEnd[] {
	const switches = findSwitches(circuit);
	if (switches.length === 0) return [];
	const landed = new Set<number>();
	for (const { ends } of circuit.conductors) for (const { point } of ends) if (point !== undefined) landed.add(point);
	// Studs bolted together need no conductor.
	for (const { between } of circuit.links) {
		const [one, other] = between.map((point) => partOf(circuit, point));
		if (one !== other) for (const point of between) landed.add(point);
	}
	return switches.flatMap(({ part, contacts: [contact, ...others] }): DeadEnd[] => {
		if (contact === undefined) return [];
		if (others.length > 0) return findDeadThrows(circuit, part, [contact, ...others], landed);
		const [one, other] = contact.between;
		if (!landed.has(one) && !landed.has(other)) {
			// On a run it was to switch something, and its wires go past it.
			const found = circuit.partByName.get(part);
			return found?.run === undefined || found.coming ? [] : [{ part, point: one, alsoEmpty: other, throws: 1 }];
		}
		const empty = landed.has(one) ? (landed.has(other) ? undefined : other) : landed.has(other) ? one : undefined;
		return empty !== undefined && poles.sortsAt(empty).has("hot")
			? [{ part, point: empty, alsoEmpty: undefined, throws: 1 }]
			: [];
	});
}

/** Of a switch with several throws the empty terminals, where no throw has a wire on both its sides. */
function findDeadThrows(
	{ partByName, points }: Circuit,
	part: string,
	contacts: readonly Link[],
	landed: ReadonlySet<number>,
): DeadEnd[] {
	const found = partByName.get(part);
	if (found?.run === undefined || found.coming) return [];
	if (contacts.some(({ between }) => between.every((point) => landed.has(point)))) return [];
	const isAlternating = contacts.every(({ between }) => points[between[0]]?.role !== "positive");
	const [point, alsoEmpty] = new Set(
		contacts.flatMap(({ between }) => between.filter((terminal) => !landed.has(terminal))),
	);
	return point === undefined || !isAlternating ? [] : [{ part, point, alsoEmpty, throws: contacts.length }];
}

function partOf({ points }: Circuit, index: number): string | undefined {
	const point = points[index];
	return point?.kind === "terminal" ? point.part : undefined;
}

/** A load that several switches govern, not all of them in every setting. */
export interface IdleThrow {
	/** Its hot terminal. */
	readonly point: number;
	/** The parts that govern it, in the order of the circuit. */
	readonly switches: readonly string[];
	/** One of them, and the settings of the others in which throwing it changes nothing. */
	readonly idle: string;
	readonly settings: number;
	/** Settings of the others there are. */
	readonly all: number;
}

/** A load that stays on whatever three-way and four-way switches do. */
export interface StuckLoad {
	/** Its hot terminal. */
	readonly point: number;
	/** The parts whose contacts its hot passes. */
	readonly switches: readonly string[];
	readonly way: Reach;
}

/** What trying out switches that work together shows. */
export interface Throws {
	/** Every load that a three-way or four-way switch governs in some settings of its partners only. */
	readonly idle: readonly IdleThrow[];
	/** Every load that no position of the switches before it turns off. */
	readonly stuck: readonly StuckLoad[];
	/** Parts of switches that work together in more settings than are tried out; their ways count as closed all at once. */
	readonly untried: readonly (readonly string[])[];
}

/** Tries out all switches that work together. */
export function findIdleThrows(network: Network, landings: Landings, poles: PoleMap): Throws {
	const { circuit } = network;
	const partOf = new Map(
		circuit.links.flatMap(({ contact, part }) => (contact === undefined ? [] : [[contact.group, part]])),
	);
	const trials = poles.poles
		.filter((pole) => isHot(pole.role))
		.flatMap((pole) => tryClusters(network, pole.points, notABond));
	const hots = trials.length === 0 ? [] : hotTerminals(circuit, landings);
	const isTried = ({ settings }: Trial): boolean => settings.length > 1;
	return {
		idle: trials.filter(isTried).flatMap(({ groups, settings }) => {
			const fed = new Map(settings.map(({ positions, reached }) => [positions.join(), reached]));
			return hots
				.filter((point) => settings.some(({ reached }) => reached.has(point)))
				.flatMap((point): IdleThrow[] => {
					const throws = groups.map((group, index) => {
						const idle = settings.filter(({ positions, reached }) => {
							const thrown = positions.with(index, positions[index] === 0 ? 1 : 0);
							return reached.has(point) === fed.get(thrown.join())?.has(point);
						});
						return { part: partOf.get(group) ?? "", settings: idle.length / 2 };
					});
					const all = settings.length / 2;
					const governing = throws.filter((one) => one.settings < all);
					const worst = governing.toSorted((one, other) => other.settings - one.settings)[0];
					if (worst === undefined || worst.settings === 0) return [];
					return [
						{ point, switches: governing.map(({ part }) => part), idle: worst.part, settings: worst.settings, all },
					];
				});
		}),
		stuck: findStuckLoads(network, hots, poles),
		untried: trials
			.filter((trial) => !isTried(trial))
			.map(({ groups }) => [...new Set(groups.map((group) => partOf.get(group) ?? ""))]),
	};
}

/** Loads whose hot passes a choice of contacts of which one is always closed. */
function findStuckLoads(network: Network, hots: readonly number[], poles: PoleMap): StuckLoad[] {
	const choices = findChoices(network, notABond);
	if (choices.size === 0) return [];
	const isChoice = (edge: Edge): boolean => edge.by.kind === "link" && choices.has(edge.by.link.index);
	return poles.poles.flatMap(({ role, points }) => {
		if (!isHot(role)) return [];
		const way = reachCertain(network, points, notABond, (edge) => !isChoice(edge));
		return hots.flatMap((point): StuckLoad[] => {
			const passed = way.edgesTo(point).filter(isChoice);
			const switches = new Set(passed.flatMap(({ by }) => (by.kind === "link" ? [by.link.part] : [])));
			return switches.size === 0 ? [] : [{ point, switches: [...switches], way }];
		});
	});
}

function hotTerminals({ loads }: Circuit, landings: Landings): readonly number[] {
	return [...new Set(loads.flatMap(({ between }) => between.filter((point) => landings.sortAt(point) === "hot")))];
}
