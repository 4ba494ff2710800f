// Every kind, in the order a reader meets them, and the words that find one.
import { alternator } from "./alternator.ts";
import { automaticSwitches } from "./automatic-switch.ts";
import { groundBar, negativeBar, neutralBar } from "./bar.ts";
import { battery } from "./battery.ts";
import { box } from "./box.ts";
import { breaker, groundFaultBreaker } from "./breaker.ts";
import { bus } from "./bus.ts";
import { charger } from "./charger.ts";
import { earths } from "./chassis.ts";
import { consumers } from "./consumer.ts";
import { converters } from "./converter.ts";
import { cutEnd } from "./cut-end.ts";
import { disconnect } from "./disconnect.ts";
import { generator, inlet, utility } from "./far-supply.ts";
import { fuse } from "./fuse.ts";
import { fuseBlock } from "./fuse-block.ts";
import { galvanicIsolator } from "./galvanic-isolator.ts";
import { gfci } from "./gfci.ts";
import { inverter, inverterCharger } from "./inverter.ts";
import type { Kind } from "./kind.ts";
import { panel } from "./panel.ts";
import { receptacle } from "./receptacle.ts";
import { relays } from "./relay.ts";
import { residualCurrentDevice } from "./residual-current-device.ts";
import { shunt } from "./shunt.ts";
import { solarController, solarModule } from "./solar.ts";
import { splice } from "./splice.ts";
import { starter } from "./starter.ts";
import { dimmer, wallSwitch } from "./switch.ts";
import { transferSwitch } from "./transfer-switch.ts";

/** Every kind that has a meaning. */
export const kinds: readonly Kind[] = [
	inlet,
	utility,
	generator,
	inverter,
	inverterCharger,
	transferSwitch,
	panel,
	breaker,
	groundFaultBreaker,
	residualCurrentDevice,
	neutralBar,
	groundBar,
	negativeBar,
	battery,
	fuse,
	fuseBlock,
	shunt,
	bus,
	...earths,
	galvanicIsolator,
	receptacle,
	gfci,
	wallSwitch,
	dimmer,
	disconnect,
	starter,
	alternator,
	charger,
	...converters,
	solarModule,
	solarController,
	...relays,
	...automaticSwitches,
	...consumers,
	box,
	splice,
	cutEnd,
];

/** The kind a word stands for, or undefined. */
export function findKind(word: string): Kind | undefined {
	return kindByWord.get(word);
}

/** Every word that names a kind, for a did-you-mean. */
export const kindWords: readonly string[] = kinds.flatMap((kind) => [kind.name, ...(kind.also ?? [])]);

const kindByWord = new Map(
	kinds.flatMap((kind) => [kind.name, ...(kind.also ?? [])].map((word) => [word, kind] as const)),
);
