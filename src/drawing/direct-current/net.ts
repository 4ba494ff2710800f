// What the direct-current sheet joins: its boxes, local stubs for a chassis, and the runs between them: single conductors, sheaths, straps.
import type { Cable, Conductor, Link } from "../../circuit/circuit.ts";
import type { SystemPart } from "../system-parts.ts";
import { type Stock, takeStock } from "../wiring/box-content.ts";
import { orderStrands } from "../wiring/strand-order.ts";

/** All that is drawn, not yet placed. */
export interface DirectNet {
	readonly nodes: readonly DirectNode[];
	readonly runs: readonly Run[];
}

/** Something that runs meet. */
export type DirectNode = BoxNode | StubNode | FlagNode | SheathNode;
interface AnyNode {
	/** Unique on the sheet. */
	readonly name: string;
	readonly meetings: Meeting[];
}
/** An enclosure of the circuit. */
export interface BoxNode extends AnyNode {
	readonly kind: "box";
	readonly stock: Stock;
}
/** A stud of a chassis, drawn where its conductor ends. */
export interface StubNode extends AnyNode {
	readonly kind: "stub";
	readonly stock: Stock;
}
/** A box that is drawn on a wiring sheet only. */
export interface FlagNode extends AnyNode {
	readonly kind: "flag";
	readonly enclosure: string;
}
/** Where cores that start on different boxes come together in one sheath. */
export interface SheathNode extends AnyNode {
	readonly kind: "sheath";
}

/** A run's end at a node. */
export interface Meeting {
	readonly run: Run;
	readonly end: 0 | 1;
	/** The run ends on a coil: what it brings works the device and does not pass it. */
	readonly isControl: boolean;
}

/** What is routed as one: a conductor by itself, the sheath of several, or a strap that fastens two studs. */
export interface Run {
	/** Unique on the sheet; that of a cable where the whole cable runs as one. */
	readonly key: string;
	readonly sort: "single" | "sheathed" | "tail" | "strap";
	/** The cable it is or is part of, under its own key. */
	readonly cable?: Cable;
	/** In strand order. */
	readonly conductors: readonly Conductor[];
	/** The two studs that a strap joins. */
	readonly link?: Link;
	/** Node names; `ends[0]` is where it is written from. */
	readonly ends: readonly [string, string];
}

/** Reads the net of a circuit's direct-current part. */
export function readNet({ circuit, shows }: SystemPart): DirectNet {
	const stocks = takeStock(circuit, shows);
	const strands = orderStrands(circuit, []);
	const nodes = new Map<string, DirectNode>();
	const runs: Run[] = [];
	for (const [name, stock] of stocks)
		if (!isEarth(stock) || stock.meetings.length === 0) nodes.set(name, { kind: "box", name, stock, meetings: [] });
	const stubs = new Map<string, number>();
	const nodeFor = (enclosure: string): string => {
		if (nodes.get(enclosure)?.kind === "box") return enclosure;
		const stock = stocks.get(enclosure);
		const count = (stubs.get(enclosure) ?? 0) + 1;
		stubs.set(enclosure, count);
		const name = count === 1 ? enclosure : `${enclosure} (${count})`;
		nodes.set(
			name,
			stock === undefined
				? { kind: "flag", name, enclosure, meetings: [] }
				: { kind: "stub", name, stock, meetings: [] },
		);
		return name;
	};
	const join = (run: Run): void => {
		runs.push(run);
		for (const end of [0, 1] as const)
			nodes
				.get(run.ends[end])
				?.meetings.push({ run, end, isControl: endsOnCoil(circuit, stocks.get(run.ends[end])?.inner ?? [], run, end) });
	};
	for (const cable of circuit.cables) pullRuns(cable, strands(cable), nodeFor, nodes, join);
	for (const link of circuit.links) {
		const [one, other] = link.between.map((index) => circuit.points[index]?.enclosure.name ?? "");
		if (one === undefined || other === undefined || one === other || !nodes.has(one) || !nodes.has(other)) continue;
		join({ key: `strap ${link.index}`, sort: "strap", conductors: [], link, ends: [one, other] });
	}
	return { nodes: [...nodes.values()], runs };
}

/** The runs of one cable: one where all its cores start in one box and end in one, else a tail for each core that does not. */
function pullRuns(
	cable: Cable,
	conductors: readonly Conductor[],
	nodeFor: (enclosure: string) => string,
	nodes: Map<string, DirectNode>,
	join: (run: Run) => void,
): void {
	const [only, ...others] = conductors;
	if (only === undefined) return;
	if (others.length === 0) {
		const ends = [nodeFor(only.ends[0].enclosure.name), nodeFor(only.ends[1].enclosure.name)] as const;
		join({ key: cable.tag, sort: "single", cable, conductors, ends });
		return;
	}
	const tails: Run[] = [];
	const endOf = (end: 0 | 1): string => {
		const boxes = new Set(conductors.map(({ ends }) => ends[end].enclosure.name));
		if (boxes.size === 1) return nodeFor(only.ends[end].enclosure.name);
		const sheath = `sheath ${cable.tag} ${end}`;
		nodes.set(sheath, { kind: "sheath", name: sheath, meetings: [] });
		for (const conductor of conductors) {
			const box = nodeFor(conductor.ends[end].enclosure.name);
			const key = `${conductor.name} ${end}`;
			tails.push({
				key,
				sort: "tail",
				cable: { ...cable, tag: key, conductors: [conductor.index] },
				conductors: [conductor],
				ends: end === 0 ? [box, sheath] : [sheath, box],
			});
		}
		return sheath;
	};
	const ends = [endOf(0), endOf(1)] as const;
	join({ key: cable.tag, sort: "sheathed", cable, conductors, ends });
	for (const tail of tails) join(tail);
}

/** Whether every conductor of a run ends on a coil, or is spliced in the box to what does. */
function endsOnCoil(
	{ points }: SystemPart["circuit"],
	inner: readonly Conductor[],
	{ conductors }: Run,
	end: 0 | 1,
): boolean {
	const isCoil = (index: number | undefined): boolean => {
		const point = points[index ?? -1];
		return point?.kind === "terminal" && coilEnds.has(point.terminal);
	};
	const isSpliced = (index: number | undefined): boolean => {
		const pigtails = inner.filter(({ ends }) => ends.some(({ point }) => point === index));
		return pigtails.length > 0 && pigtails.every(({ ends }) => ends.some(({ point }) => isCoil(point)));
	};
	return conductors.length > 0 && conductors.every(({ ends }) => isCoil(ends[end].point) || isSpliced(ends[end].point));
}

/** A chassis, a hull or a rod: what conductors are bonded to, wherever it is met. */
function isEarth({ parts }: Stock): boolean {
	const [part, ...others] = parts;
	return part !== undefined && others.length === 0 && part.face.oneLine === "chassis-bond";
}

/** The ends of a coil, as they are marked. */
export const coilEnds: ReadonlySet<string> = new Set(["A1", "A2"]);
