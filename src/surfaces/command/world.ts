// All that the command touches of the machine and of the rest of Ferrule, handed in so that a test can put its own in place.
import type { CheckedFacts, CheckPlan, HandbookTable, PlanText, TidyPlan } from "../checker.ts";
import type { Reading } from "../files/read.ts";
import type { Writer } from "../files/replace.ts";
import type { FileSystem } from "../files/system.ts";
import type { Page } from "../reference/page.ts";

/** The machine, as far as a verb may see it. */
export interface World {
	readonly version: string;
	readonly checkPlan: CheckPlan;
	/** Checks texts in several threads, and gives what was found in their order; undefined when the user interrupted. */
	readonly checkInThreads: (
		texts: readonly PlanText[],
		threads: number,
	) => Promise<readonly CheckedFacts[] | undefined>;
	/** How many threads can run at once. */
	readonly processors: () => number;
	readonly tidyPlan: TidyPlan;
	/** What `explain` knows. */
	readonly pages: () => readonly Page[];
	/** Every table of the handbook. */
	readonly handbook: () => Promise<readonly HandbookTable[]>;
	readonly files: FileSystem;
	readonly writer: Writer;
	/** The folder that names are relative to. */
	readonly folder: string;
	readonly environment: (name: string) => string | undefined;
	/** Results. */
	readonly output: Stream;
	/** Everything else that is said. */
	readonly messages: Stream;
	/** All of standard input, up to a limit of bytes. */
	readonly readInput: (limit: number) => Promise<Reading>;
	/** Lets signals arrive; true when the user wants to stop. */
	readonly interrupted: () => Promise<boolean>;
}

/** Where text goes. */
export interface Stream {
	readonly write: (text: string) => void;
	/** Columns of the terminal it leads to; undefined where it leads elsewhere. */
	readonly columns: number | undefined;
}
