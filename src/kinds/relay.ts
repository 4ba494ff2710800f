// A relay or contactor: a contact in the conductor it is put in, worked by a coil that may be on the other system.
import { awg } from "../base/gauge.ts";
import { inLine, passing, stud } from "./in-line.ts";
import type { Blueprint, Kind, Said, TerminalSpec } from "./kind.ts";
import { cage } from "./terminals.ts";

/** One row a kind: its word and what it is. */
const rows = ["relay", "contactor"] as const;

/** The kinds of this file, in the order of their rows. */
export const relays: readonly Kind[] = rows.map((word) => ({
	name: word,
	summary: `A ${word}. Its contact lies in the run it stands on; its coil has the terminals \`A1\` and \`A2\`, fed by the side \`coil\`.`,
	example: `battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 3 A
  slot 2: fuse 15 A
feed small from house.+, house.- by pair 8 AWG
  bolted to F1: fuse 60 A
  3 ft to FB
circuit pump from FB.2 by pair 14 AWG
  6 ft to K1: ${word} 30 A coil 12 V
  4 ft to p1: pump 60 W
circuit call from FB.1 by pair 16 AWG
  5 ft to s1: switch
  2 ft to K1.coil
`,
	stands: ["top", "hop", "box"],
	attributes: [
		{
			name: "rating",
			takes: "quantity",
			dimension: "current",
			least: 0.5,
			most: 600,
			summary: "what its contact may carry",
		},
		{
			name: "coil",
			takes: "quantity",
			dimension: "voltage",
			word: "coil",
			least: 3,
			most: 250,
			summary: "what its coil is made for; 12 V if not said, mains from 60 V up",
		},
		{
			name: "changeover",
			takes: "flag",
			summary:
				"its contact leads from `common` to `normally-closed` at rest, and to `normally-open` while the coil is on",
		},
	],
	build: (said) => {
		const rating = said.quantity("rating")?.value;
		const coil = said.quantity("coil")?.value ?? 12;
		const direct = coil < extraLowVolts;
		const tab = (name: string, role: TerminalSpec["role"]): TerminalSpec => ({
			...cage(said.region, name, role, name),
			smallest: awg(20),
			clamp: "screw",
		});
		const [first, second] = direct ? (["positive", "negative"] as const) : (["hot", "neutral"] as const);
		const { links = [], ...wired } = said.flag("changeover") === true ? changeover(said) : inLine(said, "handle");
		return {
			...wired,
			links,
			terminals: [...wired.terminals, tab("A1", first), tab("A2", second)],
			loads: [{ between: ["A1", "A2"], volts: coil, continuous: true, outlet: false }],
			sides: [
				...wired.sides,
				// A cable of the other system lands just so, and is told.
				{
					name: "coil",
					system: direct ? "dc" : "ac",
					knots: { positive: "A1", negative: "A2", hot: "A1", neutral: "A2" },
				},
				{ name: "A1", system: direct ? "dc" : "ac", knots: { [first]: "A1" }, lone: { knot: "A1", role: first } },
				{ name: "A2", system: direct ? "dc" : "ac", knots: { [second]: "A2" }, lone: { knot: "A2", role: second } },
			],
			face: {
				text: `${rating === undefined ? "" : `${rating} A `}${said.flag("changeover") === true ? "changeover " : ""}${word}, coil ${coil} V`,
				wiring: "relay-face",
				oneLine: "switch",
				traits: ["switch"],
				...(rating === undefined ? {} : { rating }),
			},
		};
	},
}));

/** One contact with two throws: the run arrives at the common and goes on from the throw that closes with the coil. */
function changeover(said: Said): Omit<Blueprint, "face"> {
	const role = said.system === "dc" ? "positive" : "hot";
	const throws = [
		{ name: "normally-closed", also: ["NC", "12"], closed: 0 },
		{ name: "normally-open", also: ["NO", "14"], closed: 1 },
	];
	const ends = [{ name: "common", also: ["COM", "11"] }, ...throws];
	return {
		terminals: ends.map(({ name, also }) => ({
			...stud(said, name, role, name),
			also,
			inherits: true,
			capacity: 2,
			side: name === "common" ? "line" : "load",
		})),
		links: throws.map(({ name, closed }) => ({
			between: ["common", name],
			nature: "contact",
			contact: { group: "coil", positions: 2, closed: [closed] },
		})),
		sides: ends.map(({ name }) => ({ name, knots: { ...passing, [role]: name }, lone: { knot: name } })),
		onward: "normally-open",
		enclosure: { sort: "equipment", metal: false },
	};
}

/** Coils from here up are for the mains. */
const extraLowVolts = 60;
