// What a conductor may have ahead of it by the published tables alone, for the judge of the tests: no code of the rules is asked.
import type { Circuit, Conductor } from "../../src/circuit/circuit.ts";
import { copperAmpacity } from "../../src/handbook/copper-ampacity.ts";
import { cordAmpacity } from "../../src/handbook/cord-ampacity.ts";
import { iecAmpacities, iecAmpacity } from "../../src/handbook/iec-ampacity.ts";
import { engineSpaceFactor, marineAmpacity, marineBundlingFactor } from "../../src/handbook/marine-ampacity.ts";
import { smallConductorLimit } from "../../src/handbook/small-conductors.ts";
import { nextStandardRating } from "../../src/handbook/standard-ratings.ts";

/** Amperes that devices may let through for long; undefined where no table has the conductor. */
export function amperesAllowed({ plan, cableByTag, conductors }: Circuit, conductor: Conductor): number | undefined {
	if (conductor.material !== "copper") return undefined;
	const cable = conductor.cable === undefined ? undefined : cableByTag.get(conductor.cable);
	const carrying = cable?.conductors.filter((index) => conductors[index]?.role !== "ground").length ?? 1;
	const { region, rules } = plan.settings;
	if (rules === "boat") {
		// 33 CFR 183.455, read: from 50 V up the next standard size, as long as that is no more than 150 %.
		const row = marineAmpacity(conductor.gauge, conductor.insulation);
		if (row === undefined) return undefined;
		const isHot = conductor.ends.some(({ enclosure }) => enclosure.place?.traits.has("engine-space") === true);
		const factor = marineBundlingFactor(carrying).factor * (isHot ? engineSpaceFactor(row.column).factor : 1);
		const ampacity = row.ampere * factor;
		const next = nextStandardRating(ampacity, region)?.ampere ?? ampacity;
		return next <= 1.5 * ampacity ? next : ampacity;
	}
	// IEC 60364-4-43, recalled: never more than the cable carries, at best on a wall.
	// Thinner than the table goes, it carries less than the thinnest of it.
	const thinnest = iecAmpacities.rows[0]?.gauge;
	if (region === "iec") return (iecAmpacity(conductor.gauge, "c") ?? (thinnest && iecAmpacity(thinnest, "c")))?.ampere;
	if (cable?.flexible === true) return cordAmpacity(conductor.gauge, carrying > 2 ? 3 : 2)?.ampere;
	// NFPA 70 240.4(B) and (D), read: the next standard size, never beyond the limit of small conductors.
	const small = smallConductorLimit(conductor.gauge)?.largest;
	const ampacity = copperAmpacity(conductor.gauge, Math.min(conductor.insulation, 75))?.ampere;
	if (ampacity === undefined) return small;
	return Math.min(nextStandardRating(ampacity, "us")?.ampere ?? ampacity, small ?? Number.POSITIVE_INFINITY);
}
