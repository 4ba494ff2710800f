// Whether conductors and devices keep their limits: what is ahead of a wire opens before the wire suffers.
import { analyse } from "../analysis/analysis.ts";
import { conductorLimit } from "../analysis/conductor-limit.ts";
import { findExposedLeads } from "../analysis/direct-leads.ts";
import { directLimit } from "../analysis/direct-limit.ts";
import { traceComingBack } from "../analysis/direct-returns.ts";
import { type Edge, reachFrom } from "../analysis/network.ts";
import { sortOfRole } from "../analysis/poles.ts";
import { compareGauges } from "../base/gauge.ts";
import type { Circuit, Conductor, Load, Part } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { deviceDistance } from "../handbook/dc-protection.ts";
import { equipmentGroundFor } from "../handbook/equipment-ground.ts";
import { servicesOf } from "./services.ts";

/** Whether each of some conductors may have what devices let through it; a lead that comes with a device is its maker's to size. */
export function areProtected(circuit: Circuit, conductors: readonly Conductor[]): boolean {
	return conductors.every((conductor) => isLead(circuit, conductor) || isProtected(circuit, conductor));
}

/** Whether an end of a conductor is on a protective device that suits it. */
export function endsOnDevice(circuit: Circuit, conductor: Conductor): boolean {
	const limit = limitOf(circuit, conductor);
	return circuit.protections.some(
		({ rating, links }) =>
			rating !== undefined &&
			limit !== undefined &&
			rating <= limit &&
			links.some((link) =>
				circuit.links[link]?.between.some((point) => conductor.ends.some((end) => end.point === point)),
			),
	);
}

/** Whether all devices at the ends of a lead that none protects stand near its battery, and let no more through than it may have. */
export function isNearItsFuses(circuit: Circuit, conductor: Conductor): boolean {
	if (circuit.plan.settings.rules !== "boat") return false;
	return analyse(circuit).states.every(({ direct }) => {
		const leads = direct === undefined ? [] : findExposedLeads(circuit, direct);
		const lead = leads.find(({ conductors }) => conductors.includes(conductor));
		const metres = lead?.farthest?.metres;
		// Nothing comes through a device with nothing on its other side.
		const together = [...(lead?.devices ?? [])].reduce(
			(sum, [{ rating }, beyond]) =>
				sum + ((direct?.network.edges[beyond]?.length ?? 0) > 1 ? (rating ?? Number.POSITIVE_INFINITY) : 0),
			0,
		);
		return (
			lead !== undefined &&
			metres !== undefined &&
			lead.limit !== undefined &&
			lead.atBattery &&
			lead.reaches.length === 0 &&
			metres <= deviceDistance("sheathed, at a battery terminal").metres &&
			together <= lead.limit.largest
		);
	});
}

/** Whether what came back by a negative that is not there any more has another way without bonds, all of which bears it. */
export function comesBackElsewhere(before: Circuit, wrong: Circuit, removed: Conductor): boolean {
	const amperes = amperesThrough(before, removed);
	const [start, end] = removed.ends.map(({ point }) => point);
	if (removed.role !== "negative" || amperes === undefined || start === undefined || end === undefined) return false;
	const isBond = ({ cable }: Conductor): boolean => wrong.cableByTag.get(cable ?? "")?.runSort === "bond";
	return analyse(wrong).states.every(({ direct }) => {
		if (direct === undefined) return false;
		const reach = reachFrom(direct.network, [start], ({ by }) => {
			const conductor = by.kind === "conductor" ? wrong.conductors[by.index] : undefined;
			return conductor === undefined || !isBond(conductor);
		});
		return (
			reach.has(end) &&
			reach.edgesTo(end).every(({ by }) => {
				const conductor = by.kind === "conductor" ? wrong.conductors[by.index] : undefined;
				if (conductor === undefined) return true;
				const limit = limitOf(wrong, conductor);
				return limit !== undefined && limit >= Math.max(amperes, comingBack(wrong, conductor) ?? 0);
			})
		);
	});
}

