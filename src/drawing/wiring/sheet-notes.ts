// Notes of a wiring sheet: how neutral and ground stand in each panel drawn, and where they meet in each mode.
import type { Circuit } from "../../circuit/circuit.ts";
import type { BoxContent } from "./box-content.ts";
import { barStates } from "./panel-bars.ts";
import { sortPanel } from "./panel-parts.ts";

/** The notes that follow from the circuit itself. */
export function wiringNotes(circuit: Circuit, contents: readonly BoxContent[]): string[] {
	return [...contents.flatMap(barNotes), ...bondNotes(circuit)];
}

function barNotes(content: BoxContent): string[] {
	if (content.enclosure.sort !== "panel") return [];
	const bars = sortPanel(content)?.bars ?? [];
	return barStates(content, bars).map(({ neutral, bonded }, index) => {
		const owner = bars[index]?.owner ?? content.enclosure.name;
		const behind = owner === content.enclosure.name ? "" : ` of ${owner}`;
		const bar = `${content.enclosure.name}: ${neutral ? "neutral" : "ground"} bar${behind}`;
		if (bonded) return `${bar} bonded to the case.`;
		return `${bar} ${neutral ? "isolated from the case" : "on a case that is not metal"}.`;
	});
}

function bondNotes(circuit: Circuit): string[] {
	return circuit.modes.map((mode) => {
		const places = circuit.links
			.filter(({ nature, modes }) => nature === "bond" && (modes === undefined || modes.has(mode.name)))
			.map(({ part }) => part);
		const where = places.length === 0 ? "nowhere" : `at ${[...new Set(places)].join(" and at ")}`;
		return `Mode ${mode.name}: neutral and ground meet ${where}.`;
	});
}
