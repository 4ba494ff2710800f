// The circuit while it grows: lists that are added to, ends that still move. Sealed into a `Circuit` when all is said and inferred.
import { certain } from "../base/certain.ts";
import type { Gauge } from "../base/gauge.ts";
import type { Span } from "../base/span.ts";
import type { Role, TerminalSpec, Termination } from "../kinds/kind.ts";
import { foldName } from "../plan/names.ts";
import type { Core, JointMake, Plan, Thing } from "../plan/plan.ts";
import type { Cable, Conductor, Enclosure, End, Link, Part, Point } from "./circuit.ts";
import { findLoneRoles } from "./lone-roles.ts";
import { PointNames } from "./point-names.ts";
import { findComing } from "./stages.ts";
import { planLoops, type SwitchLoops } from "./switch-loops.ts";
import { usualTermination } from "./terminations.ts";

/** An end that can still be moved. */
export type DraftEnd = { -readonly [Key in keyof End]: End[Key] } & {
	/** The knot of its enclosure that the trade's convention ties it into; undefined: it is capped. */
	knot: string | undefined;
};
export type DraftConductor = Omit<Conductor, "ends"> & { readonly ends: readonly [DraftEnd, DraftEnd] };

/** A device terminal or an enclosure's metal, waiting in a knot. */
export interface KnotMember {
	readonly point: number;
	readonly gathers: boolean;
}
export interface Knot {
	readonly name: string;
	readonly ends: { readonly conductor: DraftConductor; readonly end: DraftEnd }[];
	readonly members: KnotMember[];
}

/** What the builder read off the terminals of a thing; undefined where nothing is said. */
interface TerminalFacts {
	readonly thing: Thing;
	readonly capacity: number | undefined;
	readonly smallest: Gauge | undefined;
	readonly largest: Gauge | undefined;
	readonly aluminium: boolean | undefined;
}

/** Everything the steps of the builder write to. */
export class Draft {
	readonly plan: Plan;
	readonly enclosures: Enclosure[] = [];
	readonly parts: Part[] = [];
	readonly points: Point[] = [];
	readonly conductors: DraftConductor[] = [];
	readonly cables: Cable[] = [];
	readonly links: Link[] = [];
	/** Knots by enclosure and name, in the order in which they were first met. */
	readonly knots = new Map<string, Map<string, Knot>>();
	/** Conductors landed on each point so far. */
	readonly landed: number[] = [];
	readonly conductorByName = new Map<string, number>();
	readonly partByName = new Map<string, Part>();
	readonly enclosureOfThing = new Map<string, Enclosure>();
	/** Leads that come with devices, by their terminals. */
	readonly leads = new Map<string, DraftConductor>();
	/** Devices that are not on yet. */
	readonly coming: ReadonlySet<string>;
	/** The enclosures that these sit in: their conductors wait there, capped. */
	readonly comingBoxes = new Set<string>();
	/** What the cores of switch loops are for. */
	readonly loops: SwitchLoops;
	/** Terminals that an `at` line joins into a splice. */
	readonly joinedByHand = new Set<number>();
	private readonly otherNames: (readonly string[] | undefined)[] = [];
	readonly pointNames = new PointNames(this.points, this.otherNames);
	private terminalFacts: TerminalFacts | undefined;
	private readonly spliceNames = new Set<string>();
	/** By enclosure; undefined until somebody asks. */
	private intoEnclosure: Map<string, DraftConductor[]> | undefined;

	/** What things in line with lone conductors are for. */
	readonly loneRoles: ReadonlyMap<string, Role>;

	constructor(plan: Plan) {
		this.plan = plan;
		this.loops = planLoops(plan);
		this.loneRoles = findLoneRoles(plan);
		this.coming = findComing(plan);
	}

	addEnclosure(enclosure: Omit<Enclosure, "body">): Enclosure {
		const body = enclosure.metal ? this.points.length : undefined;
		const kept: Enclosure = { ...enclosure, ...(body === undefined ? {} : { body }) };
		this.enclosures.push(kept);
		if (body !== undefined)
			this.addPoint({
				kind: "body",
				index: body,
				name: `${enclosure.name}.case`,
				enclosure: kept,
				role: "ground",
				span: enclosure.span,
			});
		return kept;
	}

	addTerminal(thing: Thing, spec: TerminalSpec, enclosure: Enclosure): number {
		const index = this.points.length;
		const { capacity, smallest, largest, aluminium } = this.terminalFactsOf(thing);
		this.addPoint({
			kind: "terminal",
			index,
			name: `${thing.name}.${spec.name}`,
			enclosure,
			part: thing.name,
			terminal: spec.name,
			role: (spec.inherits === true ? this.loneRoles.get(thing.name) : undefined) ?? spec.role,
			side: spec.side,
			clamp: spec.clamp,
			// What the builder reads off the part holds in place of what is usual.
			capacity: capacity ?? spec.capacity,
			smallest: smallest ?? spec.smallest,
			largest: largest ?? spec.largest,
			screw: spec.screw,
			aluminium: aluminium ?? spec.aluminium === true,
			span: thing.span,
		});
		this.otherNames[index] = spec.also;
		return index;
	}

	/** What is said of all terminals of a thing; terminals of one thing follow one another, so that it is asked once for each thing. */
	private terminalFactsOf(thing: Thing): TerminalFacts {
		if (this.terminalFacts?.thing === thing) return this.terminalFacts;
		const metal = thing.said.choice("metal");
		this.terminalFacts = {
			thing,
			capacity: thing.said.count("takes"),
			smallest: thing.said.gauge("smallest"),
			largest: thing.said.gauge("largest"),
			aluminium: metal === undefined ? undefined : metal === "copper and aluminium",
		};
		return this.terminalFacts;
	}

