// Fuses and breakers of the direct-current side: what the rules on protection say of leads that carry more than they may.
import type { Analysis } from "../analysis/analysis.ts";
import type { ConductorLimit } from "../analysis/conductor-limit.ts";
import type { DirectState } from "../analysis/direct.ts";
import { type ExposedLead, findExposedLeads } from "../analysis/direct-leads.ts";
import { nameMixUp } from "../analysis/mislabelled.ts";
import { tellWay } from "../analysis/network.ts";
import { batteryWithin } from "../analysis/own-fuses.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatGauge } from "../base/gauge.ts";
import { formatNumber } from "../base/quantity.ts";
import type { Span } from "../base/span.ts";
import { listNames, startSentence } from "../base/wording.ts";
import type { Circuit, Conductor, Protection, Source } from "../circuit/circuit.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { type DeviceDistance, deviceDistance } from "../handbook/dc-protection.ts";
import { citation, type Provenance } from "../handbook/provenance.ts";
import { findOverDirect } from "./over-modes.ts";

/** Leads with nothing that opens before what they feed, and batteries with no device but that of another one. */
export function findUnprotected(analysis: Analysis, code: string): Finding[] {
	return findOverDirect(analysis, (direct) =>
		leadsOf(analysis, direct).flatMap((lead) => {
			const { exposure, farthest, reaches, limit } = lead;
			const other = reaches.length > 0 ? undefined : findOtherOwner(analysis.circuit, direct, lead);
			const isBare = exposure.device === undefined && (reaches.length > 0 || farthest === undefined);
			if (!isBare && other === undefined) return [];
			const what = other === undefined ? (reaches.length === 0 ? "" : ` before ${listNames(reaches)}`) : "";
			const only = other === undefined ? "" : `: ${other.device.part} is the fuse of ${other.battery.name}`;
			return [
				finding({
					...placeOf(analysis.circuit, direct, lead, code),
					level: "danger",
					title: `No fuse or breaker protects ${tellLead(lead)} from ${exposure.source}${what}${only}`,
					label: "nothing opens before it",
					also: other === undefined ? [] : [{ span: other.device.span, label: `at ${other.battery.name}` }],
					why: `A short circuit anywhere on it draws all that ${exposure.source} can give, and it burns from end to end.`,
					help: `Put a fuse${limit === undefined ? "" : ` of ${formatNumber(limit.largest, 1)} A or less`} at ${exposure.source}, ${tellNear(analysis.circuit)}.`,
					basis: citation(dcClause("device at the source").provenance),
				}),
			];
		}),
	);
}

/** The battery whose own fuse is all that stands at the end of a lead from another battery. */
function findOtherOwner(
	circuit: Circuit,
	direct: DirectState,
	lead: ExposedLead,
): { readonly device: Protection; readonly battery: Source } | undefined {
	if (lead.exposure.device !== undefined || !lead.atBattery || !isTooLong(circuit, lead)) return undefined;
	const { near } = distancesOf(circuit, true);
	for (const [device, beyond] of lead.devices) {
		const battery = batteryWithin(direct.network, beyond, near.metres + hair);
		if (battery !== undefined) return { device, battery };
	}
	return undefined;
}

/** Leads behind a device that is larger than they may have, before something they feed. */
export function findTooLarge(analysis: Analysis, code: string): Finding[] {
	return findOverDirect(analysis, (direct) => {
		const leads = leadsOf(analysis, direct);
		const blamed = new Set(leads.map(({ exposure }) => exposure.device));
		return leads.flatMap((lead) => {
			const { limit, reaches, farthest, exposure, overrated } = lead;
			// What is behind the device tells of it, where that is as thin.
			const isOverrated = overrated !== undefined && !blamed.has(overrated);
			const isBehind =
				exposure.device !== undefined &&
				(reaches.length > 0 ||
					farthest === undefined ||
					isOverdrawn(lead) ||
					isLongBehindDevice(analysis.circuit, lead));
			const device = isBehind ? exposure.device : isOverrated ? overrated : undefined;
			const amperes = isBehind ? exposure.amperes : (overrated?.rating ?? 0);
			if (device === undefined || limit === undefined) return [];
			const size = formatGauge(lead.first.gauge);
			return [
				finding({
					...placeOf(analysis.circuit, direct, lead, code),
					level: "danger",
					title: `${tellDevices(device, amperes, isBehind ? exposure.beside : undefined)} too large for ${tellLead(lead)}: ${formatNumber(limit.largest, 1)} A at most`,
					label: `${formatNumber(limit.largest, 1)} A at most`,
					also: [{ span: device.span, label: `${formatNumber(amperes, 1)} A` }],
					figures: [{ name: "protection", found: amperes, limit: limit.largest, unit: "A", source: limit.source }],
					why: `${startSentence(limit.because)}; with more it can glow before the device opens.`,
					help: `Put a fuse of ${formatNumber(limit.largest, 1)} A or less where it begins, or use a conductor thicker than ${size}.${tellRecalled(limit)}`,
					basis: limit.source,
					...followsMixUp(analysis.circuit, lead.first, device),
				}),
			];
		});
	});
}

