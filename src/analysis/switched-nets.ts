// The circuit as nets that only switches join: what a switch cuts off, and what stays live behind it.
import type { Link } from "../circuit/circuit.ts";
import { JoinedSets } from "./joined-sets.ts";
import type { Landings } from "./landings.ts";
import type { Network } from "./network.ts";
import { notABond, type PoleMap, type PoleSort, sortOfRole } from "./poles.ts";
import { findSwitches, type Switch } from "./switching.ts";

/** Answers what switching off leaves on. */
export class SwitchedNets {
	readonly switches: readonly Switch[];
	private readonly sets: JoinedSets;
	/** The contacts at each net, with the net beyond. */
	private readonly ways = new Map<number, { readonly contact: Link; readonly to: number }[]>();
	/** Loads by the net of their way back: their part, and the net of their hot. */
	private readonly loads = new Map<number, { readonly part: string; readonly hot: number }[]>();
	private readonly depths: Readonly<Record<"hot" | "neutral", ReadonlyMap<number, number>>>;

	constructor(network: Network, landings: Landings, poles: PoleMap) {
		const { circuit } = network;
		this.switches = findSwitches(circuit);
		this.sets = new JoinedSets(circuit.points.length);
		const contacts = new Set(this.switches.flatMap((found) => found.contacts.map((contact) => contact.index)));
		for (const edges of network.edges)
			for (const edge of edges)
				if (notABond(edge) && (edge.by.kind === "conductor" || !contacts.has(edge.by.link.index)))
					this.sets.join(edge.from, edge.to);
		for (const found of this.switches)
			for (const contact of found.contacts) {
				const [one, other] = [this.sets.find(contact.between[0]), this.sets.find(contact.between[1])];
				this.addWay(one, contact, other);
				this.addWay(other, contact, one);
			}
		for (const load of circuit.loads) {
			const [one, other] = load.between;
			const [hot, back] = landings.sortAt(one) === "neutral" ? [other, one] : [one, other];
			if (landings.sortAt(back) !== "neutral") continue;
			const net = this.sets.find(back);
			const returning = this.loads.get(net) ?? [];
			this.loads.set(net, returning);
			returning.push({ part: load.part, hot: this.sets.find(hot) });
		}
		this.depths = { hot: this.measure(poles, "hot"), neutral: this.measure(poles, "neutral") };
	}

	/** Parts whose way back a switch opens while their hot stays on. */
	leftLiveBy({ contacts }: Switch): readonly string[] {
		const mine = new Set(contacts.map((contact) => contact.index));
		const farOf = (contact: Link, pole: "hot" | "neutral"): number | undefined => {
			const [one, other] = [this.sets.find(contact.between[0]), this.sets.find(contact.between[1])];
			const [near, far] = [this.depths[pole].get(one), this.depths[pole].get(other)];
			if (near === undefined || far === undefined || near === far) return undefined;
			return near < far ? other : one;
		};
		const cutHots = new Set(contacts.map((contact) => farOf(contact, "hot")));
		const left = new Set<string>();
		for (const contact of contacts)
			for (const { part, hot } of this.loads.get(farOf(contact, "neutral") ?? -1) ?? [])
				if (!cutHots.has(hot) && this.isFedWithout(hot, mine)) left.add(part);
		return [...left];
	}

	/** Nets from the poles of a sort outward, by how many contacts lie between. */
	private measure({ poles }: PoleMap, sort: PoleSort): ReadonlyMap<number, number> {
		const starts = poles.filter((pole) => sortOfRole(pole.role) === sort).flatMap((pole) => pole.points);
		return this.walk(
			starts.map((point) => this.sets.find(point)),
			new Set(),
		);
	}

	private isFedWithout(net: number, contacts: ReadonlySet<number>): boolean {
		if (this.depths.hot.get(net) === 0) return true;
		const roots = [...this.depths.hot].filter(([, depth]) => depth === 0).map(([root]) => root);
		return this.walk(roots, contacts).has(net);
	}

	private walk(starts: readonly number[], without: ReadonlySet<number>): ReadonlyMap<number, number> {
		const depths = new Map<number, number>(starts.map((net) => [net, 0]));
		// A map hands out what is added while it is walked.
		for (const [net, depth] of depths)
			for (const { contact, to } of this.ways.get(net) ?? [])
				if (!depths.has(to) && !without.has(contact.index)) depths.set(to, depth + 1);
		return depths;
	}

	private addWay(from: number, contact: Link, to: number): void {
		const here = this.ways.get(from);
		if (here === undefined) this.ways.set(from, [{ contact, to }]);
		else here.push({ contact, to });
	}
}
