// What is asked of figures besides the plan itself: amperes drawn somewhere, a cable of another length. Read from words, or refused.
import { didYouMean } from "../base/nearest.ts";
import { type Dimension, findUnit, type Quantity, quantity } from "../base/quantity.ts";
import type { Circuit } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";

/** Amperes by part, and metres by cable tag. */
export interface Changes {
	readonly plugged: ReadonlyMap<string, number>;
	readonly lengths: ReadonlyMap<string, number>;
}

/** Reads `b2=12 A` and `bunks-2=40 ft`, several with commas between; a text says what is wrong with them. */
export function readChanges(
	circuit: Circuit,
	draws: string | undefined,
	lengths: string | undefined,
): Changes | string {
	const outlets = new Map(circuit.loads.map(({ part }) => [foldName(part), part]));
	const cables = new Map(circuit.cables.map(({ tag }) => [foldName(tag), tag]));
	const plugged = readPairs(draws, outlets, "current", "12 A", "no load or outlet");
	if (typeof plugged === "string") return plugged;
	const changed = readPairs(lengths, cables, "length", "40 ft", "no cable");
	return typeof changed === "string" ? changed : { plugged, lengths: changed };
}

/** A circuit with cables of other lengths. */
export function withLengths(circuit: Circuit, lengths: Changes["lengths"]): Circuit {
	if (lengths.size === 0) return circuit;
	const cables = circuit.cables.map((cable) => {
		const length = lengths.get(cable.tag);
		return length === undefined ? cable : { ...cable, length };
	});
	return {
		...circuit,
		cables,
		cableByTag: new Map(cables.map((cable) => [cable.tag, cable])),
		conductors: circuit.conductors.map((conductor) => {
			const length = conductor.cable === undefined ? undefined : lengths.get(conductor.cable);
			return length === undefined ? conductor : { ...conductor, length };
		}),
	};
}

function readPairs(
	text: string | undefined,
	names: ReadonlyMap<string, string>,
	dimension: Dimension,
	example: string,
	missing: string,
): ReadonlyMap<string, number> | string {
	const read = new Map<string, number>();
	for (const pair of text === undefined ? [] : text.split(",")) {
		const [word = "", figure = "", ...more] = pair.split("=").map((piece) => piece.trim());
		const value = more.length > 0 ? undefined : readQuantity(figure, dimension);
		if (value === undefined) return `\`${pair.trim()}\` is not understood; write \`NAME=${example}\`.`;
		const name = names.get(foldName(word));
		if (name === undefined) return `There is ${missing} \`${word}\`. ${didYouMean(word, [...names.values()])}`.trim();
		read.set(name, value.value);
	}
	return read;
}

function readQuantity(text: string, dimension: Dimension): Quantity | undefined {
	const [, figure = "", spelling = ""] = /^(\d{1,7}(?:\.\d{1,6})?) ?([A-Za-z]+)$/.exec(text) ?? [];
	const unit = findUnit(spelling);
	return figure === "" || unit?.dimension !== dimension ? undefined : quantity(Number(figure), unit);
}
