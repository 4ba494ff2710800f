// Devices look as they are sold in the plan's region: inlets, outlets, switches and breakers.
import { expect, test } from "vitest";
import type { Sheet } from "../../../src/drawing/scene.ts";
import { draw } from "./drawn.ts";

function symbolsOf(sheet: Sheet | undefined, box: string): string[] {
	const marks = sheet?.groups.find(({ name }) => name === `box ${box}`)?.marks ?? [];
	return marks.flatMap((mark) => (mark.kind === "symbol" ? [mark.symbol] : []));
}

const plan = (region: string, inlet: string, feed: string, cable: string): string => `plan "Faces"
  region ${region}
inlet shore ${inlet}
panel LC main 16 A from shore by ${feed}, 9 ft
  slot 1: breaker 15 A
  slot 2: breaker 15 A
circuit a from LC.1 by ${cable}
  9 ft to g1: gfci 20 A
  9 ft to r1: receptacle single
  9 ft to r2: receptacle duplex
  9 ft to r3: receptacle duplex
circuit b from LC.2 by ${cable}
  9 ft to s1: switch
  9 ft to s2: switch two-pole
  9 ft to l1: light 9 W
`;

const expected = {
	us: {
		shore: "shore-inlet-face",
		g1: "receptacle-gfci-face",
		r1: "receptacle-single-face",
		r2: "receptacle-duplex-face",
		r3: "receptacle-duplex-face-tall",
		s1: "switch-face",
		s2: "switch-2p-face",
		LC: "contact-breaker-us",
	},
	iec: {
		shore: "shore-inlet-pins-face",
		g1: "socket-outlet-protected-face",
		r1: "socket-outlet-single-face",
		r2: "socket-outlet-duplex-face",
		r3: "socket-outlet-duplex-face-tall",
		s1: "rocker-face",
		s2: "rocker-face",
		LC: "contact-breaker-iec",
	},
} as const;

test.each([
	["us", "30 A 120 V", "10-2", "12-2"],
	["iec", "16 A 230 V", "3G2.5", "3G1.5"],
] as const)("%s", async (region, inlet, feed, cable) => {
	const { sheets } = await draw(plan(region, inlet, feed, cable));
	for (const [box, face] of Object.entries(expected[region])) expect(symbolsOf(sheets[0], box), box).toContain(face);
});

test.each([
	["15 A 120 V", "12-2", "shore-inlet-blades-face"],
	["50 A 120 V / 240 V", "6-3", "shore-inlet-two-legs-face"],
])("an inlet of %s has its own contacts", async (inlet, feed, face) => {
	const { sheets } = await draw(plan("us", inlet, feed, "12-2"));
	expect(symbolsOf(sheets[0], "shore")).toContain(face);
});
