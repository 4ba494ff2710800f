// What the legend and the notes of a wiring sheet say: only of what is drawn on it.
import type { Circuit, Conductor } from "../../circuit/circuit.ts";
import type { Role } from "../../kinds/kind.ts";
import type { LegendEntry } from "../furniture/compose-sheet.ts";
import type { Group, Paint } from "../scene.ts";
import { codeAtEnd } from "./codes.ts";

/** What bars and symbols mean, by their paints and their names; the legend tells those that occur, in this order. */
export interface LegendWords {
	readonly bars: readonly (readonly [Paint, string])[];
	readonly symbols: readonly (readonly [string, string])[];
}

/** Colours with their codes and uses, bars, splices and free ends, as they occur. */
export function legendOf(
	circuit: Circuit,
	groups: readonly Group[],
	words: LegendWords = { bars: barTexts, symbols: symbolTexts },
): LegendEntry[] {
	const uses = new Map<string, { conductor: Conductor; marked: string | undefined; roles: Set<Role> }>();
	const hasTwoLegs = circuit.sources.some(({ hot }) => hot.length === 2);
	const symbols = new Set<string>();
	const bars = new Set<string>();
	const seen = new Set<string>();
	let isLit = false;
	for (const { marks } of groups)
		for (const mark of marks) {
			if (mark.kind === "symbol") symbols.add(mark.symbol);
			if (mark.kind === "rectangle" && mark.fill !== undefined) bars.add(mark.fill);
			if (mark.kind === "line" && mark.as === "bus") bars.add(mark.stroke);
			if (mark.kind === "circle" && mark.as === "dot" && isSplice(circuit, mark.of)) symbols.add("splice-lever");
			if (mark.kind !== "wire") continue;
			if (mark.finding !== undefined) isLit = true;
			if (seen.has(mark.of)) continue;
			seen.add(mark.of);
			const conductor = circuit.conductors[circuit.conductorByName.get(mark.of) ?? -1];
			if (conductor === undefined) continue;
			for (const end of [0, 1] as const) {
				const code = codeAtEnd(conductor, end);
				const use = uses.get(code) ?? { conductor, marked: conductor.ends[end].marked, roles: new Set<Role>() };
				use.roles.add(conductor.role === "hot2" && !hasTwoLegs ? "hot" : conductor.role);
				uses.set(code, use);
			}
		}
	const entries: LegendEntry[] = [...uses]
		.toSorted(([, one], [, other]) => firstRank(one.roles) - firstRank(other.roles))
		.map(
			([
				code,
				{
					conductor: { colour },
					marked,
					roles,
				},
			]) => ({
				sample: { kind: "conductor", colour },
				code,
				text: `${colour}${marked === undefined ? "" : ` re-marked ${marked}`}: ${[...roles]
					.toSorted((one, other) => roleOrder.indexOf(one) - roleOrder.indexOf(other))
					.map((role) => roleNames[role])
					.join(", ")}`,
			}),
		);
	for (const [paint, text] of words.bars)
		if (bars.has(paint)) entries.push({ sample: { kind: "bar", paint }, code: "", text });
	for (const [symbol, text] of words.symbols)
		if (symbols.has(symbol)) entries.push({ sample: { kind: "symbol", symbol }, code: "", text });
	if (isLit) entries.push({ sample: { kind: "bar", paint: "fault-soft" }, code: "", text: "way of a finding" });
	return entries;
}

function isSplice(circuit: Circuit, name: string | undefined): boolean {
	return name !== undefined && circuit.points[circuit.pointByName.get(name) ?? -1]?.kind === "splice";
}

function firstRank(roles: ReadonlySet<Role>): number {
	return Math.min(...[...roles].map((role) => roleOrder.indexOf(role)));
}

const roleOrder: readonly Role[] = ["hot", "hot2", "hot3", "positive", "neutral", "negative", "ground"];
const roleNames: Record<Role, string> = {
	hot: "hot",
	hot2: "second hot",
	hot3: "third hot",
	neutral: "neutral",
	ground: "ground",
	positive: "positive",
	negative: "negative",
};
const barTexts = [
	["hot-bus", "hot bus"],
	["neutral-bar", "neutral bar"],
	["ground-bar", "ground bar"],
] as const;
export const symbolTexts = [
	["splice-lever", "splice, lever"],
	["splice-push-in", "splice, push-in"],
	["splice-twist-on", "splice, twist-on"],
	["splice-crimp", "splice, crimp"],
	["conductor-capped", "capped end"],
	["conductor-loose", "loose end"],
] as const;
