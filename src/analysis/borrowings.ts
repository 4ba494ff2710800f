// Loads whose way back does not belong to their hot, with the landing at which the two part.
import { certain } from "../base/certain.ts";
import { groupBy } from "../base/group.ts";
import type { Circuit, GroundFaultDevice } from "../circuit/circuit.ts";
import type { Coverage } from "./coverage.ts";
import { type Feeder, feederOfCircuit } from "./feeders.ts";
import { bothEnds } from "./landings.ts";
import type { PoleMap } from "./poles.ts";
import type { Return, ReturningLoad } from "./returns.ts";

/** One way back that is not the loads' own. */
export type Borrowing = {
	/** At least one. */
	readonly loads: readonly ReturningLoad[];
	/** The end at which the neutral leaves its own way; undefined where no single one is to be named. */
	readonly end?: { readonly conductor: number; readonly which: 0 | 1 };
} & (
	| {
			readonly kind: "other-circuit";
			readonly own: string;
			readonly other: string;
			/** Set where the other is the supply that the circuit itself hangs on, whose neutral carries it anyway. */
			readonly isSupply?: true;
			/** Loads of the other circuit that return with this one in exchange. */
			readonly turned: readonly ReturningLoad[];
	  }
	/** Two devices that do not open together share the neutral of one cable. */
	| { readonly kind: "not-tied"; readonly devices: readonly [string, string] }
	/** Both poles of a device on one leg share a neutral. */
	| { readonly kind: "one-leg"; readonly device: string }
	/** One of hot and neutral goes through a ground-fault device, the other past it or through another. */
	| {
			readonly kind: "past-device";
			readonly device: string;
			readonly passes: "hot" | "neutral";
			readonly other: string | undefined;
			/** Loads of which hot and neutral go the other way round through the same two devices. */
			readonly turned: readonly ReturningLoad[];
	  }
);

/** The facts of a mode that it follows from. */
interface Ways {
	readonly returns: readonly Return[];
	readonly feeders: ReadonlyMap<number, Feeder>;
	readonly coverage: Coverage;
	readonly crossings: { readonly poles: PoleMap };
}

/** Every borrowed way back of a mode. */
export function findBorrowings(circuit: Circuit, ways: Ways): readonly Borrowing[] {
	const nameDevice = deviceNames(circuit);
	const devicesOf = devicesOfCables(circuit, ways.feeders, nameDevice);
	const shared = ways.returns.flatMap((one) => judgeReturn(circuit, one, devicesOf, nameDevice));
	return [...mergeExchanges(shared), ...findPastDevices(circuit, ways)];
}

/** Two circuits that return with each other are one exchange. */
function mergeExchanges(borrowings: readonly Borrowing[]): readonly Borrowing[] {
	const kept: Borrowing[] = [];
	for (const one of borrowings) {
		const half = kept.findIndex(
			(other) =>
				one.kind === "other-circuit" &&
				other.kind === "other-circuit" &&
				other.own === one.other &&
				other.other === one.own,
		);
		const first = kept[half];
		if (first?.kind === "other-circuit") kept[half] = { ...first, turned: [...first.turned, ...one.loads] };
		else kept.push(one);
	}
	return kept;
}

/** The names of what protects the hots of each cable, by its tag: several where it carries several circuits. */
type CableDevices = ReadonlyMap<string, ReadonlySet<string>>;

function devicesOfCables(circuit: Circuit, feeders: ReadonlyMap<number, Feeder>, nameDevice: NameDevice): CableDevices {
	const found = new Map<string, Set<string>>();
	for (const { cable, ends } of circuit.conductors) {
		if (cable === undefined) continue;
		for (const { point } of ends) {
			const feeder = point === undefined ? undefined : feeders.get(point);
			if (feeder === undefined) continue;
			found.set(cable, (found.get(cable) ?? new Set()).add(nameDevice(feederOfCircuit(feeder))));
		}
	}
	return found;
}

/**
 * What opens a hot, by its part: several whose handles are tied by the first of them, poles of one part that do not open together by
 * their terminals; what nothing protects by an empty name.
 */
type NameDevice = (feeder: Feeder | undefined) => string;

function deviceNames({ links, points }: Circuit): NameDevice {
	const names = new Map<string, string>();
	const named = new Set<string>();
	for (const { contact, part, between } of links) {
		if (contact === undefined || names.has(contact.group)) continue;
		names.set(contact.group, named.has(part) ? (points[between[1]]?.name ?? part) : part);
		named.add(part);
	}
	return (feeder) => {
		const group = links[feeder?.contact ?? -1]?.contact?.group;
		return (group === undefined ? undefined : names.get(group)) ?? feeder?.protection?.part ?? "";
	};
}

