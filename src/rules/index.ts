// Every rule in its group, groups and rules in the order in which they are told: what opens a fault first, workmanship last.
import { backFeedUnfastened } from "./back-feed-unfastened.ts";
import { batteriesUnequal } from "./batteries-unequal.ts";
import { bondDoubled } from "./bond-doubled.ts";
import { bondMissing } from "./bond-missing.ts";
import { bondUsedAsReturn } from "./bond-used-as-return.ts";
import { boxOverfilled } from "./box-overfilled.ts";
import { cableUnsuited } from "./cable-unsuited.ts";
import { cappedEndLive } from "./capped-end-live.ts";
import { chargingInCircle } from "./charging-in-circle.ts";
import { chargingReversed } from "./charging-reversed.ts";
import { chassisBondMissing } from "./chassis-bond-missing.ts";
import { chassisBondSmall } from "./chassis-bond-small.ts";
import { circuitMislabelled } from "./circuit-mislabelled.ts";
import { circuitOverloaded } from "./circuit-overloaded.ts";
import { circuitsJoined } from "./circuits-joined.ts";
import { colourMisleading } from "./colour-misleading.ts";
import { conductorUndersized } from "./conductor-undersized.ts";
import { conductorsTooFew } from "./conductors-too-few.ts";
import { cordAsWiring } from "./cord-as-wiring.ts";
import { coverWrong } from "./cover-wrong.ts";
import { dedicatedCircuitShared } from "./dedicated-circuit-shared.ts";
import { deviceUndersized } from "./device-undersized.ts";
import { disconnectionMissing } from "./disconnection-missing.ts";
import { dropExcessive } from "./drop-excessive.ts";
import { earthFaultUnopened } from "./earth-fault-unopened.ts";
import { enclosureUnbonded } from "./enclosure-unbonded.ts";
import { endContradicted } from "./end-contradicted.ts";
import { endLoose } from "./end-loose.ts";
import { gangsTooFew } from "./gangs-too-few.ts";
import { groundBroken } from "./ground-broken.ts";
import { groundFaultMissing } from "./ground-fault-missing.ts";
import { groundThroughDevice } from "./ground-through-device.ts";
import { groundUndersized } from "./ground-undersized.ts";
import { inletLive } from "./inlet-live.ts";
import { interruptingRatingLow } from "./interrupting-rating-low.ts";
import { isolatorBypassed } from "./isolator-bypassed.ts";
import { jointSizeWrong } from "./joint-size-wrong.ts";
import { jointUnboxed } from "./joint-unboxed.ts";
import { jointUndersized } from "./joint-undersized.ts";
import { legLeftLive } from "./leg-left-live.ts";
import { legMissing } from "./leg-missing.ts";
import { lineLoadReversed } from "./line-load-reversed.ts";
import { loadVoltageWrong } from "./load-voltage-wrong.ts";
import { mainBypassed } from "./main-bypassed.ts";
import { mainTooLarge } from "./main-too-large.ts";
import { negativeFused } from "./negative-fused.ts";
import { neutralBorrowed } from "./neutral-borrowed.ts";
import { neutralGroundExchanged } from "./neutral-ground-exchanged.ts";
import { neutralNotIsolated } from "./neutral-not-isolated.ts";
import { neutralSharedUnsafely } from "./neutral-shared-unsafely.ts";
import { onePoleOpened } from "./one-pole-opened.ts";
import { polarityDcReversed } from "./polarity-dc-reversed.ts";
import { polarityReversed } from "./polarity-reversed.ts";
import { polesJoined } from "./poles-joined.ts";
import { protectionMissing } from "./protection-missing.ts";
import { protectionOutOfOrder } from "./protection-out-of-order.ts";
import { protectionTooFar } from "./protection-too-far.ts";
import { protectionTooLarge } from "./protection-too-large.ts";
import { receptacleDimmed } from "./receptacle-dimmed.ts";
import { receptacleRatingWrong } from "./receptacle-rating-wrong.ts";
import type { Rule } from "./rule.ts";
import { seriesTapped } from "./series-tapped.ts";
import { shuntBypassed } from "./shunt-bypassed.ts";
import { slackTooShort } from "./slack-too-short.ts";
import { sourceUnjoined } from "./source-unjoined.ts";
import { sourcesParalleled } from "./sources-paralleled.ts";
import { strandsUnterminated } from "./strands-unterminated.ts";
import { stringVoltageHigh } from "./string-voltage-high.ts";
import { stringsUnfused } from "./strings-unfused.ts";
import { supplyMissing } from "./supply-missing.ts";
import { switchInNeutral } from "./switch-in-neutral.ts";
import { switchWithoutEffect } from "./switch-without-effect.ts";
import { systemsMixed } from "./systems-mixed.ts";
import { systemsUnseparated } from "./systems-unseparated.ts";
import { terminalMetalWrong } from "./terminal-metal-wrong.ts";
import { terminalOverfilled } from "./terminal-overfilled.ts";
import { voltageRatingLow } from "./voltage-rating-low.ts";
import { voltagesMixed } from "./voltages-mixed.ts";

