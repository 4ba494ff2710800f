// Mistakes that matter and that no rule finds yet, by slip and place: what a rule would have to say. Each entry is a gap to close, none
// an excuse; `npm run proof` counts them all as missed, and names the entries that nothing needs any more.

/** One gap. */
export interface Gap {
	/** What a rule would have to say. */
	readonly says: string;
	/** The slips it is met in. */
	readonly operators: readonly string[];
	/** How the places look at which it is met. */
	readonly at: RegExp;
}

const wires = [
	"two wires exchanged at a part",
	"two wires exchanged in a box",
	"an end in the wrong place",
	"two points bridged",
];
const direct = String.raw`(?:\.(?:red|black|yellow|brown|grey)(?:\(\d\))?|[.~/](?:load|line|positive|negative|hot|[+-])\S*)`;

export const knownGaps: readonly Gap[] = [
	{
		says: "circuits of direct current exchanged, joined or past their fuse at a block, a shunt, a switch, a controller",
		operators: wires,
		at: new RegExp(direct),
	},
	{
		says: "a negative or a bond to the frame where another lead takes its place",
		operators: ["a conductor left out"],
		at: / from .* to /,
	},
	{
		says: "less than the thinnest size of the tables; a bond, a lone negative, a lead to a fuse thinner than what it may carry",
		operators: ["a thinner conductor"],
		at: /thinner$/,
	},
	{
		says: "a fuse left out where the one before it does not suit all behind it; a fuse larger than its holder's wires bear",
		operators: ["a protective device left out", "a protective device too big"],
		at: /./,
	},
	{
		says: "a battery turned round inside a series, a charger turned round, leads exchanged inside a bank",
		operators: [
			"a battery or module turned round",
			"line and load reversed",
			"leads exchanged between two batteries or modules",
		],
		at: /./,
	},
];

/** The gap that a missed mistake falls into. */
export function gapOf(operator: string, at: string): Gap | undefined {
	return knownGaps.find((gap) => gap.operators.includes(operator) && gap.at.test(at));
}
