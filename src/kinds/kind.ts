// What a kind of thing is: the contract between a device's file and all who wire, check and draw it.

import type { Gauge } from "../base/gauge.ts";
import type { Dimension, Quantity } from "../base/quantity.ts";

/** What a conductor or terminal is for. `hot2` is the second leg, or a second hot in one cable; `hot3` a third hot in one cable. */
export type Role = "hot" | "hot2" | "hot3" | "neutral" | "ground" | "positive" | "negative";
/** Side of a device that has two: where it is fed, and where it feeds on. */
export type Side = "line" | "load";
/** Alternating or direct current. */
export type System = "ac" | "dc";
/** How a terminal holds a conductor. */
export type Clamp = "screw" | "plate" | "cage" | "stud" | "port" | "lead" | "stab";
/** How a conductor's end is made up. */
export type Termination = "solid" | "bare" | "fork" | "ring" | "ferrule" | "lug" | "pin";

/** A kind: one wiring behaviour; near variants are rows of `words`. */
export interface Kind {
	/** The word a plan uses; also the file's name. */
	readonly name: string;
	/** Other words of the trade read as this kind. */
	readonly also?: readonly string[];
	/** One sentence for help. */
	readonly summary: string;
	/** A small plan that uses it; run by the tests. */
	readonly example: string;
	/** The system it belongs to whatever it hangs on; `both` where its sides say it. Undefined: that of the run it is wired to. */
	readonly system?: System | "both";
	/** Where it may stand. */
	readonly stands: readonly ("top" | "hop" | "box" | "panel")[];
	/** What it accepts besides what every thing accepts. */
	readonly attributes: readonly AttributeSpec[];
	/** The thing as wired, from what the builder said. */
	readonly build: (said: Said) => Blueprint;
}

/** One attribute of a kind. `kept` is one that no check counts: it is taken in for lists, and the builder is told so. */
export type AttributeSpec = AttributeShape & { readonly kept?: true };
type AttributeShape =
	/** A quantity of a dimension; with `word` it follows that word, without it stands alone. Limits are in base units. */
	| {
			readonly name: string;
			readonly takes: "quantity";
			readonly dimension: Dimension;
			readonly word?: string;
			readonly least?: number;
			readonly most?: number;
			readonly required?: boolean;
			/** The attribute it follows from where it is not said: the volts of a battery from its cells. */
			readonly instead?: string;
			/** Its figure may stand without its word where only it fits: the `30 mA` of `16 A 30 mA`. */
			readonly bare?: boolean;
			readonly summary: string;
	  }
	/** A word that stands for itself: `continuous`; also read as `no continuous`. */
	| { readonly name: string; readonly takes: "flag"; readonly summary: string }
	/** One word of a list: `single`, `duplex`. */
	| { readonly name: string; readonly takes: "choice"; readonly words: readonly string[]; readonly summary: string }
	/** Words in a row after a word: `bonds neutral when inverting`. `phrases` are matched whole. */
	| { readonly name: string; readonly takes: "phrase"; readonly phrases: readonly string[]; readonly summary: string }
	/** A bare number behind a word: `spaces 6`. */
	| {
			readonly name: string;
			readonly takes: "count";
			readonly word: string;
			/** The number may stand without its word: `neutral-bar 8`. */
			readonly bare?: boolean;
			readonly least: number;
			readonly most: number;
			readonly summary: string;
	  }
	/** The name of another thing behind a word: `tied LC.3`. */
	| { readonly name: string; readonly takes: "name"; readonly word: string; readonly summary: string }
	/** A size of conductor behind a word: `largest 2/0`. */
	| { readonly name: string; readonly takes: "gauge"; readonly word: string; readonly summary: string }
	/** Two figures with a slash: `12 V / 120 V`. */
	| {
			readonly name: string;
			readonly takes: "pair";
			readonly dimension: Dimension;
			/** Limits of each of the two, in base units. */
			readonly least?: number;
			readonly most?: number;
			readonly summary: string;
	  };

