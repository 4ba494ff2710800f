// Where neutral and ground are joined on purpose, for each neutral that a live source gives.
import type { Link, Source } from "../circuit/circuit.ts";
import type { Network, Reach } from "./network.ts";
import type { PoleMap } from "./poles.ts";

/** One neutral with its sources, and the bonds that join it to their ground. */
export interface NeutralIsland {
	readonly sources: readonly Source[];
	/** In the order of the circuit. */
	readonly bonds: readonly Link[];
	/** Bonds at far supplies that are off, joined all the same past what should part them: they count as long as the cord is in. */
	readonly faraway: readonly Link[];
	/** Joined to ground by a wire as well, which no bond is: then the bonds say nothing. */
	readonly wired: boolean;
}

/** The neutrals of a mode; sources whose neutrals are joined are one. */
export function traceBonds({ circuit, mode }: Network, poles: PoleMap): readonly NeutralIsland[] {
	const bonds = circuit.links.filter(
		(link) => link.nature === "bond" && (link.modes === undefined || link.modes.has(mode.name)),
	);
	const live = circuit.sources.filter((source) => mode.live.includes(source.name));
	const off = new Set(
		circuit.sources.flatMap(({ name, part, bonding }) =>
			bonding === "supply" && !mode.live.includes(name) ? [part] : [],
		),
	);
	const isOff = ({ part, modes }: Link): boolean => off.has(part) && modes?.has(mode.name) === false;
	// A machine that leads the neutral on for good is made so.
	const machines = new Set(circuit.sources.map(({ part }) => part));
	const isPast = (reach: Reach, { between }: Link): boolean =>
		between.every((point) =>
			reach.edgesTo(point).every(({ by }) => by.kind === "conductor" || !machines.has(by.link.part)),
		);
	const islands: NeutralIsland[] = [];
	const taken = new Set<string>();
	for (const source of live) {
		const { neutral, system } = source;
		if (neutral === undefined || system !== "ac" || taken.has(source.name)) continue;
		const reach = poles.reaches.find((_, index) => {
			const pole = poles.poles[index];
			return pole?.source === source.name && pole.points.includes(neutral);
		});
		if (reach === undefined) continue;
		const sources = live.filter((other) => other.neutral !== undefined && reach.has(other.neutral));
		for (const other of sources) taken.add(other.name);
		const joins = ({ between: [one, other] }: Link): boolean =>
			(reach.has(one) && poles.sortsAt(other).has("ground")) || (reach.has(other) && poles.sortsAt(one).has("ground"));
		islands.push({
			sources,
			bonds: bonds.filter(joins),
			faraway: circuit.links.filter(
				(link) => link.nature === "bond" && isOff(link) && joins(link) && isPast(reach, link),
			),
			wired: sources.some((other) => other.ground !== undefined && reach.has(other.ground)),
		});
	}
	return islands;
}
