// Whether bonds of the direct-current side are as thick as the trade asks of them: they carry a fault for as long as a fuse takes.
import { analyse } from "../analysis/analysis.ts";
import { findChassisBonds } from "../analysis/chassis-bonds.ts";
import { compareGauges } from "../base/gauge.ts";
import type { Circuit, Conductor } from "../circuit/circuit.ts";
import { awgOf } from "../handbook/sizes.ts";
import { oneSizeBelow } from "../handbook/trade-sizes.ts";

/** Whether a conductor is such a bond, and no thinner than one may be. */
export function isSoundBond(circuit: Circuit, conductor: Conductor): boolean {
	const { rules, region } = circuit.plan.settings;
	const isThick = compareGauges(conductor.gauge, leastBond) >= 0;
	if (rules === "boat") return isThick && isOnHull(circuit, conductor);
	const hasMains = region === "us" && circuit.sources.some(({ system }) => system === "ac");
	if (rules !== "camper" || (hasMains && !isThick)) return false;
	const bonds = analyse(circuit).states.flatMap(({ direct }) =>
		direct === undefined ? [] : findChassisBonds(circuit, direct).bonds.filter((bond) => bond.conductor === conductor),
	);
	return (
		bonds.length > 0 &&
		bonds.every(({ positive }) => {
			const needed = positive === undefined ? undefined : oneSizeBelow(positive.gauge);
			return needed !== undefined && compareGauges(conductor.gauge, needed) >= 0;
		})
	);
}

/** ABYC E-2, recalled; NFPA 70 551.56(C), read. */
const leastBond = awgOf("8");

function isOnHull({ parts }: Circuit, { ends }: Conductor): boolean {
	return parts.some(
		({ kind, points }) => kind === "hull" && ends.some(({ point }) => point !== undefined && points.includes(point)),
	);
}
