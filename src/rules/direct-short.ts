// Positive and negative of a battery or of what it feeds, joined by wires.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { reachPossible } from "../analysis/choices.ts";
import type { DirectState } from "../analysis/direct.ts";
import { joinAll } from "../analysis/joined-sets.ts";
import { tellWay } from "../analysis/network.ts";
import { sortOfRole } from "../analysis/poles.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";

/** A short circuit between two terminals of a part, and the conductor that makes it. */
interface Short {
	readonly part: string;
	readonly positive: number;
	readonly negative: number;
	readonly conductor: Conductor;
}

/** Every short circuit on the direct-current side of a mode, once for each conductor that makes one; `slots` are what the rule says. */
export function findDirectShorts(
	{ circuit }: Analysis,
	{ direct }: ModeState,
	slots: Pick<Finding, "code" | "why" | "basis">,
): Finding[] {
	if (direct === undefined) return [];
	const shorts = new Map<number, Short>();
	const joined = joinAll(direct.network);
	for (const { part, positive, negative } of pairsOf(circuit)) {
		if (!joined.isJoined(positive, negative)) continue;
		const conductor = blame(circuit, direct, positive, negative);
		if (conductor !== undefined && !shorts.has(conductor.index))
			shorts.set(conductor.index, { part, positive, negative, conductor });
	}
	return [...shorts.values()].map((short) => tell(circuit, direct, short, slots));
}

/** Positive and negative terminal of every source and load for direct current, sources first. */
function pairsOf(circuit: Circuit): Pick<Short, "part" | "positive" | "negative">[] {
	const sources = circuit.sources.flatMap(({ part, hot: [positive], neutral, system }) =>
		positive === undefined || neutral === undefined || system === "ac" ? [] : [{ part, positive, negative: neutral }],
	);
	const loads = circuit.loads.flatMap(({ part, between: [positive, negative] }) =>
		circuit.points[positive]?.role === "positive" ? [{ part, positive, negative }] : [],
	);
	return [...sources, ...loads];
}

/** Of the conductors on the way from one terminal to the other, that which is landed on what it is not for; the first where none is. */
function blame(circuit: Circuit, { network }: DirectState, from: number, to: number): Conductor | undefined {
	const reach = reachPossible(network, [from], () => true);
	const way = reach.edgesTo(to).flatMap(({ by }) => (by.kind === "conductor" ? [by.index] : []));
	const conductors = way.map((index) => certain(circuit.conductors[index], "a conductor"));
	return conductors.find((conductor) => isMisplaced(circuit, conductor)) ?? conductors[0];
}

function isMisplaced({ points }: Circuit, { role, ends }: Conductor): boolean {
	return ends.some(({ point }) => {
		const landed = point === undefined ? undefined : points[point];
		return landed?.kind === "terminal" && landed.role !== "ground" && sortOfRole(landed.role) !== sortOfRole(role);
	});
}

function tell(
	circuit: Circuit,
	{ network }: DirectState,
	{ part, positive, negative, conductor }: Short,
	slots: Pick<Finding, "code" | "why" | "basis">,
): Finding {
	const reach = reachPossible(network, [positive], () => true);
	const end = conductor.ends.find(({ said }) => said) ?? conductor.ends[1];
	return finding({
		code: slots.code,
		why: slots.why,
		basis: slots.basis,
		level: "danger",
		title: `Positive and negative of ${part} are joined by way of ${conductor.name}`,
		span: end.span,
		label: "short circuit",
		marks: [conductor.name, part],
		path: tellWay(circuit, reach.edgesTo(negative), negative),
		help: `Take ${conductor.name} off where it meets the other pole.`,
		key: `${slots.code}@${conductor.name}`,
	});
}
