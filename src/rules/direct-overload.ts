// Loads and chargers for direct current that draw or give more than the fuse or breaker on their way carries.
import type { Analysis } from "../analysis/analysis.ts";
import type { Demand } from "../analysis/demand.ts";
import type { DirectState } from "../analysis/direct.ts";
import { reachFrom } from "../analysis/network.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding, type LabelledSpan } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Load, Protection, Source } from "../circuit/circuit.ts";
import { continuousLoad } from "../handbook/branch-circuits.ts";
import { keyOfMixUpAt } from "./circuit-mislabelled.ts";
import { findOverDirect } from "./over-modes.ts";

/** What a rule says of all of them. */
type Slots = Pick<Finding, "code" | "basis">;

/** Every fuse or breaker for direct current that carries less than what is on it, in any mode. */
export function findDirectOverloads(analysis: Analysis, slots: Slots): Finding[] {
	return findOverDirect(analysis, (direct) => {
		if (direct.contradicted.length > 0) return [];
		return [...findLoads(analysis, direct, slots), ...findChargers(analysis.circuit, direct, slots)];
	});
}

/** Devices that share what is behind them, with all that they have to carry together. */
interface Shared {
	readonly devices: readonly Protection[];
	readonly rating: number;
	readonly continuous: number;
	readonly other: number;
	readonly loads: readonly Load[];
	readonly unknown: readonly Load[];
	readonly feedsDevices: boolean;
}

function findLoads(analysis: Analysis, direct: DirectState, slots: Slots): Finding[] {
	const { circuit } = analysis;
	return gatherShared(circuit, direct).flatMap((shared): Finding[] => {
		const factor = circuit.plan.settings.region === "us" ? continuousLoad.factor : 1;
		const counted = shared.continuous * factor + shared.other;
		const unknown = shared.feedsDevices ? [] : shared.unknown.filter((load) => hasPlate(circuit, load));
		return [
			...(counted > shared.rating + rounding ? [tellLoads(analysis, direct, shared, counted, slots)] : []),
			...(unknown.length === 0 ? [] : [tellUnknown(circuit, shared, unknown, slots)]),
		];
	});
}

/** Each device by itself, and the fuses of batteries in parallel as one. */
function gatherShared(circuit: Circuit, { demand, ownFuses }: DirectState): Shared[] {
	const together = new Map<Protection, readonly Protection[]>();
	for (const group of ownFuses.devicesAt.values())
		if (group.length > 1) for (const device of group) together.set(device, group);
	const byDevices = new Map<readonly Protection[] | Protection, Demand[]>();
	for (const one of demand.values()) {
		if (one.loads.length === 0 && one.unknown.length === 0) continue;
		const key = together.get(one.device) ?? one.device;
		const known = byDevices.get(key);
		if (known === undefined) byDevices.set(key, [one]);
		else known.push(one);
	}
	return [...byDevices.values()].flatMap((demands): Shared[] => {
		const first = certain(demands[0], "a demand");
		const devices = together.get(first.device) ?? [first.device];
		if (devices.some(({ rating }) => rating === undefined)) return [];
		// What a battery, a charger or an alternator gives as the source it is, its own maker limits.
		if (devices.some(({ sort }) => sort === "supply") && !isConverter(circuit, first.device)) return [];
		return [
			{
				devices,
				rating: devices.reduce((sum, { rating }) => sum + (rating ?? 0), 0),
				continuous: demands.reduce((sum, { continuous }) => sum + continuous, 0),
				other: demands.reduce((sum, { other }) => sum + other, 0),
				loads: demands.flatMap(({ loads }) => loads),
				unknown: demands.flatMap(({ unknown }) => unknown),
				feedsDevices: demands.some(({ feedsDevices }) => feedsDevices),
			},
		];
	});
}

function isConverter({ partByName }: Circuit, { part }: Protection): boolean {
	return convertersOf.has(partByName.get(part)?.kind ?? "");
}

const convertersOf: ReadonlySet<string> = new Set(["converter"]);

