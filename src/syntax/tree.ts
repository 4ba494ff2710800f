// The tree of a plan text: what each line says, typed, with the place of every word. Knows statements, not devices.
import type { Gauge } from "../base/gauge.ts";
import type { Quantity } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";

/** A whole text. Statements stand in the order of their lines. */
export interface Tree {
	readonly file: string;
	readonly statements: readonly Statement[];
	/** Names that stand on lines that were not understood: they may be declared there, so nobody should call them unknown. */
	readonly doubtful?: readonly string[];
}

// ---- terms: the words of a line ----

/**
 * A name with the dots that lead inside it: `b1`, `LC.1A`, `g1.load.hot`, `house.+`, `black(2)`, `bunks-1@LC`.
 * A plain word is a name without steps.
 */
export interface NameTerm {
	readonly kind: "name";
	readonly head: string;
	readonly steps: readonly string[];
	/** The 2 of `black(2)`: which of several alike, counted from 1. */
	readonly nth?: number;
	/** The `LC` of `bunks-1@LC`: which end of a cable, by the thing it ends at. */
	readonly end?: string;
	/** As it was written. */
	readonly text: string;
	readonly span: Span;
}
/** Quoted text, without its quotes. */
export interface TextTerm {
	readonly kind: "text";
	readonly text: string;
	readonly span: Span;
}
/** A figure with its unit, or several that add up: `30 A`, `4 ft 6 in`. */
export interface QuantityTerm {
	readonly kind: "quantity";
	readonly quantity: Quantity;
	readonly text: string;
	readonly span: Span;
}
/** A bare number: `3`, `0.8`. */
export interface NumberTerm {
	readonly kind: "number";
	readonly value: number;
	readonly text: string;
	readonly span: Span;
}
/** A conductor size: `#12`, `12 AWG`, `4/0`, `2.5 mm2`. */
export interface GaugeTerm {
	readonly kind: "gauge";
	readonly gauge: Gauge;
	readonly text: string;
	readonly span: Span;
}
/** Two figures of one dimension with a slash between: `12 V / 120 V`. */
export interface PairTerm {
	readonly kind: "pair";
	readonly first: QuantityTerm;
	readonly second: QuantityTerm;
	readonly span: Span;
}
/** The trade's word for a cable make-up: `12-2`, `10-3`, `3G2.5`, `2x1.5`. */
export interface MakeUpTerm {
	readonly kind: "make-up";
	readonly text: string;
	readonly span: Span;
}
/** `?`: said to be unknown; with a unit behind it, that of what is unknown. */
export interface UnknownTerm {
	readonly kind: "unknown";
	readonly unit?: string;
	readonly span: Span;
}
/** `+` or `-` standing alone. */
export interface SignTerm {
	readonly kind: "sign";
	readonly text: "+" | "-";
	readonly span: Span;
}
export type Term =
	| NameTerm
	| TextTerm
	| QuantityTerm
	| NumberTerm
	| GaugeTerm
	| PairTerm
	| MakeUpTerm
	| UnknownTerm
	| SignTerm;

/** One name, or a row of alike names `l1..l6`. */
export interface NewName {
	readonly first: NameTerm;
	/** The last of a row; undefined for a single name. */
	readonly last?: NameTerm;
	readonly span: Span;
}

// ---- statements ----

/** `plan "Title" notation 1` and its indented settings. */
export interface PlanStatement {
	readonly kind: "plan";
	readonly title?: TextTerm;
	/** Terms behind the title, such as `notation 1`. */
	readonly terms: readonly Term[];
	readonly settings: readonly Setting[];
	readonly span: Span;
}
/** One indented line of a `plan`, `cable` or `part`: its first word, then terms. */
export interface Setting {
	readonly key: NameTerm;
	readonly terms: readonly Term[];
	readonly span: Span;
}
/** `place porch "Porch" outdoor`. */
export interface PlaceStatement {
	readonly kind: "place";
	readonly name: NameTerm;
	readonly label?: TextTerm;
	readonly terms: readonly Term[];
	readonly span: Span;
}
/** `panel LC "Load centre" main 30 A from shore by 10-2, 12 ft` with indented members: anything declared by its kind. */
export interface ThingStatement {
	readonly kind: "thing";
	readonly type: NameTerm;
	readonly name: NewName;
	readonly label?: TextTerm;
	readonly terms: readonly Term[];
	/** The `from X by CABLE, LENGTH` at its end: short for a chain of one hop. */
	readonly supply?: Supply;
	readonly members: readonly Member[];
	readonly span: Span;
}
/** Where a run comes from, by which cable, how far. */
export interface Supply {
	/** The `from` names; several poles run together: `from plus, minus`. */
	readonly from: readonly NameTerm[];
	/** The cable: make-up, gauge, count, colours and names behind `by`; empty when none was said. */
	readonly cable: readonly Term[];
	readonly length?: QuantityTerm | UnknownTerm;
	readonly span: Span;
}
/**
 * A part of a thing, indented below it: `slot 1A: breaker 20 A`, `r1: receptacle`, `neutral: bar 8`.
 * A line of a thing that names no part of its own (`bonding screw`) has a type and no name.
 */
