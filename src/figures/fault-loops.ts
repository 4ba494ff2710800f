// What a fault lets flow at the end of each cable, from hot to ground and from pole to pole, and when what stands before it opens.
import { type Amperes, amperes, type Ohms, ohms } from "../base/measures.ts";
import type { Cable, Circuit, Protection } from "../circuit/circuit.ts";
import { tripBand, tripPointsFor } from "../handbook/breaker-trip.ts";
import { citation } from "../handbook/provenance.ts";
import type { Role } from "../kinds/kind.ts";
import { Elimination } from "./elimination.ts";
import { buildNet, type Net } from "./net.ts";
import type { ModeSetup } from "./steady-state.ts";

/** A fault at one place: the loop's resistance, and what flows in it while its wires are warm. */
export interface FaultLoop {
	readonly sort: "to ground" | "pole to pole";
	/** Undefined where no way leads back, so that nothing opens; then no current is told either. */
	readonly ohms: Ohms | undefined;
	readonly amperes: Amperes | undefined;
	/** So many times the rating of the device before it; undefined where there is none. */
	readonly multiple: number | undefined;
	/** When that opens, in words. */
	readonly opens: string;
	readonly source: string | undefined;
}
/** The faults at the end of a cable. */
export interface FaultsAt {
	readonly cable: Cable;
	readonly device: Protection | undefined;
	readonly loops: readonly FaultLoop[];
}

/** The faults at the end of every cable that brings a hot which is live. */
export function findFaultLoops({ state, links, supplies }: ModeSetup): readonly FaultsAt[] {
	const { circuit } = state.network;
	const loops = new LoopOhms(buildNet(circuit, links, supplies, []));
	return circuit.cables.flatMap((cable): FaultsAt[] => {
		const at = (...roles: readonly Role[]): number | undefined => pointAt(circuit, cable, roles);
		const hot = at("hot", "positive");
		const back = at("neutral", "negative") ?? at("hot2");
		const ground = at("ground");
		if (hot === undefined || cable.runSort === "bond") return [];
		const exposed = state.exposure.get(hot) ?? state.direct?.exposure.get(hot);
		const device = exposed?.nearest?.device;
		const isThroughEarth = circuit.sources.some(({ name, ownEarth }) => name === exposed?.source && ownEarth);
		const tell = (sort: FaultLoop["sort"], other: number | undefined): FaultLoop[] => {
			if (other === undefined) return [];
			const volts = Math.abs(supplies.quiet.between(hot, other) ?? 0);
			const resistance = volts === 0 ? undefined : loops.between(hot, other);
			// A ground that no bond leads back from has no volts to the hot; a pole without any is not live.
			if (volts === 0 && sort === "pole to pole") return [];
			if (sort === "to ground" && isThroughEarth)
				return [untold(sort, "through the earth (TT): by a residual-current device only")];
			return [tellLoop(circuit, sort, device, resistance, volts)];
		};
		const found = [...tell("to ground", ground), ...tell("pole to pole", back)];
		return found.length === 0 || supplies.quiet.between(hot, back ?? hot) === undefined
			? []
			: [{ cable, device, loops: found }];
	});
}

function tellLoop(
	circuit: Circuit,
	sort: FaultLoop["sort"],
	device: Protection | undefined,
	resistance: number | undefined,
	volts: number,
): FaultLoop {
	if (resistance === undefined) return untold(sort, "no way back: nothing opens");
	if (resistance < leastOhms) return untold(sort, "no length is known on the way");
	const current = volts / resistance;
	const multiple = device?.rating === undefined ? undefined : current / device.rating;
	return {
		sort,
		ohms: ohms(resistance),
		amperes: amperes(current),
		multiple,
		...tellOpening(circuit, device, multiple),
	};
}

function untold(sort: FaultLoop["sort"], opens: string): FaultLoop {
	return { sort, ohms: undefined, amperes: undefined, multiple: undefined, opens, source: undefined };
}

