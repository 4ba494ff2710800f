// What size each circuit needs, as text for a terminal and as JSON.
import { formatGauge } from "../../base/gauge.ts";
import { formatNumber } from "../../base/quantity.ts";
import type { CircuitSize, SizeTried } from "../checker.ts";
import { type Cell, writeColumns } from "./columns.ts";
import { visibleLines, wrap } from "./visible.ts";

/** The sizes of one plan, by the name of its file, with its text: lines to write are lines of it. */
export interface SizedPlan {
	readonly file: string;
	readonly text: string;
	readonly units: "feet" | "metres";
	readonly sizes: readonly CircuitSize[];
}

/** A block for each circuit. */
export function writeSizes(plans: readonly SizedPlan[]): string {
	return visibleLines(
		[
			...plans.flatMap((plan) => [
				plan.file,
				"",
				...(plan.sizes.length === 0 ? ["  No circuit hangs on a device with a rating.", ""] : []),
				...plan.sizes.flatMap((size) => writeSize(size, plan)),
			]),
			...wrap(
				"Nothing is written into the plan. The code in force, the makers' papers and a licensed person decide; what a cable is protected at, how it lies and what lies beside it count too.",
				columns,
			),
		].join("\n"),
	);
}

function writeSize(size: CircuitSize, plan: SizedPlan): string[] {
	const { run, device, rating, plugged, tried, chosen, governing, now, missing } = size;
	const isTried = tried.some(({ gauge }) => gauge.mm2 === now.gauge.mm2);
	const told = (isTried ? tried : [...tried, now]).map((each) => rowOf(each, chosen, now));
	const lines = [
		...tellProtection(size),
		...(plugged === undefined
			? []
			: [
					`counted with ${number(plugged.amperes)} A drawn at ${plugged.part}, four fifths of ${device.part}, where the way is longest (common practice)`,
				]),
		...(missing.length === 0 ? [] : [`length missing, so nothing counted as lost in ${missing.join(", ")}`]),
		chosen === undefined
			? `no usual size keeps every limit${governing === "" ? "" : `: ${governing}`}; look at the feeder, the way or the load`
			: `${formatGauge(chosen.gauge)} is the thinnest that keeps every limit${governing === "" ? "" : `; governed by ${governing}`}`,
		...(chosen === undefined || chosen.because === "" ? [] : [`${chosen.because} (${chosen.source})`]),
		...tellReach(size, plan.units),
		...tellWrite(size, plan.text),
	];
	return [
		`circuit ${run.name}${run.label === "" || run.label === run.name ? "" : ` (${run.label})`}, ${device.part} ${number(rating)} A, now ${formatGauge(now.gauge)}`,
		...writeColumns(["size", "device at most", "drop %", "own %", ""], told).map((line) => `  ${line}`),
		...lines.flatMap((line) => wrap(`- ${line}`, columns - 2).map((row, at) => `  ${at === 0 ? "" : "  "}${row}`)),
		"",
	];
}

const columns = 80;

function rowOf(tried: SizeTried, chosen: SizeTried | undefined, now: SizeTried): Cell[] {
	const { gauge, largest, worst, bearsDevice, keepsDrop } = tried;
	const faults = [
		...(bearsDevice ? [] : ["its device is too large"]),
		...(worst === undefined ? ["nothing settles"] : keepsDrop ? [] : ["it loses too much"]),
	];
	const isNow = gauge.mm2 === now.gauge.mm2;
	return [
		formatGauge(gauge),
		{ figure: largest === undefined ? "-" : `${number(largest)} A` },
		{ figure: worst === undefined ? "-" : upward(worst.percent) },
		{ figure: worst === undefined ? "-" : upward(worst.ownPercent) },
		[tried === chosen ? "fits" : faults.join(", "), ...(isNow ? ["now"] : [])].filter((text) => text !== "").join(", "),
	];
}

function tellProtection({ asked, askedBy, needed, rating }: CircuitSize): string[] {
	if (needed === undefined) return [];
	const least = `its fixed loads ask for ${number(asked)} A (${askedBy}): ${number(needed)} A is the smallest standard rating that is enough`;
	return [asked > rating + 1e-6 ? `${least}, and ${number(rating)} A is TOO SMALL` : least];
}

function tellReach({ reach, now }: CircuitSize, units: SizedPlan["units"]): string[] {
	if (reach === undefined) return [];
	const length = units === "feet" ? `${number(reach.longest / 0.3048, 0)} ft` : `${number(reach.longest, 1)} m`;
	return [
		`by its drop ${formatGauge(now.gauge)} would do for about ${number(reach.share, 2)} times the load as it is, or for ${length} of cable in all at this load`,
	];
}

/** The lines of the plan as they would be, where they name the cable; else what to write for it. */
function tellWrite({ write, run }: CircuitSize, text: string): string[] {
	if (write === undefined) return [];
	const line = text.split("\n")[run.span.line - 1] ?? "";
	const from = `by ${write.from}`;
	const at = line.indexOf(from);
	if (at < 0 || line.indexOf(from, at + 1) >= 0) return [`write \`by ${write.to}\` in place of \`${from}\``];
	return [`write line ${run.span.line}: ${line.replace(from, () => `by ${write.to}`).trim()}`];
}

function number(value: number, decimals = 2): string {
	return formatNumber(value, decimals);
}

/** What is lost is never told smaller than it is. */
function upward(value: number): string {
	return (Math.ceil(value * 100 - 1e-6) / 100).toFixed(2);
}

/** By the schema published in `grammar/sizes.schema.json`. */
export function writeSizesJson(plans: readonly SizedPlan[]): string {
	const told = plans.map(({ file, sizes }) => ({
		file,
		circuits: sizes.map((size) => ({
			name: size.run.name,
			device: size.device.part,
			rating: size.rating,
			askedAmperes: size.asked,
			neededRating: size.needed ?? null,
			plugged: size.plugged ?? null,
			now: tellTried(size.now),
			tried: size.tried.map(tellTried),
			chosen: size.chosen === undefined ? null : formatGauge(size.chosen.gauge),
			governing: size.governing,
			reach: size.reach === undefined ? null : { share: size.reach.share, metres: size.reach.longest },
			write: size.write ?? null,
			missing: size.missing,
		})),
	}));
	return `${JSON.stringify({ schema: 1, plans: told }, undefined, 2)}\n`;
}

function tellTried({ gauge, largest, because, source, worst, bearsDevice, keepsDrop, fits }: SizeTried) {
	return {
		size: formatGauge(gauge),
		largestDevice: largest ?? null,
		because,
		source,
		percent: worst?.percent ?? null,
		ownPercent: worst?.ownPercent ?? null,
		bearsDevice,
		keepsDrop,
		fits,
	};
}
