// Fuse blocks on the buses, a fuse or a breaker for each circuit behind them, until every device has its place.
import { kindsFor } from "../kind-parts.ts";
import type { Line } from "../lines.ts";
import type { Facts } from "../words.ts";
import { writeBranch } from "./branches.ts";
import { DirectBranch } from "./direct-branch.ts";
import type { DirectSide, Poles } from "./direct-side.ts";

/** Circuits behind blocks until so many devices are left on the site. */
export function writeBlocks(side: DirectSide, poles: Poles, until: number): void {
	while (side.site.left > until) {
		const fuse = side.site.chance.pick([60, 80, 100].filter((amperes) => amperes <= side.main));
		new Block(side, fuse).write(poles, until);
	}
}

/** A block and its circuits. */
export class Block {
	readonly side: DirectSide;
	/** Volts between its poles. */
	readonly volts: number;
	/** Circuits that are written, behind the block. */
	readonly circuits: Line[] = [];
	private readonly name: string;
	private readonly fuse: number;
	private readonly slots: Line[] = [];
	private readonly branches: DirectBranch[] = [];
	private ways = 0;

	constructor(side: DirectSide, fuse: number, volts = side.site.bankVolts) {
		this.side = side;
		this.fuse = fuse;
		this.volts = volts;
		this.name = side.site.names.fresh("FB");
	}

	/** The block on two poles, its fuse bolted to the first, and its circuits. */
	write({ plus, minus }: Poles, until: number): void {
		const { side, name, fuse } = this;
		const { chance, names } = side.site;
		this.fill(until, chance.count(2, 16));
		const cable = side.wires.pair({ fuse, amperes: fuse * 0.6, metres: 3 });
		const [word = "", ...others] = this.words().split(" ");
		const bolted = side.fuse(fuse, "bolted").line;
		const length = side.length(0.4, 3);
		const feed = `feed ${names.fresh("small")} from ${plus}, ${minus} by ${cable}`;
		const standing = [word, name, names.label(), ...others].filter((one) => one !== "").join(" ");
		if (chance.maybe(0.6))
			side.lines.push(
				{ text: standing, below: this.slots },
				{ text: feed, below: [bolted, { length, text: `to ${name}` }] },
			);
		else
			side.lines.push({
				text: feed,
				below: [bolted, { length, text: `to ${name}: ${[word, ...others].join(" ")}`, below: this.slots }],
			});
		side.lines.push(...this.circuits);
	}

	/** The block at the end of a circuit that feeds it; its own circuits stand behind that one. */
	hang(feed: DirectBranch, until: number, most: number): void {
		this.fill(until, most);
		feed.add(feed.lines, `to ${this.name}: ${this.words()}`, this.slots);
	}

	/** A circuit behind a fuse of its own. */
	branch(ratings: readonly number[]): DirectBranch {
		const { side, slots, volts } = this;
		const { chance, names, words } = side.site;
		const amperes = chance.pick(ratings.filter((rating) => rating <= this.fuse));
		this.ways += 1;
		const isBreaker = amperes >= 5 && chance.maybe(0.15);
		const kind = isBreaker ? chance.pick(kindsFor("breaker")) : chance.pick(kindsFor("fuse"));
		const facts: Facts = isBreaker ? { rating: amperes } : side.fuseFacts(amperes, false, volts);
		slots.push({ text: `slot ${this.ways}: ${words.thing(kind, facts)} ${names.label(0.2)}`.trim() });
		const branch = new DirectBranch(side, { from: `${this.name}.${this.ways}`, amperes, volts });
		this.branches.push(branch);
		return branch;
	}

	/** Whether its fuse has room for one more circuit. */
	private get hasRoom(): boolean {
		return this.branches.reduce((sum, { total }) => sum + total, 0) < this.fuse * 0.55;
	}

	private words(): string {
		const { chance, words } = this.side.site;
		return words.thing(chance.pick(kindsFor("fuse block")), {
			rating: chance.maybe(0.4) ? Math.max(this.fuse, 100) : undefined,
			spaces: this.ways > 12 || chance.maybe(0.4) ? this.ways + chance.count(0, 4) : undefined,
		});
	}

	private fill(until: number, most: number): void {
		const { side, slots } = this;
		const { chance, names, words } = side.site;
		while (side.site.left > until && this.ways < most && this.hasRoom) writeBranch(this, until);
		const ports = this.ways + 2;
		if (ports > 14 || chance.maybe(0.15)) {
			const bar = chance.pick(kindsFor("negative bar"));
			slots.push({ text: `${names.fresh("N")}: ${words.thing(bar, { ports: Math.max(ports, 4) })}` });
		}
	}
}
