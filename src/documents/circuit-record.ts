// The circuit as plain data for other programs: names instead of positions, everything that `show` tells.
import { formatGauge } from "../base/gauge.ts";
import type { Circuit, End, Point } from "../circuit/circuit.ts";
import type { Energised } from "./energised.ts";

/** The record that `show --as json` prints; `schema` counts up only when a field changes its meaning. */
export interface CircuitRecord {
	readonly schema: 1;
	readonly title: string;
	readonly region: string;
	readonly rules: string;
	readonly modes: readonly {
		readonly name: string;
		readonly live: readonly string[];
		readonly summary: string;
		/** Boxes and machines that a hot reaches. */
		readonly energised: readonly string[];
	}[];
	readonly enclosures: readonly {
		readonly name: string;
		readonly label: string;
		readonly sort: string;
		readonly metal: boolean;
		readonly place?: string;
	}[];
	readonly parts: readonly {
		readonly name: string;
		readonly kind: string;
		readonly text: string;
		readonly enclosure: string;
		readonly line: number;
	}[];
	readonly points: readonly {
		readonly name: string;
		readonly kind: string;
		readonly role: string;
		readonly enclosure: string;
		/** Of a splice: what joins, and how many ports it has. */
		readonly connector?: string;
		readonly ports?: number;
	}[];
	readonly cables: readonly {
		readonly tag: string;
		readonly make: string;
		readonly run: string;
		readonly from: string;
		readonly to: string;
		readonly length: string;
		readonly line: number;
	}[];
	readonly conductors: readonly {
		readonly name: string;
		readonly sort: string;
		readonly colour: string;
		readonly role: string;
		readonly size: string;
		readonly material: string;
		readonly stranded: boolean;
		/** Degrees Celsius that its insulation stands. */
		readonly insulation: number;
		/** Metres; left out where it is not known. */
		readonly length?: number;
		readonly cable?: string;
		readonly ends: readonly EndRecord[];
	}[];
	readonly links: readonly {
		readonly part: string;
		readonly between: readonly string[];
		readonly nature: string;
		readonly modes?: readonly string[];
	}[];
}
interface EndRecord {
	readonly enclosure: string;
	/** The point's name, or how it waits: `loose`, `capped`. */
	readonly on: string;
	readonly termination: string;
	readonly marked?: string;
	readonly said: boolean;
	readonly line: number;
}

/** The record of a circuit, lists in the order of the circuit. */
export function recordCircuit(circuit: Circuit, energised: ReadonlyMap<string, Energised>): CircuitRecord {
	const nameOf = (point: number): string => circuit.points[point]?.name ?? "";
	return {
		schema: 1,
		title: circuit.plan.title,
		region: circuit.plan.settings.region,
		rules: circuit.plan.settings.rules,
		modes: circuit.modes.map(({ name, live, summary }) => ({
			name,
			live,
			summary,
			energised: energised.get(name)?.live ?? [],
		})),
		enclosures: circuit.enclosures.map(({ name, label, sort, metal, place }) => ({
			name,
			label,
			sort,
			metal,
			...(place === undefined ? {} : { place: place.name }),
		})),
		parts: circuit.parts.map((part) => ({
			name: part.name,
			kind: part.kind,
			text: part.face.text,
			enclosure: part.enclosure.name,
			line: part.span.line,
		})),
		points: circuit.points.map(recordPoint),
		cables: circuit.cables.map((cable) => ({
			tag: cable.tag,
			make: cable.make,
			run: cable.run,
			from: cable.from.name,
			to: cable.to.name,
			length: cable.lengthText,
			line: cable.span.line,
		})),
		conductors: circuit.conductors.map((conductor) => ({
			name: conductor.name,
			sort: conductor.sort,
			colour: conductor.colour,
			role: conductor.role,
			size: formatGauge(conductor.gauge),
			material: conductor.material,
			stranded: conductor.stranded,
			insulation: conductor.insulation,
			...(conductor.length === undefined ? {} : { length: conductor.length }),
			...(conductor.cable === undefined ? {} : { cable: conductor.cable }),
			ends: conductor.ends.map((end) => recordEnd(end, nameOf)),
		})),
		links: circuit.links.map((link) => ({
			part: link.part,
			between: link.between.map(nameOf),
			nature: link.nature,
			...(link.modes === undefined ? {} : { modes: [...link.modes] }),
		})),
	};
}

/**
 * A circuit as one text that is equal for equal circuits, however their plans say them: its record and its loads, sources and
 * protective devices, without who said what and on which line, and with points and conductors in the order of their names.
 */
export function canonicalCircuit(circuit: Circuit): string {
	const { points, conductors, ...rest } = recordCircuit(circuit, new Map());
	const nameOf = (point: number): string => circuit.points[point]?.name ?? "";
	const byName = <Named extends { readonly name: string }>(list: readonly Named[]): Named[] =>
		list.toSorted((one, other) => (one.name < other.name ? -1 : 1));
	const canonical = {
		...rest,
		points: byName(points),
		conductors: byName(conductors),
		loads: circuit.loads.map((load) => ({ ...load, between: load.between.map(nameOf) })),
		sources: circuit.sources.map(({ name, sort, volts, hot, limit, bonding }) => ({
			...{ name, sort, volts, limit, bonding },
			hot: hot.map(nameOf),
		})),
		protections: circuit.protections.map(({ part, rating, sort, poles }) => ({ part, rating, sort, poles })),
	};
	return JSON.stringify(canonical, (key, value: unknown) => (key === "said" || key === "line" ? undefined : value), 1);
}

function recordPoint(point: Point): CircuitRecord["points"][number] {
	return {
		name: point.name,
		kind: point.kind,
		role: point.role,
		enclosure: point.enclosure.name,
		...(point.kind === "splice" ? { connector: point.connector, ports: point.ports } : {}),
	};
}

function recordEnd(end: End, nameOf: (point: number) => string): EndRecord {
	return {
		enclosure: end.enclosure.name,
		on: end.point === undefined ? end.state : nameOf(end.point),
		termination: end.termination,
		...(end.marked === undefined ? {} : { marked: end.marked }),
		said: end.said,
		line: end.span.line,
	};
}
