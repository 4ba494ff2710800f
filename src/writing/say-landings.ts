// What the trade's convention made of a circuit, as lines of `at` blocks: each landing, joint and end that was inferred.
import type { Circuit, Conductor, Enclosure, End, Splice } from "../circuit/circuit.ts";
import { foldName } from "../plan/names.ts";

/** The lines for each enclosure in which anything was inferred, by its name; what was said has none. */
export function sayLandings(circuit: Circuit): ReadonlyMap<string, readonly string[]> {
	const speaker = new Speaker(circuit);
	return new Map(
		circuit.enclosures.flatMap((enclosure) => {
			const lines = speaker.sayBox(enclosure);
			return lines.length === 0 ? [] : [[enclosure.name, lines] as const];
		}),
	);
}

/** An end with the conductor it belongs to. */
interface HeldEnd {
	readonly conductor: Conductor;
	readonly which: 0 | 1;
	readonly end: End;
}

class Speaker {
	readonly #circuit: Circuit;
	readonly #inferred = new Map<Enclosure, HeldEnd[]>();
	readonly #onSplice = new Map<number, HeldEnd[]>();

	constructor(circuit: Circuit) {
		this.#circuit = circuit;
		for (const conductor of circuit.conductors)
			for (const which of [0, 1] as const) {
				const end = conductor.ends[which];
				const held = { conductor, which, end };
				if (end.said || this.#isOfItsDevice(held)) continue;
				if (this.#spliceOf(end) !== undefined) add(this.#onSplice, end.point ?? -1, held);
				add(this.#inferred, end.enclosure, held);
			}
	}

	/** Joints in their own order, so that they come back in it; then what else there is, in that of the conductors. */
	sayBox(enclosure: Enclosure): string[] {
		const inferred = this.#inferred.get(enclosure) ?? [];
		const splices = new Set(inferred.flatMap(({ end }) => this.#spliceOf(end) ?? []));
		const joins = [...splices]
			.toSorted((one, other) => one.index - other.index)
			.map((splice) => this.#sayJoin(splice, this.#onSplice.get(splice.index) ?? []));
		return [...joins, ...inferred.flatMap((held) => this.#sayEnd(held))];
	}

	/** One that is in a joint is said with it. */
	#sayEnd(held: HeldEnd): string[] {
		const { conductor, end } = held;
		if (this.#spliceOf(end) !== undefined) return [];
		if (end.point === undefined) return [`${this.#nameOf(held)} ${end.state}`];
		// The other end of a pigtail is said with the joint it comes from.
		if (this.#isPigtail(conductor)) return [];
		return [`${this.#nameOf(held)}${sayTermination(held)} on ${this.#pointOf(end)}`];
	}

	#sayJoin({ connector, ports }: Splice, members: readonly HeldEnd[]): string {
		const said = members.map((held) => {
			if (!this.#isPigtail(held.conductor)) return this.#nameOf(held);
			const [end] = held.conductor.ends;
			return `${this.#pointOf(end)}${sayTermination({ ...held, end })}`;
		});
		return `join ${said.join(", ")} by ${connector} ${ports}`;
	}

	/** As a plan calls it: `bunks-1.black`, `bunks-1@r1.black`, `LC.3.tail.white`. */
	#nameOf({ conductor, end }: HeldEnd): string {
		const { name, cable } = conductor;
		if (cable === undefined) return this.#leadName(conductor);
		return end.at === undefined ? name : `${cable}@${end.at}${name.slice(cable.length)}`;
	}

	/** By its colour; where the device has two of one colour, by the terminal it comes from: `R1.load.neutral`. */
	#leadName({ colour, ends }: Conductor): string {
		const point = this.#circuit.points[ends[0].point ?? -1];
		if (point?.kind !== "terminal") return "";
		const leads = this.#circuit.plan.thingByName.get(foldName(point.part))?.blueprint.leads ?? [];
		const isAlone = leads.filter((lead) => lead.colour === colour).length < 2;
		return isAlone ? `${point.part}.tail.${colour}` : point.name;
	}

	#pointOf(end: End): string {
		return this.#circuit.points[end.point ?? -1]?.name ?? "";
	}

	#spliceOf(end: End): Splice | undefined {
		const point = this.#circuit.points[end.point ?? -1];
		return point?.kind === "splice" ? point : undefined;
	}

	#isPigtail(conductor: Conductor): boolean {
		return conductor.sort === "pigtail" && !this.#isLead(conductor);
	}

	/** A lead comes with its device, and is the first conductor there. */
	#isLead({ name, sort, ends }: Conductor): boolean {
		const point = this.#circuit.points[ends[0].point ?? -1];
		if (sort !== "pigtail" || point?.kind !== "terminal") return false;
		const leads = this.#circuit.plan.thingByName.get(foldName(point.part))?.blueprint.leads ?? [];
		return leads.some((lead) => lead.mine === point.terminal) && name === `${point.part}~${point.terminal}`;
	}

	/** Where a lead begins, nobody lands it. */
	#isOfItsDevice({ conductor, which }: HeldEnd): boolean {
		return which === 0 && this.#isLead(conductor);
	}
}

/** How an end is made up; of a solid conductor there is nothing to say. */
function sayTermination({ conductor, end }: HeldEnd): string {
	return conductor.stranded ? ` ${end.termination}` : "";
}

function add<Key, Value>(map: Map<Key, Value[]>, key: Key, value: Value): void {
	const list = map.get(key);
	if (list === undefined) map.set(key, [value]);
	else list.push(value);
}
