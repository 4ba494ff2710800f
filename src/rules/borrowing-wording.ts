// What is said of a load whose way back is not its own, and of two hots that share one unsafely.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import type { Borrowing } from "../analysis/borrowings.ts";
import { findBypassedMains } from "../analysis/bypassed-mains.ts";
import { findMislabelled, nameMixUp } from "../analysis/mislabelled.ts";
import type { ReturningLoad } from "../analysis/returns.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Cable, Circuit, Point } from "../circuit/circuit.ts";
import type { Rule } from "./rule.ts";

/** The finding of a rule on one borrowing of a mode. */
export function tellBorrowing(
	{ code, basis }: Pick<Rule, "code" | "basis">,
	analysis: Analysis,
	state: ModeState,
	borrowing: Borrowing,
): Finding {
	const { circuit } = analysis;
	const { loads, end } = borrowing;
	const parts = [...new Set(loads.map(({ load }) => load.part))];
	const names = listNames(parts);
	const conductor = end === undefined ? undefined : circuit.conductors[end.conductor];
	const landed = end === undefined ? undefined : conductor?.ends[end.which];
	const point = landed?.point === undefined ? undefined : circuit.points[landed.point];
	const landing = point === undefined ? "" : `: ${conductor?.name ?? ""} is ${tellPlace(point)}`;
	const first = certain(loads[0], "a load");
	const part = certain(circuit.partByName.get(first.load.part), first.load.part);
	const span = landed?.span ?? part.span;
	const behind = findCause(analysis, state, borrowing);
	return finding({
		code,
		// A ground-fault device opens at once, and the neutral of the supply is made for all that hangs on it.
		level:
			borrowing.kind === "past-device" || (borrowing.kind === "other-circuit" && borrowing.isSupply === true)
				? "error"
				: "danger",
		title: `${tellWhat(borrowing, names, parts.length > 1)}${landing}`,
		span,
		label: "not its own way back",
		also: parts.slice(0, 8).flatMap((name) => {
			const other = circuit.partByName.get(name)?.span;
			return other === undefined || other === span ? [] : [{ span: other, label: name }];
		}),
		marks: [
			...(point === undefined ? [] : [point.name]),
			...(conductor === undefined ? [] : [conductor.name]),
			...parts,
			...(borrowing.kind === "not-tied" ? borrowing.devices : []),
			...(borrowing.kind === "one-leg" ? [borrowing.device] : []),
		],
		path: state.crossings.poles.reachOf(first.neutral, "neutral")?.pathTo(first.neutral) ?? [],
		why: tellWhy(borrowing, names, legsOf(borrowing)),
		help: tellCure(analysis, state, borrowing, names),
		basis,
		key: `${code}@${tellKey(borrowing, conductor?.name, landed?.enclosure.name, part.name)}`,
		...(behind === undefined ? {} : { consequenceOf: behind }),
	});
}

function tellKey(borrowing: Borrowing, conductor: string | undefined, box: string | undefined, part: string): string {
	if (borrowing.kind === "not-tied") return part;
	if (borrowing.kind !== "other-circuit") return borrowing.device;
	return conductor === undefined || box === undefined ? part : `${conductor}@${box}`;
}

function tellPlace(point: Point): string {
	return point.kind === "splice" ? `with the ${point.role}s of ${point.enclosure.name}` : `on ${point.name}`;
}

function tellWhat(borrowing: Borrowing, names: string, many: boolean): string {
	switch (borrowing.kind) {
		case "past-device": {
			const others = tellTurned(borrowing.turned);
			if (borrowing.other !== undefined)
				return `${names} ${many ? "go" : "goes"} out through ${borrowing.device} and back through ${borrowing.other}${others}`;
			return borrowing.passes === "hot"
				? `The hot of ${names} goes through ${borrowing.device}, the neutral does not${others}`
				: `The neutral of ${names} goes through ${borrowing.device}, the hot does not${others}`;
		}
		case "one-leg":
			return `The neutral of ${names} carries both poles of ${borrowing.device}, which are on one leg`;
		case "not-tied":
			return `The neutral of ${names} serves ${listNames(borrowing.devices)}, which do not open together`;
		case "other-circuit":
			return `${names} ${many ? "are" : "is"} fed by ${borrowing.own || "no breaker"} and ${many ? "return" : "returns"} with ${borrowing.other || "another circuit"}${tellTurned(borrowing.turned)}`;
	}
}

function tellTurned(turned: readonly ReturningLoad[]): string {
	const names = [...new Set(turned.map(({ load }) => load.part))];
	return names.length === 0 ? "" : `, and ${listNames(names)} the other way round`;
}

/** How many different legs feed the loads. */
function legsOf({ loads }: Borrowing): number {
	return new Set(loads.map(({ feeder }) => feeder?.pole)).size;
}

