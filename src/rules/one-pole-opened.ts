// A breaker or main that opens the hot of something and not its neutral: made so where both must open, or wired so.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { findPartedNeutrals, type PartedNeutral } from "../analysis/parted-neutrals.ts";
import { isHot } from "../analysis/poles.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import type { Circuit, Part } from "../circuit/circuit.ts";
import { citation } from "../handbook/provenance.ts";
import { twoPoleClauseFor } from "../handbook/two-pole-clauses.ts";
import { dead } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const onePoleOpened: Rule = {
	code: "one-pole-opened",
	level: "error",
	what: "A breaker that opens two poles opens the hot of something and not its neutral; or, in an IEC camper or boat, a breaker or main has one pole only.",
	why: "At a site whose hot and neutral are exchanged, what opens only one of them leaves everything behind it live.",
	help: "Take breakers that open both: `breaker 10 A two-pole`, `main 16 A two-pole`.",
	basis: "IEC 60364-7-721, in a UK guide to the wiring regulations, read; ISO 13297, recalled; common practice",
	meter: [dead("from the neutral ahead of the breaker to the neutral behind it, the breaker off", "continuity")],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs:
			"That a breaker must open both is asked in IEC campers and boats alone; that one with two poles is wired to open both, everywhere.",
	},
	wrong: [
		`plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3.5 m
circuit sockets from DB breaker 10 A by 3G1.5
  2 m to a1: socket
`,
		`plan "Van"
  region iec
inlet shore 16 A 230 V
feed entry from shore by 3G2.5
  1 m to R1: rcd 25 A 30 mA
  2 m to DB
panel DB main 16 A
circuit sockets from DB breaker 10 A two-pole by 3G1.5
  2 m to a1: socket
`,
		`plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3.5 m
circuit sockets from DB breaker 10 A two-pole by 3G1.5
  2 m to a1: socket
at DB
  sockets-1.blue on DB.neutral.5
`,
	],
	right: [
		`plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 3.5 m
circuit sockets from DB breaker 10 A two-pole by 3G1.5
  2 m to a1: socket
circuit lights from DB ground-fault-breaker 6 A by 3G1.5
  2 m to s1: switch
  2 m to l1: light 9 W
`,
		`plan "Workshop"
  region iec
  rules building
inlet supply 16 A 230 V
panel DB main 16 A rcbo 30 mA from supply by 3G2.5, 3.5 m
circuit sockets from DB breaker 10 A by 3G1.5
  2 m to a1: socket
`,
	],
	check: (analysis) =>
		findOverModes(analysis, (state) => [
			...checkMode(analysis, state),
			...tellPartedNeutrals(analysis, findPartedNeutrals(analysis.circuit, state)),
		]),
};

function checkMode({ circuit }: Analysis, state: ModeState): Finding[] {
	const { region, rules } = circuit.plan.settings;
	const clause = region === "iec" ? twoPoleClauseFor(rules) : undefined;
	const devices = clause === undefined ? [] : findHalfOpened(circuit, state);
	const [first, ...others] = devices;
	if (clause === undefined || first === undefined) return [];
	const names = devices.map(({ name }) => name);
	return [
		finding({
			code: onePoleOpened.code,
			// What is only recalled does not decide that a plan is wrong.
			level: clause.provenance.known === "read" ? "error" : "note",
			title: `${listNames(names)} ${others.length === 0 ? "opens" : "open"} the hot and ${others.length === 0 ? "leaves" : "leave"} the neutral joined`,
			span: first.span,
			label: "opens one pole",
			also: others.slice(0, 8).map(({ span, name }) => ({ span, label: name })),
			marks: names,
			why: onePoleOpened.why,
			help: `Take devices that open both, and say so: \`two-pole\` behind the rating of ${listNames(names)}.${clause.provenance.known === "read" ? "" : " The rule is recalled from memory: look it up in the standard in force."}`,
			basis: citation(clause.provenance),
			key: `${onePoleOpened.code}@${names[0] ?? ""}`,
		}),
	];
}

/** Two breakers that open each other's neutrals are one exchange. */
function tellPartedNeutrals(analysis: Analysis, parted: readonly PartedNeutral[]): Finding[] {
	return parted.map((one, index) => {
		const told = tellParted(analysis, one);
		const turned = parted
			.slice(0, index)
			.find(({ device, opens }) => opens === one.device.name && device.name === one.opens);
		return turned === undefined ? told : { ...told, consequenceOf: keyOfParted(turned) };
	});
}

function keyOfParted({ device }: PartedNeutral): string {
	return `${onePoleOpened.code}@${device.name}/neutral`;
}

function tellParted({ circuit }: Analysis, parted: PartedNeutral): Finding {
	const { device, parts, opens, end } = parted;
	const conductor = end === undefined ? undefined : circuit.conductors[end.conductor];
	const landed = end === undefined ? undefined : conductor?.ends[end.which];
	const point = landed?.point === undefined ? undefined : circuit.points[landed.point];
	const names = listNames(parts);
	const where = conductor === undefined || point === undefined ? "" : `: ${conductor.name} is on ${point.name}`;
	return finding({
		code: onePoleOpened.code,
		level: "error",
		title:
			opens === undefined
				? `${device.name} opens the hot of ${names} and not the neutral${where}`
				: `${device.name} opens the hot of ${names}, and ${opens} its neutral${where}`,
		span: landed?.span ?? device.span,
		label: "not behind its own breaker",
		also: [{ span: device.span, label: device.name }],
		marks: [
			...(point === undefined ? [] : [point.name]),
			...(conductor === undefined ? [] : [conductor.name]),
			device.name,
		],
		why: `With ${device.name} off, the neutral of ${names} stays joined to the rest: where hot and neutral are exchanged at the supply it is live.`,
		help: `Land the neutral of ${names} on the neutral terminal of ${device.name} that its loads hang on.`,
		basis: "common practice",
		key: keyOfParted(parted),
	});
}

/** Devices of boards with a contact in a hot that is fed, and none in a neutral. */
function findHalfOpened(circuit: Circuit, { poles }: ModeState): Part[] {
	const hots = new Set<string>();
	const neutrals = new Set<string>();
	for (const { part, nature, between } of circuit.links) {
		if (nature !== "contact") continue;
		const roles = between.flatMap((point) => [...poles.rolesAt(point)]);
		if (roles.some((role) => isHot(role))) hots.add(part);
		if (between.some((point) => circuit.points[point]?.role === "neutral")) neutrals.add(part);
	}
	return circuit.parts.filter(
		({ name, face }) => face.traits.includes("breaker") && hots.has(name) && !neutrals.has(name),
	);
}
