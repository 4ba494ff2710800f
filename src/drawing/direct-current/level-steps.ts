// Takes steps out of runs: what stands a little higher or lower than what it is joined to moves to the same height.
import { type Groups, type Item, type Jog, type Pair, pairOf, type Reaches } from "./closeness.ts";

/** Between two corners of a run: what is shorter is not seen as a step. */
export const shortestStep = 8;

/**
 * The shifts with each step taken out that is no longer than `longest`, where all else keeps its room: the shortest first. Nothing passes
 * anything else, nothing that runs straight gets a step, and the whole grows no larger.
 */
export function takeOutSteps(
	shifts: readonly number[],
	groups: Groups,
	items: readonly Item[],
	jogs: readonly Jog[],
	{ aside }: Reaches,
	longest: number,
): number[] {
	const moved = [...shifts];
	const shiftOf = (group: number): number => moved[group] ?? 0;
	const stepOf = ({ one, other, by }: Jog): number => by + shiftOf(other) - shiftOf(one);
	const lengthOf = (jog: Jog): number => Math.abs(stepOf(jog));
	const waiting = jogs.filter((jog) => lengthOf(jog) > 0 && lengthOf(jog) <= longest);
	if (waiting.length === 0) return moved;
	const own = new Map<number, Item[]>();
	const heads = new Map<number, number>();
	const feet = new Map<number, number>();
	for (const item of items) {
		const there = own.get(item.group);
		if (there === undefined) own.set(item.group, [item]);
		else there.push(item);
		const part = groups.parts[item.group] ?? 0;
		heads.set(part, Math.min(heads.get(part) ?? Number.POSITIVE_INFINITY, item.top + shiftOf(item.group)));
		feet.set(part, Math.max(feet.get(part) ?? Number.NEGATIVE_INFINITY, item.bottom + shiftOf(item.group)));
	}
	const hasRoom = (group: number, by: number): boolean => {
		const part = groups.parts[group] ?? 0;
		for (const item of own.get(group) ?? []) {
			const [top, bottom] = [item.top + shiftOf(group), item.bottom + shiftOf(group)];
			if (top + by < (heads.get(part) ?? top) || bottom + by > (feet.get(part) ?? bottom)) return false;
			for (const other of items) {
				if (other.group === group || groups.parts[other.group] !== part) continue;
				if (item.of !== undefined && item.of === other.of) continue;
				const pair = pairOf(item.sort, other.sort);
				if (other.right + aside[pair] <= item.left || item.right + aside[pair] <= other.left) continue;
				const shift = shiftOf(other.group);
				const [below, above] = [other.top + shift - bottom, top - other.bottom - shift];
				const [room, after] = below >= above ? [below, below - by] : [above, above + by];
				if (room >= 0 && after < Math.min(room, nearest[pair])) return false;
			}
		}
		return true;
	};
	const mayMove = (group: number, by: number): boolean =>
		jogs.every((jog) => {
			if (jog.one !== group && jog.other !== group) return true;
			const step = stepOf(jog);
			const after = step + (jog.other === group ? by : -by);
			if (after === 0) return true;
			// A step neither comes anew, nor turns round, nor gets too short to be seen.
			return step * after > 0 && Math.abs(after) >= Math.min(shortestStep, Math.abs(step));
		}) && hasRoom(group, by);
	for (const jog of waiting.toSorted((one, other) => lengthOf(one) - lengthOf(other))) {
		const step = stepOf(jog);
		if (step === 0) continue;
		if (mayMove(jog.other, -step)) moved[jog.other] = shiftOf(jog.other) - step;
		else if (mayMove(jog.one, step)) moved[jog.one] = shiftOf(jog.one) + step;
	}
	return moved;
}

/** How near things may come where a step is taken out. */
const nearest: Readonly<Record<Pair, number>> = {
	boxes: 32,
	runs: 22,
	tags: 6,
	"box and run": 22,
	"box and tag": 6,
	"run and tag": 6,
};
