// What part a kind can play in a plan, read off what it says of itself: its example, its terminals, sides, links and loads.
import { certain } from "../../src/base/certain.ts";
import { kinds } from "../../src/kinds/index.ts";
import type { Blueprint, Kind } from "../../src/kinds/kind.ts";
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
	| "end";

/** The kinds that can play a part, in the order of their list. */
export function kindsFor(part: Part): readonly Kind[] {
	return certain(kindsByPart.get(part), `a kind for ${part}`);
}

/** The part that a kind plays on the mains side; undefined for one that no generated plan knows what to do with. */
export function partOf(kind: Kind): Part | undefined {
	if (kind.system === "dc") return undefined;
	const blueprint = blueprintOf(kind);
	const traits = new Set(blueprint.face.traits);
	if (blueprint.source !== undefined) return blueprint.source.system === "ac" ? "source" : undefined;
	// What has a coil, a battery side or another end of direct current has no place on the mains side alone.
	if (blueprint.terminals.some(({ role }) => role === "positive" || role === "negative")) return undefined;
	if (traits.has("source")) return undefined;
	if (traits.has("panel")) return "board";
	if (traits.has("neutral-bar")) return "neutral bar";
	if (traits.has("ground-bar")) return kind.stands.includes("panel") ? "ground bar" : undefined;
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
	if (blueprint.terminals.length > 0) return undefined;
	return blueprint.enclosure?.sort === "open" ? "end" : "box";
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
