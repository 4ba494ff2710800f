// A graph for the layout engine, and what comes back, without a word of the engine's own.
import type { Box } from "../bounds.ts";
import type { XY } from "../scene.ts";

/** Boxes, their ports and the ways between them. Options are the engine's, by their names. */
export interface EngineGraph {
	readonly options: Readonly<Record<string, string>>;
	readonly nodes: readonly EngineNode[];
	readonly edges: readonly EngineEdge[];
}
export interface EngineNode {
	readonly width: number;
	readonly height: number;
	readonly options: Readonly<Record<string, string>>;
	/** Measured from the upper left corner; the engine may move those of a node that leaves their order to it. */
	readonly ports: readonly { readonly side: "left" | "right"; readonly at: XY }[];
}
/** From port to port, each by the places of its node and itself in their lists. */
export interface EngineEdge {
	readonly from: EngineEnd;
	readonly to: EngineEnd;
	/** Room to keep free around the middle of the way. */
	readonly label?: { readonly width: number; readonly height: number };
}
export interface EngineEnd {
	readonly node: number;
	readonly port: number;
}

/** Where everything stands, in the order of the graph. */
export interface EngineLayout {
	readonly nodes: readonly (XY & { readonly ports: readonly XY[] })[];
	/** Where each way turns, without its ends, and the room of its label. */
	readonly edges: readonly { readonly bends: readonly XY[]; readonly label?: Box }[];
}