/** `The 200 A fuse F1 is`; of batteries in parallel `F1 and F2 with 400 A together are`. */
function tellDevices({ part, sort }: Protection, amperes: number, beside: readonly Protection[] = []): string {
	if (beside.length === 0) return `The ${formatNumber(amperes, 1)} A ${sort} ${part} is`;
	return `${listNames([part, ...beside.map((other) => other.part)])} with ${formatNumber(amperes, 1)} A together are`;
}

function tellRecalled({ recalled }: ConductorLimit): string {
	return recalled ? " This limit is recalled, not read: look it up before you rely on it." : "";
}

/** What is behind the fuse of another circuit than its own is too thin for it for that reason. */
function followsMixUp(
	{ plan, cableByTag }: Circuit,
	{ cable }: Conductor,
	{ part }: Protection,
): Pick<Finding, "consequenceOf"> {
	const run = cableByTag.get(cable ?? "")?.run;
	const said = plan.runs.find(({ name }) => name === run)?.protection;
	const isBranch = said !== undefined && said !== part && plan.runs.some(({ protection }) => protection === part);
	return isBranch ? { consequenceOf: `circuit-mislabelled@${nameMixUp({ said, found: part })}` } : {};
}

/** Leads of which nothing says what they may have, or what the device ahead lets through: told once for all of them. */
export function findUnjudged(analysis: Analysis, code: string): Finding[] {
	return findOverDirect(analysis, (direct) => {
		const { circuit } = analysis;
		const unknown = leadsOf(analysis, direct).filter(
			({ limit, exposure }) => limit === undefined && exposure.device !== undefined,
		);
		const unrated = circuit.protections.filter(
			({ rating, sort, links }) =>
				rating === undefined &&
				sort !== "supply" &&
				circuit.links[links[0] ?? -1]?.between.some((point) => direct.exposure.has(point)),
		);
		return [
			...tellUnjudged(
				code,
				unknown.map(({ first }) => ({ name: first.cable ?? first.name, span: first.span })),
				"a published limit for a conductor of its metal and size",
				"Look it up in the maker's paper, or use copper of a usual size.",
			),
			...tellUnjudged(
				code,
				unrated.map(({ part, span }) => ({ name: part, span })),
				"its rating",
				"Write the amperes that are printed on it.",
			),
		];
	});
}

function tellUnjudged(
	code: string,
	things: readonly { readonly name: string; readonly span: Span }[],
	missing: string,
	help: string,
): Finding[] {
	const [first, ...others] = things;
	if (first === undefined) return [];
	const names = [...new Set(things.map(({ name }) => name))];
	return [
		finding({
			code,
			level: "note",
			unchecked: true,
			title: `Protection by way of ${listNames(names)} is not checked: ${missing} is missing`,
			span: first.span,
			also: others.slice(0, 8).map(({ span, name }) => ({ span, label: name })),
			marks: names,
			why: "Whether the device opens before the conductor burns cannot be told.",
			help,
			basis: citation(dcClause("device rating").provenance),
			key: `${code}@unjudged/${missing}`,
		}),
	];
}

/** Leads on to a device that stands too far from where they begin. */
export function findTooFar(analysis: Analysis, code: string): Finding[] {
	return findOverDirect(analysis, (direct) =>
		leadsOf(analysis, direct).flatMap((lead) => {
			const { farthest, reaches } = lead;
			if (reaches.length > 0 || farthest === undefined || isOverdrawn(lead)) return [];
			// What is too thin for the device it begins at, or has none of its own at all, is told as that.
			if (isLongBehindDevice(analysis.circuit, lead)) return [];
			if (findOtherOwner(analysis.circuit, direct, lead) !== undefined) return [];
			const { near, sheathed } = distancesOf(analysis.circuit, lead.atBattery);
			const { metres, device } = farthest;
			const isLong = metres !== undefined && metres > near.metres + hair;
			if (metres !== undefined && !isLong) return [];
			const isSheathed = sheathed !== undefined && metres !== undefined && metres <= sheathed.metres + hair;
			const inches = metres === undefined ? undefined : metres / 0.0254;
			const figure = inches === undefined ? undefined : Number(inches.toFixed(1));
			const limit = (isSheathed ? near : (sheathed ?? near)).inches;
			return [
				finding({
					...placeOf(analysis.circuit, direct, lead, code),
					level: metres === undefined || isSheathed ? "note" : "error",
					...(metres === undefined ? { unchecked: true as const } : {}),
					title:
						metres === undefined
							? `How far ${device.part} stands from ${startOf(lead)} is not checked: a length is missing`
							: `${device.part} stands ${tellLength(analysis.circuit, metres)} along the conductor from ${startOf(lead)}; ${tellLength(analysis.circuit, near.metres)} is the most${isSheathed ? " without a sheath" : ""}`,
					label: "not protected so far",
					also: [{ span: device.span, label: "first device" }],
					figures:
						figure === undefined
							? []
							: [{ name: "distance", found: figure, limit, unit: "in", source: citation(near.provenance) }],
					why: "Up to the device nothing opens: a short circuit on that stretch burns the conductor and what is near it.",
					help: isSheathed
						? "Lead it through a sheath or conduit all the way, or move the device nearer."
						: `Move ${device.part} to within ${tellLength(analysis.circuit, near.metres)} of ${startOf(lead)}.`,
					basis: citation(near.provenance),
				}),
			];
		}),
	);
}

