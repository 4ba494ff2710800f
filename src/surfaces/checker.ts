// What surfaces ask of the pipeline, and nothing more, so that tests can put anything in its place.

import type { LineEdit, NumberedFinding } from "../base/finding.ts";
import type { SheetChoice } from "../drawing/sheet-set.ts";
import type { FigureAnswer, FigureWish, SizeAnswer, Working } from "../figures/index.ts";
import type { CableFigure, Carried, ModeFigures } from "../figures/mode-figures.ts";
import type { CircuitSize, SizeTried } from "../figures/sizing.ts";
import type { SourceFlow, Unsettled } from "../figures/steady-state.ts";
import type { Provenance } from "../handbook/provenance.ts";
import type { HandbookTable, PlainValue } from "../handbook/table.ts";
import type { JudgedMistake } from "../mistakes/mistake.ts";
import { Counter, type Tally } from "../mistakes/tally.ts";
import type { CheckScope, RepairBudget, TidiedPlan, TidyWish } from "../pipeline.ts";
import type { FindSource } from "../syntax/sources.ts";
import type { Root } from "./files/used.ts";

/** A checked plan: what was found, and what can be made of it. */
export interface CheckedPlan {
	readonly findings: readonly NumberedFinding[];
	/** False where so little was understood that there is nothing to draw or show. */
	readonly understood: boolean;
	/** The texts that the plan uses, by the names of their files in findings. */
	readonly used: ReadonlyMap<string, string>;
	readonly scope: CheckScope;
	readonly draw: (sheets: SheetChoice) => Promise<readonly Sheet[]>;
	readonly show: () => Shown;
	/** What flows and what is lost in it, or why that cannot be told. */
	readonly figures: (wish: FigureWish) => Promise<FigureAnswer>;
	/** What size its circuits need, or the one that is named. */
	readonly sizes: (circuit: string | undefined) => Promise<SizeAnswer>;
	/** The lines to write that put findings right, by the keys of these, where that is certain. */
	readonly repairs: (budget: RepairBudget) => Promise<ReadonlyMap<string, readonly LineEdit[]>>;
	/** The text of the plan with everything said that was inferred. */
	readonly writeOut: () => Promise<string>;
	/** Every single slip of a hand in it, each judged when it is asked for. */
	readonly makeMistakes: () => Promise<Iterable<JudgedMistake>>;
}

/** What of a checked plan is plain data. */
export type CheckedFacts = Pick<CheckedPlan, "findings" | "understood" | "used" | "scope">;

/** A text to be checked, with what it takes to find the files that it uses. */
export interface PlanText {
	readonly text: string;
	readonly name: string;
	/** Undefined for standard input. */
	readonly path: string | undefined;
	readonly roots: readonly [Root, ...Root[]];
}

/** Checks a text that was read under a name; `find` finds the files that it uses. Never throws, whatever the text. */
export type CheckPlan = (text: string, file: string, find: FindSource) => CheckedPlan;

/** Lays a text out as all plans are, saying the same. Never throws, whatever the text. */
export type TidyPlan = (text: string, file: string, wish: TidyWish) => Promise<TidiedPlan>;

/** The sheets that can be asked for; the first is what is meant where nothing is said. */
export const sheetChoices = ["all", "wiring", "direct-current", "one-line"] as const satisfies readonly SheetChoice[];
export type {
	CableFigure,
	Carried,
	CheckScope,
	CircuitSize,
	FigureAnswer,
	FigureWish,
	HandbookTable,
	JudgedMistake,
	ModeFigures,
	PlainValue,
	Provenance,
	RepairBudget,
	SheetChoice,
	SizeTried,
	SourceFlow,
	Tally,
	TidiedPlan,
	Unsettled,
	Working,
};
export { Counter };

/** A drawn sheet. The name tells it from the others of its plan: `wiring`, `direct-current`, `one-line`. */
export interface Sheet {
	readonly name: string;
	readonly svg: string;
}

/** The circuit as it is wired: box by box for a reader, in a line for each box, and as data. */
export interface Shown {
	readonly text: string;
	readonly short: string;
	readonly json: unknown;
}
