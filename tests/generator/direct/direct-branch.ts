// One circuit of direct current as it is being written: its hops, and what its fuse still carries.
import type { Kind } from "../../../src/kinds/kind.ts";
import { takes } from "../branch.ts";
import type { Line } from "../lines.ts";
import type { Facts } from "../words.ts";
import type { DirectSide } from "./direct-side.ts";
import { reachOf } from "./wires.ts";

/** Where a circuit comes from. */
export interface Way {
	readonly from: string;
	readonly amperes: number;
	readonly volts: number;
}

/** A thing at the end of a hop. */
export interface Met {
	readonly kind: Kind;
	readonly letter: string;
	readonly facts?: Facts;
	/** How many alike stand in the row. */
	readonly row?: number;
	readonly below?: readonly Line[];
	/** What it counts for among the devices of the plan; 1 if not said. */
	readonly devices?: number;
}

/** A circuit behind one fuse. */
export class DirectBranch {
	readonly side: DirectSide;
	readonly amperes: number;
	readonly volts: number;
	readonly lines: Line[] = [];
	private readonly from: string;
	private drawn = 0;
	/** Lengths that are written down once all that is drawn is known: far along, little may be drawn. */
	private readonly open: { readonly line: { length: string }; readonly metres: number; readonly times: number }[] = [];

	constructor(side: DirectSide, { from, amperes, volts }: Way) {
		this.side = side;
		this.from = from;
		this.amperes = amperes;
		this.volts = volts;
	}

	/** A hop to something new; gives its name, that of the last one for a row. */
	hop(lines: Line[], { kind, letter, facts = {}, row: count, below, devices = 1 }: Met): string {
		const { site } = this.side;
		const { names } = site;
		const row = count === undefined ? undefined : names.freshRow(letter, count);
		const name = row?.names.at(-1) ?? names.fresh(letter);
		const place = site.placeFor(true);
		const words = site.spelling.list([
			site.words.thing(kind, facts),
			names.label(0.2),
			place === undefined ? "" : `in ${place.name}`,
			row === undefined ? "" : "each",
		]);
		this.add(lines, `to ${row?.text ?? name}: ${words}${names.remark()}`, below, count);
		site.left -= count ?? devices;
		return name;
	}

	/** A hop to something that stands elsewhere, or to a side of it. */
	arrive(lines: Line[], name: string): void {
		this.add(lines, `to ${name}`);
	}

	/** A stretch that starts at something the circuit has reached. */
	branchOff(lines: Line[], from: string, write: (lines: Line[]) => void): void {
		const below: Line[] = [];
		write(below);
		if (below.length > 0) lines.push({ text: `from ${from}`, below });
	}

	/** A load of a power that the fuse still carries, for one of `count` alike, in the words of its plate. */
	load(lines: Line[], kind: Kind, letter: string, most: number, count?: number): string {
		const { chance } = this.side.site;
		const spare = Math.max(0, this.amperes * 0.8 - this.drawn) * this.volts;
		const limit = Math.max(0.1, Math.min(most, (spare * 0.6) / (count ?? 1)));
		const power = chance.figure(Math.min(1, limit), limit);
		this.drawn += (power * (count ?? 1)) / this.volts;
		const current = Math.floor((power / this.volts) * 100) / 100;
		const facts: Facts = {
			...(current >= 0.1 && chance.maybe(0.15) ? { current } : { power }),
			...this.side.volts(kind, this.volts),
			continuous: (takes(kind, "continuous") && chance.maybe(0.1)) || undefined,
		};
		return this.hop(lines, { kind, letter, facts, ...(count === undefined ? {} : { row: count }) });
	}

	/** Something else that draws so many amperes, such as what a converter takes in. */
	draw(amperes: number): void {
		this.drawn += amperes;
	}

	/** All that is drawn, in amperes. */
	get total(): number {
		return this.drawn;
	}

	/** What the fuse still carries, in amperes. */
	get spare(): number {
		return this.amperes * 0.8 - this.drawn;
	}

	/** The circuit, once its hops are there. */
	finish(): Line {
		const { side, from, amperes, volts, drawn, lines } = this;
		const { chance, names, wish } = side.site;
		const metres = Math.min(this.measure(), reachOf(volts) / (drawn + 0.01));
		const cable = side.wires.pair({ fuse: amperes, amperes: drawn, metres, volts });
		const words = [
			`circuit ${names.fresh("d")}`,
			names.label(0.3),
			chance.maybe(wish.roughedIn) ? "roughed in" : "",
			`from ${from} by ${cable}${names.remark()}`,
		];
		return { text: words.filter((word) => word !== "").join(" "), below: lines };
	}

	/** Adds a hop whose length is still open. */
	add(lines: Line[], text: string, below?: readonly Line[], times = 1): void {
		const line = { length: "", text, ...(below === undefined ? {} : { below }) };
		lines.push(line);
		this.open.push({ line, metres: this.side.site.chance.count(2, 40) / 10, times });
	}

	/** Writes the lengths down; gives how far it is to the end, at most. */
	private measure(): number {
		const { site } = this.side;
		const sum = this.open.reduce((metres, hop) => metres + hop.metres * hop.times, 0);
		const scale = Math.min(1, (reachOf(this.volts) * 0.8) / (this.drawn + 0.1) / sum);
		let total = 0;
		for (const { line, metres, times } of this.open) {
			const measured = Math.max(0.1, Math.floor(metres * scale * 10) / 10);
			// A foot is the least that is written.
			total += (measured + 0.3) * times;
			line.length = site.spelling.length(measured);
		}
		return total;
	}
}
