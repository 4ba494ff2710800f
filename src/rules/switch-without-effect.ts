// Switches that do not switch: both terminals joined past them, or travellers and commons mixed up.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import {
	type Bypass,
	type DeadEnd,
	findBypasses,
	findDeadEnds,
	findIdleThrows,
	type IdleThrow,
	leadsPast,
	type StuckLoad,
} from "../analysis/idle-throws.ts";
import { type Network, reachFrom } from "../analysis/network.ts";
import type { PoleMap } from "../analysis/poles.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { listNames } from "../base/wording.ts";
import { cureSwitchLoop } from "./loop-wording.ts";
import { dead } from "./meter-test.ts";
import { keyOfMistake } from "./mistake-wording.ts";
import { findOverModes } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

export const switchWithoutEffect: Rule = {
	code: "switch-without-effect",
	level: "error",
	what: "A switch or disconnect is joined past, or a three-way or four-way switch works in some positions of its partners only, or in none.",
	why: "What is switched off stays on: a disconnect then isolates nothing, and whoever relies on it works on live wires.",
	help: "Part the wires of its two sides; put the feed or the load on the common, and only the travellers on the others.",
	basis: "common practice",
	meter: [
		dead(
			"between the two sides of the switch, it off, the load unplugged; for travellers, in each position of the partners",
			"continuity, or none in both positions",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit heat from LC breaker 20 A by 12-2
  7 ft to hd: disconnect
  9 ft to wh: heater 1200 W
at hd
  join heat-1.black, heat-2.black, hd.line.hot, hd.load.hot
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch three-way
  5 ft by 14-2 to l1: light 9 W
at s1
  stairs-1.black on s1.traveller.1
  stairs-2.black on s1.common
`,
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft to s2: switch three-way
  5 ft to l1: light 9 W
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch four-way
  9 ft to s3: switch three-way
  5 ft by 14-2 to l1: light 9 W
at s2
  stairs-2.black on s2.line.2
  stairs-2.red on s2.line.1
`,
	],
	check: (analysis) =>
		findOverModes(analysis, (state) => {
			const { idle, stuck, untried } = findIdleThrows(state.network, analysis.landings, state.poles);
			const runOf = (part: string): string | undefined => analysis.circuit.partByName.get(part)?.run;
			// What a load is stuck by is told of that; of partners that have nothing on their travellers the first is told.
			const told = new Set([...idle, ...stuck].flatMap(({ switches }) => switches.map(runOf)));
			return [
				...networksOf(state).flatMap((network) =>
					findBypasses(network).map((bypass) => tellBypass(analysis, network, bypass)),
				),
				...[state.crossings.poles, ...(state.direct === undefined ? [] : [state.direct.poles])].flatMap((poles) =>
					findDeadEnds(state.network, poles)
						.filter(({ part, throws }) => throws === 1 || !told.has(runOf(part)))
						.map((end) => tellDeadEnd(analysis, state, poles, end)),
				),
				...idle.map((one) => tellIdle(analysis, state, one)),
				...stuck.map((one) => tellStuck(analysis, state, one)),
				...untried.map((switches) => tellUntried(analysis, switches)),
			];
		}),
};

function networksOf({ network, direct }: ModeState): readonly Network[] {
	return direct === undefined ? [network] : [network, direct.network];
}

function tellBypass(analysis: Analysis, network: Network, { device, contact }: Bypass): Finding {
	const { circuit } = analysis;
	const [one, other] = contact.between;
	const past = reachFrom(network, [one], (edge) => leadsPast(network, edge));
	const ends = past
		.edgesTo(other)
		.flatMap(({ by }) => (by.kind === "conductor" ? (circuit.conductors[by.index]?.ends ?? []) : []));
	const part = certain(circuit.partByName.get(device.part), device.part);
	const joint = ends.find(({ said, point }) => said && circuit.points[point ?? -1]?.kind === "splice");
	const said = joint ?? ends.find((end) => end.said && end.enclosure === part.enclosure);
	const boxes = new Set(ends.map(({ enclosure }) => enclosure.name));
	const loop = [...boxes].map((box) => cureSwitchLoop(analysis, box)).find((cure) => cure !== undefined);
	const names = listNames([one, other].map((point) => circuit.points[point]?.name ?? ""));
	const isolates = part.face.traits.includes("disconnect");
	return finding({
		code: switchWithoutEffect.code,
		level: isolates ? "danger" : "error",
		title: `${device.part} ${isolates ? "isolates" : "switches"} nothing: ${names} are joined past it`,
		span: said?.span ?? part.span,
		label: "joined past the switch",
		also: said === undefined ? [] : [{ span: part.span, label: device.part }],
		marks: [circuit.points[one]?.name ?? "", circuit.points[other]?.name ?? "", device.part],
		path: past.pathTo(other),
		why: isolates
			? `With ${device.part} off, everything behind it is still live.`
			: `What hangs behind ${device.part} stays on, or off, whatever its handle says.`,
		help:
			loop ??
			`In ${(said?.enclosure ?? part.enclosure).name}, part the wires that lead to ${circuit.points[one]?.name ?? ""} from those that lead to ${circuit.points[other]?.name ?? ""}.`,
		basis: switchWithoutEffect.basis,
		key: `${switchWithoutEffect.code}@${device.part}`,
	});
}

function tellDeadEnd(
	{ circuit }: Analysis,
	state: ModeState,
	poles: PoleMap,
	{ part: name, point, alsoEmpty, throws }: DeadEnd,
): Finding {
	const part = certain(circuit.partByName.get(name), name);
	const terminals = [point, alsoEmpty].flatMap((index) =>
		index === undefined ? [] : [circuit.points[index]?.name ?? ""],
	);
	const empty = listNames(terminals);
	const behind = findCause(state, new Set([part.enclosure.name]));
	return finding({
		code: switchWithoutEffect.code,
		level: "warning",
		title: `${name} switches nothing: nothing is on ${empty}`,
		span: part.span,
		label: "nothing behind it",
		marks: [...terminals, name],
		path: poles.reachOf(point, "hot")?.pathTo(point) ?? [],
		why: "What it was meant for stays on, or is not there yet.",
		help:
			throws === 1
				? `Land what ${name} is to switch on ${empty}; a chain goes on from there with \`from ${name}\`.`
				: `Run a cable with one core more from ${name} to the switch it works with, as \`by 14-3\`, and land its travellers on ${empty}.`,
		basis: switchWithoutEffect.basis,
		key: `${switchWithoutEffect.code}@${name}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}

function tellIdle(
	{ circuit }: Analysis,
	state: ModeState,
	{ point, switches, idle, settings, all }: IdleThrow,
): Finding {
	const load = circuit.points[point];
	const name = load?.kind === "terminal" ? load.part : "";
	const [first, ...others] = switches.map((part) => certain(circuit.partByName.get(part), part));
	const names = listNames(switches);
	const behind = findCause(state, new Set([first, ...others].map((part) => part?.enclosure.name ?? "")));
	return finding({
		code: switchWithoutEffect.code,
		level: "error",
		title: `${names} do not all switch ${name}: throwing ${idle} changes nothing in ${settings} of ${all} positions of the others`,
		span: certain(first, "a switch").span,
		label: "look at commons and travellers",
		also: others.map((part) => ({ span: part.span, label: part.name })),
		marks: [...switches, load?.name ?? ""],
		path: state.poles.reachOf(point, "hot")?.pathTo(point) ?? [],
		figures: [{ name: "positions without effect", found: settings, limit: 0, unit: "", source: "common practice" }],
		why: `${name} can only be switched from ${idle} when the others happen to stand right.`,
		help: `At ${names} look at the common (the dark screw): the feed at one end and the wire to ${name} at the other belong on it, and both travellers of a cable on the two other screws; at a four-way one cable on each pair.`,
		basis: switchWithoutEffect.basis,
		key: `${switchWithoutEffect.code}@${switches.join("/")}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}

function tellStuck({ circuit }: Analysis, state: ModeState, { point, switches, way }: StuckLoad): Finding {
	const load = circuit.points[point];
	const name = load?.kind === "terminal" ? load.part : "";
	const [first, ...others] = switches.map((part) => certain(circuit.partByName.get(part), part));
	const names = listNames(switches);
	const behind = findCause(state, new Set([first, ...others].map((part) => part?.enclosure.name ?? "")));
	return finding({
		code: switchWithoutEffect.code,
		level: "error",
		title: `${name} stays on in every position of ${names}`,
		span: certain(first, "a switch").span,
		label: "switches nothing off",
		also: others.map((part) => ({ span: part.span, label: part.name })),
		marks: [...switches, load?.name ?? ""],
		path: way.pathTo(point),
		why: `Whatever the handles say, ${name} is on: whoever trusts them works on a live wire.`,
		help: `At ${names} part the travellers: one wire on the common, and each traveller on a screw of its own.`,
		basis: switchWithoutEffect.basis,
		key: `${switchWithoutEffect.code}@${switches.join("/")}/${load?.name ?? ""}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}

function tellUntried({ circuit }: Analysis, switches: readonly string[]): Finding {
	const [first, ...others] = switches.map((part) => certain(circuit.partByName.get(part), part));
	return finding({
		code: switchWithoutEffect.code,
		level: "note",
		unchecked: true,
		title: `Positions of ${listNames(switches)} not checked one by one: there are too many`,
		span: certain(first, "a switch").span,
		label: "all of their ways count as on at once",
		also: others.slice(0, 8).map((part) => ({ span: part.span, label: part.name })),
		marks: switches,
		why: "Whether each of them works in every position of the others is not known, and some way told as live may never be.",
		help: "Try every switch in several positions of the others, or let fewer switches govern one load.",
		basis: switchWithoutEffect.basis,
		key: `${switchWithoutEffect.code}@${switches.join("/")}`,
	});
}

/** Another mistake in the switches' boxes that explains it: wires of two poles mixed up, or an end that is off. */
function findCause({ crossings, network: { circuit } }: ModeState, boxes: ReadonlySet<string>): string | undefined {
	const roots = [...crossings.bridges.map(({ root }) => root), ...crossings.strays.map(({ root }) => root)];
	const mistake = roots.find((root) => boxes.has(root.enclosure));
	const key = mistake === undefined ? undefined : keyOfMistake(crossings, mistake.key);
	if (key !== undefined) return key;
	for (const { name, ends } of circuit.conductors)
		for (const { state, enclosure } of ends)
			if (state === "loose" && boxes.has(enclosure.name)) return `end-loose@${name}@${enclosure.name}`;
	return undefined;
}
