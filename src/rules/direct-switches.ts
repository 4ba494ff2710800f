// Switches of the direct-current side: those that open the negative of something and leave its positive on.
import type { Analysis } from "../analysis/analysis.ts";
import { findSwitches, terminalsOf } from "../analysis/switching.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { citation } from "../handbook/provenance.ts";
import { findOverModes } from "./over-modes.ts";

/** Switches and disconnects with nothing but the negative on them; a dimmer that is made for the negative is left out. */
export function findNegativeSwitches(analysis: Analysis, code: string): Finding[] {
	const { circuit } = analysis;
	return findOverModes(analysis, ({ direct }) => {
		if (direct === undefined) return [];
		return findSwitches(circuit).flatMap((device) => {
			const points = terminalsOf(device);
			const isNegativeAlone = points.every((point) => {
				const sorts = direct.poles.sortsAt(point);
				return sorts.has("neutral") && !sorts.has("hot");
			});
			const { span, kind } = certain(circuit.partByName.get(device.part), device.part);
			const [point] = points;
			if (!isNegativeAlone || point === undefined) return [];
			if (kind === "dimmer" && circuit.points[point]?.role === "negative") return [];
			return [
				finding({
					code,
					level: "error",
					title: `${device.part} opens the negative and not the positive`,
					span,
					label: "opens the negative",
					marks: [device.part],
					path: direct.poles.reachOf(point, "neutral")?.pathTo(point) ?? [],
					why: `With ${device.part} off, what hangs on it looks dead and is live: a positive that touches the chassis still makes a short circuit.`,
					help: `Put ${device.part} into the positive, and lead the negative past it.`,
					basis: citation(dcClause("grounded conductor").provenance),
					key: `${code}@${device.part}`,
				}),
			];
		});
	});
}
