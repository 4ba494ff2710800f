// Which symbols stand for a device on a wiring sheet: its face as the hand finds it, and its contact where it sits on the rows.
import type { Part } from "../../circuit/circuit.ts";
import type { Region, Trait } from "../../kinds/kind.ts";
import { findSymbol } from "../../symbols/index.ts";

/** A symbol with what it occupies. */
export interface FaceSymbol {
	readonly symbol: string;
	readonly width: number;
	readonly height: number;
}

/** The device's face; the upright form where there is one and it is wanted. */
export function faceOf(device: Part, upright: boolean): FaceSymbol | undefined {
	const { wiring, traits } = device.face;
	const own = wiring.endsWith("-face") ? wiring : `${wiring}-face`;
	const name = findSymbol(own) === undefined ? usualFaces.find(([trait]) => traits.includes(trait))?.[1] : own;
	if (name === undefined) return undefined;
	return (upright ? sized(`${name}-tall`) : undefined) ?? sized(name);
}

/** The contact between a device's line and load rows, for one row or two; undefined where it has none. */
export function contactOf(device: Part, rows: number, region: Region): FaceSymbol | undefined {
	const { traits } = device.face;
	const poles = rows === 2 ? "-2p" : "";
	if (traits.includes("ground-fault")) return rows === 2 ? sized("ground-fault-sensor") : undefined;
	if (traits.includes("disconnect") || (traits.includes("switch") && rows === 2))
		return sized(`contact-disconnect${poles}`);
	if (traits.includes("switch")) return sized("contact-switch");
	if (traits.includes("breaker")) return sized(`contact-breaker${poles}-${region}`);
	return undefined;
}

/** A contact by its name; undefined where there is none. */
export function contactSymbol(symbol: string): FaceSymbol | undefined {
	return sized(symbol);
}

function sized(symbol: string): FaceSymbol | undefined {
	const design = findSymbol(symbol);
	return design === undefined ? undefined : { symbol, width: design.box.width, height: design.box.height };
}

/** Faces by what a device is, where its kind names none that is drawn; the first that fits. */
const usualFaces: readonly (readonly [Trait, string])[] = [
	["ground-fault", "receptacle-gfci-face"],
	["receptacle", "receptacle-duplex-face"],
	["dimmer", "dimmer-face"],
	["switch", "switch-face"],
	["disconnect", "disconnect-face"],
	["light", "luminaire-face"],
	["fan", "fan-face"],
	["heater", "heater-face"],
	["breaker", "breaker-face"],
	["load", "load-face"],
];
