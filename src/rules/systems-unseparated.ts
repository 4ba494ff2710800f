// Wires of alternating and of direct current side by side in one box, with no partition between them.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Conductor, Enclosure } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { dcClause } from "../handbook/dc-clauses.ts";
import { citation } from "../handbook/provenance.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

const sides = (box: string): string => `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
battery house lithium 12.8 V 100 Ah
circuit bunks from LC breaker 20 A by 12-2
  14 ft to j1: box ${box}
  6 ft to b1: receptacle
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 10 A
`;

export const systemsUnseparated: Rule = {
	code: "systems-unseparated",
	level: "warning",
	what: "Wires for alternating and for direct current meet in one box with no partition between them.",
	why: "A wire that comes off, or a hand that takes black for black, brings the mains on to thin low-voltage wiring and to whoever touches it.",
	help: "Give each system a box of its own, or one with a partition.",
	basis: `${citation(dcClause("separation, boats").provenance)}; ${citation(dcClause("separation, vehicles").provenance)}`,
	meter: [byEye("open every box in which both kinds of cable end, and look for the wall between them")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [`${sides("metal")}  9 ft to j1\n  3 ft to o1: outlet-12v 60 W\n`],
	right: [
		`${sides("metal partition")}  9 ft to j1\n  3 ft to o1: outlet-12v 60 W\n`,
		`${sides("metal")}  9 ft to o1: outlet-12v 60 W\n`,
	],
	check: ({ circuit, states }: Analysis) => {
		if (!states.some(({ direct }) => direct !== undefined)) return [];
		const met = new Map<Enclosure, Meeting>();
		for (const conductor of circuit.conductors) {
			const system = systemOfRole(conductor.role);
			if (system === undefined || conductor.sort === "pigtail") continue;
			for (const { enclosure } of conductor.ends) {
				// Equipment with both sides in it is made for that, each behind its own terminals.
				if ((enclosure.sort !== "box" && enclosure.sort !== "panel") || enclosure.fittings?.partition === true)
					continue;
				const here = met.get(enclosure) ?? { ac: [], dc: [] };
				here[system].push(conductor);
				met.set(enclosure, here);
			}
		}
		return [...met].flatMap(([enclosure, meeting]) =>
			meeting.ac.length > 0 && meeting.dc.length > 0 ? [tell(enclosure, meeting)] : [],
		);
	},
};

/** The conductors of each system in one enclosure. */
interface Meeting {
	readonly ac: Conductor[];
	readonly dc: Conductor[];
}

function tell(enclosure: Enclosure, { ac, dc }: Meeting): Finding {
	const tags = (conductors: readonly Conductor[]): readonly string[] => [
		...new Set(conductors.map(({ cable, name }) => cable ?? name)),
	];
	const [mains, low] = [tags(ac), tags(dc)];
	const alike = findAlike(ac, dc);
	return finding({
		code: systemsUnseparated.code,
		level: "warning",
		title: `In ${enclosure.name} ${listNames(mains)} for alternating and ${listNames(low)} for direct current meet without a partition${alike === undefined ? "" : `, and both have a ${alike.colour} wire: ${alike.hot} is a hot, ${alike.other} a ${alike.role}`}`,
		span: enclosure.span,
		label: "both systems, no partition",
		marks: [enclosure.name, ...mains, ...low],
		why: systemsUnseparated.why,
		help: `Use a box of its own for one of them, or one with a wall between: \`${enclosure.name}: box partition\`.${alike === undefined ? "" : ` Or use ${alike.role === "negative" ? "yellow" : "red"} for the ${alike.role}.`}`,
		basis: systemsUnseparated.basis,
		key: `${systemsUnseparated.code}@${enclosure.name}`,
	});
}

/** A hot of the mains and a pole of direct current of one colour. */
function findAlike(
	ac: readonly Conductor[],
	dc: readonly Conductor[],
): { readonly colour: string; readonly hot: string; readonly other: string; readonly role: string } | undefined {
	for (const hot of ac) {
		if (hot.role === "neutral") continue;
		const other = dc.find(({ colour }) => colour === hot.colour);
		if (other !== undefined) return { colour: hot.colour, hot: hot.name, other: other.name, role: other.role };
	}
	return undefined;
}
