// The largest fuse or breaker ahead of a conductor for direct current: by the tables of boats, which are the best ones anywhere.
import { formatGauge } from "../base/gauge.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { craftAmpacity } from "../handbook/iec-ampacity.ts";
import { engineSpaceFactor, marineAmpacity, marineDeviceAllowance } from "../handbook/marine-ampacity.ts";
import { citation } from "../handbook/provenance.ts";
import { nextStandardRating } from "../handbook/standard-ratings.ts";
import type { ConductorLimit } from "./conductor-limit.ts";
import { runsInEngineSpace } from "./surroundings.ts";

/**
 * 33 CFR 183: below 50 V on boats 150 % of what the conductor carries; from 50 V, and elsewhere at any voltage, what it
 * carries or the next standard rating, if that is no more than 150 % of it. Undefined where the table knows no such wire.
 */
export function directLimit(circuit: Circuit, conductor: Conductor, volts: number): ConductorLimit | undefined {
	const { gauge, insulation, material } = conductor;
	if (material !== "copper") return undefined;
	// What is thinner than the first row of the law is in the standard for small craft.
	const row = marineAmpacity(gauge, insulation) ?? craftAmpacity(gauge, insulation);
	if (row === undefined) return undefined;
	const { rules, region } = circuit.plan.settings;
	const hot = runsInEngineSpace(circuit, conductor) ? engineSpaceFactor(insulation) : undefined;
	const ampere = Math.floor(row.ampere * (hot?.factor ?? 1));
	const most = ampere * marineDeviceAllowance.share;
	const next = nextStandardRating(ampere, region)?.ampere ?? ampere;
	const afloat = rules === "boat" && volts < marineDeviceAllowance.belowVolts;
	const largest = afloat ? Math.floor(most) : next <= most ? next : ampere;
	const carries = `${formatGauge(gauge)} carries ${ampere} A at ${row.column} °C${hot === undefined ? "" : " in an engine space"}`;
	const allowed = afloat ? "the device may have 150 % of it" : `${largest} A is the next standard rating`;
	return {
		largest,
		because: largest === ampere ? carries : `${carries}, and ${allowed}`,
		source: [row.provenance, ...(hot === undefined ? [] : [hot.provenance]), marineDeviceAllowance.provenance]
			.map(citation)
			.join("; "),
		recalled: row.provenance.known === "recalled" || hot?.provenance.known === "recalled",
	};
}
