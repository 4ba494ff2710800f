// Outlets and lights in places that ask for ground-fault protection, with a way from a source that passes no such device.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Landings } from "../analysis/landings.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Load, Part, Source } from "../circuit/circuit.ts";
import { type GroundFaultRow, groundFaultPlacesFor } from "../handbook/ground-fault-places.ts";
import { citation, type Sourced } from "../handbook/provenance.ts";
import type { Region } from "../kinds/kind.ts";
import type { Place } from "../plan/plan.ts";
import { live } from "./meter-test.ts";
import { keyOfMistake } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const groundFaultMissing: Rule = {
	code: "ground-fault-missing",
	level: "error",
	what: "A receptacle outdoors, in a wet place or near a basin or bath, or a light over a bath, is not behind a ground-fault device.",
	why: "Where people stand wet or on the ground, a leak that no breaker notices can kill.",
	help: "Use a ground-fault receptacle there, feed it from the LOAD side of one, or take a ground-fault breaker for the circuit.",
	basis:
		"handbook table ground-fault-places, recalled in part: NFPA 70 210.8 and 551.41(C), ABYC E-11, IEC 60364-7-721",
	meter: [
		live(
			"plug-in tester",
			"its ground-fault button pressed at the outlet; the button needs a sound ground, so test that first",
			"a light that stays on",
		),
	],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs:
			"The places are those of the region and of the rule set. Lights over a bath are looked at in campers and in IEC countries, not in US buildings and boats.",
	},
	wrong: [
		`place porch outdoor
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit porch from LC breaker 20 A by 12-2
  14 ft to p1: receptacle in porch
`,
		`place galley sink 6 ft
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit galley from LC breaker 20 A by 12-2
   5 ft to g2: receptacle in galley
  11 ft to g1: gfci in galley
`,
	],
	right: [
		`place galley sink 6 ft 1 in
place porch outdoor
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit galley from LC breaker 20 A by 12-2
   5 ft to g2: receptacle in galley
  11 ft to g1: gfci in porch
   5 ft to p1: receptacle in porch
`,
	],
	check: (analysis) => findOverModes(analysis, (state) => checkMode(analysis, state)),
};

type Row = Sourced<GroundFaultRow>;

function checkMode(analysis: Analysis, state: ModeState): Finding[] {
	const { circuit, landings } = analysis;
	const { region, rules } = circuit.plan.settings;
	const rowsOf = {
		receptacle: groundFaultPlacesFor(region, rules, "receptacle"),
		light: groundFaultPlacesFor(region, rules, "light"),
	};
	const findings = new Map<string, Finding>();
	for (const load of circuit.loads) {
		const part = circuit.partByName.get(load.part);
		const sort = part === undefined ? undefined : sortOf(part);
		if (part === undefined || sort === undefined || findings.has(part.name)) continue;
		const row = rowsOf[sort].find(
			(candidate) => isIn(part.enclosure.place, candidate) && !isCovered(state, load, candidate),
		);
		if (row !== undefined) findings.set(part.name, tell(circuit, landings, state, part, load, row));
	}
	return [...findings.values(), ...checkSupply(analysis, state)];
}

function sortOf({ face: { traits } }: Part): "receptacle" | "light" | undefined {
	return traits.includes("receptacle") ? "receptacle" : traits.includes("light") ? "light" : undefined;
}

/** Whether a row speaks of a place. Rows for rooms that a plan has no word for say nothing here. */
function isIn(place: Place | undefined, row: GroundFaultRow): boolean {
	if (row.place === "everywhere") return true;
	if (place === undefined) return false;
	if (row.place === "basin") return place.basin !== undefined && place.basin <= (row.within ?? 0) + tolerance;
	return place.traits.has(row.place === "bathroom" ? "bath" : row.place);
}

/** Metres by which a figure that is written in feet may miss its limit in metres. */
const tolerance = 1e-6;

