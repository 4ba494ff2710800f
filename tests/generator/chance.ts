// Luck that is the same for the same number: what a generated plan is made of is drawn from here and from nowhere else.

/** Draws, one after the other, from one seed. */
export class Chance {
	private state: number;

	constructor(seed: number) {
		this.state = (Math.imul(seed, 2_654_435_761) + 0x9e37_79b9) >>> 0;
	}

	/** A number from 0 up to but not 1: the mixing of a counter with the constants of a splitting generator (recalled). */
	draw(): number {
		this.state = (this.state + 0x6d2b_79f5) >>> 0;
		let mixed = this.state;
		mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	}

	/** True in this share of all cases. */
	maybe(share: number): boolean {
		return this.draw() < share;
	}

	/** A whole number, both ends included. */
	count(least: number, most: number): number {
		return least + Math.floor(this.draw() * (most - least + 1));
	}

	/** One of them, each as likely; of none there is none to pick, which is our fault. */
	pick<Item>(items: readonly Item[]): Item {
		for (const item of items.slice(Math.floor(this.draw() * items.length))) return item;
		throw new Error("nothing to pick from");
	}

	/** One of them, each as likely as its weight says. */
	weigh<Item>(items: readonly (readonly [weight: number, item: Item])[]): Item {
		const all = items.reduce((sum, [weight]) => sum + weight, 0);
		let left = this.draw() * all;
		for (const [weight, item] of items) {
			left -= weight;
			if (left < 0) return item;
		}
		return this.pick(items)[1];
	}

	/** All of them in another order. */
	shuffle<Item>(items: readonly Item[]): Item[] {
		return items
			.map((item) => [this.draw(), item] as const)
			.toSorted(([one], [other]) => one - other)
			.map(([, item]) => item);
	}

	/** A figure between two limits, as likely to be ten times as large as a tenth, rounded as a plate would print it. */
	figure(least: number, most: number): number {
		const raw = least * (most / least) ** this.draw();
		const size = 10 ** Math.floor(Math.log10(raw) - 1);
		const rounded = Number((Math.round(raw / size) * size).toPrecision(2));
		return Math.min(Math.max(rounded, least), most);
	}
}
