// The steady state of one mode: volts at every point, amperes in every conductor, solved on the real graph, loops and all.
import type { ModeState } from "../analysis/analysis.ts";
import { type Amperes, amperes, powerOf, type Volts, volts, type Watts, watts } from "../base/measures.ts";
import type { Circuit, Link, Load, Source } from "../circuit/circuit.ts";
import { BridgeCurrents } from "./bridge-currents.ts";
import { type Besides, type Draw, findDraws, type Loading, type Nature } from "./draws.ts";
import { type Flow, KnotVolts } from "./knot-volts.ts";
import { buildNet, type Net } from "./net.ts";
import { standingLinks } from "./standing-links.ts";
import { findSupplies, type Supplies } from "./supplies.ts";

/** What a load is left with. */
export interface LoadFlow {
	readonly load: Load;
	readonly nature: Nature;
	/** Volts across it while nothing is drawn, and now; both as if its first terminal were the higher. */
	readonly quiet: Volts;
	readonly across: Volts;
	readonly drawn: Amperes;
	readonly used: Watts;
}
/** What a source gives; negative where it takes. */
export interface SourceFlow {
	readonly source: Source;
	readonly given: Amperes;
	/** Of each of its legs; one figure for a source with one. */
	readonly legs: readonly Amperes[];
	readonly power: Watts;
	/** It pushes its rating into what a battery holds up. */
	readonly charges: boolean;
}

/** A mode that settles. Positive amperes flow from a conductor's `ends[0]`, or a link's `between[0]`, to the other. */
export interface Steady {
	readonly kind: "steady";
	readonly circuit: Circuit;
	readonly mode: string;
	readonly loading: Loading;
	/** Volts above the neutral or minus of the first source of what hangs together. */
	readonly voltsAt: (point: number) => Volts;
	readonly amperesIn: (conductor: number) => Amperes;
	readonly amperesThrough: (link: number) => Amperes;
	readonly loads: readonly LoadFlow[];
	readonly sources: readonly SourceFlow[];
	/** What wires and batteries turn into heat. */
	readonly lost: Watts;
	readonly supplies: Supplies;
	readonly net: Net;
	/** What the solve took for the loads, for checks by others. */
	readonly flows: readonly Flow[];
}
/** A mode in which more is asked for than can come. */
export interface Unsettled {
	readonly kind: "unsettled";
	readonly circuit: Circuit;
	readonly mode: string;
	readonly loading: Loading;
	/** The largest share of all that is asked for at which it still settles; 0 where it never does. */
	readonly share: number;
	/** What stands at that share, and the load that is left with least there. */
	readonly last: Steady | undefined;
	readonly weakest: LoadFlow | undefined;
}
export type State = Steady | Unsettled;

/** What of a mode is the same whatever is on in it. */
export interface ModeSetup {
	readonly state: ModeState;
	/** As the mode's own, or with wires of other sizes and lengths between the same points. */
	readonly circuit: Circuit;
	readonly links: readonly Link[];
	readonly supplies: Supplies;
}

/** Looks how a mode stands, so that it can be solved. */
export function setUpMode(state: ModeState): ModeSetup {
	const links = standingLinks(state);
	const { circuit } = state.network;
	return { state, circuit, links, supplies: findSupplies(circuit, state.mode, links) };
}

/** The steady state of a mode with what `loading` says switched on, and with what `besides` asks for. */
export function solveMode(setup: ModeSetup, loading: Loading, besides: Besides = {}): State {
	const { state, circuit, links, supplies } = setup;
	const draws = findDraws(circuit, state.mode, supplies, loading, besides);
	const solver = new ModeSolver(state, loading, supplies, draws, buildNet(circuit, links, supplies, draws));
	const whole = solver.solve(1);
	if (whole !== undefined) return whole;
	const { share, last } = solver.findLargest();
	return { kind: "unsettled", circuit, mode: state.mode.name, loading, share, last, weakest: weakestOf(last) };
}

/** The load that is left with the smallest part of its volts. */
function weakestOf(steady: Steady | undefined): LoadFlow | undefined {
	return steady?.loads
		.filter(({ quiet }) => quiet !== 0)
		.toSorted((one, other) => one.across / one.quiet - other.across / other.quiet)[0];
}

class ModeSolver {
	private readonly state: ModeState;
	private readonly loading: Loading;
	private readonly supplies: Supplies;
	private readonly draws: readonly Draw[];
	private readonly net: Net;
	/** Loads of sources that take here what they give elsewhere. */
	private readonly inputs: readonly { readonly part: string; readonly load: Load; readonly efficiency: number }[];
	private readonly knots: KnotVolts;
	private readonly bridges: BridgeCurrents;

