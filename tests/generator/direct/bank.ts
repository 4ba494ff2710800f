// The house bank: one battery, several in series or in parallel, each lead with its fuse, and the way to the two buses.
import type { Line } from "../lines.ts";
import type { Facts } from "../words.ts";
import type { DirectSide, Poles } from "./direct-side.ts";

/** What is known of the bank once it is written. */
export interface Bank extends Poles {
	/** A plus post and the minus behind it, for what stays live when the bank is switched off. */
	readonly post: string;
}

/** Batteries, fuses, disconnect, shunt and buses. */
export function writeBank(side: DirectSide): Bank {
	const { site } = side;
	const { chance } = site;
	const sort = chance.weigh<(side: DirectSide) => Strings>([
		[5, single],
		[2, inSeries],
		[2, sideBySide],
		[1, crossed],
	]);
	const { strings, count } = sort(side);
	const [first = { plus: "", minus: "" }] = strings;
	const rating = chance.pick([400, 500, 600].filter((amperes) => amperes >= side.main));
	// Two leads go on each stud; large plans have many.
	const studs = site.left > 40 ? 40 : site.left > 12 ? 16 : chance.pick([undefined, 12]);
	const bus: Facts = { rating, studs };
	const own = side.main / strings.length;
	side.own = own;
	// The others feed back into a fault on one lead, so each bears what they give together.
	const borne = strings.length === 1 ? side.main : Math.max(own, side.main - own);
	const carried = { fuse: borne };
	const lead = side.wires.two(carried);
	const length = side.length(0.3, 1.2);
	let [plus, minus] = ["", ""];
	for (const [index, string] of strings.entries()) {
		const toPlus: Line[] = [side.fuse(own, "near", true).line];
		if (index === 0 || strings.length === 1) {
			if (strings.length === 1 && chance.maybe(0.8))
				toPlus.push(side.hop("disconnect", "D", { rating: disconnectFor(side.main) }, side.length(0.3, 0.6)).line);
			const reached = side.hop("bus", "plus", bus, length);
			plus = reached.name;
			toPlus.push(reached.line);
		} else toPlus.push(side.arrive(plus, length));
		side.feed("main", string.plus, lead.plus, toPlus);
		const toMinus: Line[] = [];
		// One shunt for all: with several strings it stands between two minus buses.
		if (strings.length === 1 && chance.maybe(0.6))
			toMinus.push(side.hop("shunt", "SH", { rating: 500 }, how(side)).line);
		if (index === 0) {
			const reached = side.hop("bus", "minus", bus, length);
			minus = reached.name;
			toMinus.push(reached.line);
		} else toMinus.push(side.arrive(minus, length));
		side.feed("back", string.minus, lead.minus, toMinus);
	}
	if (strings.length > 1 && chance.maybe(0.5)) {
		const shunt = side.hop("shunt", "SH", { rating: 500 }, how(side)).line;
		const reached = side.hop("bus", "minus", bus, side.length(0.3, 0.6));
		side.feed("counted", minus, side.wires.single("-", { fuse: side.main }), [shunt, reached.line]);
		minus = reached.name;
	}
	return { plus, minus, post: count === 1 ? first.plus : "" };
}

/** How a shunt is reached: on a short cable or bolted. */
function how(side: DirectSide): string {
	return side.site.chance.maybe(0.3) ? "bolted" : side.length(0.2, 0.6);
}

function disconnectFor(main: number): number {
	return [150, 200, 300, 400, 600].find((rating) => rating >= main) ?? 600;
}

/** Strings that are joined at the buses, each with a post at its top and one at its bottom; and how many batteries there are. */
interface Strings {
	readonly strings: readonly Poles[];
	readonly count: number;
}

function single(side: DirectSide): Strings {
	const [name = ""] = batteries(side, 1, side.site.bankVolts);
	return { strings: [{ plus: `${name}.+`, minus: `${name}.-` }], count: 1 };
}

/** One string of several batteries, each of a part of the volts. */
function inSeries(side: DirectSide): Strings {
	return { strings: [series(side)], count: 2 };
}

function series(side: DirectSide): Poles {
	const { chance, bankVolts } = side.site;
	const count = chance.pick(bankVolts === 12 ? [2] : bankVolts === 24 ? [2, 2, 4] : [4, 2]);
	const names = batteries(side, count, bankVolts / count);
	const carried = { fuse: side.main };
	const link = side.wires.single(chance.pick(["+", "-"]), carried);
	const length = side.length(0.2, 0.5);
	for (const [index, name] of names.slice(1).entries())
		side.feed("link", `${names[index] ?? ""}.-`, link, [side.arrive(`${name}.+`, length)]);
	return { plus: `${names[0] ?? ""}.+`, minus: `${names.at(-1) ?? ""}.-` };
}

/** Several in parallel that meet at the buses, each behind a fuse of its own. */
function sideBySide(side: DirectSide): Strings {
	const { chance, bankVolts } = side.site;
	const count = side.main % 3 === 0 && chance.maybe(0.3) ? 3 : 2;
	const names = batteries(side, count, bankVolts);
	return { strings: names.map((name) => ({ plus: `${name}.+`, minus: `${name}.-` })), count };
}

/** Two in parallel, post to post, with the plus taken from one and the minus from the other, so that both work alike. */
function crossed(side: DirectSide): Strings {
	const [one = "", other = ""] = batteries(side, 2, side.site.bankVolts);
	const lead = side.wires.two({ fuse: side.main });
	const length = side.length(0.2, 0.5);
	side.feed("link", `${one}.+`, lead.plus, [side.arrive(`${other}.+`, length)]);
	side.feed("link", `${one}.-`, lead.minus, [side.arrive(`${other}.-`, length)]);
	return { strings: [{ plus: `${one}.+`, minus: `${other}.-` }], count: 2 };
}

/** So many batteries of one make. */
function batteries(side: DirectSide, count: number, volts: number): string[] {
	const { chance } = side.site;
	const chemistry =
		volts === 6 ? chance.pick(["agm", "gel", "flooded"]) : chance.pick(["lithium", "lithium", "agm", "gel", "flooded"]);
	const facts: Facts = {
		voltage: chemistry === "lithium" ? (volts * 12.8) / 12 : volts,
		capacity: chance.pick([undefined, 80, 100, 200, 280]),
		chemistry: chance.maybe(0.9) || chemistry === "lithium" ? chemistry : undefined,
		...chance.weigh<Facts>([
			[6, { fault: chance.count(10, 45) * 100 }],
			[3, {}],
			[1, { resistance: volts / 3000 }],
		]),
		cells: chance.maybe(0.15) ? Math.round(chemistry === "lithium" ? (volts * 12.8) / 12 / 3.2 : volts / 2) : undefined,
		limit: chance.maybe(0.2) ? chance.count(10, 30) * 10 : undefined,
	};
	return Array.from({ length: count }, () => side.declare("battery", "B", facts));
}
