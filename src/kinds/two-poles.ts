// What switches and disconnects with two poles share: two contacts on one handle.
import type { AttributeSpec, Blueprint, Said } from "./kind.ts";
import { deviceTerminal } from "./terminals.ts";

/** Terminals, contacts and sides of anything that opens hot and neutral together; two hots where it is said to be for 240 V. */
export function twoPoles(said: Said, amperes: number): Omit<Blueprint, "face"> {
	// A cable with two hots and no neutral says as much as `240 V` does.
	const twoHots = said.arriving?.secondHot === true && !said.arriving.neutral;
	const saidTwoHots = said.region === "us" && (said.quantity("voltage")?.value ?? 0) > 200;
	const second = twoHots || saidTwoHots ? "hot2" : "neutral";
	const screw = (role: "hot" | "hot2" | "neutral", side: "line" | "load", number: string) =>
		deviceTerminal(said.region, amperes, `${side}.${role}`, role, `${side}-${role}`, { side, also: [number] });
	const side = (name: "line" | "load") => ({
		name,
		knots: { hot2: "^hot2", neutral: "^neutral", ground: "ground", hot: `${name}-hot`, [second]: `${name}-${second}` },
	});
	return {
		terminals: [
			screw("hot", "line", "1"),
			screw(second, "line", "3"),
			screw("hot", "load", "2"),
			screw(second, "load", "4"),
			deviceTerminal(said.region, amperes, "ground", "ground", "ground", { also: ["green"] }),
		],
		links: (["hot", second] as const).map((pole) => ({
			between: [`line.${pole}`, `load.${pole}`],
			nature: "contact",
			contact: { group: "handle", positions: 2, closed: [1] },
		})),
		sides: [side("line"), side("load")],
		onward: "load",
	};
}

/** For a device with two poles: what it is for when both are hots. */
export const voltageOfPoles: AttributeSpec = {
	name: "voltage",
	takes: "quantity",
	dimension: "voltage",
	least: 6,
	most: 1500,
	summary: "240 V for two poles that open two hots; for direct current the most volts it may open",
};
