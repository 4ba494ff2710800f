// How each load and outlet is served: which poles it is between, at what volts, and which parts stand on every way to it.
import { analyse, type ModeState } from "../analysis/analysis.ts";
import { type Network, reachFrom } from "../analysis/network.ts";
import { notABond, type Pole, type PoleMap, sortOfRole } from "../analysis/poles.ts";
import { voltageAcross } from "../analysis/voltage.ts";
import type { Circuit, Load, Protection } from "../circuit/circuit.ts";

/** What is known of the service of a circuit. */
export interface Services {
	/** For each load and mode, in the circuit's order: poles, volts, and what stands before it. */
	readonly told: string;
	/** The same without switches and dimmers. */
	readonly toldUnswitched: string;
	/** For each load and mode the volts across it. */
	readonly volts: string;
	/** The protective devices that nothing gets past on its way to a point, from every pole of a sort, in the mode where that is fewest. */
	devicesBefore(point: number): readonly Protection[];
}

/** Works out how everything is served. */
export function servicesOf(circuit: Circuit): Services {
	const known = services.get(circuit) ?? new Server(circuit);
	services.set(circuit, known);
	return known;
}

const services = new WeakMap<Circuit, Server>();

/** A pole of a network, and by part the points that it reaches without that part. */
interface Supply {
	readonly pole: Pole;
	has(point: number): boolean;
	readonly without: ReadonlyMap<string, (point: number) => boolean>;
}

class Server implements Services {
	readonly told: string;
	readonly toldUnswitched: string;
	readonly volts: string;
	readonly #circuit: Circuit;
	readonly #supplies: readonly (readonly Supply[])[];

	constructor(circuit: Circuit) {
		this.#circuit = circuit;
		const { states } = analyse(circuit);
		const inLine = partsInLine(circuit);
		this.#supplies = states.map((state) =>
			[...networksOf(state)].flatMap(([network, poles]) => supplyFrom(network, poles, inLine)),
		);
		const switches = new Set(
			circuit.parts.flatMap(({ name, face: { traits } }) =>
				traits.includes("switch") || traits.includes("dimmer") ? [name] : [],
			),
		);
		const volts = states.map((state) => circuit.loads.map((load) => tellVolts(state, load)));
		this.volts = JSON.stringify(volts);
		const tell = (leave: ReadonlySet<string>): string =>
			JSON.stringify(
				this.#supplies.map((supplies) =>
					circuit.loads.map(({ between }) => between.map((at) => tellAt(supplies, at, leave))),
				),
			);
		this.told = `${this.volts}${tell(new Set())}`;
		this.toldUnswitched = `${this.volts}${tell(switches)}`;
	}

	devicesBefore(point: number): readonly Protection[] {
		return this.#circuit.protections.filter(({ part, source }) =>
			this.#supplies.every((supplies) =>
				supplies.every(
					({ pole, has, without }) =>
						sortOfRole(pole.role) !== "hot" ||
						!has(point) ||
						source === pole.source ||
						without.get(part)?.(point) === false,
				),
			),
		);
	}
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
