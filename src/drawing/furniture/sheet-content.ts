// What a sheet is composed of: the drawing itself and everything that is told around it.
import type { Level } from "../../base/finding.ts";
import type { Region } from "../../kinds/kind.ts";
import type { Group, Paint } from "../scene.ts";

/** A drawing and the furniture to go with it. */
export interface SheetContent {
	/** `wiring`, `one-line`; with a suffix where a plan needs several of one sort. */
	readonly name: string;
	/** What the sheet is: `Wiring diagram`. */
	readonly title: string;
	/** How to read it, in a few words. */
	readonly subtitle?: string;
	/** For a reader who does not see it: sources, panels and circuits in words. */
	readonly description: string;
	/** The plan's title. */
	readonly project: string;
	/** This sheet's number in its set, and how many there are. */
	readonly number: number;
	readonly of: number;
	/** Further fields of the title block: system, rules, the plan's file. */
	readonly facts: readonly Fact[];
	/** A paper size by name; empty for the smallest that holds the drawing. */
	readonly paper: string;
	readonly region: Region;
	/** The drawing, wherever it stands: it is moved into place, and scaled up where there is room. */
	readonly groups: readonly Group[];
	readonly legend: readonly LegendEntry[];
	readonly notes: readonly string[];
	readonly findings: readonly SheetFinding[];
	/** Cautions beyond the standing ones. */
	readonly caution?: readonly string[];
}

/** A field of the title block. An empty value leaves room for a hand to fill in. */
export interface Fact {
	readonly name: string;
	readonly value: string;
}

/** One line of the legend: what a colour, a mark or a bar on this sheet means. */
export interface LegendEntry {
	readonly sample:
		| { readonly kind: "conductor"; readonly colour: string }
		| { readonly kind: "symbol"; readonly symbol: string }
		| { readonly kind: "bar"; readonly paint: Paint };
	/** The letter code drawn at conductor ends; empty where there is none. */
	readonly code: string;
	readonly text: string;
}

/** A finding as the sheet lists it, under the number it has in the list of `check`. */
export interface SheetFinding {
	readonly number: number;
	readonly level: Level;
	readonly title: string;
	/** The builder's reason, where an `accept` line stands behind it. */
	readonly accepted?: string;
}
