// Draws what stands above one another closer together: the layout engine leaves bands empty, and does not know that a feed was cut.
import { certain } from "../../base/certain.ts";
import type { Box } from "../bounds.ts";
import type { XY } from "../scene.ts";
import type { LaidNet, Way } from "./lay-out-net.ts";

/**
 * The layout with everything as high as what is above it allows, then as near to what it is joined to as that leaves room. Nothing moves
 * sideways, and what is above something else stays above it: no run turns or crosses more often than before. Parts, as `partOf` tells
 * them by their boxes, do not hold each other.
 */
export function drawTogether({ boxes, ways }: LaidNet, partOf: (name: string) => number): LaidNet {
	const groups = new Groups();
	const boxGroups = new Map(boxes.map(({ node }) => [node.name, groups.add(partOf(node.name))]));
	const groupOfBox = (name: string): number => certain(boxGroups.get(name), "a box's group");
	const stretches = ways.map((way) => stretchesOf(way, groups, groupOfBox));
	const items: Item[] = boxes.map(({ node, box, x, y }) => ({
		group: groups.find(groupOfBox(node.name)),
		left: x,
		right: x + box.width,
		top: y,
		bottom: y + box.height,
		reach: boxReach,
	}));
	const jogs: Jog[] = [];
	for (const [index, { points, tag, from: first, to: last }] of ways.entries()) {
		const of = stretches[index] ?? [];
		for (const [place, end] of points.entries()) {
			const from = points[place - 1];
			if (from === undefined) continue;
			const [one, other] = [groups.find(of[place - 1] ?? 0), groups.find(of[place] ?? 0)];
			if (from.y !== end.y) {
				if (one !== other) jogs.push({ one, other, by: end.y - from.y });
				continue;
			}
			// Where a run leaves its storey nothing may come in its way further on.
			const left = first === undefined && place === 1 ? Number.NEGATIVE_INFINITY : Math.min(from.x, end.x);
			const right =
				last === undefined && place === points.length - 1 ? Number.POSITIVE_INFINITY : Math.max(from.x, end.x);
			items.push({ group: one, left, right, top: from.y, bottom: from.y, reach: runReach });
		}
		if (tag === undefined) continue;
		const bearer = bearerOf(points, tag);
		items.push({
			group: groups.find(of[bearer] ?? 0),
			left: tag.x,
			right: tag.x + tag.width,
			top: tag.y,
			bottom: tag.y + tag.height,
			reach: tagReach,
		});
	}
	const shifts = findShifts(groups, items, jogs);
	const shiftOf = (group: number): number => shifts[groups.find(group)] ?? 0;
	return {
		boxes: boxes.map((placed) => ({ ...placed, y: placed.y + shiftOf(groupOfBox(placed.node.name)) })),
		ways: ways.map((way, index) => moveWay(way, stretches[index] ?? [], shiftOf)),
	};
}

/** Something that keeps others away, above and below. */
interface Item {
	readonly group: number;
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
	/** How near others may come, unless they stand nearer already. */
	readonly reach: number;
}

/** Two stretches of one run, one `by` below the other. */
interface Jog {
	readonly one: number;
	readonly other: number;
	readonly by: number;
}

/** `below` stands at least so far under `above` that its shift exceeds the other's by `least`, which is more than 0 where they stand too near. */
interface Order {
	readonly above: number;
	readonly below: number;
	readonly least: number;
}

/** What moves as one: a box, the stretches of runs that leave it, and what those lead straight to. */
class Groups {
	private readonly parents: number[] = [];
	readonly parts: number[] = [];

	add(part: number): number {
		this.parts.push(part);
		return this.parents.push(this.parents.length) - 1;
	}

	find(group: number): number {
		let root = group;
		for (let next = this.parents[root] ?? root; next !== root; next = this.parents[root] ?? root) root = next;
		return root;
	}

	join(one: number, other: number): void {
		this.parents[this.find(one)] = this.find(other);
	}

	get count(): number {
		return this.parents.length;
	}
}

/** The group that each point of a way moves with. */
function stretchesOf({ from, to, points }: Way, groups: Groups, groupOfBox: (name: string) => number): number[] {
	const part = groups.parts[groupOfBox(from ?? to ?? "")] ?? 0;
	const of: number[] = [];
	for (const [index, { y }] of points.entries()) {
		const before = of[index - 1];
		if (before !== undefined && y === points[index - 1]?.y) of.push(before);
		else of.push(index === 0 && from !== undefined ? groupOfBox(from) : groups.add(part));
	}
	const last = of.at(-1);
	if (last !== undefined && to !== undefined) groups.join(last, groupOfBox(to));
	return of;
}

/** The stretch that a tag stands on, by the place of the point where it begins; the first where it stands on none. */
function bearerOf(points: readonly XY[], tag: Box): number {
	const middle = tag.x + tag.width / 2;
	let best = { place: 0, away: Number.POSITIVE_INFINITY };
	for (const [place, end] of points.entries()) {
		const from = points[place - 1];
		if (from === undefined || from.y !== end.y) continue;
		if (middle < Math.min(from.x, end.x) || middle > Math.max(from.x, end.x)) continue;
		const away = Math.abs(from.y - tag.y - tag.height);
		if (away < best.away) best = { place: place - 1, away };
	}
	return best.place;
}

