// How each load and outlet is served: which poles it is between, at what volts, and which parts stand on every way to it.
import { analyse, type ModeState } from "../analysis/analysis.ts";
import { type Edge, type Network, reachFrom } from "../analysis/network.ts";
import { isHot, notABond, type Pole, type PoleMap, sortOfRole } from "../analysis/poles.ts";
import { voltageAcross } from "../analysis/voltage.ts";
import type { Circuit, Load, Protection } from "../circuit/circuit.ts";

/** What is known of the service of a circuit. */
export interface Services {
	/** For each load and mode, in the circuit's order: poles, volts, and what stands before it but for parts of some traits. */
	tell(leaving: "nothing" | "switches" | "protection"): string;
	/** For each load and mode the volts across it. */
	readonly volts: string;
	/** For each load the protective devices that some pole does not get past on its way to it, in any mode. */
	readonly devicesOfLoads: readonly ReadonlySet<string>[];
	/** The devices of which nothing gets past on its way from a hot pole to a point; none for a point that no hot reaches. */
	devicesBefore(point: number): readonly Protection[];
	/**
	 * The most amperes that protective devices, and sources that can give no more, let through what is between two points;
	 * undefined where nothing limits them, 0 where no hot comes there. `barred` is what is between them.
	 */
	mostThrough(between: readonly (number | undefined)[], barred: (edge: Edge) => boolean): number | undefined;
	/** The loads and outlets that a hot reaches only through a part. */
	loadsBehind(part: string): readonly Load[];
}

/** Works out how everything is served. */
export function servicesOf(circuit: Circuit): Services {
	const known = services.get(circuit) ?? new Server(circuit);
	services.set(circuit, known);
	return known;
}

const services = new WeakMap<Circuit, Server>();

/** A pole in its network, and by part the points that it reaches without that part. */
interface Supply {
	readonly network: Network;
	readonly pole: Pole;
	has(point: number): boolean;
	readonly without: ReadonlyMap<string, (point: number) => boolean>;
}

class Server implements Services {
	readonly #circuit: Circuit;
	readonly #states: readonly ModeState[];
	/** By mode. */
	readonly #supplies: readonly (readonly Supply[])[];

