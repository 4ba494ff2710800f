// Devices that open by themselves, on too much current or on current that does not come back, for the judge of the tests.
import type { Way } from "./nodal.ts";
import { amperesIn, type Branch, type Frame, type Opened, type Wiring, wire } from "./wiring.ts";

/** A breaker opens at once from so many times its rating up, a fuse as well (IEC 60898-1 type B, read; others common practice). */
const opensAtOnce = 5;

/** Lets devices open one after another, the one that is furthest beyond its limit first; ground-fault devices may be stuck. */
export function settle(
	frame: Frame,
	start: Wiring,
	residualDevices: "works" | "stuck",
	faults: readonly Way[] = [],
): { wiring: Wiring; shorted: readonly string[]; isResidual: boolean } {
	let wiring = start;
	const shorted: string[] = [];
	let isResidual = false;
	for (let turn = 0; turn < 12; turn++) {
		const openings = openingsOf(wiring).filter(({ sort }) => sort === "overcurrent" || residualDevices === "works");
		for (const { sort, part } of openings) if (sort === "overcurrent") shorted.push(part);
		const [next] = openings.toSorted((one, other) => other.ratio - one.ratio);
		if (next === undefined) break;
		isResidual ||= next.sort === "residual";
		const opened: Opened = {
			groups: new Set([...wiring.opened.groups, ...next.groups]),
			sources: new Set([...wiring.opened.sources, ...next.sources]),
		};
		wiring = wire(frame, wiring.state, opened, faults);
	}
	return { wiring, shorted, isResidual };
}

interface Opening {
	readonly sort: "overcurrent" | "residual";
	readonly part: string;
	readonly groups: readonly string[];
	readonly sources: readonly string[];
	readonly ratio: number;
}

/** What opens at once. */
function openingsOf(wiring: Wiring): readonly Opening[] {
	const { circuit, volts, opened } = wiring;
	const openings: Opening[] = [];
	for (const device of devicesOf(wiring)) {
		if (device.limit === undefined) continue;
		const ratio = Math.max(...device.poles.map((pole) => Math.abs(amperesIn(pole, volts)))) / device.limit;
		if (ratio >= opensAtOnce) openings.push({ ...device, sort: "overcurrent", ratio });
	}
	for (const { part, trip } of circuit.groundFaults) {
		const groups = [
			...new Set(circuit.links.flatMap((link) => (link.part === part ? (link.contact?.group ?? []) : []))),
		];
		const ratio = (Math.abs(residual(wiring, part, volts)) * 1000) / trip;
		if (ratio >= 1 && groups.some((group) => !opened.groups.has(group)))
			openings.push({ sort: "residual", part, groups, sources: [], ratio });
	}
	return openings;
}

/** What leaves by the contacts of a ground-fault device and does not return by them. */
export function residual({ circuit, branches }: Wiring, part: string, volts: Float64Array): number {
	const device = circuit.groundFaults.find((candidate) => candidate.part === part);
	const lines = new Set(device === undefined ? [] : [device.line.hot, device.line.hot2, device.line.neutral]);
	let sum = 0;
	for (const branch of branches) {
		const link = branch.link === undefined ? undefined : circuit.links[branch.link];
		if (link?.part !== part || link.contact === undefined) continue;
		sum += (lines.has(link.between[0]) ? 1 : -1) * amperesIn(branch, volts);
	}
	return sum;
}

/** A device that opens on too much current. */
export interface Device {
	readonly part: string;
	readonly limit: number | undefined;
	readonly groups: readonly string[];
	readonly sources: readonly string[];
	readonly poles: readonly Branch[];
}

/** Every closed device that opens on too much current: the poles of one are one. */
export function devicesOf({ circuit, branches }: Wiring): readonly Device[] {
	return circuit.protections.flatMap((protection): Device[] => {
		const { part, rating, links, source } = protection;
		const poles = branches.filter((branch) =>
			source === undefined ? branch.link !== undefined && links.includes(branch.link) : branch.source === source,
		);
		if (poles.length === 0) return [];
		return [
			{
				part,
				limit: rating,
				groups: links.flatMap((link) => circuit.links[link]?.contact?.group ?? []),
				sources: source === undefined ? [] : [source],
				poles,
			},
		];
	});
}

/** Ground-fault devices, and others that open a neutral: what stands behind them loses its way back when they open. */
export function neutralOpeners({ circuit }: Wiring): readonly (readonly string[])[] {
	const parts = new Map<string, Set<string>>();
	for (const { part, contact, between } of circuit.links) {
		const isDevice = circuit.protections.some((device) => device.part === part) || isGroundFault(circuit, part);
		const opensNeutral = between.some((point) => circuit.points[point]?.role === "neutral");
		if (contact !== undefined && isDevice && opensNeutral)
			parts.set(part, (parts.get(part) ?? new Set()).add(contact.group));
	}
	return [...parts.values()].map((groups) => [...groups]);
}

function isGroundFault({ groundFaults }: Wiring["circuit"], name: string): boolean {
	return groundFaults.some(({ part }) => part === name);
}