function judgeReturn(circuit: Circuit, shared: Return, devicesOf: CableDevices, nameDevice: NameDevice): Borrowing[] {
	const loads = shared.loads.filter(({ feeder }) => feeder !== undefined);
	if (loads.length === 0) return [];
	const ownOf = ({ feeder }: ReturningLoad): string => nameDevice(feeder);
	const devices = [...groupBy(loads, ownOf).keys()];
	const home = shared.home.flatMap((index) => [...(devicesOfConductor(circuit, index, devicesOf) ?? [])]);
	// The neutral is that of the circuit whose cable takes it home; where several do, that of the first.
	const owner = home.find((device) => devices.includes(device)) ?? home[0] ?? devices[0] ?? "";
	const borrowing = loads.filter((load) => ownOf(load) !== owner);
	const [first] = borrowing;
	if (first !== undefined) {
		const end = findMeeting(circuit, shared, owner, devicesOf);
		const own = ownOf(first);
		// A cable that carries both hots shares its neutral on purpose: then the two devices must open together.
		const isShared = shared.conductors.some((index) => {
			const inCable = devicesOfConductor(circuit, index, devicesOf);
			return inCable?.has(own) === true && inCable.has(owner);
		});
		if (isShared) return [{ kind: "not-tied", loads, devices: [owner, own] }];
		const mine = borrowing.filter((load) => ownOf(load) === own);
		const isSupply = circuit.protections.some(
			({ part, source }) => part === owner && source === first.feeder?.pole.source,
		);
		return [
			{
				kind: "other-circuit",
				loads: mine,
				own,
				other: owner,
				...(isSupply ? { isSupply } : {}),
				turned: [],
				...(end === undefined ? {} : { end }),
			},
		];
	}
	const contacts = new Set(loads.map(({ feeder }) => feeder?.contact));
	const poles = new Set(loads.map(({ feeder }) => feeder?.pole));
	return contacts.size > poles.size ? [{ kind: "one-leg", loads, device: owner }] : [];
}

function devicesOfConductor(circuit: Circuit, index: number, devicesOf: CableDevices): ReadonlySet<string> | undefined {
	const { cable } = certain(circuit.conductors[index], "a conductor");
	return cable === undefined ? undefined : devicesOf.get(cable);
}

/** Where a conductor of another circuit than the owner's is landed with one of the owner's: its end. */
function findMeeting(
	circuit: Circuit,
	{ conductors }: Return,
	owner: string,
	devicesOf: CableDevices,
): Borrowing["end"] {
	const owned = new Set<number>();
	const foreign: { conductor: number; which: 0 | 1; point: number }[] = [];
	for (const index of conductors) {
		const devices = devicesOfConductor(circuit, index, devicesOf);
		if (devices === undefined) continue;
		for (const which of bothEnds) {
			const { point } = certain(circuit.conductors[index], "a conductor").ends[which];
			if (point === undefined) continue;
			if (devices.has(owner)) owned.add(point);
			else foreign.push({ conductor: index, which, point });
		}
	}
	const met = foreign.find(({ point }) => owned.has(point));
	return met === undefined ? undefined : { conductor: met.conductor, which: met.which };
}

/** Loads of which hot and neutral do not pass the same ground-fault device last. */
function findPastDevices(circuit: Circuit, { returns, coverage, crossings }: Ways): Borrowing[] {
	const found = returns
		.flatMap(({ loads }) => loads)
		.flatMap((load) => {
			const [hot, neutral] = [coverage.deviceAt(load.hot), coverage.deviceAt(load.neutral)];
			if (load.feeder === undefined || hot === undefined || neutral === undefined) return [];
			if (hot !== neutral) return [{ load, hot: hot ?? undefined, neutral: neutral ?? undefined }];
			// Through the same device last, and yet past one that stands further ahead.
			const [out, back] = [coverage.devicesBefore(load.hot), coverage.devicesBefore(load.neutral)];
			if (out.length === back.length) return [];
			return [
				{
					load,
					hot: out.find((device) => !back.includes(device)),
					neutral: back.find((device) => !out.includes(device)),
				},
			];
		});
	const groups = groupBy(found, ({ hot, neutral }) => [hot?.part ?? "", neutral?.part ?? ""].toSorted().join(" "));
	return [...groups.values()].map((group): Borrowing => {
		const { load, hot, neutral } = certain(group[0], "a load");
		const device = certain(hot ?? neutral, "a device");
		const passes = hot === undefined ? "neutral" : "hot";
		const end = findParting(circuit, crossings.poles, device, load, passes);
		return {
			kind: "past-device",
			loads: group.filter((one) => one.hot === hot).map((one) => one.load),
			device: device.part,
			passes,
			other: hot === undefined ? undefined : neutral?.part,
			turned: group.filter((one) => one.hot !== hot).map((one) => one.load),
			...(end === undefined ? {} : { end }),
		};
	});
}

/** The conductor that leaves the device's box for the load without having passed the device. */
function findParting(
	circuit: Circuit,
	poles: PoleMap,
	device: GroundFaultDevice,
	load: ReturningLoad,
	passes: "hot" | "neutral",
): Borrowing["end"] {
	const [point, sort] = passes === "hot" ? ([load.neutral, "neutral"] as const) : ([load.hot, "hot"] as const);
	const box = circuit.partByName.get(device.part)?.enclosure;
	for (const { by, from } of (poles.reachOf(point, sort)?.edgesTo(point) ?? []).toReversed()) {
		if (by.kind !== "conductor" || circuit.points[from]?.enclosure !== box) continue;
		const conductor = certain(circuit.conductors[by.index], "a conductor");
		return { conductor: by.index, which: conductor.ends[0].point === from ? 0 : 1 };
	}
	return undefined;
}
