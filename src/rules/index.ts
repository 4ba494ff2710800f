// Every rule, in the order an inspector would look: protection, polarity, neutral, ground, ground-fault, loads, workmanship.
import { circuitOverloaded } from "./circuit-overloaded.ts";
import { conductorsTooFew } from "./conductors-too-few.ts";
import { dedicatedCircuitShared } from "./dedicated-circuit-shared.ts";
import { groundUndersized } from "./ground-undersized.ts";
import { protectionMissing } from "./protection-missing.ts";
import { protectionOutOfOrder } from "./protection-out-of-order.ts";
import { protectionTooLarge } from "./protection-too-large.ts";
import { receptacleRatingWrong } from "./receptacle-rating-wrong.ts";
import type { Rule } from "./rule.ts";
import { strandsUnterminated } from "./strands-unterminated.ts";
import { terminalOverfilled } from "./terminal-overfilled.ts";

export const rules: readonly Rule[] = [
	// protection
	protectionMissing,
	protectionTooLarge,
	protectionOutOfOrder,
	// ground
	conductorsTooFew,
	groundUndersized,
	// loads
	circuitOverloaded,
	receptacleRatingWrong,
	dedicatedCircuitShared,
	// workmanship
	terminalOverfilled,
	strandsUnterminated,
];
