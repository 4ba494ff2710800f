// Whatever a plan text says, its circuit holds together: no name or number in it leads nowhere, and the same text gives the same.
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { analyse } from "../../src/analysis/analysis.ts";
import type { Circuit } from "../../src/circuit/circuit.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { wirePlan } from "./wire-plan.ts";

const samples = new URL("../../samples/", import.meta.url);
const texts = readdirSync(samples)
	.filter((name) => name.endsWith(".ferrule"))
	.map((name) => readFileSync(new URL(name, samples), "utf8"));

/** Words of the samples by what they look like, so that one is exchanged for another of its sort. */
const words = [...new Set(texts.join(" ").split(/[\s,]+/))].filter((word) => word !== "");
const sortOf = (word: string): string =>
	/^\d+-\d$/.test(word)
		? "cable"
		: /^\d/.test(word)
			? "figure"
			: word.includes(".")
				? "inside"
				: word.endsWith(":")
					? "new"
					: "word";
const wordsOfSort = new Map<string, string[]>();
for (const word of words) wordsOfSort.set(sortOf(word), [...(wordsOfSort.get(sortOf(word)) ?? []), word]);

/** Landings that name any core and any terminal. */
const landing = fc
	.record({
		box: fc.constantFrom("LC", "AC", "DB", "P", "g1", "b1", "s1", "inv", "shore"),
		core: fc.constantFrom("galley-1", "bunks-1", "lights-1", "supply-1", "LC-1", "trial-1", "port-1"),
		colour: fc.constantFrom("black", "white", "bare", "red", "green", "brown"),
		terminal: fc.constantFrom(
			"g1.load.hot",
			"g1.line.neutral",
			"b1.hot",
			"b1.ground",
			"s1.load",
			"LC.neutral",
			"LC.1A.load",
			"inv.in.hot",
		),
		how: fc.constantFrom("on", "loose", "capped", "join", "link"),
	})
	.map(({ box, core, colour, terminal, how }) => {
		const line = {
			on: `${core}.${colour} on ${terminal}`,
			loose: `${core}.${colour} loose`,
			capped: `${core}.${colour} capped`,
			join: `join ${core}.${colour}, ${terminal}, ${core}.white by lever 3`,
			link: `link ${terminal}, ${box}.hot by single 12 AWG ${colour}`,
		}[how];
		return `at ${box}\n  ${line}\n`;
	});

const mutated = fc
	.record({
		text: fc.constantFrom(...texts),
		changes: fc.array(fc.record({ at: fc.nat(), by: fc.nat(), drop: fc.boolean() }), { maxLength: 4 }),
		landings: fc.array(landing, { maxLength: 3 }),
	})
	.map(({ text, changes, landings }) => {
		let changed = text;
		for (const { at, by, drop } of changes) {
			const places = [...changed.matchAll(/[^\s,]+/g)];
			const place = places[at % places.length];
			if (place === undefined) continue;
			const others = wordsOfSort.get(sortOf(place[0])) ?? words;
			const instead = drop ? "" : (others[by % others.length] ?? "");
			changed = changed.slice(0, place.index) + instead + changed.slice(place.index + place[0].length);
		}
		return changed + landings.join("");
	});

/** What in a circuit leads nowhere or contradicts itself. */
function faultsOf(circuit: Circuit): string[] {
	const faults: string[] = [];
	const isPoint = (point: number): boolean => circuit.points[point]?.index === point;
	circuit.conductors.forEach((conductor, index) => {
		if (conductor.index !== index || circuit.conductorByName.get(conductor.name) !== index)
			faults.push(`${conductor.name} index`);
		for (const end of conductor.ends) {
			const point = end.point === undefined ? undefined : circuit.points[end.point];
			if ((end.state === "landed") !== (point !== undefined)) faults.push(`${conductor.name} ${end.state}`);
			if (point !== undefined && point.enclosure !== end.enclosure)
				faults.push(`${conductor.name} ends outside its box`);
			if (!circuit.enclosures.includes(end.enclosure)) faults.push(`${conductor.name} in no box`);
		}
	});
	for (const point of circuit.points) if (!isPoint(point.index)) faults.push(`${point.name} index`);
	for (const link of circuit.links) if (!link.between.every(isPoint)) faults.push(`a link of ${link.part}`);
	for (const load of circuit.loads) if (!load.between.every(isPoint)) faults.push(`a load of ${load.part}`);
	for (const part of circuit.parts) {
		if (circuit.partByName.get(part.name) !== part) faults.push(`${part.name} name`);
		if (!part.points.every(isPoint)) faults.push(`${part.name} points`);
	}
	for (const cable of circuit.cables)
		for (const core of cable.conductors)
			if (circuit.conductors[core]?.cable !== cable.tag) faults.push(`${cable.tag} core ${core}`);
	const names = circuit.points.map((point) => point.name);
	if (new Set(names).size !== names.length) faults.push("two points of one name");
	for (const mode of circuit.modes)
		for (const name of mode.live)
			if (!circuit.sources.some((source) => source.name === name)) faults.push(`${mode.name} ${name}`);
	return faults;
}

test("the circuit of any changed sample holds together", () => {
	fc.assert(
		fc.property(mutated, (text) => {
			expect(faultsOf(wirePlan(text).circuit)).toEqual([]);
		}),
		{ numRuns: 400 },
	);
});

test("every rule answers on any changed sample, with figures, and ways lead from the source outward", () => {
	fc.assert(
		fc.property(mutated, (text) => {
			const analysis = analyse(wirePlan(text).circuit);
			for (const { exposure } of analysis.states) {
				const seen = new Set<number>();
				for (const [point, { by }] of exposure) {
					expect(by === undefined || seen.has(by.from)).toBe(true);
					seen.add(point);
				}
			}
			const { findings } = checkPlan(text, "plan");
			for (const finding of findings) {
				expect(finding.title).not.toBe("");
				for (const figure of finding.figures)
					expect(Number.isFinite(figure.found) && Number.isFinite(figure.limit)).toBe(true);
			}
		}),
		{ numRuns: 400 },
	);
});

test("the same text gives the same circuit and findings", () => {
	fc.assert(
		fc.property(mutated, (text) => {
			const tell = () =>
				JSON.stringify([wirePlan(text).circuit.conductors, checkPlan(text, "plan").findings], (_, value: unknown) =>
					value instanceof Map || value instanceof Set ? [...value] : value,
				);
			expect(tell()).toBe(tell());
		}),
		{ numRuns: 100 },
	);
});