function tellWhy(borrowing: Borrowing, names: string, legs: number): string {
	switch (borrowing.kind) {
		case "past-device":
			return `${borrowing.device} compares what goes out with what comes back: it trips as soon as anything is used on ${names}.`;
		case "one-leg":
			return "On one leg the two currents add up in the neutral instead of cancelling: it can carry twice what the breaker allows.";
		case "not-tied":
			return `With one of them off, the neutral still carries the other's current, and whoever takes it apart feels it.${legs > 1 ? "" : ` ${listNames(borrowing.devices)} are on one leg besides: their currents add up in it.`}`;
		case "other-circuit":
			return `With ${borrowing.own} or ${borrowing.other} off, the neutral is still live with the other's current, and it can carry both.`;
	}
}

function tellCure(analysis: Analysis, state: ModeState, borrowing: Borrowing, names: string): string {
	const { end } = borrowing;
	const conductor = end === undefined ? undefined : analysis.circuit.conductors[end.conductor]?.name;
	switch (borrowing.kind) {
		case "past-device":
			return borrowing.passes === "hot"
				? `Land ${conductor ?? "the neutral"} on ${tellNeutralBehind(analysis.circuit, borrowing.device)}.`
				: `Lead the hot of ${names} through ${borrowing.device} too, or its neutral past it.`;
		case "one-leg":
			return "Give each pole a neutral of its own, or put the two poles on different legs.";
		case "not-tied":
			return `Feed both from one two-pole breaker in place of ${listNames(borrowing.devices)}: it opens both, and its poles stand on two legs where the panel has two. Else give each a neutral of its own.`;
		case "other-circuit":
			return (
				sortNeutrals(analysis, state, borrowing) ??
				`Lead ${names} back by the neutral in the cable of ${borrowing.own}.`
			);
	}
}

/** Where neutrals belong that a device watches: on the bar behind it where it has one, else on the device. */
function tellNeutralBehind({ parts }: Circuit, device: string): string {
	const bar = parts.find(({ owner, face }) => owner === device && face.traits.includes("neutral-bar"));
	return bar === undefined ? `the LOAD neutral of ${device}` : `${bar.name}, the neutral bar behind ${device}`;
}

/** In the box where the way back leaves its own, the neutrals of each circuit by themselves; undefined where one is alone. */
function sortNeutrals({ circuit, landings }: Analysis, { feeders }: ModeState, { end }: Borrowing): string | undefined {
	const box = end === undefined ? undefined : circuit.conductors[end.conductor]?.ends[end.which].enclosure;
	if (box === undefined || box.sort === "panel") return undefined;
	const here = circuit.cables.filter(({ from, to }) => from === box || to === box);
	const groups = [...groupBy(here, (cable) => deviceOf(cable)).entries()].flatMap(([device, cables]) =>
		device === undefined ? [] : [cables.flatMap(neutralOf)],
	);
	if (groups.length < 2 || groups.some(({ length }) => length < 2)) return undefined;
	return `In ${box.name}, keep the neutrals of each circuit by themselves: ${listNames(groups.map((group) => `\`join ${group.join(", ")}\``))}.`;

	function deviceOf({ conductors }: Cable): string | undefined {
		const points = conductors.flatMap((index) => circuit.conductors[index]?.ends ?? []).map(({ point }) => point);
		return points.map((point) => feeders.get(point ?? -1)?.protection?.part).find((part) => part !== undefined);
	}
	function neutralOf({ conductors }: Cable): string[] {
		return conductors.flatMap((index) => {
			const core = circuit.conductors[index];
			return core !== undefined && landings.carriedBy(core, 0) === "neutral" ? [core.name] : [];
		});
	}
}

/** The fault that hot and neutral differ by, where it is another: a device the wrong way round, or a hot on the wrong breaker. */
function findCause({ circuit, landings }: Analysis, state: ModeState, borrowing: Borrowing): string | undefined {
	if (borrowing.kind === "past-device") {
		const reversed = state.coverage.fed.some(
			({ device, hot, neutral }) => device.part === borrowing.device && (hot === "load" || neutral === "load"),
		);
		if (reversed) return `line-load-reversed@${borrowing.device}`;
	}
	const devices =
		borrowing.kind === "other-circuit"
			? [borrowing.own, borrowing.other]
			: borrowing.kind === "not-tied"
				? borrowing.devices
				: [];
	const bypassed = findBypassedMains(circuit, state.crossings.poles).find(({ main }) => devices.includes(main.part));
	if (bypassed !== undefined) return `main-bypassed@${bypassed.main.part}`;
	const mixedUp = findMislabelled(circuit, landings, state);
	const own = mixedUp.find(({ point }) => borrowing.loads.some(({ hot }) => hot === point));
	const cause =
		own ??
		(borrowing.kind === "other-circuit"
			? mixedUp.find(({ found }) => found === borrowing.own || found === borrowing.other)
			: undefined);
	return cause === undefined ? undefined : `circuit-mislabelled@${nameMixUp(cause)}`;
}
