// Right plans wired wrong by chance: one to three slips in the wiring, or a wrong word in the plan. The same number gives the same text.
import type { Circuit } from "../../src/circuit/circuit.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { Chance } from "../generator/chance.ts";
import { generatePlan } from "../generator/generate-plan.ts";
import { endsIn, spotsIn, tellBox, type WireEnd } from "../rules/single-mistakes.ts";

/** A plan that was right, and what was done to it. */
export interface Miswired {
	readonly text: string;
	readonly done: readonly string[];
}

/** Miswired plan number `seed`, of two to eight devices. */
export function miswire(seed: number): Miswired {
	const chance = new Chance(seed ^ 0x2c1b_3c6d);
	const { text } = generatePlan(seed, { devices: chance.count(2, 8), sides: "ac" });
	const reworded = chance.maybe(0.35) ? reword(text, chance) : undefined;
	if (reworded !== undefined) return reworded;
	const { circuit } = checkPlan(text, "plan").analysis;
	const boxes = circuit.enclosures.filter(({ name }) => endsIn(circuit, name).length > 1);
	const done: string[] = [];
	const blocks: string[] = [];
	const slips = chance.weigh([
		[3, 1],
		[2, 2],
		[1, 3],
	]);
	for (const { name } of chance.shuffle(boxes).slice(0, chance.count(1, Math.min(2, slips)))) {
		let ends = endsIn(circuit, name);
		let jumper = "";
		for (let slip = 0; slip < slips; slip++) {
			const made = slipIn(circuit, name, ends, chance);
			ends = made.ends ?? ends;
			jumper ||= made.jumper ?? "";
			done.push(made.what);
		}
		const block = tellBox(circuit, ends, name);
		blocks.push(jumper === "" ? block : `${block === "" ? `at ${name}\n` : block}${jumper}`);
	}
	return { text: `${text.trimEnd()}\n${blocks.join("")}`, done };
}

interface Slip {
	readonly what: string;
	readonly ends?: readonly WireEnd[];
	readonly jumper?: string;
}

function slipIn(circuit: Circuit, box: string, ends: readonly WireEnd[], chance: Chance): Slip {
	const spots = spotsIn(circuit, box);
	const nameOf = (point: number): string => circuit.points[point]?.name ?? "";
	const free = ends.filter((end) => end.at !== undefined && end.terminal === undefined);
	const sort = chance.pick(["exchange", "exchange", "move", "off", "jumper"] as const);
	if (sort === "jumper" || free.length === 0) {
		const terminals = spots.filter((spot) => circuit.points[spot]?.kind === "terminal");
		if (terminals.length < 2) return { what: "nothing" };
		const [one = 0, other = 0] = chance.shuffle(terminals);
		const names = `${nameOf(one)}, ${nameOf(other)}`;
		return { what: `jumper ${names}`, jumper: `  link ${names} by 12 AWG black\n` };
	}
	const one = chance.pick(free);
	const replace = (other: WireEnd, by: Partial<WireEnd>): readonly WireEnd[] =>
		ends.map((end) => (end === other ? { ...end, ...by } : end));
	if (sort === "off")
		return { what: `${one.name} off in ${box}`, ends: replace(one, { at: undefined, isLoose: chance.maybe(0.5) }) };
	if (sort === "move") {
		const to = chance.pick(spots);
		return { what: `${one.name} moved to ${nameOf(to)} in ${box}`, ends: replace(one, { at: to }) };
	}
	const other = chance.pick(ends);
	return {
		what: `${one.name} and ${other.name} exchanged in ${box}`,
		ends: ends.map((end) => (end === one ? { ...end, at: other.at } : end === other ? { ...end, at: one.at } : end)),
	};
}

/** Words whose change makes another plan: a larger breaker, a thinner cable, a bond too many or none. */
const rewordings: readonly (readonly [RegExp, readonly string[]])[] = [
	[/\b(?:10|15|16|20)(?= ?(?:A|amps?)\b)/g, ["30", "32", "40", "63"]],
	[/\b1[02]-2\b/g, ["14-2", "16-2"]],
	[/\b3G(?:2\.5|4|6)\b/g, ["3G1", "3G1.5"]],
	[/\btriplex (?:6|8|10|12) AWG\b/g, ["triplex 16 AWG"]],
	[/\bbonds neutral (?:when inverting|to frame)\b/g, ["", "bonds neutral never"]],
	[/\bgfci\b/g, ["receptacle"]],
	[/\bmain(?= \d)/g, ["bonded, main"]],
];

function reword(text: string, chance: Chance): Miswired | undefined {
	const fitting = rewordings.flatMap(([pattern, words]) =>
		[...text.matchAll(pattern)].map((match) => ({ at: match.index, was: match[0], is: chance.pick(words) })),
	);
	if (fitting.length === 0) return undefined;
	const { at, was, is } = chance.pick(fitting);
	return { text: text.slice(0, at) + is + text.slice(at + was.length), done: [`${was} became ${is}`] };
}