	constructor(state: ModeState, loading: Loading, supplies: Supplies, draws: readonly Draw[], net: Net) {
		this.state = state;
		this.loading = loading;
		this.supplies = supplies;
		this.net = net;
		this.draws = draws;
		const giving = new Set(supplies.supplies.map(({ source }) => source.part));
		this.inputs = [...supplies.conversions.values()].flatMap(({ source: { part }, load, efficiency }) => {
			const quiet = supplies.quiet.between(...load.between);
			const isWired =
				giving.has(part) && efficiency !== undefined && efficiency > 0 && quiet !== undefined && quiet !== 0;
			return isWired ? [{ part, load, efficiency }] : [];
		});
		this.knots = new KnotVolts(
			net,
			this.flowsAt(1, new Map()).map(({ from, to }) => [from, to]),
		);
		this.bridges = new BridgeCurrents(net);
	}

	/** With `share` of what every load asks for; undefined where nothing settles. */
	solve(share: number): Steady | undefined {
		let taken = new Map<string, number>();
		for (let turn = 0; turn < mostTurns; turn++) {
			const flows = this.flowsAt(share, taken);
			const found = this.knots.solve(flows);
			if (found === undefined) return undefined;
			const currents = this.currentsOf(found, flows);
			if (this.inputs.length === 0) return this.tell(found, flows, currents);
			const next = new Map<string, number>();
			let isSettled = true;
			for (const { part, efficiency } of this.inputs) {
				const power = Math.max(0, this.givenBy(part, currents)) / efficiency;
				next.set(part, power);
				if (Math.abs(power - (taken.get(part) ?? 0)) > 1e-10 * Math.max(1, power)) isSettled = false;
			}
			if (isSettled) return this.tell(found, flows, currents);
			taken = next;
		}
		return undefined;
	}

	/** The largest share at which it settles, by halving, to a thousandth. */
	findLargest(): { readonly share: number; readonly last: Steady | undefined } {
		let [low, high] = [0, 1];
		let last = this.solve(0);
		if (last === undefined) return { share: 0, last };
		while (high - low > 5e-4) {
			const middle = (low + high) / 2;
			const settled = this.solve(middle);
			if (settled === undefined) high = middle;
			else [low, last] = [middle, settled];
		}
		return { share: low, last };
	}

	/** The flows with what conversions take: always between the same points in the same order. */
	private flowsAt(share: number, taken: ReadonlyMap<string, number>): Flow[] {
		const { supplies, draws, loading } = this;
		const flows: Flow[] = [];
		for (const { load, nature, amount, quiet = 0 } of draws) {
			if (nature === "resistance") continue;
			const [from, to] = load.between;
			const sign = nature === "current" ? Math.sign(quiet) : 1;
			flows.push({ from, to, nature, amount: amount * share * sign, quiet });
		}
		for (const { part, load } of this.inputs) {
			const [from, to] = load.between;
			const quiet = supplies.quiet.between(from, to) ?? 0;
			flows.push({ from, to, nature: "power", amount: taken.get(part) ?? 0, quiet });
		}
		for (const { plus, minus, amperes: pushed } of supplies.chargers)
			flows.push({
				from: minus,
				to: plus,
				nature: "current",
				amount: loading === "loads" ? 0 : pushed * share,
				quiet: 0,
			});
		return flows;
	}

	/** What flows in each resistor, flow and bridge. */
	private currentsOf(found: Float64Array, flows: readonly Flow[]): Currents {
		const { resistors, circuit } = this.net;
		const arriving = new Float64Array(circuit.points.length);
		const carry = (from: number, to: number, current: number): number => {
			arriving[from] = (arriving[from] ?? 0) - current;
			arriving[to] = (arriving[to] ?? 0) + current;
			return current;
		};
		const inResistors = Float64Array.from(resistors, ({ from, to, siemens, rise }) =>
			carry(from, to, siemens * (this.knots.across(found, from, to) - rise)),
		);
		const inFlows = Float64Array.from(flows, ({ from, to, nature, amount }) =>
			carry(from, to, nature === "current" || amount === 0 ? amount : amount / this.knots.across(found, from, to)),
		);
		return { inResistors, inFlows, inBridges: this.bridges.solve(arriving) };
	}

