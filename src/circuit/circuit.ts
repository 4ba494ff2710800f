// The circuit: every single conductor on every single terminal. Plain data; points and conductors are numbered from 0.
import type { Gauge } from "../base/gauge.ts";
import type { Quantity } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import type {
	Clamp,
	GroundFaultPoles,
	PartFace,
	Role,
	Side,
	SourceSort,
	System,
	Termination,
	When,
} from "../kinds/kind.ts";
import type { BoxFittings, Place, Plan, Thing } from "../plan/plan.ts";

/** Everything that is wired, in the order of the plan text. */
export interface Circuit {
	readonly plan: Plan;
	readonly enclosures: readonly Enclosure[];
	readonly parts: readonly Part[];
	readonly points: readonly Point[];
	readonly conductors: readonly Conductor[];
	readonly cables: readonly Cable[];
	readonly links: readonly Link[];
	readonly loads: readonly Load[];
	readonly sources: readonly Source[];
	readonly protections: readonly Protection[];
	readonly groundFaults: readonly GroundFaultDevice[];
	readonly modes: readonly Mode[];
	/** What settles which links exist in which mode. */
	readonly switchovers: Switchovers;
	/** Names to positions in the lists above. */
	readonly pointByName: ReadonlyMap<string, number>;
	readonly conductorByName: ReadonlyMap<string, number>;
	readonly partByName: ReadonlyMap<string, Part>;
	readonly enclosureByName: ReadonlyMap<string, Enclosure>;
	readonly cableByTag: ReadonlyMap<string, Cable>;
}

/** A box, a panel's case or an appliance's own case: what conductors enter and joints are made in. */
export interface Enclosure {
	readonly name: string;
	readonly label: string;
	readonly metal: boolean;
	readonly place?: Place;
	readonly volume?: Quantity;
	/** What the builder said of the box: gangs, clamps, cover, partition. */
	readonly fittings?: BoxFittings;
	/** A panel, a source's case, a device box, or a cut-off end in a wall with no box at all. */
	readonly sort: "panel" | "equipment" | "box" | "open";
	/** The point that is its metal; undefined when it is not metal. */
	readonly body?: number;
	readonly span: Span;
}

/** One device as wired: a receptacle, a breaker, a bar, an inverter. */
export interface Part {
	readonly name: string;
	readonly label: string;
	/** The kind's name: `receptacle`, `breaker`. */
	readonly kind: string;
	readonly enclosure: Enclosure;
	/** Its terminals, in the kind's order. */
	readonly points: readonly number[];
	/** What a drawing or a list says of it. */
	readonly face: PartFace;
	/** The part it sits in (a breaker in its panel). */
	readonly owner: string | undefined;
	/** The run on which it was declared; undefined for sources and panels. */
	readonly run: string | undefined;
	/** It is not on yet: its cables are there, its terminals are not. */
	readonly coming: boolean;
	readonly span: Span;
}

/** A spot that conductors land on and that is one potential: a terminal, a splice, or the metal of an enclosure. */
export type Point = Terminal | Splice | Body;
interface AnyPoint {
	readonly index: number;
	/** `b1.hot`, `LC.neutral.3`; a splice is `b1/hot`. */
	readonly name: string;
	readonly enclosure: Enclosure;
	readonly span: Span;
}
/** A screw, cage, stud, port or lead of a part. */
export interface Terminal extends AnyPoint {
	readonly kind: "terminal";
	readonly part: string;
	/** Its name inside the part: `hot`, `line.hot`, `3`. */
	readonly terminal: string;
	readonly role: Role;
	readonly side: Side | undefined;
	readonly clamp: Clamp;
	/** Conductors it takes. */
	readonly capacity: number;
	readonly smallest: Gauge;
	readonly largest: Gauge;
	/** Colour of the screw as the hand finds it: `brass`, `silver`, `green`, `dark`. */
	readonly screw: string | undefined;
	/** Whether it takes a conductor of aluminium. */
	readonly aluminium: boolean;
}
/** A joint of conductors in a box. */
export interface Splice extends AnyPoint {
	readonly kind: "splice";
	/** The role of what it joins, from the first conductor's. */
	readonly role: Role;
	/** `lever`, `push-in`, `twist-on`, `crimp`. */
	readonly connector: string;
	readonly ports: number;
	/** Amperes it carries, and the conductors a port takes, where that was said. */
	readonly rating: number | undefined;
	readonly smallest: Gauge | undefined;
	readonly largest: Gauge | undefined;
	readonly said: boolean;
}
/** The metal of an enclosure. */
export interface Body extends AnyPoint {
	readonly kind: "body";
	readonly role: "ground";
}

