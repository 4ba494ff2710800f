// The side of direct current as it is being written: its buses, what is declared at the left edge, and its chains.
import type { Kind } from "../../../src/kinds/kind.ts";
import { takes } from "../branch.ts";
import { kindsFor, type Part } from "../kind-parts.ts";
import type { Line } from "../lines.ts";
import type { Site } from "../site.ts";
import type { Facts } from "../words.ts";
import { Wires } from "./wires.ts";

/** A hop and the name of what it arrives at. */
export interface Reached {
	readonly name: string;
	readonly line: Line;
}

/** A bank, or what stands for one: where chains take their plus and minus. */
export interface Poles {
	readonly plus: string;
	readonly minus: string;
}

/** What every part of the direct-current side is written with. */
export class DirectSide {
	readonly site: Site;
	readonly wires: Wires;
	/** Statements, in the order in which they came up. */
	readonly lines: Line[] = [];
	/** Amperes of the fuse ahead of the buses. */
	readonly main: number;
	/** Amperes of the fuse of each string of the bank: what fills it gives no more. */
	own: number;

	constructor(site: Site, main: number) {
		this.site = site;
		this.main = main;
		this.own = main;
		this.wires = new Wires(site);
	}

	/** A thing at the left edge; gives its name. */
	declare(part: Part | Kind, letter: string, facts: Facts, below?: readonly Line[]): string {
		const { site } = this;
		const kind = typeof part === "string" ? site.chance.pick(kindsFor(part)) : part;
		const { name, line } = site.declare(kind, letter, facts);
		this.lines.push(below === undefined || below.length === 0 ? line : { ...line, below });
		return name;
	}

	/** A hop to something new. */
	hop(part: Part | Kind, letter: string, facts: Facts, how: string, below?: readonly Line[]): Reached {
		const { site } = this;
		const kind = typeof part === "string" ? site.chance.pick(kindsFor(part)) : part;
		const name = site.names.fresh(letter);
		const place = site.placeFor(true);
		const words = site.spelling.list([
			site.words.thing(kind, facts),
			site.names.label(0.2),
			place === undefined ? "" : `in ${place.name}`,
		]);
		const line = { ...this.run(how), text: `to ${name}: ${words}${site.names.remark()}` };
		return { name, line: withText(line, how, below) };
	}

	/** A hop to something declared, or to a side of it. */
	arrive(name: string, how: string): Line {
		return withText({ ...this.run(how), text: `to ${name}` }, how);
	}

	/** A length by chance, between two figures in metres. */
	length(least: number, most: number): string {
		return this.site.spelling.length(this.site.chance.count(Math.round(least * 10), Math.round(most * 10)) / 10);
	}

	/** A fuse on the run: bolted to the stud before it, or as near as it must be to what feeds it. */
	fuse(amperes: number, where: "bolted" | "near", isAtBattery = false): Reached {
		const { site } = this;
		const { chance, wish } = site;
		const near =
			wish.region === "us" ? ["within 7 in", "within 6 in", "5 in"] : ["within 15 cm", "12 cm", "within 10 cm"];
		return this.hop(
			"fuse",
			"F",
			this.fuseFacts(amperes, isAtBattery),
			where === "bolted" ? "bolted" : chance.pick(near),
		);
	}

	/** The fuse of a solar string: of a class for the volts of any string. */
	stringFuse(amperes: number, volts: number): Line {
		// Of the class as it is made everywhere 125 V, and then nothing is said of it.
		const voltage = volts <= 125 ? undefined : [160, 250, 500].find((made) => made >= volts);
		return this.hop("fuse", "F", { rating: amperes, class: "class-T", voltage }, this.length(0.2, 0.4)).line;
	}

	/** What is said of a fuse: a class that is made in its rating for such volts, and what it interrupts. */
	fuseFacts(amperes: number, isAtBattery: boolean, volts = this.site.bankVolts): Facts {
		const { chance } = this.site;
		const classes = [
			"class-T",
			...(amperes >= 30 && amperes <= 300 && !isAtBattery ? ["cube"] : []),
			...(amperes >= 40 && volts < 32 && !isAtBattery ? ["ANL", "strip"] : []),
			...(amperes <= 40 && volts < 32 && !isAtBattery ? ["blade"] : []),
			...(amperes <= 20 && volts < 32 && !isAtBattery ? ["glass"] : []),
		];
		return {
			rating: amperes,
			class: isAtBattery || chance.maybe(0.7) ? chance.pick(classes) : undefined,
			interrupting: isAtBattery ? chance.pick([20_000, 22_000]) : chance.maybe(0.3) ? 10_000 : undefined,
		};
	}

	/** A chain of power. */
	feed(letter: string, from: string, cable: string, below: readonly Line[]): void {
		this.lines.push({ text: `feed ${this.site.names.fresh(letter)} from ${from} by ${cable}`, below });
	}

	/** What is said of the voltage of something on the bank: always where it is not the usual 12 V. */
	volts(kind: Kind, volts = this.site.bankVolts): Facts {
		if (!takes(kind, "voltage")) return {};
		return volts !== 12 || this.site.chance.maybe(0.2) ? { voltage: volts } : {};
	}

	private run(how: string): Pick<Line, "length"> {
		return /^[0-9]/.test(how) ? { length: how } : {};
	}
}

function withText(line: Line, how: string, below?: readonly Line[]): Line {
	return {
		...line,
		text: line.length === undefined ? `${how} ${line.text}` : line.text,
		...(below === undefined || below.length === 0 ? {} : { below }),
	};
}
