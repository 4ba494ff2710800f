// Where on a way the wires of two circuits meet, and which wires there belong to which.
import type { Edge } from "../analysis/network.ts";
import { certain } from "../base/certain.ts";
import type { Span } from "../base/span.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";

/** The meeting of two circuits. */
export interface Joint {
	readonly point: number;
	readonly box: string | undefined;
	readonly span: Span | undefined;
	/** The jumper that joins them, where it is one. */
	readonly jumper: string | undefined;
	/** The wires that meet, one of each circuit. */
	readonly names: readonly string[];
	/** Every wire of a cable on the joint, those of one circuit together. */
	readonly sides: readonly (readonly string[])[];
	/** The point and the wires, as a drawing marks them. */
	readonly marks: readonly string[];
}

/** The joint on a way from one device's terminal to another's: where the wires' circuit changes, else a jumper, else the middle. */
export function findJoint(circuit: Circuit, way: readonly Edge[]): Joint {
	const steps = way.flatMap((edge) => {
		const conductor = edge.by.kind === "conductor" ? circuit.conductors[edge.by.index] : undefined;
		return conductor === undefined ? [] : [{ edge, conductor, run: runOf(circuit, conductor) }];
	});
	const jumper = steps.find(({ conductor }) => conductor.sort === "jumper");
	if (jumper !== undefined) return jointOfJumper(circuit, jumper.edge, jumper.conductor);
	const cores = steps.filter(({ run }) => run !== undefined);
	const changes = cores.findIndex(({ run }, index) => index > 0 && run !== cores[index - 1]?.run);
	const at = changes > 0 ? changes : Math.floor(cores.length / 2);
	const [before, after] = [cores[at - 1], cores[at]];
	const point = after?.edge.from ?? before?.edge.to ?? way[0]?.from ?? 0;
	const met = [before, after].flatMap((step) => (step === undefined ? [] : [step.conductor]));
	const ends = met.toReversed().flatMap((conductor) => conductor.ends.filter((end) => end.point === point));
	const end = ends.find(({ said }) => said) ?? ends[0];
	const names = met.map(({ name }) => name);
	const spot = circuit.points[point];
	return {
		point,
		box: spot?.enclosure.name,
		span: end?.span ?? spot?.span,
		jumper: undefined,
		names,
		sides: changes > 0 ? sidesOf(circuit, point, met) : [],
		marks: [...(spot === undefined ? [] : [spot.name]), ...names],
	};
}

function jointOfJumper(circuit: Circuit, edge: Edge, { name, span }: Conductor): Joint {
	const point = certain(circuit.points[edge.from], "a point");
	const box = point.enclosure.name;
	return { point: edge.from, box, span, jumper: name, names: [], sides: [], marks: [point.name, name] };
}

function sidesOf(circuit: Circuit, point: number, met: readonly Conductor[]): readonly (readonly string[])[] {
	const here = circuit.conductors.filter(
		({ cable, ends }) => cable !== undefined && ends.some((end) => end.point === point),
	);
	return met.map((one) =>
		here.filter((other) => runOf(circuit, other) === runOf(circuit, one)).map(({ name }) => name),
	);
}

function runOf(circuit: Circuit, { cable }: Conductor): string | undefined {
	return cable === undefined ? undefined : circuit.cableByTag.get(cable)?.run;
}
