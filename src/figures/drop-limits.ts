// How much of its volts a load may lose on the way: the published guide of where a place is built. Rules and figures go by the same.
import { certain } from "../base/certain.ts";
import type { Sourced } from "../handbook/provenance.ts";
import { type DropLimit, dropLimit } from "../handbook/voltage-drop-limits.ts";
import type { Settings } from "../plan/plan.ts";

/** A guide's limit with its source. */
export type Limit = Sourced<DropLimit>;

const advice = (["branch", "feeder and branch"] as const).map((circuit) => limitOf("NFPA 70", circuit));
const afloat = limitOf("ABYC E-11", "other");
const publicSupply = (["lighting", "other uses"] as const).map((use) => limitOf("IEC 60364-5-52 public supply", use));
const ownSupply = (["lighting", "other uses"] as const).map((use) => limitOf("IEC 60364-5-52 private supply", use));
const critical = limitOf("ABYC E-11", "critical");
const criticalAbroad = limitOf("ISO 10133", "critical");

/** Every limit for mains that any place goes by. */
export const mainsLimits: readonly Limit[] = [...advice, afloat, ...publicSupply, ...ownSupply];

/** The limits for mains where a place is built; one for a `branch` counts from the last protective device, the others from the source. */
export function mainsDropLimits(
	{ region, rules }: Pick<Settings, "region" | "rules">,
	{ isLight, isPublic }: { readonly isLight: boolean; readonly isPublic: boolean },
): readonly Limit[] {
	if (rules === "boat") return [afloat];
	if (region === "us") return advice;
	const limit = (isPublic ? publicSupply : ownSupply)[isLight ? 0 : 1];
	return limit === undefined ? [] : [limit];
}

/** The limit for direct current: less may be lost on the way to a panel than on to a load. The guides are for boats; others have none. */
export function directDropLimit({ region }: Pick<Settings, "region">, isFeeder: boolean): Limit {
	if (!isFeeder) return afloat;
	return region === "iec" ? criticalAbroad : critical;
}

function limitOf(...of: Parameters<typeof dropLimit>): Limit {
	return certain(dropLimit(...of), "a limit of voltage drop");
}