	/** Watts that the supplies of a part give. */
	private givenBy(part: string, { inBridges, inResistors }: Currents): number {
		let power = 0;
		this.net.bridges.forEach(({ by }, at) => {
			if (by.kind === "supply" && by.supply.source.part === part) power -= by.supply.volts * (inBridges[at] ?? 0);
		});
		this.net.resistors.forEach(({ by }, at) => {
			if (by.kind === "supply" && by.supply.source.part === part) power -= by.supply.volts * (inResistors[at] ?? 0);
		});
		return power;
	}

	private tell(found: Float64Array, flows: readonly Flow[], currents: Currents): Steady {
		const { net, supplies, loading, state } = this;
		const { circuit, resistors, bridges, zeroOf, knotOf } = net;
		const inConductors = new Float64Array(circuit.conductors.length);
		const inLinks = new Float64Array(circuit.links.length);
		const given = new Map<Source, { legs: number[]; power: number }>();
		const give = ({ source, volts: rise }: { source: Source; volts: number }, out: number): void => {
			const known = given.get(source) ?? { legs: [], power: 0 };
			given.set(source, known);
			known.legs.push(rise < 0 && source.system === "ac" ? -out : out);
			known.power += rise * out;
		};
		let lost = 0;
		resistors.forEach(({ by, siemens }, at) => {
			const current = currents.inResistors[at] ?? 0;
			if (by.kind === "load") return;
			lost += current ** 2 / siemens;
			if (by.kind === "conductor") inConductors[by.index] = current;
			else give(by.supply, -current);
		});
		bridges.forEach(({ by }, at) => {
			const current = currents.inBridges[at] ?? 0;
			if (by.kind === "conductor") inConductors[by.index] = current;
			else if (by.kind === "link") inLinks[by.index] = current;
			else give(by.supply, -current);
		});
		const voltsAt = (point: number): Volts =>
			volts(this.knots.across(found, point, zeroOf[knotOf[point] ?? 0] ?? point));
		const across = (from: number, to: number): number => this.knots.across(found, from, to);
		return {
			kind: "steady",
			circuit,
			mode: state.mode.name,
			loading,
			voltsAt,
			amperesIn: (conductor) => amperes(inConductors[conductor] ?? 0),
			amperesThrough: (link) => amperes(inLinks[link] ?? 0),
			loads: this.tellLoads(across, flows, currents),
			sources: [...given]
				.map(([source, { legs, power }]) => tellSource(source, legs, power, false))
				.concat(
					supplies.chargers.map(({ source, plus, minus, amperes: pushed }) => {
						const out = loading === "loads" ? 0 : pushed;
						return tellSource(source, [out], out * across(plus, minus), true);
					}),
				),
			lost: watts(lost),
			supplies,
			net,
			flows,
		};
	}

	private tellLoads(
		across: (from: number, to: number) => number,
		flows: readonly Flow[],
		{ inFlows, inResistors }: Currents,
	): LoadFlow[] {
		const told: LoadFlow[] = [];
		const tellLoad = (load: Load, nature: Nature, quiet: number, current: number): void => {
			const left = across(...load.between);
			const sign = quiet < 0 || (quiet === 0 && left < 0) ? -1 : 1;
			told.push({
				load,
				nature,
				quiet: volts(quiet * sign),
				across: volts(left * sign),
				drawn: amperes(current * sign),
				used: powerOf(volts(left), amperes(current)),
			});
		};
		let at = 0;
		for (const { load, nature, quiet = 0 } of this.draws) {
			if (nature === "resistance") continue;
			tellLoad(load, nature, quiet, inFlows[at++] ?? 0);
		}
		for (const { load } of this.inputs) tellLoad(load, "power", flows[at]?.quiet ?? 0, inFlows[at++] ?? 0);
		this.net.resistors.forEach(({ by }, index) => {
			if (by.kind === "load") tellLoad(by.draw.load, "resistance", by.draw.quiet ?? 0, inResistors[index] ?? 0);
		});
		return told;
	}
}

interface Currents {
	readonly inResistors: Float64Array;
	readonly inFlows: Float64Array;
	readonly inBridges: Float64Array;
}

/** What feeds on another is there after a few turns; what feeds on itself never is. */
const mostTurns = 60;

function tellSource(source: Source, legs: readonly number[], power: number, charges: boolean): SourceFlow {
	return {
		source,
		given: amperes(legs.reduce((most, leg) => (Math.abs(leg) > Math.abs(most) ? leg : most), 0)),
		legs: legs.map((leg) => amperes(leg)),
		power: watts(power),
		charges,
	};
}
