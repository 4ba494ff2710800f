// Neutrals that two legs share: what each leg's fixed loads draw, and what is left for the neutral to carry.
import type { Circuit } from "../circuit/circuit.ts";
import type { ModeState } from "./analysis.ts";
import type { Pole } from "./poles.ts";
import type { ReturningLoad } from "./returns.ts";

/** What hangs on one leg of a shared neutral. */
export interface Leg {
	readonly role: Pole["role"];
	/** Amperes of its fixed loads when all of them run. */
	readonly amperes: number;
	/** The parts on it, outlets and loads of unknown power among them. */
	readonly parts: readonly string[];
	/** Whether something on it draws what is not known: an outlet, or a load without a rating. */
	readonly isOpen: boolean;
}

/** One neutral with loads on both legs of its source. */
export interface SharedNeutral {
	/** The conductor that takes it home, by its name; that of the source for all that returns to it. */
	readonly neutral: string;
	readonly source: string;
	readonly legs: readonly [Leg, Leg];
	/** Amperes left in the neutral with everything on, and the most there can be: with all of one leg on and the other off. */
	readonly together: number;
	readonly most: number;
}

/** Every neutral of a mode that two legs share: the ways home of circuits, then those of whole sources. */
export function findSharedNeutrals({ network: { circuit }, returns, mode }: ModeState): readonly SharedNeutral[] {
	const sources = circuit.sources.filter(({ name, hot }) => hot.length > 1 && mode.live.includes(name));
	const shared = returns.flatMap(({ home, loads }) =>
		sources.flatMap(({ name }) => share(circuit, circuit.conductors[home[0] ?? -1]?.name, name, loads) ?? []),
	);
	const whole = sources.flatMap(({ name, neutral }) => {
		const loads = returns.flatMap((one) => one.loads);
		return share(circuit, circuit.points[neutral ?? -1]?.name, name, loads) ?? [];
	});
	return [...shared, ...whole];
}

function share(
	circuit: Circuit,
	neutral: string | undefined,
	source: string,
	loads: readonly ReturningLoad[],
): SharedNeutral | undefined {
	const [first, second] = (["hot", "hot2"] as const).map((role) => legOf(circuit, source, role, loads));
	if (neutral === undefined || first === undefined || second === undefined) return undefined;
	if (first.parts.length === 0 || second.parts.length === 0) return undefined;
	return {
		neutral,
		source,
		legs: [first, second],
		together: Math.abs(first.amperes - second.amperes),
		most: Math.max(first.amperes, second.amperes),
	};
}

function legOf(circuit: Circuit, source: string, role: Pole["role"], loads: readonly ReturningLoad[]): Leg {
	const volts = circuit.sources.find(({ name }) => name === source)?.volts ?? 120;
	const mine = loads.filter(
		({ feeder }) => feeder !== undefined && feeder.pole.source === source && feeder.pole.role === role,
	);
	return {
		role,
		amperes: mine.reduce((sum, { load }) => sum + (load.watts ?? 0) / volts, 0),
		parts: [...new Set(mine.map(({ load }) => load.part))],
		isOpen: mine.some(({ load }) => load.watts === undefined),
	};
}
