// What part a kind can play in a plan, read off what it says of itself: its example, its terminals, sides, links and loads.
import { certain } from "../../src/base/certain.ts";
import { kinds } from "../../src/kinds/index.ts";
import type { Blueprint, Kind, SourceSpec } from "../../src/kinds/kind.ts";
import { checkPlan } from "../../src/pipeline.ts";

/** A part in a plan. */
export type Part =
	| "source"
	| "board"
	| "breaker"
	| "ground-fault breaker"
	| "ground-fault head"
	| "neutral bar"
	| "ground bar"
	| "outlet"
	| "ground-fault outlet"
	| "load"
	| "transfer"
	| "switch"
	| "dimmer"
	| "disconnect"
	| "box"
	| "end"
	| "isolator"
	| DirectPart;
/** A part on the side of direct current. */
export type DirectPart =
	| "battery"
	| "solar module"
	| "alternator"
	| "charger"
	| "converter"
	| "solar controller"
	| "fuse"
	| "fuse block"
	| "negative bar"
	| "bus"
	| "shunt"
	| "relay"
	| "starter"
	| "direct load"
	| "earth"
	| "joint";

/** The kinds that can play a part, in the order of their list. */
export function kindsFor(part: Part): readonly Kind[] {
	return certain(kindsByPart.get(part), `a kind for ${part}`);
}

/** The part that a kind plays; undefined for one that no generated plan knows what to do with. */
export function partOf(kind: Kind): Part | undefined {
	const blueprint = blueprintOf(kind);
	if (blueprint.joint !== undefined) return "joint";
	if (blueprint.source?.system === "ac") return "source";
	if (blueprint.source !== undefined) return directSource(blueprint, blueprint.source);
	const direct = directPart(kind, blueprint);
	if (direct !== undefined) return direct;
	const traits = new Set(blueprint.face.traits);
	if (traits.has("panel")) return "board";
	if (traits.has("neutral-bar")) return "neutral bar";
	if (traits.has("ground-bar")) return kind.stands.includes("panel") ? "ground bar" : "earth";
	if (blueprint.heads === true) return "ground-fault head";
	if (traits.has("breaker")) return blueprint.groundFault === undefined ? "breaker" : "ground-fault breaker";
	if (traits.has("ground-fault")) return "ground-fault outlet";
	if (blueprint.loads !== undefined) return blueprint.loads.some(({ outlet }) => outlet) ? "outlet" : "load";
	if (blueprint.transfer !== undefined) return "transfer";
	// What goes on from elsewhere than from its load side is no switch of the common sort.
	if (!blueprint.sides.every(({ name }) => name === "line" || name === "load" || blueprint.terminals.length === 0))
		return undefined;
	if (traits.has("dimmer")) return "dimmer";
	if (traits.has("switch")) return "switch";
	if (traits.has("disconnect")) return "disconnect";
	if (blueprint.terminals.every(({ role }) => role === "ground") && blueprint.terminals.length > 0) return "isolator";
	if (blueprint.terminals.length > 0) return undefined;
	return blueprint.enclosure?.sort === "open" ? "end" : "box";
}

/** What gives direct current: by itself, from the mains, from the sun, or from direct current of another voltage. */
function directSource({ terminals, loads = [] }: Blueprint, { sort }: SourceSpec): DirectPart {
	if (sort === "battery") return "battery";
	if (sort === "solar") return "solar module";
	if (terminals.some(({ role }) => role === "hot")) return "charger";
	const [taken] = loads;
	if (taken === undefined) return "alternator";
	return taken.volts === undefined ? "solar controller" : "converter";
}

/** The part of what has a place on direct current only, or has a coil that may be on it. */
function directPart(
	{ system }: Kind,
	{ terminals, links = [], loads, protection, face }: Blueprint,
): DirectPart | undefined {
	const traits = new Set(face.traits);
	if (terminals.some(({ name }) => name === "A1")) return "relay";
	if (system !== "dc") return undefined;
	if (traits.has("panel")) return "fuse block";
	if (traits.has("neutral-bar")) return "negative bar";
	if (traits.has("hot-bus")) return "bus";
	if (traits.has("starter")) return "starter";
	if (protection !== undefined) return "fuse";
	if (loads !== undefined) return "direct load";
	return links.some(({ nature }) => nature === "solid") ? "shunt" : undefined;
}

/** A kind as it is built in its own example. */
export function blueprintOf(kind: Kind): Blueprint {
	return certain(blueprints.get(kind), `${kind.name} in its example`);
}

const blueprints = new Map(
	kinds.flatMap((kind) => {
		const { plan } = checkPlan(kind.example, "plan").analysis.circuit;
		return plan.things.filter((thing) => thing.kind === kind).map((thing) => [kind, thing.blueprint] as const);
	}),
);
const kindsByPart = new Map<Part, Kind[]>();
for (const kind of kinds) {
	const part = partOf(kind);
	if (part !== undefined) kindsByPart.set(part, [...(kindsByPart.get(part) ?? []), kind]);
}
