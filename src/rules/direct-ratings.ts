// Buses, fuse blocks, shunts, disconnects and switches for direct current that are made for less than can flow through them.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { joinWhere } from "../analysis/joined-sets.ts";
import { isUnprotected } from "../analysis/own-fuses.ts";
import { ownLinks } from "../analysis/own-links.ts";
import { traceDirectSwitched } from "../analysis/switched.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Part, Protection, Source } from "../circuit/circuit.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { citation } from "../handbook/provenance.ts";
import { foldName } from "../plan/names.ts";
import { findOverDirect } from "./over-modes.ts";

/** Every such part, in any mode. */
export function findDirectUndersized(analysis: Analysis, code: string): Finding[] {
	return findOverDirect(analysis, (direct) => {
		if (direct.contradicted.length > 0) return [];
		return [...findBehindFuses(analysis.circuit, direct, code), ...findOverSwitched(analysis.circuit, direct, code)];
	});
}

/** What can flow through a part, and the devices that let it. */
interface Flow {
	readonly amperes: number;
	readonly devices: readonly Protection[];
}

function findBehindFuses(circuit: Circuit, direct: DirectState, code: string): Finding[] {
	const parts = circuit.parts.filter(({ kind }) => judged.has(kind));
	const unrated: Part[] = [];
	const shunts = new ShuntFlows(circuit, direct);
	const found = parts.flatMap((part): Finding[] => {
		const flow = part.kind === "shunt" ? shunts.through(part) : flowInto(direct, part);
		if (flow === undefined) return [];
		const rating = ratingOf(circuit, part);
		if (rating === undefined) unrated.push(part);
		return rating === undefined || flow.amperes <= rating ? [] : [tellBehind(part, rating, flow, code)];
	});
	return unrated.length === 0 ? found : [...found, tellUnrated(unrated, code)];
}

/** Kinds that carry all that the fuse ahead of them lets through. */
const judged: ReadonlySet<string> = new Set(["bus", "fuse-block", "shunt", "disconnect"]);

/** What was said of it, as it is on its face; a disconnect has one that is only assumed too. */
function ratingOf({ plan }: Circuit, { name, face }: Part): number | undefined {
	const said = plan.thingByName.get(foldName(name))?.said.quantity("rating")?.value;
	return said === undefined ? undefined : (face.rating ?? said);
}

/** What the fuse ahead lets into a bus, or all fuses together that stand between it and batteries. */
function flowInto(direct: DirectState, part: Part): Flow | undefined {
	const { exposure, ownFuses } = direct;
	const point = part.points.find((candidate) => exposure.has(candidate));
	const here = point === undefined ? undefined : exposure.get(point);
	// Behind nothing that opens, that is the fault to tell; a charger gives no more than it is made for.
	if (point === undefined || here?.device === undefined || here.device.sort === "supply") return undefined;
	const own = ofOneSide(
		direct,
		part,
		(ownFuses.devicesAt.get(ownFuses.sets.find(point)) ?? []).filter(({ rating }) => rating !== undefined),
	);
	const together = sumOf(own);
	return together >= here.amperes
		? { amperes: together, devices: own }
		: { amperes: here.amperes, devices: [here.device] };
}

/** Through what lies in line only that flows which comes from one of its sides: of the devices those of the side with most. */
function ofOneSide({ network }: DirectState, part: Part, devices: readonly Protection[]): readonly Protection[] {
	const [line, load] = part.points;
	if (devices.length < 2 || part.kind === "bus" || part.kind === "fuse-block") return devices;
	const through = ownLinks(network.circuit, new Set([part.name]));
	const joined = joinWhere(
		network,
		(edge) => isUnprotected(edge) && (edge.by.kind === "conductor" || !through.has(edge.by.link.index)),
	);
	const onSide = (point: number | undefined): readonly Protection[] =>
		devices.filter(({ links }) =>
			links.some((link) =>
				network.circuit.links[link]?.between.some((end) => point !== undefined && joined.isJoined(end, point)),
			),
		);
	const [one, other] = [onSide(line), onSide(load)];
	return sumOf(one) >= sumOf(other) ? one : other;
}

function sumOf(devices: readonly Protection[]): number {
	return devices.reduce((sum, { rating }) => sum + (rating ?? 0), 0);
}

/** What can flow through shunts: for each bank whose minus lies behind one, what its own fuse lets through. */
class ShuntFlows {
	private readonly circuit: Circuit;
	private readonly direct: DirectState;

	constructor(circuit: Circuit, direct: DirectState) {
		this.circuit = circuit;
		this.direct = direct;
	}

