// Every operator, in the order of the table.
import type { Operator } from "../mistake.ts";
import { wrongBar } from "./bar.ts";
import { bondAdded, bondLeftOut } from "./bond.ts";
import { bridged } from "./bridge.ts";
import { unmarked, wrongColour } from "./colour.ts";
import { onePole, plainDevice } from "./device.ts";
import { exchangedAtPart, exchangedInBox } from "./exchange.ts";
import { fuseLeftOut, fuseMoved } from "./fuse.ts";
import { weakFuse } from "./interrupting.ts";
import { wrongLeg } from "./leg.ts";
import { badJoint, longerRun } from "./measured.ts";
import { loosened, misplaced } from "./misplace.ts";
import { groundLeftOff, omitted } from "./omit.ts";
import { swappedBetweenStrings, turnedRound } from "./polarity.ts";
import { lowerRating, tooBig, tooSmall } from "./rating.ts";
import { reversed } from "./reverse.ts";
import { thinner } from "./size.ts";
import { bondElsewhere, exchangedAtBothEnds, groundFromNeutral, reversedTwice } from "./traps.ts";

export const operators: readonly Operator[] = [
	// wires
	exchangedAtPart,
	exchangedInBox,
	misplaced,
	wrongBar,
	loosened,
	omitted,
	groundLeftOff,
	bridged,
	bondAdded,
	bondLeftOut,
	wrongColour,
	unmarked,
	thinner,
	// devices
	reversed,
	plainDevice,
	onePole,
	tooBig,
	tooSmall,
	lowerRating,
	weakFuse,
	wrongLeg,
	fuseLeftOut,
	fuseMoved,
	turnedRound,
	swappedBetweenStrings,
	// two at once
	exchangedAtBothEnds,
	reversedTwice,
	groundFromNeutral,
	bondElsewhere,
	// for the meter
	badJoint,
	longerRun,
];