/** One conductor. Pigtails and jumpers are conductors of their own. */
export interface Conductor {
	readonly index: number;
	/** `bunks-1.black`; a pigtail is `b1~hot`, after the terminal it serves. */
	readonly name: string;
	readonly colour: string;
	/** What it is for by its place in the cable and its colour: the trade's meaning, not what it carries. */
	readonly role: Role;
	readonly gauge: Gauge;
	readonly material: "copper" | "aluminium";
	readonly stranded: boolean;
	/** Insulation temperature rating, degrees Celsius. */
	readonly insulation: number;
	/** Metres; undefined when the length is not known. */
	readonly length: number | undefined;
	readonly sort: "core" | "pigtail" | "jumper";
	/** Undefined for a pigtail or jumper. */
	readonly cable: string | undefined;
	/** `ends[0]` is the end toward `from` of its cable. */
	readonly ends: readonly [End, End];
	readonly span: Span;
}
/** One end of a conductor. */
export interface End {
	/** The point it is on; undefined for an end that is on none. */
	readonly point: number | undefined;
	readonly state: "landed" | "loose" | "capped";
	readonly enclosure: Enclosure;
	readonly termination: Termination;
	/** The colour it is re-marked with at this end. */
	readonly marked: string | undefined;
	/** What a plan names it by, where both ends of its cable are in one enclosure: the `r1` of `bunks-1@r1.black`, `inv.in`. */
	readonly at: string | undefined;
	/** Said by the builder, or inferred by the trade's convention. */
	readonly said: boolean;
	readonly span: Span;
}
/** One cable between two enclosures, or one conductor run by itself. */
export interface Cable {
	readonly tag: string;
	/** As the trade says it: `12-2`, `3G2.5`, `single 4/0`. */
	readonly make: string;
	readonly run: string;
	readonly runSort: "circuit" | "feed" | "bond";
	readonly system: System;
	readonly from: Enclosure;
	readonly to: Enclosure;
	/** Metres; undefined when not known. */
	readonly length?: number;
	/** As written: `14 ft`. */
	readonly lengthText: string;
	/** Left over at each end, beside the length; undefined where none was said. */
	readonly slack: Quantity | undefined;
	readonly conductors: readonly number[];
	readonly flexible: boolean;
	readonly span: Span;
}

/** A way through a part from one of its terminals to another. */
export interface Link {
	readonly index: number;
	readonly between: readonly [number, number];
	readonly part: string;
	/** `solid` never opens; a `contact` may; a `bond` joins neutral and ground on purpose. */
	readonly nature: "solid" | "contact" | "bond";
	/** For a contact: its part's switch or trip, and the positions in which it is closed. Contacts of one group move together. */
	readonly contact: Contact | undefined;
	/** The modes in which it exists (a transfer, a bonding relay, the bond at a pedestal); undefined: in all. */
	readonly modes: ReadonlySet<string> | undefined;
	/** Set where the contact is that of a protective device: its position in `protections`. */
	readonly protection: number | undefined;
	readonly span: Span;
}
/** Links that come and go with the mode, by their positions: on a condition, or as contacts of a transfer switch. */
export interface Switchovers {
	readonly conditions: ReadonlyMap<number, { readonly thing: Thing; readonly when: When }>;
	/** The switch, and the positions in which it closes them. */
	readonly transfers: ReadonlyMap<number, { readonly thing: Thing; readonly closed: readonly number[] }>;
}
export interface Contact {
	readonly group: string;
	readonly positions: number;
	readonly closed: readonly number[];
}
/** What uses power between two terminals. */
export interface Load {
	readonly part: string;
	readonly between: readonly [number, number];
	/** Watts; undefined for an outlet or when not known. */
	readonly watts?: number;
	/** Volts it is made for; undefined for an outlet. */
	readonly volts?: number;
	readonly continuous: boolean;
	/** An outlet that something may be plugged in to: no load of its own. */
	readonly outlet: boolean;
}
/** What feeds the circuit. */
export interface Source {
	readonly name: string;
	readonly part: string;
	readonly sort: SourceSort;
	readonly system: System;
	readonly volts: number;
	/** Points of its poles. Two hots are the two legs. */
	readonly hot: readonly number[];
	readonly neutral?: number;
	readonly ground?: number;
	/** Amperes it can give for long: the pedestal's breaker, the inverter's rating. */
	readonly limit?: number;
	/** Where its neutral meets ground: at the far supply, by a link of its own part, or nowhere. */
	readonly bonding: "supply" | "own" | "floating";
	/** Its ground is an electrode of its own (TT): an earth fault lets too little through to open a breaker. */
	readonly ownEarth: boolean;
	readonly span: Span;
}
/** A device that opens on too much current. */
export interface Protection {
	readonly index: number;
	readonly part: string;
	/** Amperes; undefined when not said. */
	readonly rating?: number;
	readonly sort: "breaker" | "fuse" | "supply";
	readonly poles: number;
	/** Positions in `links`; empty for the device of a far supply, which protects all its source feeds. */
	readonly links: readonly number[];
	/** For a far supply: the source it stands in. */
	readonly source?: string;
	readonly span: Span;
}
/** A device that opens on current that does not return through it. */
export interface GroundFaultDevice {
	readonly part: string;
	readonly line: GroundFaultPoles<number>;
	readonly load: GroundFaultPoles<number>;
	/** A device's own outlets are protected too: the part's load terminals or its own slots. */
	readonly ownOutlet: boolean;
	/** Milliamperes. */
	readonly trip: number;
	/** Opens late on purpose. */
	readonly selective: boolean;
	readonly span: Span;
}
/** Which sources are live and what follows. */
export interface Mode {
	readonly name: string;
	/** Names of the live sources. */
	readonly live: readonly string[];
	/** The parts that draw power in it, where the builder says which; left out: all of them do. */
	readonly running: ReadonlySet<string> | undefined;
	/** One line in words: `shore: LC is fed by shore through inv`. */
	readonly summary: string;
}