export interface Member {
	readonly kind: "member";
	/** The word before the name: `slot`; undefined where a plain name stands. */
	readonly role?: NameTerm;
	readonly name?: NewName;
	readonly type: NameTerm;
	readonly label?: TextTerm;
	readonly terms: readonly Term[];
	readonly members: readonly Member[];
	readonly span: Span;
}
/** `circuit`, `feed` or `bond`: a chain of hops that starts `from` something and goes `by` a cable. */
export interface RunStatement {
	readonly kind: "run";
	readonly sort: "circuit" | "feed" | "bond";
	readonly name: NameTerm;
	readonly label?: TextTerm;
	readonly from: readonly NameTerm[];
	/** Between the `from` name and `by`: the protective device of `from LC breaker 20 A`, and words on the run (`roughed in`). */
	readonly terms: readonly Term[];
	readonly cable: readonly Term[];
	readonly links: readonly Link[];
	readonly span: Span;
}
/** A line of a chain. */
export type Link = HopStatement | BranchStatement;
/** `[LENGTH] [as TAG] [by CABLE] ... to NAME: KIND attributes`, or `via`, `bolted to`, `within LENGTH to`. */
export interface HopStatement {
	readonly kind: "hop";
	readonly manner: "to" | "via" | "bolted" | "within";
	readonly length?: QuantityTerm | UnknownTerm;
	/** A row of tags for a hop to a row of things. */
	readonly tag?: NewName;
	/** The cable from this hop on; empty when it stays the same. */
	readonly cable: readonly Term[];
	/** `2 ft through engine-bay`. */
	readonly through: readonly { readonly length?: QuantityTerm; readonly place: NameTerm; readonly span: Span }[];
	/** `white marked red at both ends`; `at` names one end, undefined is both. */
	readonly markings: readonly Marking[];
	/** Other words left of `to`, for a run's own attributes. */
	readonly terms: readonly Term[];
	readonly name: NewName;
	/** The kind of what is arrived at; undefined for a thing declared elsewhere. */
	readonly type?: NameTerm;
	readonly label?: TextTerm;
	readonly attributes: readonly Term[];
	/** Devices of the box that is arrived at. */
	readonly members: readonly Member[];
	readonly span: Span;
}
/** A core of one colour re-marked with another. */
export interface Marking {
	readonly core: NameTerm;
	readonly colour: NameTerm;
	/** Undefined: at both ends. */
	readonly at?: NameTerm;
	readonly span: Span;
}
/** `from g2` or `from g3.line` inside a chain, and the links below it. */
export interface BranchStatement {
	readonly kind: "branch";
	readonly from: readonly NameTerm[];
	/** A new cable for the branch: `from g2 by 14-2`; empty when it stays the same. */
	readonly cable: readonly Term[];
	readonly links: readonly Link[];
	readonly span: Span;
}
/** `at g1` and its landings: the wiring in a box as built. */
export interface AtStatement {
	readonly kind: "at";
	readonly box: NameTerm;
	readonly landings: readonly Landing[];
	readonly span: Span;
}
export type Landing =
	/** `bunks-1.black fork on b1.hot`; several cores put under one terminal. */
	| {
			readonly kind: "land";
			readonly cores: readonly NameTerm[];
			readonly termination?: NameTerm;
			readonly on: NameTerm;
			readonly span: Span;
	  }
	/** `join A, B fork, (C D) by lever 3`: each member is one port; a group shares a port. */
	| {
			readonly kind: "join";
			readonly members: readonly (readonly NameTerm[])[];
			/** How the ends of members are made up, where that is said. */
			readonly terminations: readonly { readonly of: NameTerm; readonly termination: NameTerm }[];
			readonly connector: readonly Term[];
			readonly span: Span;
	  }
	/** `link b1.hot, b2.hot by 12 AWG black`: a jumper. */
	| {
			readonly kind: "link";
			readonly between: readonly NameTerm[];
			readonly cable: readonly Term[];
			readonly span: Span;
	  }
	/** `bunks-2.red capped`, `bunks-2.red loose`. */
	| {
			readonly kind: "free";
			readonly core: NameTerm;
			readonly state: "loose" | "capped";
			readonly span: Span;
	  };
/** `mode storm: gen, inv without shore with wh TS at off`. */
export interface ModeStatement {
	readonly kind: "mode";
	readonly name: NameTerm;
	readonly sources: readonly NameTerm[];
	readonly without: readonly NameTerm[];
	readonly with: readonly NameTerm[];
	readonly positions: readonly { readonly thing: NameTerm; readonly position: NameTerm; readonly span: Span }[];
	readonly span: Span;
}
/** `cable NAME` or `part NAME` with lines of its own; `terms` stand on its first line. */
export interface DefinitionStatement {
	readonly kind: "definition";
	readonly sort: "cable" | "part";
	readonly name: NameTerm;
	readonly label?: TextTerm;
	readonly terms: readonly Term[];
	readonly lines: readonly Setting[];
	readonly span: Span;
}
/** `use "common.ferrule"`. */
export interface UseStatement {
	readonly kind: "use";
	readonly path: TextTerm;
	readonly span: Span;
}
/** `accept bond-doubled at LC because "..."`. */
export interface AcceptStatement {
	readonly kind: "accept";
	readonly rule: NameTerm;
	readonly at?: NameTerm;
	readonly because?: TextTerm;
	readonly span: Span;
}
/** `reading NAME ...`: what a meter showed. */
export interface ReadingStatement {
	readonly kind: "reading";
	readonly name: NameTerm;
	readonly terms: readonly Term[];
	readonly span: Span;
}
/** A line that could not be understood; its finding is in the list that comes with the tree. */
export interface BrokenStatement {
	readonly kind: "broken";
	readonly text: string;
	readonly span: Span;
}

export type Statement =
	| PlanStatement
	| PlaceStatement
	| ThingStatement
	| RunStatement
	| AtStatement
	| ModeStatement
	| DefinitionStatement
	| UseStatement
	| AcceptStatement
	| ReadingStatement
	| BrokenStatement;
