// Finds how far things can be drawn together in one direction, here called up, without any passing another.

/** Which two things stand near each other. */
export type Pair = "boxes" | "runs" | "tags" | "box and run" | "box and tag" | "run and tag";

/** How near things may come, unless they stand nearer already; and how far aside of each other they may pass. */
export interface Reaches {
	readonly apart: Readonly<Record<Pair, number>>;
	readonly aside: Readonly<Record<Pair, number>>;
}

/** Something that keeps others away, above and below. */
export interface Item {
	readonly group: number;
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
	readonly sort: "box" | "run" | "tag";
	/** Which run it is a stretch of. */
	readonly of?: string;
}

/** Two stretches of one run, one `by` below the other. */
export interface Jog {
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
export class Groups {
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

/**
 * How far each group moves, so that everything stands as high as what is above it allows, then as near to what it is joined to as that leaves
 * room. What is above something else stays above it. Parts do not hold each other.
 */
export function findShifts(groups: Groups, items: readonly Item[], jogs: readonly Jog[], reaches: Reaches): number[] {
	const orders = ordersOf(groups, items, reaches);
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
function ordersOf(groups: Groups, items: readonly Item[], { apart, aside }: Reaches): Order[] {
	const sorted = items.toSorted((one, other) => one.top - other.top);
	const orders: Order[] = [];
	for (const [index, below] of sorted.entries())
		for (let place = index - 1; place >= 0; place--) {
			const above = sorted[place];
			if (above === undefined || above.group === below.group || groups.parts[above.group] !== groups.parts[below.group])
				continue;
			const pair = pairOf(above.sort, below.sort);
			const past = aside[pair];
			if (above.right + past <= below.left || below.right + past <= above.left) continue;
			const room = below.top - above.bottom;
			// What stands side by side holds nothing.
			if (room < 0) continue;
			const shared = Math.min(above.right, below.right) - Math.max(above.left, below.left);
			const isPushed = pair === "boxes" || (pair === "runs" && shared > alongside);
			const isOwn = above.of !== undefined && above.of === below.of;
			const least = (isOwn ? ownStep : apart[pair]) - room;
			orders.push({ above: above.group, below: below.group, least: isPushed ? least : Math.min(0, least) });
		}
	return orders;
}

/** What two things are that stand near each other. */
export function pairOf(one: Item["sort"], other: Item["sort"]): Pair {
	if (one === other) return one === "box" ? "boxes" : one === "run" ? "runs" : "tags";
	if (one !== "tag" && other !== "tag") return "box and run";
	return one === "box" || other === "box" ? "box and tag" : "run and tag";
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

const mostTries = 8;
/** A step of one run. */
const ownStep = 12;
/** Runs side by side for longer than this are seen as such. */
const alongside = 10;
/** How often everything is let down. */
const rounds = 3;
