// Parts of a circuit as device steps of a one-line diagram: symbol, label, and the names that findings know them by.
import type { Circuit, Part } from "../../circuit/circuit.ts";
import { breakerLabel, oneLineSymbolOf, partLabel, sourceLabel } from "./labels.ts";
import type { DeviceStep } from "./steps.ts";

/** A device on, beside or at the end of its line. */
export function deviceStep(circuit: Circuit, part: Part, place: DeviceStep["place"]): DeviceStep {
	const isBreaker = part.face.traits.includes("breaker");
	const ownsBox = part.enclosure.name !== part.name && part.owner === undefined;
	return {
		kind: "device",
		place,
		symbol: oneLineSymbolOf(part, circuit.plan.settings.region),
		parts: [part.name],
		label: isBreaker ? breakerLabel(part, circuit) : partLabel(part),
		names: ownsBox ? [part.name, part.enclosure.name] : [part.name],
		span: part.span,
	};
}

/** A source: it starts a line, or is passed on the way when another feeds it. */
export function sourceStep(circuit: Circuit, part: Part, place: "start" | "through"): DeviceStep {
	const source = circuit.sources.find((candidate) => candidate.part === part.name);
	return {
		kind: "device",
		place,
		symbol: oneLineSymbolOf(part, circuit.plan.settings.region),
		parts: [part.name],
		label: source === undefined ? partLabel(part) : sourceLabel(part, source),
		names: [part.name, part.enclosure.name],
		span: part.span,
	};
}

/** What stands where a line ends behind a device: a breaker says it is spare, a ground-fault receptacle has its own outlets. */
export function endSteps(circuit: Circuit, part: Part, step: DeviceStep): DeviceStep[] {
	const { traits } = part.face;
	if (traits.includes("breaker")) return [{ ...step, label: { ...step.label, lines: [...step.label.lines, "spare"] } }];
	if (!traits.includes("receptacle")) return [step];
	const outlet = { ...part, face: { ...part.face, oneLine: "receptacle", traits: ["receptacle"] as const } };
	const symbol = oneLineSymbolOf(outlet, circuit.plan.settings.region);
	return [step, { ...step, place: "end", symbol, label: { name: "", lines: [] }, names: [] }];
}

/** Whether a part is a bar or a bus inside a panel, which a one-line diagram does not show. */
export function isBar({ face: { traits, oneLine } }: Part): boolean {
	if (oneLine === "bus") return false;
	if (traits.includes("neutral-bar") || traits.includes("ground-bar")) return true;
	return traits.includes("hot-bus") && !traits.includes("panel");
}
