// Every kind, in the order a reader meets them, and the words that find one.
import { groundBar, neutralBar } from "./bar.ts";
import { box, cutEnd } from "./box.ts";
import { breaker, groundFaultBreaker } from "./breaker.ts";
import { consumers } from "./consumer.ts";
import { disconnect } from "./disconnect.ts";
import { generator, inlet } from "./far-supply.ts";
import { gfci } from "./gfci.ts";
import { inverter, inverterCharger } from "./inverter.ts";
import type { Kind } from "./kind.ts";
import { panel } from "./panel.ts";
import { receptacle } from "./receptacle.ts";
import { residualCurrentDevice } from "./residual-current-device.ts";
import { dimmer, wallSwitch } from "./switch.ts";
import { transferSwitch } from "./transfer-switch.ts";

/** Every kind that has a meaning. */
export const kinds: readonly Kind[] = [
	inlet,
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
	receptacle,
	gfci,
	wallSwitch,
	dimmer,
	disconnect,
	...consumers,
	box,
	cutEnd,
];

/** Words the notation reserves for kinds that are read but have no meaning yet: the direct-current side and what follows. */
export const kindsWithoutMeaning: ReadonlySet<string> = new Set(
	`battery solar array solar-array alternator charger dc-dc converter solar-controller fuse-block fuse bus shunt splice chassis
	thermostat relay contactor usb-outlet outlet-12v fridge float-switch starter utility rod hull galvanic-isolator`.split(
		/\s+/,
	),
);

/** The kind a word stands for, or undefined. */
export function findKind(word: string): Kind | undefined {
	return kindByWord.get(word);
}

/** Every word that names a kind, for a did-you-mean. */
export const kindWords: readonly string[] = kinds.flatMap((kind) => [kind.name, ...(kind.also ?? [])]);

const kindByWord = new Map(
	kinds.flatMap((kind) => [kind.name, ...(kind.also ?? [])].map((word) => [word, kind] as const)),
);
