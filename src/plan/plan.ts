// What the builder said, names resolved and quantities checked; nothing is inferred here.
import type { Gauge } from "../base/gauge.ts";
import type { Quantity } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import type { Blueprint, Kind, Region, Role, RuleSet, Said, System, Termination } from "../kinds/kind.ts";
import type { NameTerm } from "../syntax/tree.ts";

/** A whole plan. Lists stand in the order of the text; maps are keyed by folded names (see `foldName`). */
export interface Plan {
	readonly file: string;
	readonly title: string;
	readonly settings: Settings;
	readonly places: ReadonlyMap<string, Place>;
	readonly things: readonly Thing[];
	readonly thingByName: ReadonlyMap<string, Thing>;
	readonly runs: readonly Run[];
	readonly landings: readonly BoxLandings[];
	readonly modes: readonly SaidMode[];
	readonly acceptances: readonly Acceptance[];
	/** True where a statement could not be taken up: what rests on it may be missing. */
	readonly incomplete: boolean;
}

/** The plan's settings, with the trade's defaults where nothing was said. */
export interface Settings {
	readonly region: Region;
	readonly rules: RuleSet;
	/** Degrees Celsius. */
	readonly ambient: number;
	/** How stranded ends are made up unless said otherwise; undefined: bare. */
	readonly ends?: Termination;
	/** The joint connector used unless said otherwise. */
	readonly joints: JointMake;
	/** Splices in every box, even where one cable meets one device. */
	readonly splicesAlways: boolean;
	/** The box around a device unless said otherwise; undefined: of plastic, its volume not known. */
	readonly box?: UsualBox;
	/** A sheet size; empty: the smallest that fits. */
	readonly paper: string;
	readonly notes: readonly string[];
}

/** What is said of every box of a plan at once. */
export interface UsualBox {
	readonly metal: boolean;
	readonly volume?: Quantity;
}

/** A joint connector, as far as it was said. */
export interface JointMake {
	readonly connector: string;
	readonly ports?: number;
	/** Amperes it carries. */
	readonly rating?: number;
	/** The conductors that a port takes. */
	readonly smallest?: Gauge;
	readonly largest?: Gauge;
}

/** Where things are, and what that asks of them. */
export interface Place {
	readonly name: string;
	readonly label: string;
	/** `wet`, `damp`, `outdoor`, `engine-space`, `bath`, `dry`. */
	readonly traits: ReadonlySet<string>;
	/** Metres to the nearest basin edge; undefined when none is near. */
	readonly basin?: number;
	/** Degrees Celsius, where it differs from the plan's. */
	readonly temperature?: number;
	readonly span: Span;
}

/** Anything with a name that is wired: a source, a panel, a breaker in it, a box, a device. */
export interface Thing {
	readonly name: string;
	readonly label: string;
	readonly kind: Kind;
	readonly said: Said;
	readonly blueprint: Blueprint;
	readonly place: Place | undefined;
	/** The panel or box it sits in. */
	readonly owner: string | undefined;
	readonly box: BoxFacts | undefined;
	/** The run it was declared on. */
	readonly run: string | undefined;
	/** Said to be roughed in: its cable is there, and it is not on yet. */
	readonly roughedIn: boolean;
	readonly span: Span;
}
/** What was said of the box around a device. */
export interface BoxFacts {
	readonly metal: boolean;
	readonly volume?: Quantity;
	readonly fittings: BoxFittings;
}
/** What a box has, as far as it was said; `none` and false where it was said to be absent. */
export interface BoxFittings {
	/** Devices side by side that it is made for. */
	readonly gangs?: number;
	/** Where the clamps are that hold its cables. */
	readonly clamps?: "inside" | "outside" | "none";
	readonly cover?: "blank" | "plastic" | "metal" | "raised" | "weatherproof" | "none";
	/** A wall in it that keeps two systems apart. */
	readonly partition?: boolean;
}

