// Sources in series, solar modules or batteries: joined plus to minus by one lead each, they feed one line and stand on it as one symbol.
import { JoinedSets } from "../../analysis/joined-sets.ts";
import type { Circuit, Part } from "../../circuit/circuit.ts";
import type { DeviceStep } from "./steps.ts";

/** The sources of each string by the name of the box of the one that its line leaves from; `lines` has the cables that bring power. */
export function findSeries(whole: Circuit, lines: Circuit): ReadonlyMap<string, readonly Part[]> {
	const members = whole.sources.filter(({ sort }) => sort === "solar" || sort === "battery");
	const found = new Map<string, Part[]>();
	if (members.length < 2) return found;
	const place = new Map(members.map(({ part }, index) => [part, index]));
	const sets = new JoinedSets(members.length);
	const poleAt = (point: number | undefined): { readonly member: number; readonly minus: boolean } | undefined => {
		const terminal = point === undefined ? undefined : whole.points[point];
		const member = terminal?.kind === "terminal" ? place.get(terminal.part) : undefined;
		return member === undefined ? undefined : { member, minus: terminal?.role === "negative" };
	};
	for (const { ends } of whole.conductors) {
		const [one, other] = [poleAt(ends[0].point), poleAt(ends[1].point)];
		if (one !== undefined && other !== undefined && one.minus !== other.minus) sets.join(one.member, other.member);
	}
	const leaves = new Set(lines.cables.flatMap(({ from, to }) => [from.name, to.name]));
	const strings = new Map<number, Part[]>();
	for (const [index, { part }] of members.entries()) {
		const member = whole.partByName.get(part);
		if (member === undefined) continue;
		const string = strings.get(sets.find(index));
		if (string === undefined) strings.set(sets.find(index), [member]);
		else string.push(member);
	}
	for (const string of strings.values()) {
		const heads = string.filter(({ enclosure }) => leaves.has(enclosure.name));
		const [head] = heads;
		if (string.length > 1 && heads.length === 1 && head !== undefined) found.set(head.enclosure.name, string);
	}
	return found;
}

/** The step of the one that the line leaves from, for all of its string. */
export function seriesStep(step: DeviceStep, string: readonly Part[]): DeviceStep {
	const names = string.map(({ name }) => name);
	const name = names.length > 2 ? `${names[0]} to ${names.at(-1)}` : names.join(", ");
	const kinds = new Set(string.map(({ face }) => face.text));
	return {
		...step,
		label: { name, lines: [`${names.length} in series`, ...kinds] },
		parts: names,
		names: [...new Set(string.flatMap((part) => [part.name, part.enclosure.name]))],
	};
}
