// A fuse, breaker or switch for direct current that is made for fewer volts than it has to open.
import type { Analysis } from "../analysis/analysis.ts";
import { coldFactorOf } from "../analysis/cold-strings.ts";
import type { DirectState } from "../analysis/direct.ts";
import { voltsAboveLowest } from "../analysis/direct-volts.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { formatNumber } from "../base/quantity.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Part } from "../circuit/circuit.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { fuseFamilies } from "../handbook/dc-fuses.ts";
import { citation } from "../handbook/provenance.ts";
import { foldName } from "../plan/names.ts";
import { familyOf } from "./fuse-families.ts";
import { byEye } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const bank = (fuse: string): string => `battery bank lithium 51.2 V 100 Ah
feed plus from bank.+ by single 2 AWG red
  within 7 in to F1: fuse ${fuse}
  1 ft to plus: bus 250 A
feed minus from bank.- by single 2 AWG black
  1 ft to minus: bus 250 A
`;

export const voltageRatingLow: Rule = {
	code: "voltage-rating-low",
	level: "danger",
	what: "A fuse, breaker or switch is made for fewer volts than the direct current that it has to open.",
	why: "The arc in it does not go out: it goes on burning in the open device, and in what it sits in.",
	help: "Use one that is marked for the volts of the system, with direct current written beside them.",
	basis: citation(dcClause("device voltage").provenance),
	meter: [byEye("read the volts marked for direct current on the fuse, breaker or switch, and those of the battery")],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs:
			"Where nothing is said of a device it is asked for from 36 V up: what is sold for vehicles and boats opens 32 V.",
	},
	wrong: [bank("ANL 100 A 32 V"), bank("blade 30 A")],
	right: [
		bank("class-T 100 A 125 V"),
		bank("strip 100 A 58 V"),
		bank("class-T 100 A 125 V").replace("51.2 V", "12.8 V"),
	],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	if (direct.contradicted.length > 0) return [];
	const devices = circuit.parts.filter(({ kind }) => judged.has(kind));
	if (devices.length === 0) return [];
	const voltsAt = voltsAboveLowest(direct);
	const unmarked: Part[] = [];
	const found = devices.flatMap((part): Finding[] => {
		const point = part.points.find((candidate) => direct.exposure.has(candidate));
		if (point === undefined) return [];
		const source = circuit.sources.find(({ name }) => name === direct.exposure.get(point)?.source);
		const volts = voltsAt(point) * (source?.sort === "solar" ? coldFactorOf(circuit, source) : 1);
		const thing = circuit.plan.thingByName.get(foldName(part.name));
		const marked = thing?.said.quantity("voltage")?.value;
		const typical = part.kind === "fuse" && thing !== undefined ? familyOf(thing.said)?.volts : undefined;
		const bears = marked ?? typical;
		if (bears === undefined) {
			if (volts > usualVolts && opens.has(part.kind)) unmarked.push(part);
			return [];
		}
		if (volts <= bears * nominal) return [];
		return [tell(part, Number(volts.toFixed(1)), bears, marked !== undefined, source?.sort === "solar")];
	});
	return unmarked.length === 0 ? found : [...found, tellUnmarked(circuit, unmarked)];
}

/** What opens a current, and may be marked with its volts. */
const judged: ReadonlySet<string> = new Set(["fuse", "breaker", "disconnect", "switch"]);
/** Of these the volts are asked for where nothing is said. */
const opens: ReadonlySet<string> = new Set(["fuse", "breaker", "disconnect"]);
/** 48 V on a battery of 51.2 V, 12 V on one of 12.8 V are one nominal voltage (common practice). */
const nominal = 1.1;
/** What every fuse for vehicles and boats opens at least, with the hair that a nominal voltage may be above it. */
const usualVolts = Math.min(...fuseFamilies.rows.map(({ volts }) => volts)) * nominal;

function tell(part: Part, volts: number, bears: number, isMarked: boolean, isSolar: boolean): Finding {
	const [has, opened] = [`${formatNumber(volts, 1)} V`, `${formatNumber(bears, 1)} V`];
	return finding({
		code: voltageRatingLow.code,
		level: isMarked ? "danger" : "warning",
		title: `${part.name} has ${has} to open${isSolar ? " on the coldest day" : ""}, and is ${isMarked ? `made for ${opened}` : `typical for ${opened} by its class`}`,
		span: part.span,
		label: `for ${opened}`,
		marks: [part.name],
		figures: [{ name: "voltage", found: volts, limit: bears, unit: "V", source: voltageRatingLow.basis }],
		why: voltageRatingLow.why,
		help: isMarked
			? `Use one marked for ${has} of direct current or more for ${part.name}.`
			: `Look at what is printed on ${part.name}: write its volts behind its rating, or use one for ${has} or more. What is typical of the class is recalled, not read.`,
		basis: voltageRatingLow.basis,
		key: `${voltageRatingLow.code}@${part.name}`,
	});
}

function tellUnmarked({ parts }: Circuit, unmarked: readonly Part[]): Finding {
	const names = unmarked.map(({ name }) => name);
	const first = certain(
		parts.find(({ name }) => name === names[0]),
		"a device",
	);
	return finding({
		code: voltageRatingLow.code,
		level: "note",
		unchecked: true,
		title: `Whether ${listNames(names)} can open the volts of the system is not checked: what ${names.length > 1 ? "they are" : "it is"} marked for is missing`,
		span: first.span,
		also: unmarked.slice(1, 9).map(({ span, name }) => ({ span, label: name })),
		marks: names,
		why: voltageRatingLow.why,
		help: "Write the volts for direct current behind the rating, as they are printed on it: `fuse 30 A 80 V`.",
		basis: voltageRatingLow.basis,
		key: `${voltageRatingLow.code}@unmarked/${first.name}`,
	});
}
