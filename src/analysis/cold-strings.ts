// How much more a solar module gives on the coldest day where it stands, by what is said of it.
import type { Circuit, Source } from "../circuit/circuit.ts";
import { coldFactor } from "../handbook/solar-cold.ts";
import { foldName } from "../plan/names.ts";
import type { DirectState } from "./direct.ts";

/** Degrees Celsius at which a module's figures are measured (IEC 61215, recalled). */
const measuredAt = 25;

/** The factor on a module's open-circuit voltage: by its own coefficient where that and the coldest day are said, else by the table. */
export function coldFactorOf({ plan }: Circuit, module: Source): number {
	const said = plan.thingByName.get(foldName(module.part))?.said;
	const coldest = said?.quantity("coldest")?.value;
	const change = said?.quantity("coefficient")?.value;
	if (change === undefined) return coldFactor(coldest).factor;
	return 1 + Math.abs(change) * Math.max(0, measuredAt - (coldest ?? coldFactor(undefined).downTo));
}

/** The largest factor of the modules that a point is joined with by way of them; undefined where there is none. */
export function coldFactorAt(circuit: Circuit, { potentials }: DirectState, point: number): number | undefined {
	const { root } = potentials.at(point);
	let most: number | undefined;
	for (const source of circuit.sources) {
		const [plus] = source.hot;
		if (source.sort !== "solar" || plus === undefined || potentials.at(plus).root !== root) continue;
		const factor = coldFactorOf(circuit, source);
		if (most === undefined || factor > most) most = factor;
	}
	return most;
}