/** Whether the devices at the ends of a lead behind a device let more through together than it may have. */
function isOverdrawn({ exposure, limit, together }: ExposedLead): boolean {
	return exposure.device !== undefined && limit !== undefined && together > limit.largest;
}

/** Whether a lead begins at a device that is too large for it, and runs on further than it may before the next. */
function isLongBehindDevice(circuit: Circuit, lead: ExposedLead): boolean {
	return lead.atDevice && lead.exposure.device !== undefined && isTooLong(circuit, lead);
}

function isTooLong(circuit: Circuit, { farthest, atBattery }: ExposedLead): boolean {
	const metres = farthest?.metres;
	return metres !== undefined && metres > distancesOf(circuit, atBattery).near.metres + hair;
}

/** Lengths are read to the tenth of an inch. */
const hair = 0.003;

function leadsOf({ circuit }: Analysis, direct: DirectState): readonly ExposedLead[] {
	return findExposedLeads(circuit, direct).filter(({ first }) => !isBatteryLink(circuit, first.ends));
}

/** Between the posts of two batteries of one bank. */
function isBatteryLink(circuit: Circuit, ends: readonly { readonly point?: number | undefined }[]): boolean {
	return ends.every(({ point }) => {
		const found = point === undefined ? undefined : circuit.points[point];
		const part = found?.kind === "terminal" ? found.part : undefined;
		return circuit.sources.some((source) => source.part === part && source.sort === "battery");
	});
}

function tellLead({ conductors, first }: ExposedLead): string {
	const names = [...new Set(conductors.map(({ cable, name }) => cable ?? name))];
	return `${formatGauge(first.gauge)} in ${listNames(names)}`;
}

function startOf({ exposure }: ExposedLead): string {
	return exposure.device === undefined ? exposure.source : `where it leaves the ${exposure.device.part} side`;
}

function placeOf(
	circuit: Circuit,
	direct: DirectState,
	{ first, conductors }: ExposedLead,
	code: string,
): Pick<Finding, "code" | "key" | "span" | "marks" | "path"> {
	const cable = first.cable === undefined ? undefined : circuit.cableByTag.get(first.cable);
	const names = [...new Set(conductors.map((conductor) => conductor.cable ?? conductor.name))];
	const point = first.ends[1].point ?? first.ends[0].point;
	const way = point === undefined ? undefined : direct.poles.reachOf(point, "hot");
	return {
		code,
		key: `${code}@${names[0] ?? ""}`,
		span: cable?.span ?? first.span,
		marks: names,
		path: point === undefined || way === undefined ? [] : tellWay(circuit, way.edgesTo(point), point),
	};
}

type Distance = DeviceDistance & { readonly provenance: Provenance };

/** How near the device must stand, and how near in a sheath where the rules allow for one. */
function distancesOf(
	{ plan }: Circuit,
	atBattery: boolean,
): { readonly near: Distance; readonly sheathed: Distance | undefined } {
	if (plan.settings.rules !== "boat") return { near: deviceDistance("low voltage of a vehicle"), sheathed: undefined };
	return {
		near: deviceDistance("anywhere"),
		sheathed: deviceDistance(atBattery ? "sheathed, at a battery terminal" : "sheathed or enclosed"),
	};
}

function tellNear(circuit: Circuit): string {
	return `within ${tellLength(circuit, distancesOf(circuit, true).near.metres)} of it`;
}

function tellLength({ plan }: Circuit, metres: number): string {
	return plan.settings.region === "us"
		? `${formatNumber(metres / 0.0254, 1)} in`
		: `${formatNumber(metres * 100, 0)} cm`;
}
