// Notes of a wiring sheet: how neutral and ground stand in each panel drawn, and where they meet in each mode.
import type { Analysis } from "../../analysis/analysis.ts";
import { groupBy } from "../../base/group.ts";
import { listNames } from "../../base/wording.ts";
import type { BoxContent } from "./box-content.ts";
import { areBridged, barStates, strapsOf } from "./panel-bars.ts";
import { slotName, sortPanel } from "./panel-parts.ts";
import { handleOf } from "./panel-tandems.ts";

/** The notes that follow from the circuit itself. */
export function wiringNotes(analysis: Analysis, contents: readonly BoxContent[]): string[] {
	return [...contents.flatMap(barNotes), ...contents.flatMap(panelNotes), ...bondNotes(analysis)];
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

/** What a panel's breakers and bars are besides what stands on them: tied, held down, bridged, strapped. */
function panelNotes(content: BoxContent): string[] {
	if (content.enclosure.sort !== "panel") return [];
	const { name } = content.enclosure;
	const parts = sortPanel(content);
	const poles = parts?.poles ?? [];
	const tied = [...groupBy(poles, (pole) => handleOf(content.circuit, pole) ?? pole.name).values()];
	const bars = parts?.bars ?? [];
	const straps = strapsOf(content, bars);
	const strapped = bars.filter((bar) => straps.has(bar));
	const bus = parts?.bus;
	return [
		...tied.flatMap((group) =>
			group.length > 1 ? [`${name}: the handles of ${listNames(group.map(slotName))} are tied.`] : [],
		),
		...poles
			.filter(({ face }) => face.traits.includes("held-down"))
			.map((pole) => `${name}: ${slotName(pole)} is held down.`),
		...(bus !== undefined && areBridged(content, bus) ? [`${name}: both legs are bridged.`] : []),
		...(strapped.length > 1 ? [`${name}: ${listNames(strapped.map((bar) => bar.name))} are strapped together.`] : []),
	];
}

function bondNotes({ states }: Analysis): string[] {
	return states.map(({ mode, bonds }) => {
		const places = new Set(bonds.flatMap((island) => island.bonds.map(({ part }) => part)));
		const where = places.size === 0 ? "nowhere" : `at ${[...places].join(" and at ")}`;
		return `Mode ${mode.name}: neutral and ground meet ${where}.`;
	});
}