	constructor(circuit: Circuit) {
		this.#circuit = circuit;
		this.#states = analyse(circuit).states;
		const inLine = partsInLine(circuit);
		this.#supplies = this.#states.map((state) =>
			[...networksOf(state)].flatMap(([network, poles]) => supplyFrom(network, poles, inLine)),
		);
	}

	get volts(): string {
		return JSON.stringify(this.#states.map((state) => this.#circuit.loads.map((load) => tellVolts(state, load))));
	}

	tell(leaving: "nothing" | "switches" | "protection"): string {
		const { parts, protections, loads } = this.#circuit;
		const left = new Set(
			leaving === "protection"
				? protections.map(({ part }) => part)
				: parts.flatMap(({ name, face: { traits } }) =>
						leaving === "switches" && (traits.includes("switch") || traits.includes("dimmer")) ? [name] : [],
					),
		);
		const served = this.#supplies.map((supplies) =>
			loads.map(({ between }) => between.map((at) => tellAt(supplies, at, left))),
		);
		return `${this.volts}${JSON.stringify(served)}`;
	}

	get devicesOfLoads(): readonly ReadonlySet<string>[] {
		const { loads, protections } = this.#circuit;
		const supplies = this.#supplies.flat();
		return loads.map(({ between }) => {
			const ahead = protections.filter((device) =>
				supplies.some((supply) =>
					between.some((point) => supply.has(point) && supply.without.get(device.part)?.(point) === false),
				),
			);
			return new Set(ahead.map(({ part }) => part));
		});
	}

	devicesBefore(point: number): readonly Protection[] {
		const hots = this.#supplies.flat().filter(({ pole, has }) => isHot(pole.role) && has(point));
		if (hots.length === 0) return [];
		return this.#circuit.protections.filter((device) => hots.every((supply) => standsBefore(device, supply, point)));
	}

	mostThrough(between: readonly (number | undefined)[], barred: (edge: Edge) => boolean): number | undefined {
		let most = 0;
		for (const supplies of this.#supplies) {
			const hots = supplies.filter(({ pole }) => isHot(pole.role));
			const coming = between.map((): Supply[] => []);
			for (const supply of hots) {
				const reach = reachFrom(supply.network, supply.pole.points, (edge) => notABond(edge) && !barred(edge));
				for (const [side, point] of between.entries())
					if (point !== undefined && reach.has(point)) coming[side]?.push(supply);
			}
			for (const [side, here] of coming.entries()) most = Math.max(most, this.#amperesFrom(here, between[side] ?? 0));
		}
		return Number.isFinite(most) ? most : undefined;
	}

	loadsBehind(part: string): readonly Load[] {
		return this.#circuit.loads.filter(({ between }) =>
			this.#supplies.some((supplies) =>
				supplies.some(
					({ pole, has, without }) =>
						isHot(pole.role) && between.some((point) => has(point) && without.get(part)?.(point) === false),
				),
			),
		);
	}

	/** What comes to a point from several poles: the sum of what each gives, but no more than a device before all of them lets through. */
	#amperesFrom(supplies: readonly Supply[], point: number): number {
		if (supplies.length === 0) return 0;
		const { protections, sources } = this.#circuit;
		const rated = protections.flatMap((device) =>
			device.rating === undefined ? [] : [{ device, rating: device.rating }],
		);
		const smallest = (before: (device: Protection) => boolean): number =>
			rated.reduce(
				(least, { device, rating }) => (rating < least && before(device) ? rating : least),
				Number.POSITIVE_INFINITY,
			);
		const sum = supplies.reduce((total, supply) => {
			const source = sources.find(({ name }) => name === supply.pole.source);
			const own = source?.sort === "battery" ? undefined : source?.limit;
			return (
				total +
				Math.min(
					own ?? Number.POSITIVE_INFINITY,
					smallest((device) => standsBefore(device, supply, point)),
				)
			);
		}, 0);
		return Math.min(
			sum,
			smallest((device) => supplies.every((supply) => standsBefore(device, supply, point))),
		);
	}
}

function standsBefore({ part, source }: Protection, { pole, without }: Supply, point: number): boolean {
	return source === pole.source || without.get(part)?.(point) === false;
}

/** Parts through which a way leads: what has contacts, and shunts. */
function partsInLine({ links, partByName }: Circuit): readonly string[] {
	return [
		...new Set(
			links.flatMap(({ part, nature }) =>
				nature === "contact" || (nature === "solid" && partByName.get(part)?.kind === "shunt") ? [part] : [],
			),
		),
	];
}

function* networksOf({ network, poles, direct }: ModeState): Iterable<readonly [Network, PoleMap]> {
	yield [network, poles];
	if (direct !== undefined) yield [direct.network, direct.poles];
}

function supplyFrom(network: Network, { poles }: PoleMap, inLine: readonly string[]): readonly Supply[] {
	return poles.map((pole) => {
		const reach = reachFrom(network, pole.points, notABond);
		return {
			network,
			pole,
			has: reach.has,
			without: new Map(
				inLine.map((part) => [
					part,
					reachFrom(
						network,
						pole.points,
						(edge) => notABond(edge) && (edge.by.kind === "conductor" || edge.by.link.part !== part),
					).has,
				]),
			),
		};
	});
}

/** The poles that reach a point, each with the parts that nothing gets past; a leg is as good as the other. */
function tellAt(supplies: readonly Supply[], point: number, leave: ReadonlySet<string>): readonly string[] {
	return supplies
		.flatMap(({ pole, has, without }) => {
			if (!has(point)) return [];
			const before = [...without].flatMap(([part, reaches]) => (leave.has(part) || reaches(point) ? [] : [part]));
			return [`${pole.source} ${sortOfRole(pole.role)} ${before.join(" ")}`];
		})
		.toSorted();
}

function tellVolts(state: ModeState, { between: [one, other] }: Load): number | undefined {
	return voltageAcross(state, one, other)?.volts ?? state.direct?.potentials.between(one, other);
}
