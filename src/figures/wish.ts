// What is asked of figures besides the plan itself: amperes drawn somewhere, a cable of another length. Read from words, or refused.
import { didYouMean } from "../base/nearest.ts";
import { type Dimension, findUnit, type Quantity, quantity } from "../base/quantity.ts";
import type { Circuit } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";

/** What is said of changes, each as it was written; several stand with commas between. */
export interface SaidChanges {
	/** `b2=12 A`: drawn there besides all else. */
	readonly draws?: string | undefined;
	/** `bunks-2=40 ft`: as if the cable were so long. */
	readonly lengths?: string | undefined;
	/** `kettle, heater`: only these run. */
	readonly on?: string | undefined;
	/** `shore=15 A`: as if the source gave so much. */
	readonly limits?: string | undefined;
}
/** Amperes by part and by source, metres by cable tag, and the parts that run. */
export interface Changes {
	readonly plugged: ReadonlyMap<string, number>;
	readonly lengths: ReadonlyMap<string, number>;
	readonly running: ReadonlySet<string> | undefined;
	readonly limits: ReadonlyMap<string, number>;
}

/** Reads changes against the things of a circuit; a text says what is wrong with them. */
export function readChanges(circuit: Circuit, { draws, lengths, on, limits }: SaidChanges): Changes | string {
	const outlets = new Map(circuit.loads.map(({ part }) => [foldName(part), part]));
	const cables = new Map(circuit.cables.map(({ tag }) => [foldName(tag), tag]));
	const plugged = readPairs(draws, outlets, "current", "12 A", "no load or outlet");
	if (typeof plugged === "string") return plugged;
	const changed = readPairs(lengths, cables, "length", "40 ft", "no cable");
	if (typeof changed === "string") return changed;
	const sources = new Map(circuit.sources.map(({ name }) => [foldName(name), name]));
	const limited = readPairs(limits, sources, "current", "15 A", "no source");
	if (typeof limited === "string") return limited;
	const running = on === undefined ? undefined : new Set<string>();
	for (const word of on === undefined ? [] : on.split(",").map((piece) => piece.trim())) {
		const name = outlets.get(foldName(word));
		if (name === undefined)
			return `There is no load or outlet \`${word}\`. ${didYouMean(word, [...outlets.values()])}`.trim();
		running?.add(name);
	}
	return { plugged, lengths: changed, running, limits: limited };
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
