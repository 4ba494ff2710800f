// Every rule, in the order an inspector would look: protection, polarity, neutral, ground, ground-fault, loads, workmanship.
import { backFeedUnfastened } from "./back-feed-unfastened.ts";
import { bondDoubled } from "./bond-doubled.ts";
import { bondMissing } from "./bond-missing.ts";
import { cableUnsuited } from "./cable-unsuited.ts";
import { cappedEndLive } from "./capped-end-live.ts";
import { chargingReversed } from "./charging-reversed.ts";
import { circuitMislabelled } from "./circuit-mislabelled.ts";
import { circuitOverloaded } from "./circuit-overloaded.ts";
import { circuitsJoined } from "./circuits-joined.ts";
import { colourMisleading } from "./colour-misleading.ts";
import { conductorsTooFew } from "./conductors-too-few.ts";
import { coverWrong } from "./cover-wrong.ts";
import { dedicatedCircuitShared } from "./dedicated-circuit-shared.ts";
import { deviceUndersized } from "./device-undersized.ts";
import { earthFaultUnopened } from "./earth-fault-unopened.ts";
import { enclosureUnbonded } from "./enclosure-unbonded.ts";
import { endContradicted } from "./end-contradicted.ts";
import { endLoose } from "./end-loose.ts";
import { gangsTooFew } from "./gangs-too-few.ts";
import { groundBroken } from "./ground-broken.ts";
import { groundFaultMissing } from "./ground-fault-missing.ts";
import { groundUndersized } from "./ground-undersized.ts";
import { inletLive } from "./inlet-live.ts";
import { interruptingRatingLow } from "./interrupting-rating-low.ts";
import { jointSizeWrong } from "./joint-size-wrong.ts";
import { jointUnboxed } from "./joint-unboxed.ts";
import { jointUndersized } from "./joint-undersized.ts";
import { legLeftLive } from "./leg-left-live.ts";
import { legMissing } from "./leg-missing.ts";
import { lineLoadReversed } from "./line-load-reversed.ts";
import { loadVoltageWrong } from "./load-voltage-wrong.ts";
import { mainBypassed } from "./main-bypassed.ts";
import { negativeFused } from "./negative-fused.ts";
import { neutralBorrowed } from "./neutral-borrowed.ts";
import { neutralGroundExchanged } from "./neutral-ground-exchanged.ts";
import { neutralNotIsolated } from "./neutral-not-isolated.ts";
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
import { slackTooShort } from "./slack-too-short.ts";
import { strandsUnterminated } from "./strands-unterminated.ts";
import { stringVoltageHigh } from "./string-voltage-high.ts";
import { stringsUnfused } from "./strings-unfused.ts";
import { supplyMissing } from "./supply-missing.ts";
import { switchInNeutral } from "./switch-in-neutral.ts";
import { switchWithoutEffect } from "./switch-without-effect.ts";
import { systemsMixed } from "./systems-mixed.ts";
import { terminalMetalWrong } from "./terminal-metal-wrong.ts";
import { terminalOverfilled } from "./terminal-overfilled.ts";
import { voltagesMixed } from "./voltages-mixed.ts";

export const rules: readonly Rule[] = [
	// protection
	protectionMissing,
	protectionTooLarge,
	protectionTooFar,
	interruptingRatingLow,
	stringVoltageHigh,
	stringsUnfused,
	protectionOutOfOrder,
	mainBypassed,
	backFeedUnfastened,
	circuitMislabelled,
	circuitsJoined,
	// polarity
	polesJoined,
	polarityReversed,
	polarityDcReversed,
	voltagesMixed,
	chargingReversed,
	seriesTapped,
	negativeFused,
	switchInNeutral,
	switchWithoutEffect,
	legLeftLive,
	onePoleOpened,
	inletLive,
	systemsMixed,
	// neutral
	neutralNotIsolated,
	neutralGroundExchanged,
	neutralBorrowed,
	bondMissing,
	bondDoubled,
	// ground
	groundBroken,
	enclosureUnbonded,
	conductorsTooFew,
	cableUnsuited,
	groundUndersized,
	// ground-fault
	lineLoadReversed,
	groundFaultMissing,
	earthFaultUnopened,
	// loads
	circuitOverloaded,
	loadVoltageWrong,
	legMissing,
	deviceUndersized,
	receptacleRatingWrong,
	receptacleDimmed,
	dedicatedCircuitShared,
	// workmanship
	colourMisleading,
	endLoose,
	cappedEndLive,
	slackTooShort,
	jointUndersized,
	jointSizeWrong,
	jointUnboxed,
	gangsTooFew,
	coverWrong,
	supplyMissing,
	terminalOverfilled,
	terminalMetalWrong,
	strandsUnterminated,
	endContradicted,
];