/** What the builder said of a thing, read against its kind's attributes. Asking for an attribute the kind lacks is our fault. */
export interface Said {
	readonly name: string;
	/** The plan's region and rule set. */
	readonly region: Region;
	readonly rules: RuleSet;
	/** What the cable that arrives carries; undefined where none arrives. */
	readonly arriving?: { readonly secondHot: boolean; readonly thirdHot: boolean; readonly neutral: boolean };
	/** What it is wired to: its kind's own system, else that of the run it stands on or is met by. */
	readonly system: System;
	/** For a device in a panel: its slot, and the panel's bus terminals it plugs on to, one a pole. */
	readonly slot?: { readonly name: string; readonly legs: readonly string[] };
	/** For a part in a panel that stands behind a residual-current device of it: that device. */
	readonly behind?: string;
	quantity(attribute: string): Quantity | undefined;
	/** True when said, false when said with `no`, undefined when not mentioned. */
	flag(attribute: string): boolean | undefined;
	/** The word of a choice or the whole phrase. */
	choice(attribute: string): string | undefined;
	count(attribute: string): number | undefined;
	pair(attribute: string): readonly [Quantity, Quantity] | undefined;
	gauge(attribute: string): Gauge | undefined;
}
export type Region = "us" | "iec";
export type RuleSet = "camper" | "boat" | "building";

/** A thing as wired: its terminals, the ways between them, and where cables land by the trade's convention. */
export interface Blueprint {
	readonly terminals: readonly TerminalSpec[];
	readonly links?: readonly LinkSpec[];
	readonly loads?: readonly LoadSpec[];
	readonly source?: SourceSpec;
	readonly protection?: ProtectionSpec;
	readonly groundFault?: GroundFaultSpec;
	/** For a transfer switch: the group of its contacts, and what its positions are called, in their order. */
	readonly transfer?: { readonly group: string; readonly positions: readonly string[] };
	/**
	 * Where a cable's cores go, by the name of the side it meets: `line`, `load`, `in`, `out`.
	 * The first side is where an arriving cable lands; `onward` names the one a chain goes on from.
	 */
	readonly sides: readonly SideSpec[];
	/** For a switch: where the wires of a switch loop land. */
	readonly loop?: LoopSpec;
	readonly onward: string;
	/** The thing's own case, where it brings one; a device without one sits in a box. */
	readonly enclosure?: {
		readonly sort: "panel" | "equipment" | "box" | "open";
		readonly metal: boolean;
		readonly volume?: Quantity;
	};
	/** A joint connector that is a thing of its own: what is joined at it is joined with it. */
	readonly joint?: {
		readonly connector: string;
		readonly ports?: number;
		readonly rating?: number;
		readonly smallest?: Gauge;
		readonly largest?: Gauge;
	};
	/** Metres of cable coiled up at it, for later. */
	readonly coil?: number;
	/** In a panel: slots and a neutral bar can be said below it, and stand behind it. */
	readonly heads?: boolean;
	/** Parts that a thing brings without being told: a panel's main breaker and bars. */
	readonly brings?: readonly Brought[];
	/** Joints to the thing it sits in, made by plugging it in: a breaker's stab on the bus of its slot. */
	readonly plugs?: readonly { readonly mine: string; readonly owner: string }[];
	/** Leads that come with it and land in its owner: the neutral tail of a ground-fault breaker. */
	readonly leads?: readonly {
		readonly mine: string;
		readonly ownerKnot: string;
		readonly colour: string;
		readonly gauge: Gauge;
	}[];
	readonly face: PartFace;
}
/** A part that comes with a thing: its name inside it, its kind, and what is said of it by attribute name. */
export interface Brought {
	readonly name: string;
	readonly kind: string;
	readonly values: ReadonlyMap<string, Quantity | string | true>;
}
/** A terminal as the kind publishes it. */
export interface TerminalSpec {
	readonly name: string;
	/** Other names read and printed back as `name`: `brass`. */
	readonly also?: readonly string[] | undefined;
	readonly role: Role;
	readonly side?: Side | undefined;
	readonly clamp: Clamp;
	readonly capacity: number;
	readonly smallest: Gauge;
	readonly largest: Gauge;
	readonly screw?: string | undefined;
	/** Whether it takes a conductor of aluminium; not, if not said. */
	readonly aluminium?: boolean | undefined;
	/**
	 * The knot it belongs to: terminals and cores of one knot are joined in the box. Undefined: nothing lands by itself.
	 * Knots that the first side names become the box's own, by role, shared by all its devices; the others stay the device's.
	 */
	readonly knot?: string | undefined;
	/** In line with whatever conductor it is put in: its role is that of the run it stands on. */
	readonly inherits?: boolean;
	/** On a bar, bus or stud: each core lands here by itself, and no splice is made for several. */
	readonly gathers?: boolean | undefined;
}
/**
 * Where the cores of a cable that meets a side go: to the knot named for each role. A role left out is capped.
 * `^neutral` is the box's own knot of that role, whatever device it ends on.
 */