/** A chain, flattened to its hops in the order of the text. */
export interface Run {
	readonly name: string;
	readonly label: string;
	readonly sort: "circuit" | "feed" | "bond";
	/** The protective device a circuit hangs on. */
	readonly protection?: string;
	readonly hops: readonly Hop[];
	/** Things fastened to one another without a cable. */
	readonly fastenings: readonly Fastening[];
	readonly roughedIn: boolean;
	readonly span: Span;
}
/** One cable of a run, from one thing to another. */
export interface Hop {
	readonly tag: string;
	/** Said with `as`. */
	readonly tagSaid: boolean;
	readonly from: HopEnd;
	/** Where its further poles come from, when several run together: the minus of `from plus, minus`. */
	readonly others: readonly HopEnd[];
	readonly to: HopEnd;
	readonly cable: CableMake;
	readonly length: Quantity | undefined;
	/** As written; `at most 7 in` for an upper bound. */
	readonly lengthText: string;
	readonly through: readonly { readonly place: Place; readonly length?: Quantity }[];
	readonly markings: readonly CoreMarking[];
	/** Said with `loop`: it takes the hot to a switch and brings it back. */
	readonly loop: boolean;
	/** Left over at each end. */
	readonly slack: Quantity | undefined;
	/** How many cables lie in one bundle with it, itself among them. */
	readonly bundled: number | undefined;
	readonly span: Span;
}
/** `bolted to F1: fuse`: one thing's stud on the other's. */
export interface Fastening {
	readonly from: HopEnd;
	readonly to: HopEnd;
	readonly span: Span;
}
/** A thing and the side of it that the cable meets: `line`, `load`, `in`, `out`; undefined is the kind's own choice. */
export interface HopEnd {
	readonly thing: string;
	readonly side?: string | undefined;
	readonly span: Span;
}
/** A core re-marked with another colour. `at` names one end; undefined is both. */
export interface CoreMarking {
	readonly core: string;
	readonly colour: string;
	readonly at?: string;
}
/** What a cable is made of. */
export interface CableMake {
	/** Whose colours it is read by. */
	readonly region: Region;
	/** As the trade says it. */
	readonly text: string;
	readonly system: System;
	readonly flexible: boolean;
	readonly cores: readonly Core[];
	/** Insulation temperature rating, degrees Celsius. */
	readonly insulation: number;
	readonly material: "copper" | "aluminium";
}
export interface Core {
	readonly colour: string;
	readonly role: Role;
	readonly gauge: Gauge;
	readonly stranded: boolean;
}

/** An `at` block: landings in one box, as built. Names are resolved against the circuit, where cables have ends. */
export interface BoxLandings {
	readonly box: string;
	readonly landings: readonly SaidLanding[];
	readonly span: Span;
}
export type SaidLanding =
	| {
			readonly sort: "land";
			readonly cores: readonly NameTerm[];
			readonly termination?: Termination;
			readonly on: NameTerm;
			readonly span: Span;
	  }
	| {
			readonly sort: "join";
			readonly members: readonly (readonly NameTerm[])[];
			/** How members' ends are made up, where that is said; of a terminal, the end of its pigtail there. */
			readonly terminations: ReadonlyMap<NameTerm, Termination>;
			/** The connector, where it is said. */
			readonly make: JointMake | undefined;
			readonly span: Span;
	  }
	| {
			readonly sort: "link";
			readonly between: readonly NameTerm[];
			readonly cable: CableMake;
			readonly span: Span;
	  }
	| { readonly sort: "free"; readonly core: NameTerm; readonly state: "loose" | "capped"; readonly span: Span };

/** A mode the builder named. */
export interface SaidMode {
	readonly name: string;
	/** In the order of the text: a transfer switch stands toward the first where nothing is said of it. */
	readonly live: readonly string[];
	/** The loads that run in it, where that was said; left out: all of them do. */
	readonly running: ReadonlySet<string> | undefined;
	/** Transfer switches by name, each with what it stands at: a position of its own, or a source. */
	readonly positions: ReadonlyMap<string, string>;
	readonly span: Span;
}
/** A deviation the builder stands behind. */
export interface Acceptance {
	readonly rule: string;
	/** A thing, a run, a cable or a terminal; undefined: anywhere. */
	readonly at?: string;
	readonly reason: string;
	readonly span: Span;
}
