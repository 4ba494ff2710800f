// What a panel is made of, sorted by what each part is for: bus, main, poles in order, bars.
import type { Circuit, Part, Terminal } from "../../circuit/circuit.ts";
import type { BoxContent, CableEnd, Stock } from "./box-content.ts";

/** The parts of a panel. */
export interface PanelParts {
	readonly bus?: Part;
	readonly main?: Part;
	readonly poles: readonly Part[];
	/** Neutral bars, then ground bars. */
	readonly bars: readonly Part[];
}

/** The parts of a panel, or undefined where something else sits in it too. */
export function sortPanel(content: BoxContent): PanelParts | undefined {
	const { circuit, devices } = content;
	const is = (part: Part, trait: Part["face"]["traits"][number]): boolean => part.face.traits.includes(trait);
	const bus = devices.find((part) => is(part, "panel"));
	const breakers = devices.filter((part) => is(part, "breaker"));
	const main = breakers.find((part) => lineTerminals(circuit, part).length > 0);
	const neutral = devices.filter((part) => is(part, "neutral-bar"));
	const ground = devices.filter((part) => is(part, "ground-bar"));
	const poles = breakers.filter((part) => part !== main);
	const known =
		poles.length + neutral.length + ground.length + (bus === undefined ? 0 : 1) + (main === undefined ? 0 : 1);
	if (known !== devices.length || neutral.length + ground.length === 0) return undefined;
	return {
		...(bus === undefined ? {} : { bus }),
		...(main === undefined ? {} : { main }),
		poles,
		bars: [...neutral, ...ground],
	};
}

/** Terminals of a breaker that take wires on its fed side: only a main has them. */
export function lineTerminals(circuit: Circuit, part: Part): number[] {
	return terminalsOf(circuit, part)
		.filter(({ side, clamp }) => side === "line" && clamp !== "stab" && clamp !== "lead")
		.map(({ index }) => index);
}

/** Terminals by which a main gives on the neutral that it opens: each has a lead to a bar. */
export function leadTerminals(circuit: Circuit, part: Part): number[] {
	return terminalsOf(circuit, part)
		.filter(({ clamp }) => clamp === "lead")
		.map(({ index }) => index);
}

/** Terminals of a breaker that feed its circuit, and the tail of one that has its own. */
export function loadTerminals(circuit: Circuit, part: Part): { loads: number[]; tails: number[] } {
	const terminals = terminalsOf(circuit, part).filter(({ clamp }) => clamp !== "stab");
	return {
		loads: terminals.filter(({ side, clamp }) => side !== "line" && clamp !== "lead").map(({ index }) => index),
		tails: terminals.filter(({ clamp }) => clamp === "lead").map(({ index }) => index),
	};
}

/** The breaker that a cable leaving a panel hangs on, as its position among the panel's parts; beyond the last where none. */
export function slotOrder(circuit: Circuit, stock: Stock, { cable, end }: CableEnd): number {
	let order = stock.parts.length;
	for (const index of cable.conductors) {
		const landed = circuit.conductors[index]?.ends[end].point;
		const terminal = landed === undefined ? undefined : behindSplice(circuit, stock, landed);
		if (terminal === undefined || terminal.side === "line") continue;
		const part = stock.parts.findIndex(({ name }) => name === terminal.part);
		if (part >= 0 && stock.parts[part]?.face.traits.includes("breaker") === true) order = Math.min(order, part);
	}
	return order;
}

/** The terminal a core lands on, through a splice in line with it too. */
function behindSplice(circuit: Circuit, stock: Stock, landed: number): Terminal | undefined {
	const point = circuit.points[landed];
	if (point?.kind === "terminal") return point;
	for (const { ends } of stock.inner) {
		if (!ends.some((end) => end.point === landed)) continue;
		const other = circuit.points[ends.find((end) => end.point !== landed)?.point ?? -1];
		if (other?.kind === "terminal") return other;
	}
	return undefined;
}

/** The name of a slot: a part's name without its panel's. */
export function slotName(part: Part): string {
	const owner = part.owner === undefined ? "" : `${part.owner}.`;
	return part.name.startsWith(owner) ? part.name.slice(owner.length) : part.name;
}

function terminalsOf(circuit: Circuit, part: Part): Terminal[] {
	return part.points.flatMap((point) => {
		const found = circuit.points[point];
		return found?.kind === "terminal" ? [found] : [];
	});
}