export interface SideSpec {
	readonly name: string;
	/** How cores are left that go to no knot; capped unless said otherwise. */
	readonly leaves?: "loose";
	/** Set where this side carries another system than the thing's others: the battery side of an inverter. */
	readonly system?: System;
	readonly knots: Partial<Record<Role, string>>;
	/** Where a conductor that runs by itself goes; `role` where this side decides what it is for, else it is as on the run so far. */
	readonly lone?: { readonly knot: string; readonly role?: Role };
	/** Used instead when the cable carries a second hot. */
	readonly withSecondHot?: Partial<Record<Role, string>>;
	/** The same for a cable that carries a third hot. */
	readonly withThirdHot?: Partial<Record<Role, string>>;
}
/** The knots that a switch loop meets on a switch: with two contacts, with a common and travellers, or with travellers on both sides. */
export type LoopSpec =
	| { readonly sort: "plain"; readonly supply: string; readonly back: string }
	| { readonly sort: "end"; readonly common: string; readonly travellers: readonly [string, string] }
	| { readonly sort: "between"; readonly line: readonly [string, string]; readonly load: readonly [string, string] };
/** A way between two of its terminals; `^case` is the metal of the enclosure it sits in, where that is metal. */
export interface LinkSpec {
	readonly between: readonly [string, string];
	readonly nature: "solid" | "contact" | "bond";
	readonly contact?: { readonly group: string; readonly positions: number; readonly closed: readonly number[] };
	/** When it exists: while the named side is the live input, while inverting, or while the far supply is there. */
	readonly when?: When;
	readonly protects?: boolean;
}
/** A condition on the mode, in the thing's own terms. */
export type When = "input-live" | "inverting" | "source-live";
export interface LoadSpec {
	readonly between: readonly [string, string];
	readonly watts?: number;
	/** Volts it is made for; undefined for an outlet. */
	readonly volts?: number;
	readonly continuous: boolean;
	readonly outlet: boolean;
}
/** What sort of source: which of them make power themselves, and which have a supply behind them. */
export type SourceSort =
	| "shore"
	| "utility"
	| "generator"
	| "inverter"
	| "inverter-charger"
	| "battery"
	| "solar"
	| "other";
export interface SourceSpec {
	readonly sort: SourceSort;
	readonly system: System;
	readonly volts: number;
	readonly hot: readonly string[];
	readonly neutral?: string;
	readonly ground?: string;
	readonly limit?: number;
	readonly bonding: "supply" | "own" | "floating";
	/** It brings no ground with it: that begins where its neutral is bonded first, in the panel behind it. */
	readonly groundAtBond?: boolean;
	/** Its ground is an electrode of its own (TT): the earth between lets too little through to open a breaker. */
	readonly ownEarth?: boolean;
	/** The far supply's own breaker protects what it feeds, at `limit`. */
	readonly supplyProtects: boolean;
}
export interface ProtectionSpec {
	readonly rating?: number;
	readonly sort: "breaker" | "fuse";
	readonly poles: number;
}
export interface GroundFaultSpec {
	readonly line: GroundFaultPoles<string>;
	readonly load: GroundFaultPoles<string>;
	readonly ownOutlet: boolean;
	/** Milliamperes. */
	readonly trip: number;
	/** Opens late on purpose, so that a device behind it opens first: it protects no person by itself. */
	readonly selective?: boolean;
}
/** The conductors that a device compares on one of its sides. */
export interface GroundFaultPoles<At> {
	readonly hot: At;
	readonly hot2?: At;
	readonly neutral: At;
}
/** What a drawing or a list says of a thing, without knowing its kind. */
export interface PartFace {
	/** `15 A duplex`, `single-pole switch`, `20 A breaker`. */
	readonly text: string;
	/** Names of marks in the symbols room: as the hand finds it, and on the one-line. */
	readonly wiring: string;
	readonly oneLine: string;
	/** What it is to the rules: `receptacle`, `switch`, `light`; several where it is several. */
	readonly traits: readonly Trait[];
	/** Amperes of an outlet or a switch. */
	readonly rating?: number;
	/** Outlets on its face: 1 single, 2 duplex. */
	readonly outlets?: number;
	/** Its terminals go by their own names on a drawing, not by the letters of their roles. */
	readonly named?: boolean;
	/** What it takes of the room in its box, where that was said. */
	readonly room?: Quantity;
}
export type Trait =
	| "receptacle"
	| "ground-fault"
	| "switch"
	| "dimmer"
	| "light"
	| "fan"
	| "heater"
	| "disconnect"
	| "transfer"
	| "junction"
	| "load"
	| "starter"
	| "breaker"
	| "held-down"
	| "neutral-bar"
	| "ground-bar"
	| "hot-bus"
	| "panel"
	| "source";
