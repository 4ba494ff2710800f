// Breakers that are bracketed together: half-size ones that share a space, slots of one number with a letter behind it, and tied handles.
import type { Circuit, Part } from "../../circuit/circuit.ts";
import type { PanelWork, Plate } from "./box-plan.ts";
import { slotName } from "./panel-parts.ts";

/** A bracket around each space that holds more than one breaker, and around breakers that stand together with their handles tied. */
export function bracketBreakers(
	circuit: Circuit,
	poles: readonly Part[],
	plates: readonly Plate[],
): PanelWork["brackets"] {
	const tandems = bracketAlike(poles, plates, spaceOf, "tandem");
	const tied = bracketAlike(poles, plates, (part) => handleOf(circuit, part), "tied");
	if (tandems.length === 0 || tied.length === 0) return [...tandems, ...tied];
	// Both around the same breakers are one bracket that says both.
	const isAround = ({ box }: Bracket, { box: other }: Bracket): boolean =>
		box.y === other.y && box.height === other.height;
	return [
		...tandems.map((bracket) =>
			tied.some((other) => isAround(bracket, other)) ? { ...bracket, text: `${bracket.text}, tied` } : bracket,
		),
		...tied.filter((bracket) => !tandems.some((other) => isAround(bracket, other))),
	];
}

type Bracket = PanelWork["brackets"][number];

function bracketAlike(
	poles: readonly Part[],
	plates: readonly Plate[],
	keyOf: (part: Part) => string | undefined,
	text: string,
): PanelWork["brackets"] {
	const brackets: Bracket[] = [];
	const keys = poles.map(keyOf);
	for (let first = 0; first < poles.length; first++) {
		let last = first;
		while (keys[first] !== undefined && keys[last + 1] === keys[first]) last++;
		const [upper, lower] = [plates[first], plates[last]];
		if (last > first && upper !== undefined && lower !== undefined) {
			const box = {
				x: upper.box.x - reach,
				y: upper.box.y - reach,
				width: upper.box.width + 2 * reach,
				height: lower.box.y + lower.box.height - upper.box.y + 2 * reach,
			};
			const gap = (upper.box.y + upper.box.height + (plates[first + 1]?.box.y ?? 0)) / 2;
			brackets.push({ box, text, at: { x: upper.box.x + upper.box.width / 2, y: gap + 4 } });
		}
		first = last;
	}
	return brackets;
}

/** The space of a half-size breaker's slot: `1` of `1A`; undefined for a whole one's. */
function spaceOf(part: Part): string | undefined {
	return /^(\d+)[A-Za-z]$/.exec(slotName(part))?.[1];
}

/** The group of contacts that a breaker's own move with: named after the first of those whose handles are tied. */
export function handleOf({ links, protections }: Circuit, part: Part): string | undefined {
	const own = protections.find((protection) => protection.part === part.name);
	return links[own?.links[0] ?? -1]?.contact?.group;
}

const reach = 7;
