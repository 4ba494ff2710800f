// A residual-current device without a breaker's trip: at the head of a group of breakers in a panel, or in a box on the way.

import { boardHead } from "./board-head.ts";
import { rated } from "./figures.ts";
import type { Blueprint, Kind, Said } from "./kind.ts";
import { neutralLead } from "./neutral-lead.ts";
import { residualAttributes, residualOf, residualText } from "./residual-current.ts";
import { cage, neutralKnot } from "./terminals.ts";
import { twoPoles } from "./two-poles.ts";

/** A residual-current device opens at 30 mA unless said otherwise, whatever the region. */
const usual = 30;

export const residualCurrentDevice: Kind = {
	name: "residual-current-device",
	also: ["rcd", "rccb"],
	summary:
		"Opens hot and neutral on a leak, not on too much current. In a panel it feeds the slots said below it, and brings a neutral bar of its own for their neutrals.",
	example: `plan "Boat-house"
  region iec
  rules building
inlet supply 40 A 230 V
panel DB main 40 A two-pole from supply by 3G10, 8 m
  R1: residual-current-device 40 A 30 mA type A
    slot 1: breaker 16 A
    slot 2: breaker 10 A
circuit sockets from DB.1 by 3G2.5
  6 m to a1: socket
circuit lights from DB.2 by 3G1.5
  4 m to l1: light 9 W
`,
	stands: ["top", "hop", "box", "panel"],
	attributes: [
		rated(5, 125, "what it may carry"),
		...residualAttributes,
		{ name: "poles", takes: "phrase", phrases: ["two-pole"], summary: "opens hot and neutral, as every one here does" },
	],
	build: (said) => {
		if (said.slot?.name === "main")
			return boardHead(said, {
				what: "residual-current main",
				oneLine: "ground-fault",
				traits: ["breaker", "ground-fault"],
				protects: false,
				usualTrip: usual,
				opensNeutral: true,
			});
		return said.slot === undefined ? onTheWay(said) : inPanel(said);
	},
};

/** In a box of its own or with other devices: fed on line, going on from load. */
function onTheWay(said: Said): Blueprint {
	return {
		...twoPoles(said, said.quantity("rating")?.value ?? 0),
		groundFault: {
			line: { hot: "line.hot", neutral: "line.neutral" },
			load: { hot: "load.hot", neutral: "load.neutral" },
			ownOutlet: false,
			...residualOf(said, usual),
		},
		face: { ...faceOf(said), wiring: "disconnect-2p-face", traits: ["ground-fault", "disconnect"] },
	};
}

/** In a panel: fed from the bus and the neutral bar; its own bus and neutral bar feed the slots behind it. */
function inPanel(said: Said): Blueprint {
	const own = `neutral:${said.name}`;
	return {
		terminals: [
			{ ...cage(said.region, "stab", "hot", undefined, { side: "line" }), clamp: "stab", capacity: 0 },
			cage(said.region, "bus.A", "hot", `^hot:${said.name}`, { side: "load", also: ["load.hot", "load"] }),
			{ ...cage(said.region, "line.neutral", "neutral", undefined, { side: "line" }), clamp: "lead" },
			{ ...cage(said.region, "load.neutral", "neutral", undefined, { side: "load" }), clamp: "lead" },
		],
		links: [
			{ between: ["stab", "bus.A"], nature: "contact", contact: { group: "trip", positions: 2, closed: [1] } },
			{
				between: ["line.neutral", "load.neutral"],
				nature: "contact",
				contact: { group: "trip", positions: 2, closed: [1] },
			},
		],
		plugs: (said.slot?.legs ?? []).slice(0, 1).map((owner) => ({ mine: "stab", owner })),
		leads: [neutralLead(said, "line.neutral", neutralKnot(said)), neutralLead(said, "load.neutral", own)],
		groundFault: {
			line: { hot: "stab", neutral: "line.neutral" },
			load: { hot: "bus.A", neutral: "load.neutral" },
			ownOutlet: false,
			...residualOf(said, usual),
		},
		heads: true,
		brings: [{ name: "neutral", kind: "neutral-bar", values: new Map() }],
		sides: [{ name: "load", knots: { hot: `^hot:${said.name}`, neutral: `^${own}`, ground: "^ground" } }],
		onward: "load",
		face: { ...faceOf(said), wiring: "breaker-face", traits: ["breaker", "ground-fault"] },
	};
}

function faceOf(said: Said): Pick<Blueprint["face"], "text" | "oneLine" | "rating"> {
	const rating = said.quantity("rating")?.value;
	return {
		text: `${rating === undefined ? "" : `${rating} A `}residual-current device ${residualText(said, usual)}`,
		oneLine: "ground-fault",
		...(rating === undefined ? {} : { rating }),
	};
}