/** Whether hot and neutral pass a device that trips early enough; what nothing feeds asks for none. */
function isCovered({ coverage, poles }: ModeState, load: Load, row: GroundFaultRow): boolean {
	const isLive = load.between.some((point) => poles.sortsAt(point).has("hot"));
	return !isLive || load.between.every((point) => coverage.isCovered(point, row.trip));
}

function tell(circuit: Circuit, landings: Landings, state: ModeState, part: Part, load: Load, row: Row): Finding {
	const place = part.enclosure.place;
	const device = load.between.map((point) => state.coverage.deviceAt(point)).find((found) => found);
	const late = device !== undefined && device !== null && device.trip > row.trip;
	const hot = load.between.find((point) => state.poles.sortsAt(point).has("hot")) ?? load.between[0];
	const behind = findCause(landings, state, part, load);
	return finding({
		code: groundFaultMissing.code,
		level: "error",
		title: late
			? `${part.name} is ${tellPlace(row, place, circuit.plan.settings.region)}, and ${device.part} ahead of it opens only at ${formatNumber(device.trip)} mA`
			: `${part.name} is ${tellPlace(row, place, circuit.plan.settings.region)} and has no ground-fault protection`,
		span: part.span,
		label: "no ground-fault protection",
		also: place === undefined ? [] : [{ span: place.span, label: "the place" }],
		marks: [part.name, circuit.points[hot]?.name ?? ""],
		path: state.poles.reachOf(hot, "hot")?.pathTo(hot) ?? [],
		figures: [
			...(row.place === "basin" && place?.basin !== undefined && row.within !== undefined
				? [
						{
							name: "distance to the basin",
							found: inUnits(place.basin, circuit.plan.settings.region),
							limit: inUnits(row.within, circuit.plan.settings.region),
							unit: circuit.plan.settings.region === "us" ? "ft" : "m",
							source: citation(row.provenance),
						},
					]
				: []),
			...(late
				? [{ name: "trips at", found: device.trip, limit: row.trip, unit: "mA", source: citation(row.provenance) }]
				: []),
		],
		why: groundFaultMissing.why,
		help: `${tellCure(part)}${recalledNote(row)}`,
		basis: citation(row.provenance),
		key: `${groundFaultMissing.code}@${part.name}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}

/** A light is no receptacle: what protects it stands before it. */
function tellCure({ name, face }: Part): string {
	const before = `from the LOAD side of a ground-fault receptacle (\`gfci\`), or put a \`ground-fault-breaker\` in the slot of its circuit.`;
	return face.traits.includes("receptacle")
		? `Make ${name} a ground-fault receptacle (\`gfci\`), feed it from the LOAD side of one, or put a \`ground-fault-breaker\` in the slot of its circuit.`
		: `Feed ${name} ${before}`;
}

function tellPlace(row: GroundFaultRow, place: Place | undefined, region: Region): string {
	const name = place === undefined ? "" : ` (${place.label})`;
	switch (row.place) {
		case "basin":
			return `within ${tellDistance(row.within ?? 0, region)} of a basin${name}`;
		case "bath":
		case "bathroom":
			return row.equipment === "light" ? `over a bath${name}` : `by a bath${name}`;
		case "outdoor":
			return `outdoors${name}`;
		case "everywhere":
			return "in a plan whose outlets all ask for it";
		default:
			return `in a place that is ${row.place}${name}`;
	}
}

/** A distance in the units of whoever reads it. */
function tellDistance(metres: number, region: Region): string {
	return `${formatNumber(inUnits(metres, region), 2)} ${region === "us" ? "ft" : "m"}`;
}

function inUnits(metres: number, region: Region): number {
	return round(region === "us" ? metres / feet : metres);
}

/** The international foot in metres. */
const feet = 0.3048;

function round(length: number): number {
	return Math.round(length * 100) / 100;
}

function recalledNote(row: Row): string {
	return row.provenance.known === "recalled"
		? " The rule is recalled from memory: look it up in the code in force."
		: "";
}

/** The fault that takes a protection away which is there: a device the wrong way round, or a neutral that passes it by. */
function findCause(landings: Landings, { coverage, crossings }: ModeState, part: Part, load: Load): string | undefined {
	const own = coverage.fed.find(({ device }) => device.part === part.name);
	if (own !== undefined && (own.hot === "load" || own.neutral === "load")) return `line-load-reversed@${part.name}`;
	const reversed = load.between.map((point) => coverage.reversedBefore(point)).find((device) => device !== undefined);
	if (reversed !== undefined) return `line-load-reversed@${reversed.part}`;
	const stray = load.between.map((point) => crossings.strayAt(point)).find((found) => found !== undefined);
	const misplaced = part.points.map((point) => landings.misplacedOn(point)).find((found) => found !== undefined);
	const mistake = stray?.root.key ?? misplaced?.root;
	const key = mistake === undefined ? undefined : keyOfMistake(crossings, mistake);
	if (key !== undefined) return key;
	const [one, other] = load.between.map((point) => coverage.deviceAt(point));
	const passedByOne = one ?? other;
	return one !== other && passedByOne ? `neutral-borrowed@${passedByOne.part}` : undefined;
}

/** Rows for a whole supply: everything on it must be behind a device, told once for each source. */
function checkSupply({ circuit, landings }: Analysis, state: ModeState): Finding[] {
	const { region, rules } = circuit.plan.settings;
	const rows = (["supply", "shore supply"] as const).flatMap((sort) => groundFaultPlacesFor(region, rules, sort));
	return rows.flatMap((row) => {
		const open = circuit.loads.flatMap((load) => {
			if (isCovered(state, load, row)) return [];
			const fed = load.between.find((point) => state.feeders.has(point)) ?? load.between[0];
			const name = state.feeders.get(fed)?.pole.source;
			const source = circuit.sources.find((candidate) => candidate.name === name);
			const part = circuit.partByName.get(load.part);
			const isAsked = row.equipment === "supply" || source?.sort === "shore";
			return source === undefined || part === undefined || !isAsked
				? []
				: [{ source, part, fed, cause: findCause(landings, state, part, load) }];
		});
		return [...groupBy(open, ({ source, cause }) => `${source.name} ${cause ?? ""}`).values()].flatMap(
			([first, ...others]) =>
				first === undefined ? [] : [tellSupply(row, state, first, [first.part, ...others.map(({ part }) => part)])],
		);
	});
}

/** What nothing watches: its supply, a point of it that is live, and the fault behind it. */
interface Unwatched {
	readonly source: Source;
	readonly fed: number;
	readonly cause: string | undefined;
}

function tellSupply(
	row: Row,
	{ crossings }: ModeState,
	{ source, fed, cause: behind }: Unwatched,
	parts: readonly Part[],
): Finding {
	const names = [...new Set(parts.map((part) => part.name))];
	return finding({
		code: groundFaultMissing.code,
		// What is only recalled does not make a plan fail, but is not passed over either.
		level: row.provenance.known === "read" ? "error" : "warning",
		title: `Nothing on ${source.name} opens at ${row.trip} mA of leakage or less before ${listNames(names)}`,
		span: source.span,
		label: `no ${row.trip} mA device`,
		also: parts.slice(0, 8).map((part) => ({ span: part.span, label: part.name })),
		marks: [source.name, ...names],
		path: crossings.poles.reachOf(fed, "hot")?.pathTo(fed) ?? [],
		why: groundFaultMissing.why,
		help: `Let the panel's main be one: \`main${source.limit === undefined ? "" : ` ${formatNumber(source.limit, 1)} A`} rcbo ${row.trip} mA\`; or put one on the way to the panel: \`to R1: rcd${source.limit === undefined ? "" : ` ${formatNumber(Math.max(source.limit, 25), 1)} A`} ${row.trip} mA\`. It opens all that is behind it.${recalledNote(row)}`,
		basis: citation(row.provenance),
		key: `${groundFaultMissing.code}@${source.name}${behind === undefined ? "" : `/${names[0] ?? ""}`}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}