/** Whether a part may carry what comes through it: what devices let through, or all that hangs on it, where that is known. */
export function mayCarry(circuit: Circuit, { name, points, face: { rating } }: Part): boolean {
	if (rating === undefined) return false;
	const services = servicesOf(circuit);
	const ahead = services.mostThrough(points, ({ by }: Edge) => by.kind === "link" && by.link.part === name);
	if (ahead !== undefined && ahead <= rating) return true;
	const loads = services.loadsBehind(name);
	const amperes = loads.map((load) => amperesOf(circuit, load));
	const known = amperes.flatMap((one) => one ?? []);
	return known.length > 0 && known.length === amperes.length && sum(known) <= rating;
}

function isProtected(circuit: Circuit, conductor: Conductor): boolean {
	const limit = limitOf(circuit, conductor);
	const comes = amperesThrough(circuit, conductor);
	if (comes === undefined) return false;
	if (limit !== undefined && limit >= comes) return true;
	const row = conductor.role === "ground" ? equipmentGroundFor(comes) : undefined;
	return row !== undefined && compareGauges(conductor.gauge, row.copper) >= 0;
}

function limitOf(circuit: Circuit, conductor: Conductor): number | undefined {
	if (systemOfRole(conductor.role) === "dc") {
		const volts = Math.max(0, ...circuit.sources.map((source) => (source.system === "dc" ? source.volts : 0)));
		return directLimit(circuit, conductor, volts)?.largest;
	}
	const limit = conductorLimit(circuit, conductor);
	return limit === undefined || limit.beyondTable === true ? undefined : limit.largest;
}

/** What may come through a conductor: for a hot what devices let through, for another what the hots bring that it goes with. */
function amperesThrough(circuit: Circuit, conductor: Conductor): number | undefined {
	const { role, cable } = conductor;
	if (sortOfRole(role) === "hot") return hotThrough(circuit, conductor);
	const back = role === "negative" ? comingBack(circuit, conductor) : undefined;
	if (back !== undefined) return back;
	const system = systemOfRole(role);
	const fellows = circuit.conductors.filter(
		(other) =>
			sortOfRole(other.role) === "hot" &&
			(system === undefined || systemOfRole(other.role) === system) &&
			goesWith(conductor, other),
	);
	if (fellows.length > 0) return most(fellows.map((fellow) => hotThrough(circuit, fellow)));
	// A negative that runs by itself, and no load's way back, may bring back what any fuse lets out; of a bond nothing is known here.
	return role === "negative" && cable !== undefined ? most(circuit.protections.map(({ rating }) => rating)) : undefined;
}

/** The most that comes back through a negative in any mode; undefined where nothing does, or no device limits it. */
function comingBack(circuit: Circuit, { index }: Conductor): number | undefined {
	const asked = new Set([index]);
	const amperes = analyse(circuit).states.flatMap(({ direct }) =>
		direct === undefined ? [] : (traceComingBack(circuit, direct, asked).get(index)?.amperes ?? []),
	);
	return amperes.length === 0 ? undefined : Math.max(...amperes);
}

function hotThrough(circuit: Circuit, { index, ends }: Conductor): number | undefined {
	return servicesOf(circuit).mostThrough(
		ends.map(({ point }) => point),
		({ by }) => by.kind === "conductor" && by.index === index,
	);
}

/** Whether a conductor is of the cable of another, or in the box of one that stays in its box. */
function goesWith(one: Conductor, other: Conductor): boolean {
	if (one.cable !== undefined) return one.cable === other.cable;
	return other.ends.some(({ enclosure }) => enclosure === one.ends[0].enclosure);
}

function amperesOf(circuit: Circuit, { watts, volts, between, outlet }: Load): number | undefined {
	const own =
		volts ??
		circuit.sources.find(({ system }) => system === systemOfRole(circuit.points[between[0]]?.role ?? "hot"))?.volts;
	return outlet || watts === undefined || own === undefined ? undefined : watts / own;
}

function isLead(circuit: Circuit, { ends }: Conductor): boolean {
	return ends.some(({ point }) => {
		const on = point === undefined ? undefined : circuit.points[point];
		return on?.kind === "terminal" && on.clamp === "lead";
	});
}

function most(values: readonly (number | undefined)[]): number | undefined {
	const known = values.flatMap((value) => value ?? []);
	return known.length === 0 || known.length < values.length ? undefined : Math.max(...known);
}

function sum(values: readonly number[]): number {
	return values.reduce((total, value) => total + value, 0);
}