	/** The point of a thing's terminal, by its name there; undefined where it has none of that name. */
	terminalOf(thing: Thing, name: string): number | undefined {
		const place = thing.blueprint.terminals.findIndex((spec) => spec.name === name);
		return this.partByName.get(thing.name)?.points[place];
	}

	addSplice(
		enclosure: Enclosure,
		knot: string,
		role: Role,
		{ make, members, said, span }: { make?: JointMake | undefined; members: number; said: boolean; span: Span },
	): number {
		const index = this.points.length;
		const base = `${enclosure.name}/${knot.replace(":", ".")}`;
		let name = base;
		for (let copy = 2; this.spliceNames.has(name); copy++) name = `${base}-${copy}`;
		this.spliceNames.add(name);
		const usual = this.jointOf(enclosure);
		const connector = make?.connector ?? usual.connector;
		// A connector of the usual sort is the usual one, as far as nothing else is said of it.
		const alike = connector === usual.connector ? usual : undefined;
		const { rating, smallest, largest } =
			make?.rating === undefined && make?.largest === undefined ? (alike ?? {}) : make;
		this.addPoint({
			kind: "splice",
			index,
			name,
			enclosure,
			role,
			connector,
			ports: make?.ports ?? portsFor(usual, members),
			rating,
			smallest,
			largest,
			said,
			span,
		});
		return index;
	}

	/** The usual connector in an enclosure: its own, where it is one, else that of the plan. */
	private jointOf(enclosure: Enclosure): JointMake {
		const thing = this.plan.thingByName.get(foldName(enclosure.name));
		return thing?.blueprint.joint ?? this.plan.settings.joints;
	}

	/** The name that the next conductor gets: made unique by a running number. */
	conductorName(wish: string): string {
		let name = wish;
		for (let copy = 2; this.conductorByName.has(name); copy++) name = `${wish}(${copy})`;
		return name;
	}

	/** Takes in the next conductor. */
	addConductor(conductor: DraftConductor): DraftConductor {
		this.conductors.push(conductor);
		if (this.intoEnclosure !== undefined) this.noteInto(this.intoEnclosure, conductor);
		this.conductorByName.set(conductor.name, conductor.index);
		return conductor;
	}

	private noteInto(boxes: Map<string, DraftConductor[]>, conductor: DraftConductor): void {
		for (const name of new Set(conductor.ends.map((end) => end.enclosure.name))) {
			const here = boxes.get(name);
			if (here === undefined) boxes.set(name, [conductor]);
			else here.push(conductor);
		}
	}

	/** A short conductor inside a box: a pigtail from a terminal to a splice, a jumper from one terminal to another. */
	addPigtail(
		name: string,
		core: Omit<Core, "role"> & { role: Role },
		enclosure: Enclosure,
		from: number,
		to: number,
		said: boolean,
		span: Span,
	): DraftConductor {
		const end = (point: number): DraftEnd => ({
			point,
			state: "loose",
			enclosure,
			termination: "bare",
			marked: undefined,
			at: undefined,
			said,
			span,
			knot: undefined,
		});
		const pigtail = this.addConductor({
			index: this.conductors.length,
			name: this.conductorName(name),
			colour: core.colour,
			role: core.role,
			gauge: core.gauge,
			material: "copper",
			stranded: core.stranded,
			insulation: 90,
			length: undefined,
			cable: undefined,
			sort: this.points[to]?.kind === "splice" ? "pigtail" : "jumper",
			ends: [end(from), end(to)],
			span,
		});
		this.land(pigtail, 0, from, said, undefined, span);
		this.land(pigtail, 1, to, said, undefined, span);
		return pigtail;
	}

	/** Puts one end of a conductor on a point, made up as said or as the trade does there. */
	land(
		conductor: DraftConductor,
		which: 0 | 1,
		point: number,
		said: boolean,
		termination: Termination | undefined,
		span: Span,
	): void {
		const end = conductor.ends[which];
		end.point = point;
		end.state = "landed";
		end.said = said;
		end.termination =
			termination ?? usualTermination(conductor.stranded, certain(this.points[point], "a point"), this.plan.settings);
		end.span = span;
		this.landed[point] = (this.landed[point] ?? 0) + 1;
	}

	/** Conductors with an end in an enclosure, in the order in which they were pulled. */
	conductorsInto(enclosure: Enclosure): readonly DraftConductor[] {
		if (this.intoEnclosure === undefined) {
			this.intoEnclosure = new Map();
			for (const conductor of this.conductors) this.noteInto(this.intoEnclosure, conductor);
		}
		return this.intoEnclosure.get(enclosure.name) ?? [];
	}

	knot(enclosure: Enclosure, name: string): Knot {
		const here = this.knots.get(enclosure.name);
		const known = here?.get(name);
		if (known !== undefined) return known;
		const knot: Knot = { name, ends: [], members: [] };
		if (here === undefined) this.knots.set(enclosure.name, new Map([[name, knot]]));
		else here.set(name, knot);
		return knot;
	}

	private addPoint(point: Point): void {
		this.points.push(point);
	}
}

/**
 * Ports of a connector for so many members: the usual one where it has enough, else the next that is sold:
 * 2, 3 and 5 are (common practice); larger joints take as many as they need.
 */
function portsFor({ ports: usual }: JointMake, members: number): number {
	if (usual !== undefined && usual >= members) return usual;
	return [2, 3, 5].find((ports) => ports >= members) ?? members;
}
