// A one-line diagram before it has places: chains of steps from the sources down to the loads.
import type { Span } from "../../base/span.ts";
import type { Cable } from "../../circuit/circuit.ts";

/** What stands below one another on one line; a chain ends at a load, a bus or where it parts. */
export type Chain = readonly Step[];

export type Step = DeviceStep | CableStep | JointStep | PartingStep | FlagStep;

/** A device: on the line, beside it, or where the line ends. */
export interface DeviceStep {
	readonly kind: "device";
	readonly place: "start" | "through" | "tap" | "end";
	/** A mark of the symbols room. */
	readonly symbol: string;
	readonly label: Label;
	/** The devices it stands for: one, or several drawn together. */
	readonly parts: readonly string[];
	/** Names of the circuit that a finding may mark: parts and boxes. */
	readonly names: readonly string[];
	/** A line from a further source that leads into it. */
	readonly further?: Chain;
	readonly span: Span;
}
/** The line between two devices: one cable, or one each for devices that are drawn together. */
export interface CableStep {
	readonly kind: "cable";
	readonly cables: readonly Cable[];
	/** Set on the first cable of a circuit that no breaker's label tells to be roughed in. */
	readonly roughedIn?: boolean;
}
/** A box in which the line is only joined. */
export interface JointStep {
	readonly kind: "joint";
	readonly label: Label;
	readonly names: readonly string[];
	readonly span: Span;
}
/** Where one line becomes several: at a panel's bus, or at a joint. */
export interface PartingStep {
	readonly kind: "bus" | "split";
	readonly label: Label;
	readonly names: readonly string[];
	readonly branches: readonly Chain[];
	/** A line from a further source that leads into it. */
	readonly further?: Chain;
	readonly span?: Span;
}
/** A line that comes back to what is drawn elsewhere, or starts from nothing. */
export interface FlagStep {
	readonly kind: "flag";
	readonly place: "start" | "end";
	readonly text: string;
	/** The box that it comes back to. */
	readonly to?: string;
}

/** What is written beside a step. */
export interface Label {
	/** In bold: the name in the plan. */
	readonly name: string;
	readonly lines: readonly string[];
}
