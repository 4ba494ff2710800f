// What drives current in a mode: which sources are on, how stiff they are, and which only charge what another holds up.
import { isAlike } from "../analysis/direct.ts";
import { PotentialSets } from "../analysis/potentials.ts";
import type { Circuit, Link, Load, Mode, Source } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";

/** A pair of poles that a source holds apart. Two legs are two of them. */
export interface Supply {
	readonly source: Source;
	readonly plus: number;
	readonly minus: number;
	/** Volts of the first above the second while nothing is drawn. */
	readonly volts: number;
	/** Its own resistance in ohms; 0 where nothing is said of it. */
	readonly ohms: number;
}
/** A source that pushes its rated amperes into what a battery holds up. */
export interface Charger {
	readonly source: Source;
	readonly plus: number;
	readonly minus: number;
	readonly amperes: number;
}
/** A source that takes what it gives from another system: its load there, and what comes out of what goes in. */
export interface Conversion {
	readonly source: Source;
	readonly load: Load;
	/** Undefined where its rating is not known: what it takes cannot be told. */
	readonly efficiency: number | undefined;
}
/** What a live source cannot do, and why. */
export interface SupplyFault {
	readonly source: Source;
	readonly why: string;
}

/** All that drives current in a mode. */
export interface Supplies {
	readonly supplies: readonly Supply[];
	readonly chargers: readonly Charger[];
	/** The conversions of the sources above, by the part that makes them. */
	readonly conversions: ReadonlyMap<string, Conversion>;
	readonly faults: readonly SupplyFault[];
	/** Sources that count for nothing here: what a module gives hangs on the sun. */
	readonly leftOut: readonly Source[];
	/** Volts between points while nothing is drawn. */
	readonly quiet: PotentialSets;
}

/** The supplies of a mode; `links` are those that conduct. */
export function findSupplies(circuit: Circuit, mode: Mode, links: readonly Link[]): Supplies {
	const quiet = new PotentialSets(circuit.points.length);
	for (const { ends } of circuit.conductors) {
		const [one, other] = [ends[0].point, ends[1].point];
		if (one !== undefined && other !== undefined) quiet.join(one, other, 0);
	}
	for (const { between } of links) quiet.join(...between, 0);
	const found: Found = { supplies: [], chargers: [], faults: [], quiet };
	const conversions = findConversions(circuit);
	const live = circuit.sources.filter(({ name, sort }) => mode.live.includes(name) && sort !== "solar");
	const isFirst = ({ part, sort }: Source): boolean => !conversions.has(part) && sort !== "other";
	for (const source of live.filter(isFirst)) add(circuit, source, found);
	let waiting = live.filter((source) => !isFirst(source));
	// What feeds on another waits until that one is there.
	for (let before = -1; waiting.length !== before; ) {
		before = waiting.length;
		waiting = waiting.filter((source) => {
			if (!isDriven(circuit, conversions.get(source.part), quiet)) return true;
			add(circuit, source, found);
			return false;
		});
	}
	const dead = waiting.map((source) => ({ source, why: `nothing feeds ${source.part}` }));
	return {
		supplies: found.supplies,
		chargers: found.chargers,
		conversions,
		faults: [...found.faults, ...dead],
		leftOut: circuit.sources.filter(({ name, sort }) => sort === "solar" && mode.live.includes(name)),
		quiet,
	};
}

interface Found {
	readonly supplies: Supply[];
	readonly chargers: Charger[];
	readonly faults: SupplyFault[];
	readonly quiet: PotentialSets;
}

/** Parts that are both a load and a source take there what they give here. */
function findConversions(circuit: Circuit): ReadonlyMap<string, Conversion> {
	const loads = new Map(circuit.loads.filter(({ outlet }) => !outlet).map((load) => [load.part, load]));
	const conversions = new Map<string, Conversion>();
	for (const source of circuit.sources) {
		const load = loads.get(source.part);
		if (load === undefined) continue;
		const rated = source.limit === undefined ? undefined : source.limit * source.volts;
		const efficiency = rated === undefined || load.watts === undefined ? undefined : rated / load.watts;
		conversions.set(source.part, { source, load, efficiency });
	}
	return conversions;
}

/** Whether what a source feeds on is there. Where nothing is wired to that side, the plan leaves it out and it is taken for there. */
function isDriven(circuit: Circuit, conversion: Conversion | undefined, quiet: PotentialSets): boolean {
	// A source without an input is driven from outside, and so is what the sun drives.
	if (conversion === undefined || conversion.load.watts === undefined) return true;
	const { between } = conversion.load;
	const volts = quiet.between(...between);
	if (volts !== undefined) return volts !== 0;
	return !circuit.conductors.some(({ ends }) =>
		ends.some(({ point }) => point !== undefined && between.includes(point)),
	);
}

function add(circuit: Circuit, source: Source, found: Found): void {
	const { hot, neutral: minus, volts, limit } = source;
	if (minus === undefined) {
		found.faults.push({ source, why: "it has no pole for the way back" });
		return;
	}
	const { quiet } = found;
	for (const [leg, plus] of hot.entries()) {
		const wanted = leg === 0 ? volts : -volts;
		const there = quiet.between(plus, minus);
		if (there === undefined) {
			quiet.join(plus, minus, wanted);
			found.supplies.push({ source, plus, minus, volts: wanted, ohms: ownOhms(circuit, source) });
		} else if (there === 0) {
			found.faults.push({ source, why: "its poles are joined with one another" });
			return;
		} else if (!isAlike(there, wanted)) {
			const others = found.supplies.map((supply) => supply.source.name).join(", ");
			found.faults.push({ source, why: `it is joined with what others hold at other volts (${others})` });
			return;
		} else if (source.sort === "other") {
			if (limit === undefined) found.faults.push({ source, why: "its rating is not said" });
			else found.chargers.push({ source, plus, minus, amperes: limit });
		}
		// What hangs together is charged alike, whatever nominal volts are said of each.
		else found.supplies.push({ source, plus, minus, volts: there, ohms: ownOhms(circuit, source) });
	}
}

/** Ohms of a battery: as said, else its volts over what it pushes into a short circuit. */
function ownOhms({ plan }: Circuit, { sort, part, volts }: Source): number {
	if (sort !== "battery") return 0;
	const said = plan.thingByName.get(foldName(part))?.said;
	const resistance = said?.quantity("resistance")?.value;
	const fault = said?.quantity("fault")?.value;
	return resistance ?? (fault === undefined || fault <= 0 ? 0 : volts / fault);
}