	through(shunt: Part): Flow | undefined {
		const [line, load] = shunt.points;
		if (line === undefined || load === undefined) return undefined;
		if (this.direct.poles.sortsAt(line).has("hot")) return flowInto(this.direct, shunt);
		const through = ownLinks(this.circuit, new Set([shunt.name]));
		const joined = joinWhere(this.direct.network, ({ by }) => by.kind === "conductor" || !through.has(by.link.index));
		const behind = ([one, other]: readonly [number, number]): Source[] =>
			this.circuit.sources.filter(
				({ sort, neutral }) =>
					sort === "battery" &&
					neutral !== undefined &&
					joined.isJoined(neutral, one) &&
					!joined.isJoined(neutral, other),
			);
		const banks = [behind([line, load]), behind([load, line])].filter((bank) => bank.length > 0);
		// With batteries on both sides nobody can say which of them it is for.
		const [bank] = banks;
		return bank === undefined || banks.length > 1 ? undefined : this.flowFrom(bank);
	}

	private flowFrom(bank: readonly Source[]): Flow | undefined {
		const { sets, devicesOf } = this.direct.ownFuses;
		const devices = [...new Set(bank.map(({ hot }) => sets.find(hot[0] ?? 0)))].flatMap((set) => {
			const [largest] = (devicesOf.get(set) ?? []).toSorted((one, other) => (other.rating ?? 0) - (one.rating ?? 0));
			return largest === undefined ? [] : [largest];
		});
		return devices.length === 0 ? undefined : { amperes: sumOf(devices), devices };
	}
}

function tellBehind(part: Part, rating: number, { amperes, devices }: Flow, code: string): Finding {
	const names = devices.map(({ part: name }) => name);
	return finding({
		code,
		level: "error",
		title: `${part.name} is made for ${tell(rating)}, and ${listNames(names)} ${names.length > 1 ? "let" : "lets"} ${tell(amperes)} through${names.length > 1 ? " together" : ""}`,
		span: part.span,
		label: `made for ${tell(rating)}`,
		also: devices.map(({ span, rating: own }) => ({ span, label: tell(own ?? 0) })),
		marks: [part.name, ...names],
		figures: [{ name: "protection", found: amperes, limit: rating, unit: "A", source: basis }],
		why: "On more than it is made for it overheats at its studs, melts what holds it and can burn.",
		help: `Use one of ${tell(amperes)} or more for ${part.name}, or a smaller fuse ahead of it.`,
		basis,
		key: `${code}@${part.name}`,
	});
}

const basis = citation(dcClause("busbar").provenance);

function tellUnrated(parts: readonly Part[], code: string): Finding {
	const names = parts.map(({ name }) => name);
	const first = certain(parts[0], "a part");
	return finding({
		code,
		level: "note",
		unchecked: true,
		title: `Whether ${listNames(names)} ${names.length > 1 ? "bear" : "bears"} what flows through ${names.length > 1 ? "them" : "it"} is not checked: the rating is missing`,
		span: first.span,
		also: parts.slice(1, 9).map(({ span, name }) => ({ span, label: name })),
		marks: names,
		why: "A bus, block or shunt made for less than the fuse ahead of it burns before the fuse opens.",
		help: "Write what is printed on it, in amperes.",
		basis,
		key: `${code}@rating/${first.name}`,
	});
}

function findOverSwitched(circuit: Circuit, direct: DirectState, code: string): Finding[] {
	return traceDirectSwitched(circuit, direct).flatMap(({ part, continuous, other, largest, count }): Finding[] => {
		const rating = part.kind === "disconnect" ? ratingOf(circuit, part) : part.face.rating;
		// No more for long than the fuse ahead lets through: not everything of a whole bank runs at once.
		const load = Math.min(continuous + other, flowInto(direct, part)?.amperes ?? Number.POSITIVE_INFINITY);
		if (rating === undefined || load <= rating + rounding) return [];
		const name = largest?.part ?? part.name;
		const loadPart = circuit.partByName.get(name);
		return [
			finding({
				code,
				level: "error",
				title: `${part.name} is made for ${tell(rating)}, and ${count > 1 ? `${name} and ${count - 1} more behind it draw` : `${name} behind it draws`} ${tell(load)}`,
				span: part.span,
				label: `made for ${tell(rating)}`,
				also: loadPart === undefined ? [] : [{ span: loadPart.span, label: loadPart.face.text }],
				marks: [...new Set([part.name, name])],
				figures: [
					{ name: "load", found: Number(load.toFixed(3)), limit: rating, unit: "A", source: "common practice" },
				],
				why: "Its contacts overheat, weld together or burn away, and then it no longer opens.",
				help: `Use one of ${tell(Math.ceil(load))} or more for ${part.name}, or let it switch a relay.`,
				basis: "common practice",
				key: `${code}@${part.name}`,
			}),
		];
	});
}

/** A sum of quotients may miss a rating by a hair. */
const rounding = 1e-6;

function tell(amperes: number): string {
	return `${formatNumber(amperes, 1)} A`;
}
