// A galvanic isolator round which the ground goes by another way, or that leaves the hull on the shore's side.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { joinWhere } from "../analysis/joined-sets.ts";
import { type Edge, type Network, reachFrom } from "../analysis/network.ts";
import { ownLinks } from "../analysis/own-links.ts";
import { notABond } from "../analysis/poles.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Circuit, Part } from "../circuit/circuit.ts";
import { dead } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const jetty = (more: string): string => `plan "Jetty"
  rules boat
inlet dock 30 A 120 V
feed supply from dock by triplex 10 AWG
  2 ft to GI: galvanic-isolator 30 A
  6 ft to AC
panel AC main 30 A two-pole 30 mA
hull plate
bond mains-ground from AC.ground by single 8 AWG green
  6 ft to plate
circuit lamps from AC breaker 15 A by triplex 14 AWG
  6 ft to l1: light 9 W
${more}`;

export const isolatorBypassed: Rule = {
	code: "isolator-bypassed",
	level: "error",
	what: "The grounds on both sides of a galvanic isolator are joined by another way too, or the hull is on the shore's side of it.",
	why: "The small direct current between the boats of a harbour flows round it, and eats the metal under water as if it were not there.",
	help: "Lead every ground and bond of the boat to the isolator's load side alone.",
	basis: "ABYC E-11 and A-28, recalled; common practice",
	meter: [
		dead(
			"from the ground of the inlet to that of the boat, with the shore cord off and one lead of the isolator taken off",
			"continuity",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		jetty("bond dock-ground from dock.ground by single 8 AWG green\n  4 ft to plate\n"),
		jetty("").replace("from AC.ground", "from dock.ground"),
	],
	right: [jetty("")],
	check: (analysis) => {
		const isolators = analysis.circuit.parts.filter(({ kind }) => kind === "galvanic-isolator");
		if (isolators.length === 0) return [];
		return findOverModes(analysis, (state) => checkMode(analysis, state, isolators));
	},
};

function checkMode({ circuit }: Analysis, { network }: ModeState, isolators: readonly Part[]): Finding[] {
	const names = new Set(isolators.map(({ name }) => name));
	const through = ownLinks(circuit, names);
	const past = (edge: Edge): boolean =>
		notABond(edge) && isGrounding(circuit, edge) && (edge.by.kind === "conductor" || !through.has(edge.by.link.index));
	const joined = joinWhere(network, past);
	return isolators.flatMap((part) => {
		const [line, load] = part.points;
		if (line === undefined || load === undefined) return [];
		if (!joined.isJoined(line, load)) return tellHulls(circuit, network, part, line, past);
		const reach = reachFrom(network, [line], past);
		const first = reach
			.edgesTo(load)
			.flatMap(({ by, from, to }) =>
				by.kind === "conductor" && ![from, to].some((point) => part.points.includes(point))
					? [certain(circuit.conductors[by.index], "a conductor")]
					: [],
			)
			.toSorted((one, other) => Number(other.cable !== undefined) - Number(one.cable !== undefined));
		const names = first.map(({ name }) => name).slice(0, 3);
		return [
			finding({
				code: isolatorBypassed.code,
				level: "error",
				title: `The ground goes round ${part.name}${names.length === 0 ? "" : `, by way of ${names.join(" and ")}`}`,
				span: part.span,
				label: "the ground goes round it",
				also: first.slice(0, 3).map(({ span, name }) => ({ span, label: name })),
				marks: [part.name, ...names],
				path: reach.pathTo(load),
				why: isolatorBypassed.why,
				help: `Take off what joins the two sides of ${part.name}, and land it on its load side.`,
				basis: isolatorBypassed.basis,
				key: `${isolatorBypassed.code}@${part.name}`,
			}),
		];
	});
}

/** The hull or chassis that hangs on the shore's ground, the isolator between it and the rest of the boat. */
function tellHulls(
	circuit: Circuit,
	network: Network,
	{ name, span, points }: Part,
	line: number,
	past: (edge: Edge) => boolean,
): Finding[] {
	const hulls = circuit.parts.filter(({ kind }) => kind === "hull" || kind === "chassis");
	if (hulls.length === 0) return [];
	const reach = reachFrom(network, [line], past);
	return hulls.flatMap((hull) => {
		const point = hull.points.find((own) => reach.has(own));
		if (point === undefined) return [];
		const way = reach
			.edgesTo(point)
			.flatMap(({ by, from, to }) =>
				by.kind === "conductor" && ![from, to].some((end) => points.includes(end)) ? [by.index] : [],
			);
		const last = circuit.conductors[way.at(-1) ?? -1];
		return [
			finding({
				code: isolatorBypassed.code,
				level: "error",
				title: `${hull.name} is on the shore's side of ${name}${last === undefined ? "" : `, by way of ${last.name}`}`,
				span: last?.span ?? hull.span,
				label: "on the shore's ground",
				also: [{ span, label: name }],
				marks: [hull.name, ...(last === undefined ? [] : [last.name])],
				path: reach.pathTo(point),
				why: isolatorBypassed.why,
				help: `Take ${last?.name ?? "it"} off the shore's ground, and lead ${hull.name} to a ground on the load side of ${name}.`,
				basis: isolatorBypassed.basis,
				key: `${isolatorBypassed.code}@${name}/${hull.name}`,
			}),
		];
	});
}

/** A way between grounds, and through whatever metal joins them. */
function isGrounding({ points }: Circuit, { from, to }: Edge): boolean {
	return points[from]?.role === "ground" && points[to]?.role === "ground";
}