const protection: readonly Rule[] = [
	protectionMissing,
	protectionTooLarge,
	conductorUndersized,
	mainTooLarge,
	protectionTooFar,
	interruptingRatingLow,
	voltageRatingLow,
	stringVoltageHigh,
	stringsUnfused,
	protectionOutOfOrder,
	mainBypassed,
	circuitMislabelled,
	circuitsJoined,
];
const polarity: readonly Rule[] = [
	polesJoined,
	polarityReversed,
	polarityDcReversed,
	negativeFused,
	switchInNeutral,
	switchWithoutEffect,
	legLeftLive,
	onePoleOpened,
	systemsMixed,
];
const neutral: readonly Rule[] = [
	neutralNotIsolated,
	neutralGroundExchanged,
	neutralBorrowed,
	neutralSharedUnsafely,
	bondMissing,
	bondDoubled,
];
const ground: readonly Rule[] = [
	groundBroken,
	enclosureUnbonded,
	conductorsTooFew,
	cableUnsuited,
	groundUndersized,
	chassisBondMissing,
	chassisBondSmall,
	bondUsedAsReturn,
	isolatorBypassed,
	groundThroughDevice,
];
const groundFault: readonly Rule[] = [lineLoadReversed, groundFaultMissing, earthFaultUnopened];
const sources: readonly Rule[] = [
	sourcesParalleled,
	inletLive,
	voltagesMixed,
	sourceUnjoined,
	chargingInCircle,
	chargingReversed,
	seriesTapped,
	backFeedUnfastened,
	legMissing,
	supplyMissing,
];
const loads: readonly Rule[] = [
	circuitOverloaded,
	loadVoltageWrong,
	deviceUndersized,
	receptacleRatingWrong,
	receptacleDimmed,
	dedicatedCircuitShared,
	disconnectionMissing,
];
const workmanship: readonly Rule[] = [
	systemsUnseparated,
	shuntBypassed,
	batteriesUnequal,
	colourMisleading,
	endLoose,
	cappedEndLive,
	slackTooShort,
	jointUndersized,
	jointSizeWrong,
	jointUnboxed,
	boxOverfilled,
	dropExcessive,
	cordAsWiring,
	gangsTooFew,
	coverWrong,
	terminalOverfilled,
	terminalMetalWrong,
	strandsUnterminated,
	endContradicted,
];

/** The rules by what is wrong, each group under its name. */
export const ruleGroups: readonly { readonly name: string; readonly rules: readonly Rule[] }[] = [
	{ name: "protection", rules: protection },
	{ name: "polarity", rules: polarity },
	{ name: "neutral", rules: neutral },
	{ name: "ground", rules: ground },
	{ name: "ground-fault", rules: groundFault },
	{ name: "sources", rules: sources },
	{ name: "loads", rules: loads },
	{ name: "workmanship", rules: workmanship },
];

export const rules: readonly Rule[] = ruleGroups.flatMap((group) => group.rules);
