// A receptacle behind a dimmer, or anything for direct current but a light: what hangs there is seldom made for a dimmed supply.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { reachPossible } from "../analysis/choices.ts";
import { isHot, notABond } from "../analysis/poles.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Part } from "../circuit/circuit.ts";
import { systemOfRole } from "../circuit/systems.ts";
import { findDimmed } from "./direct-dimmed.ts";
import { live } from "./meter-test.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const receptacleDimmed: Rule = {
	code: "receptacle-dimmed",
	level: "error",
	what: "A receptacle, or an outlet, motor or converter for direct current, is fed through a dimmer.",
	why: "Chargers, motors and tools on a dimmed supply overheat and can burn, and so can the dimmer.",
	help: "Feed the receptacle from ahead of the dimmer.",
	basis: "NFPA 70 404.14(E), recalled; common practice",
	meter: [
		live(
			"loading voltage tester",
			"from hot to neutral of the receptacle, with a lamp plugged in, while the dimmer's knob is turned",
			"a voltage that goes up and down",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to d1: dimmer
  9 ft to l1: light 5 W
  from d1
    4 ft to r1: receptacle
`,
		`battery house lithium 12.8 V 100 Ah
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 10 A
  6 ft to d1: dimmer
  4 ft to l1: light 4 W
  3 ft to u1: usb-outlet 18 W
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit lights from LC breaker 15 A by 14-2
  9 ft to r1: receptacle
  4 ft to d1: dimmer
  9 ft to l1: light 5 W
`,
		`battery house lithium 12.8 V 100 Ah
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 10 A
  6 ft to u1: usb-outlet 18 W
  3 ft to d1: dimmer
  4 ft to l1: light 4 W
`,
	],
	check: (analysis) => {
		const dimmers = new Map(
			analysis.circuit.parts.filter(({ face }) => face.traits.includes("dimmer")).map((part) => [part.name, part]),
		);
		if (dimmers.size === 0) return [];
		const { points } = analysis.circuit;
		const isMains = [...dimmers.values()].some((part) =>
			part.points.some((point) => systemOfRole(points[point]?.role ?? "ground") === "ac"),
		);
		const { code, why, basis } = receptacleDimmed;
		return findOverModes(analysis, (state) => [
			...(isMains ? checkMode(analysis, state, dimmers) : []),
			...findDimmed(analysis, state, dimmers, { code, why, basis }),
		]);
	},
};

function checkMode({ circuit }: Analysis, state: ModeState, dimmers: ReadonlyMap<string, Part>): Finding[] {
	const { network, poles } = state.crossings;
	const starts = poles.poles.flatMap((pole) => (isHot(pole.role) ? pole.points : []));
	const undimmed = reachPossible(
		network,
		starts,
		(edge) => notABond(edge) && (edge.by.kind === "conductor" || !dimmers.has(edge.by.link.part)),
	);
	const told = new Set<string>();
	return circuit.loads.flatMap(({ outlet, between, part: name }): Finding[] => {
		const hot = between.find((point) => poles.sortsAt(point).has("hot") && !undimmed.has(point));
		if (!outlet || hot === undefined || told.has(name)) return [];
		told.add(name);
		const way = poles.reachOf(hot, "hot")?.edgesTo(hot) ?? [];
		const link = way.flatMap(({ by }) => (by.kind === "link" ? [by.link.part] : [])).findLast((at) => dimmers.has(at));
		const dimmer = link === undefined ? undefined : dimmers.get(link);
		return dimmer === undefined ? [] : [tell(state, certain(circuit.partByName.get(name), name), dimmer, hot)];
	});
}

function tell({ crossings }: ModeState, part: Part, dimmer: Part, hot: number): Finding {
	return finding({
		code: receptacleDimmed.code,
		level: "error",
		title: `${part.name} is fed through the dimmer ${dimmer.name}`,
		span: part.span,
		label: "dimmed",
		also: [{ span: dimmer.span, label: dimmer.face.text }],
		marks: [part.name, dimmer.name],
		path: crossings.poles.reachOf(hot, "hot")?.pathTo(hot) ?? [],
		why: receptacleDimmed.why,
		help: `Feed ${part.name} from ahead of ${dimmer.name}, such as \`from ${dimmer.name}.line\`, or use a switch in place of the dimmer.`,
		basis: receptacleDimmed.basis,
		key: `${receptacleDimmed.code}@${part.name}`,
	});
}