/** Less is no wire of which anything is known. */
const leastOhms = 1e-7;

/** By the published bands and points; between them the maker's curve decides. */
function tellOpening(
	{ plan }: Circuit,
	device: Protection | undefined,
	multiple: number | undefined,
): Pick<FaultLoop, "opens" | "source"> {
	if (device?.rating === undefined || multiple === undefined)
		return { opens: "no rated device before it", source: undefined };
	if (device.sort === "fuse") return { opens: "by the curve of the fuse", source: undefined };
	if (plan.settings.region === "iec") {
		const types = (["B", "C", "D"] as const).filter((type) => multiple >= tripBand(type).upTo);
		const source = citation(tripBand("B").provenance);
		return types.length === 0
			? { opens: "not at once, whatever its type", source }
			: { opens: `at once if of type ${types.join(" or ")}`, source };
	}
	const points = tripPointsFor("UL 489", device.rating).filter(
		(point) => point.latest !== undefined && multiple >= point.multiple,
	);
	const point = points.at(-1);
	return point?.latest === undefined
		? { opens: "within no time that is published", source: undefined }
		: { opens: `within ${point.latest} s`, source: citation(point.provenance) };
}

/** The point at a cable's far end that a conductor for one of these roles is on. */
function pointAt(circuit: Circuit, { conductors }: Cable, roles: readonly Role[]): number | undefined {
	for (const index of conductors) {
		const conductor = circuit.conductors[index];
		const point = conductor?.ends[1].point;
		if (conductor !== undefined && point !== undefined && roles.includes(conductor.role)) return point;
	}
	return undefined;
}

/** Resistances between points of a net whose sources are as good as wires. */
class LoopOhms {
	private readonly net: Net;
	private readonly unknownOf: Int32Array;
	private readonly count: number;
	private readonly elimination: Elimination;
	private readonly isSolvable: boolean;

	constructor(net: Net) {
		this.net = net;
		const { knots, isReference, resistors, knotOf } = net;
		this.unknownOf = new Int32Array(knots).fill(-1);
		let count = 0;
		for (let knot = 0; knot < knots; knot++) if (isReference[knot] === 0) this.unknownOf[knot] = count++;
		this.count = count;
		const diagonal = new Float64Array(count);
		const values = new Float64Array(resistors.length);
		const pairs = resistors.map(({ from, to, siemens }, at): readonly [number, number] => {
			const [one, other] = [this.unknownOf[knotOf[from] ?? 0] ?? -1, this.unknownOf[knotOf[to] ?? 0] ?? -1];
			const lone = Math.max(one, other, 0);
			if (one !== other) {
				values[at] = -siemens;
				if (one >= 0) diagonal[one] = (diagonal[one] ?? 0) + siemens;
				if (other >= 0) diagonal[other] = (diagonal[other] ?? 0) + siemens;
			}
			return one < 0 || other < 0 ? [lone, lone] : [one, other];
		});
		this.elimination = new Elimination(count, pairs);
		this.isSolvable = this.elimination.factor(diagonal, values);
	}

	/** Ohms between two points; undefined where nothing joins them. */
	between(one: number, other: number): number | undefined {
		const { knotOf, zeroOf } = this.net;
		const [first, second] = [knotOf[one] ?? 0, knotOf[other] ?? 0];
		if (first === second) return 0;
		if (!this.isSolvable || zeroOf[first] !== zeroOf[second]) return undefined;
		const [high, low] = [this.unknownOf[first] ?? -1, this.unknownOf[second] ?? -1];
		const right = new Float64Array(this.count);
		if (high >= 0) right[high] = 1;
		if (low >= 0) right[low] = -1;
		const volts = this.elimination.solve(right);
		return (high < 0 ? 0 : (volts[high] ?? 0)) - (low < 0 ? 0 : (volts[low] ?? 0));
	}
}