function tellLoads(analysis: Analysis, direct: DirectState, shared: Shared, counted: number, slots: Slots): Finding {
	const { circuit } = analysis;
	const { potentials } = direct;
	const { devices, rating, continuous, other, loads, feedsDevices } = shared;
	const names = [...new Set(loads.map(({ part }) => part))];
	const device = certain(devices[0], "a device");
	const fuses = listNames(devices.map(({ part }) => part));
	const most = loads.toSorted((one, next) => (next.watts ?? 0) - (one.watts ?? 0))[0];
	const largest =
		most?.watts === undefined ? 0 : most.watts / Math.max(1, Math.abs(potentials.between(...most.between) ?? 12));
	// Not everything behind a feeder runs at once: only what must, decides.
	const isCertain = !feedsDevices || continuous > rating + rounding || largest > rating + rounding;
	const mixUp = keyOfMixUpAt(analysis, direct, device);
	const opensAtOnce = continuous + other > rating + rounding;
	return finding({
		...slots,
		level: !isCertain ? "note" : opensAtOnce ? "error" : "warning",
		title: `The loads behind ${fuses} count ${amperes(counted)}, and ${devices.length > 1 ? "they carry" : "it carries"} ${amperes(rating)}`,
		span: device.span,
		label: amperes(rating),
		also: placesOf(circuit, names),
		marks: [device.part, ...names],
		figures: [
			{
				name: "load",
				found: Number(counted.toFixed(3)),
				limit: Number(rating.toFixed(3)),
				unit: "A",
				source: slots.basis,
			},
		],
		why: `${amperes(continuous + other)} flow with everything on${continuous > 0 && counted > continuous + other ? `, and ${amperes(continuous)} of it for hours count a quarter more` : ""}: ${opensAtOnce ? "the fuse opens, or runs hot in its holder until it does" : "it runs hot in its holder, and opens on a warm day"}.`,
		help: isCertain
			? `Move ${most?.part ?? "a load"} to a fuse of its own, or use a larger fuse for ${fuses} with wires that bear it.`
			: "Decide what is never to run together, and write it down where you see it.",
		key: `${slots.code}@${device.part}`,
		...(mixUp === undefined ? {} : { consequenceOf: mixUp }),
	});
}

function tellUnknown(circuit: Circuit, { devices }: Shared, unknown: readonly Load[], slots: Slots): Finding {
	const names = [...new Set(unknown.map(({ part }) => part))];
	const device = certain(devices[0], "a device");
	return finding({
		...slots,
		level: "note",
		unchecked: true,
		title: `Load of ${device.part} not checked: the power of ${listNames(names)} is missing`,
		span: device.span,
		also: placesOf(circuit, names),
		marks: [device.part, ...names],
		why: "Whether the fuse carries everything at once cannot be told.",
		help: "Write what the plate says, in watts or amperes.",
		key: `${slots.code}@${device.part}/unknown`,
	});
}

/** A coil, and what a solar controller takes, have no power of their own to write. */
function hasPlate({ partByName }: Circuit, { part }: Load): boolean {
	return !withoutPlate.has(partByName.get(part)?.kind ?? "");
}

const withoutPlate: ReadonlySet<string> = new Set(["relay", "contactor", "solar-controller"]);

/** Sources that give more than the smallest device between them and the battery they fill. */
function findChargers(circuit: Circuit, { network }: DirectState, slots: Slots): Finding[] {
	const chargers = circuit.sources.filter(
		({ sort, system, limit }) => system === "dc" && sort === "other" && limit !== undefined,
	);
	const posts = circuit.sources.flatMap(({ sort, hot }) => (sort === "battery" ? hot : []));
	if (chargers.length === 0 || posts.length === 0) return [];
	const reach = reachFrom(network, posts, () => true);
	return chargers.flatMap((charger): Finding[] => {
		const [plus] = charger.hot;
		const device = plus === undefined ? undefined : smallestOn(circuit, reach.edgesTo(plus));
		if (device?.rating === undefined || (charger.limit ?? 0) <= device.rating + rounding) return [];
		return [tellCharger(circuit, charger, device, slots)];
	});
}

function smallestOn(
	{ protections }: Circuit,
	way: ReturnType<ReturnType<typeof reachFrom>["edgesTo"]>,
): Protection | undefined {
	let smallest: Protection | undefined;
	for (const { by } of way) {
		const device = by.kind === "link" ? protections[by.link.protection ?? -1] : undefined;
		if (device?.rating !== undefined && device.rating < (smallest?.rating ?? Number.POSITIVE_INFINITY))
			smallest = device;
	}
	return smallest;
}

function tellCharger({ partByName }: Circuit, charger: Source, device: Protection, slots: Slots): Finding {
	const part = partByName.get(charger.part);
	return finding({
		...slots,
		level: "error",
		title: `${charger.part} gives up to ${amperes(charger.limit ?? 0)} through ${device.part}, which carries ${amperes(device.rating ?? 0)}`,
		span: device.span,
		label: amperes(device.rating ?? 0),
		also: part === undefined ? [] : [{ span: part.span, label: part.face.text }],
		marks: [device.part, charger.part],
		figures: [{ name: "charge", found: charger.limit ?? 0, limit: device.rating ?? 0, unit: "A", source: slots.basis }],
		why: "The fuse opens while it charges, and what charges without its battery can be destroyed.",
		help: `Use a fuse of ${amperes(charger.limit ?? 0)} or more for ${device.part}, with wires that bear it.`,
		key: `${slots.code}@${device.part}/${charger.part}`,
	});
}

function placesOf({ partByName }: Circuit, names: readonly string[]): LabelledSpan[] {
	return names.slice(0, 8).flatMap((name) => {
		const part = partByName.get(name);
		return part === undefined ? [] : [{ span: part.span, label: part.face.text }];
	});
}

function amperes(value: number): string {
	return `${formatNumber(value, 1)} A`;
}

/** A sum of quotients may miss a rating by a hair. */
const rounding = 1e-6;
