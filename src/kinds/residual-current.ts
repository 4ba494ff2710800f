// What all residual-current and ground-fault devices say of themselves: the leak they open on, its type, and whether they wait.
import type { AttributeSpec, GroundFaultSpec, Said } from "./kind.ts";

/** The leak a device opens on, and how; the first is read without its word too where no other current fits. */
export const residualAttributes: readonly AttributeSpec[] = [
	{
		name: "trip",
		takes: "quantity",
		dimension: "current",
		word: "trip",
		bare: true,
		least: 0.004,
		most: 0.5,
		summary: "the leak it opens on: 5 mA for a breaker or receptacle in North America, else 30 mA, if not said",
	},
	{
		name: "type",
		takes: "phrase",
		phrases: ["type AC", "type A", "type F", "type B"],
		summary: "which currents it sees: alternating alone, pulsed, mixed, or smooth direct current too",
	},
	{ name: "selective", takes: "flag", summary: "type S: opens late, so that a device behind it opens first" },
	{
		name: "delay",
		takes: "quantity",
		dimension: "time",
		word: "delay",
		least: 0.001,
		most: 5,
		summary: "how late it opens, where that is said in place of `selective`",
	},
];

/** How a device decides, for its ground-fault facts: milliamperes; `usual` where the leak is not said. */
export function residualOf(said: Said, usual: number): Pick<GroundFaultSpec, "trip" | "selective"> {
	return {
		trip: Math.round((said.quantity("trip")?.value ?? usual / 1000) * 1e6) / 1e3,
		...(said.flag("selective") === true || said.quantity("delay") !== undefined ? { selective: true } : {}),
	};
}

/** The leak a breaker or receptacle opens on by the trade's convention, milliamperes: class A in North America, else 30 mA. */
export function usualTrip(said: Said): number {
	return said.region === "us" ? 5 : 30;
}

/** `30 mA type A selective`: what is said of it, for its face. */
export function residualText(said: Said, usual: number): string {
	const { trip, selective } = residualOf(said, usual);
	const type = said.choice("type");
	return [`${trip} mA`, ...(type === undefined ? [] : [type]), ...(selective === true ? ["selective"] : [])].join(" ");
}