/** How far each group moves. */
function findShifts(groups: Groups, items: readonly Item[], jogs: readonly Jog[]): number[] {
	const orders = ordersOf(groups, items);
	let shifts = raise(groups, items, orders);
	// What is held on both sides cannot be moved apart: there it stays as near as it is.
	for (let tries = 0; shifts === undefined && tries < mostTries; tries++) shifts = raise(groups, items, orders);
	if (shifts === undefined) return new Array<number>(groups.count).fill(0);
	letHang(shifts, orders, items, jogs, groups);
	return shifts;
}

/** Each group as high as it may stand; undefined where some hold each other apart for ever: these orders are eased then. */
function raise(groups: Groups, items: readonly Item[], orders: Order[]): number[] | undefined {
	const tops = new Map<number, number>();
	for (const { group, top } of items) {
		const part = groups.parts[group] ?? 0;
		tops.set(part, Math.min(top, tops.get(part) ?? top));
	}
	const shifts = new Array<number>(groups.count).fill(Number.NEGATIVE_INFINITY);
	for (const { group, top } of items)
		shifts[group] = Math.max(shifts[group] ?? 0, (tops.get(groups.parts[group] ?? 0) ?? top) - top);
	let restless: number[] = [];
	for (let round = 0; round <= groups.count; round++) {
		restless = [];
		for (const [index, { above, below, least }] of orders.entries()) {
			const need = (shifts[above] ?? 0) + least;
			if ((shifts[below] ?? 0) >= need) continue;
			shifts[below] = need;
			restless.push(index);
		}
		if (restless.length === 0) return shifts;
	}
	for (const index of restless) {
		const order = orders[index];
		if (order !== undefined && order.least > 0) orders[index] = { ...order, least: 0 };
	}
	return undefined;
}

/** Who stands above whom, from the top downwards. Boxes that stand too near each other are to be moved apart, and runs side by side. */
function ordersOf(groups: Groups, items: readonly Item[]): Order[] {
	const sorted = items.toSorted((one, other) => one.top - other.top);
	const orders: Order[] = [];
	for (const [index, below] of sorted.entries())
		for (let place = index - 1; place >= 0; place--) {
			const above = sorted[place];
			if (above === undefined || above.group === below.group || groups.parts[above.group] !== groups.parts[below.group])
				continue;
			const areBoxes = above.reach === boxReach && below.reach === boxReach;
			const reach = areBoxes ? boxReach : Math.min(runReach, above.reach, below.reach);
			const aside = areBoxes ? boxReach : sideways;
			if (above.right + aside <= below.left || below.right + aside <= above.left) continue;
			const room = below.top - above.bottom;
			// What stands side by side holds nothing.
			if (room < 0) continue;
			const shared = Math.min(above.right, below.right) - Math.max(above.left, below.left);
			const areRuns = above.reach === runReach && below.reach === runReach && shared > alongside;
			const least = reach - room;
			orders.push({
				above: above.group,
				below: below.group,
				least: areBoxes || areRuns ? least : Math.min(0, least),
			});
		}
	return orders;
}

/** Lets each group down to where its runs lead, as far as what is below it and the foot of its part allow. */
function letHang(
	shifts: number[],
	orders: readonly Order[],
	items: readonly Item[],
	jogs: readonly Jog[],
	groups: Groups,
): void {
	const joined = new Map<number, { readonly to: number; readonly by: number }[]>();
	const join = (from: number, to: number, by: number): void => {
		const there = joined.get(from);
		if (there === undefined) joined.set(from, [{ to, by }]);
		else there.push({ to, by });
	};
	for (const { one, other, by } of jogs) {
		join(one, other, by);
		join(other, one, -by);
	}
	const belowOf = new Map<number, Order[]>();
	for (const order of orders) {
		const there = belowOf.get(order.above);
		if (there === undefined) belowOf.set(order.above, [order]);
		else there.push(order);
	}
	const feet = new Map<number, number>();
	const footOf = new Map<number, number>();
	for (const { group, bottom } of items) {
		const part = groups.parts[group] ?? 0;
		feet.set(part, Math.max(feet.get(part) ?? bottom, bottom + (shifts[group] ?? 0)));
		footOf.set(group, Math.max(footOf.get(group) ?? bottom, bottom));
	}
	for (let round = 0; round < rounds; round++)
		for (let group = groups.count - 1; group >= 0; group--) {
			const wishes = joined.get(group);
			if (wishes === undefined) continue;
			const now = shifts[group] ?? 0;
			const sorted = wishes.map(({ to, by }) => (shifts[to] ?? 0) + by).toSorted((one, other) => one - other);
			const wish = sorted[Math.floor((sorted.length - 1) / 2)] ?? now;
			if (wish <= now) continue;
			let most = (feet.get(groups.parts[group] ?? 0) ?? 0) - (footOf.get(group) ?? 0);
			for (const { below, least } of belowOf.get(group) ?? []) most = Math.min(most, (shifts[below] ?? 0) - least);
			if (most > now) shifts[group] = Math.min(wish, most);
		}
}

function moveWay(way: Way, of: readonly number[], shiftOf: (group: number) => number): Way {
	const { points, tag } = way;
	const move = ({ x, y }: XY, place: number): XY => ({ x, y: y + shiftOf(of[place] ?? 0) });
	return {
		...way,
		points: points.map(move),
		...(tag === undefined ? {} : { tag: { ...tag, y: tag.y + shiftOf(of[bearerOf(points, tag)] ?? 0) } }),
	};
}

/** How near things may come to a box, to a run and to a tag. */
const boxReach = 36;
const runReach = 24;
const tagReach = 12;
/** What is further aside than this may pass. */
const sideways = 20;
/** Runs side by side for longer than this are seen as such. */
const alongside = 10;
const mostTries = 8;
/** How often everything is let down. */
const rounds = 3;
